### Eine Kante zweimal auf die linke Stoffseite einschlagen und entlang des inneren Bruchs steppen.
### $edge: die Kante, die gesäumt wird.

narrow-hem-title = { EDGE($edge, at: "start") } säumen
    .number = { $first-turn } + { $second-turn }
narrow-hem-aim = Am Saum ist keine offene Kante zu sehen.

narrow-hem-first-turn = { EDGE($edge, at: "start") } { $first-turn } auf die linke Stoffseite umbügeln.
narrow-hem-second-turn = Noch einmal { $second-turn } umschlagen, so dass die Schnittkante innen liegt. Den neuen Bruch bügeln und den Saum { pin }.
    .check = Der Saum ist überall { $second-turn } breit.
    .tolerance = { $off } mehr oder weniger
    .remedy = Wo er abweicht, aufklappen und neu bügeln.
narrow-hem-sew-ring = An { side-seam } beginnen, linke Stoffseite oben. Auf dem Saum { $from-fold } neben dem inneren Bruch steppen, { $length } rundum, { $stitch }. Das Ende drei Stiche über den Anfang nähen.
    .check = Die Stiche fassen den Bruch überall.
    .remedy = Wo sie ihn verfehlen, diese Strecke neu steppen.
narrow-hem-sew-flat = Linke Stoffseite oben: auf dem Saum { $from-fold } neben dem inneren Bruch steppen, { $length }, { $stitch }; an beiden Enden verriegeln.
    .check = { narrow-hem-sew-ring.check }
    .remedy = { narrow-hem-sew-ring.remedy }
