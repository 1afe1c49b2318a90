"""The limits of the model: what must hold of any cloth, however stiff, full or heavy."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot, pi

import pytest
from furbelow.garment.lying import Lies
from furbelow.s6_write.picture.form import Form
from furbelow.s6_write.picture.hang import Place, hang
from furbelow.s6_write.picture.shape import Layer, Mark, Shape, Tier
from furbelow.s6_write.picture.worn import worn
from hypothesis import given, settings
from hypothesis import strategies as st

FORM = Form(waist=780 / (2 * pi), hips=1040 / (2 * pi), hip_depth=200, floor=1040, top=0)
WAIST = 780.0


@dataclass
class Skirt:
    """An upper tier and a flounce, as the dancers of a theatre wear them; numbers in mm and grams of a square metre."""

    bending: float = 34
    fullness: float = 2
    alike: int = 1
    grams: float = 25
    hoop: float = 0

    def layer(self) -> Layer:
        marks = (Mark(Lies.STEEL, self.hoop - 0.02, self.hoop + 0.02),) if self.hoop else ()
        per = self.grams / 1e6
        upper = Tier("upper", WAIST, 3000, 3000, 150, self.bending, per)
        flounce = Tier("flounce", 3000, 3000 * self.fullness, 3000 * self.fullness, 350, self.bending, per, 0, marks)
        return Layer((upper, flounce), 30, self.alike, 1.0, True, False, 0)

    def hung(self) -> tuple[Place, ...]:
        return hang(self.layer(), FORM, WAIST, 30)

    def hem(self) -> float:
        """How far out the outermost hem stands."""
        found = worn(Shape(FORM, None, (self.layer(),), WAIST, None))[0]
        return list(found.sheets)[-1][-1].radius


def test_cloth_without_stiffness_hangs_straight() -> None:
    outline = Skirt(bending=0.5).hung()
    assert all(place.lean < 0.02 for place in outline[3:])
    # 165 mm of hips and a finger's breadth; the hem is drawn in a little by the legs.
    assert 140 < outline[-1].radius < 180


def test_stiffer_cloth_stands_wider() -> None:
    hems = [Skirt(bending=bending).hem() for bending in (5, 15, 25, 35, 50, 70)]
    assert hems == sorted(hems)
    assert hems[-1] > 1.5 * hems[0]


def test_fuller_cloth_stands_wider() -> None:
    hems = [Skirt(fullness=fullness).hem() for fullness in (1.25, 1.5, 2, 2.5, 3, 4)]
    assert hems == sorted(hems)
    assert hems[-1] > hems[0] + 50


def test_more_layers_stand_wider() -> None:
    hems = [Skirt(alike=alike).hem() for alike in (1, 2, 3, 4, 6)]
    assert hems == sorted(hems)
    assert hems[-1] > hems[0] + 30


def test_a_hem_that_flares_rises_by_what_it_stands_out() -> None:
    hung = [Skirt(fullness=fullness).hung()[-1].down for fullness in (1.5, 2, 3)]
    assert hung == sorted(hung, reverse=True)


cloths = st.builds(
    Skirt,
    bending=st.floats(0.1, 400),
    fullness=st.floats(1, 6),
    alike=st.integers(1, 12),
    grams=st.floats(5, 600),
    hoop=st.sampled_from((0, 0.5, 0.9)),
)


@settings(deadline=None, max_examples=60)
@given(cloths)
def test_no_ring_is_wider_than_its_cloth_and_no_length_of_cloth_changes(skirt: Skirt) -> None:
    outline = skirt.hung()
    for place in outline:
        assert place.radius <= place.cloth / (2 * pi) + 1e-6 or place.radius <= FORM.radius(place.down) + 4
    for above, below in zip(outline, outline[1:], strict=False):
        way = hypot(below.radius - above.radius, below.down - above.down)
        assert way == pytest.approx(below.along - above.along, abs=1e-6)
        assert below.down >= above.down


@settings(deadline=None, max_examples=60)
@given(cloths)
def test_cloth_never_passes_through_the_body(skirt: Skirt) -> None:
    for place in skirt.hung()[1:]:
        assert place.radius >= FORM.radius(place.down) - 12


def test_a_hoop_opens_the_cloth_to_its_full_round() -> None:
    bare, hooped = Skirt(bending=15).hung(), Skirt(bending=15, fullness=1.2, hoop=0.9).hung()
    at = min(hooped, key=lambda place: abs(place.along - (150 + 0.9 * 350)))
    # 3600 mm of cloth would make a hoop of 573 mm, and 465 mm of cloth from a waist of 124 mm can't reach further.
    assert at.radius > 2 * bare[-1].radius
