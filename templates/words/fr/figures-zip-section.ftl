### Une fermeture à glissière dans l’ouverture d’une couture, en coupe.

figure-zip-tape = fermeture, dents en noir
figure-zip-alt = { $way ->
    [centred] Les deux marges sont repliées et se rejoignent sur les dents ; une piqûre à { $beside } de chaque côté traverse tissu, marge et ruban.
    [lapped] Un pli est à { $near } des dents et piqué sur son ruban ; l’autre les recouvre et est piqué à { $beside } de son pli.
   *[invisible] Sur une ouverture de { $opening }, les deux marges sont repliées ; chaque moitié est piquée à sa seule marge, tout contre les dents, et aucune piqûre ne traverse le tissu extérieur.
 }
figure-zip-caption = { $way ->
    [centred] La fermeture au milieu de son ouverture de { $opening }.{ figure-hatched }
    [lapped] La fermeture sous son rabat, ouverture de { $opening }, vue de son extrémité haute.{ figure-hatched }
   *[invisible] La fermeture invisible sur les marges de son ouverture de { $opening }.{ figure-hatched }
 }
figure-zip-folded-head = Envers dessus, avant la fermeture
figure-zip-folded-alt = L’ouverture est bâtie. Une marge est repassée sur son propre côté ; l’autre est rabattue par-dessus le bâti et repliée sur elle-même, et son pli dépasse le bâti de { $near }.
figure-zip-folded-caption = Le pli sous lequel viendra la fermeture, vu de son extrémité haute.{ figure-hatched }
figure-zip-beneath-head = À la machine, la fermeture endroit dessus
figure-zip-over = dessus
figure-zip-under = dessous
figure-zip-beneath-alt = Le pli qui dépasse est posé, endroit dessus, sur le ruban le long des dents, et piqué à { $from-fold } de son bord à travers pli, marge et ruban. Le côté qui recouvre est posé sur l’autre, loin de l’aiguille, sa marge rabattue.
figure-zip-beneath-caption = Seuls le pli et le ruban sont sous l’aiguille.{ figure-hatched }
