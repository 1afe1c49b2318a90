"""Pieces as they are cut out, and copies that are sewn to one length: which they are, and what they come to together.

Panels that close to one ring, gores, and panels sewn side by side: the whole is as long as all copies together, and as deep as
the shallowest, for the others are cut level with it.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from furbelow.amend.amended import CUT
from furbelow.amend.as_cut import Sizes, cut_size
from furbelow.amend.read_record import Measured
from furbelow.diagnose.fault import Span
from furbelow.garment.solved import SolvedPiece
from furbelow.garment.technique import Performed


def sewn_to_one(piece: str, performed: Sequence[Performed]) -> bool:
    """Whether a step sews the copies of the piece to each other, end to end."""
    return any(
        done.after.cloths[piece].copies < done.before.cloths[piece].copies
        and done.after.edge(f"{piece}.bottom").cloth_length > done.before.edge(f"{piece}.bottom").cloth_length
        for done in performed
    )


def as_cut_out(piece: SolvedPiece, size: str, copy: int | None) -> Fraction:
    """What a tape shows of a piece that is cut out, in mm: its depth, or along its cut top. Gores that differ are counted in
    the order in which they are sewn, from the front on."""
    if size == "depth":
        return piece.cut_depth
    if piece.gore and piece.gore.differ and copy is not None:
        widths = {width.place: width for width in piece.gore.widths}
        return piece.gore.cut_widths(widths[piece.gore.round[copy - 1]])[0]
    shape = piece.gore or piece.ring
    return shape.cut_top if shape else piece.cut_length


def booked(piece: SolvedPiece, row: Measured) -> Fraction:
    """What its cut size comes to, in mm, with as much more or less as the tape shows."""
    return cut_size(piece, row.size) + row.value - as_cut_out(piece, row.size, row.copy)


def cut_out_at(piece: str, performed: Sequence[Performed]) -> int:
    """The step that cuts the piece out of its rectangle; CUT where it comes so from the cutting table."""
    shaped = (
        at
        for at, done in enumerate(performed)
        if done.before.cloths[piece].blank and not done.after.cloths[piece].blank
    )
    return next(shaped, CUT)


def as_one(
    pieces: Mapping[str, SolvedPiece], everywhere: Sizes, rows: Sequence[Measured]
) -> Iterator[tuple[tuple[str, str], tuple[Fraction, Span]]]:
    """The size at which each copy would come to the same as all do together.

    rows: single copies of pieces that are sewn to one. everywhere: what was measured of all copies alike.
    """
    for name, size in dict.fromkeys((row.name, row.size) for row in rows):
        piece = pieces[name]
        measured = {row.copy: row for row in rows if (row.name, row.size) == (name, size)}
        usual, _ = everywhere.get((name, size), (cut_size(piece, size), None))
        each = [booked(piece, measured[copy]) if copy in measured else usual for copy in range(1, piece.count + 1)]
        together = sum(each, Fraction(0)) / piece.count if size == "length" else min(each)
        worst = max(measured.values(), key=lambda row: abs(row.value - as_cut_out(piece, size, row.copy)))
        yield (name, size), (together, worst.span)
