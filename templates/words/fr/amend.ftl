### Ce qui a été mesuré en chemin, ce qu’il faut en faire, et le guide à partir de là.
### `.step` dit un message au début d’une étape ; le message lui-même se tient dans une liste.

## Ce qui a été mesuré. $copy : laquelle de plusieurs pièces semblables, 0 pour la seule.

amend-cloth = largeur du tissu « { $cloth } »
    .step = La largeur du tissu « { $cloth } »
amend-bolt = la longueur du tissu ({ $cloth })
    .step = La longueur du tissu ({ $cloth })
amend-shrinkage = le rétrécissement du tissu ({ $cloth })
    .step = Le rétrécissement du tissu ({ $cloth })
amend-elastic = l’élastique ({ $elastic }), la boucle au repos
    .step = L’élastique ({ $elastic }), la boucle au repos
amend-edge = { $copy ->
    [0] { EDGE($edge) }
   *[other] { EDGE($edge) }, exemplaire { $letter }
 }
    .step = { $copy ->
        [0] { EDGE($edge, at: "start") }
       *[other] { EDGE($edge, at: "start") }, exemplaire { $letter },
     }
# $stack : le nom que l’auteur a donné aux épaisseurs travaillées comme un seul bord.
amend-stack = { $copy ->
    [0] le bord des épaisseurs « { $stack } »
   *[other] le bord des épaisseurs « { $stack } », exemplaire { $letter }
 }
    .step = { $copy ->
        [0] Le bord des épaisseurs « { $stack } »
       *[other] Le bord des épaisseurs « { $stack } », exemplaire { $letter },
     }
amend-ring = { $copy ->
    [0] { PIECE($piece) }, tout le tour
   *[other] { PIECE($piece) }, tout le tour, exemplaire { $letter }
 }
    .step = { $copy ->
        [0] { PIECE($piece, at: "start") }, tout le tour,
       *[other] { PIECE($piece, at: "start") }, tout le tour, exemplaire { $letter },
     }
amend-ring-edge = { $along ->
    [cut] { $copy ->
        [0] { EDGE($edge) }, tout autour le long du bord coupé
       *[other] { EDGE($edge) }, tout autour le long du bord coupé, exemplaire { $letter }
    }
    [line] { $copy ->
        [0] { EDGE($edge) }, tout autour sur la ligne de couture
       *[other] { EDGE($edge) }, tout autour sur la ligne de couture, exemplaire { $letter }
    }
   *[no] { $copy ->
        [0] { EDGE($edge) }, tout le tour
       *[other] { EDGE($edge) }, tout le tour, exemplaire { $letter }
    }
 }
    .step = { $along ->
        [cut] { $copy ->
            [0] { EDGE($edge, at: "start") }, tout autour le long du bord coupé,
           *[other] { EDGE($edge, at: "start") }, tout autour le long du bord coupé, exemplaire { $letter },
        }
        [line] { $copy ->
            [0] { EDGE($edge, at: "start") }, tout autour sur la ligne de couture,
           *[other] { EDGE($edge, at: "start") }, tout autour sur la ligne de couture, exemplaire { $letter },
        }
       *[no] { $copy ->
            [0] { EDGE($edge, at: "start") }, tout le tour,
           *[other] { EDGE($edge, at: "start") }, tout le tour, exemplaire { $letter },
        }
     }
amend-cut-length = { $copy ->
    [0] { PIECE($piece) }, longueur de coupe
   *[other] { PIECE($piece) }, longueur de coupe, exemplaire { $letter }
 }
    .step = { $copy ->
        [0] { PIECE($piece, at: "start") }, longueur de coupe,
       *[other] { PIECE($piece, at: "start") }, longueur de coupe, exemplaire { $letter },
     }
amend-cut-depth = { $copy ->
    [0] { PIECE($piece) }, hauteur de coupe
   *[other] { PIECE($piece) }, hauteur de coupe, exemplaire { $letter }
 }
    .step = { $copy ->
        [0] { PIECE($piece, at: "start") }, hauteur de coupe,
       *[other] { PIECE($piece, at: "start") }, hauteur de coupe, exemplaire { $letter },
     }

## Combien cela mesure

amend-length = { $length }
# Personne ne l’a mesuré : le bord a été froncé à la longueur du premier guide.
amend-length-assumed = { $length } d’après le premier guide
amend-share = { $share }
amend-as-planned = comme prévu
amend-short = { $wanted } voulus, { $gap } trop court ({ $share }{ "\u00A0" }%)
amend-long = { $wanted } voulus, { $gap } trop long ({ $share }{ "\u00A0" }%)
amend-share-reckoned = { $share } prévus
amend-bolt-enough = { $wanted } nécessaires, { $gap } en réserve

## Ce qu’il faut faire. $gap : l’écart. $metre : ce qui en revient à chaque mètre.

