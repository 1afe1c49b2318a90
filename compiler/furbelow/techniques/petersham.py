"""Finish a waist with petersham ribbon, turned to the inside.

What it does: stitches the ribbon on the right side of the edge, turns it inside along its stitching and catches it there.
Edges before and after: the edge raw or neat, gathered or flat, before; enclosed under the ribbon after.
Allowance: the lap, at the edge.
Example: `- petersham: {edge: skirt.top, ribbon: petersham, lap: 1 cm}`
Source: ribbon of 2.5 cm, stitched close to its edge, ends turned under by 1 cm: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Edge, Seam, State
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import Length, Part, Stitch, Supply, Values, edge_said, flag
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
    allowances_at,
    edge_at,
    edge_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import HAND_NEEDLE, PINS_OUT
from furbelow.techniques.shared.gathers import knots_of, tails_hang, tails_off, tails_said
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import margins, seam_window
from furbelow.techniques.shared.preconditions import edge_not_ready, not_long
from furbelow.techniques.shared.stacks import taken

EDGE = Fraction(2)
END = Fraction(10)  # turned under at each end, or lapped on a ring by twice that
LEAST = Fraction(15)  # of the ribbon: it covers the margin and holds the waist


class Ribboned(NamedTuple):
    """The ribbon: how long it is cut, on an edge of what length; in mm."""

    cut: Fraction
    length: Fraction
    width: Fraction


class Petersham:
    name = "petersham"
    about = "Finish a waist with petersham ribbon, turned to the inside."
    pictures = (Picture.PETERSHAM,)
    parameters = {
        "edge": Parameter("The top edge, as long as the waist is to be.", Kind.EDGE),
        "ribbon": Parameter("The ribbon, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.TRIM,)),
        "lap": Parameter("How far the ribbon lies over the edge.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return allowances_at(edges_in(edge_at(step, "edge")), "lap")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        lap, name = done.step.mm("lap"), edge_of(done.step.written, "edge")
        width = facts_of(done, Ribboned).width
        windows = (
            seam_window(solved, "lap", lap, done.touches),
            Window(
                "ribbon", "a ribbon for a waist", width, sewable_least=max(LEAST, lap + 5), why="it covers the margin"
            ),
        )
        return OnCloth(margins(ledger, lap, "lap", name), windows)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name = step.written, edge_of(step.written, "edge")
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge, lap, ribbon = bench.edge(name), step.mm("lap"), word_of(written, "ribbon")
        if fault := not_long(written, "edge", edge) or _copies(step, edge):
            return refused(bench, step, edge.pieces, fault)
        after = bench.with_edges(edge._replace(state=State.ENCLOSED, used=edge.used + lap, held=True))
        after = taken(after, edge, lap).taken_above(name, lap)
        after = after.with_seams(
            Seam(
                name,
                (name,),
                edge.plies,
                edge.set_length,
                1,
                lap,
                "301",
                State.ENCLOSED,
                topstitched=True,
                trapped=True,
            )
        )
        cut = edge.set_length + 2 * END
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(Sewn(StitchType.LOCK, edge.set_length, 1, room.seam_stitch),),
            used=(Used(ribbon, cut, 1, Part("use-petersham")),),
            setup=SetUp.STRAIGHT,
            pinned=edge.set_length,
            handled=edge.set_length,
            thread_ends=knots_of(edge) if tails_hang(edge) else 0,
            facts=Ribboned(cut, edge.set_length, width_of(solved, ribbon)),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts = done.step.written, facts_of(done, Ribboned)
        edge = done.before.edge(edge_of(written, "edge"))
        ring = done.before.ring(edge)
        actions = (
            Action("petersham-cut"),
            Action("petersham-lay"),
            Action("petersham-ends-ring" if ring else "petersham-ends-flat"),
            *((Action(tails_off(edge), values=tails_said(edge)),) if tails_hang(edge) else ()),
            Action("petersham-sew"),
            Action("petersham-turn"),
            Action("petersham-catch"),
        )
        values: Values = {
            "edge": edge_said(edge),
            "ribbon": Supply(word_of(written, "ribbon")),
            "cut": Length(facts.cut),
            "length": Length(facts.length),
            "lap": Length(done.step.mm("lap")),
            "close": Length(EDGE, "about"),
            "end": Length(END, "about"),
            "gathered": flag(edge.gathered),
            "off": Length(facts.length / 100, "off"),
            "stitch": Stitch(say.room.seam_stitch),
        }
        cautions, tools = (PINS_OUT, iron_hot(done, say), HAND_NEEDLE), (*iron_tools(done, say), Tool.HAND_NEEDLE)
        return Instructions(
            "petersham-title", "petersham-aim", actions, values, cautions, tools, ironed=("petersham-turn",)
        )


def _copies(step: SolvedStep, edge: Edge) -> Fault | None:
    if edge.copies == 1:
        return None
    return fault_at(
        step.written,
        "edge",
        "FB305",
        f"there are {edge.copies} of `{edge.name}` and 1 ribbon",
        help="stack the layers first",
    )


TECHNIQUE = Petersham()
