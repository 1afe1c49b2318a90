"""The check of the finished garment: pins, lengths, edges."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from furbelow.garment.limits import burns_fast
from furbelow.garment.message import Length, Values, flag
from furbelow.garment.technique import Tool
from furbelow.s3_rehearse.levelling import heights_of, lengths_at, levelled, slanting_at_sides
from furbelow.s3_rehearse.run import Rehearsal, Run
from furbelow.s5_buy.hours import LAST_LOOK
from furbelow.s6_write.guide.guide import Caution, Operation, Part
from furbelow.s6_write.guide.numbered import numbered
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.words.said_step import SaidAction, SaidStep, said_action
from furbelow.s6_write.words.words import Words
from furbelow.techniques.shared.cautions import HAND_NEEDLE
from furbelow.techniques.shared.fire_label import SAID

OFF = Fraction(1, 120)  # of its length, by which a garment may hang longer or shorter: 1 cm of 120; house rule

# Where no step of the waist has room for it: with what it is sewn on by hand.
LABEL_TOOLS = (Tool.FIRE_LABEL, Tool.HAND_NEEDLE)
_STIFFEN = ("starch", "flame retardant")  # in stiff or treated cloth a needle leaves its marks


def label_left(rehearsal: Rehearsal, told: Sequence[SaidStep]) -> bool:
    """Whether the label that warns of fire is still to be sewn in when all steps are done."""
    return burns_fast(rehearsal.solved) and not any(Tool.FIRE_LABEL in said.tools for said in told)


def sewn_before(rehearsal: Rehearsal, told: Sequence[SaidStep]) -> int | None:
    """Where the label that is left goes in while the cloth is still soft: before the first of these steps; None at the end."""
    wet = (at for at, done in enumerate(rehearsal.run.performed) if done.step.written.technique in _STIFFEN)
    return next((at for at in wet if told[at].actions), None)


def label_sewn(words: Words) -> tuple[SaidAction, ...]:
    return tuple(said_action(message, SAID, words) for message in ("fire-label-write", "last-look-label"))


def label_caution(words: Words) -> Caution:
    return Caution(HAND_NEEDLE.kind, words.text(HAND_NEEDLE.message))


def last_look(rehearsal: Rehearsal, words: Words, letter: str, *, label: bool) -> Part:
    """label: whether the label is sewn in here."""
    drawn = ("last-look-drawn-up",) if _drawn_up(rehearsal.run) else ()
    # Marks and bright threads come out before starch goes on; afterwards water would take it off again.
    starched = rehearsal.run.performed[-1].step.written.technique == "starch"
    out = ("last-look-loose-threads",) if starched else ("last-look-threads", "last-look-marks")
    looks = (*out, *_hem_checks(rehearsal), "last-look-edges", *drawn)
    values = _values(rehearsal)
    looked = (said_action(message, values, words) for message in ("last-look-pins", *looks))
    # The pins last: the label is pinned.
    steps = numbered((*(label_sewn(words) if label else ()), *looked), words)
    title, minutes = words.text("last-look-title"), words.said(duration(LAST_LOOK))
    cautions = (label_caution(words),) if label else ()
    aim = words.text("last-look-aim")
    operation = Operation("last-look", letter, title, aim, minutes, cautions, (), steps, "", "")
    return Part(words.text("last-look"), (operation,))


def _hem_checks(rehearsal: Rehearsal) -> tuple[str, ...]:
    """How long it must be, at each place where it is not the same all round; where only the waist makes it so, also how high
    the hem is on the wearer."""
    run = rehearsal.run
    if len(set(run.bottom_at(_lowest(run)))) > 1:
        return ("last-look-dips",)
    if not levelled(run) or heights_of(run) is None:
        return ("last-look-length",)
    return ("last-look-lengths", "last-look-height")


def _drawn_up(run: Run) -> bool:
    """Whether tapes draw up a train: it is tried on once no pin is left in it."""
    return any(cloth.drawn_up for cloth in run.final.cloths.values())


def _lowest(run: Run) -> str:
    return max(run.drops, key=lambda piece: run.drops[piece])


def _values(rehearsal: Rehearsal) -> Values:
    run = rehearsal.run
    lowest = _lowest(run)
    front, side, back = lengths_at(run, lowest)
    above = max(heights_of(run) or (run.drops[lowest],)) - run.drops[lowest]
    return {
        "to-hem": Length(run.drops[lowest]),
        "front": Length(front),
        "side": Length(side + slanting_at_sides(run, lowest)),
        "back": Length(back),
        "above": Length(above),
        "train": flag(_drawn_up(run)),
        "off": Length(max(rehearsal.solved.rounding * 2, run.drops[lowest] * OFF), "about"),
    }
