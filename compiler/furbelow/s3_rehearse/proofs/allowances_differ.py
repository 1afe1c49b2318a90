"""Cut sizes less what the steps took are the finished sizes.

Guarantees: what the solver booked before the work is what the rehearsal measured after it, for every piece.
Cannot know: how exactly the pieces are cut.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment.message import Part
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-sizes"


def prove(run: Run) -> Proof:
    faults = []
    for name, piece in run.solved.pieces.items():
        if not run.sound([name]):
            continue
        depth = run.final.depth(name)
        ends = run.final.edge(f"{name}.start").used + run.final.edge(f"{name}.end").used
        length = piece.cut_length - ends
        for what, measured, booked in (("deep", depth, piece.depth), ("long", length, piece.length)):
            if measured != booked:
                is_, was, gap = run.say.apart(measured, booked)
                faults.append(
                    Fault(
                        "FB415",
                        f"the {run.say.piece(name)} ends {is_} {what} and {was} was worked out, {gap} apart",
                        Label(piece.piece.span),
                        help="report this spec: the steps and their books disagree",
                    )
                )
    return Proof(CLAIM, (Part("proof-sizes-measured", {"pieces": len(run.solved.pieces)}),), tuple(faults))
