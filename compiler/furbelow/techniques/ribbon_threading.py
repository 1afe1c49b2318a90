"""Thread a ribbon through the trim on an edge.

What it does: draws a ribbon through the holes of a beading or eyelet trim and fastens or ties its ends.
Edges before and after: an edge with a trim on it; unchanged.
Allowance: none. The ribbon takes the length of the edge, and both ends or the overlap.
Example: `- ribbon threading: {edge: flounce.bottom, ribbon: ribbon, ends: 0 cm}`
Source: no cord or ribbon ends hang below the hem of a child's garment that reaches past the crotch: EN 14682:2007, of
    which a newer edition (2014) is in force.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Edge
from furbelow.garment.limits import width_of
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    EdgesIn,
    Kind,
    OwnAction,
    OwnInstructions,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    Used,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.drawstring import CHILD, CORDS, GROWN, SEALING
from furbelow.techniques.join_ends import side_seam

OVERLAP = Fraction(20)


class RibbonThreading:
    name = "ribbon threading"
    about = "Thread a ribbon through the holes of a trim."
    pictures = (Picture.PIECES,)
    parameters = {
        "edge": Parameter("The edge that carries the trim.", Kind.EDGE),
        "ribbon": Parameter("The ribbon, one of the materials.", Kind.MATERIAL),
        "ends": Parameter(
            "How far each end hangs out for a bow; 0 sews the ends over each other.", Kind.LENGTH, "0 cm"
        ),
        "for": Parameter("Who wears it; ribbon ends on children have limits.", (CHILD, GROWN), CHILD),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, ribbon = step.written, edge_of(step.written, "edge"), word_of(step.written, "ribbon")
        edge = bench.edges.get(name)
        if edge is None or not edge.trim:
            return refused(
                bench,
                step,
                (),
                fault_at(
                    written,
                    "edge",
                    "FB350",
                    f"there is no trim on `{name}` yet to thread a ribbon through",
                    help=f"put `- edge with trim: {{edge: {name}, trim: beading}}` before this step",
                ),
            )
        if fault := _not_to_thread(step, Phrasing(solved, room), solved, edge, ribbon):
            return refused(bench, step, edge.pieces, fault)
        ends = step.mm("ends")
        extra = 2 * ends or OVERLAP
        width = width_of(solved, ribbon)
        return Performed(
            step,
            bench,
            bench,
            edge.pieces,
            sewn=() if ends else (Sewn(StitchType.CHAIN, 2 * width, edge.copies, Fraction(3), "fastening the ribbon"),),
            used=(
                Used(
                    ribbon, edge.set_length + extra, edge.copies, f"ribbon in the {solved.pieces[edge.pieces[0]].label}"
                ),
            ),
            setup=SetUp.HAND,
            handled=edge.set_length * edge.copies,
            facts={"cut": edge.set_length + extra},
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        step = done.step
        edge = done.before.edge(edge_of(step.written, "edge"))
        where, chain = say.edge(edge.pieces[0], edge.name.rpartition(".")[2]), say.chain(edge.copies)
        material = say.solved.materials[word_of(step.written, "ribbon")].material
        ribbon, ends = material.about or material.name.replace("_", " "), step.mm("ends")
        if ends:
            last = OwnAction(
                f"Even the ends and tie a bow; {say.length(ends)} hang out at each end before it is tied.",
                check="The trim lies flat and is not drawn in.",
                remedy="Loosen the ribbon before you tie it.",
                chain=chain,
            )
        else:
            last = OwnAction(
                f"Lay the ends {say.about(OVERLAP)} over each other behind the trim and sew them together by hand.",
                check="The trim lies flat and is not drawn in.",
                remedy="Unpick the ends and let the ribbon out.",
                chain=chain,
            )
        actions = (
            OwnAction(f"Cut {say.length(done.facts['cut'])} of {ribbon}.", chain=chain),
            OwnAction(
                "Stop both its ends from fraying: dab them with textile glue and let it dry, or fold them under and sew them.",
                chain=chain,
            ),
            OwnAction(
                f"Thread it on a blunt needle or bodkin and draw it over and under through the holes along {where},"
                f" starting {'at the middle of the front' if ends else f'at {side_seam(done.before, edge.pieces, say)}'}.",
                check="The ribbon is not twisted and no hole is missed.",
                remedy="Draw it back to the place and go on from there.",
                chain=chain,
            ),
            last,
        )
        return OwnInstructions(
            f"Thread ribbon through the trim of the {say.piece(edge.pieces[0])}",
            "The ribbon lies in the trim.",
            actions,
            (CORDS, SEALING),
        )


def _not_to_thread(step: SolvedStep, say: Phrasing, solved: Solved, edge: Edge, ribbon: str) -> Fault | None:
    written, width, trim = step.written, width_of(solved, ribbon), width_of(solved, edge.trim)
    if width >= trim:
        return fault_at(
            written,
            "ribbon",
            "FB350",
            f"`{ribbon}` is {say.length(width)} wide and the trim `{edge.trim}` {say.length(trim)},"
            " so its holes are narrower",
            help="choose a narrower ribbon",
        )
    if step.mm("ends") and word_of(written, "for") == CHILD:
        return fault_at(
            written,
            "ends",
            "FB348",
            f"ribbon ends of {say.length(step.mm('ends'))} hang from `{edge.name}`, and on a child 0 cm may",
            notes=("EN 14682:2007, children up to 14 years; a newer edition is in force",),
            help="write `ends: 0 cm`, or `for: grown-up` where no child wears it",
        )
    return None


TECHNIQUE = RibbonThreading()
