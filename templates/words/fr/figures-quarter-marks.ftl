### Un bord avec ses repères, puis un bout des deux bords épinglés ensemble, avant de les piquer.
### $to : les pièces du bord du haut, $edge : celles du bord cousu ; $up : celles du dessus à la machine, $under : celles du dessous.

figure-marks-edge = { PIECE($to, at: "start") }
figure-marks-other-seam = autre couture
figure-marks-every = un repère tous les { $part }
figure-marks-both-faces = { $ring ->
    [yes] Les deux bouts sont la couture de côté. Un coin est rabattu : marque les deux faces.
   *[no] Un coin est rabattu : marque les deux faces.
 }
figure-marks-alt = { PIECE($to, at: "start") }, le bord de { $length } de long, avec { $parts } parties égales marquées tous les { $part } sur les deux faces.

figure-pinned-up = { PIECE($up, at: "start") }, envers visible
figure-pinned-mark = repère
figure-pinned-below = Dessous, là où le coin est rabattu : { PIECE($under) }, endroit visible, les bords à fleur.
figure-pinned-alt = { $hold ->
    [clips] Un bout des deux bords, à fleur, { PIECE($up) } dessus, envers visible, et { PIECE($under) } dessous, endroit contre endroit ; une pince au repère et une tous les { $spacing }.
   *[pins] Un bout des deux bords, à fleur, { PIECE($up) } dessus, envers visible, et { PIECE($under) } dessous, endroit contre endroit ; une épingle au repère et une tous les { $spacing }.
 }
figure-pinned-caption = Repère sur repère, endroit contre endroit.
