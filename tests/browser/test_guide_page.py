"""The page in a real browser: fit for use with a keyboard, on a phone, in the dark and on paper; ticks are kept."""

from __future__ import annotations

import io
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any, Literal

import pikepdf
import pytest
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.pages.page import html
from furbelow.s6_write.pages.prose import visible
from playwright.sync_api import Browser, BrowserContext, Page

from tests.browser.conftest import watched
from tests.s6_write.probes import PROBES
from tests.s6_write.sample_guide import GUIDE, many_figures, with_text_everywhere
from tests.s6_write.test_pdf import elements, pages_of

Look = Literal["light", "dark"]
WIDTHS = (360, 1100)


def _put(folder: Path, guide: Guide, name: str = "guide.html") -> Path:
    file = folder / name
    file.write_text(html(guide), encoding="utf-8")
    return file


@pytest.fixture
def guide_file(tmp_path: Path) -> Path:
    return _put(tmp_path, GUIDE)


@pytest.fixture
def context(browser: Browser) -> Iterator[BrowserContext]:
    opened = browser.new_context(viewport={"width": 1100, "height": 800}, color_scheme="light")
    yield opened
    opened.close()


def _wide(page: Page) -> int:
    width = page.evaluate("document.documentElement.scrollWidth")
    assert isinstance(width, int)
    return width


def _open_all(page: Page) -> None:
    """Opens every reason; the sample has four."""
    page.evaluate("document.querySelectorAll('details').forEach(each => { each.open = true; })")
    assert page.locator("details[open]").count() == 4


@pytest.mark.parametrize("large", [False, True], ids=["plain", "large print"])
@pytest.mark.parametrize("look", ["light", "dark"])
@pytest.mark.parametrize("width", WIDTHS)
def test_axe_finds_nothing_to_mend(
    browser: Browser, axe: str, guide_file: Path, width: int, look: Look, large: bool
) -> None:
    context = browser.new_context(viewport={"width": width, "height": 800}, color_scheme=look)
    page = watched(context, guide_file).page
    if large:
        page.get_by_role("button", name="Large print").click()
    page.locator("#B1 input").first.check()
    _open_all(page)
    page.evaluate(axe)
    found = page.evaluate("axe.run(document, {resultTypes: ['violations', 'passes']})")
    context.close()
    assert len(found["passes"]) > 20
    assert [(fault["id"], [node["html"] for node in fault["nodes"]]) for fault in found["violations"]] == []


@pytest.mark.parametrize("width", WIDTHS)
def test_the_page_asks_for_nothing_and_says_nothing(browser: Browser, guide_file: Path, width: int) -> None:
    context = browser.new_context(viewport={"width": width, "height": 800})
    seen = watched(context, guide_file)
    seen.page.check("#A1 input")
    assert (seen.said, seen.asked) == ([], [guide_file.as_uri()])
    context.close()


def test_the_security_policy_stops_a_foreign_script_and_style(context: BrowserContext, guide_file: Path) -> None:
    seen = watched(context, guide_file)
    seen.page.evaluate(
        """() => {
            const script = document.createElement('script');
            script.textContent = 'hacked()';
            document.body.append(script);
            const picture = document.createElement('img');
            picture.src = 'https://probe.invalid/a.png';
            document.body.append(picture);
            document.body.setAttribute('style', 'display: none');
        }"""
    )
    assert seen.page.evaluate("window.hacks") == 0
    assert seen.page.evaluate("getComputedStyle(document.body).display") == "block"
    assert seen.refused == ["csp"]
    assert len(seen.said) >= 3


def test_ticks_outlive_a_reload(context: BrowserContext, guide_file: Path) -> None:
    page = watched(context, guide_file).page
    assert page.locator("#far-words").inner_text() == "0 of 10 done"
    page.get_by_label("Cut 65 cm of elastic.").check()
    page.check("#A1 input")
    page.reload()
    ticked = page.locator(".step input:checked").evaluate_all("boxes => boxes.map(box => box.value)")
    assert ticked == ["A1", "D1"]
    assert page.locator("#far-words").inner_text() == "2 of 10 done"
    assert page.locator("#far").evaluate("bar => bar.value") == 2


