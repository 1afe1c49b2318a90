### Des lés côte à côte, avant d’être assemblés en rond.

figure-panels-head = { PIECE($piece, at: "start") }, endroit dessus
figure-panels-alt = { $opened ->
    [yes] Les lés côte à côte, endroit dessus, de gauche à droite : { $order }. La couture entre le nº { $after } et le nº { $next } reste ouverte sur { $open } depuis le haut.
   *[no] Les lés côte à côte, endroit dessus, de gauche à droite : { $order }. On mesure à partir de la couture entre le nº { $after } et le nº { $next }.
 }
figure-panels-caption = { $opened ->
    [yes] Les lés dans l’ordre où ils se cousent, et les bords qui restent ouverts.
   *[no] Les lés dans l’ordre où ils se cousent.
 }
