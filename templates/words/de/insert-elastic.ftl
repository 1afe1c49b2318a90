### Gummiband durch einen Tunnel ziehen und die Enden zum Ring verbinden.
### $band ist der Bund oder das Teil, dessen Kante umgelegt wurde.

insert-elastic-title = Das Gummiband einziehen
    .number = { $loop }
insert-elastic-aim = Ein Ring von { $loop } zieht { $casing } Tunnel auf die Taille zusammen.

## Anprobieren und schneiden

insert-elastic-try = Vor dem Schneiden das Gummiband mit einer Sicherheitsnadel zu einem Ring von { $loop } stecken. Um die Taille legen, sich damit hinsetzen und einatmen.
    .check = Es hält und schneidet nicht ein. Zwei Finger passen darunter.
    .remedy = Länger oder kürzer stecken, bis es stimmt, und von hier an dieses Maß statt { $loop } nehmen.
insert-elastic-write = Das benutzte Maß des Rings mit dem Datum aufschreiben.
insert-elastic-cut = Das Gummiband auf { $cut } schneiden: { $loop } und { $lap } für die Überlappung.
    .check = Es misst { $cut }, wenn es locker neben dem Maßband liegt.
    .remedy = Zu lang: den Rest abschneiden. Zu kurz: ein neues Stück schneiden, dieses nicht dehnen.
insert-elastic-ends = Beide Schnittenden von Hand überwendlich nähen, Stich neben Stich, den Faden jedes Mal um die Kante, damit sie nicht ausfransen.
insert-elastic-line = { $lap } vor einem Ende quer darüber eine gerade Linie ziehen.
    .check = Von der Linie bis zum anderen Ende sind es ungedehnt { $loop }.
    .tolerance = { $lap-off } mehr oder weniger
    .remedy = Die Linie an der richtigen Stelle neu ziehen und die erste durchstreichen.
insert-elastic-cross = Auf derselben Seite { $cross } vor dem anderen Ende ein Kreuz zeichnen: Es bleibt sichtbar, wenn die Enden überlappen.
# Der Tunnel hat mehrere Kanäle, in jedem ein Gummiband.
insert-elastic-order = In jeden der { $channels } Kanäle ein Gummiband ziehen, zuerst in den am Bruch. { $opened ->
    [seam] Jedes geht durch seine eigene Öffnung in der Quernaht hinein.
   *[row] Alle gehen durch die Öffnung und durch die darüber hinein, und alle ihre Enden hängen heraus, bis sie genäht sind.
 }
    .check = In keinem Kanal liegen zwei.
## Lang schneiden, im Kleidungsstück anprobieren und kürzen

insert-elastic-cut-long = Das Gummiband auf { $cut } schneiden: { $loop }, { $lap } für die Überlappung und { $spare } für die Anprobe.
    .check = Es misst { $cut }, wenn es locker neben dem Maßband liegt.
    .remedy = Zu kurz: ein neues Stück schneiden, dieses nicht dehnen.
insert-elastic-pin-end = Ein Ende { $tail } aus der Öffnung hängen lassen. Dort mit einer Sicherheitsnadel an { PIECE($band) } feststecken, damit es nicht hineinrutscht.
insert-elastic-thread-long = In das andere Ende eine zweite Sicherheitsnadel oder eine Durchziehnadel stecken und rundum durch den Tunnel bis zur Öffnung schieben. Dabei den Stoff über das Gummiband zurückschieben.
    .check = Das Gummiband liegt rundum flach.
    .remedy = Ist es verdreht, die letzte Handlänge zurückziehen, drehen und weiterschieben.
insert-elastic-thread-long-band = In das andere Ende eine zweite Sicherheitsnadel oder eine Durchziehnadel stecken und rundum durch den Tunnel bis zur Öffnung schieben, zwischen Nahtzugabe und Außenseite. Dabei den Stoff über das Gummiband zurückschieben.
    .check = { insert-elastic-thread-long.check }
    .remedy = { insert-elastic-thread-long.remedy }
insert-elastic-lap-to-try = Beide Sicherheitsnadeln oder die eine und die Durchziehnadel herausnehmen und beide Enden festhalten. Sie überlappen, bis der Ring { $loop } misst, und mit einer geschlossenen Sicherheitsnadel halten.
insert-elastic-try-on = Erst die Nadeln zählen und nach vergessenen suchen; dann das Kleidungsstück anziehen, sich damit hinsetzen und einatmen.
    .check = Es hält und schneidet nicht ein. Zwei Finger passen darunter.
    .remedy = Weniger oder mehr überlappen, bis es stimmt, und von hier an diesen Ring statt { $loop } nehmen.
insert-elastic-mark-lap = Wo das obere Ende aufhört, auf dem unteren eine Linie ziehen, das Kleidungsstück ausziehen und beide Enden { $out } aus der Öffnung ziehen. Die Nadel der Überlappung herausnehmen.
insert-elastic-shorten = Das untere Ende läuft darunter weiter: { $lap } von der Linie abschneiden, auf der Seite, die unter dem oberen Ende lag.
    .check = Vom Schnittende bis zur Linie sind es { $lap }.
    .tolerance = { $lap-off } mehr oder weniger
    .remedy = Zu lang: den Rest abschneiden. Zu kurz: so viel weniger überlappen und zweimal übernähen.

# Der Tunnel ist flach, eine Naht schließt ihn danach. $half-lap: was an jedem Ende in der Naht liegt.
insert-elastic-aim-flat = Gummiband zieht { $casing } Tunnel auf { $loop } zusammen; die Naht fasst seine Enden mit.
insert-elastic-cut-flat = Das Gummiband auf { $cut } schneiden: { $loop } und an jedem Ende { $half-lap } für die Naht.
    .check = { insert-elastic-cut.check }
    .remedy = { insert-elastic-cut.remedy }
