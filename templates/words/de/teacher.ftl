### Die Blätter für die Kursleitung: Stunden, Fortschritt, Etiketten, Maßblatt, Übungsstücke.

teacher-skip = Zu den Kursstunden springen
teacher-for = Blätter für die Leitung: { $whose }
teacher-keep = Diese Blätter enthalten Namen und Notizen. Nicht weitergeben; jede Person hat eine eigene Anleitung.

## Die Kursstunden

teacher-lessons = Die Kursstunden
# $length: einer Kursstunde.
teacher-lessons-are = Kursstunden von { $length }, im Tempo des Arbeitsraums. Alle hören an der letzten Stelle auf, an der sich die Arbeit weglegen lässt.
# $lessons (Zahl): mit dem Abwechseln an dem, was der Raum hat.
teacher-lessons-in-turns = Wenn alle sich an den Maschinen und Bügeleisen des Raums abwechseln, dauert das Ganze { $lessons } Kursstunden.
teacher-lessons-fewer = Wo es weniger Maschinen oder Bügeleisen gibt, als eine Kursstunde verlangt, wechseln sich alle ab; steht ihre Zahl in der Datei des Arbeitsraums (`machines`, `overlockers`, `irons`), werden die Kursstunden damit gezählt.
teacher-lesson = Kursstunde { $number }
teacher-pile = Der Stapel der Teile
teacher-letter = Buchstabe
teacher-work = Arbeit
teacher-pupil = Person
teacher-each = Wer was tut. Wer diese Kursstunde versäumt, holt die eigene Zeile vor der nächsten nach.
teacher-everybody = alle
teacher-letters = Buchstaben
teacher-stands = Stand danach
# $first, $last: Buchstaben.
teacher-range = { $one ->
    [yes] { $first }
   *[no] { $first } bis { $last }
 }
# $work (Liste): Buchstaben mit Titeln.
teacher-new = Das hat noch niemand gemacht, also zuerst zeigen: { $work }.
# $machines (Liste)
teacher-machines = Bereitstellen, damit niemand wartet: { $machines }.
# Nur in der Meldung darüber. $count (Zahl)
teacher-machine = { $set-up ->
    [straight] { $count } x Nähmaschine, auf Geradstich gestellt
    [zigzag] { $count } x Nähmaschine, auf Zickzackstich gestellt
    [overlocker] { $count } x Overlock
    [attachment] { $count } x Nähmaschine mit dem Faltenlegefuß
   *[iron] { $count } x Bügeleisen mit Brett
 }
# $has, $lessons (Zahlen): was der Raum hat; Kursstunden, die aus dieser dann werden.
teacher-turns = { $place ->
    [machines] Nähmaschinen im Raum: { $has }. Daran abwechseln und für diese Kursstunde { $lessons } einplanen.
    [overlockers] Overlock-Maschinen im Raum: { $has }. Daran abwechseln und für diese Kursstunde { $lessons } einplanen.
   *[irons] Bügeleisen im Raum: { $has }. Damit abwechseln und für diese Kursstunde { $lessons } einplanen.
 }

## Die Blätter

teacher-progress = Fortschritt
teacher-progress-are = Einen Buchstaben abhaken, wenn seine Arbeit getan ist und jede Prüfung darin stimmt. Ein Strich: Diese Anleitung hat die Arbeit nicht.
teacher-marks = Bewertung
teacher-marks-are = Dieselben Buchstaben, für das, was beim Ansehen der Arbeit auffällt.
teacher-labels = Etiketten für die Stapel
teacher-labels-are = Die Etiketten auseinanderschneiden und auf jeden Stapel eines legen. Jedes nennt, was darunter liegen muss.
teacher-form = Maßblatt
teacher-form-are = Über dem messen, was unter dem Kleidungsstück getragen wird. Das Maßband liegt flach an und wird nicht gezogen. Jedes Maß zweimal nehmen.
teacher-practice = Fertigkeiten und Übungsstücke
teacher-way = Arbeitsweise
# $ways, $strips (Zahlen)
teacher-practice-are = Jede der { $ways } Arbeitsweisen wird geübt, bevor sie am Kleidungsstück genäht wird: { $strips } Streifen von { $length } x { $depth } je Person und Arbeitsweise. Dafür { $bought } Stoff ({ $cloth }) mehr kaufen.
# Von wem beim Zuschneiden nicht da war oder nicht mehr da ist.
teacher-later = Später zugeschnitten
teacher-later-are = Nach dem ersten Zuschnitt ist jemand gekommen, gegangen oder neu gemessen worden. Was zugeschnitten ist, bleibt; nur das hier Genannte wird neu zugeschnitten, aus den später geplanten Abschnitten.
# $cloths (eine Liste): was von jedem Stoff später zugeschnitten wird; seine Abschnitte folgen denen des ersten Zuschnitts.
teacher-later-buy = Dafür bereithalten, außer dem zuerst Gekauften: { $cloths }.
# Nur im Satz darüber gesagt.
teacher-later-cloth = { $length } Stoff ({ $cloth })
teacher-later-stays = Bleibt, wie es zugeschnitten ist:
teacher-later-anew = Neu zuschneiden:
teacher-later-spare = Nicht mehr gebraucht; das Etikett abnehmen:
teacher-later-sewn = Neu nähen, soweit es genäht war:
# $mark: die Nummer eines Teils. $count (Zahl)
teacher-later-piece = { $mark } { $piece }, { $count } x { $length } x { $depth }

## Zettel

handout-all = Zettel für die Kursstunden
handout-for = Zettel für die Kursstunden, { $whose }
handout-are = Die Zettel auseinanderschneiden und zu Beginn der Kursstunde austeilen. Die Buchstaben sind die der Anleitung. Ein versäumter Zettel wird vor der nächsten Kursstunde nachgeholt.
# $stands: ein ganzer Satz.
handout-stop = Nach { $letter } aufhören. Dann gilt: { $stands }
