### El plano de corte de cada tela y las otras maneras de cortarla; los dice `furbelow cutting`.

# $usable: del ancho, sin los orillos.
ways-cloth = { $cloth }: { $length } de { $width } de ancho, { $usable } aprovechables
ways-cloth-folded = { $cloth }: { $length } de { $width } de ancho, { $usable } aprovechables, doblada a lo largo
ways-spare = reserva en el ancho: { $spare }

## El plano

ways-section = { $across ->
    [yes] corte { $number }, { $length } del rollo, franjas a lo ancho
   *[no] corte { $number }, { $length } del rollo
 }
ways-tapes = { $edge ->
    [start] cintas adhesivas desde el principio: { $tapes }
    [fold] cintas adhesivas desde el doblez: { $tapes }
   *[edge] cintas adhesivas desde el borde largo: { $tapes }
 }
# $cuts: las marcas y los largos de lo que se corta de ella.
ways-lane = { $layer ->
    [flat] franja { $number }, { $depth } de alto: { $cuts }
    [fold] franja { $number }, { $depth } de alto, en el doblez: { $cuts }
    [upper] franja { $number }, { $depth } de alto, en la capa de arriba: { $cuts }
   *[under] franja { $number }, { $depth } de alto, en la capa de abajo: { $cuts }
 }
# Su borde exterior es el orillo.
ways-lane-selvedge = { $layer ->
    [upper] franja { $number }, { $depth } de alto, en el orillo de la capa de arriba: { $cuts }
    [under] franja { $number }, { $depth } de alto, en el orillo de la capa de abajo: { $cuts }
   *[flat] franja { $number }, { $depth } de alto, en un orillo: { $cuts }
 }
ways-over = sobra
ways-panels = { $how ->
    [sides] corte { $number }, { $length } del rollo, paños marcados uno a uno, cortes rectos de lado a lado
   *[cut] corte { $number }, { $length } del rollo, paños marcados uno a uno, recortados con tijeras
 }
ways-panel = { $mark }: de { $from-end } a { $to-end } desde el extremo, de { $from-edge } a { $to-edge } desde el borde largo

## El coste

ways-cost = coste { $cost }
ways-costs = { $all }: tela { $cloth }, { ways-joins } { $joins-cost }, { ways-set-ups } { $set-ups-cost }, { ways-cuts } { $cuts-cost }
ways-joins = { $joins ->
    [one] { $joins } unión
   *[other] { $joins } uniones
 }
ways-set-ups = { $set-ups ->
    [one] { $set-ups } preparación de la mesa
   *[other] { $set-ups } preparaciones de la mesa
 }
ways-cuts = { $marked ->
    [yes] { $cuts ->
        [one] { $cuts } corte de tijera y marcas
       *[other] { $cuts } cortes de tijera y marcas
     }
   *[no] { $cuts ->
        [one] { $cuts } corte de tijera
       *[other] { $cuts } cortes de tijera
     }
 }
ways-unpriced = la tela no tiene precio, así que un metro cuenta como 1
ways-bound = Ningún plano cuesta menos de { $bound }, un { $share } por debajo.

## Lo que sobra y las otras maneras

ways-offcuts = retales que conviene guardar: { $offcuts }
ways-offcut = { $length } × { $width } del corte { $section }
ways-none = ninguno
ways-least = la menor cantidad de tela para cada número de uniones y cortes:
ways-way = { $joins ->
    [0] { $length } sin uniones en { $sections }, coste { $cost }
    [one] { $length } con { $joins } unión en { $sections }, coste { $cost }
   *[other] { $length } con { $joins } uniones en { $sections }, coste { $cost }
 }
ways-sections = { $sections ->
    [one] { $sections } corte
   *[other] { $sections } cortes
 }
ways-chosen = elegida
ways-not-proven = no demostrada

## Cómo elegir una manera; las claves son las de un archivo de taller

ways-pick-here = Para menos uniones o cortes, da --most-joins N y --most-sections N, aquí y con `make`,
ways-pick-room = o escribe `most joins: N` y `most sections: N` en el taller. Dentro de esos límites se toma la manera más barata: para
ways-pick-within = menos tela con más uniones, baja `join price` y `setup price` del taller.
