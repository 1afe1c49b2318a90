### Einlage, und Taillenränder mit Band oder Gummi.

figure-interfacing-name = Einlage, Klebeseite unten
figure-ribbon-name = Band
figure-elastic-name = Gummiband
figure-interfacing-head = Linke Seite des Teils
figure-interfacing-alt = { PIECE($piece, at: "start") }, linke Stoffseite oben, darauf Einlage von { $long } mal { $deep }; die Nahtzugaben sind frei.
figure-interfacing-caption = Die Einlage endet vor den Nähten.
figure-petersham-alt = Schnitt durch die Taille, Innenseite oben: Das Band liegt innen, { $close } neben seiner Kante über { $lap } Nahtzugabe genäht.
figure-petersham-caption = Das nach innen gewendete Band.{ figure-hatched }
figure-sewn-elastic-alt = Schnitt durch die Kante, Innenseite oben: { $turn-width } breites Gummiband, mit dem Stoff nach innen geschlagen, an beiden Kanten eine Zickzacknaht.
figure-sewn-elastic-caption = Das nach innen gewendete Gummiband.{ figure-hatched }
