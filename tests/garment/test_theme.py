"""Colours of a theme can be told apart, or the theme is refused with both numbers and the nearest that can.

Source: W3C, Web Content Accessibility Guidelines 2.2, success criteria 1.4.3 and 1.4.11; the contrasts of example colours
from the W3C's own test cases for them, ACT rule afw4f7 (text has minimum contrast), which cuts figures off.
"""

from __future__ import annotations

from math import floor

import pytest
from furbelow.garment.contrast import contrast, nearest_that_passes
from furbelow.garment.theme import COLOURS, HOUSE, too_near
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.s6_write.test_palette import BY_BUTTON, LIGHT
from tests.s6_write.test_palette import contrast as reckoned_apart

colours = st.integers(0, 0xFFFFFF).map(lambda number: f"#{number:06x}")


@pytest.mark.parametrize(
    ("front", "ground", "published"),
    [
        ("#333333", "#ffffff", "12.6"),  # passed example 1
        ("#000000", "#ffffff", "21.0"),  # passed example 8
        ("#0000ee", "#ffffff", "9.39"),  # passed example 10
        ("#000000", "#666666", "3.6"),  # passed example 5
        ("#aaaaaa", "#ffffff", "2.3"),  # failed example 1
        ("#777777", "#eeeeee", "3.85"),  # failed example 9
    ],
)
def test_the_contrast_of_the_w3cs_own_examples(front: str, ground: str, published: str) -> None:
    places = 10 ** len(published.partition(".")[2])
    assert floor(contrast(front, ground) * places + 1e-9) / places == float(published)


@given(colours, colours)
def test_contrast_is_the_same_either_way_and_as_reckoned_apart(one: str, other: str) -> None:
    assert contrast(one, other) == contrast(other, one) == pytest.approx(reckoned_apart(one, other))
    assert 1 <= contrast(one, other) <= 21.000001


@settings(deadline=None)
@given(colours, colours, st.sampled_from([3.0, 4.5]))
def test_against_one_colour_there_is_always_one_that_passes(colour: str, other: str, least: float) -> None:
    near = nearest_that_passes(colour, [(other, least)])
    assert near is not None
    assert contrast(near, other) >= least
    if contrast(colour, other) >= least:
        assert all(abs(int(near[at : at + 2], 16) - int(colour[at : at + 2], 16)) <= 2 for at in (1, 3, 5))


@settings(max_examples=50, deadline=None)
@given(st.integers(0, 255), st.integers(0, 255))
def test_of_greys_it_is_the_nearest_on_its_side(grey: int, other: int) -> None:
    """Every grey is tried; the search may miss by a step of its own."""
    colour, ground = (f"#{part:02x}{part:02x}{part:02x}" for part in (grey, other))
    found = nearest_that_passes(colour, [(ground, 4.5)])
    assert found is not None
    near = int(found[1:3], 16)
    passing = [part for part in range(256) if contrast(f"#{part:02x}{part:02x}{part:02x}", ground) >= 4.5]
    on_its_side = [part for part in passing if (part >= grey) == (near >= grey)]
    assert abs(near - grey) <= min(abs(part - grey) for part in on_its_side) + 2


def test_none_passes_where_grounds_leave_no_room() -> None:
    assert nearest_that_passes("#777777", [("#ffffff", 4.5), ("#000000", 4.5), ("#777777", 4.5)]) is None


def test_the_colours_of_the_house_are_those_of_the_page_and_pass() -> None:
    names = {"ground": "paper", "words": "ink", "quiet words": "soft", "lines": "line", "ticks": "done"}
    names["ground of what is done"] = "done-ground"
    for by, page in (("light", LIGHT), ("dark", BY_BUTTON)):
        on_screen = {name: colour for name, colour in HOUSE[by].items() if name != "paper"}
        assert {name: page[names.get(name, name)] for name in on_screen} == on_screen
        assert list(too_near(HOUSE[by], by)) == []


@settings(max_examples=30, deadline=None)
@given(st.dictionaries(st.sampled_from(COLOURS), colours, min_size=1), st.sampled_from(["light", "dark"]))
def test_what_is_let_through_can_be_read_and_a_mend_mends(given_colours: dict[str, str], by: str) -> None:
    found = list(too_near(given_colours, by))
    shown = {**HOUSE[by], **given_colours}
    if not found:
        for front in ("words", "quiet words", "accent"):
            assert all(contrast(shown[front], shown[ground]) >= 4.5 for ground in ("ground", "card"))
        assert all(contrast(shown["lines"], shown[ground]) >= 3 for ground in ("ground", "card"))
    for near in found:
        assert near.name in given_colours
        assert near.ratio < near.least
        if near.nearest:
            again = too_near({**given_colours, near.name: near.nearest}, by)
            assert near.name not in {name for each in again for name in (each.name, each.other)}
