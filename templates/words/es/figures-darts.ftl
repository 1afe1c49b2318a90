### Una pinza tal como se marca y se cose.

figure-darts-marked = Marcada por el revés
figure-darts-sewn = Doblada y cosida
figure-darts-leg = lado { $leg }
figure-darts-alt = Una pinza con su línea central de { $long } desde el borde y { $half } a cada lado; sus dos lados miden { $leg }. Doblada por la línea central se cose a { $half } del doblez en el borde y acaba en nada en el vértice.
figure-darts-caption = Una pinza, a escala.
