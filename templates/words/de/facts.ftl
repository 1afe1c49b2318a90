### Die Tabelle der Maße, und die Größen nebeneinander. `.why` steht neben einem Maß und sagt, woher es kommt.

## Länge und Säume

fact-length = fertige Länge, obere Kante bis Saum
    .why = die Höhen der Stufen zusammen
fact-length-front = Länge vorn
    .why = { fact-length-taken-up }
fact-length-sides = Länge an den Seiten
    .why = { $slants ->
        [yes] { fact-length-taken-up }; entlang der schrägen Seitennaht; senkrecht { $down }
       *[no] { fact-length-taken-up }
     }
fact-length-back = Länge hinten
    .why = { fact-length-taken-up }
# Nur in den drei darüber gesagt.
fact-length-taken-up = { $dips ->
    [yes] der Saum ist dort { $up } höher geschnitten als hinten
   *[no] an der Taille fällt { $up } weg, damit der Saum waagerecht hängt
 }
# Eine Lage, die über der untersten endet.
fact-length-layer = Länge von { PIECE($piece) }
    .why = endet { $short } über dem Saum
fact-hem = Saumweite
    .why = ein Ring aus { PIECE($piece) }
fact-hems = { $layers ->
    [2] Saumweite, beide Säume
   *[other] Saumweite, alle { $layers } Säume
 }
    .why = { $hems }
# Nur in der Angabe darüber: so viele Ringe, ihre Länge, aus welchem Teil.
fact-hem-of = { $copies } × { $round } aus { PIECE($piece) }

## Weite und Gewicht

fact-fullness = Mehrweite von der Taille bis zum Saum
    .why = { $hem } Saum auf { $waist } Taillenweite, vor dem Zusammenziehen
# $cloth: sein Name in der Vorlage.
fact-strips = Stoff ({ $cloth }) in gekräuselten Streifen
    .why = aneinandergelegt: { $strips }
fact-strip = { $count } × { $length }
fact-weight = Gewicht
    .why = der Stoff wie zugeschnitten, ohne { $left-out }
fact-weight-about = etwa { $weight }
fact-weight-unknown = unbekannt
    .why = { $cloths }
fact-no-weight = Stoff ({ $cloth }) hat keine Gewichtsangabe
thread = Faden

## Die Taille

fact-casing = Stoffweite an der Taille, ohne Gummiband
    .why = sie muss über die Hüfte gehen
fact-elastic = Gummiband, geschlossen und ungedehnt
fact-elastic-why-step = siehe den Schritt, in dem es eingezogen wird
fact-elastic-why-less = { $less } kürzer als der Taillenumfang
fact-elastic-why-carries = { $less } kürzer als der Taillenumfang, um etwa { $weight } zu tragen
fact-waist = Taillenweite, geschlossen
    .why = { $by ->
        [zip] die obere Kante; Reißverschluss
        [hook-and-bar] { fact-waist-edge }; Haken und Steg
        [hook-and-eye] { fact-waist-edge }; Haken und Öse
        [button] { fact-waist-edge }; Knopf
        [snaps] { fact-waist-edge }; Druckknöpfe
       *[ties] { fact-waist-edge }; Bindebänder
     }
# Nur als Teil der Zeile darüber gesagt.
fact-waist-edge = { $banded ->
    [yes] der Bund ohne den Übertritt
   *[no] die obere Kante ohne den Übertritt
 }
fact-opening = Schlitz unter der Taille
    .why = mit offenem Bund muss er über die Hüfte gehen

## Zeit

fact-time = Zeit für alles, etwa
    .why = im Tempo einer geübten Hand; ohne Waschen und Trocknen
# $times: so viele Male so lange wie eine geübte Hand.
fact-time-beginner = Zeit für alles, etwa
    .why = im Tempo von Anfängern, { $times }-mal so lange wie eine geübte Hand; ohne Waschen und Trocknen
fact-time-cutting = davon Zuschneiden

## Größen nebeneinander

chart-body = Körper
chart-choices = Auswahl
chart-piece = { PIECE($piece, at: "start") }
chart-count = Anzahl
chart-length = fertige Länge
chart-depth = fertige Höhe
chart-depth-folded = fertige Höhe, gefaltet
chart-cut-length = Zuschnittlänge
chart-cut-depth = Zuschnitthöhe
chart-garment = Das ganze Kleidungsstück
chart-hems = Saumweite, alle Säume
chart-weight = Gewicht, etwa
