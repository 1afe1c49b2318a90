### Coupe d’une taille dont la doublure est rentrée sur toutes les marges.

figure-lining-sewn = À la piqûre : la doublure dehors, l’ourlet à droite
figure-lining-turned = Retournée : l’intérieur dessus, la ceinture à gauche
figure-lining-alt = Deux coupes. Avant : { EDGE($to) }, { PIECE($band) } en deux et { PIECE($lining) } l’un sur l’autre, bords coupés bord à bord, piqués à { $seam-width }. Après : la ceinture en haut, la doublure à l’intérieur, les marges entre elle et les épaisseurs.
figure-lining-caption = La taille en coupe, avant et après avoir rentré la doublure. Une épaisseur les figure toutes.{ figure-hatched }
