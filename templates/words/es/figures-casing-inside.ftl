### Una jareta vista lisa: sus canales, o su goma que se abotona.

figure-channels-head = La jareta con sus pespuntes
figure-channels-note = El alto está a escala, el largo no.
figure-channels-alt = La jareta { PIECE($piece, case: "of") } vista lisa, el doblez arriba: { $channels } canales de { $channel }, { $rows ->
    [one] un pespunte nuevo
   *[other] { $rows } pespuntes nuevos
 } entre ellos{ $open ->
    [yes] , y una abertura de { $gap } en cada pespunte
   *[no] {""}
 }.
figure-channels-caption = { $channels } canales de { $channel } cada uno.
figure-buttoned-head = El interior en la abertura
figure-buttoned-note = Lo que está dentro de la jareta va con puntos. No está a escala.
figure-buttoned-alt = El interior de la jareta { PIECE($piece, case: "of") } en su abertura: una punta de la goma está cosida por dentro, la otra sale y se abotona a { $reach } de la abertura.
figure-buttoned-caption = Una punta está fija, la otra en su botón: { $first } de contorno, suelta { $out }.
