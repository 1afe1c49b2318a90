### A top edge before it is levelled: the line to cut along, and how far it lies below the edge at each mark.

figure-levelled-edge = { PIECE($edge, at: "start") }, the top edge
figure-levelled-side = side
figure-levelled-front = front
figure-levelled-back = back
figure-levelled-drawn = { $edges ->
    [one] What is taken up is drawn deeper than it is.
   *[other] What is taken up is drawn deeper than it is. Do the same at each of the { $edges } top edges.
 }
figure-levelled-alt = The top edge of { PIECE($edge) } with a line below it to cut along: { $front } at the front, { $side } at the sides, { $back } at the back. The line is smooth and runs level at the front and the back.
figure-levelled-caption = Where the edge is cut lower.
