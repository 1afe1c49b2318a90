"""Sew one edge to another of the same length.

What it does: pins the two edges at quarter marks, right sides together, and sews them with one seam.
Edges before and after: both raw or neatened and of one length before; both sewn after, with one margin between them.
Allowance: the seam, at both edges.
Example: `- attach: {edge: flounce.top, to: upper.bottom, seam: 1 cm}`
Source: gathers that hang on rows of thread lie on top, where each is seen and guided before the needle reaches it; those
    of an attachment and basted pleats are held already and lie underneath, where the feed carries the fuller cloth along;
    short by 15 cm in 4 m may be eased, over 20 cm the gathers are let out; pins every 2 cm on gathered net: common
    practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, Stitch, Values, edge_said
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
    facts_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import held_out
from furbelow.techniques.shared.gathers import HAND, ROWS, tails_hang, tails_off
from furbelow.techniques.shared.joined_edges import join_edges
from furbelow.techniques.shared.laid_edges import edges_said, folds_of, marks_on
from furbelow.techniques.shared.laying import held_in_seam, margins
from furbelow.techniques.shared.marks import parts_of
from furbelow.techniques.shared.pins import pins_apart


class Attached(NamedTuple):
    """In how many parts the two edges are matched, from pin to pin in mm, and which of them lies on top at the machine."""

    parts: int
    apart: Fraction
    gathers_up: bool


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
        done = join_edges(bench, step, solved, room)
        if done.refused:
            return done
        edge, to = (bench.edge(edge_of(step.written, name)) for name in ("edge", "to"))
        apart = pins_apart(solved, room, edge, to)
        # Ring by ring: nobody sets the pins of all of them at once. A wider spacing needs fewer for the same length.
        once = to.set_length * room.pin_spacing / apart
        facts = Attached(parts_of(edge, to), apart, edge.gathered in (ROWS, HAND))
        return done._replace(pinned=once * to.copies, pinned_at_once=once, facts=facts)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, before, room = done.step.written, done.before, say.room
        edge, to = before.edge(edge_of(written, "edge")), before.edge(edge_of(written, "to"))
        length, folds, tails = to.set_length, folds_of(edge), tails_hang(edge)
        ring, facts = before.ring(to), facts_of(done, Attached)
        if ring:
            steps = ["attach-turn", "attach-slip-tails" if tails else "attach-slip"]
        else:
            steps = ["attach-lay-tails" if tails else "attach-lay"]
        steps.append({"gathers": "attach-pin-gathers", "pleats": "attach-pin-pleats", "flat": "attach-pin-flat"}[folds])
        if tails:
            steps.append(tails_off(edge))
        steps.append(_turned(folds, facts.gathers_up, ring))
        steps.append({"gathers": "attach-sew-gathers", "pleats": "attach-sew-pleats", "flat": "attach-sew-flat"}[folds])
        run = (Action(message, to.copies, run=True) for message in steps)
        actions = (*marks_on(before, say, to, edge), *run)
        values: Values = {
            **edges_said(before, edge, to, say),
            "copies": 1,  # pinned one after the other
            "on-top": edge_said(edge if facts.gathers_up else to),
            "length": Length(length),
            "seam-width": Length(done.step.mm("seam")),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        return Instructions("attach-title", "attach-aim", actions, values, (held_out(room),))


def _turned(folds: str, gathers_up: bool, ring: bool) -> str:
    """How the work is turned for the machine; a ring whose inside is up is sewn from within."""
    if gathers_up:
        return "attach-turn-work-gathers-up-ring" if ring else "attach-turn-work-gathers-up"
    return {
        "gathers": "attach-turn-work-gathers",
        "pleats": "attach-turn-work-pleats",
        "flat": "attach-turn-work-flat",
    }[folds]


TECHNIQUE = Attach()
