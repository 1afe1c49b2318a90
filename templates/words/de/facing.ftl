### Eine Kante mit einem Streifen versehen, der nach innen gewendet wird.
### $edge: die Kante; $facing: der Streifen.

facing-title = { EDGE($edge, at: "start") } mit einem Beleg versehen
    .number = { $seam-width }
facing-aim = Die Kante ist sauber, ihre Nahtzugabe liegt innen.

## Annähen

facing-ends = Jedes Ende von { PIECE($facing) } { $ends } auf die linke Stoffseite umbügeln.
    .check = Gefaltet ist der Streifen so lang wie { EDGE($edge) }.
    .remedy = Die Falten ausbügeln und neu umbügeln.
facing-lay-ring = { PIECE($facing) } rechts auf rechts auf { EDGE($edge) } legen, Naht auf Naht, und { pin }.
facing-lay-flat = { PIECE($facing) } rechts auf rechts auf { EDGE($edge) } legen, Ende auf Ende, und { pin }.
facing-sew-ring = { $seam-width } neben der Kante steppen, { $length } rundum, { $stitch }. Das Ende drei Stiche über den Anfang nähen.
facing-sew-flat = { $seam-width } neben der Kante steppen, { $length }, { $stitch }; an beiden Enden verriegeln.
# Eine gebogene Nahtzugabe legt sich nach dem Wenden nicht flach.
facing-clip = Die Kante ist gebogen: beide Nahtzugaben alle { $clips } einschneiden, bis { $clip-short } vor die Naht.
    .check = Die Nahtzugaben legen sich flach, kein Stich ist durchgeschnitten.
    .remedy = Wo ein Stich durchgeschnitten ist, diese Strecke etwas weiter innen neu steppen.
# Die Naht hält die Nahtzugabe am Streifen, damit er nicht nach außen rollt.
facing-understitch-ring = Beide Nahtzugaben zu { PIECE($facing) } hin legen und untersteppen: rechte Stoffseite von { PIECE($facing, form: "short") } oben, { $understitch } neben der Naht durch Beleg und beide Nahtzugaben, { $length } rundum.
    .check = Beide Nahtzugaben sind überall gefasst, der Oberstoff nicht.
    .remedy = Wo der Oberstoff mitgefasst ist, auftrennen und diese Strecke neu steppen.
facing-understitch-flat = Beide Nahtzugaben zu { PIECE($facing) } hin legen und untersteppen: rechte Stoffseite von { PIECE($facing, form: "short") } oben, { $understitch } neben der Naht durch Beleg und beide Nahtzugaben, { $length }; an beiden Enden verriegeln.
    .check = { facing-understitch-ring.check }
    .remedy = { facing-understitch-ring.remedy }

## Nach innen wenden

facing-turn = { PIECE($facing) } nach innen wenden und die Kante von innen bügeln, die Naht eine Spur nach innen gerollt.
    .check = Der Beleg ist von außen nicht zu sehen.
    .remedy = Die Naht mit den Fingern nach innen rollen und neu bügeln.
facing-catch-ring = Die freie Kante von { PIECE($facing) } von Hand mit einigen Blindstichen an jede Nahtzugabe heften, die sie kreuzt.
facing-catch-flat = Die freie Kante von { PIECE($facing) } von Hand mit einigen Blindstichen an beiden Enden festnähen und an jede Nahtzugabe heften, die sie kreuzt.
