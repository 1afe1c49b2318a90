### Sew a patch pocket on a piece. Sew a pocket into the gap of a seam.

figure-pocket-head = Right side up
figure-pocket-head-inside = Inside up
figure-pocket-front = Both bags pressed to the front
figure-patch-pocket-alt = { PIECE($pocket, at: "start") } on { PIECE($on) }, right side up: { $wide } wide and { $high } high, its upper edge { $from-edge } below the top edge of the piece; stitched down both sides and along the bottom, with a triangle at both upper corners.
figure-patch-pocket-caption = How the pocket lies and is stitched.
figure-side-pocket-alt = A bag { $wide } wide and { $high } high beside a seam, sewn to both margins of a gap of { $gap } and closed along its top, side and bottom; a bar at both ends of the gap.
figure-side-pocket-caption = The bag in its seam.
