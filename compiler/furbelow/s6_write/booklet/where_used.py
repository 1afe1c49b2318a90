"""Where a number of an operation is used."""

from __future__ import annotations

from furbelow.s6_write.booklet.booklet import SizedOperation
from furbelow.s6_write.booklet.texts import letters_in
from furbelow.s6_write.words.messages import Messages


def where_used(operation: SizedOperation, number: int, words: Messages) -> str:
    """The sentences that a number stands in: "G2, 7"; for one that stands in none, whether the head or a drawing has it."""
    words.read("booklet")
    places = dict.fromkeys(
        step.number
        for step in operation.steps
        if any(number in letters_in(text) for text in (step.text, step.check, step.tolerance, step.remedy, step.chain))
    )
    if places:
        return operation.letter + ", ".join(map(str, places))
    head = (operation.title, operation.aim, operation.number, operation.stop, operation.all_of_it)
    cautions = (caution.text for caution in operation.cautions)
    in_head = any(number in letters_in(text) for text in (*head, *cautions))
    return words.text("booklet-in-head" if in_head else "booklet-in-drawing")
