### Costuras en sección: cosidas, sobrehiladas, tumbadas y pespunteadas.
### $above y $below: las capas de tela del lado de arriba y del de abajo, cada una dicha como `figure-plies`.

# Una pieza, en una capa o varias.
figure-plies = { $count ->
    [1] { $piece }
   *[other] { $count } × { $piece }
 }

## Tal como se cose

figure-seam-machine = En la máquina
figure-seam-opened = Abierta, con el margen hacia arriba
# $faced: si la tela tiene derecho y revés.
figure-seam-alt = { $faced ->
    [yes] Sección de la costura: { $above } encima, { $below } debajo, derecho con derecho, con el pespunte a { $seam-width } de los bordes sin rematar. Abierta, los márgenes de las dos telas quedan de pie por el revés.
   *[no] Sección de la costura: { $above } encima, { $below } debajo, con los bordes a ras y el pespunte a { $seam-width } de los bordes sin rematar. Abierta, los márgenes de las dos telas quedan de pie por el revés.
 }
figure-seam-caption = La costura en sección, { $seam-width } de ancho.{ figure-hatched }

## Sobrehilada

figure-margin-standing = Margen de pie
figure-margin-stitch = { $by ->
    [overlocker] puntada de remalladora
    [zigzag] puntada zigzag
   *[shears] borde en picos
 }
figure-margin-alt = { $by ->
    [overlocker] Sección de la costura, con su margen de { $seam-width } de pie y todas sus capas sujetas por una misma puntada de remalladora.
    [zigzag] Sección de la costura, con su margen de { $seam-width } de pie y todas sus capas sujetas por una misma puntada zigzag.
   *[shears] Sección de la costura, con su margen de { $seam-width } de pie y todas sus capas cortadas juntas en picos.
 }
figure-margin-caption = { $by ->
    [overlocker] El margen con su puntada de remalladora alrededor de todos los bordes cortados.{ figure-hatched }
    [zigzag] El margen con su puntada zigzag alrededor de todos los bordes cortados.{ figure-hatched }
   *[shears] El margen con todos sus bordes cortados en picos.{ figure-hatched }
 }
figure-margin-edge-alt = { $by ->
    [overlocker] Sección de un borde { PIECE($piece, case: "of") }, de { $length } de largo: puntada de remalladora alrededor de su borde cortado.
    [zigzag] Sección de un borde { PIECE($piece, case: "of") }, de { $length } de largo: puntada zigzag alrededor de su borde cortado.
   *[shears] Sección de un borde { PIECE($piece, case: "of") }, de { $length } de largo, cortado en picos.
 }
figure-margin-edge-caption = { $by ->
    [overlocker] El borde cortado con su puntada de remalladora.
    [zigzag] El borde cortado con su puntada zigzag.
   *[shears] El borde cortado en picos.
 }

## Tumbada y pespunteada

figure-turned-margin-seen = Con el derecho encima, margen debajo
figure-turned-margin-seam = costura anterior
figure-turned-margin-edge = borde sobrehilado
# $onto: las piezas bajo las que va el margen. $plies: cuántas capas se atraviesan.
figure-turned-margin-alt = { $way ->
    [up] Sección de la costura, con el derecho encima: el margen de { $seam-width } va debajo, hacia arriba, hacia { PIECE($onto) }, pespunteado a { $from-seam } de la costura a través de las { $plies } capas de tela.
   *[down] Sección de la costura, con el derecho encima: el margen de { $seam-width } va debajo, hacia abajo, hacia { PIECE($onto) }, pespunteado a { $from-seam } de la costura a través de las { $plies } capas de tela.
 }
figure-turned-margin-caption = El margen va bajo { PIECE($onto) } y está pespunteado.{ figure-hatched }
