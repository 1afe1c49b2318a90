### A row on a line across a piece: laid on upside down, then turned down.

figure-row-laid = Laid on and sewn
figure-row-hem-up = hem up, wrong side out
figure-row-hanging = Turned down
figure-row-alt = { PIECE($on, at: "start") }, right side up, with { EDGE($row) } laid on it upside down, { $seam-width } below a line ({ line-place }), and sewn on the line. Turned down, it hangs { $hangs }, right side out.
figure-row-caption = { $gathered ->
    [yes] The gathered row is sewn on upside down and falls over its own seam.
   *[no] The row is sewn on upside down and falls over its own seam.
 }
