### Une attache à une taille finie.

figure-fastening-outside = Extérieur, fermé
figure-fastening-note = Ce qui est à l’intérieur ou entre les bouts est en tirets. Sans échelle.
figure-fastening-alt = { $overlaps ->
    [yes] Les bouts fermés de l’ouverture, vus de l’extérieur, au même niveau en haut. Celui de droite recouvre l’autre de { $overlap }. La première moitié est cousue à l’intérieur, à { $below } sous { $under ->
        [yes] la ceinture
       *[no] le bord supérieur
     }, l’autre là où elle la rejoint.
   *[no] Les bouts fermés de l’ouverture, vus de l’extérieur, au même niveau en haut. Les bouts se touchent. La première moitié est cousue à l’intérieur, à { $below } sous { $under ->
        [yes] la ceinture
       *[no] le bord supérieur
     }, l’autre là où elle la rejoint.
 }
# Les boutons sont à l’extérieur, avec leurs boutonnières ou leurs brides.
figure-fastening-alt-buttons = Les bouts fermés de l’ouverture, vus de l’extérieur. { $count ->
    [one] Un bouton
   *[other] { $count } boutons
 } avec chacun { $loops ->
    [yes] une bride au bord du bout de droite, la première
   *[no] une boutonnière dans le bout du dessus, la première
 } à { $below } sous { $under ->
    [yes] la ceinture
   *[no] le bord supérieur
 }.
figure-fastening-caption = { $count ->
    [one] Où se cousent les deux moitiés.
   *[other] Où se cousent les deux moitiés de chacune des { $count } attaches.
 }
