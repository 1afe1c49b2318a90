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
from furbelow.garment.bench import Bench, Ply, Seam, State
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
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.join_ends import PINS
from furbelow.techniques.press import iron_caution
from furbelow.techniques.shared.preconditions import edge_not_ready

GAP, TOP = "a gap", "top"


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
        for piece in (outer, lining):
            top = after.edge(f"{piece}.top")
            if "top" not in _sides(written):
                after = after.with_edges(top._replace(set_length=shows, cloth_length=shows))
        deep = cut.cut_depth - seam * len([side for side in _sides(written) if side in ("top", "bottom")])
        rows = len([side for side in _sides(written) if side in ("top", "bottom")])
        around = rows * shows + 2 * deep
        gap = Fraction(0) if word_of(written, "leave open") == TOP else step.mm("gap")
        closed = Seam(
            f"{outer}.lined",
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
        label = solved.pieces[outer].label
        sewn = [Sewn(StitchType.LOCK, around - gap, copies, room.seam_stitch, f"bagging out the {label}")]
        if gap:
            sewn.append(Sewn(StitchType.CHAIN, gap, copies, Fraction(4), f"closing the {label} by hand"))
        return Performed(
            step,
            bench,
            after,
            (outer, lining),
            sewn=tuple(sewn),
            setup=SetUp.STRAIGHT,
            pinned=around * copies,
            handled=around * copies,
            facts={"around": around, "gap": gap, "wide": shows, "deep": deep},
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        step, facts = done.step, done.facts
        outer, lining = word_of(step.written, "piece"), word_of(step.written, "lining")
        seam, gap, chain = say.length(step.mm("seam")), facts["gap"], say.chain(done.before.cloths[outer].copies)
        pin = "clip" if say.room.hold_with == "clips" else "pin"
        opened = (
            f"Leave {say.length(gap)} open in the middle of the bottom edge."
            if gap
            else "Leave the whole top edge open."
        )
        actions = [
            OwnAction(
                f"Lay the {say.piece(outer)} and the {say.piece(lining)} right sides together, edges level, and {pin} them.",
                chain=chain,
            ),
            OwnAction(
                f"Sew {seam} from the edge, {say.length(facts['around'] - gap)} in all, {say.stitch(done.sewn[0].stitch)}. {opened}",
                check="Every corner is turned with the needle down and is square.",
                remedy="Unpick a corner that is rounded, back to both straight sides, and sew it again.",
                chain=chain,
            ),
            OwnAction("Trim the corners slantwise to two threads from the stitches.", chain=chain),
            OwnAction("Turn the work right side out and push the corners out with a blunt stick.", chain=chain),
            OwnAction(
                "Roll the seam to the edge and press it, the lining a hair inside.",
                check=f"It measures {say.length(facts['wide'])} by {say.length(facts['deep'])}.",
                tolerance=f"{say.about(Fraction(3))} more or less",
                remedy="Turn it back; where it is small the seam is too wide, where it is large too narrow.",
                chain=chain,
            ),
        ]
        if gap:
            actions.append(
                OwnAction(
                    f"Fold the margins of the gap inwards and slip stitch the {say.length(gap)} shut.",
                    check="The stitches do not show.",
                    chain=chain,
                )
            )
        return OwnInstructions(
            f"Line the {say.piece(outer)} and turn it out",
            "All edges are closed between cloth and lining.",
            tuple(actions),
            (PINS, iron_caution(done, say)),
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
        if len(bench.unit(piece)) > 1:
            return fault_at(
                written, arg, "FB302", f"`{piece}` is sewn to other pieces already", help="line it before that"
            )
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
        if abs(a - b) > solved.rounding:
            return fault_at(
                written,
                "lining",
                "FB401",
                f"`{outer}` is {say.length(a)} {what} and `{lining}` {say.length(b)}, {say.length(abs(a - b))} apart",
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
