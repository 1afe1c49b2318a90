### Das ganze Kleidungsstück, Lage neben Lage, mit seinen Fertigmaßen.

# Welche Lage es ist: das ganze Kleidungsstück, wo es nur eine hat.
figure-overview-place = { $place ->
    [all] Das Kleidungsstück
    [outside] Außen
    [inside] Innen
    [sewn-on] Auf { PIECE($on) } genäht
   *[between] Dazwischen
 }
figure-overview-name = { $layers ->
    [one] { figure-overview-place }
   *[other] { figure-overview-place }, { $layers } gleiche Lagen
 }
figure-overview-hem = { $ring ->
    [yes] Saumweite { $hem }
   *[no] untere Kante { $hem } lang
 }
figure-overview-drop = { $drop } von oben
figure-overview-dips = vorn { $front }, an den Seiten { $side }, hinten { $back }
figure-overview-waist = Taille: ungedehnt { $rest }; { $cloth } Stoff.
figure-overview-to-scale = { $level ->
    [yes] Maßstäblich, flach gelegt.
   *[no] Höhen in einem Maßstab; Breiten im Verhältnis zueinander.
 }

## In Worten

figure-overview-piece = { PIECE($piece, form: "bare") }, { $deep } hoch
figure-overview-layer = { $level ->
    [yes] { $ring ->
        [yes] { figure-overview-name }: { $pieces }, reicht { $drop } von oben, Saumweite { $hem }.
       *[no] { figure-overview-name }: { $pieces }, reicht { $drop } von oben, untere Kante { $hem } lang.
    }
   *[no] { figure-overview-name }: { $pieces }, untere Kante { $hem } lang.
 }
figure-overview-waist-told = Die Taille misst ungedehnt { $rest } und fasst { $cloth } Stoff.
figure-overview-alt = { $title }, { $long } lang. { $layers }
figure-overview-caption = Das fertige Kleidungsstück, { $long } lang.
