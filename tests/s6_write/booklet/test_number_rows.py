"""Each row of a table of numbers says what its number is, in the words of the sentence or the drawing that has it."""

from __future__ import annotations

import pytest
from furbelow.resources import languages
from furbelow.s6_write.booklet.booklet import SizedNumber
from furbelow.s6_write.booklet.number_rows import GAP, clause_of, number_rows
from furbelow.s6_write.words.messages import Messages

from .made import DEMOS, booklet

_NUMBERS = (SizedNumber("a", ("1 cm", "2 cm")), SizedNumber("b", ("3 cm", "4 cm")))
_A, _B = (f"\U0010ff02{at}\U0010ff04" for at in range(2))


@pytest.mark.parametrize(("demo", "language"), [(demo, language) for demo in DEMOS for language in ("en", "de")])
def test_every_number_is_told_by_words_round_its_gap_or_by_its_drawing(demo: str, language: str) -> None:
    made, words = booklet(demo, language), Messages(language)
    for operation in made.operations:
        rows = number_rows(operation, made.numbers, words)
        assert [row.letter for row in rows] == [made.numbers[at].letter for at in operation.numbers]
        headings = tuple(each.heading for each in operation.drawings if each.heading)
        for row in rows:
            assert GAP in row.what or any(heading in row.what for heading in headings)
            assert row.where


@pytest.mark.parametrize("language", languages())
def test_numbers_that_one_sentence_could_tell_are_told_apart(language: str) -> None:
    made, words = booklet("marigold", language), Messages(language)
    (joins,) = (operation for operation in made.operations if operation.letter == "B")
    lengths = [row.what for row in number_rows(joins, made.numbers, words) if row.where in {"B3", "B6", "B9"}]
    strips = {what for what, often in ((what, lengths.count(what)) for what in lengths) if often == 1}
    assert len(strips) == 3


@pytest.mark.parametrize(
    ("text", "told"),
    [
        (f"Pin it. Measure the edge: {_A}. Sew.", ("Measure the edge: …", False)),
        (f"Lay it flat, {_B} wide and {_A} high.", ("Lay it flat, [b] wide and … high", False)),
        (f"{_A}", None),
        (
            f"Mark the {'very ' * 16}long edge, pinned, a {_A}, b {_B}.",
            (f"Mark the {'very ' * 16}long edge, a …", True),
        ),
    ],
)
def test_the_clause_of_a_number(text: str, told: tuple[str, bool] | None) -> None:
    assert clause_of(text, 0, _NUMBERS) == told
