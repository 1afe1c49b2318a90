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
from furbelow.garment.bench import Bench
from furbelow.garment.limits import width_of
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    CautionKind,
    EdgesIn,
    Kind,
    OwnAction,
    OwnInstructions,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    Used,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.join_ends import PINS

EDGE_STITCH = Fraction(2)  # on both edges of the tape
ROOM = Fraction(2)  # the boning slides; house rule, maker to confirm
TAPE_OVERLAP = Fraction(20)
BONES = (
    CautionKind.BLADE,
    "Wear eye protection when you cut boning: the ends fly. Cap or round every end before it goes in; a bare end works"
    " through cloth and skin. A hoop tips up when you sit, trips on stairs and swings into flames: try it out first.",
)


class BoningChannel:
    name = "boning channel"
    about = "Sew a channel round a skirt and put a hoop of boning in it."
    pictures = (Picture.PIECES,)
    parameters = {
        "piece": Parameter("The ring that carries the hoop, not gathered at its hem.", Kind.PIECE),
        "above hem": Parameter("From the bottom edge as it is then to the lower edge of the tape.", Kind.LENGTH),
        "tape": Parameter("The tape for the channel, one of the materials.", Kind.MATERIAL),
        "bone": Parameter("The boning, one of the materials.", Kind.MATERIAL),
        "overlap": Parameter("How far the ends of the boning overlap.", Kind.LENGTH, "6 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, piece = step.written, word_of(step.written, "piece")
        tape, bone = word_of(written, "tape"), word_of(written, "bone")
        if fault := _no_hoop(bench, step, Phrasing(solved, room), solved, piece):
            return refused(bench, step, (piece,), fault)
        edge, copies = bench.edge(f"{piece}.bottom"), bench.cloths[piece].copies
        around, overlap = edge.cloth_length, step.mm("overlap")
        label = solved.pieces[piece].label
        return Performed(
            step,
            bench,
            bench,
            (piece,),
            sewn=(
                Sewn(StitchType.LOCK, around, copies, room.seam_stitch, f"channel on the {label}, lower row"),
                Sewn(StitchType.LOCK, around, copies, room.seam_stitch, f"channel on the {label}, upper row"),
            ),
            used=(
                Used(tape, around + TAPE_OVERLAP, copies, f"channel on the {label}"),
                Used(bone, around + overlap, copies, f"hoop in the {label}"),
            ),
            setup=SetUp.STRAIGHT,
            pinned=around * copies,
            handled=around * copies,
            facts={"around": around, "copies": copies, "gap": 2 * width_of(solved, bone) + 20},
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        step, facts = done.step, done.facts
        piece = word_of(step.written, "piece")
        tape, bone = (
            material.about or material.name.replace("_", " ")
            for material in (say.solved.materials[word_of(step.written, key)].material for key in ("tape", "bone"))
        )
        around, chain, gap = say.length(facts["around"]), say.chain(facts["copies"]), say.about(facts["gap"])
        above, overlap = say.length(step.mm("above hem")), say.length(step.mm("overlap"))
        cut = say.length(facts["around"] + step.mm("overlap"))
        actions = (
            OwnAction(
                f"Mark a line on the inside of the {say.piece(piece)}, {above} above its bottom edge, all round.",
                check="The line keeps its distance: a hoop that dips is seen at once.",
                tolerance=f"{say.about(Fraction(2))} more or less",
                remedy="Draw it again where it dips.",
                chain=chain,
            ),
            OwnAction(f"Cut {say.length(facts['around'] + TAPE_OVERLAP)} of {tape}.", chain=chain),
            OwnAction(
                f"Pin the {tape} with its lower edge on the line, starting at the back, the end folded under.",
                chain=chain,
            ),
            OwnAction(f"Sew {say.about(EDGE_STITCH)} from the lower edge of the tape, {around}.", chain=chain),
            OwnAction(
                f"Sew {say.about(EDGE_STITCH)} from the upper edge, {around}; leave a gap of {gap} where the ends meet.",
                check="The channel is open all round; push a bodkin through.",
                remedy="Unpick what closes it.",
                chain=chain,
            ),
            OwnAction(
                f"Cut the {bone} {cut} long and cap or bind both ends.",
                check="No bare end is left.",
                remedy="Cap it again: a bare end works through.",
                chain=chain,
            ),
            OwnAction(
                f"Push it through the channel and lap its ends by {overlap}; bind the lap tightly.",
                check=f"The hoop measures {around} round and the cloth lies on it without folds.",
                tolerance=f"{say.about(max(facts['around'] / 200, Fraction(5)))} more or less",
                remedy="Lap the ends more where the cloth strains, less where it sags.",
                chain=chain,
            ),
            OwnAction("Sew the gap shut by hand.", chain=chain),
        )
        return OwnInstructions(
            f"Put a hoop in the {say.piece(piece)}", f"A hoop of {around} holds the skirt out.", actions, (BONES, PINS)
        )


def _no_hoop(bench: Bench, step: SolvedStep, say: Phrasing, solved: Solved, piece: str) -> Fault | None:
    written, edge = step.written, bench.edge(f"{piece}.bottom")
    if not bench.cloths[piece].ring:
        return fault_at(
            written,
            "piece",
            "FB304",
            f"`{piece}` is still flat, and a hoop goes all round",
            help=f"put `- join ends: {{of: {piece}}}` before this step",
        )
    if edge.gathered or bench.edge(f"{piece}.top").ratio > 1:
        full = max(edge.ratio, bench.edge(f"{piece}.top").ratio)
        return fault_at(
            written,
            "piece",
            "FB333",
            f"`{piece}` is gathered {say.ratio(full)} to 1, and a channel is sewn on cloth that lies flat, 1 to 1",
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
