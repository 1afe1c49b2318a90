"""Each row of a table of numbers says what its number is, by the name that its message has for the value."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import combinations

import pytest
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.tags import explained_letter, place_sign
from furbelow.resources import languages, template
from furbelow.s6_write.booklet.booklet import SizedNumber, SizedOperation, SizedStep
from furbelow.s6_write.booklet.number_rows import number_rows
from furbelow.s6_write.booklet.texts import Letters, letters_in
from furbelow.s6_write.words.holes import SENTENCE, Hole, hole, parted
from furbelow.s6_write.words.messages import Messages
from furbelow.s6_write.words.said_step import said_step
from furbelow.s6_write.words.words import Words

from tests.techniques.every_technique_told import worked

from .made import DEMOS, booklet

_VARIANT = re.compile(r"^    \[([a-z-]+)\] ", re.MULTILINE)


def _named(language: str) -> set[str]:
    """The names that `number-is` has words for."""
    text = template(f"words/{language}/numbers.ftl").read_text(encoding="utf-8")
    return set(_VARIANT.findall(text.partition("number-is = ")[2].partition("\n }\n")[0]))


def _names() -> Iterator[str]:
    """The names of all numbers that techniques give, those of tolerances aside, which are called so."""
    for each in worked():
        words = Words("en", Phrasing(each.solved, each.room), marked=True)
        for done in each.performed:
            step = said_step(done, words)
            texts = [step.title, step.aim, step.number, *(text for _, text in step.cautions)]
            texts += [text for action in step.actions for text in (action.text, action.check, action.chain)]
            for text in texts:
                yield from (part.name for part in parted(text) if isinstance(part, Hole) and part.kind != SENTENCE)


def test_every_number_that_a_technique_gives_has_words() -> None:
    assert set(_names()) - _named("en") - {""} == set()


@pytest.mark.parametrize("language", languages())
def test_the_languages_have_words_for_the_same_numbers(language: str) -> None:
    assert _named(language) == _named("en")


@pytest.mark.parametrize(("demo", "language"), [(demo, language) for demo in DEMOS for language in ("en", "de")])
def test_every_number_is_told_by_its_own_words(demo: str, language: str) -> None:
    made, words = booklet(demo, language), Messages(language)
    known = _named(language)
    for operation in made.operations:
        rows = number_rows(operation, made.numbers, words)
        assert [row.letter for row in rows] == [made.numbers[at].letter for at in operation.numbers]
        for row, at in zip(rows, operation.numbers, strict=True):
            name = made.numbers[at].name.partition(" ")[0]
            # How far a number may be off is called after that number, where it differs too.
            assert name in known or name.endswith("off"), (operation.letter, row)
            assert row.what
            assert row.where


def _told(*texts: str, tolerance: tuple[str, str] = ("", "")) -> tuple[SizedOperation, list[SizedNumber]]:
    letters = Letters(2)
    text = letters.told(dict(enumerate(texts)))
    off = letters.told(dict(enumerate(tolerance)))
    step = SizedStep(1, text, tolerance=off)
    operation = SizedOperation(
        "step-1", "B", "Gather", "", "", (), (), (step,), tip="", stop="", numbers=letters.here()
    )
    return operation, letters.numbers


def test_a_number_is_called_by_its_value_and_a_tolerance_is_one() -> None:
    told = _told(
        f"Pull to {hole('l', '50 cm', 'short')}.",
        f"Pull to {hole('l', '60 cm', 'short')}.",
        tolerance=(hole("l", "5 mm", "off"), hole("l", "6 mm", "off")),
    )
    rows = number_rows(*told, Messages("en"))
    assert [(row.what, row.where) for row in rows] == [
        ("the gathered edge", "B1"),
        ("the gathered edge: may be off by", "B1"),
    ]


def test_a_number_without_a_name_is_called_by_its_kind() -> None:
    told = _told(f"Lay {hole('n', '3')} down.", f"Lay {hole('n', '4')} down.")
    assert number_rows(*told, Messages("de"))[0].what == "Anzahl"


def test_no_place_of_a_drawing_has_the_sign_of_a_number() -> None:
    """Roman numerals as everybody writes them, up to 39; a table has letters of which none is made up."""
    assert [place_sign(number) for number in (1, 4, 9, 10, 14, 29)] == ["i", "iv", "ix", "x", "xiv", "xxix"]
    assert not {place_sign(number) for number in range(1, 40)} & {explained_letter(number) for number in range(1, 40)}


def test_one_number_has_one_letter_where_a_size_lacks_it() -> None:
    letters = Letters(3)
    whole = letters.told({at: f"Cut {hole('l', f'{at} cm', 'cloth')}." for at in range(3)})
    some = letters.told({at: f"Lay {hole('l', f'{at} cm')}." for at in range(1, 3)})
    other = letters.told({1: f"Lay {hole('l', '1 cm')}.", 2: f"Lay {hole('l', '5 cm')}."})
    assert letters_in(whole) == letters_in(some) != letters_in(other)
    assert [number.values for number in letters.numbers] == [("0 cm", "1 cm", "2 cm"), ("", "1 cm", "5 cm")]


@pytest.mark.parametrize("demo", DEMOS)
def test_no_two_rows_of_a_table_have_the_same_words_for_the_same_place_of_a_drawing(demo: str) -> None:
    made, words = booklet(demo), Messages("en")
    for operation in made.operations:
        rows = number_rows(operation, made.numbers, words)
        for one, other in combinations([row for row in rows if row.what.startswith(("to mark", "segment"))], 2):
            shared = [at for at in range(len(made.sizes)) if one.values[at] and other.values[at]]
            assert one.what != other.what or not shared, (operation.letter, one, other)
