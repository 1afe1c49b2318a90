### Einen langen Schrägstreifen aus einem Quadrat schneiden.

figure-bias-square = Das Quadrat, quer geschnitten
figure-bias-lines = Verbunden und angezeichnet
figure-bias-alt = Ein Quadrat von { $side }, von Ecke zu Ecke geschnitten; dann seine Hälften, zu einem schrägen Viereck verbunden, mit Linien im Abstand von { $width } entlang der schrägen Kante.
figure-bias-caption = Der Streifen kommt aus einem Quadrat.
