"""Whatever a garment is like, it can be drawn."""

from __future__ import annotations

import re
from math import pi

from furbelow.s6_write.picture.drawn import drawn
from furbelow.s6_write.picture.form import Form
from furbelow.s6_write.picture.shape import AT_LEFT, BEHIND, Band, Layer, Shape, Tier, Way
from furbelow.s6_write.picture.worn import worn
from hypothesis import given, settings
from hypothesis import strategies as st

lengths = st.floats(1, 5000)
tiers = st.builds(
    Tier,
    st.sampled_from("abc"),
    lengths,
    lengths,
    lengths,
    st.floats(1, 2000),
    st.floats(1, 300),
    st.floats(5e-6, 8e-4),
    dip=st.just((0.0, 0.0)) | st.tuples(st.floats(-300, 0), st.floats(0, 900)),
)
layers = st.builds(
    Layer,
    st.lists(tiers, min_size=1, max_size=5).map(tuple),
    st.floats(0, 300),
    st.integers(1, 8),
    st.floats(0.2, 1.5),
    st.booleans(),
    st.booleans(),
    st.floats(0, 60),
)
forms = st.builds(
    Form, st.floats(50, 250), st.floats(60, 300), st.floats(80, 300), st.floats(400, 1300), st.floats(0, 200)
)
bands = st.builds(Band, st.floats(5, 120), st.booleans(), st.booleans(), st.floats(0, 900))
sides = st.sampled_from((AT_LEFT, BEHIND))
ways = st.builds(Way, st.floats(10, 1000), st.just(0.0), st.sampled_from(("button", "zip", "slit")), sides) | st.builds(
    Way, st.floats(10, 1000), st.floats(100, 2000), st.just("ties"), sides
)
shapes = st.builds(
    Shape,
    forms,
    st.none() | bands,
    st.lists(layers, min_size=1, max_size=4).map(tuple),
    st.floats(300, 1600),
    st.none() | ways,
)


@settings(deadline=None, max_examples=60)
@given(shapes, st.sampled_from((0.0, pi / 2, pi)), st.booleans())
def test_any_shape_is_drawn_in_whole_numbers_on_a_sheet_of_one_size(shape: Shape, turn: float, peeled: bool) -> None:
    svg = drawn(shape, worn(shape), turn, peeled=peeled)
    assert svg == drawn(shape, worn(shape), turn, peeled=peeled)
    assert 'viewBox="0 0 4000 5000"' in svg
    for data in re.findall(r' d="([^"]*)"', svg):
        assert re.fullmatch(r"[MlLhaz0-9 .-]*", data), data
    assert "nan" not in svg
