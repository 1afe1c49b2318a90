### Eine Reihe auf einer Linie quer über ein Teil: kopfüber aufgelegt, dann heruntergeklappt.

figure-row-laid = Aufgelegt und genäht
figure-row-hem-up = Saum oben, linke Stoffseite außen
figure-row-hanging = Heruntergeklappt
figure-row-alt = { PIECE($on, at: "start") }, rechte Stoffseite oben; { EDGE($row) } liegt kopfüber darauf, { $seam-width } unter einer Linie ({ line-place }), und ist auf der Linie festgenäht. Heruntergeklappt hängt die Reihe { $hangs } weit, rechte Stoffseite außen.
figure-row-caption = { $gathered ->
    [yes] Die gekräuselte Reihe wird kopfüber aufgenäht und fällt über die eigene Naht.
   *[no] Die Reihe wird kopfüber aufgenäht und fällt über die eigene Naht.
 }
