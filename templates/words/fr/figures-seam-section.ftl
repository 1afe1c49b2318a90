### Coutures en coupe : piquées, surfilées, couchées et surpiquées.
### $above et $below : les épaisseurs de tissu du côté du haut et du côté du bas, chacune dite par `figure-plies`.

# Une pièce, en une épaisseur ou plusieurs.
figure-plies = { $count ->
    [1] { $piece }
   *[other] { $count } × { $piece }
 }

## Comme elle se pique

figure-seam-machine = À la machine
figure-seam-opened = Ouverte, marge vers le haut
# $faced : si le tissu a un endroit et un envers.
figure-seam-alt = { $faced ->
    [yes] Coupe de la couture : { $above } dessus, { $below } dessous, endroit contre endroit, piqués à { $seam-width } des bords bruts. Ouverte, les marges des deux se dressent sur l’envers.
   *[no] Coupe de la couture : { $above } dessus, { $below } dessous, bord à bord, piqués à { $seam-width } des bords bruts. Ouverte, les marges des deux se dressent sur l’envers.
 }
figure-seam-caption = La couture en coupe, { $seam-width } de large.{ figure-hatched }

## Surfilée

figure-margin-standing = Marge dressée
figure-margin-stitch = { $by ->
    [overlocker] point de surjet
    [zigzag] point zigzag
   *[shears] bord cranté
 }
figure-margin-alt = { $by ->
    [overlocker] Coupe de la couture, sa marge de { $seam-width } dressée, toutes ses épaisseurs tenues par un seul point de surjet.
    [zigzag] Coupe de la couture, sa marge de { $seam-width } dressée, toutes ses épaisseurs tenues par un seul point zigzag.
   *[shears] Coupe de la couture, sa marge de { $seam-width } dressée, toutes ses épaisseurs crantées ensemble.
 }
figure-margin-caption = { $by ->
    [overlocker] La marge et son point de surjet autour de tous les bords coupés.{ figure-hatched }
    [zigzag] La marge et son point zigzag autour de tous les bords coupés.{ figure-hatched }
   *[shears] La marge, tous ses bords coupés crantés.{ figure-hatched }
 }
figure-margin-edge-alt = { $by ->
    [overlocker] Coupe d’un bord { PIECE($piece, case: "of") }, { $length } de long : point de surjet autour de son bord coupé.
    [zigzag] Coupe d’un bord { PIECE($piece, case: "of") }, { $length } de long : point zigzag autour de son bord coupé.
   *[shears] Coupe d’un bord { PIECE($piece, case: "of") }, { $length } de long, cranté.
 }
figure-margin-edge-caption = { $by ->
    [overlocker] Le bord coupé et son point de surjet.
    [zigzag] Le bord coupé et son point zigzag.
   *[shears] Le bord cranté.
 }

## Couchée et surpiquée

figure-turned-margin-seen = Endroit dessus, marge dessous
figure-turned-margin-seam = couture précédente
figure-turned-margin-edge = bord surfilé
# $onto : les pièces sous lesquelles est la marge. $plies : combien d’épaisseurs sont piquées.
figure-turned-margin-alt = { $way ->
    [up] Coupe de la couture, endroit dessus : la marge de { $seam-width } est dessous, vers le haut, vers { PIECE($onto) }, surpiquée à { $from-seam } de la couture à travers les { $plies } épaisseurs de tissu.
   *[down] Coupe de la couture, endroit dessus : la marge de { $seam-width } est dessous, vers le bas, vers { PIECE($onto) }, surpiquée à { $from-seam } de la couture à travers les { $plies } épaisseurs de tissu.
 }
figure-turned-margin-caption = La marge est sous { PIECE($onto) }, et piquée.{ figure-hatched }
