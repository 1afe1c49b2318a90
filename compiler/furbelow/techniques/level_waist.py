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
from furbelow.garment import mends
from furbelow.garment.bench import Bench, State
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.matching import PLACES, Places, TakenUp
from furbelow.garment.message import Length, Part, Pieces, Things, Value, Values, flag
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
    edges_of,
    facts_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import round_to_step
from furbelow.techniques.shared.cautions import SHORT_BITES
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, no_length, not_long

_TAPE = Fraction(1)  # without a rounding, marks are made to the mm
WHERE = ("level-waist-in-front", "level-waist-at-the-sides", "level-waist-behind")


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

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        return OnCloth()

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
        after = bench.with_edges(*(edge._replace(state=State.RAW, marks=4) for edge in edges if cut))
        if cut:
            after = after.with_cloths(*(bench.cloths[piece]._replace(levelled=True) for piece in touches))
        handled = sum((edge.cloth_length * edge.copies for edge in edges if cut), Fraction(0))
        return Performed(step, bench, after, touches, setup=SetUp.TABLE, handled=handled, facts=TakenUp(names, taken))

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        names, taken = facts_of(done, TakenUp)
        if not any(taken):
            return Instructions("level-waist-title", "level-waist-aim-level", ())
        actions = [action for name in names for action in _marking(done, say, name)]
        actions += [Action("level-waist-dots"), Action("level-waist-line"), Action("level-waist-cut")]
        deepest = max(taken)
        lowest = [Part(place) for place, amount in zip(WHERE, taken, strict=True) if amount == deepest]
        values: Values = {
            "deepest": Length(deepest),
            "lowest": Things(tuple(lowest)),
            **amounts_said(taken),
        }
        return Instructions(
            "level-waist-title", "level-waist-aim", tuple(actions), values, (SHORT_BITES,), ruled=("level-waist-line",)
        )


def taken_up(step: SolvedStep, rounding: Fraction) -> Places:
    """How far the edge is taken up at the front, the sides and the back, in mm; 0 where the waist lies highest."""
    heights = [step.mm(place) for place in PLACES]
    front, side, back = (round_to_step(max(heights) - height, rounding) for height in heights)
    return front, side, back


def amounts_said(taken: Places) -> dict[str, Value]:
    """What is taken up at each place, by its name: a length, or nothing."""
    return {
        place: Length(amount) if amount else Part("level-waist-nothing")
        for place, amount in zip(PLACES, taken, strict=True)
    }


def _marking(done: Performed, say: Phrasing, name: str) -> list[Action]:
    """How the front, the sides and the back of one edge are found, counted from its side seam."""
    edge = done.before.edge(name)
    ring, quarter = done.before.ring(edge), (done.before.measured(edge) - edge.stands_out) / 4
    values: Values = {
        "edge": Pieces(edge.pieces, "top"),
        "seam": seam_said(done.before, edge.pieces, say),
        "quarter": Length(quarter),
        "open": flag(edge.stands_out),
        "margin": Length(edge.stands_out / 2),
        "first": Length(quarter + edge.stands_out / 2),
        "quarter-off": Length(quarter / 50, "about"),
    }
    messages = (
        "level-waist-hold-ring" if ring else "level-waist-lay-flat",
        "level-waist-mark-ring" if ring else "level-waist-mark-flat",
        "level-waist-tag",
    )
    return [Action(message, edge.copies, values=values) for message in messages]


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
            mend=mends.write(written, "edge", f"{edge.pieces[0]}.top"),
        )
    if edge.state is State.SELVEDGE and deepest:
        return fault_at(
            written,
            "edge",
            "FB302",
            f"`{name}` is a selvedge, and it would be cut off",
            help=f"leave `selvedge` of `{edge.pieces[0]}` out",
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
