"""The table of an operation: what each number with a letter is, and where it is used.

What a number is, is told by the words round it, so that no technique has to name its numbers for a booklet: the clause of the
sentence, with a gap for the number.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from furbelow.garment.message import Own
from furbelow.s6_write.booklet.booklet import SizedFigure, SizedNumber, SizedOperation
from furbelow.s6_write.booklet.texts import letters_in, versions_of, with_letters
from furbelow.s6_write.words.messages import Messages

GAP = "…"
_LONGEST = 96  # signs: two lines of the table on paper
_SENTENCES = re.compile(r"(?<=[.;])\s+")
_COMMA = re.compile(r"(?<=,)\s+")
_WORD = re.compile(r"[^\W\d_]{2,}")


class NumberRow(NamedTuple):
    """what: "Measure the gathered edge: …"; where: the sentences that it stands in, "G2, 7". values: for each size."""

    letter: str
    what: str
    where: str
    values: tuple[str, ...]


def number_rows(operation: SizedOperation, numbers: Sequence[SizedNumber], words: Messages) -> tuple[NumberRow, ...]:
    """A row for each number of the operation that differs. numbers: those of the booklet."""
    words.read("booklet", "pages")
    told = {at: tuple(dict.fromkeys(_clauses(operation, at, numbers, words))) for at in operation.numbers}
    # What two numbers could be called by calls neither of them.
    often = Counter(clause.text for clauses in told.values() for clause in clauses)
    return tuple(
        NumberRow(
            numbers[at].letter,
            min(clauses, key=lambda clause: (often[clause.text] > 1, clause.cut)).text,
            _where(operation, at, words),
            numbers[at].values,
        )
        for at, clauses in told.items()
    )


class Clause(NamedTuple):
    """cut: whether words before the number were left out."""

    text: str
    cut: bool = False


def clause_of(text: str, number: int, numbers: Sequence[SizedNumber]) -> Clause | None:
    """The part of a text that tells of a number, with a gap for it, and other numbers by their letters; none where the text
    has no words for it.
    """
    sentence = next((each for each in _SENTENCES.split(text) if number in letters_in(each)), "")
    pieces = _COMMA.split(sentence)
    own = next((at for at, piece in enumerate(pieces) if number in letters_in(piece)), 0)
    cut = False

    def said() -> str:
        return _with_gap(" ".join(pieces), number, numbers)

    while len(said()) > _LONGEST and len(pieces) > own + 1:
        pieces.pop()
    while len(said()) > _LONGEST and own > 1:
        own, cut = own - 1, True
        pieces.remove(min(pieces[: own + 1], key=len))
    return Clause(said(), cut) if _WORD.search(said()) else None


def _with_gap(text: str, number: int, numbers: Sequence[SizedNumber]) -> str:
    return with_letters(text, lambda at: GAP if at == number else f"[{numbers[at].letter}]").rstrip(",.;")


def _clauses(
    operation: SizedOperation, number: int, numbers: Sequence[SizedNumber], words: Messages
) -> Iterator[Clause]:
    """What the number can be called by, the best first; at least one."""
    told = False
    for before, text in _texts(operation, words):
        for version in versions_of(text):
            if number in letters_in(version.text) and (clause := clause_of(version.text, number, numbers)):
                told = True
                yield clause._replace(text=before + clause.text)
    if told:
        return
    for drawing in _drawn_with(operation, number):
        yield from map(Clause, _drawn_as(drawing, number, numbers))
        named = Own(drawing.heading or drawing.drawn.caption)
        yield Clause(words.text("booklet-part-of-drawing", {"drawing": named}), cut=True)
    yield Clause(f"{words.text('page-the-number')}{words.text('page-colon')} {GAP}", cut=True)


def _drawn_as(drawing: SizedFigure, number: int, numbers: Sequence[SizedNumber]) -> Iterator[str]:
    """The part of the text alternative that tells of it, where that is short, and its line of words in the drawing."""
    for text in reversed(drawing.said):
        if number in letters_in(text):
            sentence = next(each for each in _SENTENCES.split(text) if number in letters_in(each))
            for part in (sentence, sentence.rpartition(": ")[2]):
                said = _with_gap(part, number, numbers)
                if GAP in said and len(said) <= _LONGEST and _WORD.search(said):
                    yield said
                    break


def _texts(operation: SizedOperation, words: Messages) -> Iterator[tuple[str, str]]:
    """Each text with what stands before it on a page."""
    off = f"{words.text('page-tolerance')}{words.text('page-colon')} "
    for step in operation.steps:
        yield "", step.text
        yield "", step.chain
        yield "", step.check
        yield off, step.tolerance
        yield "", step.remedy
    for text in (operation.title, operation.aim, operation.stop, operation.all_of_it, operation.number):
        yield "", text
    for caution in operation.cautions:
        yield "", caution.text


def _where(operation: SizedOperation, number: int, words: Messages) -> str:
    """The sentences that a number stands in; for one that stands in none, the head or the drawing."""
    places = dict.fromkeys(
        step.number
        for step in operation.steps
        if any(number in letters_in(text) for text in (step.text, step.check, step.tolerance, step.remedy, step.chain))
    )
    if places:
        return operation.letter + ", ".join(map(str, places))
    if any(number in letters_in(text) for text in _head(operation)):
        return words.text("booklet-in-head")
    for drawing in _drawn_with(operation, number):
        beside = f"{operation.letter}{min(drawing.drawn.shows, default=1)}"
        return words.text("booklet-in-drawing", {"sentence": Own(beside)})
    return words.text("page-whole")


def _head(operation: SizedOperation) -> tuple[str, ...]:
    cautions = (caution.text for caution in operation.cautions)
    return (operation.title, operation.aim, operation.stop, operation.all_of_it, *cautions)


def _drawn_with(operation: SizedOperation, number: int) -> Iterator[SizedFigure]:
    return (each for each in operation.drawings if any(number in letters_in(text) for text in each.said))
