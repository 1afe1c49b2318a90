"""How cloth bends, where a book or a standard says it."""

from __future__ import annotations

from math import atan2, cos, degrees, pi, radians, sin, tan

import pytest
from furbelow.s6_write.picture.fold import elastica
from furbelow.swatch.overhang import fallen

# Timoshenko and Gere, Theory of Elastic Stability, 2nd ed. 1961, section 2.7: the load of a bent column against that at which
# it begins to bend, by the angle of its end. The figures are from memory.
BENT_COLUMN = {20: 1.015, 40: 1.063, 60: 1.152, 80: 1.293, 100: 1.518, 120: 1.884}


@pytest.mark.parametrize("angle", BENT_COLUMN)
def test_a_fold_pushes_as_a_bent_column_does(angle: int) -> None:
    _, fold = elastica(sin(radians(angle / 2)))
    assert fold.load == pytest.approx(BENT_COLUMN[angle], abs=0.002)
    assert fold.tip == pytest.approx(radians(angle))


def hanging(overhang: float) -> tuple[float, float]:
    """How far a strip so many bending lengths long reaches out and down."""
    low, high = 0.0, pi / 2
    for _ in range(60):
        tip = (low + high) / 2
        low, high = (tip, high) if fallen(tip)[0] < overhang else (low, tip)
    return fallen(low)[1:]


def test_twice_the_bending_length_hangs_down_at_41_and_a_half_degrees() -> None:
    """ASTM D1388, Standard Test Method for Stiffness of Fabrics: a strip hangs to a slope of 41.5 degrees when its overhang
    is twice its bending length."""
    out, down = hanging(2)
    assert degrees(atan2(down, out)) == pytest.approx(41.5, abs=0.05)


@pytest.mark.parametrize("overhang", [0.8, 1.0, 1.2])
def test_a_strip_that_hangs_little_agrees_with_the_formula_of_peirce(overhang: float) -> None:
    """Peirce, The "Handle" of Cloth as a Measurable Quantity, Journal of the Textile Institute 21, 1930:
    c = l (cos(t / 2) / (8 tan t))^(1/3), t the slope from the edge to the tip. The formula is an approximation, nearest
    where the strip hangs little."""
    out, down = hanging(overhang)
    slope = atan2(down, out)
    assert overhang * (cos(slope / 2) / (8 * tan(slope))) ** (1 / 3) == pytest.approx(1, abs=0.02)


def test_a_strip_that_hardly_bends_hangs_as_a_beam_does() -> None:
    """A beam clamped at one end sinks by w l^4 / 8 B at the other (Timoshenko, Strength of Materials, 1930, section 37): in
    bending lengths, l^4 / 8. The section from memory."""
    _, down = hanging(0.3)
    assert down == pytest.approx(0.3**4 / 8, rel=0.02)
