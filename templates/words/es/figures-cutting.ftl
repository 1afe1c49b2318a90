### Los dibujos del corte: los cortes de tela con sus franjas o sus paños, y las cintas adhesivas en la mesa.
### $cloth: el nombre que la autora da a la tela. $piece: la etiqueta de una pieza, con su parte si la tiene.

## Un corte de tela

figure-cutting-section = Corte de tela { $section }
figure-cutting-bolt = corta { $length } del rollo de tela ({ $cloth })
figure-cutting-lane = { $lane }: { $depth }
# Debajo de un corte: una franja cuyos nombres no caben ni en ella ni al lado.
figure-cutting-lane-names = Franja { $lane }, de { $depth } de alto, desde la izquierda: { $pieces }.
figure-cutting-fold = doblez
figure-cutting-selvedge = orillo
figure-cutting-between = { $width } entre los orillos
figure-cutting-over = { $length } × { $width }

## Lo que dice en palabras el dibujo de los cortes

figure-cutting-caption = { $first ->
    [yes] Cómo cortar la tela ({ $cloth }): corte { $from } de { $sections }, a escala. La tela rayada en cruz sobra.
   *[no] Cómo cortar la tela ({ $cloth }): cortes { $from } a { $to } de { $sections }, a escala. La tela rayada en cruz sobra.
 }
# Cada corte tiene otra escala.
figure-cutting-caption-scales = { $first ->
    [yes] Cómo cortar la tela ({ $cloth }): corte { $from } de { $sections }, cada corte a su propia escala. La tela rayada en cruz sobra.
   *[no] Cómo cortar la tela ({ $cloth }): cortes { $from } a { $to } de { $sections }, cada corte a su propia escala. La tela rayada en cruz sobra.
 }
figure-cutting-opened = La tela doblada está dibujada abierta, con la capa de debajo al otro lado del doblez, en la parte inferior.
figure-cutting-panels = Los paños están como en la mesa, con un lado que tenía orillo hacia ti; sus extremos se miden desde la izquierda y sus lados desde ese lado cercano.
figure-cutting-unproven = Es el mejor plano hallado en el cálculo permitido; otro podría costar un { $gap } menos como máximo.
# $rows: sus franjas o sus paños.
figure-cutting-alt = Corte de tela { $section }, { $length } de tela ({ $cloth }): { $rows }.
# Se dice solo dentro del mensaje de arriba.
figure-cutting-alt-panel = { $piece } va de { $near-end } a { $far-end } del extremo cortado y de { $near-side } a { $far-side } del lado cercano
figure-cutting-alt-lane = { $layer ->
    [flat] la franja { $lane }, de { $depth } de alto, contiene { $pieces }
    [fold] la franja { $lane } en el doblez, de { $depth } de alto, contiene { $pieces }
    [upper] la franja { $lane } en la capa de encima, de { $depth } de alto, contiene { $pieces }
   *[under] la franja { $lane } en la capa de debajo, de { $depth } de alto, contiene { $pieces }
 }
figure-cutting-alt-piece = { $piece } { $length }
figure-cutting-alt-nothing = nada

## Cintas adhesivas en la mesa

figure-tapes-sections = { $count ->
    [one] Corte de tela { $sections }
   *[other] Cortes de tela { $sections }
 }
figure-tapes-from-edge = cintas medidas desde el borde cercano de la mesa
figure-tapes-from-end = cintas medidas desde el extremo izquierdo de la mesa
figure-tapes-lanes = { COUNT($lanes) ->
    [one] franja { $lanes }
   *[other] franjas { $lanes }
 }
figure-tapes-lanes-deep = { COUNT($lanes) ->
    [one] franja { $lanes }, { $depth } de alto
   *[other] franjas { $lanes }, { $depth } de alto
 }
# De una franja en el doblez, la mitad de su alto está en cada capa.
figure-tapes-half = la mitad de { $depth }
figure-tapes-level = borde cercano de la mesa, borde largo de la tela a ras
figure-tapes-level-folded = borde cercano de la mesa, doblez a ras
figure-tapes-level-turned = borde cercano de la mesa, extremo cortado a ras
figure-tapes-level-end = extremo izquierdo de la mesa, extremo cortado a ras
figure-tapes-number = { $number }:
figure-tapes-caption = Cintas adhesivas en la mesa para la tela ({ $cloth }), con sus distancias a escala. Corta siguiendo la línea gruesa de cada cinta, su lado más alejado.
figure-tapes-alt-edge = { $count ->
    [one] Corte de tela { $sections }: cintas a { $tapes } del borde cercano de la mesa.
   *[other] Cortes de tela { $sections }: cintas a { $tapes } del borde cercano de la mesa.
 }
figure-tapes-alt-end = { $count ->
    [one] Corte de tela { $sections }: cintas a { $tapes } del extremo izquierdo de la mesa.
   *[other] Cortes de tela { $sections }: cintas a { $tapes } del extremo izquierdo de la mesa.
 }
# Se dice solo dentro de los dos de arriba.
figure-tapes-alt-tape = { COUNT($lanes) ->
    [one] { $distance } (franja { $lanes })
   *[other] { $distance } (franjas { $lanes })
 }
