"""Gather an edge to a shorter length.

What it does: draws the cloth of an edge together, by two rows of long stitches or by a pleating attachment.
Edges before and after: the edge keeps its cloth length and state; its set length becomes the length it is meant for.
Allowance: none. The rows lie inside the seam that follows, clear of its line.
Example: `- gather: {edge: flounce.top, to: upper.bottom}`, `- gather: {edge: row.top, on: base, below top: 20 cm}`
Source: two rows 5 mm apart in the longest stitch, without backstitch, with long tails: common practice, no source.
    An attachment set to every stitch and depth mark 6 takes cloth to about half: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment import limits, mends
from furbelow.garment.attachment import mark_for
from furbelow.garment.bench import Bench, Edge
from furbelow.garment.limits import is_net
from furbelow.garment.lying import Held, Ledger, Lies, OnCloth
from furbelow.garment.matching import EVEN, cloth_marks, divisions
from furbelow.garment.message import Length, Number, Ratio, Share, Things, Values, edge_said, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    Action,
    Drawn,
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
from furbelow.techniques.shared.cautions import HAND_NEEDLE, PINS_OUT
from furbelow.techniques.shared.gathers import (
    ATTACHMENT,
    HAND,
    ROWS,
    attached_at,
    margin_to_come,
    rows_in,
    runs_of,
    runs_said,
)
from furbelow.techniques.shared.laying import drawn_in
from furbelow.techniques.shared.lines import HEIGHTS
from furbelow.techniques.shared.marks import marked_in, seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, length_wanted
from furbelow.techniques.shared.stacks import HOLDING_ROW

BEST = "best"
WOUND, KNOTTED = "wound round pins", "knotted on both faces"
TRY = Fraction(500)  # strip to try the attachment on


class Gathered(NamedTuple):
    """An edge gathered: cloth per set length, how, to which length in mm, the share behind, marks on the flat cloth.

    rows: how far they lie from the edge, in mm; one with an attachment.
    """

    ratio: Fraction
    method: str
    length: Fraction
    behind: Fraction
    marks: tuple[Fraction, ...]
    rows: tuple[Fraction, ...]


class Gather:
    name = "gather"
    about = "Draw an edge together to the length of another edge, or to a given length."
    pictures = (Picture.PIECES, Picture.GATHERING)
    parameters = {
        "edge": Parameter("The edge to gather.", Kind.EDGE),
        "to": Parameter("The edge it will be sewn to.", Kind.EDGE, ""),
        "length": Parameter("The length to gather to, where it is not that of another edge.", Kind.LENGTH, ""),
        "on": Parameter("Instead: the piece on which it will be sewn to a line across.", Kind.PIECE, ""),
        **HEIGHTS,
        "method": Parameter(
            "How to gather; best takes what the workroom has and the cloth can take.",
            (BEST, ROWS, HAND, ATTACHMENT),
            BEST,
        ),
        "tails": Parameter(
            "What holds the threads of two rows while they are pulled from the other end: a pin, or knots on both faces.",
            (WOUND, KNOTTED),
            WOUND,
        ),
        "behind": Parameter("Share of the cloth that is gathered into the back half.", Kind.NUMBER, "50%"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        facts, name = facts_of(done, Gathered), edge_of(done.step.written, "edge")
        near, far = facts.rows[0], max(facts.rows[-1], facts.rows[0] + 1)
        rows = tuple(ledger.at_edge(name, Lies.GATHERS, "the gathering rows", near, far, "edge"))
        edge, half = done.before.edge(name), facts.length / 2
        if facts.behind == EVEN:
            return OnCloth(rows, held=drawn_in(edge, "edge", facts.length))
        held = (
            Held(arg, f"the {where} half of `{name}`", piece, edge.cloth_length * share, half, drawn=True)
            for piece in edge.pieces
            for arg, where, share in (("behind", "back", facts.behind), ("behind", "front", 1 - facts.behind))
        )
        return OnCloth(rows, held=tuple(held))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, say = step.written, edge_of(step.written, "edge"), Phrasing(solved, room)
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge = bench.edge(name)
        length = length_wanted(bench, say, step, edge)
        if isinstance(length, Fault):
            return refused(bench, step, edge.pieces, length)
        ratio = edge.cloth_length / length
        behind = step.amounts["behind"].value
        if not 0 < behind < 1:
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "behind",
                    "FB313",
                    f"{say.share(behind)} of the cloth can't lie in the back half",
                    help="write a share between 0% and 100%, such as 60%",
                ),
            )
        method = self._method(word_of(written, "method"), room, edge, ratio)
        faults = self._limits(step, solved, room, edge, length, method)
        if any(fault.severity is Severity.ERROR for fault in faults):
            return refused(bench, step, edge.pieces, *faults)
        parts = max(divisions(length), edge.marks)
        # Knotted at both ends on both faces the threads hold the gathers, and no tails are left hanging.
        held = method == ROWS and word_of(written, "tails") == KNOTTED
        after = bench.with_edges(edge._replace(set_length=length, gathered=method, held=held, marks=parts))
        margin = margin_to_come(bench, solved, edge)
        at = (attached_at(margin),) if method == ATTACHMENT else rows_in(margin, say, _holding(edge))
        kind = StitchType.RUNNING if method == HAND else StitchType.LOCK
        sewn = tuple(Sewn(kind, edge.cloth_length, edge.copies, room.gathering_stitch) for _ in at)
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            tuple(faults),
            sewn=sewn,
            setup={ROWS: SetUp.STRAIGHT, HAND: SetUp.HAND, ATTACHMENT: SetUp.ATTACHMENT}[method],
            handled=edge.cloth_length * edge.copies,
            # The tails of both rows are wound together, at both ends of each run.
            thread_ends=0 if method == ATTACHMENT else 2 * runs_of(edge.cloth_length, parts) * edge.copies,
            drawn=Drawn(name, length, ratio, behind),
            facts=Gathered(ratio, method, length, behind, cloth_marks(edge.cloth_length, parts, behind), at),
        )

    def _method(self, asked: str, room: Workroom, edge: Edge, ratio: Fraction) -> str:
        if asked != BEST:
            return asked
        # An attachment pleats one ply well, and only so far in one pass.
        fits = limits.ATTACHMENT_LEAST <= ratio <= limits.ATTACHMENT_MOST
        if room.gather_with == ATTACHMENT and not (fits and sum(ply.copies for ply in edge.plies) == 1):
            return ROWS
        return room.gather_with

    def _limits(
        self, step: SolvedStep, solved: Solved, room: Workroom, edge: Edge, length: Fraction, method: str
    ) -> list[Fault]:
        say, written, ratio = Phrasing(solved, room), step.written, edge.cloth_length / length
        at = next(key for key in ("to", "length", "on") if key in written.args)
        if ratio < 1:
            return [
                fault_at(
                    written,
                    at,
                    "FB314",
                    f"`{edge.name}` has {say.length(edge.cloth_length)} of cloth for {say.length(length)},"
                    f" {say.length(length - edge.cloth_length)} too little to gather",
                    notes=(
                        f"{say.length(edge.cloth_length)} / {say.length(length)} = {say.ratio(ratio)}; a gather needs 1 or more",
                    ),
                    help="make the piece longer, or swap the two edges",
                )
            ]
        if edge.cloth_length - length <= solved.slack:
            headline = f"`{edge.name}` has {say.length(edge.cloth_length)} of cloth for {say.length(length)}, so nothing is gathered"
            help_ = "leave this step out, or make the piece longer"
            return [fault_at(written, "edge", "FB374", headline, help=help_, severity=Severity.WARNING)]
        # The attachment is set by a test strip, which may come out so much off.
        if method == ATTACHMENT and ratio > limits.ATTACHMENT_MOST * (1 + limits.EASE_SHARE):
            return [
                fault_at(
                    written,
                    "method",
                    "FB316",
                    f"a pleating attachment takes cloth {say.ratio(limits.ATTACHMENT_MOST)} to 1 in one pass,"
                    f" and `{edge.name}` wants {say.ratio(ratio)} to 1",
                    mend=mends.write(written, "method", "two rows by machine"),
                )
            ]
        return []

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts, before, room = done.step.written, facts_of(done, Gathered), done.before, say.room
        edge = before.edge(edge_of(written, "edge"))
        to = before.edge(edge_of(written, "to")) if "to" in written.args else None
        method, ratio, length, marks = facts.method, facts.ratio, facts.length, facts.marks
        ring, even, parts = before.ring(edge), facts.behind == EVEN, len(marks)
        knotted = word_of(written, "tails") == KNOTTED and method == ROWS
        strip = say.strip(TRY)
        layers, mark = sum(ply.copies for ply in edge.plies), mark_for(room.lever_takes, ratio)

        def each(name: str) -> Action:
            return Action(name, edge.copies)

        actions = [Action("gather-hold-layers")] if layers > 1 else []
        if even and not marked_in(edge, parts):
            actions.append(each("gather-fold-ring" if ring else "gather-fold-flat"))
        if not even:
            if edge.marks:
                actions.append(each(_old_marks(edge, say.solved)))
            actions.append(each("gather-mark-ring" if ring else "gather-mark-flat"))
        if method == ATTACHMENT:
            halves = abs(ratio - 2) < Fraction(1, 10)
            actions += [
                Action(
                    "gather-set-by-swatch" if mark is not None else "gather-set-half" if halves else "gather-set-begin"
                ),
                Action("gather-try"),
                each("gather-pleat"),
            ]
        else:
            actions += [
                Action("gather-thread-needle" if method == HAND else "gather-set-machine"),
                each("gather-first-row"),
                each("gather-second-row"),
                each("gather-knot-tails" if knotted else "gather-wind-tails"),
                each("gather-pull-hand" if method == HAND else "gather-pull-machine"),
            ]
        actions += [each("gather-measure-ring" if ring else "gather-measure-flat"), each("gather-spread")]
        if knotted:
            actions.append(each("gather-knot-pulled"))
        if method == ROWS:
            actions.append(Action("gather-set-back"))
        values: Values = {
            "edge": edge_said(edge),
            "has-target": flag(to),
            "target": edge_said(to or edge),
            "at-cut": flag(to is None or before.measured(to) == to.set_length),
            "seam": seam_said(before, edge.pieces, say),
            "layers": layers,
            **runs_said(edge.cloth_length, parts, say),
            "marked": flag(even and marked_in(edge, parts)),
            "cloth": Length(edge.cloth_length),
            "cloth-part": Length(before.measured(edge) / parts),
            "short": Length(length),
            "short-part": Length(length / parts),
            "ease": Length(length * limits.EASE_SHARE),
            "ratio": Ratio(ratio),
            "behind": Share(facts.behind),
            "marks": Things(tuple(Length(at) for at in marks[1:])),
            "first-row": Length(facts.rows[0], "about"),
            "second-row": Length(facts.rows[-1], "about"),
            "apart": Length(facts.rows[-1] - facts.rows[0], "about"),
            "hand-stitch": Length(room.gathering_stitch, "about"),
            "mark": Number(mark or Fraction(6), 1),
            "strip": Length(strip),
            "strip-short": Length(strip / ratio),
            "strip-off": Length(strip / ratio * limits.EASE_SHARE),
        }
        cautions = {HAND: (HAND_NEEDLE,), ROWS: (PINS_OUT,)}.get(method, ())
        return Instructions("gather-title", "gather-aim", tuple(actions), values, cautions)


def _old_marks(edge: Edge, solved: Solved) -> str:
    """The message that takes the marks out: chalk is rubbed out, the loops of thread that mark net are cut out."""
    nets = [is_net(solved, solved.pieces[piece].piece.cloth.text) for piece in edge.pieces]
    return "gather-old-loops" if all(nets) else "gather-old-both" if any(nets) else "gather-old-marks"


def _holding(edge: Edge) -> Fraction:
    """How far from the edge, in mm, a row lies that holds its layers; 0 where there is none."""
    return HOLDING_ROW if "." not in edge.name else Fraction(0)


TECHNIQUE = Gather()
