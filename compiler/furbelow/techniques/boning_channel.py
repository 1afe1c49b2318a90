"""Sew a channel of tape round a skirt and put a hoop of boning in it.

What it does: stitches both edges of a tape to the inside, leaves a gap, draws the boning through and closes the gap.
Edges before and after: a flat-lying ring; unchanged.
Allowance: none. Tape and boning take the length round and their overlaps.
Example: `- boning channel: {piece: skirt, above hem: 12 cm, tape: channel_tape, bone: boning, overlap: 6 cm}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Ledger, Lies, OnCloth, Window
from furbelow.garment.message import Length, One, Part, Pieces, Stitch, Supply, Values
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
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import BONING, held_out
from furbelow.techniques.shared.lines import line_above
from furbelow.techniques.shared.pins import pins_apart

EDGE_STITCH = Fraction(2)  # on both edges of the tape
ROOM = Fraction(2)  # the boning slides; house rule, maker to confirm
TAPE_OVERLAP = Fraction(20)
LEAST_STEEL_LAP, USUAL_STEEL_LAP, LONG_STEEL_LAP = (
    Fraction(10),
    Fraction(30),
    Fraction(300),
)  # house rule, maker to confirm


class Hoop(NamedTuple):
    """A hoop of this length all round, so many of it, the gap it is put in by, from pin to pin; lengths in mm."""

    around: Fraction
    copies: int
    gap: Fraction
    apart: Fraction


TOOLS = (Tool.EYE_PROTECTION, Tool.BONE_CUTTERS, Tool.BONE_CAPS, Tool.BODKIN, Tool.HAND_NEEDLE)


class BoningChannel:
    name = "boning channel"
    about = "Sew a channel round a skirt and put a hoop of boning in it."
    pictures = (Picture.PIECES,)
    parameters = {
        "piece": Parameter("The ring that carries the hoop, not gathered at its hem.", Kind.PIECE),
        "above hem": Parameter("From the bottom edge as it is then to the lower edge of the tape.", Kind.LENGTH),
        "tape": Parameter(
            "The tape for the channel, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.TRIM,)
        ),
        "bone": Parameter(
            "The boning, one of the materials.",
            Kind.MATERIAL,
            supplies=(SupplyKind.BONE, SupplyKind.TRIM, SupplyKind.OTHER),
        ),
        "overlap": Parameter("How far the ends of the boning overlap.", Kind.LENGTH, "6 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, above = done.step.written, done.step.mm("above hem")
        piece, tape = word_of(written, "piece"), width_of(solved, word_of(written, "tape"))
        steel = tuple(ledger.at_edge(f"{piece}.bottom", Lies.STEEL, "the hoop", above, above + tape, "above hem"))
        lap = Window(
            "overlap",
            "a lap of the boning",
            done.step.mm("overlap"),
            least=USUAL_STEEL_LAP,
            most=LONG_STEEL_LAP,
            sewable_least=LEAST_STEEL_LAP,
            why="its ends stab through where they are not bound together",
        )
        return OnCloth(steel, (lap,))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, piece = step.written, word_of(step.written, "piece")
        tape, bone = word_of(written, "tape"), word_of(written, "bone")
        if fault := _no_hoop(bench, step, Phrasing(solved, room), solved, piece):
            return refused(bench, step, (piece,), fault)
        edge, copies = bench.edge(f"{piece}.bottom"), bench.cloths[piece].copies
        around, overlap = bench.along(piece, step.mm("above hem") + width_of(solved, tape) / 2), step.mm("overlap")
        gap, apart = 2 * width_of(solved, bone) + 20, pins_apart(solved, room, edge)
        return Performed(
            step,
            bench,
            bench,
            (piece,),
            sewn=(
                Sewn(StitchType.LOCK, around, copies, room.seam_stitch),  # lower row
                Sewn(StitchType.LOCK, around - gap, copies, room.seam_stitch),  # upper row
            ),
            used=(
                Used(tape, around + TAPE_OVERLAP, copies, Part("use-channel", {"piece": Pieces((piece,))})),
                Used(bone, around + overlap, copies, Part("use-hoop", {"piece": Pieces((piece,))})),
            ),
            setup=SetUp.STRAIGHT,
            pinned=around * copies * room.pin_spacing / apart,
            handled=around * copies,
            facts=Hoop(around, copies, gap, apart),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, hoop = done.step, facts_of(done, Hoop)
        messages = (
            "boning-channel-cut-tape",
            "boning-channel-pin",
            "boning-channel-sew-lower",
            "boning-channel-sew-upper",
            "boning-channel-cut-bone",
            "boning-channel-push",
            "boning-channel-close",
        )
        values: Values = {
            "piece": Pieces((word_of(step.written, "piece"),)),
            "tape": Supply(word_of(step.written, "tape")),
            "bone": Supply(word_of(step.written, "bone")),
            "around": Length(hoop.around),
            "line-off": Length(Fraction(2), "about"),
            "tape-length": Length(hoop.around + TAPE_OVERLAP),
            "from-edge": Length(EDGE_STITCH, "about"),
            "gap": Length(hoop.gap, "about"),
            "stitched": Length(hoop.around - hoop.gap),
            "stitch": Stitch(done.sewn[0].stitch),
            "fold": Length(TAPE_OVERLAP / 2, "about"),
            "hold": One(say.room.hold_with, ("pins", "clips")),
            "spacing": Length(hoop.apart, "about"),
            "bone-length": Length(hoop.around + step.mm("overlap")),
            "overlap": Length(step.mm("overlap")),
            "hoop-off": Length(max(hoop.around / 200, Fraction(5)), "about"),
        }
        marked = line_above(done.before.edge(f"{word_of(step.written, 'piece')}.bottom"), step.mm("above hem"))
        actions = (
            Action("boning-channel-mark", hoop.copies, values=marked),
            *(Action(message, hoop.copies) for message in messages),
        )
        cautions = (BONING, held_out(say.room))
        return Instructions("boning-channel-title", "boning-channel-aim", actions, values, cautions, TOOLS)


def _no_hoop(bench: Bench, step: SolvedStep, say: Phrasing, solved: Solved, piece: str) -> Fault | None:
    written, edge = step.written, bench.edge(f"{piece}.bottom")
    if not bench.cloths[piece].ring:
        return fault_at(
            written,
            "piece",
            "FB304",
            f"`{piece}` is still flat, and a hoop goes all round",
            mend=mends.before(written, f"join ends: {{of: {piece}}}"),
        )
    if edge.gathered:
        return fault_at(
            written,
            "piece",
            "FB333",
            f"`{edge.name}` is gathered {say.ratio(edge.ratio)} to 1, and a channel is sewn on cloth that lies flat, 1 to 1",
            help="sew the channel before the gathers, or to another tier",
        )
    tape, bone = width_of(solved, word_of(written, "tape")), width_of(solved, word_of(written, "bone"))
    inside = tape - 2 * EDGE_STITCH
    if inside < bone + ROOM:
        return fault_at(
            written,
            "tape",
            "FB323",
            f"the channel is {say.length(max(inside, Fraction(0)))} inside and the boning {say.length(bone)} wide,"
            f" {say.length(bone + ROOM - inside)} too narrow",
            notes=(
                f"{say.length(tape)} - 2 x {say.length(EDGE_STITCH)} for the rows; {say.length(ROOM)} more than the boning to slide",
            ),
            help="choose a wider tape or narrower boning",
        )
    if step.mm("above hem") + tape > bench.depth(piece):
        return fault_at(
            written,
            "above hem",
            "FB312",
            f"the channel reaches {say.length(step.mm('above hem') + tape)} up and `{piece}` is"
            f" {say.length(bench.depth(piece))} deep",
            help="sew it lower, or to the tier above",
        )
    return None


TECHNIQUE = BoningChannel()
