"""The check of the finished garment: pins, lengths, edges."""

from __future__ import annotations

from furbelow.garment.message import Length, Values
from furbelow.s3_rehearse.levelling import heights_of, lengths_at, levelled
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s5_buy.hours import LAST_LOOK
from furbelow.s6_write.guide.guide import GuideStep, Operation, Part
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.words.words import Words


def last_look(rehearsal: Rehearsal, words: Words, letter: str) -> Part:
    told = ("last-look-pins", "last-look-threads", "last-look-marks", *_hem_checks(rehearsal), "last-look-edges")
    values = _values(rehearsal)
    steps = tuple(GuideStep(at, *words.action(message, values)) for at, message in enumerate(told, 1))
    title, minutes = words.text("last-look-title"), words.said(duration(LAST_LOOK))
    operation = Operation("last-look", letter, title, words.text("last-look-aim"), minutes, (), (), steps, "", "")
    return Part(words.text("last-look"), (operation,))


def _hem_checks(rehearsal: Rehearsal) -> tuple[str, ...]:
    """How long it must be; where the waist was levelled, also how high the hem is on the wearer."""
    if not levelled(rehearsal.run) or heights_of(rehearsal.run) is None:
        return ("last-look-length",)
    return ("last-look-lengths", "last-look-height")


def _values(rehearsal: Rehearsal) -> Values:
    run = rehearsal.run
    lowest = max(run.drops, key=lambda piece: run.drops[piece])
    front, side, back = (Length(length) for length in lengths_at(run, lowest))
    above = max(heights_of(run) or (run.drops[lowest],)) - run.drops[lowest]
    return {
        "length": Length(run.drops[lowest]),
        "front": front,
        "side": side,
        "back": back,
        "above": Length(above),
        "off": Length(rehearsal.solved.rounding * 2, "about"),
    }
