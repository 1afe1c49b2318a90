### Doblar un borde dos veces hacia el revés y coserlo a lo largo del doblez interior.
### $edge: el borde del dobladillo.

narrow-hem-title = Haz el dobladillo { EDGE($edge, case: "of") }
    .number = { $first-turn } + { $second-turn }
narrow-hem-aim = En el dobladillo no se ve ningún borde sin rematar.

narrow-hem-first-turn = Dobla { EDGE($edge) } { $first-turn } hacia el revés y marca el doblez con la plancha.
narrow-hem-second-turn = Vuelve a doblarlo { $second-turn }, de modo que el borde cortado quede dentro. Marca el nuevo doblez con la plancha y { pin } el dobladillo.
    .check = El dobladillo tiene { $second-turn } de ancho a todo lo largo.
    .tolerance = { $off } de más o de menos
    .remedy = Desdóblalo y vuelve a plancharlo donde se desvíe.
narrow-hem-sew-ring = Empieza en { side-seam }, con el revés encima. Cose sobre el dobladillo, a { $from-fold } de su doblez interior, { $length } todo alrededor, { $stitch }. Al terminar, monta tres puntadas sobre el principio.
    .check = Las puntadas sujetan el doblez en todas partes.
    .remedy = Donde no lo sujeten, vuelve a coser ese tramo.
narrow-hem-sew-flat = Con el revés encima, cose sobre el dobladillo, a { $from-fold } de su doblez interior, { $length }, { $stitch }, rematando en los dos extremos.
    .check = { narrow-hem-sew-ring.check }
    .remedy = { narrow-hem-sew-ring.remedy }
