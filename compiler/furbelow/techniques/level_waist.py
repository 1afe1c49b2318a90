"""Take the top edge up where the waist lies lower, so that the hem hangs level.

What it does: marks at the middle of the front, the sides and the middle of the back how far the edge is taken up, and cuts
    it along a smooth line through the marks. Where the waist lies highest nothing is taken.
Edges before and after: flat and raw or neatened before; raw, and lower where the waist is lower, after.
Allowance: none. The depth of the piece is its depth where the waist lies highest, so tell it from the largest height:
    `max(front_waist_height, waist_height, back_waist_height) - 50 cm`.
Example: `- level waist: {edge: skirt.top, front: front_waist_height, side: waist_height, back: back_waist_height}`
Source: levelled at the waist and not at the trimmed hem: common practice, no source. The waist height is measured at the
    side as ISO 8559-1:2017 defines it; the heights in front and behind likewise, straight down to the floor.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, State
from furbelow.garment.matching import PLACES
from furbelow.garment.phrasing import Phrasing, listed
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
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
    edges_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import round_to_step
from furbelow.techniques.join_ends import side_seam
from furbelow.techniques.shared.preconditions import edge_not_ready, no_length, not_long

_TAPE = Fraction(1)  # without a rounding, marks are made to the mm
_BLADES = (
    CautionKind.BLADE,
    "Cut in short bites, shears flat on the table, your other hand well away from the blades.",
)


class LevelWaist:
    name = "level waist"
    about = "Cut the top edge lower where the waist lies lower, so that the hem hangs level."
    pictures = (Picture.LEVELLED,)
    parameters = {
        "edge": Parameter("The top edge, or one of each layer, before it is gathered or stacked.", Kind.EDGES),
        "front": Parameter("From the waist to the floor at the middle of the front.", Kind.LENGTH),
        "side": Parameter("From the waist to the floor at the side.", Kind.LENGTH),
        "back": Parameter("From the waist to the floor at the middle of the back.", Kind.LENGTH),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        names = edges_of(step.written, "edge")
        for name in names:
            if fault := edge_not_ready(bench, step.written, "edge", name):
                return refused(bench, step, (), fault)
        edges = [bench.edge(name) for name in names]
        touches = tuple(dict.fromkeys(piece for edge in edges for piece in edge.pieces))
        taken = taken_up(step, solved.rounding or _TAPE)
        fault = next((fault for place in PLACES if (fault := no_length(step, place))), None)
        for name in names:
            fault = fault or _not_to_level(bench, step, Phrasing(solved, room), name, max(taken))
        if fault:
            return refused(bench, step, touches, fault)
        cut = any(taken)
        after = bench.with_edges(*(edge._replace(state=State.RAW) for edge in edges if cut))
        handled = sum((edge.cloth_length * edge.copies for edge in edges if cut), Fraction(0))
        return Performed(
            step, bench, after, touches, setup=SetUp.TABLE, handled=handled, facts={"names": names, "taken": taken}
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        taken = done.facts["taken"]
        if not any(taken):
            return OwnInstructions("Level the waist", "The waist is level: nothing is taken up.", ())
        actions = [action for name in done.facts["names"] for action in _marking(done, say, name)]
        front, side, back = (say.length(amount) if amount else "nothing" for amount in taken)
        actions += [
            OwnAction(
                f"Measure down from the edge at each mark: {front} at the front, {side} at the sides, {back} at the back."
                " Make a dot there.",
                check="Nothing is taken up where the waist lies highest.",
                remedy="If front and back were changed over, rub the dots out and measure again.",
            ),
            OwnAction(
                "Draw a smooth line from dot to dot. Let it run level for a hand's width at the front and at the back.",
                check="The line has no corner at the sides.",
                remedy="Draw it again, a little rounder.",
            ),
            OwnAction("Cut along the line. This is the top edge now; all that follows is measured from it."),
        ]
        deep = max(taken)
        aim = f"The waist lies {say.length(deep)} lower {_where(taken, deep)}, so the edge is cut lower there and the hem hangs level."
        return OwnInstructions("Level the waist", aim, tuple(actions), (_BLADES,))


def taken_up(step: SolvedStep, rounding: Fraction) -> tuple[Fraction, Fraction, Fraction]:
    """How far the edge is taken up at the front, the sides and the back, in mm; 0 where the waist lies highest."""
    heights = [step.mm(place) for place in PLACES]
    front, side, back = (round_to_step(max(heights) - height, rounding) for height in heights)
    return front, side, back


def _where(taken: tuple[Fraction, ...], amount: Fraction) -> str:
    words = ("in front", "at the sides", "behind")
    return listed([word for word, each in zip(words, taken, strict=True) if each == amount])


def _marking(done: Performed, say: Phrasing, name: str) -> list[OwnAction]:
    """How the front, the sides and the back of one edge are found, counted from its side seam."""
    edge = done.before.edge(name)
    ring, quarter = done.before.ring(edge), edge.cloth_length / 4
    the, chain = say.the(edge.pieces), say.chain(edge.copies)
    seam = side_seam(done.before, edge.pieces, say)
    start = seam if ring else "the right end"
    hold = (
        f"Hold {the} as it is worn, {seam} at the left of the wearer."
        if ring
        else f"Lay {the} flat, right side up, the top edge away from you. The two ends come to the left of the wearer."
    )
    return [
        OwnAction(hold, chain=chain),
        OwnAction(
            f"Mark {say.edges(edge.pieces, 'top')} in quarters, every {say.length(quarter)} from {start}: the middle of the"
            " front, the other side, the middle of the back.",
            check=f"The last quarter ends at the {'seam' if ring else 'left end'}.",
            tolerance=f"{say.about(quarter / 50)} more or less",
            remedy="Share the difference out among the four.",
            chain=chain,
        ),
        OwnAction("Pin a paper tag to the front mark and to the back mark.", chain=chain),
    ]


def _not_to_level(bench: Bench, step: SolvedStep, say: Phrasing, name: str, deepest: Fraction) -> Fault | None:
    edge, written = bench.edge(name), step.written
    if fault := not_long(written, "edge", edge) if "." in name else None:
        return fault
    if name.endswith(".bottom"):
        return fault_at(
            written,
            "edge",
            "FB340",
            f"`{name}` is a bottom edge, and a waist is levelled at the top",
            help=f"write `{edge.pieces[0]}.top`",
        )
    if edge.gathered:
        return fault_at(
            written,
            "edge",
            "FB333",
            f"`{name}` is gathered already, and it is levelled on the flat cloth",
            notes=("the cut would go through the gathering rows",),
            help="move this step before the one that gathers the edge",
        )
    left = min(bench.depth(piece) for piece in edge.pieces)
    if deepest >= left:
        return fault_at(
            written,
            "edge",
            "FB312",
            f"{say.length(deepest)} would be taken up of a piece that is {say.length(left)} deep,"
            f" {say.length(deepest - left)} too much",
            help="measure front, side and back again, or make the piece deeper",
        )
    return None


TECHNIQUE = LevelWaist()
