### Eine Kordel in ihrem Tunnel.

figure-cord-through = Die Kordel im Tunnel
figure-cord-front = vordere Mitte
figure-cord-lengths = Längen, in einem Maßstab
figure-cord-casing = Tunnel { $casing }
figure-cord-length = Kordel { $cut }
figure-cord-behind = In der hinteren Mitte ist die Kordel am Bund festgenäht.
figure-cord-alt = { $knotted ->
    [yes] Eine Kordel von { $cut } in einem Tunnel von { $casing }, beide Enden aus einer Öffnung von { $gap } in der vorderen Mitte, jedes Ende mit Knoten, an beiden Enden der Öffnung ein Riegel aus Zickzackstichen.
   *[no] Eine Kordel von { $cut } in einem Tunnel von { $casing }, beide Enden aus einer Öffnung von { $gap } in der vorderen Mitte, jedes Ende eingeschlagen und festgenäht, an beiden Enden der Öffnung ein Riegel aus Zickzackstichen.
 }
figure-cord-caption = Beide Enden kommen aus der Öffnung und können nicht zurückrutschen: Die Kordel ist hinten festgenäht.
