### Ein Abnäher, wie er angezeichnet und wie er genäht wird.

figure-darts-marked = Auf der linken Seite angezeichnet
figure-darts-sewn = Gefaltet und genäht
figure-darts-leg = Schenkel { $leg }
figure-darts-alt = Ein Abnäher mit seiner Mittellinie { $long } von der Kante nach unten und { $half } zu beiden Seiten davon; beide Schenkel sind { $leg } lang. An der Mittellinie gefaltet wird er an der Kante { $half } vom Bruch entfernt genäht und läuft zur Spitze hin aus.
figure-darts-caption = Ein Abnäher, maßstäblich.
