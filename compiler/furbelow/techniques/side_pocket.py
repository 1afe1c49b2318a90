"""Sew a pocket into the gap of a seam.

What it does: sews a bag piece to each margin of the gap, turns both to one side and sews them together round their edges.
Edges before and after: a seam with a gap, and two bag pieces of four open edges, before; the gap is filled and the bag closed
    after, its margins lying free inside.
Allowance: the seam at all four edges of the bag pieces. The garment gives nothing beyond its seam.
Example: `- side pocket: {bag: bag, in: skirt.ends, seam: 1 cm}`
Source: a gap of 14 to 18 cm for a grown hand, a bag 10 cm or more deeper than the gap, bars at both ends of it: common
    practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, OnLine, Ply, Seam, State
from furbelow.garment.levels import levels_of
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import Length, Pieces, Stitch, Values
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
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import seam_window
from furbelow.techniques.shared.preconditions import edge_not_ready, margin_state, one_unit
from furbelow.techniques.shared.seam_openings import to_come, to_leave_open

ABOVE = Fraction(10)  # the bag begins so far above the gap, so that its seam lies in the side seam
USUAL_GAP, LEAST_GAP = Fraction(140), Fraction(80)
DEEPER = Fraction(100)  # below the gap: what lies in a shallower bag falls out
BAR = Fraction(5)


class InSeam(NamedTuple):
    """The gap from and to below the edge as it is now, and the bag, in mm."""

    begins: Fraction
    ends: Fraction
    wide: Fraction
    high: Fraction


class SidePocket:
    name = "side pocket"
    about = "Sew a pocket into the gap of a seam."
    pictures = (Picture.SIDE_POCKET,)
    parameters = {
        "bag": Parameter("The bag, cut twice: length across, depth down.", Kind.PIECE),
        "in": Parameter("The seam that has a gap, such as skirt.ends.", Kind.EDGE),
        "seam": Parameter("Seam allowance all round the bag.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return tuple(Allowance(word_of(step, "bag"), side, ("seam",)) for side in ("top", "bottom", "start", "end"))

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        facts, bag = facts_of(done, InSeam), word_of(done.step.written, "bag")
        gap = facts.ends - facts.begins
        windows = (
            seam_window(solved, "seam", done.step.mm("seam"), (bag,)),
            Window(
                "in", "a gap for a hand", gap, least=USUAL_GAP, sewable_least=LEAST_GAP, why="set by `gap` of the seam"
            ),
            Window(
                "bag",
                "a bag",
                facts.high,
                least=gap + ABOVE + DEEPER,
                sewable_least=gap + ABOVE,
                why="deeper than its gap",
            ),
        )
        return OnCloth(windows=windows)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        bag, name = word_of(written, "bag"), edge_of(written, "in")
        seam = bench.seam_at(name)
        for side in ("top", "bottom", "start", "end"):
            if fault := edge_not_ready(bench, written, "bag", f"{bag}.{side}"):
                return refused(bench, step, (bag,), fault)
        if seam is None or seam.gap is None or seam.gap.closed:
            filled = seam is not None and seam.gap is not None
            return refused(
                bench,
                step,
                (bag,),
                fault_at(
                    written,
                    "in",
                    "FB318",
                    f"the gap in `{name}` has its pocket already"
                    if filled
                    else f"there is no seam `{name}` with a gap in it",
                    mend=mends.leave_out(written)
                    if filled
                    else to_leave_open(step, solved, name, "gap: 16 cm, gap below top: 6 cm"),
                ),
            )
        on = seam.plies[0].piece
        if fault := _does_not_go_in(bench, step, say, bag, on, seam):
            return refused(bench, step, (bag, on), fault)
        piece, width = solved.pieces[bag], step.mm("seam")
        edges = [bench.edge(f"{bag}.{side}") for side in ("top", "bottom", "start", "end")]
        after = bench.with_cloths(bench.cloths[bag]._replace(copies=1))
        for edge in edges:
            after = after.turned(after.edge(edge.name)._replace(copies=1), width, State.SEWN)
        around = 2 * piece.length + piece.depth
        closed = Seam(
            f"{bag}.top",
            (f"{bag}.top",),
            (Ply(bag, 2),),
            around,
            1,
            width,
            "301",
            margin_state(solved, *edges),
            on=OnLine(on, seam.gap.down - ABOVE),
        )
        mouth = closed._replace(name=f"{bag}.start", edges=(f"{bag}.start",), length=piece.depth, copies=2, on=None)
        after = after.with_seams(closed, mouth, seam._replace(gap=seam.gap._replace(closed=True))).bearing(bag, on)
        begins = seam.gap.down - bench.edge(f"{on}.top").used
        return Performed(
            step,
            bench,
            after,
            (bag, on),
            sewn=(
                Sewn(StitchType.LOCK, piece.depth, 2, room.seam_stitch),
                Sewn(StitchType.LOCK, around, 1, room.seam_stitch),
                Sewn(StitchType.LOCK, 4 * BAR, 2, Fraction(1)),
            ),
            setup=SetUp.STRAIGHT,
            pinned=2 * piece.depth + around,
            handled=piece.depth,
            facts=InSeam(begins, begins + seam.gap.length, piece.length, piece.depth),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, facts = done.step, facts_of(done, InSeam)
        bag, on = done.touches
        names = (
            "side-pocket-mark",
            "side-pocket-lay",
            "side-pocket-sew",
            "side-pocket-turn",
            "side-pocket-close",
            "side-pocket-bars",
        )
        values: Values = {
            "close-off": Length(Fraction(3), "off"),
            "bag": Pieces((bag,)),
            "on": Pieces((on,)),
            "begins": Length(facts.begins),
            "ends": Length(facts.ends),
            "gap": Length(facts.ends - facts.begins),
            "above": Length(ABOVE, "about"),
            "wide": Length(facts.wide),
            "high": Length(facts.high),
            "seam-width": Length(step.mm("seam")),
            "around": Length(2 * facts.wide + facts.high),
            "bar": Length(BAR, "about"),
            "stitch": Stitch(say.room.seam_stitch),
        }
        actions, cautions = tuple(map(Action, names)), (PINS_OUT, iron_hot(done, say))
        tools = (*iron_tools(done, say, bag), Tool.PINS)
        return Instructions(
            "side-pocket-title",
            "side-pocket-aim",
            actions,
            values,
            cautions,
            tools,
            (bag,),
            ironed=("side-pocket-turn",),
        )


def _does_not_go_in(bench: Bench, step: SolvedStep, say: Phrasing, bag: str, on: str, seam: Seam) -> Fault | None:
    written = step.written
    if fault := one_unit(bench, written, "bag", bag, on, "name the bag"):
        return fault
    if bench.cloths[bag].copies != 2:
        return fault_at(
            written,
            "bag",
            "FB305",
            f"there are {bench.cloths[bag].copies} of `{bag}`, and a pocket takes 2",
            help=f"write `count: 2` at `{bag}`",
        )
    levels, gap = levels_of(bench), seam.gap
    begins = levels.tops[on] + (gap.down if gap else Fraction(0)) - bench.edge(f"{on}.top").used - ABOVE
    above = ABOVE - (gap.down if gap else Fraction(0)) + bench.edge(f"{on}.top").used + to_come(bench, say, f"{on}.top")
    if above > 0:
        return fault_at(
            written,
            "bag",
            "FB427",
            f"the bag `{bag}` begins {say.length(above)} above the top of what it hangs in",
            help=f"write `gap below top: {say.within(ABOVE, least=True)}` or more in the step that leaves the gap",
        )
    over = (
        begins
        + say.solved.pieces[bag].depth
        - max(levels.bottoms[piece] - to_come(bench, say, f"{piece}.bottom") for piece in bench.unit(on))
    )
    if over > 0:
        return fault_at(
            written,
            "bag",
            "FB427",
            f"the bag `{bag}` ends {say.length(over)} below the hem of what it hangs in",
            help="make the bag shallower, or the gap higher",
        )
    return None


TECHNIQUE = SidePocket()
