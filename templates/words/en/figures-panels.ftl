### Gores side by side before they are sewn to one ring.

figure-panels-head = { PIECE($piece, at: "start") }, right sides up
figure-panels-alt = { $opened ->
    [yes] The gores side by side, right sides up, from left to right: { $order }. The seam between no. { $after } and no. { $next } stays open { $open } from the top.
   *[no] The gores side by side, right sides up, from left to right: { $order }. The seam between no. { $after } and no. { $next } is the one that marks are measured from.
 }
figure-panels-caption = { $opened ->
    [yes] The gores in the order in which they are sewn, and the edges that stay open.
   *[no] The gores in the order in which they are sewn.
 }
