"""Draw a ring in with rows of elastic thread.

What it does: sews parallel rows with elastic thread in the bobbin below a finished edge; the rows draw the cloth in.
Edges before and after: a finished ring before; shorter at rest, and able to stretch to its cloth length, after.
Allowance: none. Each row takes elastic thread of the length at rest, and two tails.
Example: `- shirring: {edge: skirt.top, length: waist_girth - 4 cm, with: elastic_thread, rows: 6, spacing: 8 mm}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Casing, Edge, State
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Ledger, Lies, OnCloth, Window
from furbelow.garment.message import Length, Part, Pieces, Stitch, Supply, Values, edge_said
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step, SupplyKind
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
    Used,
    edge_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import STEAM
from furbelow.techniques.shared.gathers import KNOT
from furbelow.techniques.shared.laying import drawn_in
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import not_long, strips_not_joined

STITCH = Fraction(3)  # longer stitches draw in more; common practice, no source
TAIL = Fraction(80)
WIDEST_THREAD, FEWEST_ROWS, CLEAR_OF_EDGE = Fraction(3), Fraction(3), Fraction(3)  # house rules, maker to confirm
TRIAL = Fraction(300)  # strip to try the thread on


class Shirred(NamedTuple):
    """So many rows, and how long the edge is at rest, in mm."""

    rows: int
    length: Fraction


class Shirring:
    name = "shirring"
    about = "Draw a ring in with several rows of elastic thread."
    pictures = (Picture.PIECES, Picture.SHIRRING)
    parameters = {
        "edge": Parameter("The finished edge that the rows lie under.", Kind.EDGE),
        "length": Parameter("How long the edge is to be at rest.", Kind.LENGTH),
        "with": Parameter("The elastic thread, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.ELASTIC,)),
        "rows": Parameter("How many rows.", Kind.NUMBER, "5"),
        "spacing": Parameter("From one row to the next.", Kind.LENGTH, "8 mm"),
        "from edge": Parameter("From the edge to the first row.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, step = done.step.written, done.step
        name, elastic, rows = edge_of(written, "edge"), word_of(written, "with"), step.amounts["rows"].as_number()
        above, spacing = step.mm("from edge"), step.mm("spacing")
        width = width_of(solved, elastic)
        band = tuple(
            ledger.at_edge(name, Lies.ELASTIC, "the shirring", above, above + (rows - 1) * spacing + 1, "from edge")
        )
        windows = (
            Window(
                "with", "elastic thread", width, sewable_most=WIDEST_THREAD, why="it is wound on the bobbin by hand"
            ),
            Window(
                "rows",
                "the number of rows",
                rows,
                least=FEWEST_ROWS,
                why="one row carries little and cuts in",
                counted=True,
            ),
            Window("from edge", "the first row from a finished edge", above, sewable_least=CLEAR_OF_EDGE),
            Window("spacing", "the space between rows", spacing, sewable_least=Fraction(3), most=Fraction(20)),
        )
        return OnCloth(band, windows, drawn_in(done.before.edge(name), "length", step.mm("length")))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, say = step.written, edge_of(step.written, "edge"), Phrasing(solved, room)
        if name not in bench.edges or "." not in name:
            return refused(
                bench,
                step,
                (),
                fault_at(
                    written,
                    "edge",
                    "FB302",
                    f"`{name}` is a stack, and elastic thread draws one piece at a time",
                    help="shirr the pieces before they are stacked",
                ),
            )
        edge = bench.edge(name)
        fault = not_long(written, "edge", edge) or strips_not_joined(bench, written, "edge", edge.pieces)
        fault = fault or self._cannot_draw(bench, step, solved, edge, say)
        if fault:
            return refused(bench, step, edge.pieces, fault)
        length, rows, elastic = step.mm("length"), int(step.amounts["rows"].as_number()), word_of(written, "with")
        wide = step.mm("from edge") + (rows - 1) * step.mm("spacing")
        after = bench.with_edges(edge._replace(set_length=length, gathered="shirring", held=True)).with_casing(
            Casing(name, edge.pieces[0], wide, edge.cloth_length, Fraction(0), False, elastic, length)
        )
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=tuple(Sewn(StitchType.LOCK, edge.cloth_length, edge.copies, STITCH) for _ in range(rows)),
            used=(
                Used(
                    elastic,
                    rows * (length + 2 * TAIL),
                    edge.copies,
                    Part("use-shirring", {"piece": Pieces((edge.pieces[0],))}),
                ),
            ),
            setup=SetUp.STRAIGHT,
            handled=edge.cloth_length * edge.copies,
            facts=Shirred(rows, length),
        )

    def _cannot_draw(self, bench: Bench, step: SolvedStep, solved: Solved, edge: Edge, say: Phrasing) -> Fault | None:
        written, length, rows = step.written, step.mm("length"), step.amounts["rows"].as_number()
        piece = edge.pieces[0]
        cloth = solved.pieces[piece].piece.cloth.text
        if not bench.ring(edge):
            return fault_at(
                written,
                "edge",
                "FB304",
                f"`{edge.name}` is still flat, and its rows would end in the side seam",
                mend=mends.before(written, f"join ends: {{of: {piece}}}"),
            )
        if edge.state is State.SEWN or edge.gathered:
            return fault_at(
                written,
                "edge",
                "FB302",
                f"`{edge.name}` is {'gathered' if edge.gathered else 'sewn into a seam'} already",
                help="shirr it while it lies flat and free",
            )
        if edge.state is State.RAW and solved.materials[cloth].material.ravels:
            return fault_at(
                written,
                "edge",
                "FB335",
                f"the raw edge of `{edge.name}` lies open above the rows and `{cloth}` ravels",
                mend=mends.before(written, f"narrow hem: {{edge: {edge.name}}}"),
            )
        if rows < 1 or rows.denominator != 1:
            return fault_at(
                written,
                "rows",
                "FB341",
                f"{float(rows):.4g} rows can't be sewn; they are counted 1, 2, 3",
                mend=mends.write(written, "rows", f"{max(1, round(rows))}"),
            )
        deep = step.mm("from edge") + (rows - 1) * step.mm("spacing")
        if deep >= bench.depth(piece):
            return fault_at(
                written,
                "rows",
                "FB312",
                f"the lowest row lies {say.length(deep)} down a piece of {say.length(bench.depth(piece))}",
                help="sew fewer rows, or closer ones",
            )
        if length >= edge.cloth_length:
            return fault_at(
                written,
                "length",
                "FB314",
                f"`{edge.name}` has {say.length(edge.cloth_length)} of cloth for {say.length(length)}, and nothing is left to draw in",
                help="make the piece longer, or the length at rest shorter",
            )
        return None

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, shirred = done.step, facts_of(done, Shirred)
        edge = done.before.edge(edge_of(step.written, "edge"))
        trial = say.strip(TRIAL)
        trial_short = trial * shirred.length / edge.cloth_length
        actions = (
            Action("shirring-wind"),
            Action("shirring-iron"),
            Action("shirring-try"),
            *(
                Action(message, edge.copies)
                for message in ("shirring-mark", "shirring-sew", "shirring-tails", "shirring-steam")
            ),
        )
        values: Values = {
            "edge": edge_said(edge),
            "rows": shirred.rows,
            "thread": Supply(word_of(step.written, "with")),
            "cloth": Length(edge.cloth_length),
            "length": Length(shirred.length),
            "stitch": Stitch(STITCH),
            "trial": Length(trial),
            "trial-short": Length(trial_short),
            "trial-off": Length(trial_short / 20, "about"),
            "from-edge": Length(step.mm("from edge")),
            "spacing": Length(step.mm("spacing")),
            "seam": seam_said(done.before, edge.pieces, say),
            "tail": Length(TAIL, "about"),
            "knot": Length(KNOT, "about"),
            "off": Length(shirred.length / 40, "about"),
        }
        return Instructions(
            "shirring-title", "shirring-aim", actions, values, (STEAM,), (Tool.IRON,), ironed=("shirring-steam",)
        )


TECHNIQUE = Shirring()
