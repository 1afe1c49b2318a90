### Die ersten Seiten: das Kleidungsstück auf einen Blick, der Plan der Sitzungen, Messen, Fachwörter; und die Pflege.

## Auf einen Blick

# Das Impressum: wer das Kleidungsstück entworfen hat, welche Fassung der Anleitung es ist, und wie sie weitergegeben werden darf.
front-author = Entwurf
front-version = Fassung
front-licence = Lizenz
front-size = Größe
# $measures: die Körpermaße, nach denen die Anleitung gemacht ist.
front-size-with = { $whose }: { $measures }
front-measure = { $name } { $value }
front-length = Länge
front-length-hem = { $length }, Saumumfang { $hem }
front-cloth = Stoff
front-cloth-of = { $cloth } { $amount }
front-cost = Material
front-cost-without = { $cost }, ohne { $materials }
front-time = Zeit
front-time-waits = { $time }, dazu { $waits }
front-wait-wash = Waschen und Trocknen vor dem Zuschneiden
front-wait-hang = Aushängen über Nacht vor { $place }
front-wait-dry = { $overnight ->
    [yes] Trocknen über Nacht bei { $place }
   *[no] Trocknen bei { $place }
 }
front-weight = Gewicht
front-skill = Können
front-skill-hand = von Hand nähen
front-skill-straight = gerade Nähte mit der Maschine nähen
front-skill-zigzag = gerade Nähte und Zickzack nähen
front-skill-overlocker = gerade Nähte nähen und mit der Overlock umgehen
# $can: eines der obigen. $place: der Buchstabe der Arbeit, bei der zuerst gekräuselt wird.
front-skill-taught = { $can }; das Kräuseln wird bei { $place } gezeigt
front-cutting = Zuschneiden
# $waits: what takes hours in this sitting and is no work.
front-sitting-waits = dazu { $waits }

## Messen

front-how = { $name ->
    [height] vom Scheitel senkrecht bis zum Boden, ohne Schuhe
    [neck-girth] rund um den Halsansatz
    [chest-girth] waagerecht um die stärkste Stelle der Brust, unter den Armen
    [waist-girth] waagerecht rundum, in der Mitte zwischen der untersten Rippe und dem oberen Rand des Hüftknochens
    [waist-height] von dort senkrecht bis zum Boden, ohne Schuhe
    [hip-girth] waagerecht um die stärkste Stelle des Gesäßes
    [hip-height] von dort senkrecht bis zum Boden, ohne Schuhe
    [hip-depth] von der Taille hinab bis zur stärksten Stelle des Gesäßes
   *[knee-height] von der Mitte der Kniescheibe senkrecht bis zum Boden
 }
front-floor = Boden, ohne Schuhe
front-drawn = { $number }: { $how }
front-measuring = Wo das Maßband liegt.
front-measuring-alt = Eine stehende Person von vorn, mit einer nummerierten Linie für jedes Maß. { $lines }.

## Fachwörter

term-right-side = rechte Seite, linke Seite
    .means = die Seite des Stoffs, die beim Tragen zu sehen ist, und die andere
term-margin = Nahtzugabe
    .means = der Stoff zwischen einer Naht und ihrer Schnittkante
term-selvedge = Webkante
    .means = die feste Kante an beiden Seiten des Stoffs, wie er verkauft wird
term-sew-back = verriegeln
    .means = zwei oder drei Stiche rückwärts über die letzten nähen, damit die Naht nicht aufgeht
term-gore = Keilbahn
    .means = ein Rockteil, das am Saum weiter ist als oben
term-baste = heften
    .means = mit langen Stichen nähen, die eine Zeit lang halten und wieder herausgezogen werden
term-lap = Übertritt
    .means = ein umgelegter Stoff, der über etwas liegt und es verdeckt
term-interfacing = Einlage
    .means = ein steifer Stoff mit Kleber auf einer Seite, der hinter ein Teil gebügelt wird, damit es fest bleibt
term-bustle = Raffung
    .means = die Falten hinten, in die eine Schleppe hochgezogen wird
term-gather = kräuseln
    .means = eine lange Kante an Fäden zusammenziehen, bis sie so lang ist wie eine kurze
term-run = Abschnitt einer Kräuselnaht
    .means = lange Stiche von einer Markierung zur nächsten
term-bobbin-thread = Unterfaden
    .means = der untere Faden einer Naht; an ihm wird gezogen
term-ease = einhalten
    .means = ein wenig Mehrlänge zwischen den Stecknadeln verteilen, ohne dass eine Falte mitgenäht wird
# So far as a hand is wide: how much of a row is unpicked, and how far a tape goes on. $hand: its width.
term-hand = Handbreit
    .means = etwa { $hand }
term-neaten = versäubern
    .means = eine Schnittkante umnähen, damit sie nicht ausfranst oder kratzt
term-topstitch = absteppen
    .means = eine Naht auf der rechten Seite, die festhält, was darunter liegt
term-raw-edge = offene Kante
    .means = eine Kante, wie sie geschnitten wurde
term-casing = Tunnel
    .means = ein Gang aus Stoff für Gummiband oder Kordel
term-strip = Streifen
    .means = ein langes gerades Teil, im Ganzen oder in Stücken geschnitten, die verbunden werden
term-offcut = Stoffrest
    .means = was vom Stoff bleibt, wenn die Teile geschnitten sind; an ihm werden Stich und Hitze ausprobiert
term-bodkin = Durchziehnadel
    .means = eine stumpfe, flache Nadel, die durch einen Tunnel geschoben wird; eine geschlossene Sicherheitsnadel tut es auch
term-ring = Ring
    .means = ein Teil, dessen beide Enden zusammengenäht sind
term-layer = Lage
    .means = eines von mehreren Teilen, die aufeinander liegen und wie eines genäht werden

## Pflege

# $fibres: die Fasern seiner Stoffe.
after-wash = Fasern: { $fibres }. So waschen, wie es die empfindlichste verlangt. Wo kein Etikett Auskunft gibt, von Hand in lauwarmem Wasser, nicht auswringen, zum Trocknen aufhängen.
    .head = Waschen
# $places: die Buchstaben der Arbeiten, bei denen gestärkt wird.
after-starch = Stärke wäscht sich aus. Nach jeder Wäsche neu stärken, wie bei { $places }.
    .head = Neu stärken
after-store = Sauber und trocken an der Taille aufhängen, fern von Heizungen und Flammen. Nicht flach pressen: Was lange gefaltet liegt, behält die Falten.
    .head = Aufbewahren
after-label = { $fire ->
    [yes] Ein zweites Band beschriften und neben das mit der Warnung vor Feuer von Hand annähen: Name oder Größe, Jahr, { $fibres }.
   *[no] Ein Band beschriften und innen an der Taille von Hand annähen: Name oder Größe, Jahr, { $fibres }.
 }
    .head = Etikett
