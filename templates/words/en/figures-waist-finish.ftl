### Interfacing, and waists finished with ribbon or elastic.

figure-interfacing-name = interfacing, glue down
figure-ribbon-name = ribbon
figure-elastic-name = elastic
figure-interfacing-head = Wrong side of the piece
figure-interfacing-alt = { PIECE($piece, at: "start") }, wrong side up, with interfacing { $long } by { $deep } on it; the margins are bare.
figure-interfacing-caption = The interfacing ends inside the seams.
figure-petersham-alt = Cut through the waist, inside up: the ribbon lies inside, sewn { $close } from its edge over a margin of { $lap }.
figure-petersham-caption = The ribbon turned inside.{ figure-hatched }
figure-sewn-elastic-alt = Cut through the edge, inside up: elastic { $turn-width } wide, turned inside with the cloth, a zigzag at both its edges.
figure-sewn-elastic-caption = The elastic turned inside.{ figure-hatched }
