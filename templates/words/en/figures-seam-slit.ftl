### Finish the part of a seam that is open at the hem, as a slit or as a vent.

figure-slit-head = Right side up
figure-slit-head-vent = Inside up
figure-slit-end = end of the opening
figure-slit-alt = A seam, right side up, open for { $long } above the hem; rows { $beside } beside the opening meet across its end.
figure-slit-alt-vent = A vent seen from inside: the margin of one side is folded back and sewn down, that of the other stands out beneath it by { $margin }; a slanting row holds both at the end of the opening.
figure-slit-caption = How the opening at the hem is stitched.
