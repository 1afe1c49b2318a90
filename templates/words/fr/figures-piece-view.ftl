### Les pièces d’une étape avant et après, chaque bord dans le motif de son état.

## Têtes

figure-piece-before = Avant :
figure-piece-after = Après :
figure-piece-alike = { $copies } pareilles
figure-piece-ring = rond, longueurs de tour
figure-piece-flat = à plat
# Quelle face du tissu se voit.
figure-piece-up = { $up ->
    [margins] marges dessus
    [either] toute face dessus
    [wrong] envers dessus
   *[right] endroit dessus
 }
figure-piece-margins-wide = Les marges de couture sont dessinées plus larges qu’elles ne le sont.
figure-piece-left-out = Le milieu est omis aux lignes ondulées.
figure-piece-further = Ce qui est cousu plus loin n’est pas dessiné.

## Étiquettes

# Comment est un bord.
figure-edge-state = { $state ->
    [raw] brut
    [selvedge] lisière
    [neatened] surfilé
    [hemmed] ourlé
    [sewn] cousu
    [enclosed] enfermé
    [trimmed] garni
    [gathered] froncé
    [pleated] plissé
    [sewn-gathered] cousu, froncé
   *[sewn-pleated] cousu, plissé
 }
# Une seule étiquette pour les deux bords d’une pièce.
figure-piece-both = { figure-edge-state } en haut et en bas
figure-piece-deep = { $deep } de haut
figure-piece-layers = { $layers } épaisseurs
figure-piece-fold = pliure
figure-piece-seam = { $margin ->
    [none] couture
    [covered] couture, marge couverte
    [stitched-down] couture, marge piquée
    [enclosed] couture, marge enfermée
    [neatened] couture, marge surfilée
   *[raw] couture, marge brute
 }
figure-piece-behind = { $where ->
    [inside] { PIECE($piece, form: "bare") } à l’intérieur
   *[sewn-on] { PIECE($piece, form: "bare") } cousu dessus
 }

## En mots, pour qui ne peut pas la voir

figure-piece-form = { $layers ->
    [one] { $ring ->
        [yes] rond
       *[no] à plat
    }
   *[other] { $ring ->
        [yes] rond, { $layers } épaisseurs
       *[no] à plat, { $layers } épaisseurs
    }
 }
figure-piece-edge = { $side ->
    [top] bord supérieur { $length }, { figure-edge-state }
   *[bottom] bord inférieur { $length }, { figure-edge-state }
 }
figure-piece-told-one = { PIECE($piece, form: "bare") } ({ figure-piece-form }), { $deep } de haut, { $edges }
figure-piece-told = { $when ->
    [before] Avant : { $pieces }.
   *[after] Après : { $pieces }.
 }
figure-piece-caption = { $broken ->
    [yes] { PIECE($pieces, at: "start") } avant et après, hauteurs à la même échelle, largeurs en proportion. Ce qui change est dessiné plus épais.
   *[no] { PIECE($pieces, at: "start") } avant et après, à l’échelle. Ce qui change est dessiné plus épais.
 }
