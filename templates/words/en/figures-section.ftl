### What all cuts through the work say alike.

figure-right-side-up = Right side up
figure-inside-up = Inside up
figure-finished-edge = finished edge
# Ends a caption. $sided: whether a cloth in the cut has a right and a wrong side.
figure-hatched = { $sided ->
    [yes] { " " }The hatched half of a cloth is its wrong side.
   *[no] { "" }
 }
