### Cerrar una abertura en su borde superior terminado con un corchete o automáticos, donde no lo hace ninguna cinturilla.
### $edge es el borde superior abierto; $overlaps: sus extremos se cruzan, $overlap.

fastening-title = Cierra la abertura en la cintura
fastening-aim = La cintura se cierra en { $waist } y se abre para la cadera.

fastening-lay = { $overlaps ->
    [yes] Cierra la abertura, con los extremos cruzados { $overlap } y a la misma altura arriba, y sujétalos con un alfiler.
   *[no] Cierra la abertura, con los extremos juntos y a la misma altura arriba, y sujétalos con un alfiler.
 }
    .check = Cerrado, { EDGE($edge) } mide { $waist } de contorno.
    .tolerance = { $waist-off } de más o de menos
    .remedy = Corre los extremos hasta que mida eso.
# Varios: el primero arriba, los demás debajo.
fastening-mark = Marca el sitio de { $count } cierres: el primero a { $below } por debajo del borde superior, los siguientes cada { $apart } a lo largo de la abertura.
    .check = Hay { $count } marcas, en los dos extremos.
fastening-hook = Cose el gancho por dentro del extremo que va encima, a { $below } por debajo del borde superior, con la punta a { $hook-in } del extremo. Cose alrededor de los dos agujeros y por encima de la punta, sin que se vea ninguna puntada por fuera.
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
fastening-snap-on-top = Cose la mitad plana de un automático por dentro del extremo que va encima, a { $below } por debajo del borde superior y a { $snap-in } del extremo: cuatro puntadas por cada agujero.
    .check = No se ve ninguna puntada por fuera, y no se mueve al tirar.
    .remedy = Vuelve a coserla cogiendo solo la capa interior.
fastening-snap-beneath = Apriétala sobre el extremo de debajo, marca dónde queda su centro y cose ahí la otra mitad.
    .check = { fastening-closed.check }
    .tolerance = { fastening-closed.tolerance }
    .remedy = Vuelve a coser en su sitio la mitad de debajo.
# Se dicen solo como partes de los de arriba.
fastening-closed =
    .check = Cerrada, la cintura mide { $waist } de contorno y sus extremos quedan a la misma altura.
    .tolerance = { $waist-off } de más o de menos
