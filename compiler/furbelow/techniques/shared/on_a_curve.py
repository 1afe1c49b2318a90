"""A strip cut straight that is to go along a curve: on the bias it gives, straight it strains or gapes."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment.bench import Bench, Edge
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import SolvedStep
from furbelow.garment.technique import fault_at

GIVES = Fraction(1, 100)  # of its length a straight strip gives unseen; house rule, maker to confirm


def straight_on_a_curve(
    bench: Bench, step: SolvedStep, say: Phrasing, arg: str, strip: str, edge: Edge, deep: Fraction
) -> Iterator[Fault]:
    """FB422, a warning, where `strip` is not on the bias and the edge, cut to an arc, is not as long `deep` mm inside it."""
    if say.solved.pieces[strip].shaped or edge.gathered:
        return
    for each in bench.opened(edge.name):
        piece, _, side = each.partition(".")
        shape, used = bench.cloths[piece].piece, bench.edge(each).used
        if shape.ring is None or side not in ("top", "bottom"):
            continue
        near, far = (used, used + deep) if side == "top" else (shape.cut_depth - used, shape.cut_depth - used - deep)
        at_edge, inside = bench.cloth_at(piece, near), bench.cloth_at(piece, far)
        if abs(at_edge - inside) <= GIVES * min(at_edge, inside):
            continue
        long, short, apart = say.apart(at_edge, inside)
        yield fault_at(
            step.written,
            arg,
            "FB422",
            f"`{strip}` is cut straight, and the curve of `{each}` is {long} at its edge and {short} where the strip ends,"
            f" {apart} apart",
            notes=("a strip on the bias gives on a curve; one along the thread strains, or lies in folds",),
            help=f"cut it on the bias: put `- bias strip: {{piece: {strip}}}` before its ends are closed",
            severity=Severity.WARNING,
        )
