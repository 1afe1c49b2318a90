"""The weight of a garment against published conversions, and the elastic of a heavy one against practice."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.limits import HEAVY_REDUCTION
from furbelow.s3_rehearse.weight import grams_of, show_weight

from tests.s3_rehearse.test_weight import run_of
from tests.techniques.small import INCH, sound

OUNCE = Fraction("28.349523125")  # international pound of 1959 / 16


def _square_yard(weight: str) -> Fraction:
    """A skirt cut 36 in by 36 in of a cloth of this weight, in g: 1/2 in of seam at both ends, 2 in of hem and casing."""
    grams = grams_of(
        run_of(
            sound(
                "skirt: {from: twill, length: 35 in, depth: 34 in}",
                """- join ends: {of: skirt, seam: 1/2 in}
- neaten: {seam: skirt.ends}
- narrow hem: {edge: skirt.bottom, first turn: 1/4 in, second turn: 1/2 in}
- folded casing: {edge: skirt.top, depth: 1 in, turn under: 1/4 in, gap: 2 in}
- insert elastic: {elastic: elastic, into: skirt.top, length: 20 in, overlap: 1 in}
- close gap: {of: skirt.top}""",
                materials=f"  twill: {{kind: cloth, fibre: cotton, width: 150 cm, weight: {weight}, ravels: yes}}\n",
                units="inches",
                over="25 in",
                hips="25 in",
            )
        )
    )
    assert grams is not None
    return grams


def test_a_square_yard_of_10_ounce_cloth_weighs_10_ounces() -> None:
    """International yard and pound of 1959 (NIST Special Publication 811, 2008, appendix B)."""
    grams = _square_yard("10 oz/yd2")
    assert grams == 10 * OUNCE
    assert show_weight(grams, "inch") == "10 oz (283 g)"


def test_an_ounce_to_the_square_yard_is_33_906_grams_to_the_square_metre() -> None:
    """smfabricblog.com, 2023: oz/yd2 x 33.906 = g/m2; printed to five figures."""
    assert float(_square_yard("339.06 g/m2")) == pytest.approx(float(_square_yard("10 oz/yd2")), rel=2e-5)


def test_a_heavy_skirt_has_its_elastic_shorter_than_any_usual_one() -> None:
    """About 6 in less than the waist: common practice, no source. The usual 2 to 4 in: lightsalmonsweet.pages.dev."""
    assert 4 * INCH < HEAVY_REDUCTION <= 6 * INCH
