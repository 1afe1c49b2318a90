### Coupe d’une taille dont la doublure est rentrée sur toutes les marges.

figure-lining-band = Avant de retourner : la ceinture sur la doublure
figure-lining-opening = ouverture de la coulisse
figure-lining-band-alt = Coupe : { PIECE($lining) } sur l’envers et { PIECE($band) } pliée par-dessus, bords coupés au même niveau, piqués à { $inside }. L’ouverture de la coulisse est entre les deux.
figure-lining-band-caption = La ceinture sur la doublure en coupe, les deux ourlets à droite. Une fois la doublure retournée sur l’endroit, la ceinture pend à l’intérieur.{ figure-hatched }
figure-lining-sewn = À la piqûre : la doublure dehors, l’ourlet à droite
figure-lining-turned = Retournée : l’intérieur dessus, la ceinture à gauche
figure-lining-alt = Deux coupes. Avant : { EDGE($to) }, { PIECE($band) } en deux et { PIECE($lining) } l’un sur l’autre, bords coupés bord à bord, piqués à { $seam-width }. Après : la ceinture en haut, la doublure à l’intérieur, les marges entre elle et les épaisseurs.
figure-lining-caption = La taille en coupe, avant et après avoir rentré la doublure. Une épaisseur les figure toutes.{ figure-hatched }