insert-elastic-mark-flat = { $half-lap } vor jedem Ende quer darüber eine gerade Linie ziehen.
    .check = Von Linie zu Linie sind es ungedehnt { $loop }.
    .tolerance = { $lap-off } mehr oder weniger
    .remedy = Die Linie an der richtigen Stelle neu ziehen und die erste durchstreichen.

## Durch den Tunnel

insert-elastic-thread-flat = Ein Ende des Gummibands bündig mit dem Schnittende feststecken: { PIECE($band) }. In das andere Ende eine Sicherheitsnadel oder Durchziehnadel stecken und durch den Tunnel bis zu seiner anderen Öffnung schieben. Dabei den Stoff über das Gummiband zurückschieben und auch dieses Ende bündig mit dem Stoff feststecken.
    .check = Das Gummiband liegt überall flach, beide Enden sind bündig mit dem Stoff.
    .remedy = Ist es verdreht, die letzte Handlänge zurückziehen, drehen und weiterschieben.
insert-elastic-bar-flat = An jedem Ende zwischen Linie und Schnittkante zwei Zickzacknähte quer über das Gummiband durch alle Lagen steppen; jedes Mal verriegeln. Die Nadeln herausnehmen.
    .check = Kräftig ziehen: Nichts gibt nach. Die Naht kommt auf die Linien.
    .remedy = Die Nähte noch einmal übernähen.
insert-elastic-spread-flat = Die Weite mit den Fingern auf dem Gummiband verteilen.
    .check = Beide Hälften des Tunnels sind gleich lang.
    .remedy = Mehr zur kürzeren Seite schieben.


insert-elastic-tail = Das Ende mit der Linie { $tail } aus der Öffnung hängen lassen. Dort an { PIECE($band) } feststecken, damit es nicht hineinrutscht.
insert-elastic-thread = In das Ende mit dem Kreuz eine Sicherheitsnadel oder Durchziehnadel stecken und rundum durch den Tunnel bis zur Öffnung schieben. Dabei den Stoff über das Gummiband zurückschieben.
    .check = Das Gummiband liegt rundum flach, Linie und Kreuz sind auf derselben Seite.
    .remedy = Ist es verdreht, die letzte Handlänge zurückziehen, drehen und weiterschieben.
# Der Tunnel ist ein angenähter Bund mit der Nahtzugabe darin.
insert-elastic-thread-band = In das Ende mit dem Kreuz eine Sicherheitsnadel oder Durchziehnadel stecken und rundum durch den Tunnel bis zur Öffnung schieben, zwischen Nahtzugabe und Außenseite. Dabei den Stoff über das Gummiband zurückschieben.
    .check = { insert-elastic-thread.check }
    .remedy = { insert-elastic-thread.remedy }
insert-elastic-pull-out = Die erste Sicherheitsnadel herausnehmen und beide Enden { $out } aus der Öffnung ziehen. Auch die andere oder die Durchziehnadel herausnehmen.

## Die Überlappung

insert-elastic-lap = Das Ende mit dem Kreuz auf das Ende mit der Linie legen, beide Zeichen oben, das Schnittende an der Linie. Die Überlappung mit einer geschlossenen Sicherheitsnadel halten.
    .check = Das Schnittende liegt an der Linie: So ist die Überlappung { $lap } und der Ring ungedehnt { $loop } lang.
    .tolerance = { $lap-off } mehr oder weniger
    .remedy = Die Nadel öffnen, das Ende an die Linie schieben und die Nadel wieder schließen.
# Das Gummiband wurde im Kleidungsstück anprobiert: Die Linie zeigt, wie weit die Enden überlappten.
insert-elastic-lap-long = Das obere Ende wie zuvor auf das untere legen, sein Schnittende an der Linie. Die Überlappung mit einer geschlossenen Sicherheitsnadel halten.
    .check = Die Überlappung misst { $lap }, der Ring ungedehnt so viel, wie aufgeschrieben ist.
    .tolerance = { $lap-off } mehr oder weniger
    .remedy = Die Nadel öffnen, das Ende an die Linie schieben und die Nadel wieder schließen.
insert-elastic-sew = Die Sicherheitsnadel herausnehmen und die Überlappung festhalten. Zwei Zickzacknähte über die Überlappung steppen, dann je eine entlang ihrer beiden Enden; jedes Mal verriegeln.
    .check = Kräftig ziehen: Nichts gibt nach.
    .remedy = Die Überlappung noch einmal übernähen.
insert-elastic-slip-back = Die Überlappung in den Tunnel zurückgleiten lassen.
insert-elastic-stretch = Die Taille flach legen, Bruch auf Bruch. Von Hand dehnen, bis sie { $half-over } breit ist, also { $over } rundum, und zurückspringen lassen, dreimal. Nie weiter dehnen.
    .check = Die Weite ist rundum gleich verteilt.
    .remedy = Mit den Fingern auf dem Gummiband verschieben.
# Wo eine Anleitung kein Körpermaß nennt.
insert-elastic-stretch-over = Die Taille flach legen, Bruch auf Bruch. Von Hand so weit dehnen, wie die Hüften sind, über die sie geht, und zurückspringen lassen, dreimal. Nie weiter dehnen.
    .check = Die Weite ist rundum gleich verteilt.
    .remedy = Mit den Fingern auf dem Gummiband verschieben.
