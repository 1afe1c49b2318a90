"""Set godets into slits at a bottom edge: panels that come to a point and widen only the hem.

What it does: marks slits up from the edge, cuts them, and sews a godet into each, from the point down both sides.
Edges before and after: the bottom edge flat and raw before; longer by the hems of all godets after, and hemmed through them.
Allowance: the seam at both sides of each godet, and what the hem of the edge takes at its bottom. A slit takes nothing: its
    seam runs out at the point.
Example: `- godets: {piece: godet, in: skirt.bottom, hem: 15 mm}` after `- gores: {piece: godet, hem: 30 cm, sides: both slanting}`
    with the piece `godet: {from: lawn, count: 6, length: 5 mm, depth: 25 cm}`
Source: plane geometry: the edge grows by the hem of each godet. Slits are stitched round and the point is held by a patch before
    they are cut; each side is sewn from the point down: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction
from math import atan2, hypot

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import WORKABLE, Bench, Ply, Seam, State
from furbelow.garment.gore import Gore
from furbelow.garment.lying import Band, Ledger, Lies, Occupant, OnCloth, Window
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
    Tool,
    edge_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import PINS_OUT, SHORT_BITES
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import seam_window
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, not_long, seam_too_narrow, strips_not_joined

POINTED = Fraction(10)  # a wider top leaves a step at the point; house rule, maker to confirm
CLOSEST = Fraction(50)  # from slit to slit: less cloth between them is lost in two margins; house rule
BESIDE = Fraction(3)  # the row that holds a slit before it is cut
PATCH = Fraction(30)


class SetIn(NamedTuple):
    """How many godets; each slit so long from the cut edge, from middle to middle `apart`; a godet widens the hem by `wide` once
    its corners, which hang `corner` below the edge, are cut off; the edge afterwards, as it is cut; all in mm."""

    many: int
    slit: Fraction
    apart: Fraction
    wide: Fraction
    corner: Fraction
    length: Fraction


class Godets:
    name = "godets"
    about = "Set pointed panels into slits at a bottom edge, so that only the hem widens."
    pictures = (Picture.GODETS,)
    parameters = {
        "piece": Parameter("The godets, cut by `gores` with both sides slanting to a point.", Kind.PIECE),
        "in": Parameter("The bottom edge that they widen, before it is hemmed.", Kind.EDGE),
        "seam": Parameter("Seam allowance at both sides of each godet.", Kind.LENGTH, "1 cm"),
        "hem": Parameter("What the hem takes of that edge, and so of each godet.", Kind.LENGTH),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        godet = word_of(step, "piece")
        sides = tuple(Allowance(godet, side, ("seam",)) for side in ("start", "end"))
        return (*sides, Allowance(godet, "bottom", ("hem",)))

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        facts, name = facts_of(done, SetIn), edge_of(done.step.written, "in")
        host, godet = name.partition(".")[0], word_of(done.step.written, "piece")
        deep = ledger.bench.cloths[host].piece.cut_depth
        slits = Occupant(host, Lies.SLIT, "the slits of the godets", down=Band(deep - facts.slit, deep), arg="in")
        windows = (
            Window(
                "piece",
                "the top of a godet",
                solved.pieces[godet].length,
                most=POINTED,
                why="a wider one leaves a step at the point",
            ),
            Window("in", "a space between godets", facts.apart, least=CLOSEST, why="two margins lie between them"),
            seam_window(solved, "seam", done.step.mm("seam"), (godet,), facts.wide / 2),
        )
        return OnCloth((slits,), windows)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, say = step.written, edge_of(step.written, "in"), Phrasing(solved, room)
        godet = word_of(written, "piece")
        if fault := edge_not_ready(bench, written, "in", name) or strips_not_joined(bench, written, "piece", (godet,)):
            return refused(bench, step, (godet,), fault)
        edge = bench.edge(name)
        touches = (*edge.pieces, godet)
        if fault := _not_to_set_in(bench, step, say, name, godet):
            return refused(bench, step, touches, fault)
        cloth, seam, hem = bench.cloths[godet], step.mm("seam"), step.mm("hem")
        numbers = solved.pieces[godet]
        assert numbers.gore is not None  # else it is refused
        spread, corner = _cut_level(numbers.gore)
        own = numbers.gore.top + spread * numbers.depth
        many = cloth.copies
        length = edge.cloth_length + many * own
        after = bench.with_edges(edge._replace(cloth_length=length, set_length=length, marks=0))
        after = after.with_cloths(cloth._replace(copies=1))
        for each, took in (("top", Fraction(0)), ("start", seam), ("end", seam), ("bottom", hem)):
            there = bench.edge(f"{godet}.{each}")
            after = after.with_edges(there._replace(copies=1, state=State.ENCLOSED, used=there.used + took))
        neat = all(bench.edge(f"{godet}.{each}").state is not State.RAW for each in ("start", "end"))
        joined = Seam(
            f"{godet}.ends",
            (),
            (Ply(godet, 1), Ply(edge.pieces[0], 1)),
            numbers.depth,
            2 * many,
            seam,
            "301",
            State.NEATENED if neat or not _ravels(solved, touches) else State.RAW,
        )
        slit = numbers.depth + hem
        apart = (bench.measured(edge) - edge.stands_out) / many
        cut = after.measured(after.edge(name)) + many * spread * hem
        facts = SetIn(many, slit, apart, own, corner * slit / numbers.depth, cut)
        return Performed(
            step,
            bench,
            after.with_seams(joined).bearing(godet, edge.pieces[0]).joined(touches),
            touches,
            sewn=(
                Sewn(StitchType.LOCK, 2 * slit, many, Fraction(2)),  # round each slit
                Sewn(StitchType.LOCK, slit, 2 * many, room.seam_stitch),
            ),
            setup=SetUp.STRAIGHT,
            pinned=2 * slit * many,
            handled=2 * slit * many,
            facts=facts,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, edge = facts_of(done, SetIn), done.before.edge(edge_of(done.step.written, "in"))
        values: Values = {
            "patch-left": Length(Fraction(10), "about"),
            "unpicked": Length(Fraction(30), "about"),
            "edge": edge_said(edge),
            "piece": Pieces(edge.pieces),
            "godet": Pieces((word_of(done.step.written, "piece"),)),
            "ring": flag(done.before.ring(edge)),
            "seam": seam_said(done.before, edge.pieces, say),
            "many": facts.many,
            "every": Length(facts.apart),
            "first": Length((facts.apart + edge.stands_out) / 2),
            "hangs": Length(facts.corner),
            "slit": Length(facts.slit),
            "beside": Length(BESIDE, "about"),
            "patch": Length(PATCH, "about"),
            "wide": Length(facts.wide),
            "seam-width": Length(done.step.mm("seam")),
            "stitch": Stitch(say.room.seam_stitch),
            "short": Stitch(Fraction(2)),
            "length": Length(facts.length),
            "off": Length(facts.length / 100, "about"),
            "mark-off": Length(Fraction(3), "off"),
            "hold": One("pins", ("pins", "clips")),
        }
        actions = (
            Action("godets-mark"),
            Action("godets-hold", facts.many),
            Action("godets-cut", facts.many),
            Action("godets-pin", facts.many),
            Action("godets-sew", facts.many),
            Action("godets-other", facts.many),
            Action("godets-level", facts.many),
            Action("godets-measure"),
        )
        cautions = (PINS_OUT, SHORT_BITES, iron_hot(done, say))
        return Instructions(
            "godets-title",
            "godets-aim",
            actions,
            values,
            cautions,
            (Tool.PINS, *iron_tools(done, say)),
            ironed=("godets-other",),
            ruled=("godets-mark",),
        )


def _cut_level(gore: Gore) -> tuple[Fraction, Fraction]:
    """How much an arc round the point grows for each mm of its radius, and how far the corners hang below the slit, in mm.

    The sides slant, so they are longer than their slit; the hem is level where it lies as far from the point everywhere.
    """
    half_mm, deep_mm = float((gore.hem - gore.top) / 2), float(gore.depth)
    spread, corner_mm = 2 * atan2(half_mm, deep_mm), hypot(deep_mm, half_mm) - deep_mm
    return Fraction(round(spread, 6)).limit_denominator(10**6), Fraction(round(corner_mm, 1)).limit_denominator(10)


def _ravels(solved: Solved, pieces: tuple[str, ...]) -> bool:
    return any(solved.materials[solved.pieces[each].piece.cloth.text].material.ravels for each in pieces)


def _not_to_set_in(bench: Bench, step: SolvedStep, say: Phrasing, name: str, godet: str) -> Fault | None:
    written, edge, solved = step.written, bench.edge(name), say.solved
    if fault := not_long(written, "in", edge):
        return fault
    host = edge.pieces[0]
    if not name.endswith(".bottom") or host == godet:
        headline = f"`{name}` is not the bottom edge of another piece, and godets widen a hem"
        return fault_at(
            written, "in", "FB340", headline, help="write the bottom edge of the piece that they are set into"
        )
    if edge.gathered:
        headline = f"`{name}` is gathered already, and godets are set into flat cloth"
        return fault_at(written, "in", "FB333", headline, help="set the godets in before the edge is gathered")
    if edge.copies > 1:
        headline = f"there are {edge.copies} of `{host}`, and the godets are shared out along one edge"
        return fault_at(written, "in", "FB305", headline, help="join the copies first")
    gore = solved.pieces[godet].gore
    if gore is None or not gore.both:
        headline = f"`{godet}` is no panel whose both sides slant to a point"
        help_ = f"write `- gores: {{piece: {godet}, hem: 30 cm, sides: both slanting}}` before this step"
        return fault_at(written, "piece", "FB354", headline, help=help_)
    for side in ("top", "bottom", "start", "end"):
        own = bench.edge(f"{godet}.{side}")
        if own.state not in WORKABLE or own.used:
            headline = f"`{own.name}` is {own.state} already, and a godet is set in with its edges raw"
            return fault_at(
                written, "piece", "FB302", headline, help="set the godets in first; the hem runs through them"
            )
    takes_name = f"{host}.bottom_takes"
    takes = solved.length(takes_name) if takes_name in solved.values else Fraction(0)
    if takes != step.mm("hem"):
        asked = step.mm("hem")
        return fault_at(
            written,
            "hem",
            "FB312",
            f"each godet has {say.length(asked)} for the hem and later steps take {say.length(takes)} of `{name}`,"
            f" {say.length(abs(takes - asked))} {'more' if takes > asked else 'less'}",
            notes=("the hem runs through skirt and godets alike",),
            mend=mends.write(written, "hem", say.length(takes)),
        )
    slit, deep = solved.pieces[godet].depth, bench.depth(host) - takes
    if slit >= deep:
        return fault_at(
            written,
            "piece",
            "FB312",
            f"a slit of {say.length(slit)} does not lie on `{host}`, which is {say.length(deep)} deep",
            help="make the godets less deep",
        )
    return seam_too_narrow(solved, say, step, "seam", (godet,))


TECHNIQUE = Godets()
