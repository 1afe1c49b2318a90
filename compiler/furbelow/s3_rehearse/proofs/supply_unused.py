"""Everything that is bought is used: cloth, trims, cords and bones, elastic, dye and starch.

Guarantees: each such material is in a piece or a step.
Cannot know: supplies of the kind other, which no step names.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.message import Part
from furbelow.garment.spec import SupplyKind
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-used"

_NAMED_BY_NO_STEP = (SupplyKind.THREAD, SupplyKind.OTHER)


def prove(run: Run) -> Proof:
    if run.final.spoiled:
        return Proof(CLAIM)
    used = {piece.piece.cloth.text for piece in run.solved.pieces.values()}
    used |= {use.material for done in run.performed for use in done.used}
    faults = tuple(
        Fault(
            "FB407",
            f"the {material.material.about or name} is bought and never used",
            Label(material.material.span, "no piece and no step uses it"),
            help="take it out, or use it in a step",
            severity=Severity.WARNING,
        )
        for name, material in run.solved.materials.items()
        if material.material.kind not in _NAMED_BY_NO_STEP and name not in used
    )
    thread = any(each.material.kind == "thread" for each in run.solved.materials.values())
    shown = Part("proof-used-materials-thread" if thread else "proof-used-materials", {"materials": len(used)})
    return Proof(CLAIM, (shown,), faults)