def test_ticks_outlive_a_change_and_only_a_changed_sentence_asks_again(
    context: BrowserContext, tmp_path: Path, guide_file: Path
) -> None:
    page = watched(context, guide_file).page
    for box in ("#A1 input", "#A2 input"):
        page.check(box)
    (cut,) = GUIDE.cut
    first, second = cut.steps
    wider = replace(cut, steps=(first, replace(second, text=second.text.replace("17 cm", "18 cm"))))
    changed = _put(tmp_path, replace(GUIDE, content_key="0f0f0f", materials=(), cut=(wider,)), "changed.html")
    page.goto(changed.as_uri())
    assert (page.locator("#A1 input").is_checked(), page.locator("#A2 input").is_checked()) == (True, False)


def test_another_wearer_has_ticks_of_her_own(context: BrowserContext, tmp_path: Path, guide_file: Path) -> None:
    watched(context, guide_file).page.check("#A1 input")
    other = _put(tmp_path, replace(GUIDE, wearer="Bo"), "other.html")
    assert watched(context, other).page.locator(".step input:checked").count() == 0


@pytest.mark.parametrize("kept", ["nonsense", "{}", "null", "[1, {}]", '["<img src=x>"]', "7"])
def test_spoilt_memory_does_no_harm(context: BrowserContext, guide_file: Path, kept: str) -> None:
    page = watched(context, guide_file).page
    page.evaluate("kept => localStorage.setItem('furbelow.ticks.' + document.documentElement.dataset.work, kept)", kept)
    seen = watched(context, guide_file)
    seen.page.check("#A2 input")
    assert seen.said == []
    assert seen.page.locator("#far-words").inner_text() == "1 of 10 done"


def test_without_memory_or_scripts_the_page_can_still_be_read_and_ticked(browser: Browser, guide_file: Path) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(guide_file.as_uri())
    page.check("#A2 input")
    assert not page.locator("#bar").is_visible()
    context.close()


def test_next_to_do_goes_to_the_first_step_without_a_tick(context: BrowserContext, guide_file: Path) -> None:
    page = watched(context, guide_file).page
    for value in ("A1", "A2", "B1.1"):
        page.check(f"input[value='{value}']")
    page.get_by_role("button", name="Next to do").click()
    assert page.evaluate("document.activeElement.value") == "B1.2"
    for value in ("B1.2", "B2.1", "B2.2", "C1", "C2", "D1", "D2"):
        page.check(f"input[value='{value}']")
    assert page.get_by_role("button", name="Next to do").is_disabled()


def test_a_step_is_reached_by_its_number(context: BrowserContext, guide_file: Path) -> None:
    page = watched(context, guide_file).page
    page.get_by_label("Go to step").fill("c2")
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.value") == "C2"
    page.wait_for_function(
        """() => {
            const box = document.getElementById('C2').getBoundingClientRect();
            return box.top > 0 && box.bottom < innerHeight;
        }"""
    )


def test_all_can_be_done_with_the_keyboard(context: BrowserContext, guide_file: Path) -> None:
    page = watched(context, guide_file).page
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "Skip to the steps"
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.value") == "A1"
    page.keyboard.press("Space")
    assert page.locator("#A1 input").is_checked()
    outline = page.evaluate("getComputedStyle(document.activeElement).outlineStyle")
    assert outline == "solid"


def _in_view(page: Page, name: str) -> None:
    page.wait_for_function(
        """(name) => {
            const box = document.getElementById(name).getBoundingClientRect();
            return box.height > 0 && box.top >= 0 && box.top < innerHeight;
        }""",
        arg=name,
    )


