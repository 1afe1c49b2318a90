"""What a guide of a demo garment is on a telephone: its first screen, one step at a time, the way to a step; all offline."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from furbelow.s6_write.pages.page import html
from playwright.sync_api import Browser, BrowserContext, Page

from tests.browser.conftest import watched
from tests.s6_write.booklet.made import guides

PHONE = {"width": 390, "height": 800}
FINGER = 44  # CSS pixels. Source: WCAG 2.2, success criterion 2.5.5, target size (enhanced)
DEMOS = ("larkspur", "marigold", "peony")


@pytest.fixture(scope="module")
def files(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    made = {}
    for demo in DEMOS:
        made[demo] = tmp_path_factory.mktemp(demo) / "guide.html"
        made[demo].write_text(html(guides(demo)[2]), encoding="utf-8")
    return made


@pytest.fixture
def phone(browser: Browser) -> Iterator[BrowserContext]:
    opened = browser.new_context(viewport=PHONE)  # type: ignore[arg-type]
    yield opened
    opened.close()


@pytest.mark.parametrize("demo", DEMOS)
def test_the_first_screen_has_the_picture_and_what_is_asked(
    phone: BrowserContext, files: dict[str, Path], demo: str
) -> None:
    page = watched(phone, files[demo]).page
    facts = {fact.name: fact.value for fact in guides(demo)[2].glance}
    brief = page.locator(".head .brief")
    told = " ".join(brief.inner_text().split())
    assert " ".join(facts["front-time"].split()) in told
    assert " ".join(facts["front-cloth"].split()) in told
    box = brief.bounding_box()
    drawn = page.locator("#glance .picture figure svg").first.bounding_box()
    assert box
    assert drawn
    assert box["y"] + box["height"] < PHONE["height"]
    # Half of the picture at least.
    assert drawn["y"] + drawn["height"] / 2 < PHONE["height"]


def _walk(page: Page) -> Iterator[str]:
    """Each step in the view of one at a time, from the first to the last."""
    while True:
        (shown,) = page.locator(".step:visible").evaluate_all("all => all.map(each => each.id)")
        yield shown
        if page.locator("#on").is_disabled():
            return
        page.locator("#on").click()


def test_one_step_at_a_time_leads_through_all_work_without_a_network(
    phone: BrowserContext, files: dict[str, Path]
) -> None:
    seen = watched(phone, files["marigold"])
    phone.set_offline(True)
    page = seen.page
    page.get_by_role("button", name="One step at a time").focus()
    page.keyboard.press("Enter")
    steps = page.locator(".step").evaluate_all("all => all.map(each => each.id)")
    assert list(_walk(page)) == steps
    assert (seen.said, seen.asked) == ([], [files["marigold"].as_uri()])


def _small(page: Page) -> list[str]:
    """What is pressed and is too small for a finger. A tick is pressed by its label."""
    found = page.locator(
        "button:visible, .step label:visible, #jump-to:visible, nav a:visible, summary:visible"
    ).evaluate_all(
        "all => all.map(each => [each.id || each.textContent.trim(), each.getBoundingClientRect()])"
        f".filter(([_, box]) => box.height < {FINGER} || box.width < {FINGER}).map(([name]) => name)"
    )
    return [str(name) for name in found]


@pytest.mark.parametrize("demo", DEMOS)
def test_all_that_is_pressed_is_large_enough_for_a_finger(
    phone: BrowserContext, files: dict[str, Path], demo: str
) -> None:
    assert _small(watched(phone, files[demo]).page) == []


@pytest.mark.parametrize("look", ["light", "dark"])
def test_in_one_step_axe_finds_nothing_and_all_is_large_enough(
    browser: Browser, axe: str, files: dict[str, Path], look: str
) -> None:
    context = browser.new_context(viewport=PHONE, color_scheme="dark" if look == "dark" else "light")  # type: ignore[arg-type]
    page = watched(context, files["larkspur"]).page
    page.get_by_role("button", name="One step at a time").click()
    page.fill("#jump-to", "G3")
    page.keyboard.press("Enter")
    assert page.locator(".step:visible").get_attribute("id") == "G3"
    assert page.locator("figure:visible").count() > 0
    assert _small(page) == []
    page.evaluate(axe)
    found = page.evaluate("axe.run(document, {resultTypes: ['violations', 'passes']})")
    context.close()
    assert [(fault["id"], [node["html"][:200] for node in fault["nodes"]]) for fault in found["violations"]] == []


@pytest.mark.parametrize("width", [390, 1100])
def test_a_step_that_is_gone_to_has_its_tick_in_sight_and_not_below_the_bar(
    browser: Browser, files: dict[str, Path], width: int
) -> None:
    context = browser.new_context(viewport={"width": width, "height": 800})
    page = watched(context, files["larkspur"]).page
    for step in ("A1", "G3", "W4", "AA4", "D1"):
        page.fill("#jump-to", step)
        page.keyboard.press("Enter")
        page.wait_for_function(
            """(step) => {
                const tick = document.querySelector(`#${step} input`).getBoundingClientRect();
                const bar = document.getElementById('bar').getBoundingClientRect();
                const apart = tick.top >= bar.bottom || tick.bottom <= bar.top;
                return document.activeElement.closest('.step').id === step && tick.top >= 0 && tick.bottom <= innerHeight && apart;
            }""",
            arg=step,
        )
    context.close()


def test_that_the_work_may_be_put_away_is_said_at_the_last_step_of_its_operation(
    phone: BrowserContext, files: dict[str, Path]
) -> None:
    page = watched(phone, files["marigold"]).page
    wanted = {
        operation.place(operation.steps[-1]): " ".join(operation.stop.split())
        for operation in guides("marigold")[2].operations
        if operation.stop
    }
    page.get_by_role("button", name="One step at a time").click()
    told: dict[str, str] = {}
    for step in _walk(page):
        stops = page.locator(".stop:visible").all_inner_texts()
        assert len(stops) <= 1
        if stops:
            told[step] = " ".join(stops[0].split())
    assert wanted
    assert told == wanted
