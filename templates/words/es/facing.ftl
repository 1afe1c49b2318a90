### Rematar un borde con una tira que se vuelve hacia dentro.
### $edge: el borde que se remata; $facing: la tira.

facing-title = Pon una vista { EDGE($edge, case: "to") }
    .number = { $seam-width }
facing-aim = El borde queda limpio y su margen va por dentro.

## Coser

facing-ends = Dobla cada extremo { PIECE($facing, case: "of") } { $ends } hacia el revés y marca el doblez con la plancha.
    .check = Doblada, la tira es tan larga como { EDGE($edge) }.
    .remedy = Abre los dobleces con la plancha y hazlos de nuevo.
facing-lay-ring = Coloca { PIECE($facing) } sobre { EDGE($edge) }, derecho con derecho, costura con costura, y { pin } todo alrededor.
facing-lay-flat = Coloca { PIECE($facing) } sobre { EDGE($edge) }, derecho con derecho, extremo con extremo, y { pin } a lo largo.
facing-sew-ring = Cose a { $seam-width } del borde, { $length } todo alrededor, { $stitch }. Al terminar, monta tres puntadas sobre el principio.
facing-sew-flat = Cose a { $seam-width } del borde, { $length }, { $stitch }, rematando en los dos extremos.
# Un margen curvo no queda plano al volverlo.
facing-clip = El borde es curvo: da piquetes en los dos márgenes cada { $clips }, hasta { $clip-short } antes de la costura.
    .check = Los márgenes quedan planos y no hay ninguna puntada cortada.
    .remedy = Donde haya una puntada cortada, vuelve a coser ese tramo un poco más adentro.
# El pespunte sujeta el margen a la tira, para que la tira no se asome hacia fuera.
facing-understitch-ring = Tumba los dos márgenes hacia { PIECE($facing) }. Con su derecho encima, bajopespuntea { PIECE($facing, form: "short") } a { $understitch } de la costura, sujetando los dos márgenes, { $length } todo alrededor.
    .check = Los dos márgenes han quedado sujetos a todo lo largo y el pespunte no llega a la tela exterior.
    .remedy = Descose donde se haya pillado la tela exterior y vuelve a coser ese tramo.
facing-understitch-flat = Tumba los dos márgenes hacia { PIECE($facing) }. Con su derecho encima, bajopespuntea { PIECE($facing, form: "short") } a { $understitch } de la costura, sujetando los dos márgenes, { $length }, rematando en los dos extremos.
    .check = { facing-understitch-ring.check }
    .remedy = { facing-understitch-ring.remedy }

## Volver hacia dentro

facing-turn = Vuelve { PIECE($facing) } hacia dentro y plancha el borde por el interior, con la costura un pelo hacia dentro.
    .check = La vista no asoma por fuera.
    .remedy = Haz rodar la costura hacia dentro con los dedos y vuelve a planchar.
facing-catch-ring = A mano, sujeta el borde libre { PIECE($facing, case: "of") } con unas puntadas invisibles a cada margen de costura que cruce.
facing-catch-flat = A mano, sujeta el borde libre { PIECE($facing, case: "of") } con unas puntadas invisibles en los dos extremos y a cada margen de costura que cruce.
