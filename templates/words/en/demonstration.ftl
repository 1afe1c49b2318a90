### The plan for who shows the work, in a room or to a camera.
### $piece: a piece of the garment. $letter: that of an operation of the guide.

demonstration-skip = Skip to what to prepare
# $whose: whom or which size the guide is for.
demonstration-for = demonstration, { $whose }

## Beforehand

demonstration-prepare = To have ready
demonstration-prepare-are = Each of these is a piece of its own, worked as far as it says, so that nobody waits while you sew what was shown already.
# $time: of all parts. $parts (number)
demonstration-minutes = { $parts } parts, about { $time } in all; each is shown on one piece.
demonstration-cut = { PIECE($piece, at: "start") }, cut
demonstration-after = { PIECE($piece, at: "start") } as it is after { $letter }
demonstration-goes-on = { PIECE($piece, at: "start") }, just shown in { $letter }

## Part by part

demonstration-parts = Part by part
demonstration-view = { $view ->
    [near] Seen from near by: the hands, the needle and the edge.
   *[wide] Seen as a whole: the table and all of the cloth on it.
 }
demonstration-ready = Ready on the table:
demonstration-at-hand = At hand:
demonstration-say = Say before you begin:
demonstration-captions = Captions:
