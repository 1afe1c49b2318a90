"""The page of a class in a real browser: no fault that axe knows, no request, fit for a phone, a keyboard and paper."""

from __future__ import annotations

import io
from pathlib import Path
from typing import Literal

import pikepdf
import pytest
from furbelow.verbs.command import run
from playwright.sync_api import Browser

from tests.browser.conftest import watched

Look = Literal["light", "dark"]
SPECS = Path(__file__).parents[2] / "specs"
PAGES = ("class/index.html", "class/class-cutting.html", "sizes/index.html")


@pytest.fixture(scope="module")
def sites(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A class of six with one more whose measure is out of range, and a size range."""
    room = tmp_path_factory.mktemp("sites")
    text = (SPECS / "wearers" / "class.yaml").read_text(encoding="utf-8")
    more = '  - wearer: "Gil <script>hacked()</script>"\n    body: {waist_girth: 170 cm, hip_girth: 109 cm, waist_height: 1 m, knee_height: 47 cm}\n'
    (room / "class.yaml").write_text(text + more, encoding="utf-8")
    call = ["make", str(SPECS / "larkspur.yaml"), "--out"]
    assert run([*call, str(room / "class"), "--class", str(room / "class.yaml"), "--no-pdf"]) == 1
    assert run([*call, str(room / "sizes"), "--every-size", "--no-pdf"]) == 0
    return room


@pytest.mark.parametrize("page", PAGES)
@pytest.mark.parametrize("look", ["light", "dark"])
@pytest.mark.parametrize("width", [360, 1100])
def test_axe_finds_nothing_to_mend_and_nothing_is_asked_for(
    browser: Browser, axe: str, sites: Path, width: int, look: Look, page: str
) -> None:
    context = browser.new_context(viewport={"width": width, "height": 800}, color_scheme=look)
    seen = watched(context, sites / page)
    assert (seen.said, seen.asked, seen.dialogs) == ([], [(sites / page).as_uri()], [])
    assert seen.page.evaluate("window.hacks") == 0
    assert seen.page.evaluate("document.documentElement.scrollWidth") <= width
    seen.page.evaluate(axe)
    found = seen.page.evaluate("axe.run(document, {resultTypes: ['violations', 'passes']})")
    context.close()
    assert len(found["passes"]) > 15
    assert [(fault["id"], [node["html"] for node in fault["nodes"]]) for fault in found["violations"]] == []


def test_a_guide_is_one_key_and_one_press_away(browser: Browser, sites: Path) -> None:
    context = browser.new_context(viewport={"width": 1100, "height": 800})
    page = watched(context, sites / PAGES[0]).page
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "Skip to the guides"
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "Guide for Ada"
    page.keyboard.press("Enter")
    page.wait_for_url("**/ada/guide.html")
    assert page.locator("p.for").inner_text() == "Ada"
    context.close()


def test_links_are_large_enough_for_a_finger(browser: Browser, sites: Path) -> None:
    """At least 24 by 24 CSS pixels. Source: WCAG 2.2 (2023), success criterion 2.5.8."""
    context = browser.new_context(viewport={"width": 360, "height": 740})
    page = watched(context, sites / PAGES[0]).page
    sizes = page.locator("button:visible, main a:visible").evaluate_all(
        "all => all.map(each => { const box = each.getBoundingClientRect(); return [box.width, box.height]; })"
    )
    context.close()
    assert len(sizes) >= 12
    assert all(width >= 24 and height >= 24 for width, height in sizes)


def test_the_size_chart_scrolls_by_itself_on_a_phone_and_keeps_its_labels_in_sight(
    browser: Browser, sites: Path
) -> None:
    context = browser.new_context(viewport={"width": 360, "height": 740})
    page = watched(context, sites / PAGES[2]).page
    chart = page.locator(".chart").first
    assert chart.evaluate("each => each.scrollWidth > each.clientWidth")
    chart.focus()
    chart.evaluate("each => each.scrollLeft = each.scrollWidth")
    label = page.locator(".chart tbody th[scope=row]").first.bounding_box()
    last = page.locator(".chart tbody tr:nth-child(2) td").last.bounding_box()
    context.close()
    assert label is not None
    assert last is not None
    assert label["x"] >= 0
    assert last["x"] + last["width"] <= 361
    assert last["x"] >= label["x"] + label["width"] - 1


def test_dark_look_is_shared_with_the_guides_and_kept(browser: Browser, sites: Path) -> None:
    context = browser.new_context(viewport={"width": 1100, "height": 800}, color_scheme="light")
    page = watched(context, sites / PAGES[0]).page
    page.get_by_role("button", name="Dark").click()
    page.reload()
    assert page.evaluate("document.documentElement.dataset.look") == "dark"
    context.close()


@pytest.mark.parametrize("page", [PAGES[0], PAGES[2]])
def test_print_is_black_on_white_and_cuts_no_row(browser: Browser, sites: Path, page: str) -> None:
    context = browser.new_context(color_scheme="dark")
    opened = watched(context, sites / page).page
    opened.emulate_media(media="print", color_scheme="dark")
    looks = opened.evaluate(
        """() => {
            const looks = (what) => getComputedStyle(document.querySelector(what));
            return [looks('body').backgroundColor, looks('h2').color, looks('tr').breakInside, looks('.aids').display];
        }"""
    )
    assert looks == ["rgb(255, 255, 255)", "rgb(0, 0, 0)", "avoid", "none"]
    opened.set_viewport_size({"width": 680, "height": 900})  # the width of A4 between its margins, in CSS pixels
    assert opened.evaluate("document.documentElement.scrollWidth") <= 680
    printed = pikepdf.open(io.BytesIO(opened.pdf(format="A4", prefer_css_page_size=True)))
    context.close()
    assert 1 <= len(printed.pages) <= 6
