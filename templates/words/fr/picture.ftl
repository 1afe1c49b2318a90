### Le vêtement tel qu’il sera, dessiné d’après ses cotes.

picture-view = { $view ->
    [side] vu de côté
   *[front] vu de face
 }
picture-layers = { $layers ->
    [one] une épaisseur
   *[other] { $layers } épaisseurs
 }
picture-alt = { $title } sur un mannequin simple, { picture-view } : { $long } de long, { picture-layers }, environ { $across } de large à l’ourlet.
picture-caption = Une impression, { picture-view }. Le vêtement mesure { $long } de long ; son ampleur dépend du tissu.
