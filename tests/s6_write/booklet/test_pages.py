"""The pages of a booklet: in every language and on both papers, nothing of how it was made, every letter with its table."""

from __future__ import annotations

import io
import json
import re
from dataclasses import replace

import pikepdf
import pytest
from furbelow.resources import languages
from furbelow.s6_write.pages.booklet_json import booklet_json
from furbelow.s6_write.pages.booklet_markdown import booklet_figures, booklet_markdown
from furbelow.s6_write.pages.booklet_page import booklet_html
from furbelow.s6_write.pages.booklet_pdf import booklet_pdf

from tests.s6_write.test_pdf import elements

from .made import DEMOS, booklet, guides

_MARKS = re.compile("[\U0010ff00-\U0010ffff]")


@pytest.mark.parametrize("demo", DEMOS)
def test_no_mark_of_how_it_was_made_is_left(demo: str) -> None:
    made = booklet(demo)
    for page in (booklet_html(made), booklet_markdown(made), booklet_json(made)):
        assert not _MARKS.search(page)


@pytest.mark.parametrize("language", languages())
def test_the_pages_are_made_in_every_language(language: str) -> None:
    made = booklet("foxglove", language)
    assert f'<html lang="{language}"' in booklet_html(made)
    assert "**\\[p\\]**" in booklet_markdown(made)


@pytest.mark.parametrize(("paper", "size"), [("A4", (595, 842)), ("letter", (612, 792))])
def test_the_paper_is_tagged_and_every_letter_of_a_sentence_has_its_row(paper: str, size: tuple[int, int]) -> None:
    made = replace(booklet("foxglove"), paper=paper)  # type: ignore[arg-type]
    document = pikepdf.open(io.BytesIO(booklet_pdf(made)))
    box = document.pages[0].mediabox
    assert (round(float(box[2])), round(float(box[3]))) == size
    # Source: ISO 14289-1:2014: marked, with a language, and every figure with its alternative.
    assert document.Root.MarkInfo.Marked
    assert str(document.Root.Lang) == "en"
    figures = [each for each in elements(document) if each.S == "/Figure"]
    assert figures
    assert all(str(each.Alt) for each in figures)
    tables = [each for each in elements(document) if each.S == "/Table"]
    with_letters = [operation for part in made.parts for operation in part.operations if operation.numbers]
    assert len(tables) >= len(with_letters)
    assert all(any(each.S == "/TH" for each in elements(table)) for table in tables)


def test_programs_can_tell_the_numbers_of_a_size() -> None:
    told = json.loads(booklet_json(booklet("larkspur")))
    (gather,) = (op for part in told["parts"] for op in part["operations"] if op["title"] == "Gather the net top")
    assert told["sizes"] == ["XS", "S", "M", "L", "XL"]
    # From the spec: a waist of 62 cm is gathered to twice that, and quarter by quarter, for the first size.
    assert gather["numbers"]["q"][0] == "124 cm"
    assert "{q}" in next(step["text"] for step in gather["steps"] if step["message"] == "gather-measure-ring")


def test_a_drawing_that_differs_is_there_for_each_size() -> None:
    made = booklet("larkspur")
    text, files = booklet_markdown(made), booklet_figures(made)
    linked = set(re.findall(r"\]\((figures/[^)]+)\)", text))
    assert linked == set(files)
    key = "step-19-elastic-lapped"
    drawings = made.drawings_of_sizes[key]
    assert [size for size, _ in drawings] == ["XS", "S", "M", "L", "XL"]
    for (_, drawing), guide in zip(drawings, guides("larkspur"), strict=True):
        (alone,) = (each for operation in guide.operations for each in operation.figures if each.key == key)
        assert files[f"figures/{drawing.key}.svg"].decode() == alone.svg


def test_what_is_not_for_all_says_for_whom() -> None:
    text = booklet_markdown(booklet("larkspur"))
    assert "**Sizes S to XL:** Lay out the segments of the upper tier" in text
    assert "## Cutting, size XS" in text
