### Cut a long strip on the bias from one square.

figure-bias-square = The square, cut across
figure-bias-lines = Joined, and marked
figure-bias-alt = A square of { $side } cut from corner to corner, then its halves joined to a slanting piece with lines { $width } apart along its bias edge.
figure-bias-caption = The strip comes from one square.
