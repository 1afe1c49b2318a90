### Cut panels that widen to the hem, head to tail from rectangles.

figure-gores-head = The rectangle
figure-gores-top = top
figure-gores-hem = hem
figure-gores-alt = { $paired ->
    [yes] A rectangle { $wide } by { $high } with a slanting line from { $narrow } on its upper edge to { $broad } on its lower edge: two gores head to tail.
   *[no] A rectangle { $wide } by { $high } with a slanting line from { $narrow } on its upper edge to its lower right corner: one gore.
 }
figure-gores-row-head = { $times ->
    [one] One rectangle, { $count ->
        [one] one gore
       *[other] { $count } gores
    }
   *[other] { $times } rectangles, { $count ->
        [one] one gore
       *[other] { $count } gores
    } each
 }
figure-gores-diagonal = both diagonals { $diagonal }
figure-gores-row-alt = A rectangle { $wide } by { $high }, both diagonals { $diagonal }, with slanting lines from its upper to its lower edge, from the left: { $lines }. The gores between them lie head to tail.
figure-gores-caption = The gores lie in their rectangle.
