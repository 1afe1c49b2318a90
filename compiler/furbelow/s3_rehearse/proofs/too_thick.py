"""The thickest seam is within what a home machine sews.

Guarantees: the plies that lie under the foot at once in each seam, gathers counted by their ratio, are thinner than the
    machine takes, also where a side seam crosses the seams of tiers; else it warns.
Cannot know: the presser foot, needle and patience of the sewist; thickness is reckoned from weight.
Source: house rule, maker to confirm.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.bench import Seam
from furbelow.garment.limits import thickness
from furbelow.garment.message import Length, Part
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-thickness"


def thickest(run: Run) -> tuple[Fraction, str]:
    """The thickness of the thickest seam in mm, and its name; nothing where there is no seam."""
    worst, name = Fraction(0), ""
    for seam in run.final.seams.values():
        if run.sound(ply.piece for ply in seam.plies) and (thick := _under_foot(run, seam)) > worst:
            worst, name = thick, seam.name
    return worst, name


def _under_foot(run: Run, seam: Seam) -> Fraction:
    """What lies under the foot at once, at the thickest place of a seam."""
    if not seam.edges or not all(edge.endswith((".start", ".end")) for edge in seam.edges):
        return sum(_plies(run, seam), Fraction(0))
    # A side seam runs through one tier after the other, and over the seams between them, doubled.
    tiers = {ply.piece for ply in seam.plies}
    across = (
        each
        for each in run.final.seams.values()
        if each is not seam and len(each.edges) == 2 and {ply.piece for ply in each.plies} <= tiers and len(tiers) > 1
    )
    crossed = (2 * sum(_plies(run, each), Fraction(0)) for each in across)
    return max((*_plies(run, seam), *crossed))


def _plies(run: Run, seam: Seam) -> list[Fraction]:
    """The thickness of each ply in a seam, gathers counted by their ratio."""
    full = {
        edge.pieces[0]: edge.ratio
        for edge in run.final.edges.values()
        if "." in edge.name and (edge.name in seam.edges or edge.name in run.final.layered)
    }
    return [
        thickness(run.solved, run.solved.pieces[ply.piece].piece.cloth.text) * ply.copies * full.get(ply.piece, 1)
        for ply in seam.plies
    ]


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
    shown = Part("proof-thickest", {"thick": Length(worst, "off")}) if worst else Part("proof-thickest-none")
    return Proof(CLAIM, (shown,), faults)
