"""Sew two shoulder straps and stitch them inside the top edge.

What it does: sews each strap to a tube, turns it, and sews its ends inside the finished top edge, in front and behind.
Edges before and after: the long edges and ends of the straps free, the top edge finished, before; all enclosed after.
Allowance: the seam at both long edges, each strap is folded; the lap and the turn at both ends.
Example: `- straps: {strap: strap, to: slip.top, front: 18 cm, back: 14 cm}`
Source: straps 18 cm apart in front and closer behind, tried on before they are sewn: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Ply, Seam, State
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import Length, Pieces, Stitch, Values, edge_said
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
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
    edge_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import PINS_OUT, SAFETY_PIN
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import lap_window, margins, seam_window
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, not_long, not_one_edge

STRAPS = 2
NARROWEST, SHORTEST = Fraction(8), Fraction(200)  # a narrower tube can't be turned, a shorter strap spans no shoulder
CLOSE = Fraction(2)


class Strapped(NamedTuple):
    """Two straps: how long each shows, how wide it is, and the round of the closed edge that they hang from, in mm."""

    long: Fraction
    wide: Fraction
    round: Fraction
    opened: bool  # by a way in


class Straps:
    name = "straps"
    about = "Sew two shoulder straps and stitch them inside the top edge."
    pictures = (Picture.STRAPS,)
    parameters = {
        "strap": Parameter(
            "The piece for the straps, cut twice: as long as they show, as deep as they are wide.", Kind.PIECE
        ),
        "to": Parameter("The finished top edge of a ring, or of one that a placket or zip opens.", Kind.EDGE),
        "front": Parameter("From strap to strap in front.", Kind.LENGTH, "18 cm"),
        "back": Parameter("From strap to strap behind.", Kind.LENGTH, "14 cm"),
        "seam": Parameter("Seam allowance along each strap.", Kind.LENGTH, "5 mm"),
        "lap": Parameter("How far each end lies inside the edge.", Kind.LENGTH, "2 cm"),
        "turn under": Parameter("How much of each end is folded under.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        strap = word_of(step, "strap")
        return (
            Allowance(strap, "top", ("seam",)),
            Allowance(strap, "bottom", ("seam",), doubles=True),
            Allowance(strap, "start", ("lap", "turn under")),
            Allowance(strap, "end", ("lap", "turn under")),
        )

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        step, strap, facts = done.step, word_of(done.step.written, "strap"), facts_of(done, Strapped)
        half = facts.round / 2
        windows = (
            seam_window(solved, "seam", step.mm("seam"), (strap,)),
            lap_window("lap", "a lap of the strap", step.mm("lap")),
            Window(
                "strap", "a strap", facts.wide, sewable_least=NARROWEST, why="its width: a narrower one can't be turned"
            ),
            Window("strap", "a strap", facts.long, least=SHORTEST, why="its length: it goes over a shoulder"),
            Window("front", "the space between the straps", step.mm("front"), most=half / 2, sewable_most=half),
            Window("back", "the space between the straps", step.mm("back"), most=half / 2, sewable_most=half),
        )
        return OnCloth(margins(ledger, step.mm("seam"), "seam", f"{strap}.top", f"{strap}.bottom"), windows)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, strap, name = step.written, word_of(step.written, "strap"), edge_of(step.written, "to")
        for side in ("top", "bottom", "start", "end"):
            if fault := edge_not_ready(bench, written, "strap", f"{strap}.{side}"):
                return refused(bench, step, (strap,), fault)
        if fault := _no_edge_for_it(bench, step, strap, name):
            return refused(bench, step, (strap,), fault)
        edge, numbers = bench.edge(name), solved.pieces[strap]
        seam, end = step.mm("seam"), step.mm("lap") + step.mm("turn under")
        after = bench.with_cloths(bench.cloths[strap]._replace(folded=True, copies=1))
        for side, took in (("top", seam), ("bottom", seam), ("start", end), ("end", end)):
            each = after.edge(f"{strap}.{side}")
            after = after.with_edges(each._replace(state=State.ENCLOSED, used=each.used + took, copies=1))
        piece = edge.pieces[0]
        after = after.with_seams(
            Seam(f"{strap}.top", (), (Ply(strap, 2),), numbers.cut_length, STRAPS, seam, "301", State.ENCLOSED),
            Seam(
                f"{strap}.end",
                (),
                (Ply(strap, 2), Ply(piece)),
                numbers.depth,
                4,
                end,
                "301",
                State.ENCLOSED,
                turned=piece,
            ),
        )
        after = after._replace(straps=after.straps | {strap}).bearing(strap, piece)
        return Performed(
            step,
            bench,
            after,
            (strap, piece),
            sewn=(
                Sewn(StitchType.LOCK, numbers.cut_length, STRAPS, room.seam_stitch),
                Sewn(StitchType.LOCK, 2 * (step.mm("lap") + numbers.depth), 2 * STRAPS, room.seam_stitch),
            ),
            setup=SetUp.STRAIGHT,
            pinned=numbers.cut_length * STRAPS,
            handled=2 * numbers.cut_length * STRAPS,
            facts=Strapped(numbers.length, numbers.depth, bench.closed_round(edge), not bench.ring(edge)),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, facts = done.step, facts_of(done, Strapped)
        strap, edge = word_of(step.written, "strap"), done.before.edge(edge_of(step.written, "to"))
        actions = (
            Action("straps-sew", STRAPS),
            Action("straps-turn", STRAPS),
            *((Action("straps-close"),) if facts.opened else ()),
            Action("straps-mark"),
            Action("straps-pin"),
            Action("straps-try"),
            Action("straps-fasten"),
        )
        values: Values = {
            "hair-off": Length(Fraction(1), "off"),
            "close-off": Length(Fraction(3), "off"),
            "strap": Pieces((strap,)),
            "edge": edge_said(edge),
            "long": Length(facts.long),
            "wide": Length(facts.wide),
            "round": Length(facts.round),
            "quarter": Length(facts.round / 4),
            "half-front": Length(step.mm("front") / 2),
            "half-back": Length(step.mm("back") / 2),
            "seam": seam_said(done.before, edge.pieces, say),
            "seam-width": Length(step.mm("seam")),
            "lap": Length(step.mm("lap")),
            "under": Length(step.mm("turn under")),
            "close": Length(CLOSE, "about"),
            "stitch": Stitch(say.room.seam_stitch),
        }
        cautions = (PINS_OUT, SAFETY_PIN, iron_hot(done, say))
        tools = (*iron_tools(done, say, strap), Tool.SAFETY_PIN)
        return Instructions(
            "straps-title", "straps-aim", actions, values, cautions, tools, (strap,), ironed=("straps-turn",)
        )


def _no_edge_for_it(bench: Bench, step: SolvedStep, strap: str, name: str) -> Fault | None:
    written = step.written
    if name not in bench.edges:
        return fault_at(
            written, "to", "FB301", f"`{name}` is used before its layers are stacked", help="name the edge of a piece"
        )
    edge = bench.edge(name)
    if fault := not_one_edge(written, "to", edge) or not_long(written, "to", edge):
        return fault
    if bench.cloths[strap].copies != STRAPS:
        return fault_at(
            written,
            "strap",
            "FB305",
            f"there are {bench.cloths[strap].copies} of `{strap}`, and it takes {STRAPS} straps",
            help=f"write `count: {STRAPS}` at `{strap}`",
        )
    if not bench.goes_round(edge):
        return fault_at(
            written,
            "to",
            "FB304",
            f"`{name}` is flat, and straps are placed round a ring",
            help=f"close the ends of `{edge.pieces[0]}` before this step",
        )
    if not bench.finished(edge):
        sewn = edge.state is State.SEWN
        headline = f"`{name}` is {edge.state}{'' if sewn else ' still'}, and straps are sewn inside a finished edge"
        mend = (
            mends.Mend("name the finished edge above that seam", None)
            if sewn
            else mends.before(written, f"narrow hem: {{edge: {name}}}")
        )
        return fault_at(written, "to", "FB335", headline, mend=mend)
    return None


TECHNIQUE = Straps()
