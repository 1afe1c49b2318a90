"""What must hold of every figure of every demo garment, in every size and in workrooms of different kit."""

from __future__ import annotations

import re
from inspect import signature
from itertools import combinations

import pytest
from furbelow.s6_write.figures import KINDS, kind_of
from furbelow.s6_write.figures.language import ACCENT, ELASTIC, GROUND, INK, RIGHT_SIDE, SOFT, WRONG_SIDE
from furbelow.techniques import techniques

from ..test_palette import contrast
from .drawn import demos, every_figure, figures, points, root, sizes, view, words

SVG = "{http://www.w3.org/2000/svg}"


def test_no_two_lines_of_words_lie_on_each_other() -> None:
    clashes = [
        f"{name}: {one.text!r} and {other.text!r}"
        for name, figure in every_figure()
        for one, other in combinations(words(figure), 2)
        if one.meets(other)
    ]
    assert clashes == []


def test_all_words_and_lines_lie_on_the_sheet() -> None:
    outside = []
    for name, figure in every_figure():
        left, top, right, bottom = view(figure)
        for line in words(figure):
            if line.left < left or line.right > right or line.top < top or line.bottom > bottom:
                outside.append(f"{name}: {line}")
        outside += [
            f"{name}: line at {x}, {y}" for x, y in points(figure) if not (left <= x <= right and top <= y <= bottom)
        ]
    assert outside == []


def test_words_stay_readable_on_the_narrowest_telephone() -> None:
    # A page 360 px wide leaves 302 px for a figure.
    for name, figure in every_figure():
        left, _, right, _ = view(figure)
        for text in root(figure).iter(f"{SVG}text"):
            assert float(text.attrib["font-size"]) * 302 / (right - left) >= 9.5, name


def test_only_the_safe_subset_of_svg_is_used() -> None:
    allowed = {
        f"{SVG}svg": {"width", "height", "viewBox", "font-family", "fill", "stroke-linejoin"},
        f"{SVG}path": {"d", "fill", "stroke", "stroke-width", "stroke-dasharray", "stroke-linecap"},
        f"{SVG}text": {"x", "y", "font-size", "font-weight", "fill", "textLength", "lengthAdjust"},
    }
    for name, figure in every_figure():
        for element in root(figure).iter():
            assert element.tag in allowed, name
            assert set(element.attrib) <= allowed[element.tag], name


def test_colours_are_those_of_the_language_and_stand_out_from_the_ground() -> None:
    lines, texts, fills = set(), set(), set()
    for _, figure in every_figure():
        for element in root(figure).iter():
            if element.tag == f"{SVG}text":
                texts.add(element.attrib["fill"])
            elif element.tag == f"{SVG}path":
                lines |= {element.attrib["stroke"]} if "stroke" in element.attrib else set()
                fills |= {element.attrib["fill"]} if "fill" in element.attrib else set()
    assert lines <= {INK, SOFT, ACCENT, RIGHT_SIDE, ELASTIC, WRONG_SIDE}
    # Web Content Accessibility Guidelines 2.2 (2023), criteria 1.4.3 and 1.4.11; words may stand on tinted cloth.
    assert all(contrast(colour, ground) >= 4.5 for colour in texts for ground in (GROUND, RIGHT_SIDE))
    # The pale lines are the inside of a ply, drawn within an outline in ink.
    assert all(contrast(colour, GROUND) >= 3 for colour in lines - {RIGHT_SIDE, ELASTIC, WRONG_SIDE})
    assert fills <= {INK, SOFT, ACCENT, RIGHT_SIDE, ELASTIC, GROUND, "#e9e5df"}


def test_every_figure_says_in_words_what_it_shows_with_numbers() -> None:
    for name, figure in every_figure():
        assert re.search(r"\d", figure.alt), name
        assert figure.alt.rstrip().endswith("."), name
        assert not figure.caption or figure.caption.endswith("."), name
        assert re.fullmatch(r"[a-z0-9-]+", figure.key), name


@pytest.mark.parametrize("demo", demos())
def test_keys_are_unique_in_a_guide(demo: str) -> None:
    keys = [figure.key for figure in figures(demo, sizes(demo)[0])]
    assert len(keys) == len(set(keys))


def test_the_same_garment_is_drawn_with_the_same_letters() -> None:
    demo = demos()[0]
    once = figures(demo, sizes(demo)[0])
    assert figures.__wrapped__(demo, sizes(demo)[0]) == once


def test_every_technique_names_kinds_that_exist() -> None:
    for name, technique in techniques().items():
        assert technique.pictures, name
        assert set(technique.pictures) <= set(KINDS), name


def test_every_kind_explains_some_technique() -> None:
    assert {picture for technique in techniques().values() for picture in technique.pictures} == set(KINDS)


def test_every_kind_is_a_function_of_a_step_its_run_its_words_and_their_numbers() -> None:
    for picture in KINDS:
        assert len(signature(kind_of(picture)).parameters) == 4, picture


def test_every_kind_is_looked_at_by_these_tests() -> None:
    drawn = {
        figure.key.partition("-")[2].partition("-")[2] for _, figure in every_figure() if figure.key.startswith("step-")
    }
    assert {"cord", "slit", "loops", "facing", "pleats", "tucks", "shirring", "band", "rings", "strips"} <= drawn
