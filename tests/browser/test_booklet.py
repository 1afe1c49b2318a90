"""The booklet in a real browser: a size is chosen, her numbers come in, and nothing is asked of anybody."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from furbelow.s6_write.booklet.resolved import resolved
from furbelow.s6_write.pages.booklet_page import booklet_html
from furbelow.s6_write.pages.prose import set_ready
from playwright.sync_api import Browser, BrowserContext, Page

from tests.browser.conftest import watched
from tests.s6_write.booklet.made import booklet

LARKSPUR = "larkspur"  # sentences differ between its sizes, and a join is missing in the first


@pytest.fixture(scope="module")
def file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    page = tmp_path_factory.mktemp("booklet") / "booklet.html"
    page.write_text(booklet_html(booklet(LARKSPUR)), encoding="utf-8")
    return page


@pytest.fixture
def context(browser: Browser) -> Iterator[BrowserContext]:
    opened = browser.new_context(viewport={"width": 390, "height": 800})
    yield opened
    opened.close()


def _choose(page: Page, size: str) -> None:
    page.locator("#choose").get_by_role("button", name=size, exact=True).click()


def _sentences(page: Page) -> list[str]:
    told = page.locator(".step .sentence").evaluate_all(
        "all => all.map(each => [...each.childNodes].filter(node => !node.matches || !node.matches('.chain, .at')).map(node => node.textContent).join(''))"
    )
    return [" ".join(text.split()) for text in told]


@pytest.mark.parametrize("size", [0, 2, 4])
def test_the_sentences_are_those_of_the_size_that_is_chosen(context: BrowserContext, file: Path, size: int) -> None:
    made = set_ready(booklet(LARKSPUR))
    page = watched(context, file).page
    _choose(page, made.sizes[size])
    wanted = [step.text for operation in resolved(made, size) for step in operation.steps]
    assert _sentences(page) == [" ".join(text.split()) for text in wanted]
    assert page.locator(".letter-of").count() == 0
    assert (
        page.locator("#far-words").inner_text()
        == f"0 of {sum(s.copies for o in resolved(made, size) for s in o.steps)} done"
    )
    drawn = {
        each.drawn.key
        for o in made.operations
        if not o.sizes or size in o.sizes
        for each in o.drawings
        if not each.own or made.sizes[size] in dict(each.own)
    }
    shown = page.locator(".operation figure").evaluate_all("all => all.map(each => each.id)")
    assert sorted(shown) == sorted(f"figure-{key}" for key in drawn)


def test_the_size_and_its_ticks_are_kept_and_those_of_another_size_are_others(
    context: BrowserContext, file: Path
) -> None:
    page = watched(context, file).page
    _choose(page, "M")
    page.check("#E1 input")
    _choose(page, "L")
    assert page.locator(".step input:checked").count() == 0
    _choose(page, "M")
    assert page.locator("#E1 input").first.is_checked()
    page.reload()
    assert page.locator(".head .for").first.inner_text() == "size M"
    assert page.locator("#E1 input").first.is_checked()
    assert "37" in page.locator("#E1 .sentence").inner_text()
    _choose(page, "All sizes")
    assert page.locator(".letter-of").count() > 10
    assert page.locator(".step input").count() == 0


def test_nothing_is_asked_for_and_nothing_said(context: BrowserContext, file: Path) -> None:
    seen = watched(context, file)
    for size in ("XS", "XL", "All sizes"):
        _choose(seen.page, size)
    assert (seen.said, seen.asked) == ([], [file.as_uri()])
    assert seen.page.evaluate("document.documentElement.scrollWidth") == 390


def test_the_choice_is_made_with_the_keyboard_and_told(context: BrowserContext, file: Path) -> None:
    page = watched(context, file).page
    page.locator("#choose button").nth(1).focus()
    page.keyboard.press("Enter")
    focused = "document.activeElement.textContent + document.activeElement.getAttribute('aria-pressed')"
    assert page.evaluate(focused) == "Strue"
    assert page.locator("#chosen").inner_text().startswith("Size S:")


def test_one_step_at_a_time_and_the_way_to_a_step_go_on_as_in_a_guide(context: BrowserContext, file: Path) -> None:
    page = watched(context, file).page
    _choose(page, "XL")
    page.fill("#jump-to", "h1")
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.closest('.step').id") == "H1"
    page.get_by_role("button", name="One step at a time").click()
    assert page.locator(".step:visible").count() == 1


# Which size, and how it is read. Without a size there is nothing to tick, and so no step to go to.
WAYS = [("", ()), ("", ("Large print",)), ("M", ()), ("M", ("Large print", "One step at a time"))]


@pytest.mark.parametrize(("size", "pressed"), WAYS)
@pytest.mark.parametrize("look", ["light", "dark"])
@pytest.mark.parametrize("width", [360, 1100])
def test_axe_finds_nothing_to_mend(
    browser: Browser, axe: str, file: Path, width: int, look: str, size: str, pressed: tuple[str, ...]
) -> None:
    context = browser.new_context(
        viewport={"width": width, "height": 800}, color_scheme="dark" if look == "dark" else "light"
    )
    page = watched(context, file).page
    if size:
        _choose(page, size)
        page.locator("#E1 input").first.check()
    for name in pressed:
        page.get_by_role("button", name=name).click()
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    page.evaluate(axe)
    found = page.evaluate("axe.run(document, {resultTypes: ['violations', 'passes']})")
    context.close()
    assert len(found["passes"]) > 15
    assert [(fault["id"], [node["html"][:200] for node in fault["nodes"]]) for fault in found["violations"]] == []
