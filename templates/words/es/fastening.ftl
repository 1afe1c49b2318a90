### Cerrar una abertura en su borde superior terminado con un corchete o automáticos, donde no lo hace ninguna cinturilla.
### $edge es el borde superior abierto; $overlaps: sus extremos se cruzan, $overlap.

fastening-title = Cierra la abertura en la cintura
fastening-aim = La cintura se cierra en { $waist } y se abre para la cadera.
# Una cinturilla cierra arriba: esto cierra el resto de la abertura por debajo.
fastening-title-under = Cierra la abertura por debajo de la cinturilla
fastening-aim-under = La abertura no se abre por debajo de la cinturilla.

fastening-lay = { $overlaps ->
    [yes] Cierra la abertura, con los extremos cruzados { $overlap } y a la misma altura arriba, y sujétalos con un alfiler.
   *[no] Cierra la abertura, con los extremos juntos y a la misma altura arriba, y sujétalos con un alfiler.
 }
    .check = Cerrado, { EDGE($edge) } mide { $waist } de contorno.
    .tolerance = { $off } de más o de menos
    .remedy = Corre los extremos hasta que mida eso.
# Se dicen solo dentro de otros mensajes. $marked: cada sitio tiene una marca.
fastening-at = { $marked ->
    [yes] en cada marca
   *[no] a { $below } por debajo del borde superior
 }
fastening-lay-under = { $overlaps ->
    [yes] Cierra la cinturilla. Cruza { $overlap } los bordes de la abertura que hay debajo y sujétalos con alfileres.
   *[no] Cierra la cinturilla. Pon juntos los bordes de la abertura que hay debajo y sujétalos con alfileres.
 }
    .check = La abertura queda lisa y sus bordes acaban a la misma altura.
    .tolerance = { $off } de más o de menos
    .remedy = Sube o baja un borde hasta que sea así.
# Varios: el primero arriba, los demás debajo.
fastening-mark = Marca el sitio de { $count } cierres: el primero a { $below } por debajo del borde superior, los siguientes cada { $apart } a lo largo de la abertura.
    .check = Hay { $count } marcas, en los dos extremos.
fastening-mark-under = { $count ->
    [one] Marca el sitio del cierre, a { $apart } por debajo de la cinturilla.
   *[other] Marca el sitio de { $count } cierres: el primero a { $apart } por debajo de la cinturilla, los siguientes cada { $apart } a lo largo de la abertura.
 }
    .check = Hay una marca para cada uno en los dos bordes.
fastening-hook = Cose el gancho por dentro del extremo que va encima, { fastening-at }, con la punta a { $hook-in } del extremo. Cose alrededor de los dos agujeros y por encima de la punta, sin que se vea ninguna puntada por fuera.
    .check = No se mueve al tirar.
    .remedy = Vuelve a coser alrededor.
fastening-bar = Cose la barra por fuera del extremo de debajo, a { $bar-in } de su borde, donde la alcance el gancho.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Vuelve a coser la barra en su sitio.
fastening-eye = Cose el ojal metálico por dentro del otro extremo, donde lo alcance el gancho, de modo que apenas sobresalga.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Vuelve a coser el ojal en su sitio.
fastening-snap-on-top = Cose la mitad plana de un automático por dentro del extremo que va encima, { fastening-at } y a { $snap-in } del extremo: cuatro puntadas por cada agujero.
    .check = No se ve ninguna puntada por fuera, y no se mueve al tirar.
    .remedy = Vuelve a coserla cogiendo solo la capa interior.
fastening-snap-beneath = Apriétala sobre el extremo de debajo, marca dónde queda su centro y cose ahí la otra mitad.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Vuelve a coser en su sitio la mitad de debajo.
# Se dicen solo como partes de los de arriba.
fastening-closed =
    .check = { $under ->
        [yes] Cerrada, la abertura queda lisa y sus bordes acaban a la misma altura.
       *[no] Cerrada, la cintura mide { $waist } de contorno y sus extremos quedan a la misma altura.
     }
    .tolerance = { $off } de más o de menos

## Botones

fastening-buttonhole = Marca un ojal de { $buttonhole } de largo en el extremo que va encima, { fastening-at }: en ángulo recto con el borde, desde { $half } hacia dentro. Donde solo haya una capa, prende detrás un cuadrado de tela firme de { $patch } de lado. Cóselo como hace los ojales tu máquina, pero antes uno en un retal igual de grueso.
    .check = El botón pasa por el del retal y no se sale solo.
    .remedy = Cóselo un poco más largo o más corto y vuelve a probar.
fastening-cut = Abre el ojal con un abrecosturas, con un alfiler atravesado en cada uno de sus extremos.
fastening-button = Vuelve a cerrar la abertura. Clava un alfiler por el ojal, a { $beyond } de su extremo exterior, y marca ahí el extremo de debajo, a { $button-in } de su borde. Cose el botón en la marca, con un tallo corto de hilo por debajo.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Vuelve a coser el botón en su sitio.
fastening-loop = En el borde del extremo que va encima, { fastening-at }, pasa un hilo fuerte cuatro veces de ida y vuelta sobre { $button }, tan flojo que el botón pase justo. Cúbrelo de un extremo a otro con puntadas de ojal muy juntas.
    .check = El botón pasa y no se sale solo.
    .remedy = Vuelve a hacerla, más tensa o más floja.
fastening-loop-button = Cierra la abertura, estira la presilla y marca el otro extremo en el centro de la presilla. Cose el botón en la marca, con un tallo corto de hilo por debajo.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Vuelve a coser el botón en su sitio.
