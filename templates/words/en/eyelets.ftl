### Work two holes in a casing to come, where the ends of its cord come out.
### $piece: the band, or the piece whose edge is folded down; $folded: which of the two.

eyelets-title = Work the holes for the cord in { PIECE($piece) }
    .number = { $hole }
eyelets-aim = Two { cord-holes }, { $apart } apart, lie at the middle of the front.

## Mark

# Said only inside the messages here.
eyelets-along = { $folded ->
    [band] along one long edge, which is folded over to the outside later
   *[edge] along the edge that is folded down later
 }
eyelets-cross = Draw a line straight in from there: it is the middle of the front. Make a cross { $half } to each side of it, { $from-edge } from the edge.
    .check = The crosses are { $apart } apart, and both { $from-edge } from the edge.
    .tolerance = { $off } more or less
    .remedy = Wipe off the cross that lies wrong and make it again.
eyelets-mark-ring = On the right side of { PIECE($piece) }, measure { $middle } from { side-seam } { eyelets-along }. { eyelets-cross }
    .check = { eyelets-cross.check }
    .tolerance = { eyelets-cross.tolerance }
    .remedy = { eyelets-cross.remedy }
eyelets-mark-flat = On the right side of { PIECE($piece) }, measure { $middle } from one short end { eyelets-along }. { eyelets-cross }
    .check = { eyelets-cross.check }
    .tolerance = { eyelets-cross.tolerance }
    .remedy = { eyelets-cross.remedy }
# Two panels go round: one of them is the front.
eyelets-mark-panel = Take the piece of { PIECE($piece) } that becomes the front. On its right side, measure { $middle } from one upright edge { eyelets-along }. { eyelets-cross }
    .check = { eyelets-cross.check }
    .tolerance = { eyelets-cross.tolerance }
    .remedy = { eyelets-cross.remedy }

## Strengthen

eyelets-patch-iron = Cut two squares of { $backing }, { $patch } each way. Lay one on the wrong side behind each cross, the glue, which feels rough, downwards. Press { $seconds } seconds through a damp cloth without sliding, and let it lie flat until it is cold.
    .check = No corner lifts when you bend it.
    .remedy = Press that place again, a little longer.
eyelets-patch-cloth = Cut two squares of the same cloth, { $patch } each way, and pin one on the wrong side behind each cross.

## Buttonholes

eyelets-buttonholes = Set the machine to buttonholes and try one of { $hole } on an offcut with a patch behind. Then sew one over each cross, at right angles to the edge, { $half-hole } of it to each side of the cross.
    .check = Both are { $hole } long and stand side by side.
    .remedy = Unpick it and sew it again. Do not cut it before.
eyelets-cut = Cut both open with a seam ripper, a pin across each of their ends. Trim the patches close to the stitches on the wrong side, but not into them.
    .check = The end of the cord goes through both.

## Eyelets worked by hand

eyelets-ring = Draw a circle { $hole } wide round each cross, and sew small running stitches on it through both layers.
eyelets-pierce = Pierce each cross with an awl, on cork or a folded towel, until the hole fills its circle.
eyelets-work = Sew over the edge of each hole with { $stitches } stitches close beside each other, each over the running stitches, and fasten the thread behind.
    .check = The hole is { $hole } wide and no raw edge shows.
    .remedy = Work a second round between the stitches of the first.

## Eyelets of metal

eyelets-pierce-metal = Pierce each cross with an awl, on cork or a folded towel, just so wide that the neck of an eyelet ({ $eyelet }) goes through tightly.
eyelets-set = Set one on an offcut with a patch behind first. Then push an eyelet through each hole from the right side, lay its washer over it behind, and close the two with the setting tool, as its leaflet says.
    .check = It does not turn, and a hard pull does not move it.
    .remedy = Close it once more. If it comes out, the hole is too wide: take a larger eyelet.
