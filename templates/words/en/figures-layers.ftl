### Layers cut through from top to hem: which lies outside, how far each reaches, where seam margins are covered.

figure-layers-cut = Cut from top to hem
figure-layers-outside = outside
figure-layers-legs = legs
figure-layers-held = held together
# Which of its faces looks where.
figure-layers-way = { $face ->
    [either] margins towards the legs
    [out] right side out
   *[in] right side towards the legs
 }
# $chain: the piece at the top and those that hang from it.
figure-layers-one = { PIECE($chain, form: "bare") }, { figure-layers-way }, { $layer-deep } deep
figure-layers-more = and { $more } more layers in the same way
figure-layers-scale = Depths to one scale; spaces and margins are drawn wider.
figure-layers-alt = Layers from the outside to the legs: { $layers }. All are level at the top and held { $from-edge } below it.
figure-layers-caption = { $count } layers, the outermost on the left.