@pytest.mark.parametrize("scripts", [True, False], ids=["with scripts", "without"])
def test_a_number_opens_its_reason_with_the_keyboard_and_a_link_opens_another(
    browser: Browser, guide_file: Path, scripts: bool
) -> None:
    context = browser.new_context(viewport={"width": 360, "height": 640}, java_script_enabled=scripts)
    page = context.new_page()
    page.goto(guide_file.as_uri())
    reason = page.locator("details", has_text="Why 600 cm").first
    summary = reason.locator("summary")
    assert reason.get_attribute("open") is None
    assert not reason.locator(".reason").is_visible()
    summary.focus()
    page.keyboard.press("Enter")
    assert reason.locator(".reason").is_visible()
    page.keyboard.press("Space")
    assert not reason.locator(".reason").is_visible()
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    # The link goes to the cutting list, into a reason that was closed.
    page.locator("[id='why-flounce.length']").wait_for(state="visible")
    assert page.url.endswith("#why-flounce.length")
    context.close()


def test_a_link_to_a_reason_shows_it_where_the_browser_would_leave_it_closed(
    context: BrowserContext, guide_file: Path
) -> None:
    page = context.new_page()
    page.goto(f"{guide_file.as_uri()}#why-flounce.cut_length")
    _in_view(page, "why-flounce.cut_length")


def test_a_number_is_read_out_with_what_it_opens(context: BrowserContext, guide_file: Path) -> None:
    page = watched(context, guide_file).page
    told = page.locator("#cutting table").aria_snapshot()
    assert "Why 602 cm and 25 cm for the flounce" in told.replace("\u00a0", " ")
    assert "a choice, line 25" not in told.replace("\u00a0", " ")


@pytest.mark.parametrize("opened", [False, True])
def test_print_leaves_out_a_reason_that_is_closed(browser: Browser, tmp_path: Path, opened: bool) -> None:
    context = browser.new_context()
    page = watched(context, _put(tmp_path, replace(GUIDE, with_reasons=True))).page
    if opened:
        _open_all(page)
    page.emulate_media(media="print")
    shown = page.locator("summary, .reason").evaluate_all(
        "all => all.filter(each => each.getBoundingClientRect().height > 0).length"
    )
    assert shown == (4 + 5 if opened else 0)
    # A line parts each measurement from the next, whether or not something between them is left out.
    lines = page.locator(".facts tbody tr:visible").evaluate_all(
        "rows => rows.filter(row => !row.nextElementSibling || !row.nextElementSibling.matches('.why:has([open])'))"
        ".map(row => getComputedStyle(row.cells[0]).borderBottomWidth)"
    )
    assert len(lines) == 4
    assert set(lines) == {"1px"}
    context.close()


def test_dark_and_large_print_are_kept(context: BrowserContext, guide_file: Path) -> None:
    page = watched(context, guide_file).page
    light = page.evaluate("getComputedStyle(document.body).backgroundColor")
    small = page.evaluate("parseFloat(getComputedStyle(document.querySelector('.step')).fontSize)")
    page.get_by_role("button", name="Dark").click()
    page.get_by_role("button", name="Large print").click()
    page.reload()
    assert page.evaluate("getComputedStyle(document.body).backgroundColor") != light
    large = page.evaluate("parseFloat(getComputedStyle(document.querySelector('.step')).fontSize)")
    assert large >= 1.3 * small
    assert page.get_by_role("button", name="Dark").get_attribute("aria-pressed") == "true"


@pytest.mark.parametrize("large", [False, True], ids=["plain", "large print"])
def test_nothing_stands_out_to_the_side_on_a_phone(browser: Browser, tmp_path: Path, large: bool) -> None:
    context = browser.new_context(viewport={"width": 360, "height": 740})
    for name, guide in (("plain.html", GUIDE), ("long.html", with_text_everywhere("W" * 300))):
        page = watched(context, _put(tmp_path, guide, name)).page
        if large and page.get_by_role("button", name="Large print").get_attribute("aria-pressed") == "false":
            page.get_by_role("button", name="Large print").click()
        _open_all(page)
        assert _wide(page) <= 360
    context.close()


def test_what_is_pressed_is_large_enough_for_a_finger(browser: Browser, guide_file: Path) -> None:
    """At least 24 by 24 CSS pixels. Source: WCAG 2.2 (2023), success criterion 2.5.8."""
    context = browser.new_context(viewport={"width": 360, "height": 740})
    page = watched(context, guide_file).page
    sizes = page.locator("button:visible, input:visible, nav a:visible, summary:visible").evaluate_all(
        "all => all.map(each => { const box = each.getBoundingClientRect(); return [box.width, box.height]; })"
    )
    context.close()
    assert len(sizes) > 15
    assert all(width >= 24 and height >= 24 for width, height in sizes)


