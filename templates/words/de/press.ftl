### Ein Teil mit der Hitze bügeln, die seine Faser verträgt.
### $pieces: alle Teile, die dieser Schritt bügelt; $piece: das Teil, das gerade gebügelt wird.

press-title = { PIECE($pieces) } bügeln
press-aim-seams = Die Nähte liegen flach.
press-aim-folds = Nähte und Brüche liegen flach.

press-seams = { PIECE($piece) } von der linken Stoffseite bügeln, zuerst die Nähte. Alle Zugaben einer Naht zur selben Seite legen. Das Eisen abheben und aufsetzen, nicht schieben.
    .check = Die Nähte liegen flach, nichts glänzt oder läuft ein.
    .remedy = Glänzt der Stoff oder zieht er sich zusammen, die Hitze verringern.
# Das Teil hat auch Säume oder Falten.
press-seams-then-folds = { PIECE($piece) } von der linken Stoffseite bügeln, zuerst die Nähte, dann die Brüche. Alle Zugaben einer Naht zur selben Seite legen. Das Eisen abheben und aufsetzen, nicht schieben.
    .check = { press-seams.check }
    .remedy = { press-seams.remedy }
