### Press a piece with the heat its fibre takes.
### $pieces: all pieces that this step presses; $piece: the one that is pressed now.

press-title = Press { PIECE($pieces) }
press-aim-seams = The seams lie flat.
press-aim-folds = Seams and folds lie flat.

press-seams = Press { PIECE($piece) } from the wrong side, the seams first. Lay all margins of one seam to the same side. Lift the iron and set it down, do not drag it.
    .check = The seams lie flat and nothing shines or shrinks.
    .remedy = If the cloth shines or draws together, lower the heat.
# The piece has hems or pleats too.
press-seams-then-folds = Press { PIECE($piece) } from the wrong side, the seams first, then the folds. Lay all margins of one seam to the same side. Lift the iron and set it down, do not drag it.
    .check = { press-seams.check }
    .remedy = { press-seams.remedy }
