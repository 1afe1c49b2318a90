"""Sew tucks across a piece: folds stitched down along its length.

What it does: folds the cloth on marked lines, sews each fold at its depth and presses it towards the hem.
Edges before and after: any flat bottom edge, finished or not; it stays as it is, and the piece becomes shallower.
Allowance: twice the depth for each tuck, booked at the bottom edge.
Example: `- tucks: {edge: flounce.bottom, depth: 1/2 in, count: 3, space: 1/4 in, from edge: 1 in}`
Source: a tuck needs twice its depth; a space of half a tuck in muslin; an odd number of tucks: Home and School Sewing,
    ch. XXI. Tucks of 1/2 in with 1/2 in between stitchings: each fold meets the stitching below: Hand Sewing Lessons.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge
from furbelow.garment.lying import Band, Held, Ledger, Lies, Occupant, OnCloth, Window
from furbelow.garment.message import Length, Pieces, Stitch, Values, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step, Written
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
    allowances_at,
    edge_at,
    edge_of,
    facts_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.iron import iron_hot, iron_set, iron_tools
from furbelow.techniques.shared.preconditions import strips_not_joined

NARROWEST_TUCK = Fraction(1)  # a pin tuck; house rule, maker to confirm


class Tucked(NamedTuple):
    """Where the flat cloth is folded, in mm above the edge, the lowest first."""

    lines: tuple[Fraction, ...]


class Tucks:
    name = "tucks"
    about = "Sew folds across a piece, each taking twice its depth."
    pictures = (Picture.PIECES, Picture.TUCKS)
    parameters = {
        "edge": Parameter("The bottom edge that the tucks lie above.", Kind.EDGE),
        "depth": Parameter("Depth of each finished tuck, from its stitching to its fold.", Kind.LENGTH, "1 cm"),
        "count": Parameter("How many tucks; a plain number.", Kind.NUMBER, "3"),
        "space": Parameter(
            "What shows between the fold of one tuck and the stitching of the next; 0 lets them meet.",
            Kind.LENGTH,
            "5 mm",
        ),
        "from edge": Parameter(
            "How far the fold of the lowest tuck lies above the edge as it is then.", Kind.LENGTH, "3 cm"
        ),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        count = _count(step) or 0
        return allowances_at(edges_in(edge_at(step, "edge")), *("depth",) * (2 * count))

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        step = done.step
        name, depth, space, above = (
            edge_of(step.written, "edge"),
            step.mm("depth"),
            step.mm("space"),
            step.mm("from edge"),
        )
        piece, _, side = name.partition(".")
        on, held, folded = [], [], []
        for fold in fold_lines(depth, _count(step.written) or 0, space, above):
            # Flat, from the edge: the tuck lies on one depth of cloth below its stitching and takes two above it.
            lies_on, cloth = (
                ledger.band(piece, side, fold - 2 * depth, fold - depth),
                ledger.band(piece, side, fold - depth, fold + depth),
            )
            on.append(
                Occupant(
                    piece,
                    Lies.TUCK,
                    "the tuck",
                    Band(min(lies_on.near, cloth.near), max(lies_on.far, cloth.far)),
                    arg="from edge",
                )
            )
            folded.append(cloth)
            if ledger.bench.cloths[piece].piece.ring is not None:
                longer, shorter = (ledger.length_at(piece, down) for down in (cloth.far, cloth.near))
                held.append(Held("depth", f"a tuck of `{piece}`", piece, longer, shorter, drawn=False))
        windows = (
            Window("depth", "a tuck", depth, sewable_least=NARROWEST_TUCK, why="a fold that a row of stitches holds"),
            Window("space", "the space between tucks", space, sewable_least=Fraction(0)),
        )
        return OnCloth(tuple(on), windows, tuple(held), {piece: tuple(folded)})

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, say = step.written, edge_of(step.written, "edge"), Phrasing(solved, room)
        count = _count(written)
        if not count:
            return refused(
                bench,
                step,
                (),
                fault_at(
                    written,
                    "count",
                    "FB341",
                    f"`{_text(written)}` tucks can't be booked before the sums are done",
                    notes=(
                        "each tuck takes cloth, so their number must stand in the spec as a plain number, 1 or more",
                    ),
                    help="write a number, such as `count: 3`",
                ),
            )
        if not name.endswith(".bottom"):
            return refused(
                bench,
                step,
                (),
                fault_at(
                    written,
                    "edge",
                    "FB340",
                    f"tucks are measured up from a bottom edge, and `{name}` is none",
                    mend=mends.write(written, "edge", f"{name.partition('.')[0]}.bottom"),
                ),
            )
        edge = bench.edge(name)
        fault = strips_not_joined(bench, written, "edge", edge.pieces) or _no_room(bench, step, edge, count, say)
        if fault:
            return refused(bench, step, edge.pieces, fault)
        after = bench.with_edges(edge._replace(used=edge.used + 2 * step.mm("depth") * count))
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=tuple(Sewn(StitchType.LOCK, edge.set_length, edge.copies, room.seam_stitch) for _ in range(count)),
            setup=SetUp.STRAIGHT,
            handled=2 * count * edge.set_length * edge.copies,
            facts=Tucked(fold_lines(step.mm("depth"), count, step.mm("space"), step.mm("from edge"))),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, lines = done.step, facts_of(done, Tucked).lines
        edge = done.before.edge(edge_of(step.written, "edge"))
        depth, tucks = step.mm("depth"), len(lines)

        def each(message: str, number: int) -> Action:
            return Action(message, edge.copies, values={"number": number, "line": Length(lines[number - 1])})

        actions = [each("tucks-mark-first" if number == 1 else "tucks-mark-next", number) for number in _up_to(tucks)]
        actions += [
            each("tucks-sew-last" if number == tucks and tucks > 1 else "tucks-sew", number) for number in _up_to(tucks)
        ]
        piece = edge.pieces[0]
        actions += [iron_set(say, done.before, piece), Action("tucks-press", edge.copies)]
        values: Values = {
            "tucks": tucks,
            "ring": flag(done.before.ring(edge)),
            "piece": Pieces((piece,)),
            "edge": Pieces((piece,), "bottom"),
            "depth": Length(depth),
            "taken": Length(2 * depth * tucks),
            "left": Length(done.after.depth(piece)),
            "apart": Length(depth + step.mm("space")),
            "length": Length(edge.set_length),
            "stitch": Stitch(done.sewn[0].stitch),
            "line-off": Length(Fraction(1), "about"),
        }
        cautions, tools = (iron_hot(done, say),), iron_tools(done, say)
        return Instructions(
            "tucks-title", "tucks-aim", tuple(actions), values, cautions, tools, ironed=("tucks-press",)
        )


def _up_to(number: int) -> range:
    return range(1, number + 1)


def fold_lines(depth: Fraction, count: int, space: Fraction, from_edge: Fraction) -> tuple[Fraction, ...]:
    """Where to fold the flat cloth, in mm above the edge, the lowest first.

    A tuck's stitching lies its depth above its fold; each tuck below has used up twice its depth of flat cloth.
    """
    return tuple(from_edge + 2 * depth + number * (3 * depth + space) for number in range(count))


def _no_room(bench: Bench, step: SolvedStep, edge: Edge, count: int, say: Phrasing) -> Fault | None:
    written, depth = step.written, step.mm("depth")
    if edge.gathered:
        return fault_at(
            written,
            "edge",
            "FB333",
            f"`{edge.name}` is gathered {say.ratio(edge.ratio)} to 1, and tucks need flat cloth, 1 to 1",
            help="sew the tucks before the edge is gathered",
        )
    piece = min(edge.pieces, key=bench.depth)
    left = bench.depth(piece) - 2 * depth * count
    needed = step.mm("from edge") + count * depth + (count - 1) * step.mm("space")
    if left < needed:
        return fault_at(
            written,
            "count",
            "FB312",
            f"{say.count(count, 'tuck')} leave {say.length(max(left, Fraction(0)))} of `{piece}` and lie on {say.length(needed)},"
            f" {say.length(needed - left)} more than there is",
            notes=(
                f"{say.length(bench.depth(piece))} - {2 * count} x {say.length(depth)} = {say.length(max(left, Fraction(0)))}",
            ),
            help="sew fewer or shallower tucks, or make the piece deeper",
        )
    return None


def _text(step: Step) -> str:
    value = step.args["count"].value
    return value.text if isinstance(value, Written) else ""


def _count(step: Step) -> int | None:
    """The number of tucks, if it is a plain number: the books are made before any formula is worked out."""
    text = _text(step).strip()
    return int(text) if text.isascii() and text.isdigit() and len(text) < 3 else None


TECHNIQUE = Tucks()
