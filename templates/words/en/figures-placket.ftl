### A placket: its slit, and the slit spread straight on the strip that binds it.

figure-placket-slit = Stitched beside the line, then cut
figure-placket-foot = foot: not cut
figure-placket-spread = Spread to a straight line, on the strip
figure-placket-at-foot = { $foot } at the foot
figure-placket-strip = { PIECE($strip, form: "bare") }, right side up; the slit lies on it, wrong side up
figure-placket-alt = A slit of { $slit } with stitches to both sides of it, { $stay } from it at the top, that meet at its foot. Spread straight, its edge lies on { PIECE($strip) }: { $seam-width } from the strip's edge in the row, at the foot { $foot } of the slit.
figure-placket-caption = The slit, and how it lies on its strip.
