### Cut panels that widen to the hem, two from each rectangle by one slanting line.

figure-gores-head = The rectangle
figure-gores-top = top
figure-gores-hem = hem
figure-gores-alt = { $paired ->
    [yes] A rectangle { $wide } by { $high } with a slanting line from { $narrow } on its upper edge to { $broad } on its lower edge: two gores head to tail.
   *[no] A rectangle { $wide } by { $high } with a slanting line from { $narrow } on its upper edge to its lower right corner: one gore.
 }
figure-gores-caption = The gores lie in their rectangle.
