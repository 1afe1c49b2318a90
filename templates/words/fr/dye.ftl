### Teindre des pièces dans un même bain. La notice de la teinture passe avant chaque phrase d’ici.
### $dye : le nom de la teinture.

dye-title = Teindre { PIECE($pieces) }
dye-aim = { PIECE($pieces, at: "start") } d’une seule teinte égale.
dye-caution-powder = Suivre la notice du fabricant de la teinture et les règles locales pour manipuler la teinture et vider le bain. Teinture en poudre : ne pas la respirer. Masque et gants ; mouiller la poudre avant qu’elle ne vole. Ne prendre ni casserole, ni cuillère, ni mesure qui serve à la nourriture.
dye-caution-bath = Un bain de teinture ébouillante. Soulever le tissu mouillé avec des pinces, éloigner les enfants, aérer la pièce.

## Avant le bain

# $grams : de teinture en poudre. $cloth : ce que pèse le tissu sec.
dye-weigh = Peser { $grams } g de teinture ({ $dye }) ; poids sec { PIECE($pieces, case: "of") } : { $cloth }.
    .check = La balance montre { $grams } g.
dye-wet = Laver { PIECE($pieces) } et laisser le tissu mouillé.
    .check = Il est mouillé à cœur et coule au fond.
    .remedy = Les endroits secs restent pâles : le tremper plus longtemps.
dye-try = Teindre d’abord une chute mouillée de chaque tissu, dans une tasse du bain, et la laisser sécher.
    .check = La chute sèche a la teinte voulue. Le tissu mouillé paraît plus foncé.
    .remedy = Trop foncée : ajouter de l’eau. Trop pâle : peser davantage de teinture.

## Dans le bain

dye-bath = Délayer la poudre en pâte et préparer le bain selon sa notice, avec assez d’eau pour que le tissu y bouge librement.
dye-turn = Y mettre le tissu, amener lentement le bain à la chaleur de la notice, et remuer le tissu sans cesse.
    .check = Aucun pli ne reste immobile et aucun air n’est pris dans le tissu.
    .remedy = Le pousser sous l’eau et écarter les plis.
dye-rinse = Laisser refroidir dans le bain selon la notice, puis rincer.
    .check = L’eau coule claire.
    .remedy = Rincer à nouveau.
dye-dry = Sécher à l’air, à l’abri du soleil, et laver seul les premières fois.
## Un galon, avant de le monter

dye-title-trim = Teindre le galon ({ $trim })
dye-aim-trim = { $length } de galon ({ $trim }) d’une seule teinte égale, avant de le monter.
dye-weigh-trim = Dérouler { $length } de galon ({ $trim }) d’un seul tenant et peser { $grams } g de teinture ({ $dye }) ; poids sec du galon : { $cloth }.
    .check = La balance montre { $grams } g.
dye-wet-trim = Enrouler le galon ({ $trim }) en écheveau lâche autour de la main et du coude et le nouer lâchement en quatre endroits. Le laver et le laisser mouillé.
    .check = Il est mouillé à cœur et coule au fond.
    .remedy = Là où les liens serrent, le galon reste pâle : les desserrer.
dye-try-trim = Teindre d’abord un bout mouillé du galon ({ $trim }), dans une tasse du bain, et le laisser sécher.
    .check = Le bout sec a la teinte voulue. Mouillé, le galon paraît plus foncé.
    .remedy = Trop foncé : ajouter de l’eau. Trop pâle : délayer encore de la poudre en pâte et l’ajouter.
dye-bath-trim = Délayer la poudre en pâte et préparer le bain selon sa notice, avec assez d’eau pour que l’écheveau y bouge librement.
dye-turn-trim = Y mettre l’écheveau, amener lentement le bain à la chaleur de la notice, et remuer l’écheveau sans cesse.
    .check = Rien ne reste immobile ni ne dépasse du bain.
    .remedy = L’enfoncer et l’écarter.
dye-rinse-trim = Laisser refroidir dans le bain selon la notice, puis rincer.
    .check = L’eau est claire : le galon ne tachera pas le tissu au lavage.
    .remedy = Rincer encore.
dye-dry-trim = Sécher à l’air, hors du soleil, enroulé à plat autour d’une planche pour qu’il ne se froisse pas.
    .check = Il a pu rétrécir : le mesurer, il en reste au moins { $needed } : c’est ce qui se coud.
    .remedy = Trop court : teindre le reste dans un bain à part, aux mêmes poids.
