"""Sew band and lining to the gathered layers so that the lining, turned in, hides every margin.

What it does: sews the band to the lining, on the side that will face the legs, lays both on the layers, sews through
    all, and turns the lining to the inside.
Edges before and after: a folded band, a lining and the layers, rings whose lengths are one or a little longer than the
    band, before; all of them enclosed, the margin trapped between layers and lining, after.
Allowance: the seam, at all three.
Example: `- turned lining: {lining: lining.top, band: band_edge, to: net_top, seam: 1 cm}`
Source: common practice, no source. How much longer gathers may be than the band: house rule, maker to confirm.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Edge, Seam, State
from furbelow.garment.levels import levels_of
from furbelow.garment.limits import EASE_SHARE
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, One, Pieces, Stitch, Values, edge_said, flag
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
    allowances_at,
    edge_at,
    edge_of,
    edges_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.gathers import knots_of, tails_hang, tails_off, tails_said
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import held_in_seam, margins
from furbelow.techniques.shared.marks import marked, parts_of, seam_said
from furbelow.techniques.shared.pins import pins_apart
from furbelow.techniques.shared.preconditions import copies_differ, edge_not_ready, forms_differ, seam_too_narrow
from furbelow.techniques.shared.stacks import ends_beside, taken

# Gathers can be pushed closer by hand on to a band that is shorter by so much of its length; flat cloth by EASE_SHARE.
GATHERS_EASE = Fraction(1, 10)


class TurnedIn(NamedTuple):
    """The band's length in mm, how much longer the lining and the layers are, and from pin to pin."""

    length: Fraction
    lining_over: Fraction
    layers_over: Fraction
    apart: Fraction


