### Zwei Löcher in einem späteren Tunnel, von der rechten Stoffseite.

figure-eyelets-head = Von der rechten Stoffseite, bevor der Tunnel umgelegt wird
figure-eyelets-front = vordere Mitte
figure-eyelets-note = Maßstäblich. Gepunktet: die Flicken dahinter.
figure-eyelets-alt = { PIECE($piece, at: "start") } von der rechten Stoffseite: zwei { cord-holes } von { $hole }, { $apart } voneinander, je die Hälfte neben der vorderen Mitte, { $from-edge } von der Kante.
figure-eyelets-caption = Beide liegen { $from-edge } von der Kante, die Hälfte von { $apart } neben der vorderen Mitte.
