"""Sew a patch pocket on a piece.

What it does: hems the top of the pocket, turns its other edges under and stitches it on the right side of the cloth.
Edges before and after: all four edges of the pocket raw or neat before; the top hemmed, the others stitched down after.
Allowance: the hem and its turn at the top of the pocket, the seam at its other edges. The piece beneath gives nothing.
Example: `- patch pocket: {pocket: pocket, on: base, below top: 10 cm, from start: 18 cm}`
Source: a hem of 2.5 cm, edges stitched 2 mm in, a triangle at both upper corners, an opening of 13 cm or more for a grown hand:
    common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, OnLine, Seam, State
from furbelow.garment.lying import Band, Ledger, Lies, Occupant, OnCloth, Window
from furbelow.garment.message import Length, Pieces, Stitch, Values, flag
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
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.tolerance import CUT_OFF
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import bare_edge, turn_window
from furbelow.techniques.shared.lines import HEIGHTS, LEVEL_OFF, down_to_line, height_given
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, one_unit, strips_not_joined
from furbelow.techniques.shared.seam_openings import to_come

EDGE = Fraction(2)
TRIANGLE = Fraction(10)
A_HAND = Fraction(130)  # across, of a grown-up; of a child it is less, so a narrower pocket warns
A_FINGER = Fraction(50)


class Patched(NamedTuple):
    """Where the pocket lies: its top below the cut top edge and below the edge as it is now, its near side from the cut start
    and from the start as it is now; how wide and high it is, how many there are; in mm."""

    down: Fraction
    from_edge: Fraction
    along: Fraction
    from_start: Fraction
    wide: Fraction
    high: Fraction
    pockets: int


class PatchPocket:
    name = "patch pocket"
    about = "Sew a patch pocket on a piece, or one at each side."
    pictures = (Picture.PATCH_POCKET,)
    parameters = {
        "pocket": Parameter(
            "The pocket: length across, depth down. Cut twice, the other lies at the other side.", Kind.PIECE
        ),
        "on": Parameter("The piece that it is sewn on.", Kind.PIECE),
        **HEIGHTS,
        "from start": Parameter("From the finished start edge, or the side seam, to the pocket.", Kind.LENGTH),
        "hem": Parameter("The hem at its top.", Kind.LENGTH, "25 mm"),
        "turn under": Parameter("What is folded under first at that hem.", Kind.LENGTH, "1 cm"),
        "seam": Parameter("What is turned under at the other three edges.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        pocket = word_of(step, "pocket")
        return (
            Allowance(pocket, "top", ("hem", "turn under")),
            *(Allowance(pocket, side, ("seam",)) for side in ("bottom", "start", "end")),
        )

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, facts = done.step.written, facts_of(done, Patched)
        pocket, on = word_of(written, "pocket"), word_of(written, "on")
        down = ledger.sewn_band(on, facts.down, facts.down + facts.high)
        whole = ledger.bench.cloths[on].piece.cut_length
        places = [Band(facts.along, facts.along + facts.wide)]
        if facts.pockets == 2:
            places.append(Band(whole - facts.along - facts.wide, whole - facts.along))
        lies = tuple(
            Occupant(on, Lies.STRIP, f"the pocket `{pocket}`", down, along, height_given(done.step)) for along in places
        )
        windows = (
            Window("pocket", "a pocket", facts.wide, least=A_HAND, sewable_least=A_FINGER, why="a hand goes in"),
            turn_window("seam", "a turn", done.step.mm("seam"), into=facts.wide / 2),
            turn_window("hem", "a hem", done.step.mm("hem"), into=facts.high),
            turn_window(
                "turn under",
                "a turn",
                done.step.mm("turn under"),
                into=done.step.mm("hem"),
                bare=bare_edge(ledger, solved, f"{pocket}.top"),
            ),
        )
        return OnCloth(lies, windows)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        pocket, on = word_of(written, "pocket"), word_of(written, "on")
        for side in ("top", "bottom", "start", "end"):
            if fault := edge_not_ready(bench, written, "pocket", f"{pocket}.{side}"):
                return refused(bench, step, (pocket,), fault)
        down = down_to_line(step, say, on)
        if not isinstance(down, Fraction):
            return refused(bench, step, (pocket, on), down)
        fault = strips_not_joined(bench, written, "on", (on,)) or _does_not_lie(bench, step, say, pocket, on, down)
        if fault:
            return refused(bench, step, (pocket, on), fault)
        piece, cloth = solved.pieces[pocket], bench.cloths[pocket]
        taken = {"top": step.mm("hem") + step.mm("turn under")}
        after = bench.with_cloths(cloth._replace(copies=1))
        for side in ("top", "bottom", "start", "end"):
            took = taken.get(side, step.mm("seam"))
            state = State.HEMMED if side == "top" else State.ENCLOSED
            after = after.turned(after.edge(f"{pocket}.{side}")._replace(copies=1), took, state)
        around = piece.length + 2 * piece.depth
        own = Seam(
            f"{pocket}.bottom",
            (f"{pocket}.bottom",),
            after.edge(f"{pocket}.bottom").plies,
            around,
            1,
            step.mm("seam"),
            "301",
            State.ENCLOSED,
            turned=pocket,
            topstitched=True,
            on=OnLine(on, down),
        )
        begins = step.mm("from start") + to_come(bench, say, f"{on}.start")
        facts = Patched(
            down,
            down - bench.edge(f"{on}.top").used,
            bench.edge(f"{on}.start").used + begins,
            begins,
            piece.length,
            piece.depth,
            cloth.copies,
        )
        return Performed(
            step,
            bench,
            after.with_seams(own).bearing(pocket, on),
            (pocket, on),
            sewn=(
                Sewn(StitchType.LOCK, piece.length, cloth.copies, room.seam_stitch),
                Sewn(StitchType.LOCK, around + 6 * TRIANGLE, cloth.copies, room.seam_stitch),
            ),
            setup=SetUp.STRAIGHT,
            pinned=around * cloth.copies,
            handled=(around + piece.length) * cloth.copies,
            facts=facts,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, facts = done.step, facts_of(done, Patched)
        pocket, on = word_of(step.written, "pocket"), word_of(step.written, "on")
        top = done.before.edge(f"{on}.top")
        ring = done.before.cloths[on].ring
        actions = (
            Action("patch-pocket-hem", facts.pockets),
            Action("patch-pocket-press", facts.pockets),
            Action("patch-pocket-mark-ring" if ring else "patch-pocket-mark-flat"),
            *((Action("patch-pocket-mark-other"),) if facts.pockets == 2 else ()),
            Action("patch-pocket-pin", facts.pockets),
            Action("patch-pocket-sew", facts.pockets),
        )
        values: Values = {
            "pocket": Pieces((pocket,)),
            "on": Pieces((on,)),
            "pockets": facts.pockets,
            "finished": flag(top.state in (State.SEWN, State.HEMMED, State.ENCLOSED)),
            "seam": seam_said(done.before, (on,), say),
            "from-edge": Length(facts.from_edge),
            "near": Length(facts.from_start),
            "far": Length(facts.from_start + facts.wide),
            "wide": Length(facts.wide),
            "high": Length(facts.high),
            "hem": Length(step.mm("hem")),
            "under": Length(step.mm("turn under")),
            "turn": Length(step.mm("seam")),
            "edge": Length(EDGE, "about"),
            "triangle": Length(TRIANGLE, "about"),
            "off": Length(CUT_OFF, "off"),
            "level-off": Length(LEVEL_OFF, "off"),
            "stitch": Stitch(say.room.seam_stitch),
        }
        cautions, tools = (PINS_OUT, iron_hot(done, say)), (*iron_tools(done, say, pocket), Tool.PINS)
        return Instructions(
            "patch-pocket-title",
            "patch-pocket-aim",
            actions,
            values,
            cautions,
            tools,
            (pocket,),
            ironed=("patch-pocket-hem", "patch-pocket-press"),
        )


def _does_not_lie(bench: Bench, step: SolvedStep, say: Phrasing, pocket: str, on: str, down: Fraction) -> Fault | None:
    written, piece, base = step.written, say.solved.pieces[pocket], say.solved.pieces[on]
    if fault := one_unit(bench, written, "on", pocket, on, "name the piece beneath"):
        return fault
    if bench.cloths[pocket].copies > 2:
        return fault_at(
            written,
            "pocket",
            "FB305",
            f"there are {bench.cloths[pocket].copies} of `{pocket}`, and a step sews on 1, or 1 at each side",
            help="give the others a piece and a step of their own",
        )
    if bench.cloths[on].copies > 1:
        return fault_at(
            written,
            "on",
            "FB305",
            f"there are {bench.cloths[on].copies} of `{on}` and a pocket for 1",
            help="give the layer with the pocket a piece of its own",
        )
    pockets = bench.cloths[pocket].copies
    room = bench.edge(f"{on}.top").cloth_length / pockets
    over = step.mm("from start") + piece.length - room
    low = down + piece.depth - (base.cut_depth - bench.edge(f"{on}.bottom").used)
    if over > 0 or low > 0:
        arg = "from start" if over > 0 else height_given(step)
        return fault_at(
            written,
            arg,
            "FB427",
            f"the pocket `{pocket}` reaches {say.length(max(over, low))} beyond its room on `{on}`",
            help="place it further inside, or make it smaller",
        )
    return None


TECHNIQUE = PatchPocket()
