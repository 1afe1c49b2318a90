### Lay edges inside one another and hold them as one edge.

stack-layers-title = Lay the { $count } layers together
stack-layers-aim = { $count } layers are one edge of { $length }.
# A single layer: nothing is left to do.
stack-layers-title-single = Set { PIECE($pieces) } ready
stack-layers-aim-single = The layer is ready.

## A band folded in half, its own two edges laid on each other

stack-layers-title-fold = Fold { PIECE($band) } in half
stack-layers-fold = Fold { PIECE($band) } in half along its length, wrong sides together, both cut edges level, and press the fold.
    .check = From the fold it is { $deep } and the width of the coming seam deep.

## Lay each layer, from the outermost to the one nearest the body

# Said only inside the messages below: which of its faces looks where.
stack-layers-way = { $face ->
    [either] seam margins towards the legs
    [out] right side out
   *[in] right side towards the legs, wrong side to the layer before
 }
stack-layers-hold = Hold { PIECE($layer) } as worn, { stack-layers-way }.
stack-layers-hold-stack = Hold the { $plies } layers that are sewn together as worn, { stack-layers-way }.
stack-layers-nest = Put the { $copies } rings of { PIECE($layer) } inside one another, { stack-layers-way }.
stack-layers-put-in = Put { PIECE($layer) } inside, { stack-layers-way }.
stack-layers-put-in-stack = Put the { $plies } layers that are sewn together inside, { stack-layers-way }.
stack-layers-put-in-rings = Put the { $copies } rings of { PIECE($layer) } inside, { stack-layers-way }.

## Mark and pin

stack-layers-mark = { $parts ->
    [8] { $threads ->
        [yes] Mark the top edge of every layer in eighths, every { $part }, the first at its side seam, with the bright thread where it has one.
       *[no] Mark the top edge of every layer in eighths, every { $part }, the first at its side seam.
    }
   *[4] { $threads ->
        [yes] Mark the top edge of every layer in quarters, every { $part }, the first at its side seam, with the bright thread where it has one.
       *[no] Mark the top edge of every layer in quarters, every { $part }, the first at its side seam.
    }
 }
stack-layers-pin = Bring the top edges level, match the side seams and the marks, and { pin } there.
    .check = No layer sags between the marks.
    .remedy = { $parts ->
        [8] Take out the pins of that eighth and share the looseness out again.
       *[4] Take out the pins of that quarter and share the looseness out again.
     }

## Sew

stack-layers-sew = Sew all { $count } layers together { $from-edge } from the edge, { $length }, with the longest stitch. This row stays in.
