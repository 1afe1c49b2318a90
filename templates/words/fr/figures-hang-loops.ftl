### Des brides de suspension à l’intérieur d’un bord.

figure-loops-inside = Intérieur dessus
figure-loops-note = { $loops ->
    [one] { $loops } bride : bouts au ras du bord coupé, piqués deux fois. Sans échelle.
   *[other] { $loops } brides : bouts au ras du bord coupé, piqués deux fois. Sans échelle.
 }
figure-loops-alt = Une bride de ruban à l’intérieur, les deux bouts au ras du bord coupé, pendant de { $hangs }, piquée deux fois à { $row } du bord.
figure-loops-caption = { $loops ->
    [one] Comment se pose la bride.
   *[other] Comment se pose chacune des { $loops } brides.
 }
