### Recoger un aro con pasadas de hilo elástico.

shirring-title = Frunce con hilo elástico { EDGE($edge) }
    .number = { $cloth } → { $length }
shirring-aim = { $rows } pasadas de hilo ({ $thread }) recogen { $cloth } a { $length }.

## Probar

shirring-wind = Enrolla el hilo ({ $thread }) en la canilla a mano, sin estirarlo. El hilo superior se queda como está.
shirring-iron = Pon la plancha a vapor: dos puntos o más, hasta que salga vapor. Se sostiene por encima de las filas, sin tocarlas.
shirring-try = Pon una { $stitch } y cose una prueba: { $rows } pasadas en una tira de { $trial } de largo.
    .check = Tras darle vapor, se recoge a { $trial-short }.
    .tolerance = { $trial-off } de más o de menos
    .remedy = Si queda más larga, alarga la puntada o aprieta un poco la tensión de la canilla. Si queda más corta, al revés.

## Coser las pasadas

shirring-mark = Marca { $rows } líneas por el derecho: la primera a { $from-edge } { EDGE($edge, case: "of") }, las demás cada { $spacing }.
shirring-sew = Cose cada línea todo alrededor, { $cloth }, con el derecho encima, empezando en { side-seam }. Desde la segunda pasada, mantén la tela estirada y lisa. No remates y deja { $tail } de los dos hilos al principio y al final.
    .check = Las pasadas corren paralelas y no se ha saltado ninguna puntada.
    .remedy = Si se ha saltado un tramo, vuelve a coserlo por encima del hueco.
shirring-tails = Lleva al revés los cabos de cada pasada, anuda el final con el principio y córtalos a { $knot }.
shirring-steam = Mantén la plancha justo por encima de las pasadas y dales vapor; no las toques con ella.
    .check = El borde mide { $length } sin estirar y se estira hasta { $cloth }.
    .tolerance = { $off } de más o de menos
    .remedy = Si queda demasiado largo, cose una pasada más entre otras dos. Si queda demasiado corto, estíralo una vez y vuelve a medir.
