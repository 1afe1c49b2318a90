"""The table of an operation: what each number with a letter is, and where it is used.

What a number is, is known by the name that its message has for the value (`numbers.ftl` has words for each), so no sentence is
read for it, and no technique has to describe its numbers for a booklet.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from furbelow.garment.message import Own
from furbelow.named import NamedTuple
from furbelow.s6_write.booklet.booklet import SizedFigure, SizedNumber, SizedOperation
from furbelow.s6_write.booklet.texts import letters_in
from furbelow.s6_write.guide.guide import GuideStep
from furbelow.s6_write.words.messages import Messages


class NumberRow(NamedTuple):
    """what: "the gathered edge"; where: the sentences that it stands in, "G2, 7". values: for each size."""

    letter: str
    what: str
    where: str
    values: tuple[str, ...]


def number_rows(operation: SizedOperation, numbers: Sequence[SizedNumber], words: Messages) -> tuple[NumberRow, ...]:
    """A row for each number of the operation that differs. numbers: those of the booklet."""
    words.read("booklet", "pages", "numbers")
    return tuple(
        NumberRow(
            numbers[at].letter,
            _what(operation, at, numbers[at], numbers, words),
            _where(operation, at, words),
            numbers[at].values,
        )
        for at in operation.numbers
    )


def _what(
    operation: SizedOperation, at: int, number: SizedNumber, numbers: Sequence[SizedNumber], words: Messages
) -> str:
    told = any(at in letters_in(text) for step in operation.steps for text in _told(step))
    off = [step for step in operation.steps if at in letters_in(step.tolerance)]
    if off and not told:
        said = [each for text in (off[0].check, off[0].text) for each in letters_in(text)]
        of = next((each for each in said if numbers[each].kind == number.kind), None)
        if of is not None:
            return words.text("booklet-off", {"what": Own(_what(operation, of, numbers[of], numbers, words))})
        if not number.name or number.name.endswith("off"):
            return words.text("page-tolerance")  # of a number that is the same for every size
    drawing = next(_drawn_with(operation, at), None)
    if not number.name and drawing and drawing.drawn.heading:
        return words.text("booklet-part-of-drawing", {"drawing": Own(drawing.drawn.heading)})
    name, _, which = number.name.partition(" ")
    return words.text("number-is", {"name": name, "kind": number.kind, "which": Own(which)})


def _where(operation: SizedOperation, at: int, words: Messages) -> str:
    """The sentences that a number stands in; for one that stands in none, the head or the drawing."""
    places = dict.fromkeys(
        step.number
        for step in operation.steps
        if any(at in letters_in(text) for text in (*_told(step), step.tolerance, step.remedy))
    )
    if places:
        return operation.letter + ", ".join(map(str, places))
    if any(at in letters_in(text) for text in _head(operation)):
        return words.text("booklet-in-head")
    for drawing in _drawn_with(operation, at):
        beside = f"{operation.letter}{min(drawing.drawn.shows, default=1)}"
        return words.text("booklet-in-drawing", {"sentence": Own(beside)})
    return words.text("page-whole")


def _told(step: GuideStep) -> tuple[str, ...]:
    return step.text, step.chain, step.check


def _head(operation: SizedOperation) -> tuple[str, ...]:
    cautions = (caution.text for caution in operation.cautions)
    return (operation.title, operation.aim, operation.stop, operation.all_of_it, *cautions)


def _drawn_with(operation: SizedOperation, at: int) -> Iterator[SizedFigure]:
    return (each for each in operation.drawings if any(at in letters_in(text) for text in each.said))
