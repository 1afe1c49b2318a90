"""Whether an edge that a spec lays on the selvedge can lie there: straight, and along the bolt."""

from __future__ import annotations

from collections.abc import Iterator

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment.solved import Solved, SolvedPiece


def not_on_selvedge(solved: Solved) -> Iterator[Fault]:
    """FB220 for each piece whose edge can't be the selvedge of its cloth."""
    for piece in solved.pieces.values():
        if not piece.piece.selvedge:
            continue
        if why := _why_not(piece):
            edge, (reason, help_) = f"{piece.name}.{piece.piece.selvedge}", why
            yield Fault(
                "FB220",
                f"`{edge}` can't be a selvedge: {reason}",
                Label(piece.piece.span),
                help=help_,
            )


def _why_not(piece: SolvedPiece) -> tuple[str, str] | None:
    without = f"leave `selvedge: {piece.piece.selvedge}` out"
    if piece.piece.grain == "across":
        return "the piece lies across, and the selvedges run along the cloth", f"write `grain: along`, or {without}"
    if piece.piece.grain == "free":
        return "the piece may lie across, away from the selvedges", f"write `grain: along`, or {without}"
    if piece.shaped:
        return "the piece is cut out of its rectangle by a step, and that edge with it", without
    return None
