"""What a publisher lays over the page, and the one-step view, in a real browser: nothing for axe to mend, drawings that can be
seen in the dark, and print as near to the PDF as a browser comes.

Source: W3C, Web Content Accessibility Guidelines 2.2, 1.4.3 and 1.4.11; axe-core of Deque Systems.
"""

from __future__ import annotations

import io
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Literal

import pikepdf
import pytest
from furbelow.s6_write.figures.language import ACCENT, INK, SOFT
from furbelow.s6_write.pages.look import look_of
from furbelow.s6_write.pages.page import html
from furbelow.s6_write.pages.pdf import pdf
from PIL import Image
from playwright.sync_api import Browser

from tests.browser.conftest import watched
from tests.demos.demos import guide
from tests.s6_write.sample_guide import GUIDE
from tests.s6_write.test_look import room_in
from tests.s6_write.test_palette import contrast
from tests.s6_write.test_published import published

Look = Literal["light", "dark"]


@pytest.mark.parametrize("large", [False, True], ids=["plain", "large print"])
@pytest.mark.parametrize("look", ["light", "dark"])
@pytest.mark.parametrize("width", [360, 1100])
def test_axe_finds_nothing_in_the_one_step_view(
    browser: Browser, axe: str, tmp_path: Path, width: int, look: Look, large: bool
) -> None:
    (tmp_path / "guide.html").write_text(html(GUIDE), encoding="utf-8")
    context = browser.new_context(viewport={"width": width, "height": 800}, color_scheme=look)
    page = watched(context, tmp_path / "guide.html").page
    if large:
        page.get_by_role("button", name="Large print").click()
    page.get_by_role("button", name="One step at a time").click()
    page.get_by_role("button", name="Next step").click()
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    page.evaluate(axe)
    found = page.evaluate("axe.run(document, {resultTypes: ['violations', 'passes']})")
    context.close()
    assert len(found["passes"]) > 15
    assert [(fault["id"], [node["html"] for node in fault["nodes"]]) for fault in found["violations"]] == []


@pytest.mark.parametrize("look", ["light", "dark"])
def test_axe_finds_nothing_in_a_published_guide_with_a_theme(
    browser: Browser, axe: str, tmp_path: Path, look: Look
) -> None:
    themed = html(published(), None, look_of(room_in(tmp_path)))
    (tmp_path / "guide.html").write_text(themed, encoding="utf-8")
    context = browser.new_context(viewport={"width": 360, "height": 800}, color_scheme=look)
    opened = watched(context, tmp_path / "guide.html")
    accent = opened.page.evaluate("getComputedStyle(document.querySelector('h2')).color")
    broad = opened.page.evaluate("document.querySelector('#cover image').getBoundingClientRect().width")
    opened.page.evaluate(axe)
    found = opened.page.evaluate("axe.run(document, {resultTypes: ['violations', 'passes']})")
    context.close()
    assert accent == ("rgb(31, 90, 58)" if look == "light" else "rgb(143, 208, 165)")  # 1f5a3a and 8fd0a5 of the theme
    assert broad > 200
    assert opened.said == []  # the policy lets the picture and the fonts in
    assert [(fault["id"], [node["html"] for node in fault["nodes"]]) for fault in found["violations"]] == []


def _colours_drawn() -> tuple[set[str], set[str]]:
    """Those of words and of lines in the drawings of a guide; tints of cloth lie between lines.

    The garment's picture has a style of its own for the dark.
    """
    shown = guide("larkspur", "M")
    drawings = [figure.svg for operation in shown.operations for figure in operation.figures]
    whole = "".join((*drawings, *(key.svg for key in shown.key)))
    words = set(re.findall(r'<text[^>]* fill="(#[0-9a-f]{6})"', whole))
    return words, set(re.findall(r'stroke="(#[0-9a-f]{6})"', whole)) & {INK, SOFT, ACCENT}


def _as_seen(browser: Browser, folder: Path, colours: list[str]) -> Iterator[str]:
    """The colours of a drawing as the dark page shows them, read off the screen; last its ground."""
    rows = "".join(f'<rect x="{10 * at}" width="10" height="10" fill="{each}"/>' for at, each in enumerate(colours))
    wide = 10 * len(colours) + 10
    swatch = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {wide} 10" width="{wide}" height="10">{rows}</svg>'
    page_text = html(GUIDE)
    at = page_text.index('<svg xmlns="http://www.w3.org/2000/svg"')
    (folder / "guide.html").write_text(page_text[:at] + swatch + page_text[at:], encoding="utf-8")
    context = browser.new_context(viewport={"width": 1100, "height": 800}, color_scheme="dark")
    page = watched(context, folder / "guide.html").page
    shown = Image.open(io.BytesIO(page.locator(".sheet svg").first.screenshot())).convert("RGB")
    context.close()
    for place in range(len(colours) + 1):
        dot = shown.getpixel((round((place + 0.5) * shown.width / (len(colours) + 1)), shown.height // 2))
        assert isinstance(dot, tuple)
        yield "#" + "".join(f"{round(part):02x}" for part in dot)


def test_words_and_lines_of_drawings_can_be_seen_in_the_dark(browser: Browser, tmp_path: Path) -> None:
    words, lines = _colours_drawn()
    assert words
    assert lines
    colours = [*sorted(words), *sorted(lines)]
    *seen, ground = _as_seen(browser, tmp_path, colours)
    apart = {colour: round(contrast(shown, ground), 2) for colour, shown in zip(colours, seen, strict=True)}
    assert {colour: apart[colour] for colour in words if apart[colour] < 4.5} == {}
    assert {colour: apart[colour] for colour in lines if apart[colour] < 3} == {}


@pytest.mark.parametrize(("name", "size"), [("larkspur", "M"), ("foxglove", "C")])
def test_print_from_the_browser_takes_no_more_than_a_page_beyond_the_pdf(
    browser: Browser, tmp_path: Path, name: str, size: str
) -> None:
    shown = guide(name, size)
    (tmp_path / "guide.html").write_text(html(shown), encoding="utf-8")
    context = browser.new_context()
    page = watched(context, tmp_path / "guide.html").page
    printed = pikepdf.open(io.BytesIO(page.pdf(prefer_css_page_size=True)))
    context.close()
    assert len(printed.pages) <= len(pikepdf.open(io.BytesIO(pdf(shown))).pages) + 1
