"""Finish the part of a seam that is left open at the hem: as a slit, or as a vent whose sides overlap.

What it does: turns both margins back along the opening and stitches them down across its top; in a vent one margin stays
    out and lies under the other.
Edges before and after: a seam left open above the hem, its margins neat, before; stitched down beside the opening after.
Allowance: none beyond that of the seam; a vent overlaps by the whole margin.
Example: `- slit: {in: skirt.ends, as: vent}`
Source: a slit is stitched 6 mm beside its edge and across the top, a vent slantwise across its top; a vent overlaps by 4 cm:
    common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment import mends
from furbelow.garment.bench import Bench, Seam
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import Length, Pieces, Stitch, Values
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
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.seam_openings import to_come, to_leave_open

SLIT, VENT = "slit", "vent"
BESIDE = Fraction(6)
LEAST_LAP, USUAL_LAP = Fraction(20), Fraction(40)  # a narrower vent gapes at the first step
LEAST_TURN = Fraction(10)  # of a slit's margin: narrower, its row misses it
LEAST_SLIT = Fraction(50)  # house rule, maker to confirm
BAR = Fraction(5)


class SlitSewn(NamedTuple):
    """How long the slit is above the finished hem and above the bottom edge as it is now, and the seam in which it lies."""

    long: Fraction
    now: Fraction
    seam: Seam


class Slit:
    name = "slit"
    about = "Finish the part of a seam that is open at the hem, as a slit or as a vent."
    pictures = (Picture.PIECES, Picture.SEAM_SLIT)
    parameters = {
        "in": Parameter("The seam that was left open at the hem, such as skirt.ends.", Kind.EDGE),
        "as": Parameter("A slit, its sides edge to edge, or a vent, one side under the other.", (SLIT, VENT), SLIT),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        width, long = facts_of(done, SlitSewn).seam.width, facts_of(done, SlitSewn).long
        step = Window("in", "a slit", long, least=LEAST_SLIT, why="a shorter one gives no room for a step")
        if word_of(done.step.written, "as") == VENT:
            why = "one side lies under the other by it; give the seam of that name a wider allowance"
            return OnCloth(
                windows=(step, Window("as", "an overlap", width, least=USUAL_LAP, sewable_least=LEAST_LAP, why=why))
            )
        why = "a row holds it; give the seam of that name a wider allowance"
        return OnCloth(windows=(step, Window("as", "a margin to turn back", width, sewable_least=LEAST_TURN, why=why)))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name = step.written, edge_of(step.written, "in")
        seam = bench.seam_at(name)
        if seam is None or not seam.slit or seam.topstitched_slit:
            done = seam is not None and seam.topstitched_slit
            return refused(
                bench,
                step,
                (),
                fault_at(
                    written,
                    "in",
                    "FB318",
                    f"the slit in `{name}` is finished already" if done else f"no seam `{name}` is open at its hem",
                    mend=mends.leave_out(written) if done else to_leave_open(step, solved, name, "open at hem: 25 cm"),
                ),
            )
        touches = tuple(dict.fromkeys(ply.piece for ply in seam.plies))
        copies = bench.cloths[touches[0]].copies
        # Of a vent the margin beneath stays out; the other, and both of a slit, are folded back.
        stands_out = seam.width if word_of(written, "as") == VENT else Fraction(0)
        across = (bench.edge(f"{piece}.{side}") for piece in touches for side in ("top", "bottom"))
        after = bench.with_seams(seam._replace(topstitched_slit=True)).with_edges(
            *(each._replace(stands_out=stands_out) for each in across if each.slit and each.name not in bench.openings)
        )
        now = seam.slit + to_come(bench, Phrasing(solved, room), f"{touches[-1]}.bottom")
        bar = 2 * seam.width if word_of(written, "as") == VENT else 2 * BESIDE
        return Performed(
            step,
            bench,
            after,
            touches,
            sewn=(
                Sewn(StitchType.LOCK, 2 * now + bar, copies, room.seam_stitch),
                Sewn(StitchType.LOCK, 4 * BAR, copies, Fraction(1)),
            ),
            setup=SetUp.STRAIGHT,
            pinned=2 * now * copies,
            handled=2 * now * copies,
            facts=SlitSewn(seam.slit, now, seam),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, kind = facts_of(done, SlitSewn), word_of(done.step.written, "as")
        piece = done.touches[0]
        names = (
            ("slit-press", "slit-sew", "slit-bar")
            if kind == SLIT
            else ("slit-press-vent", "slit-hold-vent", "slit-across-vent")
        )
        values: Values = {
            "close-off": Length(Fraction(3), "off"),
            "pieces": Pieces(done.touches),
            "long": Length(facts.long),
            "now": Length(facts.now),
            "margin": Length(facts.seam.width),
            "beside": Length(BESIDE, "about"),
            "bar": Length(BAR, "about"),
            "stitch": Stitch(say.room.seam_stitch),
        }
        actions = tuple(Action(name, done.before.cloths[piece].copies) for name in names)
        title, aim = ("slit-title", "slit-aim") if kind == SLIT else ("slit-title-vent", "slit-aim-vent")
        cautions, tools = (PINS_OUT, iron_hot(done, say)), iron_tools(done, say, piece)
        return Instructions(
            title,
            aim,
            actions,
            values,
            cautions,
            tools,
            (piece,),
            ironed=("slit-press", "slit-press-vent"),
            ruled=("slit-across-vent",),
        )


TECHNIQUE = Slit()
