### Eine Reihe unterhalb ihrer Kante kräuseln und auf einer Linie quer über ein Teil aufnähen, so dass ein Köpfchen über der Naht steht.

figure-headed-row = Aufgenäht, rechte Seite oben
figure-headed-frill = Köpfchen
figure-headed-row-alt = { PIECE($on, at: "start") }, rechte Stoffseite oben, darauf { PIECE($row) }: zwei Steppnähte, die obere auf einer Linie ({ line-place }), darüber steht ein Köpfchen von { $heading }.
figure-headed-row-caption = Die Reihe mit ihrem Köpfchen.
