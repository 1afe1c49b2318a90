### Coudre deux liens et les piquer aux bouts d’une ceinture.

tie-ends-title = Coudre des liens { PIECE($band, case: "to") }
    .number = { $tie-long }
tie-ends-aim = La taille se ferme par des liens de { $tie-long }.

## Chaque lien

tie-ends-fold = Plier chaque lien en deux dans la longueur, endroit contre endroit ; { pin }.
tie-ends-sew = Piquer à { $seam-width } des bords, { $stitch }, le long du lien et en travers d’un bout, { $around }. Laisser l’autre bout ouvert.
tie-ends-turn = Dégarnir les coins, retourner le lien sur l’endroit avec une baguette à bout rond et le repasser.
    .check = Il a { $depth } de largeur.
    .tolerance = { $wide-off } de plus ou de moins
    .remedy = Rouler la couture entre les doigts pour la sortir et repasser à nouveau.
tie-ends-turn-under = Replier { $under } du bout ouvert vers l’intérieur du lien et repasser.

## Sur la ceinture

tie-ends-lay = Poser { $lap } de ce bout à l’intérieur d’un bout { PIECE($band, case: "of") } et { pin }.
    .check = Le lien dépasse la ceinture de { $tie-long }.
    .tolerance = { $length-off } de plus ou de moins
    .remedy = Le déplacer avant de piquer.
tie-ends-stitch = Piquer le recouvrement en un rectangle de { $lap } sur { $depth }, et en travers d’un coin à l’autre.
    .check = Tirer fort : rien ne cède.
    .remedy = Repiquer le rectangle encore une fois.
