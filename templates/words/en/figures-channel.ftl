### A band cut through that is folded and stitched for its elastic.

figure-channel-wide = channel { $channel }
figure-channel-fold = fold
figure-channel-raw = cut edges
figure-channel-alt = Cut through { PIECE($band) }, inside up: folded in half, { $deep } from the fold to the cut edges, one row { $edge-stitch } and one { $row } from the fold, the channel of { $channel } between them.
figure-channel-caption = The band cut through, its channel along the fold.{ figure-hatched }
