### Ein Verschluss an einer fertigen Taille.

figure-fastening-outside = Außenseite, geschlossen
figure-fastening-note = Was innen oder zwischen den Enden liegt, ist gestrichelt. Nicht maßstäblich.
figure-fastening-alt = { $overlaps ->
    [yes] Die geschlossenen Enden der Öffnung von außen, oben bündig. Das rechte liegt { $overlap } über dem anderen. Die erste Hälfte ist innen { $below } unter { $under ->
        [yes] dem Bund
       *[no] der Oberkante
     } angenäht, die andere dort, wo sie auf sie trifft.
   *[no] Die geschlossenen Enden der Öffnung von außen, oben bündig. Die Enden stoßen aneinander. Die erste Hälfte ist innen { $below } unter { $under ->
        [yes] dem Bund
       *[no] der Oberkante
     } angenäht, die andere dort, wo sie auf sie trifft.
 }
# Knöpfe liegen außen, mit ihnen ihre Löcher oder Schlingen.
figure-fastening-alt-buttons = Die geschlossenen Enden des Schlitzes von außen. { $count ->
    [one] Ein Knopf
   *[other] { $count } Knöpfe
 } mit { $loops ->
    [yes] je einer Schlinge an der Kante des rechten Endes, die erste
   *[no] je einem Knopfloch im Übertritt, das erste
 } { $below } unter { $under ->
    [yes] dem Bund
   *[no] der oberen Kante
 }.
figure-fastening-caption = { $count ->
    [one] Wo beide Hälften angenäht werden.
   *[other] Wo beide Hälften jedes der { $count } Verschlüsse angenäht werden.
 }
