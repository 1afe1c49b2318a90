### Smoken mit Gummifaden: wo die Nähte liegen und wie weit sie den Stoff zusammenziehen.

figure-shirring-rows = Nähte auf der rechten Stoffseite
figure-shirring-drawn = { $rows } Nähte ziehen zusammen, in einem Maßstab
figure-shirring-stretched = gedehnt { $cloth }
figure-shirring-rest = ungedehnt { $length }
figure-shirring-alt = { $rows } Nähte aus Gummifaden, die erste { $from-edge } neben der Kante und dann alle { $spacing }, ziehen { $cloth } auf { $length } zusammen.
figure-shirring-caption = { $rows } Nähte, die erste { $from-edge } neben der Kante.
