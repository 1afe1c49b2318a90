### A casing seen flat: its channels, or its elastic that buttons.

figure-channels-head = The casing with its rows
figure-channels-note = The depth is to scale; the length is not.
figure-channels-alt = The casing of { PIECE($piece) } seen flat, its fold on top: { $channels } channels of { $channel }, { $rows ->
    [one] one new row
   *[other] { $rows } new rows
 } between them{ $open ->
    [yes] , and a gap of { $gap } in every row
   *[no] {""}
 }.
figure-channels-caption = { $channels } channels of { $channel } each.
figure-buttoned-head = The inside at the gap
figure-buttoned-note = What lies inside the channel is dotted. Not to scale.
figure-buttoned-alt = The inside of the casing of { PIECE($piece) } at its gap: one end of the elastic is sewn fast inside, the other comes out and is buttoned on { $reach } beyond the gap.
figure-buttoned-caption = One end is fast, the other on its button: { $first } round, let out { $out }.
