"""Sew one edge to another, the gathered one underneath.

What it does: pins the two edges at quarter marks, right sides together, and sews them with one seam.
Edges before and after: both raw or neatened and of one length before; both sewn after, with one margin between them.
Allowance: the seam, at both edges.
Example: `- attach: {edge: flounce.top, to: upper.bottom, seam: 1 cm}`
Source: the gathered edge below, the flat one on top; short by 15 cm in 4 m may be eased, over 20 cm the gathers are
    let out; pins every 2 cm on gathered net: common practice, no source.
"""

from __future__ import annotations

from furbelow.garment.bench import Bench
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, Stitch, Values
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
    allowances_at,
    edge_at,
    edge_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import held_out
from furbelow.techniques.shared.gathers import tails_hang, tails_off
from furbelow.techniques.shared.joined_edges import join_edges
from furbelow.techniques.shared.laid_edges import edges_said, folds_of, marks_on
from furbelow.techniques.shared.laying import held_in_seam, margins


class Attach:
    name = "attach"
    about = "Sew one edge to another of the same length, right sides together."
    pictures = (Picture.PIECES, Picture.MATCHING_MARKS, Picture.RING_OVER_RING, Picture.SEWN_SEAM)
    parameters = {
        "edge": Parameter("The edge to sew on, gathered or flat.", Kind.EDGE),
        "to": Parameter("The edge it is sewn to.", Kind.EDGE),
        "seam": Parameter("Seam allowance at both edges.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        edges = (*edges_in(edge_at(step, "edge")), *edges_in(edge_at(step, "to")))
        return allowances_at(edges, "seam")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, seam = done.step.written, done.step.mm("seam")
        names = edge_of(written, "edge"), edge_of(written, "to")
        edge, to = (done.before.edge(name) for name in names)
        return OnCloth(margins(ledger, seam, "seam", *names), held_in_seam(done, solved, room, "seam", seam, edge, to))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        return join_edges(bench, step, solved, room)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, before, room = done.step.written, done.before, say.room
        edge, to = before.edge(edge_of(written, "edge")), before.edge(edge_of(written, "to"))
        length, folds, tails = to.set_length, folds_of(edge), tails_hang(edge)

        def each(name: str) -> Action:
            return Action(name, to.copies)

        actions = [*marks_on(before, say, to, edge)]
        if before.ring(to):
            actions += [each("attach-turn"), each("attach-slip-tails" if tails else "attach-slip")]
        else:
            actions.append(each("attach-lay-tails" if tails else "attach-lay"))
        actions.append(
            each({"gathers": "attach-pin-gathers", "pleats": "attach-pin-pleats", "flat": "attach-pin-flat"}[folds])
        )
        if tails:
            actions.append(each(tails_off(edge)))
        actions += [
            each(
                {
                    "gathers": "attach-turn-work-gathers",
                    "pleats": "attach-turn-work-pleats",
                    "flat": "attach-turn-work-flat",
                }[folds]
            ),
            each("attach-sew-flat" if folds == "flat" else "attach-sew-gathers"),
        ]
        values: Values = {
            **edges_said(before, edge, to, say),
            "length": Length(length),
            "seam-width": Length(done.step.mm("seam")),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        return Instructions("attach-title", "attach-aim", tuple(actions), values, (held_out(room),))


TECHNIQUE = Attach()
