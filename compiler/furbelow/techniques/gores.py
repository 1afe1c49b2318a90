"""Cut panels that widen to the hem: two gores from each rectangle, by one slanting line.

What it does: marks the two ends of a slanting line on the rectangle and cuts along it; the gores lie head to tail in it.
Edges before and after: rectangles before; gores with one straight and one slanting side after, all edges raw.
Allowance: none of its own: the rectangle is as wide as both ends of one gore with all that later steps take.
Example: `- gores: {piece: gore, hem: 36 cm}`
Source: plane geometry: the slanting line halves a rectangle as wide as top and bottom of one gore together. A straight side
    is sewn to a slanting one, so that neither is stretched; a skirt of gores hangs before it is hemmed: common practice, no
    source.
"""

from __future__ import annotations

from fractions import Fraction
from math import sqrt

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench
from furbelow.garment.gore import Gore
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import Length, Pieces, Values, flag
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
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.tolerance import CUT_OFF
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import SHEARS

STEEPEST = Fraction(
    3, 4
)  # so much wider for each length of depth: a steeper side lies on the bias and drops; house rule


class Gores:
    name = "gores"
    about = "Cut panels that widen to the hem, two from each rectangle."
    pictures = (Picture.GORES,)
    parameters = {
        "piece": Parameter("The piece; its length is the top of one gore, its count how many gores.", Kind.PIECE),
        "hem": Parameter("Length of the finished bottom edge of each gore, longer than the top.", Kind.LENGTH),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return (Allowance(word_of(step, "piece"), "bottom", (), gore="hem"),)

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        gore = facts_of(done, Gore)
        wider = gore.hem - gore.top
        why = "a steeper side lies on the bias and drops; take more gores, each less wide"
        return OnCloth(windows=(Window("hem", "a widening", wider, most=gore.depth * STEEPEST, why=why),))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        piece = word_of(step.written, "piece")
        gore = solved.pieces[piece].gore
        if gore is None or (fault := _not_to_cut(bench, step, Phrasing(solved, room), piece)):
            fault = fault if gore else _not_wider(step, Phrasing(solved, room), piece)
            return refused(bench, step, (piece,), *((fault,) if fault else ()))
        long = gore.hem + 2 * gore.ends
        after = bench.with_cloths(bench.cloths[piece]._replace(blank=False))
        after = after.with_edges(bench.edge(f"{piece}.bottom")._replace(cloth_length=long, set_length=long))
        rectangles = gore.rectangles(bench.cloths[piece].copies)
        handled = gore.cut_depth * 2 * rectangles
        return Performed(step, bench, after, (piece,), setup=SetUp.TABLE, handled=handled, facts=gore)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        piece, gore = word_of(done.step.written, "piece"), facts_of(done, Gore)
        gores = done.before.cloths[piece].copies
        rectangles = gore.rectangles(gores)
        messages = ("gores-lay", "gores-mark-pair" if gore.paired else "gores-mark-one", "gores-cut", "gores-name")
        wide, high = gore.blank
        values: Values = {
            "piece": Pieces((piece,)),
            "gores": gores,
            "odd": flag(gore.paired and gores % 2),
            "top": Length(gore.top),
            "hem": Length(gore.hem),
            "wide": Length(wide, "cut"),
            "high": Length(high, "cut"),
            "narrow": Length(gore.cut_top),
            "broad": Length(gore.cut_bottom),
            "slant": Length(
                Fraction(round(sqrt(float(high**2 + (gore.cut_bottom - gore.cut_top) ** 2)), 1)).limit_denominator(10)
            ),
            "off": Length(CUT_OFF, "off"),
        }
        actions = tuple(Action(message, rectangles) for message in messages)
        return Instructions("gores-title", "gores-aim", actions, values, (SHEARS,))


def _not_wider(step: SolvedStep, say: Phrasing, piece: str) -> Fault:
    hem, top = step.mm("hem"), say.solved.pieces[piece].length
    return fault_at(
        step.written,
        "hem",
        "FB314",
        f"the bottom edge of {say.length(hem)} is not longer than the top of `{piece}`, {say.length(top)}",
        help="make the hem longer, or leave this step out: the piece is a rectangle",
    )


def _not_to_cut(bench: Bench, step: SolvedStep, say: Phrasing, piece: str) -> Fault | None:
    written, numbers, gore = step.written, say.solved.pieces[piece], say.solved.pieces[piece].gore
    if numbers.piece.piecing is not None or numbers.folded or numbers.ring is not None:
        how = "pieced of strips" if numbers.piece.piecing else "folded in half" if numbers.folded else "cut in a ring"
        return fault_at(
            written,
            "piece",
            "FB354",
            f"`{piece}` is {how}, and gores are cut from one flat rectangle",
            help="cut more gores, each narrower, with `count`",
        )
    if not bench.cloths[piece].blank:
        return fault_at(
            written, "piece", "FB354", f"the gores of `{piece}` are cut already", help="leave this step out"
        )
    if gore is not None and gore.cut_top <= 0:
        return fault_at(
            written,
            "hem",
            "FB354",
            f"the slanting side of `{piece}` meets the straight one {say.length(gore.above)} above the finished top",
            help="make the hem less wide or the top wider",
        )
    return None


TECHNIQUE = Gores()
