"""Stitch rows along a casing, so that two or more rows of elastic lie in it, each in a channel of its own.

What it does: draws lines from the fold down and sews along each; where the gap lies in the row of the casing, each row leaves the
    same gap.
Edges before and after: an open, empty casing of one channel before; of several, equally wide, after.
Allowance: none.
Example: `- divide casing: {of: waistband, channels: 3}`
Source: common practice, no source. A channel is at least 1/8 in wider than its elastic: American apparel trade standards,
    read in a shop's copy of 2010s.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Casing
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import Length, Pieces, Stitch, Values, flag
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
    edge_of,
    facts_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.casings import casing_at, casing_in

NARROWEST = Fraction(6)  # the narrowest elastic and room to slide; house rule, maker to confirm
OFF = Fraction(1)  # so far a row may wander: elastic binds in a narrower channel


class Divided(NamedTuple):
    """A casing as it is after its rows are sewn, and how many rows there are."""

    casing: Casing
    rows: int


class DivideCasing:
    name = "divide casing"
    about = "Stitch rows along a casing for several rows of elastic, each in a channel of its own."
    pictures = (Picture.CHANNELS,)
    parameters = {
        "of": Parameter("The casing: the band, or the edge that was folded down.", Kind.CASING),
        "channels": Parameter("How many channels it has afterwards, all of one width.", Kind.NUMBER, "2"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        channel = facts_of(done, Divided).casing.width
        return OnCloth(windows=(Window("", "a channel", channel, sewable_least=NARROWEST, why="elastic slides in it"),))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, pieces = step.written, casing_in(bench, edge_of(step.written, "of"))
        casing = casing_at(bench, written, "of")
        if not isinstance(casing, Casing):
            return refused(bench, step, pieces, casing)
        count = step.amounts["channels"].as_number()
        if fault := _not_to_divide(written, casing, count):
            return refused(bench, step, pieces, fault)
        rows = int(count) - 1
        divided = casing._replace(width=casing.width / count, channels=int(count))
        sewn = Sewn(StitchType.LOCK, casing.length - casing.left_open, rows, room.seam_stitch)
        return Performed(
            step,
            bench,
            bench.with_casing(divided),
            (casing.piece,),
            sewn=(sewn,),
            setup=SetUp.STRAIGHT,
            handled=casing.length * rows,
            facts=Divided(divided, rows),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        casing, rows = facts_of(done, Divided)
        values: Values = {
            "piece": Pieces((casing.piece,)),
            "band": flag(casing.name == casing.piece),
            "channels": casing.channels,
            "rows": rows,
            "channel": Length(casing.width),
            "off": Length(OFF, "off"),
            "gap": Length(casing.gap),
            "sewn": Length(done.sewn[0].length),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        sew = "divide-casing-sew-gap" if casing.left_open else "divide-casing-sew"
        actions = (Action("divide-casing-mark"), Action(sew))
        return Instructions("divide-casing-title", "divide-casing-aim", actions, values, ruled=("divide-casing-mark",))


def _not_to_divide(step: Step, casing: Casing, count: Fraction) -> Fault | None:
    if count < 2 or count.denominator != 1:
        return fault_at(
            step,
            "channels",
            "FB341",
            f"{float(count):.4g} channels can't be stitched; they are counted 2, 3, 4",
            mend=mends.write(step, "channels", f"{max(2, round(count))}"),
        )
    if casing.channels > 1:
        headline = f"the casing in `{casing.name}` has {casing.channels} channels already"
        return fault_at(step, "of", "FB322", headline, mend=mends.leave_out(step))
    if inside := casing.elastic or casing.cord:
        return fault_at(
            step,
            "of",
            "FB322",
            f"the casing in `{casing.name}` holds `{inside}` already, and a row would be sewn through it",
            help="move this step before the one that draws it in",
        )
    if casing.flat or casing.holes:
        how = "flat and open at its ends" if casing.flat else "made for a cord"
        return fault_at(
            step,
            "of",
            "FB322",
            f"the casing in `{casing.name}` is {how}, and rows of elastic lie in one that is closed all round",
            help="leave this step out",
        )
    return None


TECHNIQUE = DivideCasing()
