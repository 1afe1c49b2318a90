### Una abertura y su godet.

figure-godets-slit = La abertura
figure-godets-set-in = El godet puesto
figure-godets-alt = Una abertura de { $slit } desde el borde, con una costura alrededor de la punta; al lado, el godet puesto, en punta arriba y de { $wide } de ancho en el bajo.
figure-godets-caption = Una abertura y su godet.
