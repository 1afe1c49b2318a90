### El fruncido: dónde van las pasadas y hacia dónde se tira de ellas, y cómo se reparte la tela entre las marcas.

figure-gathering-pleated = Plisado con el plisador, con el derecho encima
figure-gathering-rows = Dos pasadas de puntada larga, con el derecho encima
figure-gathering-second-row = a { $second-row } del borde
figure-gathering-tails = cabos
figure-gathering-pull = { $parts ->
    [8] Tira de los cabos hasta que cada octavo quede lo bastante corto
   *[4] Tira de los cabos hasta que cada cuarto quede lo bastante corto
 }
# $knotted: whether the tails of that end are knotted, not wound round a pin.
figure-gathering-held = { $knotted ->
    [yes] anudados por las dos caras
   *[no] enrollados en un alfiler
 }
figure-gathering-then-pin = luego, enrollar en un alfiler
figure-gathering-lengths = Liso y fruncido, a la misma escala
figure-gathering-short = { $short } fruncido, una marca cada { $part }
# Qué son los extremos del borde dibujado; después, donde la tela está repartida de forma desigual, cuánta queda detrás.
figure-gathering-ends = { $ring ->
    [yes] el borde es un aro: los dos extremos son la misma costura
   *[no] el 0 y la última marca son los extremos
 }
figure-gathering-ends-behind = { figure-gathering-ends }; { $behind } de la tela quedan por detrás
figure-gathering-pleated-alt = Pliegues con el plisador, derecho hacia arriba: una pasada a { $first-row } del borde.
figure-gathering-rows-alt = Dos pasadas de puntada larga, derecho hacia arriba, a { $first-row } y { $second-row } del borde. Cuelgan hilos de { $tail }.
figure-gathering-pulled-alt = { $knotted ->
    [yes] Los hilos de un extremo están anudados por las dos caras y cortados; se tira de los del otro extremo hasta { $part } de marca a marca y luego se enrollan en un alfiler.
   *[no] Los hilos de un extremo están enrollados en un alfiler; se tira de los del otro extremo hasta { $part } de marca a marca y luego se enrollan también en un alfiler.
 }
figure-gathering-alt = { $method ->
    [attachment] Fruncido con una pasada del plisador, a { $first-row } del borde: { $cloth } de tela lisa reducidos a { $short }, marcados a { $marks } de la tela lisa y cada { $part } del borde fruncido.
    [hand] Fruncido con dos pasadas de punto de bastilla, a { $first-row } y { $second-row } del borde: { $cloth } de tela lisa reducidos a { $short }, marcados a { $marks } de la tela lisa y cada { $part } del borde fruncido.
   *[machine] Fruncido con dos pasadas de puntada larga, a { $first-row } y { $second-row } del borde: { $cloth } de tela lisa reducidos a { $short }, marcados a { $marks } de la tela lisa y cada { $part } del borde fruncido.
 }
figure-gathering-caption = { $cloth } de tela se reducen a { $short }.
