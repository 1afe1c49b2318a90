"""A bias strip from one square: how large the square is, how long the strip becomes."""

from __future__ import annotations

from fractions import Fraction
from math import sqrt

import pytest
from furbelow.garment.bias import BiasStrip

from tests.techniques.small import refused, sound, work

SKIRT = "skirt: {from: net, length: 120 cm, depth: 60 cm}"
BINDING = f"{SKIRT}\nbinding: {{from: lawn, length: 122 cm, depth: 1 cm}}"
STEPS = """- bias strip: {piece: binding}
- join ends: {of: skirt}
- join ends: {of: binding}
- binding strip: {strip: binding, edge: skirt.bottom}"""


def test_the_strip_comes_whole_from_its_square_and_goes_on_as_any_strip() -> None:
    worked = sound(BINDING.replace("122", "120"), STEPS)
    binding = worked.solved.pieces["binding"]
    assert binding.bias is not None
    side = binding.blank[0]
    assert binding.blank == (side, side)
    assert binding.bias.gives >= binding.cut_length
    # So many widths lie across half the diagonal of the square less its two seams of 6 mm.
    across = float(side - 12) / sqrt(2)
    assert across >= binding.bias.lines * float(binding.cut_depth) > across - 1


@pytest.mark.parametrize("length", [500, 1000, 3000, 6000])
def test_one_line_fewer_would_not_do(length: int) -> None:
    strip = BiasStrip(Fraction(length), Fraction(40), Fraction(6))
    assert strip.gives >= length
    assert 2 * (strip.lines - 1) ** 2 * 40 < length


def test_the_strip_is_cut_before_it_is_sewn() -> None:
    late = "\n".join([*STEPS.splitlines()[1:], STEPS.splitlines()[0]])
    assert "bias strip is not cut out yet" in refused("FB353", BINDING, late).headline


def test_a_pieced_strip_and_a_second_cut_are_refused() -> None:
    pieced = BINDING.replace("1 cm}", "1 cm, piecing: {seam: 1 cm, shortest: 10 cm, most joins: 2}}")
    assert "FB354" in work(pieced, STEPS).codes
    assert "FB354" in work(BINDING, f"{STEPS.splitlines()[0]}\n{STEPS}").codes
