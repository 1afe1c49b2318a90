### Die obere Kante tiefer schneiden, wo die Taille tiefer liegt, damit der Saum waagerecht hängt.

level-waist-title = Die Taille ausgleichen
level-waist-aim = Die Taille liegt { $lowest } { $deepest } tiefer; dort wird die Kante tiefer geschnitten, und der Saum hängt waagerecht.
# Nirgends fällt etwas weg: Der Schritt hat keine Arbeiten.
level-waist-aim-level = Die Taille ist waagerecht: Nichts fällt weg.
# Nur im Ziel darüber gesagt: wo die Taille am tiefsten liegt.
level-waist-in-front = vorn
level-waist-at-the-sides = an den Seiten
level-waist-behind = hinten

## Vorn und hinten an jeder Kante finden

level-waist-hold-ring = { PIECE($edge) } wie beim Tragen halten, mit { side-seam } an der linken Seite der tragenden Person.
level-waist-lay-flat = { PIECE($edge) } flach hinlegen, rechte Stoffseite oben, die obere Kante vom Körper weg. Die beiden Enden kommen an die linke Seite der tragenden Person.
level-waist-mark-ring = { EDGE($edge, at: "start") } in Viertel teilen und von { side-seam } aus alle { $quarter } markieren: vordere Mitte, andere Seite, hintere Mitte. Beide Stoffseiten markieren.
    .check = Das letzte Viertel endet an der Naht.
    .tolerance = { $quarter-off } mehr oder weniger
    .remedy = Den Unterschied auf alle vier verteilen.
level-waist-mark-flat = { $open ->
    [yes] { EDGE($edge, at: "start") } in Viertel teilen, das erste Mal { $first } vom rechten Ende, dann alle { $quarter } markieren: vordere Mitte, andere Seite, hintere Mitte. Beide Stoffseiten markieren.
   *[no] { EDGE($edge, at: "start") } in Viertel teilen und vom rechten Ende aus alle { $quarter } markieren: vordere Mitte, andere Seite, hintere Mitte. Beide Stoffseiten markieren.
 }
    .check = { $open ->
        [yes] Das letzte Viertel endet { $margin } vor dem linken Ende.
       *[no] Das letzte Viertel endet am linken Ende.
     }
    .tolerance = { level-waist-mark-ring.tolerance }
    .remedy = { level-waist-mark-ring.remedy }
level-waist-tag = Je einen Zettel an die vordere und an die hintere Markierung stecken.

## Anzeichnen und schneiden

# Anstelle einer Länge gesagt.
level-waist-nothing = nichts
level-waist-dots = Bei jeder Markierung von der Kante nach unten messen: vorn { $front }, an den Seiten { $side }, hinten { $back }. Dort einen Punkt machen.
    .check = Wo die Taille am höchsten liegt, fällt nichts weg.
    .remedy = Sind vorn und hinten vertauscht, die Punkte entfernen und neu messen.
level-waist-line = Von Punkt zu Punkt eine fließende Linie zeichnen. Vorn und hinten eine Handbreit waagerecht laufen lassen. Die vier Markierungen nach unten über die Linie verlängern: Sie werden noch gebraucht.
    .check = Die Linie hat an den Seiten keine Ecke.
    .remedy = Etwas runder neu zeichnen.
level-waist-cut = Entlang der Linie schneiden. Das ist nun die obere Kante; alles Weitere wird von ihr aus gemessen.
