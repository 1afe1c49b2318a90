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
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Ledger, LooseEnd, OnCloth, Window
from furbelow.garment.message import Length, Part, Pieces, Supply, Values, edge_said
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step, SupplyKind
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Kind,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    Tool,
    Used,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import CORDS, NO_FLAME_ON_ENDS
from furbelow.techniques.shared.cords import CHILD, GROWN
from furbelow.techniques.shared.marks import seam_said

OVERLAP = Fraction(20)
LEAST_END, USUAL_END = Fraction(50), Fraction(100)  # to tie; house rule, maker to confirm

TOOLS = (Tool.BODKIN, Tool.TEXTILE_GLUE)


class RibbonThreading:
    name = "ribbon threading"
    about = "Thread a ribbon through the holes of a trim."
    pictures = (Picture.PIECES,)
    parameters = {
        "edge": Parameter("The edge that carries the trim.", Kind.EDGE),
        "ribbon": Parameter("The ribbon, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.TRIM,)),
        "ends": Parameter(
            "How far each end hangs out for a bow; 0 sews the ends over each other.", Kind.LENGTH, "0 cm"
        ),
        "for": Parameter("Who wears it; ribbon ends on children have limits.", (CHILD, GROWN), CHILD),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        ends = done.step.mm("ends")
        windows = (
            Window("ends", "a ribbon end", ends, least=USUAL_END, sewable_least=LEAST_END, why="it has to be tied"),
        )
        if not ends:
            return OnCloth()
        carries = done.before.opened(edge_of(done.step.written, "edge"))
        hang = (LooseEnd("ends", piece, side, ends) for piece, _, side in (each.partition(".") for each in carries))
        return OnCloth(windows=windows, loose=tuple(hang))

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
            sewn=() if ends else (Sewn(StitchType.HAND, 2 * width, edge.copies, Fraction(3)),),
            used=(
                Used(
                    ribbon,
                    edge.set_length + extra,
                    edge.copies,
                    Part("use-ribbon", {"piece": Pieces((edge.pieces[0],))}),
                ),
            ),
            setup=SetUp.HAND,
            handled=edge.set_length * edge.copies,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, ends = done.step, done.step.mm("ends")
        edge = done.before.edge(edge_of(step.written, "edge"))
        messages = (
            "ribbon-threading-cut",
            "ribbon-threading-seal",
            "ribbon-threading-thread-bow" if ends else "ribbon-threading-thread",
            "ribbon-threading-bow" if ends else "ribbon-threading-sew",
        )
        values: Values = {
            "edge": edge_said(edge),
            "seam": seam_said(done.before, edge.pieces, say),
            "ribbon": Supply(word_of(step.written, "ribbon")),
            "ribbon-length": Length(done.used[0].amount),
            "ends": Length(ends),
            "overlap": Length(OVERLAP, "about"),
        }
        actions = tuple(Action(message, edge.copies) for message in messages)
        cautions = (CORDS, NO_FLAME_ON_ENDS)
        return Instructions("ribbon-threading-title", "ribbon-threading-aim", actions, values, cautions, TOOLS)


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
            mend=mends.write(written, "ends", "0 cm", ", or `for: grown-up` where no child wears it"),
        )
    return None


TECHNIQUE = RibbonThreading()
