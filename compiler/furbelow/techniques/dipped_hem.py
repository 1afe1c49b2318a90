"""Cut the bottom edge of a ring higher in front than behind: a hem that dips, or trails on the floor as a train.

What it does: marks at the middle of the front, the sides and the middle of the back how far the edge is cut up, and cuts it
    along a smooth line through the marks. Behind nothing is taken.
Edges before and after: a ring whose bottom edge is raw or neatened before; raw, higher in front than behind, after.
Allowance: none. The depth of the piece is its depth behind, where it is deepest.
Example: `- dipped hem: {edge: skirt.bottom, front: 25 cm, side: 18 cm}`
Source: plane geometry: the edge is as long as the slanting lines from mark to mark. A hem with a train clears the floor in
    front and begins to lie on it behind the side seams: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction
from math import sqrt
from typing import NamedTuple

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Edge, State
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.matching import Places
from furbelow.garment.message import Length, Pieces, Values, edge_said
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Kind,
    Parameter,
    Performed,
    Picture,
    SetUp,
    edge_of,
    facts_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import SHORT_BITES
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, not_long

STEEPEST = Fraction(3, 4)  # so much higher for each length along the edge: a steeper hem lies on the bias; house rule


class Dipped(NamedTuple):
    """How much higher the edge is cut at each place, a quarter of the edge before and the whole of it after; in mm."""

    rises: Places
    quarter: Fraction
    length: Fraction


class DippedHem:
    name = "dipped hem"
    about = "Cut a bottom edge higher in front than behind, so that the hem dips or trails."
    pictures = (Picture.DIPPED_HEM,)
    parameters = {
        "edge": Parameter("The bottom edge of a ring, before it is hemmed.", Kind.EDGE),
        "front": Parameter("How much shorter the piece is at the middle of the front than behind.", Kind.LENGTH),
        "side": Parameter("How much shorter at the sides; without it half of that in front.", Kind.LENGTH, ""),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        facts = facts_of(done, Dipped)
        front, side, _ = facts.rises
        steeper = max(front - side, side)
        why = "a steeper hem lies on the bias and drops; take less, or a wider ring"
        return OnCloth(windows=(Window("front", "a rise", steeper, most=facts.quarter * STEEPEST, why=why),))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, say = step.written, edge_of(step.written, "edge"), Phrasing(solved, room)
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge = bench.edge(name)
        front = step.mm("front")
        side = step.mm("side") if "side" in step.amounts else front / 2
        if fault := _not_to_dip(bench, step, say, edge, (front, side, Fraction(0))):
            return refused(bench, step, edge.pieces, fault)
        piece = edge.pieces[0]
        # A flared piece is narrower where it is cut higher up.
        higher = [(front + side) / 2, side / 2]
        quarters = [bench.along(piece, rise) / 4 for rise in higher]
        length = 2 * (_slope(quarters[0], front - side) + _slope(quarters[1], side))
        after = bench.with_edges(edge._replace(state=State.RAW, cloth_length=length, set_length=length, marks=4))
        after = after.with_cloths(bench.cloths[piece]._replace(rises=(front, side, Fraction(0))))
        handled = 2 * length * edge.copies
        facts = Dipped((front, side, Fraction(0)), edge.cloth_length / 4, length)
        return Performed(step, bench, after, edge.pieces, setup=SetUp.TABLE, handled=handled, facts=facts)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, edge = facts_of(done, Dipped), done.before.edge(edge_of(done.step.written, "edge"))
        values: Values = {
            "edge": edge_said(edge),
            "piece": Pieces(edge.pieces),
            "seam": seam_said(done.before, edge.pieces, say),
            "quarter": Length(facts.quarter),
            "quarter-off": Length(facts.quarter / 50, "about"),
            "front": Length(facts.rises[0]),
            "side": Length(facts.rises[1]),
            "length": Length(facts.length),
            "off": Length(facts.length / 50, "about"),
        }
        actions = tuple(Action(message, edge.copies) for message in _MESSAGES)
        return Instructions("dipped-hem-title", "dipped-hem-aim", actions, values, (SHORT_BITES,))


_MESSAGES = (
    "dipped-hem-hold",
    "dipped-hem-mark",
    "dipped-hem-tag",
    "dipped-hem-dots",
    "dipped-hem-line",
    "dipped-hem-cut",
)


def _slope(along: Fraction, rise: Fraction) -> Fraction:
    return Fraction(round(sqrt(float(along**2 + rise**2)), 1)).limit_denominator(10)


def _not_to_dip(bench: Bench, step: SolvedStep, say: Phrasing, edge: Edge, rises: Places) -> Fault | None:
    written = step.written
    if fault := not_long(written, "edge", edge):
        return fault
    piece = edge.pieces[0]
    if not edge.name.endswith(".bottom"):
        headline = f"`{edge.name}` is no bottom edge, and a hem dips at the bottom"
        return fault_at(written, "edge", "FB340", headline, help=f"write `{piece}.bottom`")
    if not bench.ring(edge):
        return fault_at(
            written,
            "edge",
            "FB304",
            f"`{edge.name}` is still flat, and front and back of a hem are marked on the ring",
            help="close the ring before this step",
        )
    if edge.gathered:
        headline = f"`{edge.name}` is gathered already, and its dip is cut in flat cloth"
        return fault_at(written, "edge", "FB333", headline, help="move this step before the one that gathers the edge")
    if any(bench.cloths[piece].rises):
        headline = f"`{edge.name}` dips already, and a second dip would be cut from an edge that is no longer level"
        return fault_at(written, "edge", "FB302", headline, help="leave one of the two steps out")
    front, side, _ = rises
    if front <= 0 or side > front:
        said = f"{say.length(front)} in front and {say.length(side)} at the sides"
        return fault_at(
            written,
            "side" if 0 < front < side else "front",
            "FB313",
            f"a hem that rises by {said} does not dip behind",
            help="write how much shorter it is in front, above 0, and no more at the sides",
        )
    left = bench.depth(piece)
    if front >= left:
        return fault_at(
            written,
            "front",
            "FB312",
            f"{say.length(front)} would be cut off a piece that is {say.length(left)} deep, {say.length(front - left)} too much",
            help="make the piece deeper, or let it rise less",
        )
    return None


TECHNIQUE = DippedHem()
