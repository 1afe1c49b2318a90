"""Sew the gap of a casing shut.

What it does: finishes the row of stitches that was left open for the elastic.
Edges before and after: a casing with its elastic in and a gap before; closed after.
Allowance: none.
Example: `- close gap: {of: waistband}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from compiler.cloth.bench import Bench
from compiler.s1_read.spec import Step
from compiler.s2_solve.solved import Solved, SolvedStep, Takes
from compiler.say import Say
from compiler.techniques.ready import casing_in
from compiler.techniques.technique import (
    Action,
    EdgesIn,
    Parameter,
    Performed,
    Sewn,
    Telling,
    edge_of,
    fault_at,
    refused,
)
from compiler.workroom import Workroom

PAST = Fraction(10)  # the closing row overlaps the first one at both ends


class CloseGap:
    name = "close gap"
    about = "Sew the gap shut through which the elastic went in."
    pictures = ("closed gap",)
    parameters = {"of": Parameter("The casing: the band, or the edge that was folded down.", "casing")}

    def takes(self, step: Step, edges_in: EdgesIn) -> tuple[Takes, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name = step.step, edge_of(step.step, "of")
        pieces = casing_in(bench, name)
        casing = bench.casings.get(name)
        if casing is None:
            return refused(bench, step, pieces, fault_at(
                written, "of", "FB321", f"there is no casing in `{name}` yet",
                help="move this step after the one that makes the casing"))  # fmt: skip
        if casing.cord:
            return refused(bench, step, pieces, fault_at(
                written, "of", "FB322", f"the ends of `{casing.cord}` come out of the gap in `{name}`",
                help="leave this step out"))  # fmt: skip
        if not casing.open:
            return refused(bench, step, pieces, fault_at(
                written, "of", "FB322", f"the gap in `{name}` is closed already", help="leave this step out"))  # fmt: skip
        if not casing.elastic:
            return refused(bench, step, pieces, fault_at(
                written, "of", "FB322", f"the gap in `{name}` would be sewn shut with no elastic inside",
                notes=("once the gap is closed nothing can be drawn through the casing",),
                help="put the `insert elastic` step before this one"))  # fmt: skip
        sewn = Sewn("301", casing.gap + 2 * PAST, 1, room.seam_stitch, "closing the gap")
        return Performed(
            step, bench, bench.with_casing(casing._replace(open=False)), pieces, sewn=(sewn,), setup="straight stitch"
        )

    def tell(self, done: Performed, say: Say) -> Telling:
        casing = done.before.casings[edge_of(done.step.step, "of")]
        actions = (
            Action(
                f"Pull the casing flat at the gap alone. Sew the {say.length(casing.gap)} shut, in line with the first row and"
                f" {say.about(PAST)} over it at both ends.",
                check="The row is unbroken and the elastic is not caught: it slides under your finger.",
                remedy="If the elastic is caught, unpick the row and sew it again nearer to the fold.",
            ),
        )
        return Telling("Close the gap", "The casing is closed all round.", actions)


TECHNIQUE = CloseGap()
