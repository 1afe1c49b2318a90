### A waist cut through whose lining is turned in over all margins.

figure-lining-band = Before it is turned: the band on the lining
figure-lining-opening = opening of the channel
figure-lining-band-alt = Cut: { PIECE($lining) } inside out and { PIECE($band) } folded over it, cut edges level, sewn { $inside } from them. The opening of the channel lies between the two.
figure-lining-band-caption = The band on the lining cut through, both hems to the right. Turned right side out, the lining has the band inside it.{ figure-hatched }
figure-lining-sewn = As it is sewn: the lining outside, the hem to the right
figure-lining-turned = Turned: the inside up, the band to the left
figure-lining-alt = Two cuts. Before: { EDGE($to) }, { PIECE($band) } folded, and { PIECE($lining) } lie on each other, cut edges level, sewn { $seam-width } from them. After: the band stands up, the lining lies inside, the margins between it and the layers.
figure-lining-caption = The waist cut through, before and after the lining is turned in. One ply stands for all layers.{ figure-hatched }
