"""Cut a piece between two arcs, so that its bottom edge is longer than its top and falls in folds without gathers.

What it does: draws two arcs and two straight ends on a rectangle of cloth, cuts them out and holds the top edge.
Edges before and after: a rectangle large enough before; a flat piece whose length is its top and `hem` its bottom after.
Allowance: none; seams and turns of later steps lie beyond both arcs, and the cutting plan has the rectangle.
Example: `- ring cut: {piece: flounce, hem: 112 in}` with the piece `flounce: {from: lawn, length: 72 in, depth: 12 in}`. A yoke
    over the hips is the same, a cone cut open: its length is the waist, its hem the hips.
Source: R = top x depth / (bottom - top): Baldt, Clothing for Women, 1916, draft of a circular flounce. Circle skirts:
    waist / (2 pi), definition. Copies lie one in the other, shifted along the middle line until they touch: geometry.
"""

from __future__ import annotations

from fractions import Fraction
from math import sin

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, Number, Pieces, Stitch, Values, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.ring_sector import RingSector
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import EdgeName, Step, each_of
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
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import ARC

STAY = Fraction(5)  # from the cut edge, inside any seam of 1 cm
STRAIGHT_BELOW = 3  # radians: the straight line between the ends of a wider arc hardly changes with the angle


class RingCut:
    name = "ring cut"
    about = "Cut a piece between two arcs: a circular flounce, a shaped yoke or part of a circle skirt."
    pictures = (Picture.PIECES,)
    parameters = {
        "piece": Parameter("The piece; its length is the top edge, its depth lies between the arcs.", Kind.PIECE),
        "hem": Parameter("Length of the finished bottom edge of each copy, longer than the top.", Kind.LENGTH),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return (Allowance(word_of(step, "piece"), "bottom", (), hem="hem"),)

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        return OnCloth()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        piece = word_of(step.written, "piece")
        if fault := _not_to_cut(bench, step, Phrasing(solved, room), solved, piece):
            return refused(bench, step, (piece,), fault)
        cloth, numbers = bench.cloths[piece], solved.pieces[piece]
        bottom = bench.edge(f"{piece}.bottom")
        # The straight ends run out from the centre, so their margins add the same to both arcs.
        long = step.mm("hem") + numbers.cut_length - numbers.length
        after = bench.with_cloths(cloth._replace(blank=False))
        after = after.with_edges(bottom._replace(cloth_length=long, set_length=long))
        stay = Sewn(
            StitchType.LOCK,
            numbers.cut_length,
            cloth.copies,
            room.seam_stitch,
        )
        handled = (numbers.cut_length + long + 2 * numbers.cut_depth) * cloth.copies
        return Performed(step, bench, after, (piece,), sewn=(stay,), setup=SetUp.STRAIGHT, handled=handled)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        piece = word_of(done.step.written, "piece")
        numbers, ring = say.solved.pieces[piece], say.solved.pieces[piece].ring
        assert ring is not None  # performed
        wide, high = numbers.blank
        beyond, half = ring.outer - high, float(ring.angle / 2)
        copies = done.before.cloths[piece].copies
        shift = ring.next_down if ring.stacked > 1 else None
        # The centre of the uppermost copy lies highest.
        on_paper = beyond + (shift or 0) * (ring.stacked - 1) > 0
        messages = (
            "ring-cut-lay",
            "ring-cut-centre-beyond" if beyond > 0 else "ring-cut-centre",
            "ring-cut-outer",
            "ring-cut-inner",
            "ring-cut-ends" if ring.angle < STRAIGHT_BELOW else "ring-cut-ends-wide",
            *(("ring-cut-next",) if shift else ()),
            "ring-cut-cut",
            "ring-cut-stay-above" if ring.above else "ring-cut-stay",
            *(() if _carries(say.solved, piece) else ("ring-cut-hang",)),
        )
        values: Values = {
            "piece": Pieces((piece,)),
            "radius": Length(ring.radius),
            "degrees": Number(Fraction(round(float(ring.degrees), 1)).limit_denominator(10), 1),
            "whole-degrees": round(ring.degrees),
            "top": Length(ring.top),
            "hem": Length(ring.hem),
            "wide": Length(wide, "cut"),
            "high": Length(high, "cut"),
            "outer": Length(ring.outer),
            "inner": Length(ring.inner),
            "beyond": Length(beyond),
            "shift": Length(shift or Fraction(0)),
            "stacked": ring.stacked,
            "on-paper": flag(on_paper),
            "farthest": Length(max(beyond + (shift or 0) * (ring.stacked - 1), Fraction(0))),
            "last": copies - (ring.rectangles(copies) - 1) * ring.stacked,
            "short": flag(copies % ring.stacked),
            "arc-off": Length(Fraction(3), "about"),
            "along": Length(ring.angle / 2 * ring.outer),
            "has-seam": flag(ring.ends),
            "ends": Length(ring.ends),
            "across": Length(Fraction(round(2 * float(ring.outer) * sin(half), 3))),
            "across-off": Length(Fraction(5), "about"),
            "stay": Length(STAY, "about"),
            "stitch": Stitch(done.sewn[0].stitch),
            "above": Length(ring.above),
            "top-off": Length(max(ring.top / 200, Fraction(3)), "about"),
        }
        drawn = messages.index("ring-cut-cut")
        actions = tuple(
            Action(message, ring.rectangles(copies) if at < drawn else copies) for at, message in enumerate(messages)
        )
        return Instructions(
            "ring-cut-title",
            "ring-cut-aim",
            actions,
            values,
            (ARC,),
            (Tool.LARGE_PAPER,) if on_paper else (),
            ruled=("ring-cut-centre", "ring-cut-centre-beyond", "ring-cut-ends", "ring-cut-ends-wide"),
        )


def _carries(solved: Solved, piece: str) -> bool:
    """Whether something is sewn to its bottom edge, as to a yoke: then it is never hemmed."""
    named = (each_of(step.args["to"].value) for step in solved.spec.steps if "to" in step.args)
    return any(f"{piece}.bottom" == str(value) for values in named for value in values if isinstance(value, EdgeName))


def _not_to_cut(bench: Bench, step: SolvedStep, say: Phrasing, solved: Solved, piece: str) -> Fault | None:
    written, numbers, hem = step.written, solved.pieces[piece], step.mm("hem")
    ring = numbers.ring
    if ring is None:
        return fault_at(
            written,
            "hem",
            "FB314",
            f"the bottom edge of {say.length(hem)} is not longer than the top of `{piece}`,"
            f" {say.length(numbers.length)}",
            help="make the hem longer, or leave this step out: the piece is a rectangle",
        )
    if numbers.piece.piecing is not None or numbers.folded:
        how = "pieced of strips" if numbers.piece.piecing else "folded in half"
        return fault_at(
            written,
            "piece",
            "FB354",
            f"`{piece}` is {how}, and a ring is cut from one flat rectangle",
            help="cut it in several copies, with `count`, and join them to one ring",
        )
    if not bench.cloths[piece].blank:
        return fault_at(
            written, "piece", "FB354", f"the ring of `{piece}` is cut already", mend=mends.leave_out(written)
        )
    if ring.inner <= 0:
        return fault_at(
            written,
            "hem",
            "FB354",
            f"the radius of {say.length(ring.radius)} is used up by the {say.length(ring.above)} taken above it",
            help="make the hem less full, or cut more copies, each with a shorter top",
        )
    if ring.apart <= 0:
        return fault_at(
            written,
            "hem",
            "FB354",
            f"an arc of {ring.degrees:.1f} degrees leaves no cloth between its ends, which take {say.length(2 * ring.ends)};"
            " a whole circle has 360",
            notes=(
                f"({say.length(hem)} - {say.length(ring.top)}) / {say.length(ring.depth)} = {ring.degrees:.1f} degrees",
                f"`hem` is of one copy, and there {'is' if numbers.count == 1 else 'are'} {numbers.count} of `{piece}`",
            ),
            help=f"cut `{piece}` in {_enough(ring, numbers.count)} copies or more, each with its share of top and hem, and join"
            " them with `into: one ring`; or make the hem less full",
        )
    return None


def _enough(ring: RingSector, count: int) -> int:
    """In how many copies the same rings can be cut: each is so much shorter at both its arcs."""
    shared = (ring._replace(top=ring.top * count / many, hem=ring.hem * count / many) for many in range(count + 1, 99))
    return next((many for many, each in enumerate(shared, count + 1) if each.apart > 0), 99)


TECHNIQUE = RingCut()
