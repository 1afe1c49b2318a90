### Ein Verschluss an einer fertigen Taille.

figure-fastening-outside = Außenseite, geschlossen
figure-fastening-note = Was innen oder zwischen den Enden liegt, ist gestrichelt. Nicht maßstäblich.
figure-fastening-alt = { $overlaps ->
    [yes] Die geschlossenen Enden der Öffnung von außen, oben bündig. Das rechte liegt { $overlap } über dem anderen. Die erste Hälfte ist innen { $below } unter der Oberkante angenäht, die andere dort, wo sie auf sie trifft.
   *[no] Die geschlossenen Enden der Öffnung von außen, oben bündig. Die Enden stoßen aneinander. Die erste Hälfte ist innen { $below } unter der Oberkante angenäht, die andere dort, wo sie auf sie trifft.
 }
figure-fastening-caption = { $count ->
    [one] Wo beide Hälften angenäht werden.
   *[other] Wo beide Hälften jedes der { $count } Verschlüsse angenäht werden.
 }
