"""Close an opening at its finished top edge with a fastening, where no band does.

What it does: lays the opening closed and sews on a hook with its bar or eye, snaps, or buttons with buttonholes or loops, at
    the top edge and below it. Below a band it closes the rest of the opening.
Edges before and after: an opening whose top edge is finished, faced or bound, before; the same, closed at the waist, after.
Allowance: none.
Example: `- fastening: {edge: skirt.top, by: hook and bar}` or `- fastening: {edge: skirt.top, by: snaps, with: snap, count: 2}`
Source: common practice, no source. Fasteners that come off choke small children: CEN/TR 16792:2014. A buttonhole is as long
    as its button is wide and thick: The Vogue Sewing Book, 1970. The place of a button is pricked through its buttonhole:
    Butterick, The New Dressmaker, 1921.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import WORKABLE, Bench, Opening
from furbelow.garment.fasteners import Fastener
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import Length, Part, Values, edge_said, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import FastenerKind, Step, SupplyKind
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
from furbelow.garment.tolerance import LENGTH_SHARE
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import HAND_NEEDLE, RIPPER, SMALL_PARTS
from furbelow.techniques.shared.laying import button_window

BAR, EYE, SNAPS = "hook and bar", "hook and eye", "snaps"
BUTTONS, LOOPS = "button and buttonhole", "button and loop"
HOOK_IN, SNAP_IN = Fraction(3), Fraction(10)  # from the end that lies on top
BELOW = Fraction(5)  # from the top edge to the first
THICK = Fraction(3)  # of a button; house rule, maker to confirm
BEYOND = Fraction(3)  # of cloth beyond the rim of a button, and of its buttonhole beyond its middle; house rule
PATCH = Fraction(10)  # of what strengthens a buttonhole, beyond it on every side
NARROWEST = Fraction(15)  # overlap that still carries a bar or a snap; house rule, maker to confirm
LEVEL_OFF = Fraction(3)  # so far the edges of a closed opening may end from each other
LEAST_OFF = Fraction(5)  # less can't be told along a waist; house rule, maker to confirm
STITCHES = 24  # that hold both halves of one; house rule, maker to confirm

_SEWN_ON = {
    BAR: ("fastening-hook", "fastening-bar"),
    EYE: ("fastening-hook", "fastening-eye"),
    SNAPS: ("fastening-snap-on-top", "fastening-snap-beneath"),
    BUTTONS: ("fastening-buttonhole", "fastening-cut", "fastening-button"),
    LOOPS: ("fastening-loop", "fastening-loop-button"),
}
_BOUGHT = {
    BAR: FastenerKind.HOOK_AND_BAR,
    EYE: FastenerKind.HOOK_AND_EYE,
    SNAPS: FastenerKind.SNAP,
    BUTTONS: FastenerKind.BUTTON,
    LOOPS: FastenerKind.BUTTON,
}


class Fastened(NamedTuple):
    """An opening closed at its top: the girth of the closed waist, how far its ends overlap, in mm; how many fasteners, and
    how far they are apart, 0 for one. button: how wide it is across, 0 where there is none; under: a band closes the top."""

    waist: Fraction
    overlap: Fraction
    fasteners: int
    apart: Fraction
    button: Fraction = Fraction(0)
    under: bool = False

    @property
    def below(self) -> Fraction:
        """From the top edge to the first: a button lies inside the edge."""
        return self.button / 2 + BEYOND if self.button else BELOW

    @property
    def buttonhole(self) -> Fraction:
        """Its length: the button is wide and thick."""
        return self.button + THICK if self.button else Fraction(0)


class Fastening:
    name = "fastening"
    about = "Close an opening at its finished top edge, where no band does."
    pictures = (Picture.FASTENING,)
    parameters = {
        "edge": Parameter("The open top edge, finished.", Kind.EDGE),
        "by": Parameter(
            "What closes it. A hook and eye, or a button and loop, suit ends that only meet.",
            (BAR, EYE, SNAPS, BUTTONS, LOOPS),
            BAR,
        ),
        "with": Parameter(
            "The fastener, where it is one of the materials.", Kind.MATERIAL, "", (SupplyKind.FASTENING,)
        ),
        "count": Parameter("How many: the first at the top edge, the others below it.", Kind.NUMBER, "1"),
        "button": Parameter("How wide a button is across, where it is none of the materials.", Kind.LENGTH, "15 mm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        facts, by = facts_of(done, Fastened), word_of(done.step.written, "by")
        if by == EYE:
            return OnCloth()
        buttons = (button_window(facts.button),) if facts.button else ()
        if by == LOOPS:
            return OnCloth(windows=buttons)
        least, thing = (NARROWEST, by.removesuffix("s")) if by != BUTTONS else (facts.button + 2 * BEYOND, "button")
        why = f"a {thing} lies on both ends; ends that only meet take a hook and eye or a loop"
        room_for = Window("", "an overlap", facts.overlap, sewable_least=least, why=why)
        if by != BUTTONS or not facts.apart:
            return OnCloth(windows=(room_for, *buttons))
        between = Window("", "the distance between buttons", facts.apart, sewable_least=facts.button + BEYOND)
        return OnCloth(windows=(room_for, between, *buttons))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, count = step.written, edge_of(step.written, "edge"), step.amounts["count"].as_number()
        opening = bench.openings.get(name)
        under = opening is not None and bool(opening.band) and not opening.zipped
        if opening is None or (not under and (opening.closed_by or bench.edge(name).state in WORKABLE)):
            return refused(bench, step, (), _nothing_to_close(bench, written, name, opening))
        edge = bench.edge(name)
        if count < 1 or count.denominator != 1:
            mend = mends.write(written, "count", f"{max(1, round(count))}")
            headline = f"{float(count):.4g} fasteners can't be sewn; they are counted 1, 2, 3"
            return refused(bench, step, edge.pieces, fault_at(written, "count", "FB341", headline, mend=mend))
        waist, fasteners, by = edge.set_length - opening.overlap, int(count), word_of(written, "by")
        after = bench if under else bench.with_opening(opening._replace(waist=waist, closed_by=by))
        own = word_of(written, "with") if "with" in written.args else ""
        wide = (width_of(solved, own) if own else Fraction(0)) or step.mm("button")
        button = wide if by in (BUTTONS, LOOPS) else Fraction(0)
        many, place = Fraction(fasteners), Part("use-opening" if under else "use-fastening")
        used = Used(own, many, 1, place) if own else Used.of_ours(Fastener(_BOUGHT[by], button), many, place)
        # One at the top, the others shared out below it; below a band the first lies as far down.
        spaces = fasteners + 1 if under else fasteners
        apart = opening.length / spaces if spaces > 1 else Fraction(0)
        facts = Fastened(waist, opening.overlap, fasteners, apart, button, under)
        holes = (Sewn(StitchType.ZIGZAG, 2 * facts.buttonhole, fasteners, Fraction(1, 2)),) if by == BUTTONS else ()
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(Sewn(StitchType.HAND, 2 * opening.overlap, fasteners, Fraction(2), singly=STITCHES), *holes),
            used=(used,),
            setup=SetUp.ZIGZAG if holes else SetUp.HAND,
            facts=facts,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts = done.step.written, facts_of(done, Fastened)
        by = word_of(written, "by")
        actions = (
            Action("fastening-lay-under" if facts.under else "fastening-lay"),
            *((Action("fastening-mark-under" if facts.under else "fastening-mark"),) if facts.apart else ()),
            *(Action(name) for name in _SEWN_ON[by]),
        )
        values: Values = {
            "edge": edge_said(done.before.edge(edge_of(written, "edge"))),
            "count": facts.fasteners,
            "overlaps": flag(facts.overlap),
            "overlap": Length(facts.overlap),
            "below": Length(facts.below, "about"),
            "apart": Length(facts.apart, "about"),
            "hook-in": Length(HOOK_IN, "about"),
            "bar-in": Length(max(facts.overlap - HOOK_IN, Fraction(0))),
            "snap-in": Length(SNAP_IN, "about"),
            "waist": Length(facts.waist),
            "off": Length(LEVEL_OFF if facts.under else max(facts.waist * LENGTH_SHARE, LEAST_OFF)),
            "under": flag(facts.under),
            "button": Length(facts.button),
            "buttonhole": Length(facts.buttonhole),
            "half": Length(facts.button / 2, "about"),
            "beyond": Length(BEYOND, "about"),
            "button-in": Length(max(facts.overlap - facts.button / 2 - BEYOND, Fraction(0))),
            "marked": flag(facts.apart),
            "patch": Length(facts.buttonhole + 2 * PATCH),
        }
        tools = (Tool.HAND_NEEDLE, *((Tool.BUTTONHOLE,) if by == BUTTONS else ()))
        cautions = (HAND_NEEDLE, *((RIPPER,) if by == BUTTONS else ()), SMALL_PARTS)
        if facts.under:
            return Instructions("fastening-title-under", "fastening-aim-under", actions, values, cautions, tools)
        return Instructions("fastening-title", "fastening-aim", actions, values, cautions, tools)


def _nothing_to_close(bench: Bench, written: Step, name: str, opening: Opening | None) -> Fault:
    if opening is None:
        headline, help_ = f"`{name}` has no opening to close", "open it with a `placket` first, or leave this step out"
    elif opening.closed_by or opening.zipped:
        headline, help_ = f"the opening in `{name}` is closed already", "leave this step out"
    else:
        headline = f"`{name}` is {bench.edge(name).state} still, and a fastening closes a finished edge"
        help_ = "face or bind the edge before this step, or sew on a `fitted waistband`"
    return fault_at(written, "edge", "FB347", headline, help=help_)


TECHNIQUE = Fastening()
