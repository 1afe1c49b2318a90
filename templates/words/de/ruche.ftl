### Einen fertigen Streifen entlang einer oder zwei Linien kräuseln und flach auf ein anderes Teil nähen.
### $lines: eine entlang der Mitte des Streifens, oder zwei innerhalb seiner langen Kanten.

ruche-title = { PIECE($strip) } auf { PIECE($on) } nähen
ruche-aim = { $cloth } Streifen liegen auf { $length }: { $ratio } zu 1.

## Markieren

# Ein flacher Streifen, dessen Enden keine Naht fasst: Die des Teils sind schon fertig.
ruche-ends = An beiden Enden von { PIECE($strip) } { $under } auf die linke Stoffseite einschlagen und die Brüche feststeppen, { $beside } daneben.
ruche-mark = { PIECE($strip) } in Viertel teilen und alle { $cloth-part } markieren, { PIECE($on) } alle { $part }.
ruche-mark-line = Auf { PIECE($on) } eine Linie anzeichnen, { $above } über der unteren Kante.

## Kräuseln

ruche-row = { $lines ->
    [two] { $inset } innerhalb beider langen Kanten je eine Kräuselnaht mit der größten Stichlänge steppen; nicht verriegeln, an beiden Enden { $tail } Faden hängen lassen.
   *[one] Entlang der Mitte eine Kräuselnaht mit der größten Stichlänge steppen; nicht verriegeln, an beiden Enden { $tail } Faden hängen lassen.
 }
ruche-pull = { $lines ->
    [two] Den Unterfaden jeder Kräuselnaht anziehen, bis jedes Viertel { $part } misst.
   *[one] Den Unterfaden der Kräuselnaht anziehen, bis jedes Viertel { $part } misst.
 }
    .check = { $lines ->
        [two] { PIECE($strip, at: "start") } ist auf beiden Linien { $length } lang.
       *[one] { PIECE($strip, at: "start") } ist { $length } lang.
     }
    .tolerance = bis { $ease } zu kurz: wird eingehalten
    .remedy = Mehr als { $ease } zu kurz: die Kräuselung lockern. Zu lang: enger zusammenziehen.

## Aufnähen

ruche-level = Die Enden von { PIECE($strip) } bündig mit den Enden von { PIECE($on) } legen.
ruche-lay = { $lines ->
    [two] { PIECE($strip) } mit der rechten Stoffseite nach oben auf { PIECE($on) } legen, jede Kräuselnaht auf ihre Linie, und an den Vierteln { pin }, dann alle { $spacing }.
   *[one] { PIECE($strip) } mit der rechten Stoffseite nach oben auf { PIECE($on) } legen, die Kräuselnaht auf ihre Linie, und an den Vierteln { pin }, dann alle { $spacing }.
 }
ruche-knot = An beiden Enden jeden Oberfaden mit seinem Unterfaden verknoten und die Enden auf { $knot } kürzen.
ruche-sew = { $lines ->
    [two] Auf jeder Kräuselnaht steppen, { $length }, { $stitch }.
   *[one] Auf der Kräuselnaht steppen, { $length }, { $stitch }.
 }
    .check = Beide Kanten von { PIECE($strip) } stehen frei und sind gleichmäßig.
    .remedy = Wo die Naht von der Linie abgekommen ist, auftrennen und neu steppen.
