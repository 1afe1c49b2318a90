"""Draw elastic through a casing and join its ends.

What it does: pulls the elastic through the gap, overlaps and sews its ends.
Edges before and after: an open, empty casing before; the casing holds a closed elastic, its gap still open, after.
Allowance: the overlap, on the elastic.
Example: `- insert elastic: {elastic: elastic, into: waistband, length: waist_girth - 15 cm, overlap: 2 cm}`
Source: elastic for a heavy skirt about 6 in less than the waist: common practice, no source. Waist less 2 to 4 in:
    home sewing practice, published 2020s.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Severity
from furbelow.garment.bench import Bench
from furbelow.garment.limits import CASING_ROOM, width_of
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
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.drawstring import SEALING
from furbelow.techniques.neaten import zigzag_set
from furbelow.techniques.shared.preconditions import casing_in, no_length

PASS = Fraction(3)  # gap wider than the elastic by an eighth of an inch at least; published 2018, rounded down


class InsertElastic:
    name = "insert elastic"
    about = "Draw elastic through a casing and join its ends to a loop."
    pictures = (Picture.ELASTIC,)
    parameters = {
        "elastic": Parameter("The elastic, one of the materials.", Kind.MATERIAL),
        "into": Parameter("The casing: the band, or the edge that was folded down.", Kind.CASING),
        "length": Parameter("Length of the closed elastic loop, at rest.", Kind.LENGTH),
        "overlap": Parameter("How far its ends overlap; cut so much longer.", Kind.LENGTH, "2 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        elastic, name = word_of(written, "elastic"), edge_of(written, "into")
        pieces = casing_in(bench, name)
        casing = bench.casings.get(name)
        if casing is None:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written,
                    "into",
                    "FB321",
                    f"there is no casing in `{name}` yet",
                    help="move this step after the one that makes the casing",
                ),
            )
        if casing.elastic or casing.cord:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written,
                    "into",
                    "FB322",
                    f"the casing in `{name}` holds `{casing.elastic or casing.cord}` already",
                    help="leave one of the two steps out",
                ),
            )
        if not casing.open:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written,
                    "into",
                    "FB322",
                    f"the gap in `{name}` is sewn shut before the elastic goes in",
                    help="move `close gap` after this step",
                ),
            )
        width, length = width_of(solved, elastic), step.mm("length")
        if width > casing.width:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written,
                    "elastic",
                    "FB323",
                    f"`{elastic}` is {say.length(width)} wide and the casing is {say.length(casing.width)} inside,"
                    f" {say.length(width - casing.width)} too narrow",
                    help="make the casing deeper or choose a narrower elastic",
                ),
            )
        if casing.gap < width + PASS:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written,
                    "into",
                    "FB323",
                    f"the gap of {say.length(casing.gap)} is too narrow for elastic {say.length(width)} wide,"
                    f" {say.length(width + PASS - casing.gap)} short",
                    notes=(
                        f"{say.length(width)} + {say.length(PASS)} to pull it through = {say.length(width + PASS)}",
                    ),
                    help="leave a wider gap in the casing",
                ),
            )
        if fault := no_length(step, "length") or no_length(step, "overlap"):
            return refused(bench, step, pieces, fault)
        if length > casing.length:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written,
                    "length",
                    "FB324",
                    f"the elastic of {say.length(length)} is longer than its casing of {say.length(casing.length)},"
                    f" by {say.length(length - casing.length)}",
                    help="shorten the elastic: it can't draw the waist in",
                ),
            )
        room_to_twist = casing.width - width - CASING_ROOM
        loose = (
            ()
            if room_to_twist <= 0
            else (
                fault_at(
                    written,
                    "into",
                    "FB325",
                    f"the casing is {say.length(casing.width)} inside and `{elastic}` {say.length(width)} wide,"
                    f" {say.length(room_to_twist)} more than it can have without twisting",
                    help="make the casing narrower, or sew a row round it beside the elastic",
                    severity=Severity.WARNING,
                ),
            )
        )
        after = bench.with_casing(casing._replace(elastic=elastic, elastic_length=length))
        what = f"elastic in the {solved.pieces[casing.piece].label}"
        overlap = step.mm("overlap")
        return Performed(
            step,
            bench,
            after,
            pieces,
            loose,
            sewn=(Sewn(StitchType.ZIGZAG, 4 * width, 1, Fraction(2), "joining the elastic"),),
            used=(Used(elastic, length + overlap, 1, what),),
            setup=SetUp.ZIGZAG,
            handled=casing.length,
            facts={"cut": length + overlap, "length": length, "width": width, "casing": casing},
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        facts, casing, overlap = done.facts, done.facts["casing"], done.step.mm("overlap")
        cut, length = say.length(facts["cut"]), say.length(facts["length"])
        tail, over = say.about(Fraction(50)), say.solved.length("worn.over")
        actions = (
            OwnAction(
                f"Before you cut, hold {length} of the elastic round the waist.",
                check="It sits firmly and does not cut in.",
                remedy=f"Find the length that does, and use it in place of {length} from here on.",
            ),
            OwnAction(
                f"Cut the elastic {cut} long: that is {length} and {say.length(overlap)} for the lap.",
                check=f"It is {cut} when it lies slack beside the tape.",
            ),
            OwnAction(
                f"Draw a line straight across it, {say.length(overlap)} from one end.",
                check=f"From the line to the other end it is {length}, slack.",
                tolerance=f"{say.about(overlap / 10)} more or less",
                remedy="Draw the line where it belongs and cross out the first.",
            ),
            OwnAction(
                f"Draw a cross on the same face, {say.about(overlap + 15)} from the other end: it stays in sight when the ends are lapped."
            ),
            OwnAction(
                f"Let {tail} of the end with the line hang out of the gap. Pin it to the {say.piece(casing.piece)} there, so that"
                " it cannot slip inside."
            ),
            OwnAction(
                "Fix a safety pin or bodkin in the end with the cross and work it round through the channel to the gap"
                + (", between the seam margin and the outside." if casing.name == casing.piece else ".")
                + " Push the cloth back over the elastic as you go.",
                check="The elastic lies flat all round, and the line and the cross are on the same side of it.",
                remedy="If it is twisted, draw the last hand's length back, turn it and go on.",
            ),
            OwnAction(f"Take out the first pin and pull {say.about(Fraction(100))} of both ends out of the gap."),
            OwnAction(
                "Lay the end with the cross on the end with the line, both marks up, its cut end on the line. Hold the lap with"
                " a closed safety pin.",
                check=f"The cut end lies on the line: then the lap is {say.length(overlap)} and the loop {length} at rest.",
                tolerance=f"{say.about(overlap / 10)} more or less",
                remedy="Open the pin, shift the end to the line and close the pin again.",
            ),
            OwnAction(zigzag_set(done.sewn[0].stitch)),
            OwnAction(
                "Take out the safety pin and hold the lap in its place. Sew two rows of zigzag over the lap, then one along each"
                " of its two ends, a few stitches back each time.",
                check="Pull hard: nothing gives.",
                remedy="Sew over the lap once more.",
            ),
            OwnAction("Let the lap slip back into the channel."),
            OwnAction(
                f"Lay the waist flat, fold to fold. Stretch it by hand until it is {say.length(over / 2)} wide, which is"
                f" {say.length(over)} round, and let it spring back, three times. Never stretch it further.",
                check="The fullness is the same all round.",
                remedy="Push it along the elastic with your fingers.",
            ),
        )
        return OwnInstructions(
            "Draw in the elastic",
            f"A loop of {length} draws {say.length(casing.length)} of casing in to the waist.",
            actions,
            (
                (
                    CautionKind.NEEDLE,
                    "Close the safety pin before you let go of it, and take the last pin out of the casing.",
                ),
                SEALING,
            ),
        )


TECHNIQUE = InsertElastic()
