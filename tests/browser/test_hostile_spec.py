"""A hostile spec end to end: made and previewed, its pages opened in a real browser, nothing acts and nothing leaves."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from furbelow.diagnose.unseen import without_unseen
from furbelow.verbs.command import run
from playwright.sync_api import Browser, Page, expect

from tests.browser.conftest import Watched, watched
from tests.browser.hostile import CHUNKS, LINE, READ, hostile_class, hostile_spec
from tests.preview.running import SPECS, running
from tests.s6_write.probes import PROBES

# What the pages are made of, and what a maker's Markdown may add to them.
PAGE = {
    "html",
    "head",
    "meta",
    "title",
    "style",
    "body",
    "a",
    "header",
    "div",
    "button",
    "h1",
    "p",
    "main",
    "nav",
    "h2",
    "ol",
    "li",
    "section",
    "figure",
    "svg",
    "path",
    "text",
    "g",
    "rect",
    "figcaption",
    "table",
    "caption",
    "thead",
    "tbody",
    "tr",
    "th",
    "td",
    "span",
    "ul",
    "b",
    "small",
    "article",
    "h3",
    "label",
    "input",
    "dl",
    "dt",
    "dd",
    "form",
    "progress",
    "script",
    "details",
    "summary",
    "dialog",
}
MARKDOWN = {
    "p",
    "strong",
    "em",
    "code",
    "pre",
    "blockquote",
    "h1",
    "h2",
    "h3",
    "h4",
    "h5",
    "h6",
    "ul",
    "ol",
    "li",
    "hr",
    "br",
    "a",
    "table",
    "thead",
    "tbody",
    "tr",
    "th",
    "td",
    "del",
}
KINDS = "(of) => [...new Set([...of.querySelectorAll('*')].map((each) => each.localName))]"
ACTS = """(of) => [...of.querySelectorAll('*')].flatMap((each) => [...each.attributes]
    .filter((attribute) => /^on|^style$|^srcdoc$|^formaction$/i.test(attribute.name)
        || (/^(href|src|action|data|xlink:href)$/i.test(attribute.name) && !/^(#|https:|http:|mailto:|[a-z0-9-]+\\/guide\\.(html|pdf|md)$|[a-z0-9-]+\\.(html|pdf|md|csv)$)/.test(attribute.value)))
    .map((attribute) => each.outerHTML.slice(0, 200)))"""
PREVIEWED = "document.querySelector('iframe:not(.coming)').contentDocument"


def stays_text(page: Page, document: str = "document") -> None:
    """Neither an element nor an attribute stands in the page that furbelow or Markdown has not put there."""
    kinds: list[str] = page.evaluate(f"() => ({KINDS})({document})")
    assert set(kinds) <= PAGE | MARKDOWN, set(kinds) - PAGE - MARKDOWN
    assert page.evaluate(f"() => ({ACTS})({document})") == []
    assert page.evaluate(f"() => [{document}.scripts.length, {document}.styleSheets.length]") == [1, 1]
    assert page.evaluate(f"() => {document}.defaultView.hacks") == 0


def quiet(seen: Watched, files: list[Path]) -> None:
    assert (seen.said, seen.dialogs, seen.refused) == ([], [], [])
    assert seen.asked == [file.as_uri() for file in files]


def moved_over(page: Page) -> None:
    """What a hand does: over the steps, into every field, on every control."""
    for step in page.locator(".step").all()[::12]:
        step.hover()
    page.evaluate("document.querySelectorAll('*').forEach((each) => { each.focus?.(); })")
    page.evaluate("document.querySelectorAll('details').forEach((each) => { each.open = true; })")
    for button in page.locator("button:visible:enabled").all():
        # One step at a time hides the rest, and an enlarged drawing lies over all until it is put away.
        if button.get_attribute("type") == "button" and button.is_visible():
            button.click()
            page.keyboard.press("Escape")


def test_there_are_enough_probes_and_a_spec_takes_most_of_them() -> None:
    assert len(PROBES) >= 50
    assert len(READ) >= 50
    assert all(len(chunk) <= LINE for chunk in CHUNKS)


@pytest.mark.parametrize("turn", range(5))
def test_no_text_of_a_spec_acts_in_its_guide(browser: Browser, tmp_path: Path, turn: int) -> None:
    spec, out = tmp_path / "spec.yaml", tmp_path / "out"
    spec.write_text(hostile_spec(turn), encoding="utf-8")
    assert run(["make", str(spec), "--size", "M", "--no-pdf", "--out", str(out)]) == 0
    context = browser.new_context(viewport={"width": 1100, "height": 800})
    seen = watched(context, out / "guide.html")
    moved_over(seen.page)
    stays_text(seen.page)
    quiet(seen, [out / "guide.html"])
    shown = " ".join((seen.page.locator("h1").first.text_content() or "").split())
    title = CHUNKS[turn * 5 % len(CHUNKS)]
    assert title.split()[0] in shown
    drawings = sorted(out.rglob("*.svg"))
    for drawing in drawings[:: max(1, len(drawings) // 4)]:
        alone = watched(context, drawing)
        assert (
            alone.page.evaluate(
                "document.querySelectorAll('script, foreignObject, a, image, style, parsererror').length"
            )
            == 0
        )
        assert alone.page.evaluate("window.hacks") == 0
        quiet(alone, [drawing])
        alone.page.close()
    context.close()


def test_no_name_of_a_wearer_or_text_of_a_spec_acts_in_the_pages_of_a_class(browser: Browser, tmp_path: Path) -> None:
    spec, roster, out = tmp_path / "spec.yaml", tmp_path / "class.yaml", tmp_path / "out"
    spec.write_text(hostile_spec(1), encoding="utf-8")
    roster.write_text(hostile_class(), encoding="utf-8")
    assert run(["make", str(spec), "--class", str(roster), "--no-pdf", "--out", str(out)]) == 1  # one is out of range
    context = browser.new_context(viewport={"width": 1100, "height": 800})
    guides = sorted(out.glob("*/guide.html"))
    assert len(guides) == len(CHUNKS)
    cutting = sorted(out.glob("class-cutting*.html"))
    assert len(cutting) > 1  # in parts
    for page in (out / "index.html", *cutting, guides[0], guides[-1]):
        seen = watched(context, page)
        moved_over(seen.page)
        stays_text(seen.page)
        quiet(seen, [page])
        seen.page.close()
    seen = watched(context, out / "index.html")
    told = " ".join(seen.page.locator("main").inner_text().split())
    assert all(without_unseen(chunk).split()[0] in told for chunk in CHUNKS)
    assert "Not made" in told
    assert {path.parent for path in out.rglob("guide.html")} == {
        out / path.name for path in out.iterdir() if path.is_dir()
    }
    context.close()


def test_no_text_of_a_spec_acts_in_the_preview_sound_or_at_fault(browser: Browser, tmp_path: Path) -> None:
    spec = tmp_path / "<img src=x onerror=hacked()>.yaml"
    spec.write_text((SPECS / "larkspur.yaml").read_text(encoding="utf-8"), encoding="utf-8")
    said: list[str] = []
    asked: list[str] = []

    def save(text: str) -> None:
        beside = tmp_path / "new.yaml"
        beside.write_text(text, encoding="utf-8")
        beside.replace(spec)

    def dismissed(dialog: Any) -> None:
        said.append(f"dialog: {dialog.message}")
        dialog.dismiss()

    with running(spec) as (_, port):
        context = browser.new_context()
        page = context.new_page()
        page.add_init_script("window.hacks = 0; window.hacked = () => { window.hacks += 1; };")
        page.on("console", lambda line: said.append(line.text))
        page.on("pageerror", lambda error: said.append(str(error)))
        page.on("dialog", dismissed)
        page.on("request", lambda request: asked.append(request.url))
        page.goto(f"http://127.0.0.1:{port}/")
        expect(page.locator("body")).to_have_attribute("data-guide", "1")
        for turn in range(3):
            guide = str(2 + 2 * turn)
            save(hostile_spec(turn))  # put into the guide that is shown, or loaded
            expect(page.locator("body")).to_have_attribute("data-guide", guide)
            stays_text(page, PREVIEWED)
            save(hostile_spec(turn, broken_rule=True))
            expect(page.locator("body")).to_have_attribute("data-number", str(3 + 2 * turn))
            expect(page.locator("body")).to_have_attribute("data-guide", guide)
            expect(page.locator("#report")).to_contain_text("<script>hacked()</script>")
            assert page.locator("#report *").count() == 0
            assert page.evaluate(
                "[window.hacks, document.scripts.length, document.querySelectorAll('img').length]"
            ) == [0, 1, 0]
        context.close()
    assert said == []
    assert all(url.startswith(f"http://127.0.0.1:{port}/") for url in asked), asked
