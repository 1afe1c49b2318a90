### Une attache à une taille finie.

figure-fastening-outside = Extérieur, fermé
figure-fastening-note = Ce qui est à l’intérieur ou entre les bouts est en tirets. Sans échelle.
figure-fastening-alt = { $overlaps ->
    [yes] Les bouts fermés de l’ouverture, vus de l’extérieur, au même niveau en haut. Celui de droite recouvre l’autre de { $overlap }. La première moitié est cousue à l’intérieur, à { $below } sous le bord supérieur, l’autre là où elle la rejoint.
   *[no] Les bouts fermés de l’ouverture, vus de l’extérieur, au même niveau en haut. Les bouts se touchent. La première moitié est cousue à l’intérieur, à { $below } sous le bord supérieur, l’autre là où elle la rejoint.
 }
figure-fastening-caption = { $count ->
    [one] Où se cousent les deux moitiés.
   *[other] Où se cousent les deux moitiés de chacune des { $count } attaches.
 }
