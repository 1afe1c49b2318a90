### Keilbahnen nebeneinander, bevor sie zum Ring genäht werden.

figure-panels-head = { PIECE($piece, at: "start") }, rechte Seiten oben
figure-panels-alt = { $opened ->
    [yes] Die Keilbahnen nebeneinander, rechte Seiten oben, von links nach rechts: { $order }. Die Naht zwischen Nr. { $after } und Nr. { $next } bleibt von oben { $open } weit offen.
   *[no] Die Keilbahnen nebeneinander, rechte Seiten oben, von links nach rechts: { $order }. Von der Naht zwischen Nr. { $after } und Nr. { $next } aus wird gemessen.
 }
figure-panels-caption = { $opened ->
    [yes] Die Keilbahnen in der Reihenfolge, in der sie genäht werden, und die Kanten, die offen bleiben.
   *[no] Die Keilbahnen in der Reihenfolge, in der sie genäht werden.
 }
