"""Every casing ends with its elastic in and its gap closed.

Guarantees: the gap was open when the elastic went in, and is closed at the end; a cord's ends come out of it.
Cannot know: whether the elastic twisted inside.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "The gap for the elastic was open in time and is closed"


def prove(run: Run) -> Proof:
    faults = []
    for casing in run.final.casings.values():
        if not casing.open or not run.sound([casing.piece]):
            continue
        made = next(done for done in run.performed if casing.name in done.after.casings)
        want = "is left open at the end" if casing.elastic else "never gets its elastic"
        mend = (
            f"`- close gap: {{of: {casing.name}}}`" if casing.elastic else "an `insert elastic` step, then `close gap`"
        )
        faults.append(
            Fault(
                "FB406",
                f"the casing in `{casing.name}` {want}",
                Label(made.step.written.span, "made here"),
                help=f"add {mend}",
            )
        )
    gaps = ", ".join(
        f"{run.say.length(casing.gap)} in the {run.say.piece(casing.piece)}"
        + (", where the cord comes out" if casing.cord else "")
        for casing in run.final.casings.values()
        if casing.gap
    )
    return Proof(CLAIM, f"closed: {gaps}" if gaps else "no casing has a gap", tuple(faults))
