### Hang loops on the inside of an edge.

figure-loops-inside = Inside up
figure-loops-note = { $loops ->
    [one] { $loops } loop: ends level with the cut edge, sewn twice. Not to scale.
   *[other] { $loops } loops: ends level with the cut edge, sewn twice. Not to scale.
 }
figure-loops-alt = A loop of tape on the inside, both ends level with the cut edge, hanging down { $hangs }, sewn twice { $row } from the edge.
figure-loops-caption = { $loops ->
    [one] How the loop lies.
   *[other] How each of { $loops } loops lies.
 }
