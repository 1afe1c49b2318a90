### Coser goma directamente a un borde y volverla hacia dentro, sin jareta.

sewn-elastic-title = Cose la goma ({ $elastic }) { EDGE($edge, case: "to") }
sewn-elastic-aim = La goma recoge { $cloth } de tela en { $length }.
sewn-elastic-join = Corta { $cut } de la goma ({ $elastic }). Monta los extremos { $overlap } y únelos con tres pasadas de zigzag.
sewn-elastic-mark = { $parts ->
    [8] Marca los octavos del aro de goma, cada { $part }, y los { EDGE($edge, case: "of") }, cada { $cloth-part }, las primeras marcas en la unión y en { side-seam }.
   *[4] Marca los cuartos del aro de goma, cada { $part }, y los { EDGE($edge, case: "of") }, cada { $cloth-part }, las primeras marcas en la unión y en { side-seam }.
 }
sewn-elastic-pin = Coloca el aro por el revés, a lo largo { EDGE($edge, case: "of") }, su borde a ras del borde de la tela, y préndelo en las marcas con alfileres.
    .check = La unión está en { side-seam } y el aro no está torcido.
    .remedy = Suéltalo donde esté torcido y dale la vuelta.
sewn-elastic-sew = Con la goma encima, estírala de marca a marca hasta que la tela quede plana debajo y cose a lo largo del borde de la tela, { $cloth } todo alrededor. Tira lo mismo por delante que por detrás del prensatelas: si solo tiras por delante, la aguja se dobla.
    .check = La tela está repartida por igual entre las marcas.
    .remedy = Descose de marca a marca y vuelve a estirar.
sewn-elastic-turn = Vuelve goma y borde { $turn-width } hacia dentro. Por el derecho, estirada y plana, cose todo alrededor junto al borde inferior de la goma.
    .check = La goma ha quedado sujeta todo alrededor y está plana.
    .remedy = Vuelve a coser donde se haya escapado.
sewn-elastic-measure = Mide el borde sin estirar: { $length }.
    .check = Mide { $length }.
    .tolerance = { $off } de más o de menos
    .remedy = Más largo: acerca la plancha de vapor sin tocarlo y se encogerá. Más corto: estíralo una vez del todo.
