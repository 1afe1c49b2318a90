"""The drawings of a guide in each language: longer words do not lie on each other either, nor leave the sheet."""

from __future__ import annotations

from itertools import combinations

import pytest
from furbelow.order.chain import guide_of, planned
from furbelow.order.read_order import Asked, OrderReader
from furbelow.resources import languages
from furbelow.s6_write.guide.guide import Figure, Guide

from tests.demos.demos import NAMES, SPECS, spec
from tests.s6_write.figures.drawn import view, words


def _figures(guide: Guide) -> list[Figure]:
    operations = [*guide.cut, *(each for part in guide.parts for each in part.operations)]
    found = [guide.overview, *guide.key, *(figure for each in operations for figure in each.figures)]
    return [figure for figure in found if figure is not None]


@pytest.mark.parametrize("language", languages())
@pytest.mark.parametrize("name", NAMES)
def test_no_words_of_a_drawing_clash_in_any_language(name: str, language: str) -> None:
    size = list(spec(name).sizes)[-1]
    order = OrderReader().one_order(Asked(str(SPECS / f"{name}.yaml"), size, None, None, [], language=language))
    garment = planned(order).value
    assert garment is not None
    figures = _figures(guide_of(garment, size))
    assert len(figures) > 10
    clashes = [
        (figure.key, one.text, other.text)
        for figure in figures
        for one, other in combinations(words(figure), 2)
        if one.meets(other)
    ]
    outside = [
        (figure.key, line.text)
        for figure in figures
        for left, top, right, bottom in [view(figure)]
        for line in words(figure)
        if line.left < left or line.right > right or line.top < top or line.bottom > bottom
    ]
    assert (clashes, outside) == ([], [])
