### Lagen im Schnitt von oben bis zum Saum: welche außen liegt, wie weit jede reicht, wo Nahtzugaben verdeckt sind.

figure-layers-cut = Im Schnitt von oben bis zum Saum
figure-layers-outside = außen
figure-layers-legs = Beine
# Beide kurz: Daneben ist wenig Platz.
figure-layers-held = gehalten
# Welche Stoffseite wohin zeigt.
figure-layers-way = { $face ->
    [either] Nahtzugaben zu den Beinen
    [out] rechte Stoffseite außen
   *[in] rechte Stoffseite zu den Beinen
 }
# $chain: das Teil oben und die, die daran hängen.
figure-layers-one = { PIECE($chain, form: "bare") }, { figure-layers-way }, { $layer-deep } hoch
figure-layers-more = und { $more } weitere Lagen in derselben Weise
figure-layers-scale = Höhen in einem Maßstab; Abstände und Nahtzugaben breiter.
figure-layers-alt = Lagen von außen zu den Beinen: { $layers }. Alle sind oben bündig und { $from-edge } darunter zusammengehalten.
figure-layers-caption = { $count } Lagen, die äußerste links.
