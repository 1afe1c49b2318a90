"""Bind a slit down from the top edge, or the opening of a seam, with one strip, so that the waist can open.

What it does: cuts the slit where none was left in a seam, sews a strip along both its sides, folds it and lays it to an overlap.
Edges before and after: a flat-lying ring before; its top edge is open and longer by the overlap after.
Allowance: the seam along the strip, both long edges; the strip is folded, so the overlap is cut twice. The slit's own
    seam narrows the top edge, tapering to nothing at the foot; in a seam the strip is sewn on the line of that seam.
Example: `- placket: {edge: skirt.top, strip: placket, slit: 20 cm, seam: 6 mm}` or `- placket: {edge: skirt.top, strip: placket,
    in: skirt.ends}`
Source: continuous placket, a strip of twice the slit: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge, Opening, Ply, Seam, State
from furbelow.garment.lying import Ledger, Lies, Occupant, OnCloth
from furbelow.garment.message import Length, Number, One, Pieces, Stitch, Values, edge_said
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
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import SHEARS, held_out
from furbelow.techniques.shared.gathers import ATTACHMENT, CARTRIDGE, HAND, ROWS
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import seam_window
from furbelow.techniques.shared.preconditions import edge_not_ready
from furbelow.techniques.shared.seam_openings import hung_below, round_foot, to_come, to_leave_open

FOOT = Fraction(2)  # margin that is left at the foot of the slit; common practice, no source
STAY = Fraction(5)  # from the slit to the row that holds it, at the top edge; common practice, no source
SHORT = Fraction(3, 2)  # stitch of that row in mm
CLEAR = Fraction(20)  # from the slit to the next seam
EDGE_STITCH, STAY_OFF = Fraction(2), Fraction(1)

PAST = Fraction(20)  # of a row at the foot that is sewn again
WIDE_OFF, ACROSS_OFF = Fraction(2), Fraction(5)


class Opened(NamedTuple):
    """A slit bound: its length, how far its sides overlap, and how long the open top edge is now, in mm; whether it was left
    open in a seam."""

    slit: Fraction
    overlap: Fraction
    across: Fraction
    in_seam: bool
    to_seam: Fraction = Fraction(0)  # how far down the slit crosses a seam; 0 where it crosses none


class Placket:
    name = "placket"
    about = "Open the top edge with a bound slit, so that the waist need not pass the hips."
    pictures = (Picture.PIECES, Picture.SLIT)
    parameters = {
        "edge": Parameter("The top edge that is opened, before it is gathered or pleated.", Kind.EDGE),
        "strip": Parameter(
            "The piece that binds the slit: twice as long as the slit, as deep as the overlap.", Kind.PIECE
        ),
        "slit": Parameter("How far the slit goes down from the cut edge.", Kind.LENGTH, "20 cm"),
        "in": Parameter("Instead: the seam that was left open at the top, such as skirt.ends.", Kind.EDGE, ""),
        "seam": Parameter("Seam allowance along the strip.", Kind.LENGTH, "6 mm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        strip = word_of(step, "strip")
        return Allowance(strip, "top", ("seam",)), Allowance(strip, "bottom", ("seam",), doubles=True)

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, seam, slit = done.step.written, done.step.mm("seam"), done.step.mm("slit")
        name, strip = edge_of(written, "edge"), word_of(written, "strip")
        if "in" in written.args:
            margin = done.before.seams[edge_of(written, "in")].width
            window = seam_window(solved, "seam", seam, (strip,))._replace(sewable_most=margin)
            return OnCloth(windows=(window,))
        cut: list[Occupant] = []
        for top in done.before.opened(name):
            deep = min(slit, done.before.depth(top.partition(".")[0]))
            cut += ledger.at_edge(top, Lies.SLIT, "the slit", Fraction(0), deep, "slit")
            # Through the seam it runs on into the piece that hangs from this one.
            for below in hung_below(done.before, top.partition(".")[0]) if slit > deep else ():
                cut += ledger.at_edge(f"{below}.top", Lies.SLIT, "the slit", Fraction(0), slit - deep, "slit")
        return OnCloth(tuple(cut), (seam_window(solved, "seam", seam, (strip,)),))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, strip = step.written, edge_of(step.written, "edge"), word_of(step.written, "strip")
        for arg, needed in (("edge", name), ("strip", f"{strip}.top"), ("strip", f"{strip}.bottom")):
            if fault := edge_not_ready(bench, written, arg, needed):
                return refused(bench, step, (strip,), fault)
        edge, say = bench.edge(name), Phrasing(solved, room)
        touches = (*edge.pieces, strip)
        seam, overlap, opened = step.mm("seam"), solved.pieces[strip].depth, _left_open(bench, step, solved, edge)
        if isinstance(opened, Fault):
            return refused(bench, step, touches, opened)
        slit = opened.length if opened else step.mm("slit")
        fault = (None if opened else _not_to_open(bench, step, say, edge)) or _strip_does_not_fit(
            bench, step, say, solved, strip, slit
        )
        if fault:
            return refused(bench, step, touches, fault)
        # In a seam the strip is sewn on the line of the seam: nothing more is taken of the edge.
        across = edge.cloth_length + overlap - (0 if opened else 2 * seam)
        long_edges = (
            bench.edge(f"{strip}.{side}")._replace(state=State.ENCLOSED, used=bench.edge(f"{strip}.{side}").used + seam)
            for side in ("top", "bottom")
        )
        # The ends of the strip lie at the top edge and go into the waist seam with it.
        ends = (bench.edge(f"{strip}.{side}")._replace(state=State.SEWN) for side in ("start", "end"))
        after = bench.with_edges(
            edge._replace(cloth_length=across, set_length=across, slit=True, stands_out=Fraction(0)), *long_edges, *ends
        ).with_cloths(bench.cloths[strip]._replace(folded=True))
        after = after.with_seams(
            Seam(f"{strip}.top", (), (*edge.plies, Ply(strip)), 2 * slit, 1, seam, "301", State.ENCLOSED, turned=strip)
        )
        bound = opened or Opening(name, edge.pieces[0], slit, overlap, round_foot(bench, edge, slit))
        after = after.with_opening(bound._replace(overlap=overlap, seam="")).bearing(strip, edge.pieces[0])
        after = after.joined(touches)
        crossed = () if opened else _crossed(bench, edge, slit)
        stay = () if opened else (Sewn(StitchType.LOCK, 2 * slit, 1, SHORT),)  # holds the slit
        return Performed(
            step,
            bench,
            after,
            touches,
            tuple(
                _cuts_gathers(bench, step, say, edge, bench.edge(each))
                for each in crossed
                if _lets_go(bench.edge(each))
            ),
            sewn=(
                *stay,
                Sewn(StitchType.LOCK, 2 * slit, 1, room.seam_stitch),  # the strip on
                Sewn(StitchType.LOCK, 2 * slit, 1, room.seam_stitch),  # and down
                Sewn(StitchType.LOCK, overlap * 3 / 2, 1, room.seam_stitch),  # across its foot
            ),
            setup=SetUp.STRAIGHT,
            pinned=4 * slit,
            handled=4 * slit,
            facts=Opened(
                slit, overlap, across, opened is not None, bench.depth(edge.pieces[0]) if crossed else Fraction(0)
            ),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts, seam = done.step.written, facts_of(done, Opened), done.step.mm("seam")
        strip = word_of(written, "strip")
        open_it = ("placket-clip", "placket-spread-seam", "placket-sew-seam")
        fasten = ("placket-fasten",) if facts.to_seam else ()
        cut_it = ("placket-mark", "placket-stay", *fasten, "placket-cut", "placket-spread", "placket-sew")
        actions = (
            *map(Action, open_it if facts.in_seam else cut_it),
            Action("placket-press"),
            Action("placket-fold"),
            Action("placket-stitch"),
            Action("placket-turn-in"),
            Action("placket-foot"),
        )
        values: Values = {
            "edge": edge_said(done.before.edge(edge_of(written, "edge"))),
            "strip": Pieces((strip,)),
            "slit": Length(facts.slit),
            "to-seam": Length(facts.to_seam, "about"),
            "both-sides": Length(2 * facts.slit),
            "seam-width": Length(seam),
            "short": Number(SHORT, 1),
            "stay": Length(stay_of(seam)),
            "stay-off": Length(STAY_OFF, "about"),
            "in-at-foot": Length(seam - FOOT, "about"),
            "clear": Length(CLEAR, "about"),
            "edge-stitch": Length(EDGE_STITCH, "about"),
            "stitch": Stitch(say.room.seam_stitch),
            "foot": Length(FOOT, "about"),
            "past": Length(PAST, "about"),
            "overlap": Length(facts.overlap),
            "wide-off": Length(WIDE_OFF, "about"),
            "slant": Length(facts.overlap * 3 / 2, "about"),
            "across": Length(facts.across),
            "across-off": Length(ACROSS_OFF, "about"),
            "hold": One(say.room.hold_with, ("pins", "clips")),
        }
        cautions, tools = (SHEARS, held_out(say.room), iron_hot(done, say)), iron_tools(done, say, strip)
        title = "placket-title-seam" if facts.in_seam else "placket-title"
        return Instructions(
            title, "placket-aim", actions, values, cautions, tools, (strip,), ironed=("placket-fold", "placket-press")
        )


def stay_of(seam: Fraction) -> Fraction:
    """How far beside the slit the row that holds it begins: inside the seam, so that it does not show."""
    return min(STAY, seam - 1)


def _crossed(bench: Bench, edge: Edge, slit: Fraction) -> tuple[str, ...]:
    """The upper edges that a slit cuts through: those that hang from a piece which is not as deep as the slit."""
    return tuple(
        f"{below}.top" for piece in edge.pieces if slit > bench.depth(piece) for below in hung_below(bench, piece)
    )


def _lets_go(edge: Edge) -> bool:
    """Whether an edge is drawn in by threads. Pleats lie on the cloth, and are told by what may meet what."""
    return edge.gathered in (ROWS, HAND, ATTACHMENT, CARTRIDGE)


def _cuts_gathers(bench: Bench, step: SolvedStep, say: Phrasing, edge: Edge, below: Edge) -> Fault:
    """What is drawn in at a seam lets go where the slit cuts through it."""
    piece, under, slit = edge.pieces[0], below.pieces[0], say.length(step.mm("slit"))
    finished = say.length(step.mm("slit") - to_come(bench, say, f"{piece}.top"))
    return fault_at(
        step.written,
        "slit",
        "FB420",
        f"the slit of {slit} would cut through the seam at `{below.name}`, drawn in {say.ratio(below.ratio)} to 1"
        f" ({below.gathered})",
        notes=("what is drawn in there lets go at the cut, and its threads need new ends",),
        help=f"sew the two together flat, close them by `join ends: {{of: [{piece}, {under}], open: {finished}}}` and write"
        f" `in: {piece}.ends` here instead of `slit`",
        severity=Severity.WARNING,
    )


def _left_open(bench: Bench, step: SolvedStep, solved: Solved, edge: Edge) -> Opening | Fault | None:
    """The opening that was left in the seam which the step names; None where it names none. Fails: FB313, FB318, FB333."""
    written = step.written
    if "in" not in written.args:
        return None
    name = edge_of(written, "in")
    if written.args["slit"].given:
        headline = "`slit` and `in` are given, and an opening in a seam is as long as it was left"
        return fault_at(
            written, "slit", "FB313", headline, help="leave `slit` out, and write its length as `open` of the seam"
        )
    opening = bench.openings.get(edge.name)
    if opening is None or opening.seam != name or opening.zipped or opening.band:
        return fault_at(
            written,
            "in",
            "FB318",
            f"no seam `{name}` is open at the top of `{edge.name}`",
            mend=to_leave_open(step, solved, name, "open: 20 cm"),
        )
    if edge.gathered:
        headline = f"`{edge.name}` is gathered already, and its opening is bound in flat cloth"
        return fault_at(written, "edge", "FB333", headline, help="move the placket before the gathers")
    return opening


def _not_to_open(bench: Bench, step: SolvedStep, say: Phrasing, edge: Edge) -> Fault | None:
    written, slit = step.written, step.mm("slit")
    if "." in edge.name and not edge.name.endswith(".top"):
        return fault_at(
            written,
            "edge",
            "FB340",
            f"a placket opens a top edge, and `{edge.name}` is none",
            mend=mends.write(written, "edge", f"{edge.pieces[0]}.top"),
        )
    if not bench.ring(edge):
        state = "opened by a placket already" if edge.slit else "still flat and open at its ends"
        return fault_at(
            written,
            "edge",
            "FB304",
            f"`{edge.name}` is {state}",
            help="close its ends before this step" if not edge.slit else "leave this step out",
        )
    if edge.copies > 1:
        return fault_at(
            written,
            "edge",
            "FB305",
            f"there are {edge.copies} of `{edge.name}` and 1 placket",
            help="stack the layers first and open the stack",
        )
    # Between pleats that lie in a stack a slit can be cut: what that costs, the table of what may meet what says.
    if edge.gathered and ("pleats" not in edge.gathered or "." in edge.name):
        return fault_at(
            written,
            "edge",
            "FB333",
            f"`{edge.name}` is gathered {say.ratio(edge.ratio)} to 1, and a slit is cut in flat cloth, 1 to 1"
            if "." in edge.name
            else f"a layer of `{edge.name}` is gathered already, and a slit is cut in flat cloth",
            help="move the placket before the gathers"
            if "." in edge.name
            else "open each layer with a placket of its own before it is gathered, and stack them then",
        )
    piece = min(edge.pieces, key=lambda each: _reach(bench, each))
    if slit >= _reach(bench, piece):
        return fault_at(
            written,
            "slit",
            "FB312",
            f"a slit of {say.length(slit)} is longer than `{piece}` and what hangs from it, {say.length(_reach(bench, piece))}",
            help="make the slit shorter: it must end inside the cloth",
        )
    return None


def _reach(bench: Bench, piece: str) -> Fraction:
    """How deep a slit may be cut from the top of a piece: its own depth, and that of what hangs from it."""
    return bench.depth(piece) + max((bench.depth(below) for below in hung_below(bench, piece)), default=Fraction(0))


def _strip_does_not_fit(
    bench: Bench, step: SolvedStep, say: Phrasing, solved: Solved, strip: str, slit: Fraction
) -> Fault | None:
    long, wanted = bench.edge(f"{strip}.top").set_length, 2 * slit
    if bench.cloths[strip].ring:
        return fault_at(
            step.written,
            "strip",
            "FB304",
            f"`{strip}` is closed to a ring, and a placket strip is flat",
            help="leave its ends open",
        )
    if solved.apart(long, wanted):
        is_, both, too, _ = say.missed(long, wanted)
        return fault_at(
            step.written,
            "strip",
            "FB401",
            f"`{strip}` is {is_} and both sides of the slit are {both}, {too}",
            notes=(f"2 x {say.length(slit)} = {both}",),
            help=f"make the length of `{strip}` {both}",
        )
    if bench.cloths[strip].copies > 1:
        return fault_at(
            step.written,
            "strip",
            "FB305",
            f"there are {bench.cloths[strip].copies} of `{strip}` and 1 slit",
            help=f"cut `{strip}` once",
        )
    return None


TECHNIQUE = Placket()
