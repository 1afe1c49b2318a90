"""A plan for who shows the work, in a room or to a camera: part by part, with the pieces to have ready for each.

The rehearsal knows every state of every piece, so what has to lie ready is read off it: the piece as it is after the last
work on it. What the part before has just shown is gone on with.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from furbelow.garment.message import One, Part, Pieces, Supply, Things, Value
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed, SetUp, Tool
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.hours import in_fives
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.guide.guide import Caution, Guide, Operation
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.guide.tools import tool_of
from furbelow.s6_write.words.said_step import said_step
from furbelow.s6_write.words.words import Words

# From where it is seen best: hands and a needle from near by, cloth on a table or a board as a whole. Common practice,
# no source.
_WIDE = (SetUp.IRON, SetUp.TABLE, SetUp.NOTHING)
_VIEWS = ("near", "wide")


@dataclass(frozen=True)
class Shown:
    """One part of the demonstration."""

    letter: str
    title: str
    aim: str
    minutes: str
    view: str
    ready: tuple[str, ...]  # pieces in the state that they have to be in
    at_hand: str
    cautions: tuple[Caution, ...]
    captions: tuple[str, ...]


@dataclass(frozen=True)
class Demonstration:
    prepare: tuple[str, ...]  # all pieces to be made beforehand
    minutes: str
    shown: tuple[Shown, ...]


def demonstration(
    rehearsal: Rehearsal, cutting: Cutting, shopping: ShoppingList, guide: Guide
) -> tuple[Demonstration, Words]:
    """The plan, and the words that it is told in. guide: of the same garment, with every caution before its work."""
    run = rehearsal.run
    words = Words(guide.language, Phrasing(rehearsal.solved, run.room, cutting.joins, cutting.lengths), cutting.marks)
    words.read("demonstration", "tools")
    by_key = {operation.key: operation for operation in guide.operations}
    worked = [
        (done, minutes, by_key[done.key])
        for done, minutes in zip(run.performed, shopping.minutes, strict=True)
        if done.key in by_key
    ]
    last: dict[str, str] = {}  # the letter of the last work on each piece
    shown: list[Shown] = []
    prepare: dict[str, None] = {}
    before, all_minutes = "", 0
    for done, minutes, operation in worked:
        ready = list(_ready(done, last, before, words))
        prepare |= dict.fromkeys(each for each, is_new in ready if is_new)
        told = in_fives(minutes / max(step.copies for step in operation.steps))
        all_minutes += told
        shown.append(_shown(done, operation, told, tuple(each for each, _ in ready), words))
        last |= dict.fromkeys(done.touches, operation.letter)
        before = operation.letter
    whole = words.text("demonstration-minutes", {"time": duration(all_minutes), "parts": len(shown)})
    return Demonstration(tuple(prepare), whole, tuple(shown)), words


def _ready(done: Performed, last: dict[str, str], before: str, words: Words) -> Iterator[tuple[str, bool]]:
    """Each piece that the work is on, and whether it has to be made beforehand."""
    for name in dict.fromkeys(done.touches):
        letter = last.get(name, "")
        piece = Pieces((name,))
        if not letter:
            yield words.text("demonstration-cut", {"piece": piece}), True
        elif letter == before:
            yield words.text("demonstration-goes-on", {"piece": piece, "letter": letter}), False
        else:
            yield words.text("demonstration-after", {"piece": piece, "letter": letter}), True


def _shown(done: Performed, operation: Operation, minutes: int, ready: tuple[str, ...], words: Words) -> Shown:
    said = said_step(done, words)
    asked: tuple[SetUp | Tool, ...] = (done.setup, *said.tools)
    tools: list[Value] = [Part(message) for message in dict.fromkeys(map(tool_of, asked)) if message]
    at_hand = tuple(tools) + tuple(map(Supply, dict.fromkeys(use.material for use in done.used)))
    checks = (f"{operation.place(step)} {step.check}" for step in operation.steps if step.check)
    return Shown(
        operation.letter,
        operation.title,
        operation.aim,
        words.said(duration(minutes)) if minutes else "",
        words.text("demonstration-view", {"view": One("wide" if done.setup in _WIDE else "near", _VIEWS)}),
        ready,
        words.said(Things(at_hand)),
        operation.cautions,
        (f"{operation.letter} {operation.title}", operation.aim, *checks),
    )
