"""The label that warns of fire: in garments of sheer cloth it is sewn in where the waist is closed."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.limits import burns_fast
from furbelow.garment.message import Length, Values
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Action, Performed, Tool
from furbelow.techniques.shared.marks import seam_said

TAPE = Fraction(60)  # mm of cotton tape
# Capitals of 10 point are some 2.5 mm high: UK SI 1985/2043, Nightwear (Safety) Regulations 1985, schedule 2.
LETTERS = Fraction(3)
SAID: Values = {"label-tape": Length(TAPE, "about"), "letters": Length(LETTERS, "about")}


def label_due(done: Performed, say: Phrasing) -> bool:
    """Whether the label goes in with this step: the first that closes a waist of a garment that burns fast."""
    closed = bool(done.before.casings) or any(opening.band for opening in done.before.openings.values())
    return burns_fast(say.solved) and not closed


def label_written(done: Performed, say: Phrasing) -> tuple[Action, ...]:
    return (Action("fire-label-write", values=SAID),) if label_due(done, say) else ()


def label_laid(done: Performed, say: Phrasing, message: str, on: str = "") -> tuple[Action, ...]:
    """message: how the label is laid, in the words of the technique; on: the piece beside whose side seam it goes."""
    values: Values = {"seam": seam_said(done.before, (on,), say)} if on else {}
    return (Action(message, values=values),) if label_due(done, say) else ()


def label_tools(done: Performed, say: Phrasing) -> tuple[Tool, ...]:
    return (Tool.FIRE_LABEL,) if label_due(done, say) else ()
