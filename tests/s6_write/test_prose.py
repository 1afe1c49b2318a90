"""The maker's Markdown is read safely, and nothing unseen gets into a guide."""

from __future__ import annotations

from dataclasses import replace
from html.parser import HTMLParser

import pytest
from furbelow.s6_write.pages.block import Block, Run
from furbelow.s6_write.pages.block_reader import blocks_of
from furbelow.s6_write.pages.prose import blocks, marked_html, safe_html, set_ready, visible
from hypothesis import given
from hypothesis import strategies as st

from tests.fuzz.chain import at_most
from tests.s6_write.probes import PROBES
from tests.s6_write.sample_guide import GUIDE, with_text_everywhere


class _Tags(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.seen: list[tuple[str, list[tuple[str, str | None]]]] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.seen.append((tag, attrs))


def _tags(html: str) -> list[tuple[str, list[tuple[str, str | None]]]]:
    reader = _Tags()
    reader.feed(html)
    return reader.seen


_PLAIN_SIGNS = "aZéßд١9 \n,.;:!?'\"()/%’“„«»–—…-"
_SIGNS = "*_`#>+=~|\\[]<&@{}$^\t\r\u00a0\u0301\u2028"


# The libraries are loaded before: the first example is as quick as the others.
marked_html("*net*")


@given(st.one_of(st.text(_PLAIN_SIGNS, max_size=30), st.text(_PLAIN_SIGNS + _SIGNS, max_size=12)))
def test_a_plain_text_reads_as_the_libraries_read_it(text: str) -> None:
    assert safe_html(text) == marked_html(text)
    assert blocks(text) == blocks_of(marked_html(text))


@pytest.mark.parametrize(
    "text", ["Two \nlines.", "Two  \nlines.", "Net\n- a list", "1. a list", "Net\n\nsatin", "Net\n    on", "Net\n-"]
)
def test_a_text_of_plain_signs_that_is_more_than_a_paragraph_reads_so(text: str) -> None:
    assert safe_html(text) == marked_html(text)


def test_lists_and_stress_of_the_maker_are_kept() -> None:
    assert safe_html("a *b* **c**\n\n- d\n- e") == (
        "<p>a <em>b</em> <strong>c</strong></p>\n<ul>\n<li>d</li>\n<li>e</li>\n</ul>"
    )


def test_raw_html_is_shown_as_text() -> None:
    assert safe_html("<b>x</b>") == "<p>&lt;b&gt;x&lt;/b&gt;</p>"


def test_a_picture_is_not_fetched() -> None:
    assert "<img" not in safe_html("![net](https://probe.invalid/a.png)")


def test_a_heading_in_a_note_does_not_upset_the_order_of_the_page() -> None:
    assert safe_html("# Big\n\nUnder\n=====") == "<p># Big</p>\n<p>Under\n=====</p>"


@pytest.mark.parametrize("address", ["https://example.org/a", "mailto:wardrobe@example.org"])
def test_a_plain_link_is_kept_and_tells_nobody_where_it_was(address: str) -> None:
    assert _tags(safe_html(f"[go]({address})"))[1] == ("a", [("href", address), ("rel", "noopener noreferrer")])


@pytest.mark.parametrize("probe", PROBES)
def test_no_probe_brings_in_a_tag_or_an_address_that_acts(probe: str) -> None:
    for tag, attributes in _tags(safe_html(probe)):
        assert tag in {"p", "br", "em", "strong", "code", "pre", "a", "ul", "ol", "li", "blockquote", "hr"}
        for name, value in attributes:
            assert (tag, name) in {("a", "href"), ("a", "rel")}
            assert name == "rel" or (value or "").startswith(("https://", "http://", "mailto:"))


def test_notes_become_plain_values_line_by_line() -> None:
    assert blocks("One *two*\n\n1. three\n2. [four](https://example.org)\n\n> five\n\n    six\n    seven") == (
        Block("paragraph", (Run("One "), Run("two", emphasis=True))),
        Block("number", (Run("three"),), depth=1, number=1),
        Block("number", (Run("four", link="https://example.org"),), depth=1, number=2),
        Block("quote", (Run("five"),)),
        Block("code", (Run("six\nseven", code=True),)),
    )


def test_nested_lists_keep_their_depth() -> None:
    assert [(block.kind, block.depth) for block in blocks("- a\n    - b\n- c")] == [
        ("bullet", 1),
        ("bullet", 2),
        ("bullet", 1),
    ]


def test_unseen_letters_are_left_out_and_drawings_stay_as_drawn() -> None:
    probed = visible(with_text_everywhere("\x00\x07\u202egnp\u200b\u2066\ud800"))
    assert probed.title == GUIDE.title + " gnp"
    assert probed.parts[0].operations[0].figures[0].svg == GUIDE.parts[0].operations[0].figures[0].svg
    assert visible(GUIDE) == GUIDE


@pytest.mark.parametrize(
    ("text", "kept"),
    [
        ("cut 34 cm off", "cut 34\u00a0cm off"),
        ("12 1/2 in of it", "12\u00a01/2\u00a0in of it"),
        ("9.72 EUR", "9.72\u00a0EUR"),
        ("all 2 in one chain", "all 2\u00a0in one chain"),
        ("2 metres, 3 pieces", "2 metres, 3 pieces"),
    ],
)
def test_a_number_and_its_unit_stay_on_one_line(text: str, kept: str) -> None:
    assert set_ready(replace(GUIDE, wearer=text)).wearer == kept


@pytest.mark.parametrize(
    "text",
    [
        "[" * 20_000,
        "![[" * 6_000,
        "[a](b" * 4_000,
        "[" * 5_000 + "]" * 5_000,
        "*a **b " * 3_000,
        "`" + "``a` " * 4_000,
        "<a " * 6_000,
        "".join("  " * depth + "- a\n" for depth in range(130)),
        "- " * 10_000 + "a",
        ">" * 19_000 + "a",
    ],
)
def test_prose_of_any_shape_is_read_in_a_time_that_grows_as_it_does(text: str) -> None:
    with at_most(5, working=True):
        assert len(safe_html(text)) < 20 * len(text)
        blocks(text)
