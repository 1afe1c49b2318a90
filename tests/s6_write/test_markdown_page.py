"""guide.md reads well, links its figures, and no text of the guide acts as Markdown or HTML."""

from __future__ import annotations

from dataclasses import replace
from html.parser import HTMLParser

import markdown as reference
import pytest
from furbelow.s6_write.pages.markdown_page import escaped, figure_files, markdown
from furbelow.s6_write.pages.prose import visible
from markdown_it import MarkdownIt

from tests.s6_write.probes import PROBES
from tests.s6_write.sample_guide import GUIDE, with_text_everywhere, without_tips


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.addresses: list[str] = []
        self.text = ""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.addresses += [value or "" for name, value in attrs if name in ("href", "src")]

    def handle_data(self, data: str) -> None:
        self.text += data


def _read(text: str) -> _Reader:
    """As the reference implementation of Markdown in Python reads it, with tables and with raw HTML let through."""
    return _fed(reference.markdown(text, extensions=["tables"]))


def _read_as_commonmark(text: str) -> _Reader:
    """As another library reads it, by the CommonMark specification, with tables and with raw HTML let through."""
    return _fed(MarkdownIt("commonmark", {"html": True}).enable("table").render(text))


def _fed(page: str) -> _Reader:
    reader = _Reader()
    reader.feed(page)
    return reader


def test_the_page_is_read_as_headings_tables_and_numbered_steps() -> None:
    tags = _read(markdown(GUIDE)).tags
    assert (tags.count("h1"), tags.count("h3"), tags.count("table")) == (1, 4, 4)
    assert tags.count("img") == 5


def test_every_figure_that_is_linked_is_given_as_a_file() -> None:
    pictures = [address for address in _read(markdown(GUIDE)).addresses if address.endswith(".svg")]
    assert pictures == list(figure_files(GUIDE))
    assert figure_files(GUIDE)["figures/whole.svg"].startswith(b"<svg")


def test_steps_keep_their_numbers() -> None:
    lines = markdown(GUIDE).splitlines()
    assert "1. Cut 65 cm of elastic." in lines
    assert "### D Thread the elastic" in lines
    assert "    - **Check:** the ring measures 300 cm" in lines


def test_the_reasons_stand_near_the_end_and_the_table_leads_there() -> None:
    written = markdown(GUIDE)
    assert "[Where the numbers come from](#where-the-numbers-come-from)" in written.partition("| Measurement")[0]
    _, _, told = written.partition("## Where the numbers come from\n")
    assert told.rpartition("\n\n")[0].splitlines() == [
        "",
        "- **skirt length (Finished length)**, 41.5 cm: waist height ÷ 2.6 = 104 cm ÷ 2.6; cut size rounded up to 5 mm:"
        " 42.6 cm becomes 43 cm; finished 41.1 cm becomes 41.5 cm",
        "    - **waist height**, 104 cm: a body measure",
        "- **finished length of the upper tier (Upper tier, round)**, 300 cm: written on line 69 of larkspur.yaml",
        "- **finished length of the flounce (Flounce, round)**, 600 cm:"
        " finished length of the upper tier × fullness = 300 cm × 2 = 600 cm",
        "    - **fullness**, 2: a choice, line 25 of larkspur.yaml",
        "- **cut length of the flounce**, 602 cm: finished length + allowance at the start + allowance at the end"
        " = 600 cm + 1 cm + 1 cm = 602 cm",
        "    - **allowance at the start of the flounce**, 1 cm: the seam of “Close the upper tier to a ring”",
        "    - **allowance at the end of the flounce**, 1 cm: the seam of “Close the upper tier to a ring”",
    ]


def test_a_guide_without_reasons_speaks_of_none() -> None:
    assert "numbers come from" not in markdown(replace(GUIDE, reasons=(), cutting=(), parts=()))


@pytest.mark.parametrize(
    ("text", "written"),
    [
        ("41.5 cm", "41.5 cm"),
        ("1. cut", "1\\. cut"),
        ("- cut", "\\- cut"),
        ("a | b", "a &#124; b"),
        ("two\nlines", "two lines"),
        ("<b>", "&lt;b&gt;"),
        ("5 * 3", "5 \\* 3"),
        ("Contrôle\u00a0: 5\u202f%", "Contrôle\u00a0: 5\u202f%"),
    ],
)
def test_a_text_stands_for_its_own_letters(text: str, written: str) -> None:
    assert escaped(text) == written


@pytest.mark.parametrize("probe", PROBES)
def test_a_probe_in_every_plain_text_is_read_back_as_its_own_letters(probe: str) -> None:
    probed = replace(without_tips(with_text_everywhere(probe)), about="", notes="")
    read = _read(markdown(probed))
    plain = _read(markdown(GUIDE))
    assert set(read.tags) <= set(plain.tags)
    assert set(read.addresses) == set(plain.addresses)
    assert read.tags.count("h1") == 1
    shown = " ".join(visible(probed).title.removeprefix(GUIDE.title).split())
    assert " ".join(read.text.split()).count(shown) > 40


@pytest.mark.parametrize("probe", PROBES)
def test_a_probe_in_the_makers_markdown_brings_in_no_html_and_no_script(probe: str) -> None:
    read = _read(markdown(replace(GUIDE, about=probe, notes=probe)))
    allowed = {*_read(markdown(GUIDE)).tags, "a", "blockquote", "code", "pre", "hr"}
    assert set(read.tags) <= allowed
    for address in read.addresses:
        assert address.startswith(("https://", "http://", "mailto:", "figures/", "#where-the-numbers-come-from"))


_LIVE = "<img src=x onerror=hacked()>"


@pytest.mark.parametrize("read", [_read, _read_as_commonmark])
@pytest.mark.parametrize(
    "prose",
    [
        f"- a\n\n        {_LIVE}\n",
        f"- a\n\n  ```\n  {_LIVE}\n  ```\n",
        f"    {_LIVE}",
        f"1. a\n    - b\n\n            {_LIVE}\n\n- c",
        f"> - a\n>\n>       {_LIVE}",
        f"```\n{_LIVE}\n\n{_LIVE}\n```",
        f"- a\n{_LIVE}",
        f"`{_LIVE}`",
    ],
)
def test_html_in_the_makers_code_is_never_live_whatever_stands_around_it(prose: str, read) -> None:  # type: ignore[no-untyped-def]
    parts = tuple(
        replace(part, operations=tuple(replace(operation, tip=prose) for operation in part.operations))
        for part in GUIDE.parts
    )
    found = read(markdown(replace(GUIDE, about=prose, notes=prose, parts=parts)))
    assert set(found.addresses) == set(read(markdown(GUIDE)).addresses)
    assert "".join(found.text.split()).count("<imgsrc=xonerror=hacked()>") >= 3


@pytest.mark.parametrize("probe", PROBES)
def test_a_probe_in_code_in_a_list_brings_in_no_tag(probe: str) -> None:
    code = "- a\n\n" + "".join(f"        {line}\n" for line in probe.splitlines())
    page = markdown(replace(GUIDE, notes=code))
    for read in (_read, _read_as_commonmark):
        assert set(read(page).tags) <= {*read(markdown(GUIDE)).tags, "br", "ul", "li", "p"}
