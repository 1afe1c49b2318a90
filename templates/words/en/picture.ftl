### The garment as it will look, drawn from its numbers on a plain form.

picture-view = { $view ->
    [side] from the side
    [left] from the left of the wearer
    [back] from behind
    [peeled] with its layers peeled back
   *[front] from the front
 }
picture-caption = { $view ->
    [side] From the side.
    [left] From the left of the wearer, where it is closed.
    [back] From behind.
    [peeled] With its layers peeled back.
   *[front] An impression from the front: the lengths are true, how wide it stands depends on the cloth.
 }
# Below the caption, where a model of the cloth finds that a full hem flares and so rises above what it should hide.
picture-shows = Flared as drawn, { PIECE($outer, form: "short") } ends about { $lower } above { PIECE($inner, form: "short") }; by their lengths alone it would end { $longer } below it. If it must not show, cut { PIECE($inner, form: "short") } { $cut } deep or less, in place of { $now }.

## In words

picture-alt = { $title } on a plain form, { picture-view }: { $long } long, at the hem about { $across } across. { picture-made } { picture-closed }
# Pockets that lie on it, and straps.
picture-not-drawn = Not drawn: { PIECE($pieces, form: "bare") }.
picture-made = { $count ->
    [one] From the top down: { $layers }.
   *[other] From the outside in: { $layers }.
 }
picture-layer = { $alike ->
    [one] { $tiers }
   *[other] { $alike } layers alike, each: { $tiers }
 }
picture-tier-plain = { PIECE($piece, form: "bare") } ({ $deep } deep)
picture-tier-gathered = { PIECE($piece, form: "bare") } ({ $deep } deep, gathered { $full } : 1)
picture-tier-pleated = { PIECE($piece, form: "bare") } ({ $deep } deep, in pleats)
picture-closed = { $closed ->
    [elastic] Elastic draws in the waist.
    [cord] A cord draws in the waist, and its ends hang down.
    [ties] { $at-left ->
        [yes] It is open at the left side and is tied there.
       *[no] It is open behind and is tied there.
    }
    [button] { $at-left ->
        [yes] A slit at the left side is closed by a button.
       *[no] A slit behind is closed by a button.
    }
    [zip] { $at-left ->
        [yes] A zip at the left side closes it.
       *[no] A zip behind closes it.
    }
    [slit] { $at-left ->
        [yes] A slit at the left side lets it pass the hips.
       *[no] A slit behind lets it pass the hips.
    }
   *[band] The waist stays as wide as it is.
 }
