### Tiras que se cortan en trozos: cada una con sus trozos y sus uniones, como las da el plano de corte.
### $mark: el número de la pieza en el plano de corte. $label (texto): el nombre que le da la autora.
### $strips: las tiras que se cortan igual, como «A1 y A2».

figure-strips-piece = Pieza { $mark }, { $label }
figure-strips-alike = { $joins ->
    [0] { $strips }: de una pieza, sin uniones
    [one] { $strips }: { $joins } unión
   *[other] { $strips }: { $joins } uniones
 }
figure-strips-note = Longitudes a la misma escala, con las costuras incluidas; los altos, no.
# Una frase para todas las tiras que se cortan igual.
figure-strips-alt = { $joins ->
    [0] { $strips } { PIECE($piece, case: "of") }: de una pieza, sin uniones, { $segments }.
    [one] { $strips } { PIECE($piece, case: "of") }: { $joins } unión, { $segments }.
   *[other] { $strips } { PIECE($piece, case: "of") }: { $joins } uniones, { $segments }.
 }
figure-strips-caption = Los trozos de cada tira: cose los extremos que están frente a frente.
