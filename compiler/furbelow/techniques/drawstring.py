"""Draw a cord through a casing; its ends come out of the gap and are tied.

What it does: neatens the gap, pulls the cord through and fastens it at the middle of the back.
Edges before and after: an open, empty casing before; the casing holds a cord, its ends out of the gap, after.
Allowance: none. The cord takes the length round the casing and both ends.
Example: `- drawstring: {cord: cord, into: waistband, ends: 14 cm, for: child}`
Source: children up to 14 years: waist cord ends of 14 cm at most with the garment open, 28 cm closed: EN 14682:2007, of
    which a newer edition (2014) is in force: check it, and local rules.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Casing
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
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.neaten import zigzag_set
from furbelow.techniques.shared.preconditions import casing_in

CHILD, GROWN = CautionKind.CHILD, "grown-up"
ENDS_OPEN, ENDS_CLOSED = Fraction(140), Fraction(280)
PASS = Fraction(3)
CORDS = (
    CautionKind.CHILD,
    "Cords catch in doors, lifts and playground slides. For children up to 14 years the ends at the waist may hang 14 cm at"
    " most when the garment lies open and 28 cm when it is drawn in (EN 14682:2007; a newer edition is in force). No cord at"
    " all below the crotch, and none at the neck. Local safety rules come before this guide.",
)

SEALING = (
    CautionKind.FLAME,
    "Do not melt the ends with a flame: nylon and polyester drip, burn the skin and set net alight. Stitches, a fold or"
    " textile glue hold as well.",
)


class Drawstring:
    name = "drawstring"
    about = "Draw a cord or ribbon through a casing, with its ends out of the gap."
    pictures = (Picture.CORD,)
    parameters = {
        "cord": Parameter("The cord, one of the materials.", Kind.MATERIAL),
        "into": Parameter("The casing: the band, or the edge that was folded down.", Kind.CASING),
        "ends": Parameter("How far each end hangs out when the casing lies flat.", Kind.LENGTH, "14 cm"),
        "for": Parameter("Who wears it; cords on children have limits.", (CHILD, GROWN), CHILD),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        cord, name = word_of(written, "cord"), edge_of(written, "into")
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
        ends, drawn = step.mm("ends"), _drawn_ends(solved, casing, step.mm("ends"))
        if fault := _not_to_thread(step, say, casing, cord, width_of(solved, cord)) or _too_long(
            step, say, ends, drawn
        ):
            return refused(bench, step, pieces, fault)
        after = bench.with_casing(casing._replace(cord=cord, open=False))
        return Performed(
            step,
            bench,
            after,
            pieces,
            sewn=(
                Sewn(StitchType.ZIGZAG, 4 * casing.width, 1, Fraction(1), "bars at the gap and the middle of the back"),
            ),
            used=(Used(cord, casing.length + 2 * ends, 1, f"cord in the {solved.pieces[casing.piece].label}"),),
            setup=SetUp.ZIGZAG,
            handled=casing.length,
            facts={"cut": casing.length + 2 * ends, "drawn": drawn, "casing": casing},
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        facts, step, casing = done.facts, done.step, done.facts["casing"]
        material = say.solved.materials[word_of(step.written, "cord")].material
        cord = material.about or material.name.replace("_", " ")
        cut, ends = say.length(facts["cut"]), say.length(step.mm("ends"))
        band = say.piece(casing.piece)
        drawn = facts["drawn"]
        hang = f" Drawn in to the waist, {say.length(drawn)} hang out at each end." if drawn is not None else ""
        actions = (
            OwnAction(zigzag_set(done.sewn[0].stitch)),
            OwnAction(
                f"Sew a short bar of zigzag stitches at both ends of the gap of {say.length(casing.gap)}.",
                check="The gap cannot tear further open.",
            ),
            OwnAction(f"Cut the {cord} {cut} long.", check=f"It is {cut} when it lies slack beside the tape."),
            OwnAction(
                "Stop both its ends from fraying: fold them under and sew them, or use textile glue or a tight knot."
            ),
            OwnAction(
                "Fix a safety pin or bodkin in one end and work it through the channel, all round to the gap.",
                check="The cord is not twisted.",
                remedy="If it is, draw the last hand's length back, turn it and go on.",
            ),
            OwnAction(
                f"Lay the {band} flat and even the ends out.",
                check=f"{ends} hang out at each end.{hang}",
                tolerance=f"{say.about(Fraction(5))} more or less",
                remedy="Cut off what is longer.",
            ),
            OwnAction(
                f"Sew the {cord} to the {band} at the middle of the back with a short bar, through all layers.",
                check="It can't be pulled out.",
                remedy="Sew over the bar once more.",
            ),
        )
        return OwnInstructions(
            "Draw in the cord",
            f"A cord draws {say.length(casing.length)} of casing in; it is tied in front.",
            actions,
            (CORDS, SEALING, (CautionKind.NEEDLE, "Close the safety pin before you let go of it.")),
        )


def _drawn_ends(solved: Solved, casing: Casing, ends: Fraction) -> Fraction | None:
    """How far each end hangs out when the waist is drawn in; None where no waist is known."""
    waist = solved.values.get("waist_girth")
    if waist is None:
        return None
    return ends + max(Fraction(0), casing.length - waist.value.as_length_mm()) / 2


def _not_to_thread(step: SolvedStep, say: Phrasing, casing: Casing, cord: str, width: Fraction) -> Fault | None:
    written, name = step.written, casing.name
    if casing.elastic or casing.cord:
        return fault_at(
            written,
            "into",
            "FB322",
            f"the casing in `{name}` holds `{casing.elastic or casing.cord}` already",
            help="leave one of the two steps out",
        )
    if not casing.open:
        return fault_at(
            written,
            "into",
            "FB322",
            f"the gap in `{name}` is sewn shut before the cord goes in",
            help="leave `close gap` out: the cord comes out of the gap",
        )
    if width > casing.width:
        return fault_at(
            written,
            "cord",
            "FB323",
            f"`{cord}` is {say.length(width)} wide and the casing is {say.length(casing.width)} inside,"
            f" {say.length(width - casing.width)} too narrow",
            help="make the casing deeper or choose a narrower cord",
        )
    if casing.gap < width + PASS:
        return fault_at(
            written,
            "into",
            "FB323",
            f"the gap of {say.length(casing.gap)} is too narrow for a cord {say.length(width)} wide,"
            f" {say.length(width + PASS - casing.gap)} short",
            help="leave a wider gap in the casing",
        )
    return None


def _too_long(step: SolvedStep, say: Phrasing, ends: Fraction, drawn: Fraction | None) -> Fault | None:
    if word_of(step.written, "for") == GROWN:
        return None
    for hang, most, how in ((ends, ENDS_OPEN, "flat"), (drawn, ENDS_CLOSED, "drawn in")):
        if hang is not None and hang > most:
            return fault_at(
                step.written,
                "ends",
                "FB348",
                f"the cord's ends hang out {say.length(hang)} when the casing is {how}, and on a child {say.length(most)} is the"
                f" most, {say.length(hang - most)} less",
                notes=("EN 14682:2007, children up to 14 years; a newer edition is in force",),
                help=f"make the ends {say.length(max(ends - (hang - most), Fraction(0)))}"
                + (", or use elastic" if how == "drawn in" else ", or write `for: grown-up` where no child wears it"),
            )
    return None


TECHNIQUE = Drawstring()
