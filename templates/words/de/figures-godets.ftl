### Ein Schlitz und das Godet darin.

figure-godets-slit = Der Schlitz
figure-godets-set-in = Eingesetzt
figure-godets-alt = Ein Schlitz von { $slit } von der Kante nach oben, um die Spitze eine Naht; daneben das eingesetzte Godet, oben spitz und am Saum { $wide } breit.
figure-godets-caption = Ein Schlitz und das Godet darin.
