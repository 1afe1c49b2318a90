"""No raw edge of a ravelling cloth is left.

Guarantees: every edge of every piece of a cloth marked `ravels: yes` ends neatened, hemmed, sewn or enclosed.
Cannot know: whether the cloth ravels as the spec says, or how well the edge was neatened.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment.bench import State
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "No edge is left to ravel"


def prove(run: Run) -> Proof:
    if not run.whole:
        return Proof(CLAIM, "not asked: the pieces do not hang together")
    faults, finished, may_stay = [], 0, []
    for name, edge in run.final.edges.items():
        piece, _, side = name.partition(".")
        if not side or not run.sound([piece]) or name in run.final.layered:
            continue
        if edge.state is not State.RAW:
            finished += 1
        elif not run.ravels(piece):
            may_stay.append(name)
        else:
            cloth = run.solved.pieces[piece].piece
            faults.append(
                Fault(
                    "FB402",
                    f"the {side} edge of the {run.say.piece(piece)} is still raw at the end, and `{cloth.cloth.text}` ravels",
                    Label(cloth.span, f"its {side} edge is never hemmed, neatened or sewn in"),
                    (Label(run.solved.materials[cloth.cloth.text].material.span, "this cloth ravels"),),
                    help=f"add a step such as `- narrow hem: {{edge: {name}}}`"
                    if side in ("top", "bottom")
                    else f"add a step such as `- join ends: {{of: {piece}}}`",
                )
            )
    stay = f"; {', '.join(may_stay)} may stay raw, for the cloth does not ravel" if may_stay else ""
    return Proof(CLAIM, f"{finished} edges are hemmed, neatened, sewn or enclosed{stay}", tuple(faults))
