### Eine obere Kante vor dem Ausgleichen: die Schnittlinie und wie weit sie bei jeder Markierung unter der Kante liegt.

figure-levelled-edge = { PIECE($edge, at: "start") }, obere Kante
figure-levelled-side = Seite
figure-levelled-front = vorn
figure-levelled-back = hinten
figure-levelled-drawn = { $edges ->
    [one] Was wegfällt, ist tiefer gezeichnet, als es ist.
   *[other] Was wegfällt, ist tiefer gezeichnet, als es ist. An jeder der { $edges } oberen Kanten dasselbe tun.
 }
figure-levelled-alt = Die obere Kante von { PIECE($edge) }, darunter eine Schnittlinie: vorn { $front }, an den Seiten { $side }, hinten { $back }. Die Linie ist fließend und läuft vorn und hinten waagerecht.
figure-levelled-caption = Wo die Kante tiefer geschnitten wird.
