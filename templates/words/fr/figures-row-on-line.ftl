### Un rang sur une ligne en travers d’une pièce : posé tête en bas, puis rabattu.

figure-row-laid = Posé et cousu
figure-row-hem-up = ourlet en haut, envers dehors
figure-row-hanging = Rabattu
figure-row-alt = { PIECE($on, at: "start") }, endroit dessus ; { EDGE($row) } y est posé tête en bas, à { $seam-width } sous une ligne située à { line-place }, et cousu sur la ligne. Rabattu, le rang pend de { $hangs }, endroit dehors.
figure-row-caption = { $gathered ->
    [yes] Le rang froncé se coud tête en bas et tombe sur sa propre couture.
   *[no] Le rang se coud tête en bas et tombe sur sa propre couture.
 }
