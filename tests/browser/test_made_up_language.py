"""The page in a made-up language of longer, accented words: nothing English is left in it, nothing is cut off."""

from __future__ import annotations

from pathlib import Path

import pytest
from furbelow.verbs.command import run
from playwright.sync_api import Browser, Page

from tests.browser.conftest import watched
from tests.demos.demos import NAMES, SPECS
from tests.s6_write.words.made_up import CODE, english_left, told_in_both

# All that a reader may meet on the page, seen or spoken, in whatever state.
_ALL_TEXT = """() => {
  document.querySelectorAll("details").forEach((each) => { each.open = true; });
  const told = [document.title];
  const walk = document.createTreeWalker(document.documentElement, NodeFilter.SHOW_ELEMENT);
  for (let at = walk.currentNode; at; at = walk.nextNode()) {
    if (at.matches("style, script")) continue;
    for (const name of ["aria-label", "placeholder", "alt", "title"]) told.push(at.getAttribute(name) || "");
    for (const child of at.childNodes) if (child.nodeType === Node.TEXT_NODE) told.push(child.data);
  }
  return told.join(" ");
}"""

pytestmark = pytest.mark.usefixtures("made_up_language")


@pytest.fixture
def made(tmp_path: Path, request: pytest.FixtureRequest) -> Path:
    """The page of a demo, and of every size of it."""
    spec = tmp_path / "spec.yaml"
    spec.write_text(told_in_both((SPECS / f"{request.param}.yaml").read_text("utf-8")), encoding="utf-8")
    call = ["make", str(spec), "--every-size", "--language", CODE, "--no-pdf", "--out", str(tmp_path / "out")]
    assert run(call) == 0
    return tmp_path / "out"


def _left(page: Page) -> list[str]:
    text = str(page.evaluate(_ALL_TEXT)).replace("spec.yaml", "")
    key = page.evaluate("document.documentElement.dataset.key")
    return english_left(text.replace(str(key), ""))


@pytest.mark.parametrize("made", NAMES, indirect=True)
def test_no_english_is_left_however_the_page_is_used(made: Path, browser: Browser, axe: str) -> None:
    guide = sorted(made.glob("size-*"))[0] / "guide.html"
    context = browser.new_context(viewport={"width": 360, "height": 800})
    for file in (guide, made / "index.html"):
        seen = watched(context, file)
        page = seen.page
        assert seen.said == []
        assert _left(page) == []
        assert page.evaluate("document.documentElement.scrollWidth") <= 360, "the page is wider than the phone"
        if file == guide:
            page.locator(".operation input").first.check()
            assert english_left(page.locator("#far-words").inner_text()) == []
            assert page.locator("#far-words").inner_text().startswith("1 ")
        page.evaluate(axe)
        found = page.evaluate("axe.run(document, {resultTypes: ['violations']})")
        assert [(fault["id"], [node["html"] for node in fault["nodes"]]) for fault in found["violations"]] == []
    context.close()


@pytest.mark.parametrize("made", NAMES, indirect=True)
def test_no_word_of_a_drawing_is_wider_than_its_place(made: Path, browser: Browser) -> None:
    """Each line of words keeps to the box that was reckoned for it, and inside its drawing."""
    guide = sorted(made.glob("size-*"))[0] / "guide.html"
    context = browser.new_context(viewport={"width": 1100, "height": 800})
    page = watched(context, guide).page
    outside = page.evaluate(
        """() => [...document.querySelectorAll("svg")].flatMap((svg) => {
          const box = svg.getBoundingClientRect();
          return [...svg.querySelectorAll("text")].filter((words) => {
            const at = words.getBoundingClientRect();
            return at.left < box.left - 1 || at.right > box.right + 1 || at.top < box.top - 1 || at.bottom > box.bottom + 1;
          }).map((words) => words.textContent);
        })"""
    )
    context.close()
    assert outside == []
