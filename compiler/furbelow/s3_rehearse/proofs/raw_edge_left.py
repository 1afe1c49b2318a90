"""No raw edge of a ravelling cloth is left.

Guarantees: every edge of every piece of a cloth marked `ravels: yes` ends neatened, hemmed, sewn or enclosed.
Cannot know: whether the cloth ravels as the spec says, or how well the edge was neatened.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment import mends
from furbelow.garment.bench import State
from furbelow.garment.message import Part, Pieces, Things, edge_said
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-no-raw-edge"


def prove(run: Run) -> Proof:
    if not run.whole:
        return Proof(CLAIM)
    faults, finished = [], 0
    may_stay: list[Pieces] = []
    for name, edge in run.final.edges.items():
        piece, _, side = name.partition(".")
        if not side or not run.sound([piece]) or name in run.final.layered:
            continue
        if edge.state is not State.RAW:
            finished += 1
        elif not run.ravels(piece):
            may_stay.append(edge_said(edge))
        else:
            cloth = run.solved.pieces[piece].piece
            row = f"narrow hem: {{edge: {name}}}" if side in ("top", "bottom") else f"join ends: {{of: {piece}}}"
            # Before anything else is done at this edge's piece is too early, so it comes after all of it.
            mend = mends.after(run.performed[-1].step.written, row, f"add a step such as `- {row}`")
            faults.append(
                Fault(
                    "FB402",
                    f"the {side} edge of the {run.say.piece(piece)} is still raw at the end, and `{cloth.cloth.text}` ravels",
                    Label(cloth.span, f"its {side} edge is never hemmed, neatened or sewn in"),
                    (Label(run.solved.materials[cloth.cloth.text].material.span, "this cloth ravels"),),
                    help=mend.help,
                    change=mend.change,
                )
            )
    shown = [Part("proof-edges-finished", {"edges": finished})]
    if may_stay:
        shown.append(Part("proof-edges-stay-raw", {"edges": Things(tuple(may_stay))}))
    return Proof(CLAIM, tuple(shown), tuple(faults))
