"""The choices as controls beside the preview, in a real browser, by mouse, keyboard and ear."""

from __future__ import annotations

import re
import shlex
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.preview.running import SPECS, running

LARKSPUR = (SPECS / "larkspur.yaml").read_text(encoding="utf-8")


@pytest.fixture
def spec(tmp_path: Path) -> Path:
    file = tmp_path / "larkspur.yaml"
    file.write_text(LARKSPUR, encoding="utf-8")
    return file


@pytest.fixture
def page(browser: Browser, spec: Path) -> Iterator[Page]:
    with running(spec) as (_, port):
        context = browser.new_context(
            viewport={"width": 1200, "height": 860}, permissions=["clipboard-read", "clipboard-write"]
        )
        page = context.new_page()
        said: list[str] = []
        page.on("console", lambda line: said.append(line.text))
        page.on("pageerror", lambda error: said.append(str(error)))
        page.goto(f"http://127.0.0.1:{port}/")
        expect(page.get_by_role("heading", name="Try the choices")).to_be_visible()
        expect(page.locator("body")).to_have_attribute("data-guide", "1")
        yield page
        context.close()
        assert said == []


def drawn(page: Page) -> str:
    return page.locator("#drawing").inner_html()


def sets(page: Page) -> list[str]:
    words = shlex.split(page.get_by_label("The command that makes it").input_value())
    return [words[at + 1] for at, word in enumerate(words) if word == "--set"]


def test_a_slider_is_moved_by_the_keyboard_and_all_beside_it_follows(page: Page) -> None:
    slider = page.get_by_label("cloth in the flounce")
    before, heard = drawn(page), page.locator("#heard").inner_text()
    slider.focus()
    page.keyboard.press("End")
    expect(slider).to_have_attribute("aria-valuetext", "3")
    expect(page.locator("#heard")).not_to_have_text(heard)
    assert drawn(page) != before
    assert sets(page) == ["fullness=3"]
    assert slider.evaluate("node => node === document.activeElement")
    page.keyboard.press("ArrowLeft")
    expect(page.get_by_label("The command that makes it")).to_have_value(re.compile("fullness=2.95"))


def test_a_list_and_a_size_are_chosen_and_taken_back(page: Page) -> None:
    page.get_by_label("layers of net").select_option("4")
    expect(page.locator("#drawing")).to_have_attribute("aria-label", re.compile("4 layers alike"))
    page.get_by_label("Size").select_option("L")
    expect(page.get_by_label("The command that makes it")).to_have_value(re.compile("--size L --set layers=4"))
    page.get_by_role("button", name="As the spec has it").click()
    expect(page.locator("#drawing")).to_have_attribute("aria-label", re.compile("2 layers alike"))
    assert sets(page) == []
    expect(page.get_by_label("layers of net")).to_have_value("2")


def test_many_moves_at_once_end_at_the_last(page: Page) -> None:
    page.evaluate("""() => {
        const slider = document.querySelector("#choice-1");
        for (let at = 0; at <= 30; at += 1) { slider.value = at; slider.dispatchEvent(new Event("input")); }
    }""")
    expect(page.get_by_label("The command that makes it")).to_have_value(re.compile("fullness=3 "))
    expect(page.get_by_label("cloth in the flounce")).to_have_value("30")


def test_the_command_is_copied(page: Page) -> None:
    page.get_by_label("layers of net").select_option("3")
    expect(page.get_by_label("The command that makes it")).to_have_value(re.compile("layers=3"))
    page.get_by_role("button", name="Copy").click()
    expect(page.locator("#copied")).to_have_text("Copied.")
    assert (
        page.evaluate("navigator.clipboard.readText()") == page.get_by_label("The command that makes it").input_value()
    )


def test_a_save_brings_the_choices_of_the_new_text_and_keeps_what_was_chosen(page: Page, spec: Path) -> None:
    page.get_by_label("layers of net").select_option("3")
    expect(page.get_by_label("The command that makes it")).to_have_value(re.compile("layers=3"))
    spec.write_text(LARKSPUR.replace("    to: 4\n", "    to: 5\n"), encoding="utf-8")
    expect(page.get_by_label("layers of net").locator("option")).to_have_count(5)
    assert sets(page) == ["layers=3"]


def test_what_can_not_be_made_so_says_why_and_the_picture_is_set_back(page: Page, spec: Path) -> None:
    spec.write_text(LARKSPUR.replace("    depth: 15 cm\n", "    depth: 25 cm\n"), encoding="utf-8")
    slider = page.get_by_label("from the waist to the hem")
    slider.focus()
    page.keyboard.press("Home")
    expect(page.locator("#wrong")).to_contain_text("will not dance")
    expect(page.locator("#takes")).to_be_hidden()
    page.keyboard.press("End")
    expect(page.locator("#wrong")).to_be_hidden()
    expect(page.locator("#takes")).to_contain_text("net")


@pytest.mark.parametrize("look", ["light", "dark"])
@pytest.mark.parametrize("width", [360, 1200])
def test_axe_finds_nothing_to_mend_in_the_controls(page: Page, axe: str, look: str, width: int) -> None:
    page.emulate_media(color_scheme=look)  # type: ignore[arg-type]
    page.set_viewport_size({"width": width, "height": 800})
    found = page.evaluate(f"() => {{ {axe}; return axe.run({{ iframes: false }}); }}")
    assert [(v["id"], v["nodes"][0]["html"]) for v in found["violations"]] == []


def test_the_picture_is_dark_by_night(page: Page) -> None:
    lit = '#drawing path[fill="#f3e6da"]'
    day = page.locator(lit).first.evaluate("node => getComputedStyle(node).fill")
    page.emulate_media(color_scheme="dark")
    night = page.locator(lit).first.evaluate("node => getComputedStyle(node).fill")
    assert sum(map(int, re.findall(r"\d+", day)[:3])) > 2 * sum(map(int, re.findall(r"\d+", night)[:3]))