# Seulement dans les messages ci-dessous : ce qui revient de la différence à chaque mètre ou yard.
amend-each = { $per ->
    [yard] { $metre } par yard
   *[metre] { $metre } par mètre
 }
amend-none = dans l’arrondi{ "\u00A0" }: continuer
    .step = L’écart reste dans l’arrondi{ "\u00A0" }: continuer.
amend-ease = résorber { $gap } en cousant, { amend-each }
    .step = Résorber { $gap } en cousant, { amend-each }.
amend-trim = raccourcir de { $gap } le bord auquel il se coud, à { $length }
    .step = Raccourcir de { $gap } le bord auquel il se coud, à { $length }.
amend-choose = au choix{ "\u00A0" }: résorber { $gap }, { amend-each }, ou relâcher les fronces d’autant
    .step = Au choix{ "\u00A0" }: résorber { $gap }, { amend-each }, ou relâcher les fronces d’autant.
amend-let-out = relâcher les fronces de { $gap }, { amend-each }
    .step = Relâcher les fronces de { $gap }, { amend-each }.
amend-closer = resserrer les fronces de { $gap }, { amend-each }
    .step = Resserrer les fronces de { $gap }, { amend-each }.
amend-pleats-out = relâcher les plis de { $gap } en tout, autant pour chacun
    .step = Relâcher les plis de { $gap } en tout, autant pour chacun.
amend-pleats-in = reprendre { $gap } de plus dans les plis en tout, autant dans chacun
    .step = Reprendre { $gap } de plus dans les plis en tout, autant dans chacun.
amend-row-out = relâcher le fil du rang de { $gap }, { amend-each }
    .step = Relâcher le fil du rang de { $gap }, { amend-each }.
amend-row-in = tirer encore le fil du rang de { $gap }, { amend-each }
    .step = Tirer encore le fil du rang de { $gap }, { amend-each }.
amend-bolt-short = acheter { $gap } de plus avant de couper, ou choisir une façon de couper avec plus de raccords
    .step = Acheter { $gap } de plus avant de couper, ou choisir une façon de couper avec plus de raccords.
amend-bolt-buy = acheter { $gap } de plus avant de couper
    .step = Acheter { $gap } de plus avant de couper.
amend-cut-anew = le plan de coupe est refait
    .step = Le plan de coupe est refait.
amend-follows = cela reste ainsi, et les mesures suivantes s’y règlent
    .step = Cela reste ainsi, et les mesures suivantes s’y règlent.
amend-level-it = recouper à { $length } au bord inférieur, de niveau avec les exemplaires auxquels il est cousu
    .step = Recouper à { $length } au bord inférieur, de niveau avec les exemplaires auxquels il est cousu.
amend-level-others = recouper à son niveau, au bord inférieur, les exemplaires auxquels il est cousu, à { $length }
    .step = Recouper à son niveau, au bord inférieur, les exemplaires auxquels il est cousu, à { $length }.
amend-follows-at-hem = cela compte comme trop court au bord inférieur, et les mesures suivantes s’y règlent
    .step = Cela compte comme trop court au bord inférieur, et les mesures suivantes s’y règlent.
# Un de deux pareils, comme une poche.
amend-follows-pair = cela reste ainsi, et ses mesures s’y règlent ; pour qu’il aille avec l’autre, couper aussi celui-là à { $length }
    .step = Cela reste ainsi, et ses mesures s’y règlent. Pour qu’il aille avec l’autre, couper aussi celui-là à { $length }.
amend-cut-to = couper à { $wanted }
    .step = Couper à { $wanted }.
amend-sewn = c’est déjà cousu{ "\u00A0" }: continuer
    .step = C’est déjà cousu{ "\u00A0" }: continuer.
amend-go-on = continuer
    .step = Continuer.

## Le guide à partir d’ici

# Derrière le nom de qui a le guide.
amend-wearer = { $whose }, à partir d’ici selon les mesures
amend-part = Selon les mesures
amend-title = Corriger ce qui a été mesuré
amend-aim = Tout mesure ce sur quoi comptent les étapes suivantes.
# $what, $measured, $off et $todo sont des messages d’en haut.
amend-step = { $what } mesure { $measured }{ "\u00A0" }: { $off }. { $todo }
amend-step-gathers = { $what } mesure { $measured }{ "\u00A0" }: { $off }. { $todo }
    .check = Chaque quart mesure { $quarter }, les quatre { $whole }.
    .remedy = Répartir de nouveau les fronces de repère en repère.
amend-step-choose = { $what } mesure { $measured }{ "\u00A0" }: { $off }. { $todo }
    .check = Si on relâche les fronces, chaque quart mesure { $quarter }, les quatre { $whole }. Si on soutient, les laisser ; la couture épinglée, aucun tissu ne poche entre les épingles.
    .remedy = Répartir à nouveau les fronces de repère en repère.
