"""Where copies that came out otherwise are sewn to each other, and whether they can be."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from furbelow.amend.worked import met
from furbelow.diagnose.fault import Fault, Label, Span
from furbelow.garment.limits import EASE_SHARE
from furbelow.garment.phrasing import Phrasing
from furbelow.measure.quantity import show_decimal
from furbelow.named import NamedTuple
from furbelow.order.chain import Planned


class Meeting(NamedTuple):
    """The step at which all copies are sewn together, and the garment after it: as wide as the narrowest copy."""

    at: int
    together: Planned
    faults: tuple[Fault, ...] = ()


def meeting(runs: Sequence[Planned], now: Planned, pieces: set[str], odd: str, place: Span, say: Phrasing) -> Meeting:
    """runs: the garment for each copy that is told apart. now: for the others. pieces: that have copies told apart.
    odd: one of them, measured at `place`. Fails: FB713."""
    steps = len(now.rehearsal.run.performed)
    for at in range(steps):
        lengths = [length for run in runs if (length := met(run.rehearsal, at, pieces)) is not None]
        if len(lengths) < len(runs):
            continue
        longest, shortest = max(lengths), min(lengths)
        apart = say.length(longest - shortest)
        faults: tuple[Fault, ...] = ()
        if (longest - shortest) / longest > EASE_SHARE:
            headline = (
                f"the copies of `{odd}` come out at {say.length(shortest)} and {say.length(longest)},"
                f" {apart} apart, and lie on each other in a later step"
            )
            note = (
                f"{percent((longest - shortest) / longest)} of {say.length(longest)}; up to {percent(EASE_SHARE)},"
                f" {say.length(longest * EASE_SHARE)}, can be eased in"
            )
            help_ = f"take the wider ones in by {apart}, or open the narrow one and let it out"
            faults = (Fault("FB713", headline, Label(place), notes=(note,), help=help_),)
        return Meeting(at, runs[lengths.index(shortest)], faults)
    return Meeting(steps, now)


def percent(share: Fraction) -> str:
    """A share as makers say it: 4.25 %."""
    return f"{show_decimal(share * 100, 2)} %"
