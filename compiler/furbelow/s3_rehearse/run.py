"""One run of the work, and what it proves."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction
from functools import cached_property
from typing import NamedTuple

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Edge
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved
from furbelow.garment.technique import Performed
from furbelow.garment.workroom import Workroom


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
        return not self.final.spoiled & set(pieces)

    @cached_property
    def whole(self) -> bool:
        """All pieces that steps work on hang together, so that what hangs where can be asked."""
        touched = {piece for done in self.performed for piece in done.touches}
        return len({self.final.units[piece] for piece in touched}) <= 1

    @cached_property
    def hangs(self) -> Mapping[str, Fraction]:
        """How far below the top of the garment the top of each piece hangs, in mm."""
        below: dict[str, Fraction] = {}
        pairs = self._across
        lower = {down for up, down, same in pairs if not same}
        for piece in self.final.cloths:
            if piece not in lower:
                below.setdefault(piece, Fraction(0))
        for _ in self.final.cloths:
            for up, down, same in pairs:
                if up in below and (down in lower or same):
                    below[down] = below[up] + (Fraction(0) if same else self.final.depth(up))
        return {piece: below.get(piece, Fraction(0)) for piece in self.final.cloths}

    @cached_property
    def drops(self) -> Mapping[str, Fraction]:
        """How far below the top of the garment the bottom of each piece hangs, in mm."""
        return {piece: top + self.final.depth(piece) for piece, top in self.hangs.items()}

    @cached_property
    def ends(self) -> Mapping[str, Fraction]:
        """How far below the top of the garment the lowest of all that hangs from each piece ends, in mm."""
        lowest = dict(self.drops)
        for _ in self.final.cloths:
            for up, down, same in self._across:
                if not same:
                    lowest[up] = max(lowest[up], lowest[down])
        return lowest

    def over(self, piece: str) -> tuple[str, ...]:
        """The pieces that this one hangs from, the nearest first."""
        found: list[str] = []
        left = [piece]
        while left:
            hung = left.pop(0)
            ups = [up for up, down, same in self._across if down == hung and not same]
            left += [up for up in ups if up not in found and up != piece]
            found += [up for up in ups if up not in found and up != piece]
        return tuple(found)

    @cached_property
    def _across(self) -> list[tuple[str, str, bool]]:
        """The pairs of all seams that run round the garment."""
        seams = self.final.seams.values()
        return [
            pair
            for seam in seams
            if seam.edges and not seam.edges[0].endswith(".start")
            for pair in self._pairs(seam.edges)
        ]

    def _pairs(self, edges: tuple[str, ...]) -> list[tuple[str, str, bool]]:
        """(upper piece, lower piece, level) for each two piece edges in a seam; two top edges hang level."""
        ours, theirs = (self._opened(self.final.edge(name)) for name in edges)
        pairs = []
        for one in ours:
            for other in theirs:
                (piece, side), (beside, along) = one.split("."), other.split(".")
                if side == along:
                    pairs.append((beside, piece, True))
                elif side == "top":
                    pairs.append((beside, piece, False))
                else:
                    pairs.append((piece, beside, False))
        return pairs

    def _opened(self, edge: Edge) -> list[str]:
        if "." in edge.name:
            return [edge.name]
        layers = [self.final.edge(below) for below, stack in self.final.layered.items() if stack == edge.name]
        return [name for layer in layers for name in self._opened(layer)]


class Proof(NamedTuple):
    """What was to be shown, how it was shown, or the faults where it was not."""

    claim: str
    shown: str
    faults: tuple[Fault, ...] = ()


class Rehearsal(NamedTuple):
    run: Run
    proofs: tuple[Proof, ...]

    @property
    def solved(self) -> Solved:
        return self.run.solved
