### D’où viennent les nombres, pour qui n’a pas vu le fichier de l’auteur.

## Comment un nombre s’appelle

reason-of-piece = { $measure } { PIECE($piece, case: "of") }
reason-of-material = { $measure } du matériau ({ $material })
# Un nombre qu’une opération demande, par le titre de l’opération.
reason-for = { $label } pour « { $title } »
# Les mesures d’une pièce ou d’un matériau ; dites seules, aussi.
reason-length = longueur finie
reason-depth = hauteur finie
reason-start-takes = marge au début
reason-end-takes = marge à la fin
reason-top-takes = marge en haut
reason-bottom-takes = marge en bas
reason-count = nombre
reason-hem-round = tour de l’ourlet
reason-top-to-hem = longueur depuis le haut
reason-top-round = tour du haut
reason-used = longueur employée
reason-used-weight = poids employé

## D’où il vient

reason-same = comme { $same }
reason-same-of = comme { $same }, pour « { $title } »
reason-body = une mesure du corps
reason-choice = un choix, { $place }
reason-choice-made = un choix fait pour ce guide
# Une ligne du fichier de l’auteur.
reason-place = ligne { $line } de { $file }
reason-written = { $asked ->
    [yes] { $shown ->
        [yes] { $placed ->
            [yes] écrit pour « { $title } » comme { $formula }, { $place }
           *[no] écrit pour « { $title } » comme { $formula }
        }
       *[no] { $placed ->
            [yes] écrit pour « { $title } », { $place }
           *[no] écrit pour « { $title } »
        }
    }
   *[no] { $shown ->
        [yes] { $placed ->
            [yes] écrit comme { $formula }, { $place }
           *[no] écrit comme { $formula }
        }
       *[no] { $placed ->
            [yes] écrit, { $place }
           *[no] écrit
        }
    }
 }
reason-workroom = fixé par l’atelier
reason-usual-step = comme les magasins coupent d’ordinaire, là où le fichier ne dit rien
reason-one = un, faute de nombre écrit
reason-none = aucun, car la répétition ne va pas jusque-là
reason-as-worked = tel que coupé et travaillé
reason-before-drawn = tour du haut, avant de le resserrer

# Ce qui est acheté : le plan d’un tissu, le fil, et tout le reste.
reason-plan-proven = le plan de coupe{ "\u00A0" }: { reason-plan-joins }, prouvé le moins cher de son genre
reason-plan = le plan de coupe{ "\u00A0" }: { reason-plan-joins }, plus cher que le meilleur de { $share } au plus
reason-plan-joins = { $joins ->
    [one] { $joins } raccord en { reason-plan-sections }
   *[other] { $joins } raccords en { reason-plan-sections }
 }
reason-plan-sections = { $sections ->
    [one] { $sections } coupon
   *[other] { $sections } coupons
 }
reason-needle = ce que l’aiguille coud dans toutes les coutures, { $share } de perte compris
reason-bobbin = ce que la canette donne dans toutes les coutures, { $share } de perte compris
reason-looper = ce que le boucleur coud dans toutes les coutures, { $share } de perte compris
reason-steps-use = ce que les étapes en utilisent, et la réserve que demande le modèle
reason-square-end = pour le bout qui est d’abord coupé droit

# Combien de temps prend le travail.
reason-time-sewing = { $seams ->
    [one] { $seams } couture d’environ { $metres } m au rythme de l’atelier
   *[other] { $seams } coutures, environ { $metres } m en tout, au rythme de l’atelier
 }
reason-time-handling = { $ends ->
    [0] commencer et arrêter { $seams } coutures
   *[other] commencer et arrêter { $seams } coutures, et { $ends } groupes de bouts de fil
 }
reason-time-set-ups = { $changes ->
    [one] { $changes } changement de machine, de pied, de point ou de fil
   *[other] { $changes } changements de machine, de pied, de point ou de fil
 }
reason-time-pinning = { $pins } épingles posées et retirées
reason-time-gathering = froncer et répartir environ { $metres } m
reason-time-cutting = { $sections ->
    [0] tracer et couper environ { $metres } m
   *[other] tracer et couper environ { $metres } m, tissu étalé { $sections } fois
 }
reason-time-pressing = repasser environ { $metres } m
reason-time-tended = rester à côté
reason-time-look = le dernier coup d’œil au vêtement fini

# L’unité des calculs, quand le guide en emploie une autre.
reason-units-cm = cm
reason-units-inches = pouces

## Arrondi

reason-rounded = arrondi au multiple supérieur de { $step } : { $before } devient { $after }
# La cote finie diffère autrement de la cote de coupe.
reason-rounded-cut = cote de coupe arrondie au multiple supérieur de { $step } : { $before } devient { $after } ; cote finie : { $finished-before } devient { $finished-after }

## Fonctions dans une formule ; une parenthèse avec leurs nombres suit.

reason-max = le plus grand de
reason-min = le plus petit de
reason-round-up = arrondi au-dessus
reason-round-down = arrondi au-dessous
reason-round-near = arrondi
