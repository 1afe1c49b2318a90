### The thread chain that an overlocker leaves, and how it is fastened off.

figure-tail-chain = The chain at the end of the seam
figure-tail-length = about { $tail }
figure-tail-back = Draw it back under the stitches
figure-tail-needle = blunt needle
figure-tail-alt = An overlocked edge with a thread chain of about { $tail } at its end, drawn back under the stitches with a blunt needle.
figure-tail-caption = The chain goes back under its own stitches; the rest is cut off.
