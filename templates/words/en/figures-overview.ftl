### The whole garment, layer beside layer, with its finished measures.

# Which layer it is: the whole garment where it has but one.
figure-overview-place = { $place ->
    [all] The garment
    [outside] Outside
    [inside] Inside
    [sewn-on] Sewn on { PIECE($on) }
   *[between] Between
 }
figure-overview-name = { $layers ->
    [one] { figure-overview-place }
   *[other] { figure-overview-place }, { $layers } layers alike
 }
figure-overview-hem = { $ring ->
    [yes] hem { $hem } round
   *[no] lower edge { $hem } long
 }
figure-overview-drop = { $drop } from the top
figure-overview-dips = in front { $front }, at the sides { $side }, behind { $back }
figure-overview-waist = Waist: { $rest } at rest; { $cloth } of cloth.
figure-overview-to-scale = { $level ->
    [yes] To scale, laid flat.
   *[no] Heights to one scale; widths in proportion to each other.
 }

## In words

figure-overview-piece = { PIECE($piece, form: "bare") } { $deep } deep
figure-overview-layer = { $level ->
    [yes] { $ring ->
        [yes] { figure-overview-name }: { $pieces }, reaching { $drop } from the top, hem { $hem } round.
       *[no] { figure-overview-name }: { $pieces }, reaching { $drop } from the top, lower edge { $hem } long.
    }
   *[no] { figure-overview-name }: { $pieces }, lower edge { $hem } long.
 }
figure-overview-waist-told = The waist is { $rest } at rest and holds { $cloth } of cloth.
figure-overview-alt = { $title }, { $long } long. { $layers }
figure-overview-caption = The finished garment, { $long } long.
