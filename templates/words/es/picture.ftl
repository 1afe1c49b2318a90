### La prenda tal como quedará, dibujada a partir de sus medidas.

picture-view = { $view ->
    [side] vista de lado
   *[front] vista de frente
 }
picture-layers = { $layers ->
    [one] una capa
   *[other] { $layers } capas
 }
picture-alt = { $title } sobre un maniquí sencillo, { picture-view }: { $long } de largo, { picture-layers }, unos { $across } de ancho en el dobladillo.
picture-caption = Una impresión, { picture-view }. La prenda mide { $long } de largo; cuánto se abre depende de la tela.