amend-step-row = { $what } mesure { $measured }{ "\u00A0" }: { $off }. { $todo }
    .check = { amend-step-gathers.check }
    .remedy = Lisser le tissu le long du rang de repère en repère.
# Deux bords à coudre l’un à l’autre qui n’ont plus la même longueur ; $copy comme plus haut. $metre : sur chaque mètre.
amend-shared = { $alike ->
    [yes] { $copy ->
        [0] { EDGE($longer) }, { $long }, a maintenant { $gap } de plus que { EDGE($shorter) }, { $short }{ "\u00A0" }: marquer chacun en parts de sa propre longueur et répartir cela également en les cousant ensemble, { amend-each }
       *[other] exemplaire { $letter }{ "\u00A0" }: { EDGE($longer) }, { $long }, a maintenant { $gap } de plus que { EDGE($shorter) }, { $short }{ "\u00A0" }: marquer chacun en parts de sa propre longueur et répartir cela également en les cousant ensemble, { amend-each }
    }
   *[no] { $copy ->
        [0] { EDGE($longer) } a maintenant { $gap } de trop pour { EDGE($shorter) }{ "\u00A0" }: répartir cela également en les cousant ensemble, { amend-each }
       *[other] exemplaire { $letter }{ "\u00A0" }: { EDGE($longer) } a maintenant { $gap } de trop pour { EDGE($shorter) }{ "\u00A0" }: répartir cela également en les cousant ensemble, { amend-each }
    }
 }
amend-step-shared = { $alike ->
    [yes] { $copy ->
        [0] { EDGE($longer, at: "start") }, { $long }, a maintenant { $gap } de plus que { EDGE($shorter) }, { $short }. Marquer chacun en parts de sa propre longueur et, en les cousant ensemble, répartir cela également d’épingle en épingle, { amend-each }.
       *[other] Sur l’exemplaire { $letter }{ "\u00A0" }: { EDGE($longer) }, { $long }, a maintenant { $gap } de plus que { EDGE($shorter) }, { $short }. Marquer chacun en parts de sa propre longueur et, en les cousant ensemble, répartir cela également d’épingle en épingle, { amend-each }.
    }
   *[no] { $copy ->
        [0] { EDGE($longer, at: "start") } a maintenant { $gap } de trop pour { EDGE($shorter) }. En les cousant ensemble, répartir cela également d’épingle en épingle, { amend-each }.
       *[other] Sur l’exemplaire { $letter }{ "\u00A0" }: { EDGE($longer) } a maintenant { $gap } de trop pour { EDGE($shorter) }. En les cousant ensemble, répartir cela également d’épingle en épingle, { amend-each }.
    }
 }
    .check = Aucun pli n’est pris dans la couture.
    .remedy = Découdre cette largeur de main, étaler le tissu et recoudre.
# Travail que des exemplaires ont pour eux seuls : derrière son titre, et là où il se fait sur plusieurs. $letters : de ces
# exemplaires ; $count : combien. $own : si leurs mesures ne sont pas celles prévues.
amend-copies-title = { $own ->
    [yes] { $count ->
        [one] { $title }{ "\u00A0" }: exemplaire { $letters }, avec ses propres mesures
       *[other] { $title }{ "\u00A0" }: exemplaires { $letters }, avec leurs propres mesures
    }
   *[no] { $count ->
        [one] { $title }{ "\u00A0" }: exemplaire { $letters }
       *[other] { $title }{ "\u00A0" }: exemplaires { $letters }
    }
 }
amend-some-of-it = { $runs ->
    [yes] Faire ces { $count } exemplaires{ "\u00A0" }: { $letters }. Exécuter une phrase sur chacun avant la suivante ; là où c’est écrit, en exécuter plusieurs sur l’un, puis sur le suivant.
   *[no] Faire ces { $count } exemplaires{ "\u00A0" }: { $letters }. Exécuter chaque phrase sur une pièce après l’autre, avant de passer à la phrase suivante.
 }

## Le rapport

amend-report = { $title }, { $whose }, selon les mesures
amend-report-line = { $what }{ "\u00A0" }: { $measured }{ "\u00A0" }; { $off }
amend-same = rien ne change dans les étapes qui suivent
amend-same-copy = rien ne change pour l’exemplaire { $letter }
amend-same-others = rien ne change pour les autres exemplaires
amend-same-meet = rien ne change à partir de la jonction des exemplaires
amend-changes = ce qui change dans les étapes qui suivent{ "\u00A0" }:
amend-changes-copy = ce qui change pour l’exemplaire { $letter }{ "\u00A0" }:
amend-changes-others = ce qui change pour les autres exemplaires{ "\u00A0" }:
amend-changes-meet = ce qui change à partir de la jonction des exemplaires{ "\u00A0" }:
