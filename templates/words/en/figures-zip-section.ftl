### A zip in the opening of a seam, cut through.

figure-zip-tape = zip, its teeth black
figure-zip-alt = { $way ->
    [centred] Both margins are folded back and meet over the teeth of the zip; a row { $beside } to each side goes through cloth, margin and tape.
    [lapped] One fold lies { $near } beside the teeth and is sewn to its tape; the other laps over them and is sewn { $beside } from its fold.
   *[invisible] Over an opening of { $opening } both margins are folded back; each half of the zip is sewn to its margin alone, close beside the teeth, and no row goes through the cloth outside.
 }
figure-zip-caption = { $way ->
    [centred] The zip in the middle of its opening of { $opening }.{ figure-hatched }
    [lapped] The zip under its lap, opening { $opening }, seen from its upper end.{ figure-hatched }
   *[invisible] The invisible zip on the margins of its opening of { $opening }.{ figure-hatched }
 }
figure-zip-folded-head = Wrong side up, before the zip
figure-zip-folded-alt = The opening is basted shut. One margin is pressed back on its own side; the other is turned over the row of long stitches and folded back on itself, and its fold stands { $near } beyond that row.
figure-zip-folded-caption = The fold that the zip will lie under, seen from its upper end.{ figure-hatched }
figure-zip-beneath-head = At the machine, the zip right side up
figure-zip-over = laps over
figure-zip-under = beneath
figure-zip-beneath-alt = The fold that stands out lies on the tape beside the teeth of the zip, right side up, and is sewn { $from-fold } from its edge through fold, margin and tape. The side that laps over lies on the other, away from the needle, its margin folded back.
figure-zip-beneath-caption = Only the fold and the tape lie under the needle.{ figure-hatched }
