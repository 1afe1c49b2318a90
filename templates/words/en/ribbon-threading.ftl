### Thread a ribbon through the trim on an edge.

ribbon-threading-title = Thread ribbon through the trim of { PIECE($edge) }
ribbon-threading-aim = The ribbon lies in the trim.

ribbon-threading-cut = Cut { $ribbon-length } of { $ribbon }.
ribbon-threading-seal = Stop both its ends from fraying: dab them with textile glue and let it dry, or fold them under and sew them.
# The ends are sewn over each other.
ribbon-threading-thread = Thread it on a blunt needle or bodkin. Start at { side-seam } and draw it over and under through the holes along { EDGE($edge) }.
    .check = The ribbon is not twisted and no hole is missed.
    .remedy = Draw it back to the place and go on from there.
ribbon-threading-thread-bow = Thread it on a blunt needle or bodkin. Start at the middle of the front and draw it over and under through the holes along { EDGE($edge) }.
    .check = { ribbon-threading-thread.check }
    .remedy = { ribbon-threading-thread.remedy }
ribbon-threading-sew = Lay the ends { $overlap } over each other behind the trim and sew them together by hand.
    .check = The trim lies flat and is not drawn in.
    .remedy = Unpick the ends and let the ribbon out.
ribbon-threading-bow = Even the ends and tie a bow; { $ends } hang out at each end before it is tied.
    .check = { ribbon-threading-sew.check }
    .remedy = Loosen the ribbon before you tie it.
