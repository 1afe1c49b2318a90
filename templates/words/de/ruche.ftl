### Einen fertigen Streifen entlang einer oder zwei Linien kräuseln und flach auf ein anderes Teil nähen.
### $lines: eine entlang der Mitte des Streifens, oder zwei innerhalb seiner langen Kanten.

ruche-title = { PIECE($strip) } auf { PIECE($on) } nähen
    .number = { $cloth } → { $length }
ruche-aim = { $cloth } Streifen liegen auf { $length }: { $ratio } zu 1.

## Markieren

# Ein flacher Streifen, dessen Enden keine Naht fasst: Die des Teils sind schon fertig.
ruche-ends = An beiden Enden von { PIECE($strip) } { $under } auf die linke Stoffseite einschlagen und die Brüche feststeppen, { $beside } daneben.
ruche-mark-ring = { $parts ->
    [8] { PIECE($strip) } in Achtel teilen und alle { $cloth-part } markieren, { PIECE($on) } alle { $part }, die ersten Markierungen an den Seitennähten.
   *[4] { PIECE($strip) } in Viertel teilen und alle { $cloth-part } markieren, { PIECE($on) } alle { $part }, die ersten Markierungen an den Seitennähten.
 }
ruche-mark-flat = { $parts ->
    [8] { PIECE($strip) } in Achtel teilen und alle { $cloth-part } markieren, { PIECE($on) } alle { $part }.
   *[4] { PIECE($strip) } in Viertel teilen und alle { $cloth-part } markieren, { PIECE($on) } alle { $part }.
 }
ruche-mark-line = Auf { PIECE($on) } eine Linie anzeichnen, { line-place }.

## Kräuseln

ruche-row = { $lines ->
    [two] { $inset } innerhalb jeder langen Kante von { PIECE($strip) } eine Kräuselnaht steppen. { rows-runs }
   *[one] Entlang der Mitte von { PIECE($strip) } eine Kräuselnaht steppen. { rows-runs }
 }
ruche-pull = { $parts ->
    [8] { $lines ->
        [two] Am anderen Ende die Unterfäden beider Kräuselnähte anziehen, bis jedes Achtel { $part } misst. Auch diese Fadenenden um eine Stecknadel wickeln.
       *[one] Am anderen Ende den Unterfaden anziehen, bis jedes Achtel { $part } misst. Auch diese Fadenenden um eine Stecknadel wickeln.
    }
   *[4] { $lines ->
        [two] Am anderen Ende die Unterfäden beider Kräuselnähte anziehen, bis jedes Viertel { $part } misst. Auch diese Fadenenden um eine Stecknadel wickeln.
       *[one] Am anderen Ende den Unterfaden anziehen, bis jedes Viertel { $part } misst. Auch diese Fadenenden um eine Stecknadel wickeln.
    }
 }
    .check = { $lines ->
        [two] { PIECE($strip, at: "start") } ist auf beiden Linien { $length } lang, die Kräuselung ist gleichmäßig.
       *[one] { PIECE($strip, at: "start") } ist { $length } lang, die Kräuselung ist gleichmäßig.
     }
    .tolerance = bis { $ease } zu kurz: wird eingehalten
    .remedy = Mehr als { $ease } zu kurz: die Kräuselung lockern. Zu lang: enger zusammenziehen.

## Aufnähen

ruche-level = Die Enden von { PIECE($strip) } bündig mit den Enden von { PIECE($on) } legen.
ruche-lay = { $lines ->
    [two] { PIECE($strip) } mit der rechten Stoffseite nach oben auf { PIECE($on) } legen, jede Kräuselnaht auf ihre Linie, und an den Markierungen { pin }, dann alle { $spacing }.
   *[one] { PIECE($strip) } mit der rechten Stoffseite nach oben auf { PIECE($on) } legen, die Kräuselnaht auf ihre Linie, und an den Markierungen { pin }, dann alle { $spacing }.
 }
ruche-sew-ring = { $lines ->
    [two] Auf jeder Kräuselnaht steppen, { $length } rundum, { $stitch }. Das Ende drei Stiche über den Anfang nähen.
   *[one] Auf der Kräuselnaht steppen, { $length } rundum, { $stitch }. Das Ende drei Stiche über den Anfang nähen.
 }
    .check = Beide Kanten von { PIECE($strip) } stehen frei und sind gleichmäßig.
    .remedy = Wo die Naht von der Linie abgekommen ist, auftrennen und neu steppen.
ruche-sew-flat = { $lines ->
    [two] Auf jeder Kräuselnaht steppen, { $length }, { $stitch }; an beiden Enden verriegeln.
   *[one] Auf der Kräuselnaht steppen, { $length }, { $stitch }; an beiden Enden verriegeln.
 }
    .check = { ruche-sew-ring.check }
    .remedy = { ruche-sew-ring.remedy }
