### Lay edges inside one another and hold them as one edge, layer by layer.

stack-layers-title = Lay { $count } layers together: { EDGE($stack) }
stack-layers-aim = One edge of { $length }, from here on called { EDGE($stack) }.
# A single layer: nothing is left to do.
stack-layers-title-single = Set { PIECE($pieces) } ready
stack-layers-aim-single = The layer is ready.

## A band folded in half, its own two edges laid on each other

stack-layers-title-fold = Fold { PIECE($band) } in half
stack-layers-fold = Fold { PIECE($band) } in half along its length, wrong sides together, both cut edges level, and press the fold.
    .check = From the fold it is { $deep } and the width of the coming seam deep.

## Mark

# Said only inside the message below. $several: layers that bear no marks yet.
stack-faces = { $several ->
    [yes] both faces of each layer
   *[no] both faces
 }
# Copies that came out otherwise: how far apart the marks of each lie, or how long each is.
stack-layers-own = { $part } (copy { $letter })
# $marked: the edges that bear no marks yet. $seam: how the place of the first mark is told.
stack-layers-mark = { $parts ->
    [8] { $seam ->
        [bright] Mark { $marked } in eighths on { stack-faces }, every { $part }, the first at the side seam with the bright thread.{ marks-on-line }
        [some] Mark { $marked } in eighths on { stack-faces }, every { $part }, the first at the side seam, with the bright thread where there is one.{ marks-on-line }
        [plain] Mark { $marked } in eighths on { stack-faces }, every { $part }, the first at the side seam.{ marks-on-line }
       *[ends] Mark { $marked } in eighths on { stack-faces }, every { $part } from one end.{ marks-on-line }
    }
   *[4] { $seam ->
        [bright] Mark { $marked } in quarters on { stack-faces }, every { $part }, the first at the side seam with the bright thread.{ marks-on-line }
        [some] Mark { $marked } in quarters on { stack-faces }, every { $part }, the first at the side seam, with the bright thread where there is one.{ marks-on-line }
        [plain] Mark { $marked } in quarters on { stack-faces }, every { $part }, the first at the side seam.{ marks-on-line }
       *[ends] Mark { $marked } in quarters on { stack-faces }, every { $part } from one end.{ marks-on-line }
    }
 }

## Lay each layer, from the outermost to the one nearest the body

# Said only inside the messages below: which of its faces looks where, and how a layer meets the one before.
stack-layers-way = { $face ->
    [either] seam margins towards the legs
    [out] right side out
   *[in] right side towards the legs, wrong side to the layer before
 }
stack-layers-meet = { $ring ->
    [yes] Match the side seams and the marks, top edges level, and { pin } there.
   *[no] Match the ends and the marks, top edges level, and { pin } there.
 }
stack-layers-hold = Hold { PIECE($layer) } as worn, { stack-layers-way }.
# Several alike, the first that are laid.
stack-layers-nest = { $ring ->
    [yes] Put the { $copies } rings of { PIECE($layer) } inside one another, { stack-layers-way }. { stack-layers-meet }
   *[no] Lay the { $copies } pieces of { PIECE($layer) } on one another, { stack-layers-way }. { stack-layers-meet }
 }
    .check = No layer sags between the marks.
    .remedy = { $parts ->
        [8] { $hold ->
            [clips] Take off the clips of that eighth and share the looseness out again.
           *[pins] Take out the pins of that eighth and share the looseness out again.
        }
       *[4] { $hold ->
           [clips] Take off the clips of that quarter and share the looseness out again.
          *[pins] Take out the pins of that quarter and share the looseness out again.
       }
     }
# Said only inside the checks below: where a layer ends beside the one before.
stack-layers-ends = { $ends ->
    [above] { " " }Its lower edge ends { $by } above that of the layer before.
    [below] { " " }Its lower edge ends { $by } below that of the layer before.
   *[level] { "" }
 }
stack-layers-put-in = { $ring ->
    [yes] Put { PIECE($layer) } inside, { stack-layers-way }. { stack-layers-meet }
   *[no] Lay { PIECE($layer) } behind, { stack-layers-way }. { stack-layers-meet }
 }
    .check = { stack-layers-nest.check }{ stack-layers-ends }
    .remedy = { stack-layers-nest.remedy }
stack-layers-lined = Smooth { PIECE($layer) }, which hangs behind already. { stack-layers-meet }
    .check = { stack-layers-nest.check }{ stack-layers-ends }
    .remedy = { stack-layers-nest.remedy }
stack-layers-put-in-alike = { $ring ->
    [yes] Put the { $copies } rings of { PIECE($layer) } inside, { stack-layers-way }. { stack-layers-meet }
   *[no] Lay the { $copies } pieces of { PIECE($layer) } behind, { stack-layers-way }. { stack-layers-meet }
 }
    .check = { stack-layers-nest.check }{ stack-layers-ends }
    .remedy = { stack-layers-nest.remedy }

## Hold all of them

stack-layers-share = The copies do not have one length: { $lengths }. Where one is longer, share its cloth out evenly from mark to mark, { $gap } in all.
stack-layers-pin = { pin-start } every { $spacing } between the marks.
# More than two layers: those pins went through the layers that lay there then.
stack-layers-pin-through = { $hold ->
    [clips] When all layers are in, clip them all together: at the marks first, then every { $spacing }.
   *[pins] When all layers are in, put the pins through all of them: at the marks first, then every { $spacing }.
 }
stack-layers-sew = { $count ->
    [2] Sew both layers together { $from-edge } from the edge, { $length }, longest stitch. This row stays.
   *[other] Sew all { $count } layers together { $from-edge } from the edge, { $length }, longest stitch. This row stays.
 }
# A short stitch: the gathers in the layers are held for good.
stack-layers-sew-short = { $count ->
    [2] Sew both layers together { $from-edge } from the edge, { $stitch }, { $length }. This row stays.
   *[other] Sew all { $count } layers together { $from-edge } from the edge, { $stitch }, { $length }. This row stays.
 }
    .check = Every layer is caught, and no gathers are pushed into a fold.
    .remedy = Unpick that hand's width, pin it closer and sew it again.
