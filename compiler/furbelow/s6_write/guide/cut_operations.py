"""Cutting as operations, one for each cloth: its drawings beside the sentences that they show."""

from __future__ import annotations

from collections.abc import Container, Iterator, Mapping, Sequence

from furbelow.garment.message import Length, Supply, Things
from furbelow.garment.solved import Solved
from furbelow.garment.technique import CautionKind
from furbelow.s4_cut.cut import Cutting
from furbelow.s6_write.figures import cutting_figures, fit
from furbelow.s6_write.guide.cutting_pages import cloth_steps
from furbelow.s6_write.guide.guide import Caution, Operation
from furbelow.s6_write.guide.lane_steps import TAPES
from furbelow.s6_write.guide.numbered import numbered
from furbelow.s6_write.words.said_step import SaidAction, said_action
from furbelow.s6_write.words.words import Words

CHALKED = "cutting-chalk"
PRESSED = ("cutting-wash-trims", "cutting-wash", "cutting-wash-unknown")  # sentences that have something ironed


def cut_operations(
    cutting: Cutting,
    solved: Solved,
    words: Words,
    letters: Mapping[str, str],
    trims: Sequence[str] = (),
    begun: Container[str] = (),
) -> Iterator[Operation]:
    """How to cut each cloth: one action a sentence, tapes measured from one edge so that errors do not add up.

    trims: those that shrink in the wash, by their names; they are washed before anything else, while nothing waits for them.
    begun: the cloths that some was cut of before.
    """
    words.read("cutting")
    for at, name in enumerate(cutting.sheets):
        sheet = cutting.sheet(name)
        first = [said_action("cutting-wash-trims", {"trims": Things(tuple(map(Supply, trims)))}, words)]
        actions = [*(first if trims and at == 0 else ()), *cloth_steps(cutting, sheet, words, begun=name in begun)]
        title = words.action("cutting-title", {"cloth": Supply(name), "length": Length(sheet.plan.laid_length, "cut")})
        yield Operation(
            key=f"cut-{fit(name)}-{at + 1}",
            letter=letters[name],
            title=title.text,
            aim=words.text("cutting-aim", {"sections": len(sheet.plan.sections)}),
            minutes="",
            cautions=(_blades(words), *_hot(actions, words)),
            figures=cutting_figures(
                cutting, solved, words, name, _by_section(actions, (CHALKED,)), _by_section(actions, TAPES)
            ),
            steps=numbered(actions, words),
            tip="",
            stop="",
            number=title.number,
        )


def _blades(words: Words) -> Caution:
    words.read("cautions")
    return Caution(CautionKind.BLADE, words.text("caution-cutting"))


def _hot(actions: Sequence[SaidAction], words: Words) -> Iterator[Caution]:
    """The caution of the iron, where trims or cloth are pressed before the first cut."""
    if any(action.mark in PRESSED for action in actions):
        words.read("cautions")
        yield Caution(CautionKind.HEAT, words.text("caution-iron"))


def _by_section(actions: Sequence[SaidAction], marks: Sequence[str]) -> dict[int, int]:
    """The numbers of all sentences with one of these marks, by the section that they are of; each begins where it is chalked."""
    found, section = {}, 0
    for number, action in enumerate(actions, 1):
        section += action.mark == CHALKED
        if action.mark in marks:
            found[section] = number
    return found
