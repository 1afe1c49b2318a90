"""Where copies that came out otherwise are sewn to each other, and whether they can be."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from furbelow.amend.worked import met
from furbelow.diagnose.fault import Fault, Label, Span
from furbelow.garment.limits import EASE_SHARE
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import facts_of
from furbelow.measure.quantity import show_decimal
from furbelow.named import NamedTuple
from furbelow.order.chain import Planned
from furbelow.techniques.stack_layers import Stacked


class Meeting(NamedTuple):
    """The step at which all copies are sewn together, where there is one, and how long each is there; the edge that they make is
    as long as the shortest."""

    at: int
    lengths: Sequence[Fraction] = ()
    faults: tuple[Fault, ...] = ()

    @property
    def shortest(self) -> int:
        """Which copy, counted from 1."""
        return self.lengths.index(min(self.lengths)) + 1 if self.lengths else 1

    def marked(self, together: Planned) -> Planned:
        """The garment, its step where they meet saying how long each copy is, so that each is marked in parts of its own length."""
        run = together.rehearsal.run
        if not self.lengths or max(self.lengths) - min(self.lengths) <= run.solved.slack:
            return together
        done = run.performed[self.at]
        told = done._replace(facts=facts_of(done, Stacked)._replace(own=tuple(self.lengths)))
        run = run._replace(performed=(*run.performed[: self.at], told, *run.performed[self.at + 1 :]))
        return together._replace(rehearsal=together.rehearsal._replace(run=run))


def meeting(each: Sequence[Planned], pieces: set[str], odd: str, place: Span, say: Phrasing) -> Meeting:
    """each: the garment for each copy in turn. pieces: that have copies told apart. odd: one of them, measured at `place`.
    Fails: FB713."""
    steps = len(each[0].rehearsal.run.performed)
    for at in range(steps):
        lengths = [length for run in each if (length := met(run.rehearsal, at, pieces)) is not None]
        if len(lengths) < len(each):
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
        return Meeting(at, lengths, faults)
    return Meeting(steps)


def percent(share: Fraction) -> str:
    """A share as makers say it: 4.25 %."""
    return f"{show_decimal(share * 100, 2)} %"
