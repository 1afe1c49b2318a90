### Gummiband unmittelbar an eine Kante nähen und nach innen wenden, ohne Tunnel.

sewn-elastic-title = Das Gummiband ({ $elastic }) an { EDGE($edge) } nähen
sewn-elastic-aim = Das Gummiband zieht { $cloth } Stoff auf { $length } ein.
sewn-elastic-join = { $cut } vom Gummiband ({ $elastic }) abschneiden. Die Enden { $overlap } übereinanderlegen und mit drei Zickzacknähten verbinden.
sewn-elastic-mark = { $parts ->
    [8] Den Gummiring in Achtel teilen und alle { $part } markieren, { EDGE($edge) } alle { $cloth-part }, die ersten Markierungen an der Lasche und an { side-seam }.
   *[4] Den Gummiring in Viertel teilen und alle { $part } markieren, { EDGE($edge) } alle { $cloth-part }, die ersten Markierungen an der Lasche und an { side-seam }.
 }
sewn-elastic-pin = Den Ring auf der linken Stoffseite auf { EDGE($edge) } legen, seine Kante bündig mit der Stoffkante, und an den Markierungen feststecken.
    .check = Die Lasche liegt an { side-seam }, der Ring ist nicht verdreht.
    .remedy = Am verdrehten Stück abnehmen und wenden.
sewn-elastic-sew = Gummi oben, von Markierung zu Markierung dehnen, bis der Stoff darunter flach liegt, und entlang der Stoffkante nähen, { $cloth } rundum. Vor und hinter dem Nähfuß gleich stark ziehen: Wer nur vorn zieht, verbiegt die Nadel.
    .check = Der Stoff ist zwischen den Markierungen gleichmäßig verteilt.
    .remedy = Von Markierung zu Markierung auftrennen und neu dehnen.
sewn-elastic-turn = Gummi und Kante { $turn-width } nach innen schlagen. Von der rechten Seite, flach gedehnt, entlang der unteren Gummikante rundum nähen.
    .check = Das Gummi ist rundum gefasst und liegt flach.
    .remedy = Wo es nicht gefasst ist, noch einmal nähen.
sewn-elastic-measure = Die Kante ungedehnt messen: { $length }.
    .check = Sie misst { $length }.
    .tolerance = { $off } mehr oder weniger
    .remedy = Länger: das Dampfbügeleisen darüberhalten, ohne zu berühren, dann zieht es sich zusammen. Kürzer: einmal ganz ausdehnen.
