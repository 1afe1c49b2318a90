### Corte de una cinturilla doblada y pespunteada para su goma.

figure-channel-wide = jareta { $channel }
figure-channel-fold = doblez
figure-channel-raw = bordes cortados
figure-channel-alt = Corte { PIECE($band, case: "of") }, interior encima: doblada por la mitad, { $deep } del doblez a los bordes cortados, un pespunte a { $edge-stitch } y otro a { $row } del doblez, con la jareta de { $channel } entre los dos.
figure-channel-caption = La cinturilla en corte, con la jareta junto al doblez.{ figure-hatched }
