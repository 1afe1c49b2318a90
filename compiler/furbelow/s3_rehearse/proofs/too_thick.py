"""The thickest seam is within what a home machine sews.

Guarantees: the plies of each seam, gathers counted by their ratio, are thinner than the machine takes; else it warns.
Cannot know: the presser foot, needle and patience of the sewist; thickness is reckoned from weight.
Source: house rule, maker to confirm.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.limits import thickness
from furbelow.garment.message import Length, Part
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-thickness"


def thickest(run: Run) -> tuple[Fraction, str]:
    """The thickness of the thickest seam in mm, and its name; nothing where there is no seam."""
    worst, name = Fraction(0), ""
    edges = [edge for edge in run.final.edges.values() if "." in edge.name]
    for seam in run.final.seams.values():
        pieces = [ply.piece for ply in seam.plies]
        if not run.sound(pieces):
            continue
        full = {
            edge.pieces[0]: edge.ratio for edge in edges if edge.name in seam.edges or edge.name in run.final.layered
        }
        thick = sum(
            (
                thickness(run.solved, run.solved.pieces[ply.piece].piece.cloth.text)
                * ply.copies
                * full.get(ply.piece, 1)
                for ply in seam.plies
            ),
            Fraction(0),
        )
        if thick > worst:
            worst, name = thick, seam.name
    return worst, name


def prove(run: Run) -> Proof:
    worst, name = thickest(run)
    faults: tuple[Fault, ...] = ()
    if worst > run.room.machine_takes:
        thick_as, takes, _ = run.say.apart(worst, run.room.machine_takes)
        sewer = next(done for done in run.performed if name in done.after.seams)
        faults = (
            Fault(
                "FB416",
                f"the seam `{name}` is about {thick_as} thick and the machine takes {takes}",
                Label(sewer.step.written.span, "the thickest seam"),
                help="turn the wheel by hand over the thick place, or use fewer layers",
                severity=Severity.WARNING,
            ),
        )
    return Proof(CLAIM, (Part("proof-thickest", {"thick": Length(worst, "off")}),), faults)
