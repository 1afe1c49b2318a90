### La liste à emporter au magasin. Les valeurs sont des textes finis, sauf si une note dit autre chose.

shopping-title = Achats pour { $title }, { $whose }
# $garments (nombre)
shopping-class = { $garments ->
    [one] { $whose } : { $garments } vêtement
   *[other] { $whose } : { $garments } vêtements
 }

## Un matériau

# $amount : ce qu’il en faut. $use : où il va.
shopping-needed = besoin : { $amount }, pour { $use }
shopping-widths = les laizes comparées :
# $joins (nombre)
shopping-width = { $joins ->
    [one] { $width } de large : { $amount }, { $cost }, { $joins } raccord
   *[other] { $width } de large : { $amount }, { $cost }, { $joins } raccords
 }
shopping-width-chosen = { shopping-width }, retenue
shopping-no-price = sans prix
# $reels (nombre)
shopping-thread = { $looped ->
    [yes] { $reels ->
        [one] aiguille { $needle }, canette { $bobbin }, boucleur { $looper }, { $waste } de perte ; { $reels } bobine à la fois sur la machine
       *[other] aiguille { $needle }, canette { $bobbin }, boucleur { $looper }, { $waste } de perte ; { $reels } bobines à la fois sur les machines
    }
   *[no] { $reels ->
        [one] aiguille { $needle }, canette { $bobbin }, { $waste } de perte ; { $reels } bobine à la fois sur la machine
       *[other] aiguille { $needle }, canette { $bobbin }, { $waste } de perte ; { $reels } bobines à la fois sur les machines
    }
 }
# $bobbins (nombre)
shopping-bobbins = { $bobbins ->
    [one] remplir { $bobbins } canette
   *[other] remplir { $bobbins } canettes
 }
# $materials : une liste.
shopping-cut-to = Le fichier ne dit pas comment se vendent : { $materials }. Leurs longueurs sont arrondies au-dessus, à { $step } près, comme les magasins coupent d’ordinaire ; demander dans le vôtre.

## Ce que cela fait

# Deux astérisques de chaque côté mettent un texte en gras.
shopping-cost = Matériaux : **{ $cost }**
# $materials (une liste)
shopping-cost-without = Matériaux : **{ $cost }**, sans { $materials }
shopping-work = Travail : **{ $time }** environ, coupe comprise
shopping-labour = Main-d’œuvre : { $labour } ; le tout { $cost }
# $margin : en pour cent.
shopping-price = Prix à demander : **{ $price }**, marge de { $margin } % du coût

## Acheté ensemble

shopping-together = Acheté ensemble, et par chacun seul
