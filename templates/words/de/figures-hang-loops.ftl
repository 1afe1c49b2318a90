### Aufhänger innen an einer Kante.

figure-loops-inside = Innenseite oben
figure-loops-note = { $loops ->
    [one] { $loops } Aufhänger: Enden bündig mit der Schnittkante, zweimal genäht. Nicht maßstäblich.
   *[other] { $loops } Aufhänger: Enden bündig mit der Schnittkante, zweimal genäht. Nicht maßstäblich.
 }
figure-loops-alt = Ein Aufhänger aus Band auf der Innenseite, beide Enden bündig mit der Schnittkante, hängt { $hangs } herab, zweimal { $row } neben der Kante genäht.
figure-loops-caption = { $loops ->
    [one] Wie der Aufhänger liegt.
   *[other] Wie jeder der { $loops } Aufhänger liegt.
 }
