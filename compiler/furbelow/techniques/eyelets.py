"""Work two holes in a casing to come, at the middle of the front, where the ends of its cord come out.

What it does: marks the middle of the front on the layer that will lie outside, strengthens both places from behind, and works a
    buttonhole or an eyelet in each.
Edges before and after: the band, or the piece whose edge is folded down, still unfolded, before; the same, with two holes, after.
Allowance: none.
Example: `- eyelets: {in: waistband, as: buttonholes, hole: 12 mm, apart: 4 cm, backing: fusible}`
Source: a hole is worked through one layer and what strengthens it, before the casing is folded: common practice, no source. An
    eyelet wants a stitch for each mm of its edge: house rule, maker to confirm.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Holes
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Band, Ledger, Lies, Occupant, OnCloth, Window
from furbelow.garment.message import Length, One, Part, Pieces, Supply, Values
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step, SupplyKind
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    Action,
    Caution,
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
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.casings import EDGE_STITCH, holes_said
from furbelow.techniques.shared.cautions import AWL, HAND_NEEDLE, RIPPER, SMALL_PARTS
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import strips_not_joined
from furbelow.techniques.shared.seam_openings import to_come

BUTTONHOLES, WORKED, METAL = "buttonholes", "worked eyelets", "metal eyelets"
KINDS = (BUTTONHOLES, WORKED, METAL)
CLEAR = Fraction(2)  # of stitches, or of the rim of an eyelet, round the hole
PATCH = Fraction(8)  # of what strengthens it, beyond the hole on every side
BETWEEN = Fraction(10)  # of firm cloth between the two; house rule, maker to confirm
FAR_APART = Fraction(150)  # further the cord is tied across the belly; house rule, maker to confirm
USUAL_APART = Fraction(20)  # closer the knot of the cord lies on both holes
OFF = Fraction(2)
SECONDS = 10


class Pierced(NamedTuple):
    """Two holes, in mm: below the cut top edge and inside the edge as it is now, from the start edge as it is now to the middle
    of the front, their size, the clear width of the casing to come; `panels`: of so many that go round, one bears them."""

    down: Fraction
    from_edge: Fraction
    middle: Fraction
    size: Fraction
    channel: Fraction
    panels: int


class Eyelets:
    name = "eyelets"
    about = "Work two buttonholes or eyelets in a casing to come, where the ends of its cord come out."
    pictures = (Picture.EYELETS,)
    parameters = {
        "in": Parameter("The casing to come: the band, or the edge that a later step folds down.", Kind.CASING),
        "as": Parameter("Buttonholes, or round eyelets, worked by hand or of metal.", KINDS, BUTTONHOLES),
        "hole": Parameter("How long a buttonhole is, or how wide an eyelet.", Kind.LENGTH, "12 mm"),
        "apart": Parameter("From the middle of one to the middle of the other.", Kind.LENGTH, "4 cm"),
        "with": Parameter(
            "The metal eyelets; their width is that of their hole.", Kind.MATERIAL, "", (SupplyKind.FASTENING,)
        ),
        "backing": Parameter(
            "The interfacing behind them; without it, a patch of the cloth itself.",
            Kind.MATERIAL,
            "",
            (SupplyKind.INTERFACING,),
        ),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        facts, apart, kind = facts_of(done, Pierced), done.step.mm("apart"), word_of(done.step.written, "as")
        piece = edge_of(done.step.written, "in").partition(".")[0]
        high = facts.size / 2 + CLEAR
        wide = CLEAR if kind == BUTTONHOLES else high
        middle = facts.middle + ledger.bench.edge(f"{piece}.start").used
        holes = (
            Occupant(
                piece,
                Lies.HOLE,
                f"one of the {kind}",
                Band(facts.down - high, facts.down + high),
                Band(middle + way * apart / 2 - wide, middle + way * apart / 2 + wide),
                "hole",
            )
            for way in (-1, 1)
        )
        windows = (
            Window(
                "hole",
                f"one of the {kind}",
                facts.size,
                sewable_most=facts.channel - 2 * CLEAR,
                why=f"it lies inside the channel, with {CLEAR} mm of stitches round it",
            ),
            Window(
                "apart",
                "the distance between the holes",
                apart,
                least=USUAL_APART,
                most=FAR_APART,
                sewable_least=2 * wide + BETWEEN,
                sewable_most=ledger.bench.edge(f"{piece}.top").set_length / 2,
                why="both in front, firm cloth between them",
            ),
        )
        return OnCloth(tuple(holes), windows)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, kind = step.written, edge_of(step.written, "in"), word_of(step.written, "as")
        piece = name.partition(".")[0] if name in bench.edges else name
        if piece not in bench.cloths:
            headline = f"`{name}` is a stack, and holes are worked in one layer"
            return refused(bench, step, (), fault_at(written, "in", "FB302", headline, help="name its outermost edge"))
        casing = _casing_to_come(solved, step, name)
        fault = strips_not_joined(bench, written, "in", (piece,)) or _not_to_pierce(bench, written, name, piece, casing)
        if fault or casing is None:
            return refused(bench, step, (piece,), *((fault,) if fault else ()))
        size, own = step.mm("hole"), word_of(written, "with") if "with" in written.args else ""
        if own and (hole := width_of(solved, own)):
            size = hole
        down, channel = _middle_of_channel(solved, casing, name, piece)
        panels = bench.strips_round(piece) * bench.cloths[piece].copies
        long = solved.pieces[piece].length
        middle = to_come(bench, Phrasing(solved, room), f"{piece}.start") + long / (4 if panels == 1 else 2)
        after = bench._replace(holes={**bench.holes, name: Holes(kind, size)})
        backing = word_of(written, "backing") if "backing" in written.args else ""
        what = Part("use-holes", {"piece": Pieces((piece,))})
        used = [Used(own, Fraction(2), 1, what)] if own else []
        if backing:
            used.append(
                Used(backing, _patch(size) * (1 if width_of(solved, backing) >= 2 * _patch(size) else 2), 1, what)
            )
        sewn = {
            BUTTONHOLES: (Sewn(StitchType.ZIGZAG, 2 * size, 2, Fraction(1, 2)),),
            WORKED: (Sewn(StitchType.HAND, Fraction(2 * _round(size)), 2, Fraction(1), singly=2 * _round(size)),),
            METAL: (),
        }[kind]
        return Performed(
            step,
            bench,
            after,
            (piece,),
            sewn=sewn,
            used=tuple(used),
            setup={BUTTONHOLES: SetUp.ZIGZAG, WORKED: SetUp.HAND, METAL: SetUp.TABLE}[kind],
            handled=8 * _patch(size),
            facts=Pierced(down, _from_edge(bench, name, piece, down), middle, size, channel, panels),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts, before = done.step.written, facts_of(done, Pierced), done.before
        (piece,), kind, apart = done.touches, word_of(written, "as"), done.step.mm("apart")
        backing, ring = "backing" in written.args, before.cloths[piece].ring
        mark = "eyelets-mark-ring" if ring else "eyelets-mark-flat"
        actions = (
            Action("eyelets-mark-panel" if facts.panels == 2 else mark),
            Action("eyelets-patch-iron" if backing else "eyelets-patch-cloth"),
            *(Action(name) for name in _WORKED[kind]),
        )
        values: Values = {
            "piece": Pieces((piece,)),
            **holes_said(done.after.holes[edge_of(written, "in")]),
            "folded": One("edge" if "." in edge_of(written, "in") else "band", ("band", "edge")),
            "seam": seam_said(before, (piece,), say),
            "middle": Length(facts.middle),
            "from-edge": Length(facts.from_edge),
            "half": Length(apart / 2),
            "apart": Length(apart),
            "off": Length(OFF, "off"),
            "hole": Length(facts.size),
            "half-hole": Length(facts.size / 2),
            "patch": Length(_patch(facts.size)),
            "seconds": SECONDS,
            "stitches": _round(facts.size),
            **({"backing": Supply(word_of(written, "backing"))} if backing else {}),
            **({"eyelet": Supply(word_of(written, "with"))} if kind == METAL else {}),
        }
        iron: tuple[Caution, ...] = (iron_hot(done, say),) if backing else ()
        tools = (*_TOOLS[kind], *(iron_tools(done, say, piece) if backing else ()))
        cautions = (*iron, *_CAUTIONS[kind])
        return Instructions(
            "eyelets-title",
            "eyelets-aim",
            actions,
            values,
            cautions,
            tools,
            (piece,),
            ironed=("eyelets-patch-iron",),
            ruled=("eyelets-mark-flat", "eyelets-mark-panel", "eyelets-mark-ring"),
        )


_WORKED = {
    BUTTONHOLES: ("eyelets-buttonholes", "eyelets-cut"),
    WORKED: ("eyelets-ring", "eyelets-pierce", "eyelets-work"),
    METAL: ("eyelets-pierce-metal", "eyelets-set"),
}
_TOOLS = {
    BUTTONHOLES: (Tool.BUTTONHOLE,),
    WORKED: (Tool.HAND_NEEDLE, Tool.AWL),
    METAL: (Tool.AWL, Tool.EYELET_TOOL),
}
_CAUTIONS = {BUTTONHOLES: (RIPPER,), WORKED: (AWL, HAND_NEEDLE), METAL: (AWL, SMALL_PARTS)}


def _made_in(step: Step) -> str:
    """The name of the casing that a step makes; empty where it makes none for a cord."""
    if step.technique == "band casing":
        return word_of(step, "band")
    return edge_of(step, "edge") if step.technique == "folded casing" else ""


def _casing_to_come(solved: Solved, step: SolvedStep, name: str) -> SolvedStep | None:
    """The later step that makes this casing: it decides where in the cloth the channel will lie."""
    later = solved.steps[step.written.index + 1 :]
    return next((each for each in later if _made_in(each.written) == name), None)


def _middle_of_channel(solved: Solved, casing: SolvedStep, name: str, piece: str) -> tuple[Fraction, Fraction]:
    """How far below the cut top edge the middle of the channel lies in the layer that comes to the outside, and how wide the
    channel is, in mm."""
    cut = solved.pieces[piece]
    if casing.written.technique == "band casing":
        # The half that is folded over ends at the seam allowance of the top edge, and its row lies inside that fold.
        channel = cut.depth - EDGE_STITCH
        return casing.mm("seam") + EDGE_STITCH + channel / 2, channel
    channel = casing.mm("depth") - EDGE_STITCH
    at = casing.mm("turn under") + casing.mm("depth") + channel / 2
    return at if name.endswith(".top") else cut.cut_depth - at, channel


def _from_edge(bench: Bench, name: str, piece: str, down: Fraction) -> Fraction:
    """How far inside its edge, as it is now, the middle of the channel lies: of a band, the edge that is folded over."""
    side = "bottom" if name.endswith(".bottom") else "top"
    at = down if side == "top" else bench.cloths[piece].piece.cut_depth - down
    return at - bench.edge(f"{piece}.{side}").used


def _patch(size: Fraction) -> Fraction:
    return size + 2 * PATCH


def _round(size: Fraction) -> int:
    """How many stitches go round an eyelet, one for each mm of its edge."""
    return ceil(size * Fraction(22, 7))


def _not_to_pierce(bench: Bench, step: Step, name: str, piece: str, casing: SolvedStep | None) -> Fault | None:
    if name in bench.casings:
        return fault_at(
            step,
            "in",
            "FB322",
            f"the casing in `{name}` is stitched already, and a hole is worked in its outer layer alone",
            help="move this step before the one that makes the casing",
        )
    if casing is None:
        return fault_at(
            step,
            "in",
            "FB321",
            f"0 later steps make a casing in `{name}`",
            help="name the band of a later `band casing`, or the edge of a later `folded casing`",
        )
    if name in bench.holes:
        headline = f"the casing in `{name}` has its two holes already"
        return fault_at(step, "in", "FB322", headline, help="leave this step out")
    if word_of(step, "as") == METAL and "with" not in step.args:
        return fault_at(
            step,
            "as",
            "FB313",
            "metal eyelets are bought and counted, and 0 materials are named",
            help="name them with `with`, a material of the kind fastening",
        )
    if (copies := bench.cloths[piece].copies) > 2:
        return fault_at(
            step,
            "in",
            "FB305",
            f"there are {copies} of `{piece}`, and the holes lie in 1, at the middle of the front",
            help="give the casing a band of its own, or the front a piece of its own",
        )
    return None


TECHNIQUE = Eyelets()