class TurnedLining:
    name = "turned lining"
    about = "Sew band and lining to the layers so that the lining, turned in, hides every margin."
    pictures = (Picture.PIECES, Picture.TURNED_LINING)
    parameters = {
        "lining": Parameter("The top edge of the lining, gathered or not.", Kind.EDGE),
        "band": Parameter(
            "The raw edges of a band with its channel, by the name that `channel band` gave them.", Kind.EDGE
        ),
        "to": Parameter("The top edge of the gathered layers.", Kind.EDGE),
        "seam": Parameter("Seam allowance at all of them.", Kind.LENGTH, "1 cm"),
        "right side": Parameter(
            "Where the right side of the lining faces when it is worn: `out`, so that it shows through the layers, or `in`,"
            " to the legs.",
            ("out", "in"),
            "out",
        ),
        "traps": Parameter("Seams of the layers whose margins the lining hides.", Kind.EDGES, ""),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        edges = (edge for name in ("lining", "band", "to") for edge in edges_in(edge_at(step, name)))
        return allowances_at(tuple(edges), "seam")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        seam, names = done.step.mm("seam"), _names(done.step.written)
        lining, band, to = (done.before.edge(name) for name in names)
        windows = held_in_seam(done, solved, room, "seam", seam, to, lining)
        return OnCloth(margins(ledger, seam, "seam", *names), windows)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written = step.written
        names = _names(written)
        for arg, name in zip(("lining", "band", "to"), names, strict=True):
            if fault := edge_not_ready(bench, written, arg, name):
                return refused(bench, step, (), fault)
        lining, band, to = (bench.edge(name) for name in names)
        touches = tuple(dict.fromkeys((*to.pieces, *lining.pieces, *band.pieces)))
        if fault := _refusal(bench, step, solved, room, lining, band, to):
            return refused(bench, step, touches, fault)
        seam, length = step.mm("seam"), band.set_length
        after = bench
        for edge in (lining, band, to):
            enclosed = edge._replace(state=State.ENCLOSED, used=edge.used + seam, held=True, set_length=length)
            after = taken(after.with_edges(enclosed), edge, seam)
        inside = tuple(ply._replace(right_side=word_of(written, "right side")) for ply in lining.plies)
        # Two rows, one over the other; each of the two hangs from the band.
        rows = (
            Seam(names[2], (names[2], names[1]), (*to.plies, *band.plies), length, 1, seam, "301", State.ENCLOSED),
            Seam(names[0], (names[0], names[1]), (*inside, *band.plies), length, 1, seam, "301", State.ENCLOSED),
        )
        after = after.joined(touches).with_seams(*(row._replace(trapped=True) for row in rows))
        for trapped in edges_of(written, "traps"):
            margin = bench.seam_at(trapped)
            if margin is None or not set(bench.unit(trapped.partition(".")[0])) & set(to.pieces):
                return refused(bench, step, touches, _not_there(step, trapped, margin is not None))
            after = after.with_seams(margin._replace(trapped=True))
        apart = pins_apart(solved, room, to, lining)
        once = length * room.pin_spacing / apart
        return Performed(
            step,
            bench,
            after,
            touches,
            sewn=(
                Sewn(StitchType.LOCK, length, 1, room.seam_stitch),  # the band on the lining
                Sewn(StitchType.LOCK, length, 1, room.seam_stitch),  # both on the layers
            ),
            setup=SetUp.STRAIGHT,
            pinned=2 * once,
            pinned_at_once=once,
            handled=length,
            thread_ends=sum(knots_of(edge) for edge in (lining, to) if tails_hang(edge)),
            facts=TurnedIn(length, lining.set_length - length, to.set_length - length, apart),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, before = facts_of(done, TurnedIn), done.before
        lining, band, to = (before.edge(name) for name in _names(done.step.written))
        parts = parts_of(to, lining)
        loose = [edge for edge in (lining, to) if tails_hang(edge)]
        unmarked = [edge for edge in (lining, to) if not marked(edge)]
        levels = levels_of(done.after).bottoms
        lower = levels[lining.pieces[0]] - max(levels[piece] for piece in before.unit(to.pieces[0]))
        actions = (
            Action("turned-lining-mark-band"),
            *(Action("turned-lining-mark", values={"marked": edge_said(edge)}) for edge in unmarked),
            Action("turned-lining-lay-band"),
            Action("turned-lining-ease-lining" if facts.lining_over > say.solved.slack else "turned-lining-pin-lining"),
            *(Action(tails_off(edge), values=tails_said(edge)) for edge in loose if edge is lining),
            Action("turned-lining-sew-band"),
            Action("turned-lining-slip"),
            Action("turned-lining-ease-layers" if facts.layers_over > say.solved.slack else "turned-lining-pin-layers"),
            *(Action(tails_off(edge), values=tails_said(edge)) for edge in loose if edge is to),
            *((Action("turned-lining-gathers-up"),) if to.gathered else ()),
            Action("turned-lining-sew"),
            Action("turned-lining-turn"),
            Action("turned-lining-press"),
        )
        values: Values = {
            "lining": Pieces(lining.pieces),
            "lining-edge": edge_said(lining),
            "band": Pieces(tuple(dict.fromkeys(band.pieces))),
            "to": edge_said(to),
            "layers": Pieces(tuple(dict.fromkeys(to.pieces))),
            "seam": seam_said(before, to.pieces, say),
            "hold": One(say.room.hold_with, ("pins", "clips")),
            "parts": parts,
            "part": Length(facts.length / parts),
            "length": Length(facts.length),
            "lining-over": Length(facts.lining_over, "about"),
            "layers-over": Length(facts.layers_over, "about"),
            "spacing": Length(facts.apart, "about"),
            "seam-width": Length(done.step.mm("seam")),
            "inside": Length(done.step.mm("seam") - 1),
            "stitch": Stitch(done.sewn[0].stitch),
            "out": flag(word_of(done.step.written, "right side") == "out"),
            **ends_beside(lower),
        }
        cautions = (PINS_OUT, iron_hot(done, say))
        tools = iron_tools(done, say)
        return Instructions(
            "turned-lining-title",
            "turned-lining-aim",
            actions,
            values,
            cautions,
            tools,
            ironed=("turned-lining-press",),
        )


def _names(step: Step) -> tuple[str, str, str]:
    return edge_of(step, "lining"), edge_of(step, "band"), edge_of(step, "to")


def _refusal(
    bench: Bench, step: SolvedStep, solved: Solved, room: Workroom, lining: Edge, band: Edge, to: Edge
) -> Fault | None:
    written, say = step.written, Phrasing(solved, room)
    if not all(bench.cloths[piece].folded for piece in band.pieces):
        return fault_at(
            written,
            "band",
            "FB321",
            f"`{band.name}` is no band with a channel yet",
            help="fold it first with a `channel band` step",
        )
    for arg, edge in (("lining", lining), ("to", to)):
        if fault := forms_differ(bench, written, arg, band, edge) or copies_differ(written, arg, band, edge):
            return fault
        most = band.set_length * (1 + (GATHERS_EASE if edge.gathered else EASE_SHARE)) + solved.slack
        if not band.set_length - solved.slack <= edge.set_length <= most:
            long, wanted, too, _ = say.missed(edge.set_length, band.set_length)
            too_long = edge.set_length > band.set_length
            by_hand = f" and no more than {say.length(most)} can be eased on to it" if too_long else ""
            return fault_at(
                written,
                arg,
                "FB401",
                f"`{edge.name}` is {long} and the band {wanted}, {too}{by_hand}",
                help=f"gather `{edge.name}` to the band"
                if too_long
                else f"make `{edge.name}` longer, or the band shorter",
            )
    return seam_too_narrow(solved, say, step, "seam", (*to.pieces, *lining.pieces, *band.pieces))


def _not_there(step: SolvedStep, name: str, sewn: bool) -> Fault:
    said = f"the seam at `{name}` is in none of these layers" if sewn else f"there is no seam at `{name}` yet"
    return fault_at(step.written, "traps", "FB318", said, help="take it out of `traps`, or sew it before")


TECHNIQUE = TurnedLining()
