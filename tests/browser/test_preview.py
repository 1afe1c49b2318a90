"""The preview in a real browser: a save shows, a fault is told over the guide that was good, nothing leaves the machine."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from furbelow.resources import template
from playwright.sync_api import Browser, Page, expect

from tests.preview.running import SPECS, running

LARKSPUR = (SPECS / "larkspur.yaml").read_text(encoding="utf-8")


@pytest.fixture
def spec(tmp_path: Path) -> Path:
    file = tmp_path / "larkspur.yaml"
    file.write_text(LARKSPUR, encoding="utf-8")
    return file


def save(spec: Path, text: str) -> None:
    """At one stroke, so that one save is one build."""
    beside = spec.with_suffix(".new")
    beside.write_text(text, encoding="utf-8")
    beside.replace(spec)


@pytest.fixture
def opened(browser: Browser, spec: Path) -> Iterator[tuple[Page, list[str], list[str]]]:
    with running(spec) as (_, port):
        context = browser.new_context(viewport={"width": 1100, "height": 800})
        page = context.new_page()
        said: list[str] = []
        asked: list[str] = []
        page.on("console", lambda line: said.append(line.text))
        page.on("pageerror", lambda error: said.append(str(error)))
        page.on("request", lambda request: asked.append(request.url))
        page.goto(f"http://127.0.0.1:{port}/")
        expect(page.locator("body")).to_have_attribute("data-guide", "1")
        yield page, said, asked
        context.close()
        assert said == []
        assert all(url.startswith(f"http://127.0.0.1:{port}/") for url in asked), asked


def test_a_save_puts_the_new_guide_on_the_screen(opened: tuple[Page, list[str], list[str]], spec: Path) -> None:
    page = opened[0]
    guide = page.frame_locator("iframe:not(.coming)")
    expect(guide.locator("h1")).to_have_text("Larkspur dancing underskirt")
    expect(page.get_by_role("status")).to_have_text("sound")
    spec.write_text(LARKSPUR.replace("en: Larkspur dancing", "en: Tansy dancing"), encoding="utf-8")
    expect(guide.locator("h1")).to_have_text("Tansy dancing underskirt")
    expect(page.locator("iframe")).to_have_count(1)


def test_a_fault_stands_over_the_last_good_guide_until_it_is_mended(
    opened: tuple[Page, list[str], list[str]], spec: Path
) -> None:
    page = opened[0]
    spec.write_text(LARKSPUR.replace("piece: lining}", "piece: linning}"), encoding="utf-8")
    expect(page.locator("#report")).to_contain_text("no piece is called `linning`")
    expect(page.get_by_role("status")).to_contain_text("below is the last good guide")
    expect(page.frame_locator("iframe").locator("h1")).to_have_text("Larkspur dancing underskirt")
    spec.write_text(LARKSPUR, encoding="utf-8")
    expect(page.locator("#report")).to_be_hidden()
    expect(page.get_by_role("status")).to_have_text("sound")


def test_the_place_in_the_guide_is_kept(opened: tuple[Page, list[str], list[str]], spec: Path) -> None:
    page = opened[0]
    place = "document.querySelector('iframe:not(.coming)').contentWindow"
    page.evaluate(f"{place}.scrollTo({{ top: 900, behavior: 'instant' }})")
    spec.write_text(LARKSPUR.replace("en: Larkspur dancing", "en: Tansy dancing"), encoding="utf-8")
    expect(page.locator("body")).not_to_have_attribute("data-guide", "1")
    assert abs(page.evaluate(f"{place}.scrollY") - 900) < 3


SHOWN = "document.querySelector('iframe:not(.coming)').contentDocument"

# All that is told in the guide, attributes in one order.
AS_TOLD = """() => {
    const told = (node) => node.nodeType !== Node.ELEMENT_NODE ? node.nodeValue : "<" + node.nodeName
        + [...node.attributes].map((each) => ` ${each.name}="${each.value}"`).sort().join("") + ">"
        + [...node.childNodes].map(told).join("") + "</>";
    const guide = document.querySelector('iframe:not(.coming)').contentDocument;
    return guide.title + told(guide.querySelector("header")) + told(guide.querySelector("main"));
}"""

EDITS = {
    "a title": [("en: Larkspur dancing", "en: Tansy <b>dancing</b>")],
    "a measure that most of the drawings show": [("length: 300 cm", "length: 310 cm")],
    "a choice that changes counts": [("default: 2\n    from: 1\n", "default: 3\n    from: 1\n")],
    "no notes, and another word for a piece": [
        (LARKSPUR[LARKSPUR.index("notes:") :], ""),
        ("en: upper tier", "en: yoke"),
    ],
    "a step less": [("  - press: {piece: lining}\n", "")],
    "a step more": [("  - press: {piece: lining}\n", "  - press: {piece: lining}\n  - press: {piece: upper}\n")],
    "a part more, and a step moved": [
        ("  - part: {en: Finish", "  - part: Iron\n  - press: {piece: upper}\n  - part: {en: Finish"),
        ("  - starch: {piece: flounce, with: starch}\n", ""),
        ("  - part: {en: Lining", "  - starch: {piece: flounce, with: starch}\n  - part: {en: Lining"),
    ],
    "another heading": [("en: Finish", "en: Last of all")],
}


@pytest.mark.parametrize("edits", [EDITS[name] for name in EDITS], ids=list(EDITS))
def test_a_guide_brought_up_to_date_is_the_guide_loaded_anew(
    opened: tuple[Page, list[str], list[str]], spec: Path, edits: list[tuple[str, str]]
) -> None:
    page = opened[0]
    first = page.evaluate(AS_TOLD)
    text = LARKSPUR
    for old, new in edits:
        assert old in text
        text = text.replace(old, new)
    save(spec, text)
    expect(page.locator("body")).to_have_attribute("data-guide", "2")
    brought = page.evaluate(AS_TOLD)
    page.reload()
    page.wait_for_selector("body[data-guide='2']")
    assert brought == page.evaluate(AS_TOLD)
    assert brought != first
    save(spec, LARKSPUR)
    expect(page.locator("body")).to_have_attribute("data-guide", "3")
    assert page.evaluate(AS_TOLD) == first


def test_what_is_not_new_stays_in_the_page_with_its_ticks(
    opened: tuple[Page, list[str], list[str]], spec: Path
) -> None:
    page = opened[0]
    guide = page.frame_locator("iframe:not(.coming)")
    guide.locator(".step input").nth(4).check(force=True)
    guide.locator("#dark").click()
    page.evaluate(f"{SHOWN}.mark = 'the same document'")
    spec.write_text(LARKSPUR.replace("length: 300 cm", "length: 310 cm"), encoding="utf-8")
    expect(page.locator("body")).not_to_have_attribute("data-guide", "1")
    assert page.evaluate(f"{SHOWN}.mark") == "the same document"
    expect(guide.locator("main")).to_contain_text("310 cm")
    expect(guide.locator(".step input:checked")).to_have_count(1)
    expect(guide.locator("#dark")).to_have_attribute("aria-pressed", "true")
    expect(guide.locator("#far-words")).to_contain_text("1 of ")


def test_a_step_more_is_counted_and_can_be_ticked(opened: tuple[Page, list[str], list[str]], spec: Path) -> None:
    page = opened[0]
    guide = page.frame_locator("iframe:not(.coming)")
    before = guide.locator(".step input").count()
    spec.write_text(LARKSPUR.replace("  - starch: {piece: flounce, with: starch}\n", ""), encoding="utf-8")
    expect(page.locator("body")).not_to_have_attribute("data-guide", "1")
    after = guide.locator(".step input").count()
    assert after < before
    guide.locator(".step input").last.check(force=True)
    expect(guide.locator("#far-words")).to_have_text(f"1 of {after} done")
    dark = guide.locator("#dark")
    was = dark.get_attribute("aria-pressed")
    dark.click()
    expect(dark).to_have_attribute("aria-pressed", "false" if was == "true" else "true")


def test_the_guides_script_hears_its_own_controls() -> None:
    """The preview begins it anew on fresh controls; what it heard of the whole page it would do twice."""
    script = template("guide.js").read_text(encoding="utf-8")
    heard = re.findall(r"^ *(?:(\w+)\.)?addEventListener\(\"(\w+)\"", script, re.MULTILINE)
    # To show a reason, or the state of a button, a second time does no harm.
    assert [each for each in heard if each[0] not in ("box", "dark", "large")] == [
        ("", "hashchange"),
        ("system", "change"),
    ]


def test_hostile_text_in_a_fault_stays_text(opened: tuple[Page, list[str], list[str]], spec: Path) -> None:
    page = opened[0]
    hostile = "</pre><img src=x onerror=document.title=1><script>document.title=1</script>"
    spec.write_text(LARKSPUR.replace("piece: lining}", f"piece: '{hostile}'}}"), encoding="utf-8")
    expect(page.locator("#report")).to_contain_text("<script>")
    assert page.locator("#report img, #report script").count() == 0
    assert page.title() == "larkspur.yaml, preview"


def test_axe_finds_nothing_to_mend_around_the_guide(
    opened: tuple[Page, list[str], list[str]], spec: Path, axe: str, browser: Browser
) -> None:
    page = opened[0]
    spec.write_text(LARKSPUR.replace("piece: lining}", "piece: linning}"), encoding="utf-8")
    expect(page.locator("#report")).to_be_visible()
    found = page.evaluate(f"() => {{ {axe}; return axe.run({{ iframes: false }}); }}")
    assert [(v["id"], v["nodes"][0]["html"]) for v in found["violations"]] == []
