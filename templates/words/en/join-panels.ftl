### Sew the copies of a piece side by side to one flat length.

join-panels-title = Sew the panels of { PIECE($piece) } together
    .number = { $seam-width }
join-panels-aim = { $panels } panels become one flat length; its two outer sides stay open.
join-panels-lay = Lay each panel on the next, { faces-together } and top to top, but not the last on the first. { pin-start } along the sides, { $length } each.
    .check = All top edges lie at the same end, and two sides are left over: the outer ones.
    .remedy = Take out the one that lies the wrong way, and turn it.
join-panels-sew = Sew { $length }, { $seam-width } from the edge, { $stitch }, a few stitches back at both ends. Fold both margins to the same side with your fingernail, at every seam the same way round.
join-panels-measure = Lay { PIECE($piece) } flat and measure the lower edge from side to side: { $whole }.
    .check = It is { $whole } long, both outer sides still unhemmed.
    .tolerance = { $off } more or less
    .remedy = If it is too long, sew one seam again a little wider; if too short, unpick one and sew it narrower.
