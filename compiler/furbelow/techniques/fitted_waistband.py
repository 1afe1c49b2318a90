"""Sew a flat band to an open top edge and give it a fastening.

What it does: sews the band to the edge, closes its ends, folds it over, stitches it down and adds the fastening.
Edges before and after: edge open, gathered, pleated or flat to the band's length, before; all enclosed after.
Allowance: the seam, at all four edges of the band and at the skirt; the band is folded, so its depth is cut twice.
Example: `- fitted waistband: {band: waistband, to: skirt.top, seam: 1 cm, overlap: 3 cm, fasten: button}`
Source: common practice, no source. Fasteners that come off choke small children: CEN/TR 16792:2014.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import floor

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge, Opening, Seam, State
from furbelow.garment.fasteners import Fastener
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.matching import divisions
from furbelow.garment.message import Length, One, Part, Pieces, Stitch, Values, edge_said, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import FastenerKind, Step
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
    allowances_at,
    edge_at,
    edge_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.tolerance import LENGTH_SHARE, folded_off
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import HAND_NEEDLE, PINS_OUT, RIPPER, SMALL_PARTS
from furbelow.techniques.shared.faces import Face, outside_face
from furbelow.techniques.shared.fire_label import label_laid, label_tools, label_written
from furbelow.techniques.shared.gathers import knots_of, tails_hang, tails_off, tails_said
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.joined_edges import drawn_to
from furbelow.techniques.shared.laying import end_margins, held_in_seam, margins
from furbelow.techniques.shared.marks import EITHER, SEAM_PLACES, marked, parts_apart, place_of
from furbelow.techniques.shared.preconditions import edge_not_ready
from furbelow.techniques.shared.stacks import taken

BUTTON, HOOK, SNAPS, TIES = "button", "hook and bar", "snaps", "ties"
NARROWEST = Fraction(15)  # overlap that still carries a fastening; house rule, maker to confirm
EDGE_STITCH = Fraction(2)
BUTTONHOLE = Fraction(25)
USUAL_BUTTON, LEAST_BUTTON = Fraction(20), Fraction(6)  # across; house rule, maker to confirm
BESIDE = Fraction(3)  # of band or overlap beyond the rim of a button; house rule, maker to confirm
LEAST_WRAP = Fraction(100)  # of a wrap skirt; house rule, maker to confirm
LEAST_BAND, USUAL_BAND = Fraction(10), Fraction(20)  # deep, to carry a button; house rule, maker to confirm
SNAP_IN, HOOK_IN = Fraction(10), Fraction(3)  # from the end of the band
CORNER = Fraction(3)  # of a margin that is left at a corner, so that it turns out sharp
LEAST_SPREAD = Fraction(10)  # by which a margin is shorter than its seam line before it has to be snipped; house rule
SNIPS = Fraction(30)  # from snip to snip; house rule, maker to confirm
CLEAR_OF_SEAM = Fraction(3)  # from the end of a snip to the seam line; house rule, maker to confirm
PAST = Fraction(20)  # where a row is sewn again
LEAST_OFF = Fraction(5)  # less can't be told along a waist; house rule, maker to confirm

_ONE_OUT = ("fitted-waistband-end-on-top", "fitted-waistband-end-beneath")
_FASTENED = {
    BUTTON: ("fitted-waistband-buttonhole", "fitted-waistband-cut", "fitted-waistband-button"),
    HOOK: ("fitted-waistband-hook",),
    SNAPS: ("fitted-waistband-snaps",),
    TIES: ("fitted-waistband-ties",),
}
_TOOLS = {
    BUTTON: (Tool.BUTTONHOLE, Tool.HAND_NEEDLE),
    HOOK: (Tool.HAND_NEEDLE,),
    SNAPS: (Tool.HAND_NEEDLE,),
    TIES: (),
}
_CAUTIONS = {
    BUTTON: (HAND_NEEDLE, RIPPER, SMALL_PARTS),
    HOOK: (HAND_NEEDLE, SMALL_PARTS),
    SNAPS: (HAND_NEEDLE, SMALL_PARTS),
    TIES: (),
}


class FittedBand(NamedTuple):
    """A flat band on the garment: its length on the edge, its girth when closed, its depth as folded, in mm; underlap: how
    far one end stands out beyond the edge, beneath the other."""

    length: Fraction
    waist: Fraction
    depth: Fraction
    underlap: Fraction


class FittedWaistband:
    name = "fitted waistband"
    about = "Sew a flat band with a fastening to an open top edge."
    pictures = (Picture.PIECES, Picture.FITTED_BAND)
    parameters = {
        "band": Parameter("The piece that becomes the band: as long as the waist and the overlap.", Kind.PIECE),
        "to": Parameter(
            "The open top edge it is sewn to, gathered, pleated or darted to `band.length` less the overlap.", Kind.EDGE
        ),
        "seam": Parameter("Seam allowance at the skirt and all round the band.", Kind.LENGTH, "1 cm"),
        "overlap": Parameter("How far the closed band overlaps; that of the placket.", Kind.LENGTH, "3 cm"),
        "fasten": Parameter("What closes it.", (BUTTON, HOOK, SNAPS, TIES), BUTTON),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        band = word_of(step, "band")
        return (
            Allowance(band, "top", ("seam",)),
            Allowance(band, "bottom", ("seam",), doubles=True),
            Allowance(band, "start", ("seam",)),
            Allowance(band, "end", ("seam",)),
            *allowances_at(edges_in(edge_at(step, "to")), "seam"),
        )

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, seam = done.step.written, done.step.mm("seam")
        band, to = word_of(written, "band"), edge_of(written, "to")
        deep = solved.pieces[band].depth
        windows = [
            *held_in_seam(done, solved, room, "seam", seam, done.before.edge(to), done.before.edge(f"{band}.bottom"))
        ]
        if word_of(written, "fasten") == BUTTON:
            windows.append(
                Window(
                    "band",
                    "a band for a buttonhole",
                    deep,
                    least=USUAL_BAND,
                    sewable_least=LEAST_BAND,
                    why="the button lies on it",
                )
            )
        overlap, waist = done.step.mm("overlap"), solved.known("waist_girth")
        if word_of(written, "fasten") == TIES and overlap and waist and not done.before.edge(to).slit:
            beyond = max(solved.pieces[band].length - waist, Fraction(0))
            windows += [
                Window("overlap", "a wrap", overlap, most=beyond, why="what the band has beyond the waist"),
                Window("band", "a wrap", overlap, least=LEAST_WRAP, why="a smaller one falls open at a step"),
            ]
        ends = end_margins(ledger, (band,), seam, "seam")
        return OnCloth((*margins(ledger, seam, "seam", to, f"{band}.top", f"{band}.bottom"), *ends), tuple(windows))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        band, to = word_of(written, "band"), edge_of(written, "to")
        if fault := edge_not_ready(bench, written, "to", to):
            return refused(bench, step, (band,), fault)
        edge, seam = bench.edge(to), step.mm("seam")
        touches = (*edge.pieces, band)
        if fault := _not_open(bench, step, solved, edge, band):
            return refused(bench, step, touches, fault)
        for side in ("top", "bottom", "start", "end"):
            if fault := edge_not_ready(bench, written, "band", f"{band}.{side}"):
                return refused(bench, step, touches, fault)
        if fault := _does_not_match(bench, step, say, solved, edge, band):
            return refused(bench, step, touches, fault)
        depth, overlap, out = solved.pieces[band].depth, step.mm("overlap"), _underlap(bench, step, edge)
        whole = solved.pieces[band].length - out
        own = {side: bench.edge(f"{band}.{side}") for side in ("top", "bottom", "start", "end")}
        after = bench.with_edges(
            *(each._replace(state=State.ENCLOSED, used=each.used + seam) for each in own.values()),
            edge._replace(state=State.ENCLOSED, used=edge.used + seam, held=True, set_length=whole),
        ).with_cloths(bench.cloths[band]._replace(folded=True))
        after = after.with_edges(after.edge(f"{band}.bottom")._replace(set_length=whole, cloth_length=whole))
        after = taken(after, edge, seam).joined(touches)
        joins = [each for each in bench.seams.values() if {ply.piece for ply in each.plies} == {band}]
        after = after.with_seams(
            Seam(
                to,
                (to, f"{band}.bottom"),
                (*edge.plies, *own["bottom"].plies),
                whole,
                1,
                seam,
                "301",
                State.ENCLOSED,
                turned=band,
            ),
            *(each._replace(state=State.ENCLOSED) for each in joins),
        )
        opened = bench.openings.get(to)
        waist = whole + out - overlap
        if opened:
            opening = after.taken_above(to, seam).openings[to]
        else:
            # Flat cloth is open from top to hem: it is wrapped round, and nothing has to pass through.
            long = max(after.depth(piece) for piece in edge.pieces)
            opening = Opening(to, edge.pieces[0], long, overlap, waist + 2 * long)
        after = after.with_opening(opening._replace(band=band, waist=waist, closed_by=word_of(written, "fasten")))
        buttonholes = (
            (Sewn(StitchType.ZIGZAG, 2 * BUTTONHOLE, 1, Fraction(1, 2)),)
            if word_of(written, "fasten") == BUTTON
            else ()
        )
        return Performed(
            step,
            bench,
            after,
            touches,
            sewn=(
                Sewn(StitchType.LOCK, whole, 1, room.seam_stitch),  # the band on
                Sewn(StitchType.LOCK, depth + seam, 2, room.seam_stitch),  # its ends
                *((Sewn(StitchType.LOCK, out, 1, room.seam_stitch),) if out else ()),  # and the underlap between
                Sewn(StitchType.LOCK, whole, 1, room.seam_stitch),  # and down
                *buttonholes,
            ),
            used=tuple(_fastener(step, depth)),
            setup=SetUp.STRAIGHT,
            pinned=2 * whole,
            handled=whole,
            thread_ends=knots_of(edge) if tails_hang(edge) else 0,
            facts=FittedBand(whole, waist, depth, out),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts, step = done.step.written, facts_of(done, FittedBand), done.step
        band, fasten = word_of(written, "band"), word_of(written, "fasten")
        edge, overlap, parts = done.before.edge(edge_of(written, "to")), step.mm("overlap"), divisions(facts.length)
        # A margin above the seam line of a piece that flares is narrower than that line.
        shorter = edge.end_to_end - done.before.measured(edge)
        folds = "flat" if not edge.gathered else "pleats" if "pleats" in edge.gathered else "gathers"
        if marked(edge):
            marks: tuple[Action, ...] = (Action("fitted-waistband-mark-band-alone"),)
        else:
            first = "fitted-waistband-mark-pleats" if folds == "pleats" else "fitted-waistband-mark"
            at = parts_apart(done.before, edge, parts)
            marks = (Action(first, values=at), Action("fitted-waistband-mark-band"))
        actions = (
            *label_written(done, say),
            Action("fitted-waistband-fold"),
            *((Action("fitted-waistband-hold"),) if facts.underlap else ()),
            *marks,
            *((Action("fitted-waistband-snip"),) if shorter >= LEAST_SPREAD else ()),
            Action("fitted-waistband-lay"),
            *((Action(tails_off(edge), values=tails_said(edge)),) if tails_hang(edge) else ()),
            Action("fitted-waistband-sew"),
            Action("fitted-waistband-press"),
            Action("fitted-waistband-half"),
            *(Action(name) for name in (_ONE_OUT if facts.underlap else ("fitted-waistband-ends",))),
            Action("fitted-waistband-turn"),
            *label_laid(done, say, "fitted-waistband-label"),
            Action("fitted-waistband-inside"),
            *(Action(name) for name in _FASTENED[fasten]),
        )
        values: Values = {
            "band": Pieces((band,)),
            "to": edge_said(edge),
            "face": One("right" if outside_face(edge, say) is Face.RIGHT else "other", ("right", "other")),
            "folds": One(folds, ("gathers", "pleats", "flat")),
            "parts": parts,
            "part": Length(facts.length / parts),
            "hold": One(say.room.hold_with, ("pins", "clips")),
            "seam-width": Length(step.mm("seam")),
            "overlap": Length(overlap),
            "underlap": flag(facts.underlap),
            "stiffened": flag(_half_stiffened(say, band)),
            "place": One(_place(done, say, edge), SEAM_PLACES),
            "beneath": Length(facts.underlap + step.mm("seam")),
            "half": Length(overlap / 2),
            "corner": Length(CORNER, "about"),
            "past": Length(PAST, "about"),
            "hook-in": Length(HOOK_IN, "about"),
            "bar-in": Length(overlap - HOOK_IN),
            "length": Length(facts.length),
            "skirt": Pieces(edge.pieces),
            "shorter": Length(shorter),
            "snips": Length(SNIPS, "about"),
            "snip": Length(max(step.mm("seam") - CLEAR_OF_SEAM, step.mm("seam") / 2), "about"),
            "clear": Length(min(CLEAR_OF_SEAM, step.mm("seam") / 2), "about"),
            "edge-off": Length(max(facts.length * LENGTH_SHARE, LEAST_OFF), "about"),
            "stitch": Stitch(done.sewn[0].stitch),
            "depth": Length(facts.depth),
            "fold-off": Length(folded_off(), "off"),
            "edge-stitch": Length(EDGE_STITCH, "about"),
            "snap-in": Length(SNAP_IN, "about"),
            "waist": Length(facts.waist),
            "waist-off": Length(max(facts.waist * LENGTH_SHARE, LEAST_OFF)),
        }
        cautions = (PINS_OUT, *_CAUTIONS[fasten], iron_hot(done, say))
        tools = (*iron_tools(done, say), *label_tools(done, say), *_TOOLS[fasten])
        aim = "fitted-waistband-aim-ties" if fasten == TIES else "fitted-waistband-aim"
        return Instructions(
            "fitted-waistband-title",
            aim,
            actions,
            values,
            cautions,
            tools,
            ironed=("fitted-waistband-fold", "fitted-waistband-press", "fitted-waistband-turn"),
        )


def _fastener(step: SolvedStep, depth: Fraction) -> Iterator[Used]:
    """What closes the band, to be bought; a button has room on the band and on its overlap. depth: of the band, in mm."""
    place = Part("use-fastening")
    match word_of(step.written, "fasten"):
        case "hook and bar":
            yield Used.of_ours(Fastener(FastenerKind.HOOK_AND_BAR), Fraction(1), place)
        case "snaps":
            yield Used.of_ours(Fastener(FastenerKind.SNAP), Fraction(2), place)
        case "button":
            room = Fraction(floor(min(USUAL_BUTTON, depth - 2 * BESIDE, step.mm("overlap") - 2 * BESIDE)))
            yield Used.of_ours(Fastener(FastenerKind.BUTTON, max(room, LEAST_BUTTON)), Fraction(1), place)


def _place(done: Performed, say: Phrasing, edge: Edge) -> str:
    """Where on the wearer the opening lies, so that the end on top can be named."""
    opened = done.before.openings.get(edge.name)
    seam = done.before.seams.get(opened.seam) if opened else None
    return place_of(say.solved, seam) if seam else EITHER


def _half_stiffened(say: Phrasing, band: str) -> bool:
    """Whether interfacing lies on one half of the band: the half that is sewn on, so that it shows."""
    return any(
        step.written.technique == "interface"
        and word_of(step.written, "piece") == band
        and word_of(step.written, "cover") == "half"
        for step in say.solved.steps
    )


def _underlap(bench: Bench, step: SolvedStep, edge: Edge) -> Fraction:
    """How far the band stands out beyond the edge: over an opening in a seam, where the skirt itself does not overlap."""
    opened = bench.openings.get(edge.name)
    return step.mm("overlap") if opened and opened.seam else Fraction(0)


def _not_open(bench: Bench, step: SolvedStep, solved: Solved, edge: Edge, band: str) -> Fault | None:
    written = step.written
    if bench.ring(edge):
        return fault_at(
            written,
            "to",
            "FB347",
            f"`{edge.name}` is closed all round, and a fitted band has no opening to close",
            help="put a `placket` before this step, or use a `band casing` with elastic",
        )
    if bench.cloths[band].ring:
        return fault_at(
            written,
            "band",
            "FB304",
            f"`{band}` is closed to a ring while `{edge.name}` is open",
            help="leave the ends of the band open",
        )
    if bench.cloths[band].copies > 1:
        return fault_at(
            written,
            "band",
            "FB305",
            f"there are {bench.cloths[band].copies} of `{band}` and 1 edge to sew it to",
            help=f"cut `{band}` once",
        )
    if edge.copies > 1:
        return fault_at(
            written,
            "to",
            "FB305",
            f"there are {edge.copies} of `{edge.name}` and 1 band",
            help="stack the layers first",
        )
    if edge.slit:
        return None
    for piece in edge.pieces:
        cloth = solved.pieces[piece].piece.cloth.text
        for side in ("start", "end"):
            if bench.edge(f"{piece}.{side}").state is State.RAW and solved.materials[cloth].material.ravels:
                return fault_at(
                    written,
                    "to",
                    "FB335",
                    f"the {side} edge of `{piece}` is raw beside the band and `{cloth}` ravels",
                    mend=mends.before(written, f"narrow hem: {{edge: {piece}.{side}}}"),
                )
    return None


def _does_not_match(
    bench: Bench, step: SolvedStep, say: Phrasing, solved: Solved, edge: Edge, band: str
) -> Fault | None:
    written, overlap = step.written, step.mm("overlap")
    opened = bench.openings.get(edge.name)
    # The strip's cut depth is rounded up, so its overlap may come out a little deeper.
    if opened and not opened.seam and abs(opened.overlap - overlap) > solved.slack:
        return fault_at(
            written,
            "overlap",
            "FB347",
            f"the band overlaps {say.length(overlap)} and its placket {say.length(opened.overlap)}",
            mend=mends.write(written, "overlap", say.length(opened.overlap))
            if opened.overlap < overlap
            # A larger overlap closes the band tighter.
            else mends.Mend(
                f"write `overlap: {say.length(opened.overlap)}`, and make `{band}` longer by as much as it grows", None
            ),
        )
    fasten = word_of(written, "fasten")
    if fasten != TIES and overlap < NARROWEST:
        return fault_at(
            written,
            "overlap",
            "FB347",
            f"an overlap of {say.length(overlap)} is too narrow for {fasten}, {say.length(NARROWEST - overlap)} short",
            help=f"make the overlap {say.length(NARROWEST)} or more",
        )
    long, gap = edge.set_length, Fraction(0)
    out = _underlap(bench, step, edge)
    gap = long + out - (bench.edge(f"{band}.bottom").set_length - 2 * step.mm("seam"))
    if solved.apart(long, long - gap):
        is_, wanted, too, _ = say.missed(long, long - gap)
        between = "between its end seams, less the overlap" if out else "between its end seams"
        return fault_at(
            written,
            "to",
            "FB401",
            f"`{edge.name}` is {is_} and the band is {wanted} {between}, {too}",
            # `to: band.bottom` would count its end seams, and the overlap that stands out beyond the skirt.
            mend=drawn_to(written, edge, long - gap, f"length: {band}.length{f' - {say.length(out)}' if out else ''}")
            if gap > 0
            else mends.Mend(f"make `{band}` shorter or the skirt fuller", None),
        )
    return None


TECHNIQUE = FittedWaistband()
