### Les deux bords d’une couture avec leurs repères et leurs épingles, avant de les piquer.
### $to : les pièces du bord du haut, $edge : celles du bord du bas.

figure-marks-above = { PIECE($to, at: "start") }
figure-marks-below = { $under ->
    [yes] { PIECE($edge, at: "start") }, dessous à la machine
   *[no] { PIECE($edge, at: "start") }, dessus à la machine
 }
figure-marks-other-seam = autre couture
figure-marks-every = un repère tous les { $part }

figure-marks-hold-ring = Les bords sont des ronds : le premier et le dernier repère sont la même couture de côté. { figure-marks-hold }
figure-marks-hold-flat = Le premier et le dernier repère sont les deux bouts. { figure-marks-hold }
# Dit seulement dans les deux ci-dessus.
figure-marks-hold = { $hold ->
    [clips] Pinces aux repères d’abord, puis tous les { $spacing }.
   *[pins] Épingles aux repères d’abord, puis tous les { $spacing }.
 }

figure-marks-alt = { $hold ->
    [clips] { PIECE($to, at: "start") } en haut et { PIECE($edge) } en bas, { $length } de long chacune, avec { $parts } parties égales marquées tous les { $part } et des pinces aux repères et entre eux.
   *[pins] { PIECE($to, at: "start") } en haut et { PIECE($edge) } en bas, { $length } de long chacune, avec { $parts } parties égales marquées tous les { $part } et des épingles aux repères et entre eux.
 }
figure-marks-caption = Repère sur repère, endroit contre endroit.
