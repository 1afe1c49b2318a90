### A slit and the godet in it.

figure-godets-slit = The slit
figure-godets-set-in = The godet set in
figure-godets-alt = A slit { $slit } up from the edge, with a row of stitches round its point; beside it the godet set in, pointed above and { $wide } wide at the hem.
figure-godets-caption = One slit, and the godet in it.
