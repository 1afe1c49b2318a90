### Den am Saum offenen Teil einer Naht fertig nähen, als Schlitz oder als Gehschlitz mit Untertritt.

figure-slit-head = Rechte Seite oben
figure-slit-head-vent = Innenseite oben
figure-slit-end = Ende der Öffnung
figure-slit-alt = Eine Naht, rechte Seite oben, über dem Saum { $long } weit offen; Steppnähte { $beside } neben der Öffnung treffen sich quer an ihrem Ende.
figure-slit-alt-vent = Ein Gehschlitz von innen: Die Nahtzugabe einer Seite ist zurückgeschlagen und festgenäht, die der anderen steht { $margin } darunter vor; eine schräge Naht hält beide am Ende der Öffnung.
figure-slit-caption = Wie die Öffnung am Saum genäht ist.
