### Die Blätter für die Kursleitung: Stunden, Fortschritt, Etiketten, Maßblatt, Übungsstücke.

teacher-skip = Zu den Kursstunden springen
teacher-for = Blätter für die Leitung: { $whose }
teacher-keep = Diese Blätter enthalten Namen und Notizen. Nicht weitergeben; jede Person hat eine eigene Anleitung.

## Die Kursstunden

teacher-lessons = Die Kursstunden
# $length: einer Kursstunde.
teacher-lessons-are = Kursstunden von { $length }, im Tempo des Arbeitsraums. Alle hören an der letzten Stelle auf, an der sich die Arbeit weglegen lässt.
teacher-lesson = Kursstunde { $number }
teacher-pile = Der Stapel der Teile
teacher-letter = Buchstabe
teacher-work = Arbeit
teacher-pupil = Person
teacher-stops = Wo jede Person aufhört: nach diesem Buchstaben.
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
# $first, $last: Buchstaben. $time: der ganzen Kursstunde.
teacher-absent = Wer diese Kursstunde versäumt, holt { $first } bis { $last } vor der nächsten nach: etwa { $time }.

## Die Blätter

teacher-progress = Fortschritt
teacher-progress-are = Einen Buchstaben abhaken, wenn seine Arbeit getan ist und jede Prüfung darin stimmt. Ein Strich: Diese Anleitung hat die Arbeit nicht.
teacher-marks = Bewertung
teacher-marks-are = Dieselben Buchstaben, für das, was beim Ansehen der Arbeit auffällt.
teacher-labels = Etiketten für die Stapel
teacher-labels-are = Die Etiketten auseinanderschneiden und auf jeden Stapel eines legen. Jedes nennt, was darunter liegen muss.
teacher-form = Maßblatt
teacher-form-are = Über dem messen, was unter dem Kleidungsstück getragen wird. Das Maßband liegt flach an und wird nicht gezogen. Jedes Maß zweimal nehmen.
teacher-practice = Übungsstücke
# $ways, $strips (Zahlen)
teacher-practice-are = Jede der { $ways } Arbeitsweisen wird geübt, bevor sie am Kleidungsstück genäht wird: { $strips } Streifen von { $length } x { $depth } je Person und Arbeitsweise. Dafür { $bought } Stoff ({ $cloth }) mehr kaufen.
