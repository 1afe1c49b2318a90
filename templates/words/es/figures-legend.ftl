### La leyenda de las figuras: cada trama y cada signo una vez, con su nombre.

## Bordes de la tela

figure-legend-edges = Bordes de la tela
figure-legend-raw = sin rematar: hilos sueltos
figure-legend-selvedge = orillo
figure-legend-neatened = sobrehilado: zigzag
figure-legend-hemmed = con dobladillo
figure-legend-trimmed = con adorno: banda gris
figure-legend-gathered = fruncido: ondas, pliegues
figure-legend-sewn = en una costura
figure-legend-enclosed = encerrado: puntos gruesos
figure-legend-fold = doblez: raya y punto

## Caras de la tela

figure-legend-faces = Caras de la tela
figure-legend-right-side = derecho: liso
figure-legend-wrong-side = revés: rayado
figure-legend-left-over = sobra: rayado en cruz
figure-legend-behind = detrás de la tela: puntos

## En sección

figure-legend-cut = En sección, de perfil
figure-legend-stitch = dos telas, una puntada
figure-legend-half = rayado: revés
figure-legend-gathers = tela fruncida
figure-legend-overcast = bordes sobrehilados

## Puntadas y objetos

figure-legend-things = Puntadas y objetos
figure-legend-seam = costura, pespunte
figure-legend-longest = puntada más larga
figure-legend-elastic = goma
figure-legend-pin = alfiler

## Signos

figure-legend-signs = Signos
figure-legend-changed = rojo, grueso: este paso
figure-legend-callout = véase esa frase
figure-legend-mark = marca de unión
figure-legend-length = una longitud
figure-legend-left-out = centro omitido

figure-legend-alt = Las { $count } tramas y signos de las figuras, con su nombre: { $names }.
figure-legend-scale = En los cortes los anchos están a escala; la tela está dibujada más gruesa de lo que es.
figure-legend-caption = Cómo leer las figuras. Cada color lleva al lado una trama o una palabra.
