"""The HTML page holds the whole guide, escapes every text, and lets nothing in or out."""

from __future__ import annotations

import base64
import hashlib
import re
from dataclasses import replace
from html.parser import HTMLParser

import pytest
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.pages.page import html, step_count
from furbelow.s6_write.pages.prose import visible

from tests.s6_write.probes import PROBES
from tests.s6_write.sample_guide import GUIDE, with_text_everywhere, without_tips


class _Outline(HTMLParser):
    """Tags with their attributes, and the text outside of style and script."""

    def __init__(self) -> None:
        super().__init__()
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self.text = ""
        self._in: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))
        self._in.append(tag)

    def handle_data(self, data: str) -> None:
        if self._in[-1:] not in (["style"], ["script"]):
            self.text += data

    def handle_endtag(self, tag: str) -> None:
        self._in.append("/" + tag)


def _read(page: str) -> _Outline:
    outline = _Outline()
    outline.feed(page)
    return outline


PLAIN = _read(html(GUIDE))


def test_the_page_is_the_same_each_time() -> None:
    assert html(GUIDE) == html(GUIDE)


def test_the_language_and_the_content_key_stand_on_the_page() -> None:
    tag, attributes = PLAIN.tags[0]
    assert (tag, attributes["lang"], attributes["data-key"]) == ("html", "en", "a1b2c3d4e5f6")


def test_every_sentence_has_a_tick_box_for_each_piece_and_is_called_by_its_letter_and_number() -> None:
    boxes = [attributes["value"] for tag, attributes in PLAIN.tags if attributes.get("type") == "checkbox"]
    assert boxes == ["A1", "A2", "B1.1", "B1.2", "B2.1", "B2.2", "C1", "C2", "D1", "D2"]
    assert len(boxes) == step_count(GUIDE)
    sentences = [attributes["id"] for tag, attributes in PLAIN.tags if attributes.get("class") == "step"]
    assert sentences == ["A1", "A2", "B1", "B2", "C1", "C2", "D1", "D2"]


def _marks(guide: Guide) -> dict[str | None, str | None]:
    return {a["id"]: a["data-said"] for _, a in _read(html(guide)).tags if a.get("class") == "step"}


def test_a_sentence_that_says_otherwise_has_another_mark_and_the_others_keep_theirs() -> None:
    (part, *rest) = GUIDE.parts
    (first, *others) = part.operations
    changed = replace(first, steps=(replace(first.steps[0], text="Lay them on each other."), *first.steps[1:]))
    guide = replace(GUIDE, parts=(replace(part, operations=(changed, *others)), *rest), content_key="0f0f")
    plain, now = _marks(GUIDE), _marks(guide)
    assert {place for place in plain if plain[place] != now[place]} == {"B1"}


def test_ticks_are_kept_for_a_garment_and_its_wearer_whatever_else_changes() -> None:
    def work(guide: Guide) -> str | None:
        return _read(html(guide)).tags[0][1]["data-work"]

    assert work(GUIDE) == work(replace(GUIDE, content_key="0f0f", materials=()))
    assert len({work(GUIDE), work(replace(GUIDE, wearer="size L")), work(replace(GUIDE, title="Marigold"))}) == 3


def test_headings_leave_no_level_out() -> None:
    levels = [int(tag[1]) for tag, _ in PLAIN.tags if re.fullmatch("h[1-6]", tag)]
    assert levels[0] == 1
    assert levels.count(1) == 1
    assert all(after <= before + 1 for before, after in zip(levels, levels[1:], strict=False))


def test_every_address_on_the_page_points_into_the_page() -> None:
    ids = {attributes["id"] for _, attributes in PLAIN.tags if "id" in attributes}
    for _, attributes in PLAIN.tags:
        assert "src" not in attributes
        if "href" in attributes:
            assert (attributes["href"] or "").removeprefix("#") in ids


