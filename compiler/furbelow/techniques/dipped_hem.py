"""Cut the bottom edge of a ring higher in front than behind: a hem that dips, or trails on the floor as a train.

What it does: marks at the middle of the front, the sides and the middle of the back how far the edge is cut up, makes dots
    between on one smooth curve, and cuts along it. Behind nothing is taken.
Edges before and after: a ring whose bottom edge is raw or neatened before; raw, higher in front than behind, after.
Allowance: none. The depth of the piece is its depth behind, where it is deepest.
Example: `- dipped hem: {edge: skirt.bottom, front: 25 cm, side: 18 cm}`
Source: plane geometry: the edge is as long as the slanting lines from dot to dot. The curve is level in front and behind and
    never rises towards the back: piecewise cubics whose slope at the sides is the harmonic mean of the slopes beside them
    (Fritsch and Butland, 1984; from memory). A hem with a train clears the floor in front and begins to lie on it behind the
    side seams: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import sqrt

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Edge, State
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.matching import Places
from furbelow.garment.message import Length, Pieces, Things, Values, edge_said, flag
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
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import SHORT_BITES
from furbelow.techniques.shared.marks import front_gore, seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, not_long

STEEPEST = Fraction(3, 4)  # so much higher for each length along the edge: a steeper hem lies on the bias; house rule
APART = Fraction(150)  # about so far from dot to dot: a curve through nearer ones is no smoother; house rule


class Dipped(NamedTuple):
    """How much higher the edge is cut at each place, a quarter of the edge before and the whole of it after; in mm.

    steps: from how many dots to the next a quarter goes.
    """

    rises: Places
    quarter: Fraction
    length: Fraction
    steps: int

    def dots(self) -> tuple[tuple[Fraction, ...], tuple[Fraction, ...]]:
        """How high the dots lie that are between front and side, and between side and back, from the front on."""
        between = [Fraction(at, self.steps) for at in range(1, self.steps)]
        return tuple(rise_at(self.rises, at) for at in between), tuple(rise_at(self.rises, 1 + at) for at in between)


def rise_at(rises: Places, share: Fraction) -> Fraction:
    """How much higher the edge is cut so far from the front: 0 is the middle of the front, 1 a side, 2 the middle of the back."""
    front, side, back = rises
    falls = side - front, back - side
    both = sum(falls)
    at_side = 2 * falls[0] * falls[1] / both if both else Fraction(0)
    if share <= 1:
        return _cubic(front, side, Fraction(0), at_side, share)
    return _cubic(side, back, at_side, Fraction(0), share - 1)


def _cubic(begin: Fraction, end: Fraction, slope: Fraction, slope_end: Fraction, at: Fraction) -> Fraction:
    """Between two heights and slopes, at 0 to 1 of the way: Hermite's cubic."""
    turn = at * at * (3 - 2 * at)
    return begin * (1 - turn) + end * turn + at * (1 - at) * ((1 - at) * slope - at * slope_end)


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
        rises, quarter = (front, side, Fraction(0)), edge.cloth_length / 4
        steps = max(2, round(quarter / APART))
        length = 2 * sum(_from_dot_to_dot(bench, piece, rises, steps), Fraction(0))
        # The marks are cut off with the edge, and quarters of the new one lie elsewhere.
        finished = length - (bench.measured(edge) - edge.end_to_end)
        after = bench.with_edges(edge._replace(state=State.RAW, cloth_length=finished, set_length=finished, marks=0))
        after = after.with_cloths(bench.cloths[piece]._replace(rises=rises))
        handled = 2 * length * edge.copies
        facts = Dipped(rises, quarter, length, steps)
        return Performed(step, bench, after, edge.pieces, setup=SetUp.TABLE, handled=handled, facts=facts)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, edge = facts_of(done, Dipped), done.before.edge(edge_of(done.step.written, "edge"))
        to_side, to_back = facts.dots()
        quarter = done.before.measured(edge) / 4
        values: Values = {
            "edge": edge_said(edge),
            "piece": Pieces(edge.pieces),
            "seam": seam_said(done.before, edge.pieces, say),
            "front-gore": flag(front_gore(done.before, edge.pieces[0])),
            "quarter": Length(quarter),
            "quarter-off": Length(quarter / 50, "about"),
            "front": Length(facts.rises[0]),
            "side": Length(facts.rises[1]),
            "every": Length(quarter / facts.steps),
            "to-side": Things(tuple(Length(rise) for rise in to_side), "row"),
            "to-back": Things(tuple(Length(rise) for rise in to_back), "row"),
            "length": Length(facts.length),
            "off": Length(facts.length / 50, "about"),
        }
        actions = tuple(Action(message, edge.copies) for message in _MESSAGES)
        return Instructions(
            "dipped-hem-title", "dipped-hem-aim", actions, values, (SHORT_BITES,), ruled=("dipped-hem-line",)
        )


_MESSAGES = (
    "dipped-hem-hold",
    "dipped-hem-mark",
    "dipped-hem-tag",
    "dipped-hem-dots",
    "dipped-hem-between",
    "dipped-hem-line",
    "dipped-hem-cut",
)


def _from_dot_to_dot(bench: Bench, piece: str, rises: Places, steps: int) -> Iterator[Fraction]:
    """How long the new edge is between two dots, from the middle of the front to that of the back."""
    for at in range(2 * steps):
        high, low = rise_at(rises, Fraction(at, steps)), rise_at(rises, Fraction(at + 1, steps))
        # A flared piece is narrower where it is cut higher up.
        yield _slope(bench.along(piece, (high + low) / 2) / 4 / steps, high - low)


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
