"""Sew the gap of a casing shut.

What it does: finishes the row of stitches that was left open for the elastic.
Edges before and after: a casing with its elastic in and a gap before; closed after.
Allowance: none.
Example: `- close gap: {of: waistband}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment import mends
from furbelow.garment.bench import Bench, Casing
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, Stitch, Values, flag
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
    edge_of,
    facts_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.casings import casing_at, casing_in
from furbelow.techniques.shared.cautions import HAND_NEEDLE

HAND_STITCH = Fraction(2)  # small, for the elastic pulls at it
PAST = Fraction(10)  # the closing row overlaps the first one at both ends


class CloseGap:
    name = "close gap"
    about = "Sew the gap shut through which the elastic went in."
    pictures = (Picture.CLOSED_GAP,)
    parameters = {"of": Parameter("The casing: the band, or the edge that was folded down.", Kind.CASING)}

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        return OnCloth()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name = step.written, edge_of(step.written, "of")
        pieces = casing_in(bench, name)
        casing = casing_at(bench, written, "of")
        if not isinstance(casing, Casing):
            return refused(bench, step, pieces, casing)
        if casing.cord:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written,
                    "of",
                    "FB322",
                    f"the ends of `{casing.cord}` come out of the gap in `{name}`",
                    mend=mends.leave_out(written),
                ),
            )
        if casing.flat:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written,
                    "of",
                    "FB322",
                    f"the casing in `{name}` is flat and has no gap; it is open at its ends",
                    help="close its ends in a side seam, which catches the elastic, and leave this step out",
                ),
            )
        if not casing.open:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written, "of", "FB322", f"the gap in `{name}` is closed already", mend=mends.leave_out(written)
                ),
            )
        if not casing.elastic:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written,
                    "of",
                    "FB322",
                    f"the gap in `{name}` would be sewn shut with no elastic inside",
                    notes=("once the gap is closed nothing can be drawn through the casing",),
                    help="put the `insert elastic` step before this one",
                ),
            )
        shut = bench.with_casing(casing._replace(open=False))
        if casing.in_seam:
            by_hand = Sewn(StitchType.HAND, casing.gap, 1, HAND_STITCH)
            return Performed(step, bench, shut, (casing.piece,), sewn=(by_hand,), setup=SetUp.HAND, facts=casing)
        sewn = Sewn(StitchType.LOCK, casing.gap + 2 * PAST, 1, room.seam_stitch)
        return Performed(step, bench, shut, pieces, sewn=(sewn,), setup=SetUp.STRAIGHT, facts=casing)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        casing = facts_of(done, Casing)
        values: Values = {
            "band": flag(casing.name == casing.piece),
            "gap": Length(casing.gap),
            "past": Length(PAST, "about"),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        if casing.in_seam:
            by_hand = (Action("close-gap-seam"),)
            return Instructions(
                "close-gap-title", "close-gap-aim", by_hand, values, (HAND_NEEDLE,), (Tool.HAND_NEEDLE,)
            )
        return Instructions("close-gap-title", "close-gap-aim", (Action("close-gap-sew"),), values)


TECHNIQUE = CloseGap()
