### Couper le bord supérieur plus bas là où la taille est plus basse, pour que l’ourlet tombe d’aplomb.

level-waist-title = Mettre la taille de niveau
level-waist-aim = La taille est plus basse de { $deepest } { $lowest } : le bord y est coupé plus bas, et l’ourlet tombe d’aplomb.
# Rien n’est repris nulle part : l’étape n’a pas d’actions.
level-waist-aim-level = La taille est de niveau : rien n’est repris.
# Dits seulement comme partie du but ci-dessus : où la taille est la plus basse.
level-waist-in-front = devant
level-waist-at-the-sides = sur les côtés
level-waist-behind = derrière

## Trouver le devant et le dos sur chaque bord

level-waist-hold-ring = Tenir { PIECE($edge) } comme on la porte, { side-seam } à gauche de la personne qui la porte.
level-waist-lay-flat = Poser { PIECE($edge) } à plat, endroit dessus, le bord supérieur loin de soi. Les deux bouts viennent à gauche de la personne qui la porte.
level-waist-mark-ring = Marquer les quarts { EDGE($edge, case: "of") }, tous les { $quarter } à partir de { side-seam } : le milieu du devant, l’autre côté, le milieu du dos. Marquer les deux faces.
    .check = Le dernier quart finit à la couture.
    .tolerance = { $quarter-off } de plus ou de moins
    .remedy = Répartir la différence entre les quatre.
level-waist-mark-flat = { $open ->
    [yes] Marquer les quarts { EDGE($edge, case: "of") }, le premier à { $first } du bout droit, puis tous les { $quarter } : le milieu du devant, l’autre côté, le milieu du dos. Marquer les deux faces.
   *[no] Marquer les quarts { EDGE($edge, case: "of") }, tous les { $quarter } à partir du bout droit : le milieu du devant, l’autre côté, le milieu du dos. Marquer les deux faces.
 }
    .check = { $open ->
        [yes] Le dernier quart finit à { $margin } du bout gauche.
       *[no] Le dernier quart finit au bout gauche.
     }
    .tolerance = { level-waist-mark-ring.tolerance }
    .remedy = { level-waist-mark-ring.remedy }
level-waist-tag = Épingler une étiquette de papier au repère du devant et à celui du dos.

## Tracer et couper

# Dit à la place d’une longueur.
level-waist-nothing = rien
level-waist-dots = À chaque repère, mesurer depuis le bord vers le bas : { $front } devant, { $side } sur les côtés, { $back } derrière. Y marquer un point.
    .check = Rien n’est repris là où la taille est la plus haute.
    .remedy = Si le devant et le dos ont été échangés, effacer les points et mesurer à nouveau.
level-waist-line = Tracer une ligne douce de point en point. La laisser horizontale sur une largeur de main devant et derrière. Prolonger les quatre repères vers le bas au-delà de la ligne : ils resservent.
    .check = La ligne ne fait pas d’angle sur les côtés.
    .remedy = La retracer, un peu plus arrondie.
level-waist-cut = Couper le long de la ligne. C’est désormais le bord supérieur ; tout ce qui suit se mesure à partir de lui.
