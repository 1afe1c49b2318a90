### Fuse interfacing to a piece before it is sewn.
### $cover: all of the piece, or the outer half of a folded band.

interface-title = Interface { PIECE($piece) }
interface-aim = The interfacing ({ $interfacing }) keeps { PIECE($piece) } firm and ends inside the seams.
interface-cut = { $pieced ->
    [yes] Cut { $interfacing } in strips { $deep } wide that lie edge to edge over { $long }.
   *[no] Cut { $interfacing } { $long } long and { $deep } wide.
 }
# $dots: what the cloth takes, no more than the glue needs.
interface-iron = { $dots ->
    [1] Set the iron to one dot, 110 °C, no steam: { PIECE($piece) } takes no more. Fuse a scrap of the interfacing to an offcut first. What its leaflet says goes before all this.
   *[2] Set the iron to two dots, 150 °C, its own steam off: the damp press cloth makes what is needed. Fuse a scrap of the interfacing to an offcut first. What its leaflet says goes before all this.
 }
    .check = The scrap can't be peeled off, and the cloth has not changed.
    .remedy = Press longer; if that does not help, ask for an interfacing that goes with this cloth.
interface-crease = Fold { PIECE($piece) } in half along its length, wrong sides together, { $half } deep. Press the fold lightly and unfold it: the crease is the fold to come.
interface-lay = { $cover ->
    [half] Lay { PIECE($piece) } wrong side up. Lay the interfacing on one half of it, its long edge along the crease, the glue, which feels rough, downwards, the margins left bare.
   *[whole] Lay { PIECE($piece) } wrong side up. Lay the interfacing on the middle of it, the glue, which feels rough, downwards, the margins left bare.
 }
    .check = The margins are bare all round.
    .remedy = Trim the interfacing until it ends inside the seam lines.
interface-fuse = { $dots ->
    [1] Lay a dry press cloth on it. Press { $seconds } seconds a place without sliding, each place over the edge of the one before. Let it lie flat until it is cold.
   *[2] Lay a damp press cloth on it. Press { $seconds } seconds a place without sliding, each place over the edge of the one before. Let it lie flat until it is cold.
 }
    .check = No corner lifts when you bend it.
    .remedy = Press that place again, a little longer.
