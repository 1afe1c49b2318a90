# A booklet: one guide for all sizes of a spec.

booklet-whose = Sizes { $sizes }
booklet-range = { $first } to { $last }
# Before a text that is for some sizes.
# $count (number): how many sizes.
booklet-version = { $count ->
    [1] Size { $sizes }:
   *[other] Sizes { $sizes }:
}
booklet-only = { $count ->
    [1] For size { $sizes } only.
   *[other] For sizes { $sizes } only.
}

booklet-how = Choose your size by your measures and ring it in every table. Where a letter stands in a sentence, your number stands behind that letter in the table “Your numbers” of the same work, in the column of your size. The letters begin again in every work. Write your number on the line before you begin.
booklet-measure-told = Over thin clothes, the tape level and not tight, another person reading it. Take the size that your measures come nearest to; if they differ by more than a finger's width, have a guide made for you.
booklet-ring = Ring your size
booklet-numbers = Your numbers
booklet-in-head = head
booklet-in-drawing = drawing, { $sentence }
# How far a number may be off. $what: which number.
booklet-off = { $what }: may be off by
booklet-part-of-drawing = in the drawing “{ $drawing }”

booklet-cut-for = { $count ->
    [1] Cutting, size { $sizes }
   *[other] Cutting, sizes { $sizes }
}
booklet-cut-all = Cutting, every size
booklet-cut-told = Each size is cut by its own plan. Find yours and pass over the others.
booklet-plan-for = { $count ->
    [1] Plan of the sittings, size { $sizes }
   *[other] Plan of the sittings, sizes { $sizes }
}
booklet-width = { $cloth }, { $width } wide
booklet-widths = The same cloth by its width
booklet-widths-told = The cutting is planned for the width in the list above. For another width have the guide of your size made.

booklet-drawn-for = Drawn for size { $size }.
booklet-drawn-of = { $count ->
    [1] This is for size { $sizes }.
   *[other] This is for sizes { $sizes }.
}

booklet-drawn-each = The same for each size
booklet-drawings-for = Drawings, size { $size }

booklet-proved = Every size was proved before it was written.

# On the screen, where a size is chosen and its numbers stand in the sentences.
booklet-choose = Your size
booklet-every = All sizes
booklet-chosen = Size { $size }: its numbers stand in the sentences, and what is not for it is hidden.
booklet-not-chosen = Choose your size, and its numbers stand in the sentences. The choice is kept on this device alone.
