"""What all casings have alike: how they are stitched, and where their gap is for what goes in."""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Casing
from furbelow.garment.message import One
from furbelow.garment.solved import Solved
from furbelow.garment.spec import Step
from furbelow.garment.technique import edge_of, fault_at

EDGE_STITCH = Fraction(2)  # from the fold: it narrows the casing by so much
BESIDE_SEAM = Fraction(20)  # from the side seam to the gap: a row neither begins nor ends well on a thick seam


def holds_cord(solved: Solved, casing: str) -> bool:
    """Whether a cord goes into this casing later: its ends come out of the gap, so the gap is in front."""
    steps = (step.written for step in solved.steps)
    return any(step.technique == "drawstring" and edge_of(step, "into") == casing for step in steps)


def holds_said(solved: Solved, casing: str) -> One:
    """How messages choose by what a casing holds, under `$holds`."""
    return One("cord" if holds_cord(solved, casing) else "elastic", ("cord", "elastic"))


def casing_at(bench: Bench, step: Step, arg: str) -> Casing | Fault:
    """The casing that a step works on. Fails: FB321 where there is none yet."""
    name = edge_of(step, arg)
    return _named(bench, name) or fault_at(
        step,
        arg,
        "FB321",
        f"there is no casing in `{name}` yet",
        help="move this step after the one that makes the casing",
    )


def _named(bench: Bench, name: str) -> Casing | None:
    """The casing of this name: that of the band, or of the edge that was folded down; either by its piece as well, and a
    band by the edge that it was sewn to."""
    if name in bench.casings:
        return bench.casings[name]
    sewn = bench.seam_at(name)
    pieces = {name} if name in bench.cloths else {ply.piece for ply in sewn.plies} if sewn else set()
    found = [casing for casing in bench.casings.values() if casing.piece in pieces]
    return found[0] if len(found) == 1 else None


def casing_in(bench: Bench, name: str) -> tuple[str, ...]:
    """The pieces that a casing is made in: of a folded edge or stack, or the band itself; none before it is stacked."""
    if name in bench.edges:
        return bench.edge(name).pieces
    piece = name.partition(".")[0]
    return (piece,) if piece in bench.cloths else ()
