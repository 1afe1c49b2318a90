"""The page's colours can be told apart, by day and by night.

Source: W3C, Web Content Accessibility Guidelines 2.2 (2023), success criteria 1.4.3 (text, 4.5 : 1) and 1.4.11 (lines and
controls, 3 : 1), and its definitions of relative luminance and contrast ratio.
"""

from __future__ import annotations

import re

import pytest
from furbelow.resources import template

SHEET = template("guide.css").read_text(encoding="utf-8")


def _colours(after: str) -> dict[str, str]:
    block = SHEET[SHEET.index(after) :]
    return dict(re.findall(r"--([a-z-]+): (#[0-9a-f]{6});", block[: block.index("}")]))


LIGHT = _colours(":root {")
BY_SYSTEM = _colours(':root:not([data-look="light"]) {')
BY_BUTTON = _colours(':root[data-look="dark"] {')


def _luminance(colour: str) -> float:
    parts = [int(colour[start : start + 2], 16) / 255 for start in (1, 3, 5)]
    red, green, blue = (part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    low, high = sorted((_luminance(one), _luminance(other)))
    return (high + 0.05) / (low + 0.05)


def test_the_formula_gives_the_published_extremes() -> None:
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    # #767676 is the lightest grey that reaches 4.5 on white.
    assert contrast("#767676", "#ffffff") >= 4.5 > contrast("#777777", "#ffffff")


def test_the_dark_colours_are_the_same_by_system_and_by_button() -> None:
    assert BY_SYSTEM == BY_BUTTON
    assert set(BY_SYSTEM) == set(LIGHT)


@pytest.mark.parametrize("colours", [LIGHT, BY_BUTTON], ids=["light", "dark"])
@pytest.mark.parametrize(
    ("text", "grounds"),
    [
        ("ink", ("paper", "card", "done-ground")),
        ("soft", ("paper", "card", "done-ground")),
        ("accent", ("paper", "card", "done-ground")),
        ("done", ("paper", "card")),
        ("warn-ink", ("warn-ground",)),
        ("button-ink", ("button",)),
    ],
)
def test_text_has_a_contrast_of_4_5(colours: dict[str, str], text: str, grounds: tuple[str, ...]) -> None:
    for ground in grounds:
        assert contrast(colours[text], colours[ground]) >= 4.5


@pytest.mark.parametrize("colours", [LIGHT, BY_BUTTON], ids=["light", "dark"])
@pytest.mark.parametrize(
    ("line", "grounds"),
    [
        ("line", ("paper", "card", "done-ground", "sheet")),
        ("done", ("paper", "card", "done-ground")),
        ("warn-line", ("paper", "warn-ground")),
        ("button", ("paper",)),
        ("accent", ("paper", "card")),
    ],
)
def test_lines_have_a_contrast_of_3(colours: dict[str, str], line: str, grounds: tuple[str, ...]) -> None:
    for ground in grounds:
        assert contrast(colours[line], colours[ground]) >= 3
