"""What is gathered is also held.

Guarantees: every gathered edge ends inside a seam.
Cannot know: whether the tails were fastened.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment.message import Part
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-gathers"


def prove(run: Run) -> Proof:
    if not run.whole:
        return Proof(CLAIM)
    faults, held = [], 0
    for name, edge in run.final.edges.items():
        if not edge.gathered or not run.sound(edge.pieces):
            continue
        if edge.held or (name in run.final.layered and run.final.edge(run.final.layered[name]).held):
            held += 1
            continue
        done = next(done for done in run.performed if done.after.edges.get(name) and done.after.edge(name).gathered)
        faults.append(
            Fault(
                "FB412",
                f"the gathers of `{name}` are never held by a seam",
                Label(done.step.written.span, "gathered here"),
                help=f"add a step that sews `{name}` to its edge, such as `attach`",
            )
        )
    return Proof(CLAIM, (Part("proof-gathers-sewn", {"edges": held}),), tuple(faults))
