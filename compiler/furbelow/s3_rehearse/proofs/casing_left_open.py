"""Every casing ends with its elastic in and its gap closed.

Guarantees: the gap was open when the elastic went in, and is closed at the end; a cord's ends come out of it.
Cannot know: whether the elastic twisted inside.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment import mends
from furbelow.garment.message import Length, Part, Pieces, Things
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-gap"


def prove(run: Run) -> Proof:
    faults = []
    for casing in run.final.casings.values():
        if not casing.open or not run.sound([casing.piece]):
            continue
        made = next(done for done in run.performed if casing.name in done.after.casings)
        want = "is left open at the end" if casing.elastic else "never gets an elastic or a cord"
        if casing.elastic:
            drawn = next(
                done
                for done in run.performed
                if casing.name in done.after.casings and done.after.casings[casing.name].elastic
            )
            row = f"close gap: {{of: {casing.name}}}"
            mend = mends.after(drawn.step.written, row, f"add `- {row}`")
        else:
            mend = mends.Mend("add an `insert elastic` step, then `close gap`; or a `drawstring` step", None)
        faults.append(
            Fault(
                "FB406",
                f"the casing in `{casing.name}` {want}",
                Label(made.step.written.span, "made here"),
                help=mend.help,
                change=mend.change,
            )
        )
    gaps = [
        Part(
            "proof-gap-in-cord" if casing.cord else "proof-gap-in-elastic" if casing.buttoned else "proof-gap-in",
            {"gap": Length(casing.gap), "piece": Pieces((casing.piece,))},
        )
        for casing in run.final.casings.values()
        if casing.gap
    ]
    shown = Part("proof-gap-closed", {"gaps": Things(tuple(gaps), "row")}) if gaps else Part("proof-gap-none")
    return Proof(CLAIM, (shown,), tuple(faults))
