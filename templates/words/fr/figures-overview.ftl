### Le vêtement entier, épaisseur à côté d’épaisseur, avec ses cotes finies.

# Quelle épaisseur c’est : le vêtement entier s’il n’en a qu’une.
figure-overview-place = { $place ->
    [all] Le vêtement
    [outside] Extérieur
    [inside] Intérieur
    [sewn-on] Cousu sur { PIECE($on) }
   *[between] Entre
 }
figure-overview-name = { $layers ->
    [one] { figure-overview-place }
   *[other] { figure-overview-place }, { $layers } épaisseurs pareilles
 }
figure-overview-hem = { $ring ->
    [yes] ourlet { $hem } de tour
   *[no] bord inférieur { $hem }
 }
figure-overview-drop = { $drop } depuis le haut
figure-overview-dips = devant { $front }, côtés { $side }, dos { $back }
figure-overview-waist = Taille : { $rest } au repos ; { $cloth } de tissu.
figure-overview-to-scale = { $level ->
    [yes] À l’échelle, à plat.
   *[no] Hauteurs à la même échelle ; largeurs en proportion.
 }

## En mots

figure-overview-piece = { PIECE($piece, form: "bare") } de { $deep } de haut
figure-overview-layer = { $level ->
    [yes] { $ring ->
        [yes] { figure-overview-name } : { $pieces }, jusqu’à { $drop } du haut, ourlet de { $hem } de tour.
       *[no] { figure-overview-name } : { $pieces }, jusqu’à { $drop } du haut, bord inférieur de { $hem }.
    }
   *[no] { figure-overview-name } : { $pieces }, bord inférieur de { $hem }.
 }
figure-overview-waist-told = La taille mesure { $rest } au repos et porte { $cloth } de tissu.
figure-overview-alt = { $title }, { $long } de long. { $layers }
figure-overview-caption = Le vêtement fini, { $long } de long.