def test_the_security_policy_names_the_hashes_of_what_is_there() -> None:
    page = html(GUIDE)
    policy = next(a["content"] or "" for t, a in PLAIN.tags if a.get("http-equiv") == "Content-Security-Policy")
    assert policy.startswith("default-src 'none'; ")
    assert "unsafe" not in policy
    for element, directive in (("style", "style-src"), ("script", "script-src")):
        (inside,) = re.findall(rf"<{element}>(.*?)</{element}>", page, re.DOTALL)
        digest = base64.b64encode(hashlib.sha256(inside.encode()).digest()).decode()
        assert f"{directive} 'sha256-{digest}'" in policy


def test_every_figure_has_its_text_alternative() -> None:
    drawings = [
        (attributes["aria-label"] or "").replace("\u00a0", " ")
        for _, attributes in PLAIN.tags
        if attributes.get("role") == "img"
    ]
    assert drawings == [
        "The net folded once along its length, with four lanes marked A1, A2, B1 and B2 from the fold.",
        "A strip marked A, 602 cm long.",
        "A strip marked B, 602 cm long.",
        "A strip marked B drawn in, 602 cm long.",
        "The finished underskirt: a waistband, an upper tier of 15 cm and a flounce of 23.5 cm.",
    ]


def test_reasons_are_closed_until_they_are_asked_for() -> None:
    opened = [attributes for tag, attributes in PLAIN.tags if tag == "details"]
    assert len(opened) == 4
    assert all("open" not in attributes for attributes in opened)


def test_a_number_opens_its_reason_and_a_number_told_elsewhere_is_a_link() -> None:
    page = html(GUIDE).replace("\u00a0", " ")
    opened = re.findall("<summary>(.*?)</summary>(.*?)</details>", page, re.DOTALL)
    assert [re.sub("<[^>]*>", "", summary) for summary, _ in opened] == [
        "Why 602 cm and 25 cm for the flounce",
        "Why 300 cm",
        "Why 41.5 cm",
        "Why 600 cm",
    ]
    flounce, step, finished, elsewhere = (inside for _, inside in opened)
    assert 'id="why-skirt_length"' in finished
    assert "cut size rounded up to 5 mm: 42.6 cm becomes 43 cm" in finished
    assert 'href="#why-flounce.length"' in elsewhere
    assert 'id="why-flounce.length"' in flounce
    assert '<a href="#operation-join-upper">the seam of “Close the upper tier to a ring”</a>' in flounce
    assert 'href="#why-upper.length"' in step
    # The upper tier's length was written, so there is nothing to open: the row itself is the place.
    assert '<tr id="why-upper.length">' in page


def test_no_reason_is_told_twice() -> None:
    page = html(GUIDE)
    ids = re.findall(r'id="([^"]*)"', page)
    assert len(ids) == len(set(ids))


@pytest.mark.parametrize("probe", PROBES)
def test_a_probe_in_every_text_changes_only_the_text(probe: str) -> None:
    plain_notes = replace(GUIDE, about="a", notes="a")
    probed = replace(with_text_everywhere(probe), about="a", notes="a")
    expected, got = _read(html(without_tips(plain_notes))), _read(html(visible(without_tips(probed))))
    # Empty texts of the sample are filled by the probe, so optional elements appear; no other kind of tag may.
    assert {tag for tag, _ in got.tags} <= {tag for tag, _ in expected.tags}
    assert [t for t, _ in got.tags].count("script") == 1
    assert {name for _, attributes in got.tags for name in attributes} <= {
        name for _, attributes in expected.tags for name in attributes
    }
    shown = visible(probed).title.removeprefix(GUIDE.title)
    assert got.text.count(shown.strip()) > 40


def test_a_guide_with_nothing_but_a_title_still_makes_a_page() -> None:
    bare = replace(
        GUIDE,
        about="",
        facts=(),
        cautions=(),
        tools=(),
        materials=(),
        cutting=(),
        cut=(),
        parts=(),
        proofs=(),
        notes="",
        overview=None,
    )
    assert GUIDE.title in _read(html(bare)).text
