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

from compiler.cloth.bench import Bench, Edge
from compiler.cloth.limits import width_of
from compiler.diagnostics import Fault
from compiler.s1_read.spec import Step
from compiler.s2_solve.solved import Solved, SolvedStep, Takes
from compiler.say import Say
from compiler.techniques.drawstring import CHILD, CORDS, GROWN, SEALING
from compiler.techniques.join_ends import side_seam
from compiler.techniques.technique import (
    Action,
    EdgesIn,
    Parameter,
    Performed,
    Sewn,
    Telling,
    Used,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from compiler.workroom import Workroom

OVERLAP = Fraction(20)


class RibbonThreading:
    name = "ribbon threading"
    about = "Thread a ribbon through the holes of a trim."
    pictures = ("pieces",)
    parameters = {
        "edge": Parameter("The edge that carries the trim.", "edge"),
        "ribbon": Parameter("The ribbon, one of the materials.", "material"),
        "ends": Parameter("How far each end hangs out for a bow; 0 sews the ends over each other.", "length", "0 cm"),
        "for": Parameter("Who wears it; ribbon ends on children have limits.", (CHILD, GROWN), CHILD),
    }

    def takes(self, step: Step, edges_in: EdgesIn) -> tuple[Takes, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, ribbon = step.step, edge_of(step.step, "edge"), word_of(step.step, "ribbon")
        edge = bench.edges.get(name)
        if edge is None or not edge.trim:
            return refused(bench, step, (), fault_at(
                written, "edge", "FB350", f"there is no trim on `{name}` yet to thread a ribbon through",
                help=f"put `- edge with trim: {{edge: {name}, trim: beading}}` before this step"))  # fmt: skip
        if fault := _not_to_thread(step, Say(solved, room), solved, edge, ribbon):
            return refused(bench, step, edge.pieces, fault)
        ends = step.mm("ends")
        extra = 2 * ends or OVERLAP
        width = width_of(solved, ribbon)
        return Performed(
            step, bench, bench, edge.pieces,
            sewn=() if ends else (Sewn("101", 2 * width, edge.copies, Fraction(3), "fastening the ribbon"),),
            used=(Used(ribbon, edge.set_length + extra, edge.copies, f"ribbon in the {solved.pieces[edge.pieces[0]].label}"),),
            setup="hand", handled=edge.set_length * edge.copies, facts={"cut": edge.set_length + extra},
        )  # fmt: skip

    def tell(self, done: Performed, say: Say) -> Telling:
        step = done.step
        edge = done.before.edge(edge_of(step.step, "edge"))
        where, chain = say.edge(edge.pieces[0], edge.name.rpartition(".")[2]), say.chain(edge.copies)
        material = say.solved.materials[word_of(step.step, "ribbon")].material
        ribbon, ends = material.about or material.name.replace("_", " "), step.mm("ends")
        if ends:
            last = Action(f"Even the ends and tie a bow; {say.length(ends)} hang out at each end before it is tied.",
                          check="The trim lies flat and is not drawn in.", remedy="Loosen the ribbon before you tie it.", chain=chain)  # fmt: skip
        else:
            last = Action(f"Lay the ends {say.about(OVERLAP)} over each other behind the trim and sew them together by hand.",
                          check="The trim lies flat and is not drawn in.", remedy="Unpick the ends and let the ribbon out.", chain=chain)  # fmt: skip
        actions = (
            Action(f"Cut {say.length(done.facts['cut'])} of {ribbon}.", chain=chain),
            Action("Stop both its ends from fraying: dab them with textile glue and let it dry, or fold them under and sew them.",
                   chain=chain),
            Action(f"Thread it on a blunt needle or bodkin and draw it over and under through the holes along {where},"
                   f" starting {'at the middle of the front' if ends else f'at {side_seam(done.before, edge.pieces, say)}'}.",
                   check="The ribbon is not twisted and no hole is missed.", remedy="Draw it back to the place and go on from there.",
                   chain=chain),
            last,
        )  # fmt: skip
        return Telling(f"Thread ribbon through the trim of the {say.piece(edge.pieces[0])}", "The ribbon lies in the trim.",
                       actions, (CORDS, SEALING))  # fmt: skip


def _not_to_thread(step: SolvedStep, say: Say, solved: Solved, edge: Edge, ribbon: str) -> Fault | None:
    written, width, trim = step.step, width_of(solved, ribbon), width_of(solved, edge.trim)
    if width >= trim:
        return fault_at(
            written, "ribbon", "FB350", f"`{ribbon}` is {say.length(width)} wide and the trim `{edge.trim}` {say.length(trim)},"
            " so its holes are narrower", help="choose a narrower ribbon")  # fmt: skip
    if step.mm("ends") and word_of(written, "for") == CHILD:
        return fault_at(
            written, "ends", "FB348", f"ribbon ends of {say.length(step.mm('ends'))} hang from `{edge.name}`, and on a child 0 cm may",
            notes=("EN 14682:2007, children up to 14 years; a newer edition is in force",),
            help="write `ends: 0 cm`, or `for: grown-up` where no child wears it")  # fmt: skip
    return None


TECHNIQUE = RibbonThreading()
