"""The work of a guide as a plan of lessons needs it: each operation with its time, its set-up and whether it may end a lesson."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from zlib import crc32

from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import OwnInstructions, Performed, SetUp, Tool
from furbelow.named import NamedTuple
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.class_cutting import BEFORE
from furbelow.s5_buy.hours import LAST_LOOK, in_fives
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s5_buy.sittings import safe_stops
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.words.words import Words
from furbelow.techniques import technique_of


class Worked(NamedTuple):
    """One operation. technique: the word of the language for it; empty for what is no step of the spec.

    aim: what is true afterwards. pieces: that it is done on, by their names. title: empty for the pile of cut pieces, which
    each guide calls by its number. numbers: by which all that it says is told from what another run said, in any language.
    changed: it has other numbers than when all was cut first. presses: the iron is at hand, whatever else it is done at.
    """

    letter: str
    title: str
    minutes: int
    set_up: SetUp
    safe: bool
    technique: str = ""
    aim: str = ""
    pieces: tuple[str, ...] = ()
    numbers: int = 0
    changed: bool = False
    presses: bool = False


def worked_of(
    rehearsal: Rehearsal, shopping: ShoppingList, guide: Guide, cutting: Cutting, number: int
) -> Iterator[Worked]:
    """All the work of the guide in its order: the pile or the cutting of each cloth, the steps, the last look.

    cutting: her share, whose marks bear her number; the titles are said to everybody, and leave it out.
    number: of her pile; 0 for who cuts alone.
    """
    marks = {piece: mark.removeprefix(f"{number}{BEFORE}") for piece, mark in cutting.marks.items()}
    say = Phrasing(rehearsal.solved, rehearsal.run.room, cutting.joins, cutting.lengths)
    words = Words(guide.language, say, marks)
    steps = {operation.key: operation for operation in guide.operations}
    for first in guide.cut:
        minutes = in_fives(shopping.cutting_minutes / len(guide.cut))
        yield Worked(first.letter, "" if number else first.title, minutes, SetUp.TABLE, True, aim=first.aim)
    for done, taken, safe in zip(rehearsal.run.performed, shopping.minutes, safe_stops(rehearsal.run), strict=True):
        if operation := steps.get(done.key):
            title, numbers, presses = _said(done, words)
            told = (operation.letter, title or operation.title, in_fives(taken))
            way = done.step.written.technique
            yield Worked(*told, done.setup, safe, way, operation.aim, done.touches, numbers, presses=presses)
    last = guide.operations[-1]
    yield Worked(last.letter, last.title, LAST_LOOK, SetUp.NOTHING, True, aim=last.aim)


def since(now: Sequence[Worked], before: Sequence[Worked]) -> tuple[Worked, ...]:
    """The work with what is done otherwise than in an earlier run; what changed once has changed. before: of that run."""
    was = {each.letter: each for each in before}
    return tuple(
        each._replace(changed=was[each.letter].changed or was[each.letter].numbers not in (0, each.numbers))
        if each.letter in was
        else each
        for each in now
    )


def _said(done: Performed, words: Words) -> tuple[str, int, bool]:
    """What the step is called, empty where a maker named it in her own words; a sum of all values that it says; whether it
    presses."""
    told = technique_of(done.step.written).instructions(done, words.say)
    numbers = crc32(repr(sorted(told.values.items())).encode())
    if isinstance(told, OwnInstructions):
        return "", numbers, False
    words.read(done.step.written.technique.replace(" ", "-"))
    return words.text(told.title, told.values), numbers, Tool.IRON in told.tools
