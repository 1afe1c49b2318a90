### Eine offene Kante oder die Zugabe einer Naht mit Band einfassen.
### $edge: die Kante, oder die Teile der Naht; $tape: wie das Band heißt.

bound-edge-title-edge = { EDGE($edge, at: "start") } einfassen
    .number = { $length }
bound-edge-title-margin = Die Nahtzugabe von { PIECE($edge) } einfassen
    .number = { $length }
bound-edge-aim = Die offene Kante liegt im Band und kann weder ausfransen noch kratzen.

## Das Band falten

bound-edge-cut = Vom Band ({ $tape }) { $cut } abschneiden.
bound-edge-fold = Das Band der Länge nach zur Hälfte falten, eine Hälfte eine Spur breiter als die andere, und den Bruch bügeln.

## Um die Kante legen

bound-edge-pin-edge-ring = Neben { side-seam } beginnen. Das Band um { EDGE($edge) } legen, die offene Kante bis in den Bruch, die breitere Hälfte auf der linken Stoffseite, und { pin-start }.
    .check = Das Band deckt auf beiden Seiten { $half }.
    .tolerance = { $off } mehr oder weniger
    .remedy = Wo die Kante herausgerutscht ist, wieder in den Bruch schieben.
bound-edge-pin-edge-flat = Das Band um { EDGE($edge) } legen, die offene Kante bis in den Bruch, die breitere Hälfte auf der linken Stoffseite, und { pin-start }.
    .check = { bound-edge-pin-edge-ring.check }
    .tolerance = { bound-edge-pin-edge-ring.tolerance }
    .remedy = { bound-edge-pin-edge-ring.remedy }
bound-edge-pin-margin = Das Band um die Nahtzugabe von { PIECE($edge) } legen, die offene Kante bis in den Bruch, die breitere Hälfte unten, und { pin-start }.
    .check = { bound-edge-pin-edge-ring.check }
    .tolerance = { bound-edge-pin-edge-ring.tolerance }
    .remedy = { bound-edge-pin-edge-ring.remedy }
bound-edge-lap = Das Ende des Bands { $half-lap } einschlagen und den Bruch { $half-lap } über den Anfang legen.
# Die Enden des Stoffs sind schon fertig.
bound-edge-ends = An beiden Enden { $under } des Bands einschlagen, die Brüche bündig mit den Enden des Stoffs.

## Nähen

bound-edge-sew-ring = Schmalere Hälfte oben: { $edge-stitch } neben ihrer offenen Kante steppen, { $length } rundum, { $stitch }. Das Ende drei Stiche über den Anfang nähen.
    .check = Die Naht hat auch die untere Hälfte gefasst.
    .remedy = Auftrennen, wo sie nicht gefasst wurde, die untere Hälfte hervorziehen und neu steppen.
bound-edge-sew-flat = Schmalere Hälfte oben: { $edge-stitch } neben ihrer offenen Kante steppen, { $length }, { $stitch }; an beiden Enden verriegeln.
    .check = { bound-edge-sew-ring.check }
    .remedy = { bound-edge-sew-ring.remedy }
