### Fruncido elástico: dónde van las pasadas de hilo elástico y cuánto recogen la tela.

figure-shirring-rows = Pasadas por el derecho
figure-shirring-drawn = { $rows } pasadas la recogen, a la misma escala
figure-shirring-stretched = estirada { $cloth }
figure-shirring-rest = sin estirar { $length }
figure-shirring-alt = { $rows } pasadas de hilo elástico, la primera a { $from-edge } del borde y después cada { $spacing }, recogen { $cloth } a { $length }.
figure-shirring-caption = { $rows } pasadas, la primera a { $from-edge } del borde.
