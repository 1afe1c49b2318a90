### A dart as it is marked and as it is sewn.

figure-darts-marked = Marked on the wrong side
figure-darts-sewn = Folded and sewn
figure-darts-leg = leg { $leg }
figure-darts-alt = A dart with its middle line { $long } down from the edge and { $half } to both sides of it; both legs are { $leg } long. Folded on the middle line it is sewn { $half } from the fold at the edge, running out to nothing at the point.
figure-darts-caption = One dart, to scale.
