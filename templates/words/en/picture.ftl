### The garment as it will look, drawn from its numbers.

picture-view = { $view ->
    [side] seen from the side
   *[front] seen from the front
 }
picture-layers = { $layers ->
    [one] one layer
   *[other] { $layers } layers
 }
picture-alt = { $title } on a plain form, { picture-view }: { $long } long, { picture-layers }, at the hem about { $across } across.
picture-caption = An impression, { picture-view }. The garment is { $long } long; how wide it stands depends on the cloth.
