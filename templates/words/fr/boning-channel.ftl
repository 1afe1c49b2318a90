### Coudre une coulisse de ruban autour d’une jupe et y mettre un cerceau de baleine.

boning-channel-title = Mettre un cerceau { PIECE($piece, case: "to") }
boning-channel-aim = Un cerceau de { $around } tient la jupe évasée.

## Coudre la coulisse

boning-channel-mark = Tracer une ligne à l’intérieur { PIECE($piece, case: "of") }, à { $above } au-dessus de son bord inférieur, tout autour.
    .check = La ligne garde sa distance : un cerceau qui plonge se voit tout de suite.
    .tolerance = { $line-off } de plus ou de moins
    .remedy = La retracer là où elle plonge.
boning-channel-cut-tape = Couper le ruban ({ $tape }) : { $tape-length }.
boning-channel-pin = Épingler le ruban ({ $tape }), son bord inférieur sur la ligne, à partir du dos, le bout replié dessous.
boning-channel-sew-lower = Piquer à { $from-edge } du bord inférieur du ruban, { $around }.
boning-channel-sew-upper = Piquer à { $from-edge } du bord supérieur, { $around } ; laisser une ouverture de { $gap } là où les bouts se rejoignent.
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
boning-channel-close = Fermer l’ouverture à la main.