def test_figures_stand_beside_the_steps_on_a_wide_screen_and_below_on_a_narrow_one(
    browser: Browser, guide_file: Path
) -> None:
    places = []
    for width in (1100, 360):
        context = browser.new_context(viewport={"width": width, "height": 800})
        page = watched(context, guide_file).page
        places.append(
            [page.locator(f"#operation-join-upper {what}").first.bounding_box() for what in ("figure", ".steps")]
        )
        context.close()
    (wide_figure, wide_steps), (narrow_figure, narrow_steps) = places
    assert wide_figure is not None
    assert wide_steps is not None
    assert narrow_figure is not None
    assert narrow_steps is not None
    assert wide_figure["x"] >= wide_steps["x"] + wide_steps["width"]
    assert narrow_steps["y"] + narrow_steps["height"] <= narrow_figure["y"]


def _printed(page: Page) -> pikepdf.Pdf:
    return pikepdf.open(io.BytesIO(page.pdf(format="A4", prefer_css_page_size=True, tagged=True)))


@pytest.mark.parametrize("look", ["light", "dark"])
def test_print_cuts_no_figure_and_breaks_no_step(browser: Browser, tmp_path: Path, look: Look) -> None:
    context = browser.new_context(color_scheme=look)
    page = watched(context, _put(tmp_path, many_figures())).page
    printed = _printed(page)
    context.close()
    assert len(printed.pages) > 10
    drawings = [element for element in elements(printed) if element.S == "/Figure" and "/Alt" in element]
    steps = [
        element
        for element in elements(printed)
        if element.S == "/LI" and any(part.S == "/Form" for part in elements(element))
    ]
    assert len(drawings) == 2 + 32
    assert len(steps) == 2 + 70
    for element in drawings + steps:
        assert len(pages_of(printed, element)) == 1


def test_print_is_black_on_white_and_leaves_the_controls_out(browser: Browser, guide_file: Path) -> None:
    context = browser.new_context(color_scheme="dark")
    page = watched(context, guide_file).page
    page.get_by_role("button", name="Large print").click()
    page.emulate_media(media="print", color_scheme="dark")
    shown: dict[str, Any] = page.evaluate(
        """() => {
            const looks = (what) => getComputedStyle(document.querySelector(what));
            return {
                ground: looks('body').backgroundColor, ink: looks('body').color, card: looks('.step').backgroundColor,
                heading: looks('h2').color,
                hidden: ['.bar', '.aids', '.skip', '.contents'].map((what) => looks(what).display),
            };
        }"""
    )
    context.close()
    assert shown["ground"] == shown["card"] == "rgb(255, 255, 255)"
    assert shown["ink"] == shown["heading"] == "rgb(0, 0, 0)"
    assert set(shown["hidden"]) == {"none"}


@pytest.mark.parametrize("start", range(0, len(PROBES), 12))
def test_no_probe_acts_in_the_browser(context: BrowserContext, tmp_path: Path, start: int) -> None:
    """Twelve at a time: were one to act, it would show, even if it hid the rest."""
    probed = with_text_everywhere(" ".join(PROBES[start : start + 12]))
    file = _put(tmp_path, probed)
    seen = watched(context, file)
    page = seen.page
    page.locator("#A1").hover()
    page.locator("#C1").hover()
    assert page.evaluate("window.hacks") == 0
    assert (seen.said, seen.asked, seen.dialogs) == ([], [file.as_uri()], [])
    assert page.evaluate("[document.scripts.length, document.styleSheets.length, frames.length]") == [1, 1, 0]
    assert page.evaluate("document.querySelectorAll('img, iframe, object, embed, video, base, link').length") == 0
    words = " ".join(visible(probed).title.split())
    assert " ".join((page.locator("h1").text_content() or "").split()) == words
