"""One fold of squeezed cloth; against a book in tests/outside."""

from __future__ import annotations

import pytest
from furbelow.s6_write.picture.fold import elastica, folded


def test_cloth_that_is_not_squeezed_lies_flat() -> None:
    assert folded(1.0) == folded(0.8)
    assert (folded(1.0).tip, folded(1.0).load, folded(1.0).deep) == (0.0, 1.0, 0.0)


def test_a_shallow_fold_is_a_wave() -> None:
    # A sine wave of half depth a and length l has 1 + (pi a / l)^2 cloth for each length: 0.1 l deep makes 1.0987.
    assert folded(1 + (3.14159265 * 0.02) ** 2).deep == pytest.approx(0.02, rel=0.01)


def test_fuller_cloth_folds_deeper_and_steeper_and_pushes_harder() -> None:
    folds = [folded(1 + step / 10) for step in range(12)]
    for shallow, deep in zip(folds, folds[1:], strict=False):
        assert shallow.tip < deep.tip
        assert shallow.load < deep.load


def test_between_the_places_of_the_table_a_fold_is_what_the_elastica_gives() -> None:
    fullness, exact = elastica(0.6123)
    assert folded(fullness).load == pytest.approx(exact.load, rel=1e-4)
    assert folded(fullness).deep == pytest.approx(exact.deep, rel=1e-3)
