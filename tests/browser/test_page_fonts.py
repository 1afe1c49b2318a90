"""The page brings its own letters, as wide as the figures reckon with."""

from __future__ import annotations

from pathlib import Path

import pytest
from furbelow.s6_write.figures import advances
from furbelow.s6_write.pages.page import html
from playwright.sync_api import Browser

from tests.s6_write.sample_guide import GUIDE

WIDTHS = """async ([weight, letters]) => {
    const font = `${weight} 1000px "Furbelow Text"`;
    await document.fonts.load(font, letters);
    const pen = document.createElement('canvas').getContext('2d');
    pen.font = font;
    return [document.fonts.check(font, letters), [...letters].map(letter => pen.measureText(letter).width)];
}"""


@pytest.mark.parametrize(
    ("weight", "table"), [(400, advances.REGULAR), (600, advances.SEMIBOLD)], ids=["regular", "semibold"]
)
def test_each_letter_is_as_wide_as_the_figures_say(
    browser: Browser, tmp_path: Path, weight: int, table: dict[int, str]
) -> None:
    file = tmp_path / "guide.html"
    file.write_text(html(GUIDE), encoding="utf-8")
    page = browser.new_page()
    page.goto(file.as_uri())
    told = {letter: width for width, letters in table.items() for letter in letters if letter != "\u00ad"}
    there, widths = page.evaluate(WIDTHS, [weight, "".join(told)])
    page.close()
    assert there
    assert {letter: round(width) for letter, width in zip(told, widths, strict=True)} == told


def test_words_and_headings_are_set_in_the_page_s_own_fonts(browser: Browser, tmp_path: Path) -> None:
    file = tmp_path / "guide.html"
    file.write_text(html(GUIDE), encoding="utf-8")
    page = browser.new_page()
    page.goto(file.as_uri())
    page.evaluate("document.fonts.ready.then(() => true)")
    loaded = page.evaluate(
        "[...document.fonts].filter(face => face.status === 'loaded').map(face => face.family + ' ' + face.weight)"
    )
    page.close()
    assert sorted(each.replace('"', "") for each in loaded) == [
        "Furbelow Text 400",
        "Furbelow Text 600",
        "Furbelow Title 600",
    ]
