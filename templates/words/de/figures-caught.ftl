### Was auf eine Kante gelegt wird, damit ihre Naht es mitfasst.

figure-caught-edges = Schnittkanten
figure-caught-dotted = gepunktet: die folgende Naht
figure-caught-alt = Schnitt, rechte Stoffseite oben: Auf { EDGE($in) } liegt { EDGE($strip) }, Schnittkanten bündig, { $row } daneben geheftet; die Naht kommt { $seam-width } neben den Kanten.
figure-caught-caption = Der Streifen ist in der Nahtzugabe geheftet, knapp außerhalb der folgenden Naht.{ figure-hatched }
figure-piping-alt = Schnitt, rechte Stoffseite oben: { EDGE($in) }; { PIECE($strip) } liegt um eine Schnur von { $thick } Dicke gefaltet darauf, Schnittkanten bündig, dicht neben der Schnur geheftet; die Naht kommt { $seam-width } neben den Kanten.
figure-piping-caption = Die Schnur liegt knapp innerhalb der folgenden Naht.{ figure-hatched }
