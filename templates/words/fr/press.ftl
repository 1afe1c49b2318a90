### Repasser une pièce à la chaleur que sa fibre supporte.
### $pieces : toutes les pièces que cette étape repasse ; $piece : celle que l’on repasse maintenant.

press-title = Repasser { PIECE($pieces) }
press-aim-seams = Les coutures sont plates.
press-aim-folds = Les coutures et les pliures sont plates.

press-seams = Repasser { PIECE($piece) } sur l’envers, les coutures d’abord. Coucher toutes les marges d’une couture du même côté. Lever le fer et le poser, sans le faire glisser.
    .check = Les coutures sont plates, rien ne lustre ni ne rétrécit.
    .remedy = Si le tissu lustre ou se rétracte, baisser la chaleur.
# La pièce a aussi des ourlets ou des plis.
press-seams-then-folds = Repasser { PIECE($piece) } sur l’envers, les coutures d’abord, puis les pliures. Coucher toutes les marges d’une couture du même côté. Lever le fer et le poser, sans le faire glisser.
    .check = { press-seams.check }
    .remedy = { press-seams.remedy }
