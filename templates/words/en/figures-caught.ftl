### What is laid on an edge to be caught in its seam.

figure-caught-edges = cut edges
figure-caught-dotted = dotted: the seam to come
figure-caught-alt = Cut through { EDGE($in) }, right side up: { EDGE($strip) } lies on it, cut edges level, basted { $row } from them; the seam comes { $seam-width } from the edges.
figure-caught-caption = The strip is basted inside the allowance, just outside the seam to come.{ figure-hatched }
figure-piping-alt = Cut through { EDGE($in) }, right side up: { PIECE($strip) } is folded round a cord { $thick } thick, its cut edges level with the edge, basted close beside the cord; the seam comes { $seam-width } from the edges.
figure-piping-caption = The cord lies just inside the seam to come.{ figure-hatched }
