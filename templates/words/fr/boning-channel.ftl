### Coudre une coulisse de ruban autour d’une jupe et y mettre un cerceau de baleine.

boning-channel-title = Mettre un cerceau { PIECE($piece, case: "to") }
    .number = { $around }
boning-channel-aim = Un cerceau de { $around } tient la jupe évasée.

## Coudre la coulisse

boning-channel-mark = Tracer une ligne à l’intérieur { PIECE($piece, case: "of") }, à { line-place }, tout autour.
    .check = La ligne garde sa distance : un cerceau qui plonge se voit tout de suite.
    .tolerance = { $line-off } de plus ou de moins
    .remedy = La retracer là où elle plonge.
boning-channel-cut-tape = Couper { $tape-length } du ruban ({ $tape }) : { $around } et { $fold } à replier à chaque bout.
boning-channel-pin = { pin-start } le ruban ({ $tape }) le long de la ligne, son bord inférieur dessus, tous les { $spacing }. Commencer au milieu du dos, les deux bouts repliés de sorte qu’ils se touchent tout juste.
boning-channel-sew-lower = Piquer à { $from-edge } du bord inférieur du ruban, { $around } tout autour, { $stitch }. Finir en repiquant trois points sur le début.
boning-channel-sew-upper = Piquer à { $from-edge } du bord supérieur, { $stitched }, { $stitch }, et laisser une ouverture de { $gap } là où les bouts se rejoignent. Faire un point d’arrêt des deux côtés de l’ouverture.
    .check = La coulisse est libre tout autour ; y pousser un passe-lacet.
    .remedy = Découdre ce qui la ferme.

## Mettre le cerceau

boning-channel-cut-bone = Couper la baleine ({ $bone }) à { $bone-length } et coiffer ou border les deux bouts.
    .check = Il ne reste aucun bout nu.
    .remedy = Le coiffer à nouveau : un bout nu traverse.
boning-channel-push = La pousser dans la coulisse et superposer ses bouts de { $overlap } ; ligaturer fermement le recouvrement.
    .check = Le cerceau mesure { $around } de tour et le tissu s’y pose sans plis.
    .tolerance = { $hoop-off } de plus ou de moins
    .remedy = Superposer les bouts davantage là où le tissu tire, moins là où il poche.
boning-channel-close = Fermer l’ouverture de { $gap } à la main.
