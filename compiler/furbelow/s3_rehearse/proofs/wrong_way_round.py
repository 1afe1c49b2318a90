"""Cloth shows its right face and hangs the right way up.

Guarantees: of layers that have a right side the outermost shows it, and the innermost of several has no seam margins
    towards the legs; cloth with a one-way pattern hangs with its pattern upright, neither upside down, sideways nor on an
    arc. All of these warn: now and then it is meant so.
Cannot know: which face the maker likes, or a pattern that has no way up in truth.
Source: common practice, no source. How deep a piece must be for its pattern to be seen: house rule, maker to confirm.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.message import Part
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-way-round"
SEEN = Fraction(100)  # mm deep: on a shallower piece, such as a band, the way of a pattern is not seen


def prove(run: Run) -> Proof:
    if not run.whole or not run.sound(run.final.cloths):
        return Proof(CLAIM)
    faults = (*_faces(run), *_pattern(run))
    return Proof(CLAIM, (Part("proof-way-round-shown"),), faults)


def _faces(run: Run) -> Iterator[Fault]:
    for name, edge in run.final.edges.items():
        if "." in name or name in run.final.layered:
            continue
        stacked = next(done for done in run.performed if name in done.after.edges)
        outer, inner = edge.plies[0], edge.plies[-1]
        if outer.right_side == "in" and _has_face(run, outer.piece):
            yield Fault(
                "FB428",
                f"the outermost layer, the {run.say.piece(outer.piece)}, has its right side in",
                Label(stacked.step.written.span, "stacked here"),
                help="write the layer without `right side: in`, or stack another layer over it",
                severity=Severity.WARNING,
            )
        if len({ply.piece for ply in edge.plies}) > 1 and inner.right_side == "out" and _has_face(run, inner.piece):
            yield Fault(
                "FB428",
                f"the innermost layer, the {run.say.piece(inner.piece)}, has its wrong side and its seam margins to the legs",
                Label(stacked.step.written.span, "stacked here"),
                help=f"write it as `{{edge: {inner.piece}.top, right side: in}}`",
                severity=Severity.WARNING,
            )


def _has_face(run: Run, piece: str) -> bool:
    return run.solved.materials[run.solved.pieces[piece].piece.cloth.text].material.has_right_side


def _pattern(run: Run) -> Iterator[Fault]:
    for name, piece in run.solved.pieces.items():
        if not run.solved.materials[piece.piece.cloth.text].material.one_way or piece.depth < SEEN:
            continue
        if name in run.levels.upside_down:
            how, mend = "upside down", "sew it on by its top edge"
        elif piece.ring is not None:
            how, mend = "on an arc, upright at one place alone", "take a cloth without a way up"
        elif piece.piece.grain == "along":
            how, mend = "sideways", "write `grain: across`"
        else:
            continue
        yield Fault(
            "FB429",
            f"the pattern of `{piece.piece.cloth.text}` lies {how} on the {run.say.piece(name)}",
            Label(piece.piece.span),
            (Label(run.solved.materials[piece.piece.cloth.text].material.span, "one way"),),
            notes=("the pattern of a one-way cloth stands upright along its length",),
            help=mend,
            severity=Severity.WARNING,
        )
