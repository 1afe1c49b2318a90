"""Line a flat piece by bagging it out: sewn round, turned through an opening.

What it does: sews piece and lining right sides together all round, turns them through a gap and closes it by hand.
Edges before and after: all edges of two flat pieces of one size, raw or neatened, before; enclosed after. With the top
    left open the work is turned through it, and both top edges stay as they are.
Allowance: the seam, at every edge that is sewn, of both pieces.
Example: `- bagged lining: {piece: apron, lining: apron_lining, seam: 1 cm, leave open: top}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import LINED, Bench, Ply, Seam, State
from furbelow.garment.lying import Ledger, Lies, Occupant, OnCloth, Window
from furbelow.garment.message import Length, One, Pieces, Stitch, Values
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
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import HAND_NEEDLE, PINS_OUT
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import margins, seam_window
from furbelow.techniques.shared.preconditions import edge_not_ready

GAP, TOP = "a gap", "top"
CORNER = Fraction(2)  # left outside the stitches; common practice, no source
LEAST_GAP, USUAL_GAP = Fraction(30), Fraction(60)  # to turn through; house rule, maker to confirm


class Bagged(NamedTuple):
    """A piece bagged out: its seam all round, the gap left in it, and how wide and deep it comes out."""

    around: Fraction
    gap: Fraction
    wide: Fraction
    deep: Fraction


class BaggedLining:
    name = "bagged lining"
    about = "Sew a piece and its lining together all round and turn them right side out."
    pictures = (Picture.PIECES, Picture.BAGGED_EDGE)
    parameters = {
        "piece": Parameter("The outer piece, flat.", Kind.PIECE),
        "lining": Parameter("The lining, of the same size.", Kind.PIECE),
        "seam": Parameter("Seam allowance all round.", Kind.LENGTH, "1 cm"),
        "leave open": Parameter("A gap in the bottom edge, closed by hand, or the whole top edge.", (GAP, TOP), GAP),
        "gap": Parameter("Width of the gap.", Kind.LENGTH, "12 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return tuple(
            Allowance(word_of(step, piece), side, ("seam",)) for piece in ("piece", "lining") for side in _sides(step)
        )

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, seam = done.step.written, done.step.mm("seam")
        pieces = word_of(written, "piece"), word_of(written, "lining")
        names = [f"{piece}.{side}" for piece in pieces for side in _sides(written)]
        windows = [seam_window(solved, "seam", seam, pieces)]
        if word_of(written, "leave open") == GAP:
            windows.append(
                Window(
                    "gap",
                    "a turning gap",
                    done.step.mm("gap"),
                    least=USUAL_GAP,
                    sewable_least=LEAST_GAP,
                    why="all the cloth goes through it",
                )
            )
        behind = tuple(Occupant(piece, Lies.LINING, "the lining", arg="lining") for piece in pieces)
        return OnCloth((*margins(ledger, seam, "seam", *names), *behind), tuple(windows))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say, seam = step.written, Phrasing(solved, room), step.mm("seam")
        outer, lining = word_of(written, "piece"), word_of(written, "lining")
        for arg, piece in (("piece", outer), ("lining", lining)):
            for side in _sides(written):
                if fault := edge_not_ready(bench, written, arg, f"{piece}.{side}"):
                    return refused(bench, step, (outer, lining), fault)
        if fault := _no_pair(bench, step, say, solved, outer, lining):
            return refused(bench, step, (outer, lining), fault)
        after = bench
        for piece in (outer, lining):
            for side in _sides(written):
                edge = after.edge(f"{piece}.{side}")
                after = after.with_edges(edge._replace(state=State.ENCLOSED, used=edge.used + seam))
        copies, cut = bench.cloths[outer].copies, solved.pieces[outer]
        shows = cut.cut_length - 2 * seam
        rows = len([side for side in _sides(written) if side in ("top", "bottom")])
        deep = bench.depth(outer) - seam * rows  # tucks have taken their share before
        for piece in (outer, lining):
            for side, length in (("top", shows), ("bottom", shows), ("start", deep), ("end", deep)):
                edge = after.edge(f"{piece}.{side}")
                after = after.with_edges(edge._replace(set_length=length, cloth_length=length))
        around = rows * shows + 2 * deep
        gap = Fraction(0) if word_of(written, "leave open") == TOP else step.mm("gap")
        closed = Seam(
            f"{outer}{LINED}",
            (),
            (Ply(outer), Ply(lining, right_side="in")),
            around,
            copies,
            seam,
            "301",
            State.ENCLOSED,
        )
        own = [each for each in bench.seams.values() if {ply.piece for ply in each.plies} <= {outer, lining}]
        after = after.with_seams(closed, *(each._replace(trapped=True) for each in own)).joined((outer, lining))
        sewn = [Sewn(StitchType.LOCK, around - gap, copies, room.seam_stitch)]
        if gap:
            sewn.append(Sewn(StitchType.HAND, gap, copies, Fraction(4)))
        return Performed(
            step,
            bench,
            after,
            (outer, lining),
            sewn=tuple(sewn),
            setup=SetUp.STRAIGHT,
            pinned=around * copies,
            handled=around * copies,
            facts=Bagged(around, gap, shows, deep),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, facts = done.step, facts_of(done, Bagged)
        outer, lining = word_of(step.written, "piece"), word_of(step.written, "lining")
        messages = ["bagged-lining-lay"]
        if facts.gap:
            messages += ["bagged-lining-mark", "bagged-lining-sew-gap", "bagged-lining-trim", "bagged-lining-turn-gap"]
            messages += ["bagged-lining-roll", "bagged-lining-close"]
        else:
            messages += ["bagged-lining-sew-top", "bagged-lining-trim", "bagged-lining-turn-top", "bagged-lining-roll"]
        values: Values = {
            "outer": Pieces((outer,)),
            "lining": Pieces((lining,)),
            "seam-width": Length(step.mm("seam")),
            "length": Length(facts.around - facts.gap),
            "gap": Length(facts.gap),
            "wide": Length(facts.wide),
            "deep": Length(facts.deep),
            "off": Length(Fraction(3), "about"),
            "corner": Length(CORNER, "about"),
            "stitch": Stitch(done.sewn[0].stitch),
            "hold": One(say.room.hold_with, ("pins", "clips")),
        }
        copies = done.before.cloths[outer].copies
        by_hand = (HAND_NEEDLE,) if facts.gap else ()
        return Instructions(
            "bagged-lining-title",
            "bagged-lining-aim-gap" if facts.gap else "bagged-lining-aim-top",
            tuple(Action(name, copies) for name in messages),
            values,
            (PINS_OUT, iron_hot(done, say), *by_hand),
            (*iron_tools(done, say), Tool.BLUNT_STICK, *((Tool.HAND_NEEDLE,) if facts.gap else ())),
            ironed=("bagged-lining-roll",),
        )


def _sides(step: Step) -> tuple[str, ...]:
    sides = ("start", "end", "bottom")
    return sides if word_of(step, "leave open") == TOP else (*sides, "top")


def _no_pair(bench: Bench, step: SolvedStep, say: Phrasing, solved: Solved, outer: str, lining: str) -> Fault | None:
    written, one, other = step.written, solved.pieces[outer], solved.pieces[lining]
    if outer == lining:
        return fault_at(written, "lining", "FB317", f"`{lining}` can't line itself", help="name another piece")
    for arg, piece in (("piece", outer), ("lining", lining)):
        if bench.cloths[piece].ring:
            return fault_at(
                written,
                arg,
                "FB304",
                f"`{piece}` is closed to a ring, and bagging out needs flat pieces",
                help="line it before its ends are closed, or stack the lining inside it",
            )
        # Only what lies on it may be sewn to it already: pockets, ruches, rows.
        if fault := edge_not_ready(bench, written, arg, f"{piece}.top"):
            return fault
    if bench.cloths[outer].copies != bench.cloths[lining].copies:
        return fault_at(
            written,
            "lining",
            "FB305",
            f"there are {bench.cloths[outer].copies} of `{outer}` and {bench.cloths[lining].copies} of `{lining}`",
            help="give both the same `count`",
        )
    for what, a, b in (
        ("long", one.cut_length, other.cut_length),
        ("deep", bench.depth(outer), bench.depth(lining)),
    ):
        if solved.apart(a, b):
            long, wanted, off = say.apart(a, b)
            return fault_at(
                written,
                "lining",
                "FB401",
                f"`{outer}` is {long} {what} and `{lining}` {wanted}, {off} apart",
                help="make the lining the same size",
            )
    gap = step.mm("gap")
    if word_of(written, "leave open") == GAP and gap >= one.cut_length - 2 * step.mm("seam"):
        return fault_at(
            written,
            "gap",
            "FB352",
            f"a gap of {say.length(gap)} is wider than its edge of {say.length(one.cut_length - 2 * step.mm('seam'))}",
            help="leave a narrower gap, or `leave open: top`",
        )
    return None


TECHNIQUE = BaggedLining()
