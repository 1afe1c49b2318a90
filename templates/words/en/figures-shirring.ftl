### Shirring: where the rows of elastic thread lie, and how far they draw the cloth in.

figure-shirring-rows = Rows on the right side
figure-shirring-drawn = { $rows } rows draw it in, to one scale
figure-shirring-stretched = stretched { $cloth }
figure-shirring-rest = at rest { $length }
figure-shirring-alt = { $rows } rows of elastic thread, the first { $from-edge } from the edge and then every { $spacing }, draw { $cloth } in to { $length }.
figure-shirring-caption = { $rows } rows, the first { $from-edge } from the edge.
