### Le tableau des mesures, et les tailles côte à côte. `.why` se tient à côté d’une mesure et dit d’où elle vient.

## Longueur et ourlets

fact-length = longueur finie, du haut à l’ourlet
    .why = les hauteurs des étages ensemble
fact-length-front = longueur devant
    .why = { fact-length-taken-up }
fact-length-sides = longueur sur les côtés
    .why = { $slants ->
        [yes] { fact-length-taken-up }; le long de la couture de côté, qui est oblique ; tout droit { $down }
       *[no] { fact-length-taken-up }
     }
fact-length-back = longueur derrière
    .why = { fact-length-taken-up }
# Dit seulement dans les trois ci-dessus.
fact-length-taken-up = { $dips ->
    [yes] l’ourlet y est coupé { $up } plus haut que derrière
   *[no] { $up } sont repris à la taille, pour que l’ourlet tombe d’aplomb
 }
# Une épaisseur qui finit au-dessus de la plus longue.
fact-length-layer = longueur { PIECE($piece, case: "of") }
    .why = elle finit à { $short } au-dessus de l’ourlet
fact-hem = tour de l’ourlet
    .why = un rond { PIECE($piece, case: "of") }
fact-hems = { $layers ->
    [2] tour des deux ourlets
   *[other] tour des { $layers } ourlets
 }
    .why = { $hems }
# Dit seulement dans le message ci-dessus : autant de ronds, leur longueur, de quelle pièce.
fact-hem-of = { $copies } × { $round } { PIECE($piece, case: "of") }

## Ampleur et poids

fact-fullness = ampleur de la taille à l’ourlet
    .why = { $hem } d’ourlet pour { $waist } de tour de taille, avant de le resserrer
# $cloth : son nom dans le fichier de l’auteur.
fact-strips = tissu ({ $cloth }) en bandes froncées
    .why = mises bout à bout : { $strips }
fact-strip = { $count } × { $length }
fact-weight = poids
    .why = le tissu coupé, sans { $left-out }
fact-weight-about = environ { $weight }
fact-weight-unknown = inconnu
    .why = { $cloths }
fact-no-weight = tissu ({ $cloth }) sans poids indiqué
thread = fil

## La taille

fact-casing = tissu à la taille, avant l’élastique
    .why = il doit passer les hanches
fact-elastic = élastique, fermé et au repos
fact-elastic-why-step = voir l’étape où il est enfilé
fact-elastic-why-less = { $less } de moins que la taille
fact-elastic-why-carries = { $less } de moins que la taille, pour porter { $weight } environ
fact-waist = taille, fermée
    .why = { $by ->
        [zip] le bord supérieur ; fermeture à glissière
        [hook-and-bar] { fact-waist-edge } ; agrafe
        [hook-and-eye] { fact-waist-edge } ; agrafe : crochet et œillet
        [button] { fact-waist-edge } ; bouton
        [snaps] { fact-waist-edge } ; boutons-pression
       *[ties] { fact-waist-edge } ; liens
     }
# Dit seulement comme partie de la ligne ci-dessus.
fact-waist-edge = { $banded ->
    [yes] la ceinture moins sa croisure
   *[no] le bord supérieur moins sa croisure
 }
fact-opening = ouverture sous la taille
    .why = avec la ceinture ouverte, elle doit passer les hanches

## Temps

fact-time = temps pour le tout, environ
    .why = au rythme d’une main exercée ; sans lavage ni séchage
# $times : autant de fois le temps d’une main exercée.
fact-time-beginner = temps pour le tout, environ
    .why = au rythme d’une personne qui débute, { $times } fois celui d’une main exercée ; sans lavage ni séchage
fact-time-cutting = dont la coupe

## Les tailles côte à côte

chart-body = Corps
chart-choices = Choix
chart-piece = { PIECE($piece, at: "start") }
chart-count = combien
chart-length = longueur finie
chart-depth = hauteur finie
chart-depth-folded = hauteur finie, pliée
chart-cut-length = longueur de coupe
chart-cut-depth = hauteur de coupe
chart-garment = Le vêtement entier
chart-hems = tour de tous les ourlets
chart-weight = poids, environ
