"""No raw seam margin of a ravelling cloth is left.

Guarantees: every margin with a ply of a ravelling cloth ends neatened or enclosed.
Cannot know: margins inside the trim or elastic joins, which the sewist folds by hand.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment import mends
from furbelow.garment.bench import State
from furbelow.garment.message import Part
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-no-raw-margin"


def prove(run: Run) -> Proof:
    faults, seams = [], run.final.seams.values()
    for seam in seams:
        pieces = [ply.piece for ply in seam.plies]
        ravelling = [piece for piece in pieces if run.ravels(piece)]
        if seam.state is not State.RAW or not ravelling or not run.sound(pieces):
            continue
        sewer = next(
            done for done in run.performed if seam.name in done.after.seams and seam.name not in done.before.seams
        )
        mend = mends.after(sewer.step.written, f"neaten: {{seam: {seam.name}}}")
        cloth = run.solved.pieces[ravelling[0]].piece.cloth.text
        faults.append(
            Fault(
                "FB403",
                f"the margin of the seam `{seam.name}` is still raw at the end, and `{cloth}` ravels",
                Label(sewer.step.written.span, "this seam leaves a raw margin"),
                (Label(run.solved.materials[cloth].material.span, "this cloth ravels"),),
                help=mend.help,
                change=mend.change,
            )
        )
    enclosed = sum(seam.state is State.ENCLOSED for seam in seams)
    neat = sum(seam.state is State.NEATENED for seam in seams)
    free = len(seams) - neat - enclosed - len(faults)
    shown = Part("proof-margins", {"seams": len(seams), "neatened": neat, "enclosed": enclosed, "free": free})
    return Proof(CLAIM, (shown,), tuple(faults))
