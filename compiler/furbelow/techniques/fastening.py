"""Close an opening at its finished top edge with a fastening, where no band does.

What it does: lays the opening closed and sews on a hook with its bar or eye, or snaps, at the top edge and below it.
Edges before and after: an opening whose top edge is finished, faced or bound, before; the same, closed at the waist, after.
Allowance: none.
Example: `- fastening: {edge: skirt.top, by: hook and bar}` or `- fastening: {edge: skirt.top, by: snaps, with: snap, count: 2}`
Source: common practice, no source. Fasteners that come off choke small children: CEN/TR 16792:2014.
"""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import WORKABLE, Bench, Opening
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import Length, Part, Values, edge_said, flag
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
from furbelow.garment.tolerance import LENGTH_SHARE
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import HAND_NEEDLE, SMALL_PARTS

BAR, EYE, SNAPS = "hook and bar", "hook and eye", "snaps"
HOOK_IN, SNAP_IN = Fraction(3), Fraction(10)  # from the end that lies on top
BELOW = Fraction(5)  # from the top edge to the first
NARROWEST = Fraction(15)  # overlap that still carries a bar or a snap; house rule, maker to confirm
LEAST_OFF = Fraction(5)  # less can't be told along a waist; house rule, maker to confirm
STITCHES = 24  # that hold both halves of one; house rule, maker to confirm

_SEWN_ON = {
    BAR: ("fastening-hook", "fastening-bar"),
    EYE: ("fastening-hook", "fastening-eye"),
    SNAPS: ("fastening-snap-on-top", "fastening-snap-beneath"),
}
_TOOLS = {BAR: Tool.HOOK_AND_BAR, EYE: Tool.HOOK_AND_EYE, SNAPS: Tool.SNAPS}


class Fastened(NamedTuple):
    """An opening closed at its top: the girth of the closed waist, how far its ends overlap, in mm; how many fasteners, and
    how far they are apart, 0 for one."""

    waist: Fraction
    overlap: Fraction
    fasteners: int
    apart: Fraction


class Fastening:
    name = "fastening"
    about = "Close an opening at its finished top edge, where no band does."
    pictures = (Picture.FASTENING,)
    parameters = {
        "edge": Parameter("The open top edge, finished.", Kind.EDGE),
        "by": Parameter("What closes it. A hook and eye suit ends that only meet.", (BAR, EYE, SNAPS), BAR),
        "with": Parameter(
            "The fastener, where it is one of the materials.", Kind.MATERIAL, "", (SupplyKind.FASTENING,)
        ),
        "count": Parameter("How many: the first at the top edge, the others below it.", Kind.NUMBER, "1"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        facts, by = facts_of(done, Fastened), word_of(done.step.written, "by")
        if by == EYE:
            return OnCloth()
        why = f"a {by.removesuffix('s')} is sewn to both ends; ends that only meet take a hook and eye"
        return OnCloth(windows=(Window("", "an overlap", facts.overlap, sewable_least=NARROWEST, why=why),))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, count = step.written, edge_of(step.written, "edge"), step.amounts["count"].as_number()
        opening = bench.openings.get(name)
        if opening is None or opening.band or opening.closed_by or bench.edge(name).state in WORKABLE:
            return refused(bench, step, (), _nothing_to_close(bench, written, name, opening))
        edge = bench.edge(name)
        if count < 1 or count.denominator != 1:
            mend = mends.write(written, "count", f"{max(1, round(count))}")
            headline = f"{float(count):.4g} fasteners can't be sewn; they are counted 1, 2, 3"
            return refused(bench, step, edge.pieces, fault_at(written, "count", "FB341", headline, mend=mend))
        waist, fasteners = edge.set_length - opening.overlap, int(count)
        after = bench.with_opening(opening._replace(waist=waist, closed_by=word_of(written, "by")))
        own = written.args.get("with")
        used = (Used(word_of(written, "with"), Fraction(fasteners), 1, Part("use-fastening")),) if own else ()
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(Sewn(StitchType.HAND, 2 * opening.overlap, fasteners, Fraction(2), singly=STITCHES),),
            used=used,
            setup=SetUp.HAND,
            facts=Fastened(
                waist, opening.overlap, fasteners, opening.length / fasteners if fasteners > 1 else Fraction(0)
            ),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts = done.step.written, facts_of(done, Fastened)
        by = word_of(written, "by")
        actions = (
            Action("fastening-lay"),
            *((Action("fastening-mark"),) if facts.fasteners > 1 else ()),
            *(Action(name) for name in _SEWN_ON[by]),
        )
        values: Values = {
            "edge": edge_said(done.before.edge(edge_of(written, "edge"))),
            "count": facts.fasteners,
            "overlaps": flag(facts.overlap),
            "overlap": Length(facts.overlap),
            "below": Length(BELOW, "about"),
            "apart": Length(facts.apart, "about"),
            "hook-in": Length(HOOK_IN, "about"),
            "bar-in": Length(max(facts.overlap - HOOK_IN, Fraction(0))),
            "snap-in": Length(SNAP_IN, "about"),
            "waist": Length(facts.waist),
            "waist-off": Length(max(facts.waist * LENGTH_SHARE, LEAST_OFF)),
        }
        tools = (Tool.HAND_NEEDLE, *(() if "with" in written.args else (_TOOLS[by],)))
        return Instructions("fastening-title", "fastening-aim", actions, values, (HAND_NEEDLE, SMALL_PARTS), tools)


def _nothing_to_close(bench: Bench, written: Step, name: str, opening: Opening | None) -> Fault:
    if opening is None:
        headline, help_ = f"`{name}` has no opening to close", "open it with a `placket` first, or leave this step out"
    elif opening.band or opening.closed_by:
        headline, help_ = f"the opening in `{name}` is closed already", "leave this step out"
    else:
        headline = f"`{name}` is {bench.edge(name).state} still, and a fastening closes a finished edge"
        help_ = "face or bind the edge before this step, or sew on a `fitted waistband`"
    return fault_at(written, "edge", "FB347", headline, help=help_)


TECHNIQUE = Fastening()
