### A placket: its slit, and the slit spread straight under the strip that binds it.
### $label is the maker's own word for the strip, without an article.

figure-placket-slit = Stitched beside the line, then cut
figure-placket-foot = foot: not cut
figure-placket-spread = Spread to a straight line, the strip on top
figure-placket-at-foot = { $foot } at the foot
figure-placket-strip = { $label }, wrong side up; the slit's edge lies under it
figure-placket-alt = A slit of { $slit } with stitches to both sides of it that meet at its foot. Spread straight, its edge lies under { PIECE($strip) }: { $seam-width } from the strip's edge in the row, at the foot { $foot } of the slit.
figure-placket-caption = The slit, and how it lies under its strip.
