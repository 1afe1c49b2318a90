"""Everything that is bought is used: cloth, trims, cords and bones, elastic, dye and starch.

Guarantees: each such material is in a piece or a step; as much of a trim is dyed as is sewn on, else it warns.
Cannot know: supplies of the kind other, which no step names.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment import mends
from furbelow.garment.message import Part
from furbelow.garment.spec import SupplyKind
from furbelow.garment.technique import fault_at, word_of
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
    return Proof(CLAIM, (shown,), (*faults, *_dyed_too_little(run)))


def _dyed_too_little(run: Run) -> Iterator[Fault]:
    """A trim of which less is dyed than the steps sew on."""
    for done in run.performed:
        if not any(use.what.message == "use-dye-trim" for use in done.used):
            continue
        written, trim, dyed = done.step.written, word_of(done.step.written, "trim"), done.step.mm("length")
        uses = (use for each in run.performed for use in each.used if use.material == trim)
        sewn = sum((use.amount * use.copies for use in uses), Fraction(0))
        if dyed < sewn:
            yield fault_at(
                written,
                "length",
                "FB421",
                f"{run.say.length(dyed)} of `{trim}` are dyed and {run.say.length(sewn)} are sewn on,"
                f" {run.say.length(sewn - dyed)} too little",
                mend=mends.write(written, "length", run.say.within(sewn, least=True), " or more"),
                severity=Severity.WARNING,
                needs=sewn,
            )
