### Die Zeichnungen des Zuschneidens: Abschnitte mit ihren Streifenbahnen oder Bahnen, und die Klebestreifen auf dem Tisch.
### $cloth: wie der Stoff in der Vorlage heißt. $piece: was auf dem Zettel eines Teils steht, mit seinem Stück, wo es eines hat.

## Ein Abschnitt auf dem Stoff

figure-cutting-section = Abschnitt { $section }
figure-cutting-bolt = { $length } vom Ballen, { $cloth }
figure-cutting-lane = { $lane }: { $depth }
# Unter einem Abschnitt: eine Streifenbahn, deren Namen weder darauf noch daneben Platz haben.
figure-cutting-lane-names = Streifenbahn { $lane }, { $depth } hoch, von links: { $pieces }.
figure-cutting-fold = Bruch
figure-cutting-selvedge = Webkante
figure-cutting-between = { $width } zwischen den Webkanten
figure-cutting-over = { $length } × { $width }

## Was die Zeichnung der Abschnitte in Worten sagt

figure-cutting-caption = { $first ->
    [yes] So wird der Stoff ({ $cloth }) zugeschnitten: Abschnitt { $from } von { $sections }, maßstäblich. Kreuzweise schraffierter Stoff bleibt übrig.
   *[no] So wird der Stoff ({ $cloth }) zugeschnitten: Abschnitte { $from } bis { $to } von { $sections }, maßstäblich. Kreuzweise schraffierter Stoff bleibt übrig.
 }
# Jeder Abschnitt hat einen anderen Maßstab.
figure-cutting-caption-scales = { $first ->
    [yes] So wird der Stoff ({ $cloth }) zugeschnitten: Abschnitt { $from } von { $sections }, jeder Abschnitt in seinem eigenen Maßstab. Kreuzweise schraffierter Stoff bleibt übrig.
   *[no] So wird der Stoff ({ $cloth }) zugeschnitten: Abschnitte { $from } bis { $to } von { $sections }, jeder Abschnitt in seinem eigenen Maßstab. Kreuzweise schraffierter Stoff bleibt übrig.
 }
figure-cutting-opened = Gefalteter Stoff ist aufgeklappt gezeichnet, die untere Lage unter dem Bruch.
figure-cutting-panels = Die Bahnen liegen wie auf dem Tisch, eine Seite, die eine Webkante hatte, vorn; ihre Enden werden von links gemessen, ihre Seiten von dieser vorderen Seite.
figure-cutting-unproven = Es ist der beste Plan, der im erlaubten Aufwand gefunden wurde; ein anderer könnte höchstens { $gap } weniger kosten.
# $rows: seine Streifenbahnen oder Bahnen.
figure-cutting-alt = Abschnitt { $section }, { $length } vom Stoff ({ $cloth }): { $rows }.
# Nur im Satz darüber gesagt.
figure-cutting-alt-panel = { $piece } liegt { $near-end } bis { $far-end } vom Schnittende und { $near-side } bis { $far-side } von der vorderen Seite
figure-cutting-alt-lane = { $layer ->
    [flat] Streifenbahn { $lane }, { $depth } hoch, enthält { $pieces }
    [fold] Streifenbahn { $lane } am Bruch, { $depth } hoch, enthält { $pieces }
    [upper] Streifenbahn { $lane } in der oberen Lage, { $depth } hoch, enthält { $pieces }
   *[under] Streifenbahn { $lane } in der unteren Lage, { $depth } hoch, enthält { $pieces }
 }
figure-cutting-alt-piece = { $piece } { $length }
figure-cutting-alt-nothing = nichts

## Klebestreifen auf dem Tisch

figure-tapes-sections = { $count ->
    [one] Abschnitt { $sections }
   *[other] Abschnitte { $sections }
 }
figure-tapes-from-edge = Klebestreifen, von der vorderen Tischkante gemessen
figure-tapes-from-end = Klebestreifen, vom linken Tischende gemessen
figure-tapes-lanes = { COUNT($lanes) ->
    [one] Streifenbahn { $lanes }
   *[other] Streifenbahnen { $lanes }
 }
figure-tapes-lanes-deep = { COUNT($lanes) ->
    [one] Streifenbahn { $lanes }, { $depth } hoch
   *[other] Streifenbahnen { $lanes }, { $depth } hoch
 }
# Von einer Streifenbahn am Bruch liegt die halbe Höhe in jeder Lage.
figure-tapes-half = { $depth } halb
figure-tapes-level = vordere Tischkante, lange Stoffkante bündig
figure-tapes-level-folded = vordere Tischkante, Bruch bündig
figure-tapes-level-turned = vordere Tischkante, Schnittende bündig
figure-tapes-level-end = linkes Tischende, Schnittende bündig
figure-tapes-number = { $number }:
figure-tapes-caption = Klebestreifen auf dem Tisch für den Stoff ({ $cloth }), Abstände maßstäblich. Entlang der dicken Linie jedes Klebestreifens schneiden, seiner abgewandten Kante.
figure-tapes-alt-edge = { $count ->
    [one] Abschnitt { $sections }: Klebestreifen bei { $tapes } von der vorderen Tischkante.
   *[other] Abschnitte { $sections }: Klebestreifen bei { $tapes } von der vorderen Tischkante.
 }
figure-tapes-alt-end = { $count ->
    [one] Abschnitt { $sections }: Klebestreifen bei { $tapes } vom linken Tischende.
   *[other] Abschnitte { $sections }: Klebestreifen bei { $tapes } vom linken Tischende.
 }
# Nur in den beiden darüber gesagt.
figure-tapes-alt-tape = { COUNT($lanes) ->
    [one] { $distance } (Streifenbahn { $lanes })
   *[other] { $distance } (Streifenbahnen { $lanes })
 }
