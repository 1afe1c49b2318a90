"""Work that was begun: garments with all that a record of them may tell, and what amend makes of a record."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.amend.amend import amend
from furbelow.amend.amended import Amended
from furbelow.amend.read_record import Measured
from furbelow.amend.worked import draws_in
from furbelow.diagnose.fault import Span
from furbelow.order.chain import Planned, planned
from furbelow.order.order import Order

HERE = Span("record.yaml", 1, 1, 1, 2)

PIPED = """
yoke: {from: lawn, length: hip_girth + 16 cm, depth: 18 cm}
skirt: {from: lawn, length: yoke.length, depth: 45 cm}
cover: {from: lawn, length: yoke.length, depth: 16 mm}
"""
PIPED_STEPS = """
- french seam: {of: yoke}
- french seam: {of: skirt}
- bias strip: {piece: cover}
- join ends: {of: cover}
- piping: {strip: cover, cord: cord, in: yoke.bottom, seam: 1 cm}
- attach: {edge: skirt.top, to: yoke.bottom, seam: 1 cm}
- neaten: {seam: skirt.top}
- narrow hem: {edge: skirt.bottom}
- folded casing: {edge: yoke.top, depth: 24 mm}
- insert elastic: {elastic: elastic, into: yoke.top, length: waist_girth - 8 cm}
- close gap: {of: yoke.top}
"""
EASED = PIPED.replace("skirt: {from: lawn, length: yoke.length", "skirt: {from: lawn, length: yoke.length + 2 cm")
EASED_STEPS = PIPED_STEPS.replace("- attach:", "- ease in: {edge: skirt.top, to: yoke.bottom}\n- attach:")


def meant(made: Order) -> Planned:
    """The garment as it was meant."""
    garment = planned(made).value
    assert garment is not None
    return garment


def measured(kind: str, name: str, size: str, value: Fraction) -> Measured:
    return Measured(kind, name, size, value, None, "", HERE)


def measurable(garment: Planned) -> Iterator[tuple[str, str, str, Fraction]]:
    """Everything with a length that a record may tell: pieces as cut, rings, drawn edges, with what each should be."""
    pieces = garment.rehearsal.solved.pieces
    for done in garment.rehearsal.run.performed:
        for name, cloth in done.after.cloths.items():
            if cloth.ring and not done.before.cloths[name].ring:
                flared = pieces[name].ring or pieces[name].gore
                for ring in (f"{name}.top", f"{name}.bottom") if flared else (name,):
                    edge = done.after.edge(ring if flared else f"{name}.bottom")
                    yield "ring", ring, "length", done.after.measured(edge) - edge.stands_out
        yield from (
            ("edge", name, "length", edge.set_length) for name, edge in done.after.edges.items() if draws_in(done, name)
        )
    for name, piece in pieces.items():
        yield "cut", name, "length", cut_out(garment, name)
        yield "cut", name, "depth", piece.cut_depth


def cut_out(garment: Planned, piece: str) -> Fraction:
    """What a tape along the cut top of a piece shows once it is cut out."""
    solved = garment.rehearsal.solved.pieces[piece]
    if not (solved.ring or solved.gore):
        return solved.cut_length
    shaped = next(
        done.after
        for done in garment.rehearsal.run.performed
        if done.before.cloths[piece].blank and not done.after.cloths[piece].blank
    )
    return shaped.measured(shaped.edge(f"{piece}.top"))


def amended(made: Order, *rows: Measured) -> Amended:
    staged = amend(made, rows)
    assert staged.value is not None, [fault.headline for fault in staged.faults]
    return staged.value
