### Ein Bund, der zum Tunnel wird, im Schnitt in seinen drei Zuständen; die Innenseite des Kleidungsstücks ist oben.

figure-casing-laid-on = 1. Innen aufgelegt, genäht
figure-casing-folded-up = 2. Nach oben geklappt, vom Rock weg
figure-casing-folded-over = 3. Nach außen umgelegt, abgesteppt
figure-casing-inside = innen
figure-casing-outside = außen
# Zwei kurze Zeilen neben dem Tunnel.
figure-casing-held = { $holds ->
    [cord] Kordel
   *[elastic] Gummi
 }
figure-casing-later = später
figure-casing-deep = { $depth } hoch
figure-casing-gap = { $holds ->
    [cord] Die Öffnung von { $gap } in der vorderen Mitte offen lassen: Dort kommt später die Kordel heraus.
   *[elastic] Die Öffnung von { $gap } neben der Seitennaht offen lassen: Dort kommt später das Gummiband hinein.
 }
figure-casing-skirt = Rock: { $plies }
figure-casing-top = { PIECE($band, form: "bare") }, obere Kante
figure-casing-rows = Die beiden Nähte sind weiter auseinander gezeichnet.
figure-casing-laid-on-alt = { PIECE($band, at: "start") } im Schnitt, Innenseite oben: liegt innen auf dem Rock, rechte Stoffseite nach unten, offene Kanten bündig, { $seam-width } neben der Kante genäht.
figure-casing-folded-up-alt = { PIECE($band, at: "start") } im Schnitt, Innenseite oben: nach oben geklappt, vom Rock weg, die Nahtzugabe von { $seam-width } darunter.
figure-casing-folded-over-alt = { $holds ->
    [cord] { PIECE($band, at: "start") } im Schnitt, Innenseite oben: über die obere Kante nach außen umgelegt, { $depth } hoch, der Einschlag von { $seam-width } überdeckt die erste Naht, abgesteppt; die Kordel kommt später, zwischen Nahtzugabe und Außenseite.
   *[elastic] { PIECE($band, at: "start") } im Schnitt, Innenseite oben: über die obere Kante nach außen umgelegt, { $depth } hoch, der Einschlag von { $seam-width } überdeckt die erste Naht, abgesteppt; das Gummiband kommt später, zwischen Nahtzugabe und Außenseite.
 }
figure-casing-caption = Der Bund im Schnitt: angenäht, nach oben geklappt, umgelegt.{ figure-hatched }
