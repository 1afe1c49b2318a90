### A bottom edge that is cut higher in front than behind.

figure-dipped-hem-head = { PIECE($piece, at: "start") }, the bottom edge
figure-dipped-hem-front = front
figure-dipped-hem-side = side
figure-dipped-hem-back = back
figure-dipped-hem-alt = The bottom edge of { PIECE($piece) } laid out straight, with a line above it to cut along: { $front } up at the front, { $side } at the sides, nothing at the back.
figure-dipped-hem-caption = Where the edge is cut higher; what comes off is hatched both ways, and drawn deeper than it is.
