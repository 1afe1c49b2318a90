"""Ease a slightly longer edge in, so that it lies smooth on a shorter one.

What it does: draws the cloth of an edge together by one row of long stitches, so little that no fold stands.
Edges before and after: the edge keeps its state; it is as long afterwards as the edge that it is meant for, and lies flat.
Allowance: none. The row lies inside the seam that follows, clear of its line.
Example: `- ease in: {edge: skirt.top, to: waistband.bottom}`
Source: a row of the longest stitch just inside the seam line, drawn up until nothing puckers: common practice, no source.
    15 cm in 4 m may be eased in: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge
from furbelow.garment.limits import EASE_SHARE
from furbelow.garment.lying import Ledger, Lies, OnCloth
from furbelow.garment.matching import divisions
from furbelow.garment.message import Length, Values, edge_said, flag
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
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.gathers import CLEAR, FIRST_ROW, NEAREST, margin_to_come, runs_of, runs_said
from furbelow.techniques.shared.laying import drawn_in
from furbelow.techniques.shared.marks import marked_in, seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, length_wanted

NEVER = 2 * EASE_SHARE  # by more no cloth is eased without a fold; house rule, maker to confirm
OFF = Fraction(1, 200)  # of the length: what the seam itself takes up; house rule, maker to confirm


class Eased(NamedTuple):
    """An edge eased in: its cloth and the length that it now has, in how many parts it is marked, and how far the row lies
    from the cut edge, in mm."""

    cloth: Fraction
    length: Fraction
    parts: int
    row: Fraction


class EaseIn:
    name = "ease in"
    about = "Draw a slightly longer edge in, so that it lies smooth on a shorter one."
    pictures = (Picture.PIECES,)
    parameters = {
        "edge": Parameter("The edge that is a little too long.", Kind.EDGE),
        "to": Parameter("The edge it will be sewn to.", Kind.EDGE, ""),
        "length": Parameter(
            "The length to ease it to, where it is not that of another edge: of a fitted band leave the overlap out.",
            Kind.LENGTH,
            "",
        ),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        facts, name = facts_of(done, Eased), edge_of(done.step.written, "edge")
        row = ledger.at_edge(name, Lies.GATHERS, "the row that eases", facts.row, facts.row + 1, "edge")
        return OnCloth(tuple(row), held=drawn_in(done.before.edge(name), "edge", facts.length))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, say = step.written, edge_of(step.written, "edge"), Phrasing(solved, room)
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge = bench.edge(name)
        if edge.gathered:
            headline = f"`{name}` is drawn in already, to {say.length(edge.set_length)}, and folds are not eased"
            help_ = "leave this step out, and draw the edge in to the length that is wanted"
            return refused(bench, step, edge.pieces, fault_at(written, "edge", "FB333", headline, help=help_))
        length = length_wanted(bench, say, step, edge, ("to", "length"))
        if isinstance(length, Fault):
            return refused(bench, step, edge.pieces, length)
        if edge.cloth_length < length and not solved.apart(edge.cloth_length, length):
            # Once it is cut there is nothing to ease, and the seam shares out what is missing.
            length = edge.cloth_length
        fault = _not_to_be_eased(step, say, edge, length) or _nothing_to_ease(step, say, solved, edge, length)
        if fault and fault.severity is Severity.ERROR:
            return refused(bench, step, edge.pieces, fault)
        parts = max(divisions(length), edge.marks)
        margin = margin_to_come(bench, solved, edge)
        row = FIRST_ROW if margin is None else max(margin - CLEAR, NEAREST)
        return Performed(
            step,
            bench,
            bench.with_edges(edge._replace(cloth_length=length, set_length=length, marks=parts)),
            edge.pieces,
            (fault,) if fault else (),
            sewn=(Sewn(StitchType.LOCK, edge.cloth_length, edge.copies, room.gathering_stitch),),
            setup=SetUp.STRAIGHT,
            handled=edge.cloth_length * edge.copies,
            thread_ends=2 * runs_of(edge.cloth_length, parts) * edge.copies,
            facts=Eased(edge.cloth_length, length, parts, row),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts, before = done.step.written, facts_of(done, Eased), done.before
        edge = before.edge(edge_of(written, "edge"))
        to = before.edge(edge_of(written, "to")) if "to" in written.args else None
        ring = before.ring(edge)

        def each(name: str) -> Action:
            return Action(name, edge.copies)

        marked = marked_in(edge, facts.parts)
        actions = (
            *(() if marked else (each("ease-in-fold-ring" if ring else "ease-in-fold-flat"),)),
            Action("ease-in-set"),
            each("ease-in-row"),
            each("ease-in-pull"),
            each("ease-in-measure-ring" if ring else "ease-in-measure-flat"),
            each("ease-in-knot"),
            Action("ease-in-set-back"),
        )
        values: Values = {
            "edge": edge_said(edge),
            "has-target": flag(to),
            "target": edge_said(to or edge),
            "seam": seam_said(before, edge.pieces, say),
            **runs_said(facts.cloth, facts.parts, say),
            "cloth": Length(facts.cloth),
            "cloth-part": Length(before.measured(edge) / facts.parts),
            "short": Length(facts.length),
            "short-part": Length(facts.length / facts.parts),
            "ease": Length(facts.length * OFF),
            "row": Length(facts.row, "about"),
        }
        return Instructions("ease-in-title", "ease-in-aim", actions, values)


def _not_to_be_eased(step: SolvedStep, say: Phrasing, edge: Edge, length: Fraction) -> Fault | None:
    """FB314 where there is too little cloth; FB373 where there is more than lies smooth."""
    written, cloth = step.written, edge.cloth_length
    at = next(key for key in ("to", "length") if key in written.args)
    if cloth < length:
        return fault_at(
            written,
            at,
            "FB314",
            f"`{edge.name}` has {say.length(cloth)} of cloth for {say.length(length)}, {say.length(length - cloth)} too little",
            help="make the piece longer, or ease in the other edge",
        )
    over = cloth - length
    if over <= length * EASE_SHARE:
        return None
    row = f"gather: {{edge: {edge.name}, to: {edge_of(written, 'to')}}}" if at == "to" else None
    return fault_at(
        written,
        "edge",
        "FB373",
        f"`{edge.name}` has {say.length(over)} too much for {say.length(length)}, and {say.length(length * EASE_SHARE)}"
        " can be eased in",
        notes=(f"{say.length(length)} x {say.share(EASE_SHARE)} = {say.length(length * EASE_SHARE)}",),
        mend=mends.Mend(f"write `- {row}` instead" if row else "gather it", None),
        severity=Severity.ERROR if over > length * NEVER else Severity.WARNING,
    )


def _nothing_to_ease(step: SolvedStep, say: Phrasing, solved: Solved, edge: Edge, length: Fraction) -> Fault | None:
    """FB374 where the edge has its length already. In begun work it may have come out so."""
    if edge.cloth_length != length or solved.eases:
        return None
    headline = f"`{edge.name}` is {say.length(length)} long already, and nothing of it is to be eased in"
    return fault_at(step.written, "edge", "FB374", headline, help="leave this step out", severity=Severity.WARNING)


TECHNIQUE = EaseIn()
