"""Finish an edge with a trim laid over the turned-up raw edge, or sewn along it and turned up with it.

What it does: turns the edge up to the right side and sews a trim over it, so that the raw edge is covered. Turned
    together: sews the trim along the raw edge on the wrong side, turns both up to the right side and topstitches.
Edges before and after: raw or neatened before; hemmed, with the trim on it, after.
Allowance: the turn, at this edge. The trim needs the length of the edge, and the overlap where the edge is a ring.
Example: `- edge with trim: {edge: flounce.bottom, trim: edging, turn up: 5 mm, overlap: 2 cm}`
Source: trim sewn 5 mm from the edge is common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, State
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Ledger, Lies, OnCloth
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
    Used,
    allowances_at,
    edge_at,
    edge_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.laying import bare_edge, hem, lap_window, turn_window
from furbelow.techniques.shared.loose_ends import folded_under
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready
from furbelow.techniques.shared.ring_drop import dropped_first

UNDER, TOGETHER = "the cloth under the trim", "trim and cloth together"
FIRST_ROW = Fraction(5)  # from the fold; common practice, no source
CAUGHT = Fraction(2)  # of the turn lies at least so far past the first row, or the needle misses it
SECOND_ROW = Fraction(2)  # below the upper edge of the trim
WIDE = Fraction(10)  # a wider trim needs a second row, or its upper edge stands off
STRETCH = Fraction(100)
COVER = Fraction(2)  # the trim reaches at least so far past the raw edge


def first_row(turn: Fraction) -> Fraction:
    """How far from the fold the first row is sewn, so that it catches a turn of this depth."""
    return min(FIRST_ROW, turn - CAUGHT) if turn > CAUGHT else turn / 2


class Trimmed(NamedTuple):
    """How a trim was sewn on: in how many rows, how far its ends overlap (0 on a flat edge), how wide it is.

    under: folded under at each end of a flat edge. together: sewn along the raw edge, and turned up with it.
    """

    rows: int
    overlap: Fraction
    width: Fraction
    under: Fraction
    together: bool = False


class EdgeWithTrim:
    name = "edge with trim"
    about = "Turn an edge up to the right side and sew a trim over the raw edge."
    pictures = (Picture.PIECES, Picture.TRIMMED_EDGE)
    parameters = {
        "edge": Parameter("The edge to finish.", Kind.EDGE),
        "trim": Parameter("The trim, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.TRIM,)),
        "turn up": Parameter("How much cloth is turned up under the trim.", Kind.LENGTH, "1 cm"),
        "overlap": Parameter("How far the trim's ends overlap on a ring.", Kind.LENGTH, "2 cm"),
        "turned": Parameter(
            "What is turned up: the cloth, with the trim laid over it, or the trim sewn along the raw edge and the cloth"
            " with it.",
            (UNDER, TOGETHER),
            UNDER,
        ),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return allowances_at(edges_in(edge_at(step, "edge")), "turn up")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        name, turn = edge_of(done.step.written, "edge"), done.step.mm("turn up")
        width = width_of(solved, word_of(done.step.written, "trim"))
        turned, held = hem(ledger, name, Fraction(0), turn, "turn up", "the turned edge")
        shows = turn if facts_of(done, Trimmed).together else width
        trim = tuple(ledger.at_edge(name, Lies.TRIM, "the trim", turn, turn + shows, "trim"))
        windows = [turn_window("turn up", "a turn", turn, bare=bare_edge(ledger, solved, name))]
        if done.before.ring(done.before.edge(name)):
            windows.append(lap_window("overlap", "a lap of the trim", done.step.mm("overlap")))
        return OnCloth((*turned, *trim), tuple(windows), held)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name = step.written, edge_of(step.written, "edge")
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge, trim, turn = bench.edge(name), word_of(written, "trim"), step.mm("turn up")
        width = width_of(solved, trim)
        together, say = word_of(written, "turned") == TOGETHER, Phrasing(solved, room)
        if together and not FIRST_ROW + CAUGHT <= turn <= width:
            return refused(bench, step, edge.pieces, _not_together(step, say, trim, width))
        if not together and width < turn + COVER:
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "turn up",
                    "FB310",
                    f"the trim `{trim}` is {say.length(width)} wide and can't cover a turn of {say.length(turn)},"
                    f" {say.length(turn + COVER - width)} too narrow",
                    notes=(
                        f"it has to reach {say.length(COVER)} past the raw edge: {say.length(turn)} + {say.length(COVER)}"
                        f" = {say.length(turn + COVER)}",
                    ),
                    help="turn up less, or choose a wider trim",
                ),
            )
        overlap, under = step.mm("overlap") if bench.ring(edge) else Fraction(0), folded_under(bench, edge)
        length = edge.end_to_end
        after = bench.turned(edge._replace(trim=trim), turn, State.HEMMED)
        rows = 2 if width > WIDE or together else 1
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=tuple(Sewn(StitchType.LOCK, length, edge.copies, room.seam_stitch) for _ in range(rows)),
            used=(
                Used(
                    trim,
                    length + overlap + 2 * under,
                    edge.copies,
                    Part("use-trim", {"piece": Pieces((edge.pieces[0],))}),
                ),
            ),
            setup=SetUp.STRAIGHT,
            handled=length * edge.copies,
            facts=Trimmed(rows, overlap, width, under, together),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, turn, trim = facts_of(done, Trimmed), done.step.mm("turn up"), word_of(done.step.written, "trim")
        edge = done.before.edge(edge_of(done.step.written, "edge"))
        actions: list[Action] = []
        if edge.state is State.RAW and any(_ravels(say.solved, piece) for piece in edge.pieces):
            actions.append(Action("edge-with-trim-hide"))
        row = _turned_together(facts, edge.copies) if facts.together else _row(facts)
        if facts.together and not facts.overlap and not facts.under:
            actions += [Action(message, 1 if message == "edge-with-trim-apart" else edge.copies) for message in row]
        else:
            actions += [Action(message, edge.copies, run=True) for message in row]
        values: Values = {
            "edge": edge_said(edge),
            "trim": Supply(trim),
            "seam": seam_said(done.before, edge.pieces, say),
            "turn": Length(turn),
            "row": Length(FIRST_ROW if facts.together else first_row(turn), "about"),
            "copies": edge.copies,
            "stretch": Length(STRETCH, "about"),
            "overlap": Length(facts.overlap),
            "half": Length(facts.overlap / 2),
            "under": Length(facts.under, "about"),
            "below": Length(SECOND_ROW, "about"),
            "length": Length(done.sewn[0].length),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        return Instructions(
            "edge-with-trim-title", "edge-with-trim-aim", tuple(actions), values, waits=dropped_first(done, edge)
        )


def _row(facts: Trimmed) -> list[str]:
    """The messages of what is done at one copy: laying the trim, the row at its outer edge, its ends, a second row."""
    wide = facts.rows == 2
    if facts.overlap:
        row = ["edge-with-trim-begin", "edge-with-trim-begin-ring", "edge-with-trim-fold", "edge-with-trim-sew-ring"]
        row += ["edge-with-trim-cut", "edge-with-trim-lap", "edge-with-trim-close"]
        row += ["edge-with-trim-second-row-ring"] * wide
        return [*row, "edge-with-trim-sew-lap"]
    if facts.under:
        row = ["edge-with-trim-begin", "edge-with-trim-begin-folded", "edge-with-trim-fold"]
        row += ["edge-with-trim-sew-folded"]
        row += ["edge-with-trim-end-folded"]
        return [*row, *["edge-with-trim-second-row-flat", "edge-with-trim-sew-ends"] * wide]
    row = ["edge-with-trim-begin", "edge-with-trim-begin-flat", "edge-with-trim-fold", "edge-with-trim-sew-flat"]
    return [*row, *["edge-with-trim-second-row-flat"] * wide]


def _turned_together(facts: Trimmed, copies: int) -> list[str]:
    """The messages where the trim is sewn along the raw edge first; on flat edges the trim runs from copy to copy uncut."""
    if facts.overlap:
        return [
            "edge-with-trim-along-ring",
            "edge-with-trim-along-sew-ring",
            "edge-with-trim-cut",
            "edge-with-trim-lap",
            "edge-with-trim-close",
            "edge-with-trim-turn-both",
            "edge-with-trim-topstitch-ring",
        ]
    if facts.under:
        return [
            "edge-with-trim-along-folded",
            "edge-with-trim-along-sew-ring",
            "edge-with-trim-end-folded",
            "edge-with-trim-turn-both",
            "edge-with-trim-topstitch-flat",
        ]
    sewn = (
        ["edge-with-trim-along-sew-chain", "edge-with-trim-apart"] if copies > 1 else ["edge-with-trim-along-sew-flat"]
    )
    return ["edge-with-trim-along-flat", *sewn, "edge-with-trim-turn-both", "edge-with-trim-topstitch-flat"]


def _not_together(step: SolvedStep, say: Phrasing, trim: str, width: Fraction) -> Fault:
    turn = step.mm("turn up")
    if turn > width:
        said = (
            f"the trim `{trim}` is {say.length(width)} wide, {say.length(turn - width)} less than is turned up with it"
        )
    else:
        least = FIRST_ROW + CAUGHT
        said = (
            f"a turn of {say.length(turn)} is {say.length(least - turn)} too little to hide the row that holds the trim"
        )
    return fault_at(
        step.written,
        "turn up",
        "FB310",
        said,
        notes=(f"the first row lies {say.length(FIRST_ROW)} from the raw edge, and is turned up too",),
        help=f"turn up {say.length(FIRST_ROW + CAUGHT)} to {say.length(width)}",
    )


def _ravels(solved: Solved, piece: str) -> bool:
    return solved.materials[solved.pieces[piece].piece.cloth.text].material.ravels


TECHNIQUE = EdgeWithTrim()
