"""The work itself: each step of the spec as an operation, under the heading of its part."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from furbelow.garment.message import Own, flag
from furbelow.garment.tags import copy_letter
from furbelow.garment.technique import CautionKind
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s5_buy.hours import in_fives
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.figures import figures_for
from furbelow.s6_write.guide.before_step import before_step, with_iron_set, with_zigzag_tried
from furbelow.s6_write.guide.guide import Caution, Operation, Part
from furbelow.s6_write.guide.last_look import label_caution, label_sewn
from furbelow.s6_write.guide.numbered import numbered
from furbelow.s6_write.guide.own_pictures import own_figures
from furbelow.s6_write.guide.reasons import numbers_of
from furbelow.s6_write.guide.stops import stops
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.words.holes import SentenceNumber
from furbelow.s6_write.words.said_step import SaidAction, SaidStep
from furbelow.s6_write.words.words import Words


def operations(
    rehearsal: Rehearsal,
    told: Sequence[SaidStep],
    shopping: ShoppingList,
    words: Words,
    letters: Mapping[int, str],
    ends: Sequence[int],
    label_at: int | None = None,
) -> tuple[Part, ...]:
    """told: the performed steps as they are said; letters: of each by its place in the spec.

    ends: the performed steps that end a sitting. label_at: the performed step before which the label that warns of fire is sewn in.
    """
    parts: list[tuple[str, list[Operation]]] = []
    run = rehearsal.run
    stop, ironed = stops(rehearsal, shopping, ends, words), False
    for at, done in enumerate(run.performed):
        if not told[at].actions:
            continue
        said = with_zigzag_tried(run.performed, told[at], at, words)
        said = with_iron_set(run.performed, told, said, at, shopping.minutes, words, stop)
        minutes = in_fives(shopping.minutes[at])
        labels = at == label_at
        before = (*(label_sewn(words) if labels else ()), *before_step(run.performed, told, at, shopping, words))
        actions = _with_runs((*before, *said.actions), words)
        steps = numbered(actions, words)
        copies, runs = max(step.copies for step in steps), any(action.run for action in actions)
        irons = bool(said.pressed) and not ironed
        ironed = ironed or irons
        operation = Operation(
            key=done.key,
            letter=letters[done.step.written.index],
            title=said.title,
            aim=said.aim,
            minutes=words.said(duration(minutes)) if minutes else "",
            cautions=(
                *(Caution(kind, text) for kind, text in said.cautions),
                *((label_caution(words),) if labels else ()),
                *((_marks_caution(words),) if irons else ()),
            ),
            figures=(
                *figures_for(done, run, words, len(before) + 1, said),
                *own_figures(done.key, done.step.written.pictures),
            ),
            steps=steps,
            tip=done.step.written.tip,
            stop=stop[at],
            why=numbers_of(done, rehearsal.solved),
            number=said.number,
            all_of_it=_all_of_it(copies, runs, words) if copies > 1 else "",
        )
        heading = done.step.written.part or words.text("part")
        if not parts or parts[-1][0] != heading:
            parts.append((heading, []))
        parts[-1][1].append(operation)
    return tuple(Part(title, tuple(done)) for title, done in parts)


def _marks_caution(words: Words) -> Caution:
    """Before the first ironing of cloth that may bear marks: what is cut is marked."""
    words.read("cautions")
    return Caution(CautionKind.HEAT, words.text("caution-iron-marks"))


def _all_of_it(copies: int, runs: bool, words: Words) -> str:
    return words.text("all-of-it", {"copies": copies, "last": Own(copy_letter(copies)), "runs": flag(runs)})


def run_said(first: int, last: int, copies: int, words: Words) -> str:
    """What stands behind the first of several sentences that are all done on one piece before the next piece."""
    return words.text(
        "run-of-sentences", {"first": SentenceNumber(first), "last": SentenceNumber(last), "copies": copies}
    )


def _with_runs(actions: Sequence[SaidAction], words: Words) -> list[SaidAction]:
    """The actions, the first of each run saying up to which sentence it is done on one piece, and then on the next."""
    told = list(actions)
    for at, action in enumerate(told):
        if not action.run or at and told[at - 1].run:
            continue
        last = at
        while last + 1 < len(told) and told[last + 1].run:
            last += 1
        if last > at:
            told[at] = action._replace(chain=run_said(at + 1, last + 1, action.copies, words), until=last + 1)
    return told
