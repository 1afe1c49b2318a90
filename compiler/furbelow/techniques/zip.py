"""Sew a zip into the opening of a seam: in the middle, lapped, or out of sight.

What it does: bastes the opening shut, presses it open, sews the zip on behind and takes the basting out again; an invisible
    zip is sewn to the two margins of the open seam.
Edges before and after: a seam left open at its top before; closed by the zip after, still open for the way in.
Allowance: none beyond that of the seam, whose margins carry the zip.
Example: `- zip: {in: skirt.ends, zip: zip, way: lapped}`
Source: margins of 1.5 cm or more, a zip as long as its opening, an invisible one 2 cm longer or more, rows 6 mm to both
    sides, of a lapped zip one at 1 cm: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Opening, Seam
from furbelow.garment.lying import Band, Ledger, Lies, Occupant, OnCloth, Window
from furbelow.garment.message import Length, Number, One, Part, Pieces, Stitch, Supply, Values, flag
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
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import HAND_NEEDLE, PINS_OUT, RIPPER_ROW, ZIP_TEETH
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.marks import EITHER, SEAM_PLACES, place_of
from furbelow.techniques.shared.seam_openings import to_come, to_leave_open

CENTRED, LAPPED, INVISIBLE = "centred", "lapped", "invisible"
WAYS = (CENTRED, LAPPED, INVISIBLE)
BESIDE = Fraction(6)  # from the seam line to each row of a centred zip
NEAR_FOLD = Fraction(2)  # from a fold to the row that holds it to the tape
LAP, NEAR = Fraction(10), Fraction(3)  # from the seam line to the row of the lap, and from the teeth to that beneath
LEAST_MARGIN, USUAL_MARGIN = Fraction(10), Fraction(15)  # of the seam: a tape is about 12 mm to the side of the teeth
LONGER = Fraction(20)  # an invisible zip can't be sewn to its very end
SHORT_OFF = Fraction(10)  # so much of the opening below the stop may be sewn shut
BASTING = Fraction(4)
PRESSED = Fraction(1000)  # pressing open, folding and laying, as so much of an edge handled; house rule
STOP = Fraction(5)  # of the teeth below a bar, and from the lower stop or bar to the row across
CLEAR = Fraction(5)  # from a seam that comes at the top down to the upper stop: no needle strikes it; house rule


class Zipped(NamedTuple):
    """An opening with its zip: how long it is below the finished top edge and from the edge as it is now, how much of the
    zip is cut off; in mm."""

    opening: Fraction
    from_edge: Fraction
    cut_off: Fraction
    way: str


class Zip:
    name = "zip"
    about = "Sew a zip into the opening of a seam."
    pictures = (Picture.ZIP,)
    parameters = {
        "in": Parameter("The seam that was left open at its top, such as skirt.ends.", Kind.EDGE),
        "zip": Parameter("The zip, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.ZIP,)),
        "way": Parameter("How it lies: in the middle, under a lap, or out of sight.", WAYS, CENTRED),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        facts, seam = facts_of(done, Zipped), _seam(done.before, done.step)
        on, left = [], facts.from_edge
        for piece in dict.fromkeys(ply.piece for ply in seam.plies):
            top = ledger.line(piece, "top")
            for side in ("start", "end"):
                along = ledger.band(piece, side, Fraction(0), LAP)
                down = Band(top, top + min(left, done.before.depth(piece)))
                on.append(Occupant(piece, Lies.ZIP, "the zip", down=down, along=along, arg="zip"))
            left -= done.before.depth(piece)
            if left <= 0:
                break
        window = Window(
            "",
            "a margin for a zip",
            seam.width,
            least=USUAL_MARGIN,
            sewable_least=LEAST_MARGIN,
            why="the tape of the zip is sewn to it; give the seam of that name a wider allowance",
        )
        return OnCloth(tuple(on), (window,))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        way, name = word_of(written, "way"), word_of(written, "zip")
        seam = bench.seam_at(edge_of(written, "in"))
        opening = next((each for each in bench.openings.values() if seam and each.seam == seam.name), None)
        if seam is None or opening is None or opening.zipped:
            return refused(bench, step, (), _no_opening(step, solved, opening))
        touches = tuple(dict.fromkeys(ply.piece for ply in seam.plies))
        edge = bench.edge(opening.name)
        finished = opening.length - to_come(bench, say, edge.name)
        long = solved.materials[name].amounts["length"].as_length_mm()
        fault = _does_not_fit(step, say, long, finished, way)
        if fault and fault.is_error:
            return refused(bench, step, touches, fault)
        after = bench.with_opening(opening._replace(zipped=True)).with_seams(seam._replace(topstitched=True))
        after = after.with_edges(edge._replace(stands_out=Fraction(0)))
        across = Sewn(StitchType.LOCK, 2 * BESIDE, 1, room.seam_stitch)
        down = Sewn(StitchType.LOCK, opening.length, 2, room.seam_stitch)
        baste = Sewn(StitchType.LOCK, opening.length, 1, BASTING)
        return Performed(
            step,
            bench,
            after,
            touches,
            (fault,) if fault else (),
            sewn=(down,) if way == INVISIBLE else (baste, down, across),
            used=(Used(name, Fraction(1), 1, Part("use-zip")),),
            setup=SetUp.STRAIGHT,
            pinned=2 * opening.length,
            handled=3 * opening.length + (0 if way == INVISIBLE else PRESSED),
            facts=Zipped(finished, opening.length, max(long - finished, Fraction(0)), way),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, facts, seam = done.step, facts_of(done, Zipped), _seam(done.before, done.step)
        piece = seam.plies[0].piece
        shorten = facts.cut_off > SHORT_OFF and facts.way != INVISIBLE
        place, gore = place_of(say.solved, seam), done.before.cloths[piece].piece.gore
        names = {
            CENTRED: (
                "zip-baste",
                "zip-press-open",
                "zip-lay-centred",
                "zip-foot-on",
                "zip-sew-centred",
                "zip-sew-round",
                "zip-foot-off",
                "zip-unpick",
            ),
            LAPPED: (
                "zip-baste",
                "zip-press-open",
                "zip-fold-out",
                "zip-foot-on",
                "zip-fold-work",
                "zip-lay-beneath",
                "zip-sew-beneath",
                "zip-lay-lap",
                "zip-sew-lap",
                "zip-foot-off",
                "zip-unpick",
            ),
            INVISIBLE: (
                "zip-press-coils",
                "zip-lay-invisible",
                "zip-lay-other",
                "zip-foot-on",
                "zip-sew-invisible",
                "zip-close-foot",
                "zip-foot-off",
            ),
        }[facts.way]
        actions = (
            *((Action("zip-shorten"),) if shorten else ()),
            *((Action("zip-choose"),) if facts.way == LAPPED and place == EITHER else ()),
            *(Action(name) for name in names),
            Action("zip-try"),
        )
        values: Values = {
            "hair-off": Length(Fraction(1), "off"),
            "pieces": Pieces(tuple(dict.fromkeys(ply.piece for ply in seam.plies))),
            "zip": Supply(word_of(step.written, "zip")),
            "way": One(facts.way, WAYS),
            "opening": Length(facts.opening),
            "from-edge": Length(facts.from_edge),
            "stop": Length(facts.from_edge - facts.opening + CLEAR),
            "bare": flag(facts.from_edge > facts.opening),
            "zip-length": Length(facts.opening + facts.cut_off),
            "below": Length(STOP, "about"),
            "tail": Length(LONGER, "about"),
            "margin": Length(seam.width),
            "basting": Number(BASTING, 1),
            "beside": Length(BESIDE, "about"),
            "lap": Length(LAP, "about"),
            "near": Length(NEAR, "about"),
            "stitch": Stitch(say.room.seam_stitch),
            "place": One(place, SEAM_PLACES),
            "numbered": flag(gore is not None and gore.differ),
            "next": gore.side_seam[0] % len(gore.round) + 1 if gore else 0,
            "near-fold": Length(NEAR_FOLD, "about"),
            "cut-off": flag(shorten),
        }
        unpicked = () if facts.way == INVISIBLE else (RIPPER_ROW,)
        by_hand = (HAND_NEEDLE,) if shorten else ()
        cautions = (PINS_OUT, ZIP_TEETH, *unpicked, *by_hand, iron_hot(done, say))
        tools = (*iron_tools(done, say, piece), Tool.ZIP_FOOT, Tool.PINS, *((Tool.HAND_NEEDLE,) if shorten else ()))
        return Instructions(
            "zip-title",
            "zip-aim",
            actions,
            values,
            cautions,
            tools,
            (piece,),
            ironed=("zip-fold-out", "zip-press-coils", "zip-press-open"),
        )


def _seam(bench: Bench, step: SolvedStep) -> Seam:
    seam = bench.seam_at(edge_of(step.written, "in"))
    assert seam is not None  # the step was carried out
    return seam


def _no_opening(step: SolvedStep, solved: Solved, opening: Opening | None) -> Fault:
    name = edge_of(step.written, "in")
    return fault_at(
        step.written,
        "in",
        "FB318",
        f"there is a zip in `{name}` already" if opening else f"no seam `{name}` is open at its top",
        mend=mends.leave_out(step.written) if opening else to_leave_open(step, solved, name, "open: 20 cm"),
    )


def _does_not_fit(step: SolvedStep, say: Phrasing, long: Fraction, finished: Fraction, way: str) -> Fault | None:
    """A zip that is too short leaves a hole; one that is long is cut off."""
    name = word_of(step.written, "zip")
    needed = finished + LONGER if way == INVISIBLE else finished
    if long >= needed:
        return None
    return fault_at(
        step.written,
        "zip",
        "FB437",
        f"`{name}` is {say.length(long)} long and {'an invisible zip here' if way == INVISIBLE else 'the opening'}"
        f" wants {say.length(needed)}, {say.length(needed - long)} more",
        notes=(f"{say.length(finished)} + {say.length(LONGER)}: its last stretch can't be sewn",)
        if way == INVISIBLE
        else (),
        help=f"take a zip of {say.length(needed)} or longer, or make the opening shorter",
        severity=Severity.WARNING if needed - long <= SHORT_OFF else Severity.ERROR,
    )


TECHNIQUE = Zip()
