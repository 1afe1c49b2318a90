"""What a step did to an edge: gathered it, sewed it, or laid copies of it on each other."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.technique import Performed
from furbelow.s3_rehearse.run import Rehearsal


def gathers(done: Performed, name: str) -> bool:
    """Whether the step gathers this edge."""
    was = done.before.edges.get(name)
    is_ = done.after.edges.get(name)
    return bool(is_ and is_.gathered) and not (was and was.gathered) and done.step.written.technique != "stack layers"


def met(rehearsal: Rehearsal, at: int, pieces: set[str]) -> Fraction | None:
    """The length of the edge in which a step lays copies of a piece, or of what it is sewn to, on each other."""
    done = rehearsal.run.performed[at]
    for name, edge in done.after.edges.items():
        if name in done.before.edges or "." in name:
            continue
        for ply in edge.plies:
            if ply.copies > 1 and pieces & set(done.before.unit(ply.piece)):
                return edge.set_length
    return None


def sews(done: Performed, edge: str) -> bool:
    return any(edge in seam.edges for name, seam in done.after.seams.items() if name not in done.before.seams)


def mates(done: Performed, edge: str) -> list[str]:
    """The edges that a step sews this one to."""
    return [
        other
        for name, seam in done.after.seams.items()
        if name not in done.before.seams and edge in seam.edges
        for other in seam.edges
        if other != edge
    ]
