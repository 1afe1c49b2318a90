"""What is sewn together above and below is equally long between.

Guarantees: where two ways through the seams lead to one level, such as a skirt and a lining joined at the waist and at the
    hem, both are equally long within 5 mm; else it warns, for the longer one bags.
Cannot know: what is meant to bag, as a balloon skirt is.
Source: house rule, maker to confirm.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.message import Part
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-no-bag"


def prove(run: Run) -> Proof:
    if not run.whole or not run.sound(run.final.cloths):
        return Proof(CLAIM)
    faults = tuple(
        Fault(
            "FB430",
            f"the {run.say.piece(joint.down)} and the {run.say.piece(joint.up)} are sewn together at two levels and differ by"
            f" {run.say.length(abs(gap))} between them; the longer one bags",
            Label(
                next(
                    done for done in run.performed if joint.seam in done.after.seams or joint.seam in done.after.edges
                ).step.written.span
            ),
            help=f"make `{joint.down}` {run.say.length(abs(gap))} {'deeper' if gap > 0 else 'shallower'}",
            severity=Severity.WARNING,
        )
        for joint, gap in run.levels.bags
    )
    return Proof(CLAIM, (Part("proof-no-bag-shown"),), faults)
