### Les plis : les lignes à marquer sur le tissu à plat, et le bord plié vu d’en haut.

figure-pleats-flat = Repères sur le tissu à plat, endroit dessus
figure-pleats-folded = Plié, le bord vu d’en haut
figure-pleats-shown = montre { $shown }
figure-pleats-depth = Chaque pli a { $depth } de profondeur. L’endroit est en dessous.
figure-pleats-lines = Les traits épais sont les repères, les tirets et pointillés les pliures. Le bord plié est dessiné plus grand.
figure-pleats-alt = { $kind ->
    [knife] Plis couchés : un repère tous les { $every } de tissu à plat, chaque pli de { $depth } de profondeur, dont { $shown } se voient ; { $count } plis réduisent { $cloth } à { $length }.
    [box] Plis ronds : un repère tous les { $every } de tissu à plat, chaque pli de { $depth } de profondeur, dont { $shown } se voient ; { $count } plis réduisent { $cloth } à { $length }.
   *[inverted] Plis creux : un repère tous les { $every } de tissu à plat, chaque pli de { $depth } de profondeur, dont { $shown } se voient ; { $count } plis réduisent { $cloth } à { $length }.
 }
figure-pleats-caption = { $kind ->
    [knife] { $drawn } des { $count } plis couchés, à plat et pliés.
    [box] { $drawn } des { $count } plis ronds, à plat et pliés.
   *[inverted] { $drawn } des { $count } plis creux, à plat et pliés.
 }
