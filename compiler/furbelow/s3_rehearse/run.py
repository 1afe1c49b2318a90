"""One run of the work, and what it proves."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction
from functools import cached_property

from furbelow.diagnose.fault import Fault, Span
from furbelow.garment.bench import Bench, Casing
from furbelow.garment.levels import Levels, levels_of
from furbelow.garment.matching import Places
from furbelow.garment.message import Part
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved
from furbelow.garment.technique import Performed
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.s3_rehearse.body_at import BodyAt, body_at
from furbelow.s3_rehearse.rings import Ring, rings_of


class _Run(NamedTuple):
    solved: Solved
    room: Workroom
    performed: tuple[Performed, ...]
    final: Bench


class Run(_Run):
    """The steps as they were carried out, and the bench after the last one."""

    @cached_property
    def say(self) -> Phrasing:
        return Phrasing(self.solved, self.room)

    def ravels(self, piece: str) -> bool:
        return self.solved.materials[self.solved.pieces[piece].piece.cloth.text].material.ravels

    def sound(self, pieces: Iterable[str]) -> bool:
        """None of these pieces was in a refused step: what is said of them is no mere consequence."""
        return self.final.spoiled.isdisjoint(pieces)

    @cached_property
    def whole(self) -> bool:
        """All pieces that steps work on hang together, so that what hangs where can be asked."""
        return len({self.final.units[piece] for piece in self.touched}) <= 1

    @cached_property
    def touched(self) -> frozenset[str]:
        """The pieces that steps work on; one that is cut and never sewn is told of as that."""
        return frozenset(piece for done in self.performed for piece in done.touches)

    @cached_property
    def body(self) -> BodyAt:
        """The body of the wearer, with what is not measured put in."""
        return body_at(self.solved)

    @cached_property
    def levels(self) -> Levels:
        return levels_of(self.final)

    @cached_property
    def rings(self) -> tuple[Ring, ...]:
        """Every closed line round the garment, the highest first."""
        return rings_of(self.final, self.solved, self.levels)

    @property
    def hangs(self) -> Mapping[str, Fraction]:
        """How far below the top of the garment the top of each piece hangs, in mm."""
        return self.levels.tops

    @property
    def drops(self) -> Mapping[str, Fraction]:
        """How far below the top of the garment the bottom of each piece hangs, in mm."""
        return self.levels.bottoms

    def bottom_at(self, piece: str) -> Places:
        """How far below the top of the garment the bottom of a piece hangs in front, at the sides and behind."""
        chain = [self.final.cloths[each].rises for each in (piece, *self.over(piece))]
        front, side, back = (self.drops[piece] - sum((each[at] for each in chain), Fraction(0)) for at in range(3))
        return front, side, back

    @cached_property
    def ends(self) -> Mapping[str, Fraction]:
        """How far below the top of the garment the lowest of all that hangs from each piece ends, in mm."""
        lowest = dict(self.drops)
        for piece, over in self.levels.over.items():
            for up in over:
                lowest[up] = max(lowest[up], self.drops[piece])
        return lowest

    def over(self, piece: str) -> tuple[str, ...]:
        """The pieces that this one hangs from, the nearest first."""
        return self.levels.over[piece]


class Proof(NamedTuple):
    """What was to be shown, as a message; how it was shown, in statements; or the faults where it was not."""

    claim: str
    shown: tuple[Part, ...] = ()
    faults: tuple[Fault, ...] = ()


class Rehearsal(NamedTuple):
    """accepted: why each warning is meant so that the spec accepts and that would have been told."""

    run: Run
    proofs: tuple[Proof, ...]
    accepted: tuple[str, ...] = ()

    @property
    def solved(self) -> Solved:
        return self.run.solved


def drawn_in(run: Run, casing: Casing) -> Span:
    """Where the spec says how long the elastic is: in the step that put it there."""
    for done in run.performed:
        made = done.after.casings.get(casing.name)
        if made and made.elastic:
            length = done.step.written.args.get("length")
            return length.span if length else done.step.written.span
    raise LookupError(f"no step drew in `{casing.name}`")
