### Fuse interfacing to a piece before it is sewn.
### $cover: all of the piece, or the outer half of a folded band.

interface-title = Interface { PIECE($piece) }
interface-aim = The interfacing ({ $interfacing }) keeps { PIECE($piece) } firm and ends inside the seams.
interface-cut = { $pieced ->
    [yes] Cut { $interfacing } in strips { $deep } wide that lie edge to edge over { $long }.
   *[no] Cut { $interfacing } { $long } long and { $deep } wide.
 }
interface-lay = { $cover ->
    [half] Lay { PIECE($piece) } wrong side up. Lay the interfacing on one half of it, its long edge along the fold to come, the glue, which feels rough, downwards, the margins left bare.
   *[whole] Lay { PIECE($piece) } wrong side up. Lay the interfacing on the middle of it, the glue, which feels rough, downwards, the margins left bare.
 }
    .check = The margins are bare all round.
    .remedy = Trim the interfacing until it ends inside the seam lines.
interface-fuse = Lay a damp cloth on it. Press { $seconds } seconds a place without sliding, each place over the edge of the one before, as the leaflet of the interfacing says. Let it lie flat until it is cold.
    .check = No corner lifts when you bend it.
    .remedy = Press that place again, a little longer.
