### Gummiband: auf dem Weg durch den Tunnel, die Enden gekennzeichnet und überlappt, die Länge; und die geschlossene Öffnung.
### $band ist der Bund oder das Teil, dessen Kante umgelegt wurde.

figure-elastic-through = Durch den Tunnel
figure-elastic-bodkin = Durchziehnadel
figure-elastic-mark = Die Enden kennzeichnen
figure-elastic-lap = Die Enden überlappen und nähen
figure-elastic-cut-end = Schnittende an der Linie
figure-elastic-shorten = Die Linie ziehen, das untere Ende abschneiden
figure-elastic-cut-here = das untere Ende hier abschneiden
figure-elastic-lengths = Längen, ungedehnt, in einem Maßstab
figure-elastic-casing = Tunnel { $casing }
figure-elastic-loop = Gummiband-Ring { $loop }
figure-elastic-marked-alt = { $lap } vor dem einen Ende des Gummibands ist eine Linie gezogen, am anderen ein Kreuz.
figure-elastic-through-alt = Gummiband, { $width } breit, geht durch eine Öffnung von { $gap }, sein Ende hängt heraus und ist an { PIECE($band) } festgesteckt; im anderen Ende steckt eine Durchziehnadel.
figure-elastic-alt = Das Ende mit dem Kreuz liegt an der Linie, { $lap } über dem anderen, und ist mit Zickzack genäht; der geschlossene Ring misst { $loop } in einem Tunnel von { $casing }.
figure-elastic-shorten-alt = Das obere Ende liegt wie anprobiert auf dem unteren, von einer Sicherheitsnadel gehalten. Wo das obere endet, ist eine Linie über das untere gezogen, und das untere wird { $lap } dahinter abgeschnitten, wo das obere es verdeckt.
figure-elastic-alt-long = Das obere Ende liegt bis zur Linie { $lap } weit auf dem unteren und ist mit Zickzack festgenäht; der geschlossene Ring misst { $loop } in einem Tunnel von { $casing }.
figure-elastic-caption = Das Ende festhalten, damit es nicht hineinrutscht, und die Enden so überlappen, dass eines an der Linie des anderen liegt.
figure-elastic-caption-lap = Die Enden so übereinanderlegen, dass eines an der Linie des anderen liegt.

## Die geschlossene Öffnung

figure-gap-seen = Von der Seite gesehen, auf der genäht wird, maßstäblich.
figure-gap-alt = Die Öffnung von { $gap } ist mit einer Naht geschlossen, die an beiden Enden { $past } über die erste läuft.
figure-gap-caption = Die schließende Naht beginnt und endet auf der ersten.
