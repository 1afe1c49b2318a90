"""How long the garment is in front, at the sides and behind, where its waist was levelled or its hem dips."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from furbelow.garment.matching import PLACES, Places, TakenUp
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run

LEVEL_WAIST = "level waist"


def levelled(run: Run) -> tuple[Performed, ...]:
    """The steps that level the waist."""
    return tuple(done for done in run.performed if done.step.written.technique == LEVEL_WAIST and not done.refused)


def heights_of(run: Run) -> Places | None:
    """The waist above the floor: as the first such step says, or else as the spec measures it; None where it does not."""
    for done in levelled(run):
        front, side, back = (done.step.mm(place) for place in PLACES)
        return front, side, back
    names = ("front_waist_height", "waist_height", "back_waist_height")
    if not all(name in run.solved.values for name in names):
        return None
    front, side, back = (run.solved.length(name) for name in names)
    return front, side, back


def lengths_at(run: Run, piece: str) -> Places:
    """From the waist to the bottom of a piece: its drop, less how much higher it was cut and what was taken up of it, and of
    all that it hangs from."""
    up: Mapping[str, Places] = _taken(run)
    chain = (piece, *run.over(piece))
    front, side, back = (
        low - sum((up[each][at] for each in chain if each in up), Fraction(0))
        for at, low in enumerate(run.bottom_at(piece))
    )
    return front, side, back


def _taken(run: Run) -> dict[str, Places]:
    found: dict[str, Places] = {}
    for done in levelled(run):
        for piece in done.touches:
            before = found.get(piece, (Fraction(0), Fraction(0), Fraction(0)))
            front, side, back = (was + more for was, more in zip(before, facts_of(done, TakenUp).taken, strict=True))
            found[piece] = front, side, back
    return found


def slanting_at_sides(run: Run, lowest: str) -> Fraction:
    """How much longer the garment is at the sides than straight down: a tape there lies along the seams between gores."""
    bench, more = run.final, Fraction(0)
    for piece in (lowest, *run.over(lowest)):
        gore, depth = bench.cloths[piece].piece.gore, bench.depth(piece)
        if gore and gore.side_seam[1]:
            more += bench.beside(piece, depth) - depth
    return more
