"""Gather a finished strip along one line or two and sew it flat on another piece.

What it does: gathers the strip along its middle, or along two lines inside its edges, and stitches it on through them.
Edges before and after: both long edges of the strip finished, and free, before; drawn to the length of the piece after.
Allowance: none. The strip lies on the piece and adds nothing to its depth.
Example: `- ruche: {strip: ruche, on: skirt, above hem: 8 cm, lines: two, inset: 1 cm}`
Source: a ruche of chiffon takes 3 x, of taffeta 2 x its line: Butterick, The New Dressmaker, 1921.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import limits, mends
from furbelow.garment.bench import Bench, State
from furbelow.garment.lying import Ledger, Lies, OnCloth
from furbelow.garment.matching import divisions
from furbelow.garment.message import Length, One, Pieces, Ratio, Stitch, Values
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
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.gathers import runs_of, runs_said
from furbelow.techniques.shared.laying import drawn_in
from furbelow.techniques.shared.lines import line_above
from furbelow.techniques.shared.loose_ends import folded_under
from furbelow.techniques.shared.pins import pins_apart
from furbelow.techniques.shared.preconditions import copies_differ, forms_differ, one_unit, strips_not_joined

ONE, TWO = "one", "two"
BESIDE = Fraction(5)  # from the fold of an end to the row that holds it; common practice, no source


class SewnOn(NamedTuple):
    """A strip of so much cloth sewn on to a length, so many times; from pin to pin; lengths in mm."""

    cloth: Fraction
    length: Fraction
    copies: int
    apart: Fraction


class Ruche:
    name = "ruche"
    about = "Gather a finished strip along one or two lines and sew it on a piece."
    pictures = (Picture.PIECES,)
    parameters = {
        "strip": Parameter("The strip, both its long edges finished.", Kind.PIECE),
        "on": Parameter("The piece that it is sewn on, lying flat.", Kind.PIECE),
        "above hem": Parameter("From the bottom edge of the piece to that of the strip.", Kind.LENGTH),
        "lines": Parameter("Gathered along its middle, or along two lines.", (ONE, TWO), ONE),
        "inset": Parameter("With two lines: how far each lies from its edge.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, above = done.step.written, done.step.mm("above hem")
        strip, on = word_of(written, "strip"), word_of(written, "on")
        deep = done.before.depth(strip)
        lies = tuple(ledger.at_edge(f"{on}.bottom", Lies.STRIP, "the ruche", above, above + deep, "above hem"))
        held = drawn_in(done.before.edge(f"{strip}.top"), "strip", facts_of(done, SewnOn).length)
        return OnCloth(lies, held=held)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        strip, on = word_of(step.written, "strip"), word_of(step.written, "on")
        if fault := _not_to_sew_on(bench, step, solved, Phrasing(solved, room), strip, on):
            return refused(bench, step, (strip, on), fault)
        base, length = bench.edge(f"{on}.bottom"), _line(bench, step, strip, on)
        edges = [bench.edge(f"{strip}.{side}") for side in ("top", "bottom")]
        after = bench.with_edges(*(edge._replace(set_length=length, gathered="ruche") for edge in edges))
        lines = 2 if word_of(step.written, "lines") == TWO else 1
        cloth, copies = edges[0].cloth_length, base.copies
        apart = pins_apart(solved, room, bench.edge(f"{on}.bottom"), after.edge(f"{strip}.top"))
        row = Sewn(StitchType.LOCK, cloth, copies, room.gathering_stitch)
        on_it = Sewn(StitchType.LOCK, length, copies, room.seam_stitch)
        return Performed(
            step,
            bench,
            after.bearing(strip, on),
            (strip, on),
            sewn=(row,) * lines + (on_it,) * lines,
            setup=SetUp.STRAIGHT,
            pinned=lines * length * copies * room.pin_spacing / apart,
            handled=lines * cloth * copies,
            thread_ends=(2 + 2 * lines) * runs_of(cloth, divisions(length)) * copies,  # wound, and each row knotted
            facts=SewnOn(cloth, length, copies, apart),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, sewn_on = done.step, facts_of(done, SewnOn)
        strip, on = word_of(step.written, "strip"), word_of(step.written, "on")
        depth, above, inset = done.before.depth(strip), step.mm("above hem"), step.mm("inset")
        two = word_of(step.written, "lines") == TWO
        lows = (above + inset, above + depth - inset) if two else (above + depth / 2,)
        base = done.before.edge(f"{on}.bottom")
        under, ring, parts = folded_under(done.before, base), done.before.ring(base), divisions(sewn_on.length)
        cloth = sewn_on.cloth - 2 * under

        def each(*messages: str) -> Iterator[Action]:
            return (Action(message, sewn_on.copies) for message in messages)

        level = () if ring else ("ruche-level",)
        actions = (
            *each(*(("ruche-ends",) if under else ()), "ruche-mark-ring" if ring else "ruche-mark-flat"),
            *(Action("ruche-mark-line", sewn_on.copies, values=line_above(base, low)) for low in lows),
            Action("rows-set-machine"),
            *each("ruche-row", "rows-wind-tails", "ruche-pull", "rows-tails-under"),
            Action("rows-set-back"),
            *each(*level, "ruche-lay", "ruche-sew-ring" if ring else "ruche-sew-flat"),
        )
        values: Values = {
            "strip": Pieces((strip,)),
            "on": Pieces((on,)),
            "lines": One(TWO if two else ONE, (ONE, TWO)),
            "inset": Length(inset),
            "cloth": Length(cloth),
            "cloth-part": Length(cloth / parts),
            "length": Length(sewn_on.length),
            "part": Length(sewn_on.length / parts),
            **runs_said(cloth, parts, say),
            "ratio": Ratio(cloth / sewn_on.length),
            "ease": Length(sewn_on.length * limits.EASE_SHARE),
            "under": Length(under, "about"),
            "beside": Length(BESIDE, "about"),
            "hold": One("pins", ("pins", "clips")),  # clips do not reach the middle of the cloth
            "spacing": Length(sewn_on.apart, "about"),
            "stitch": Stitch(say.room.seam_stitch),
        }
        return Instructions("ruche-title", "ruche-aim", actions, values, (PINS_OUT,), (Tool.PINS,))


def _not_to_sew_on(bench: Bench, step: SolvedStep, solved: Solved, say: Phrasing, strip: str, on: str) -> Fault | None:
    written, top, base = step.written, bench.edge(f"{strip}.top"), bench.edge(f"{on}.bottom")
    fault = (
        one_unit(bench, written, "on", strip, on, "check which piece the strip is meant for")
        or strips_not_joined(bench, written, "strip", (strip, on))
        or forms_differ(bench, written, "on", top, base)
        or copies_differ(written, "on", top, base)
    )
    if fault:
        return fault
    cloth = solved.pieces[strip].piece.cloth.text
    for side in ("top", "bottom"):
        edge = bench.edge(f"{strip}.{side}")
        if edge.state in (State.SEWN, State.ENCLOSED) or edge.gathered:
            return fault_at(
                written,
                "strip",
                "FB302",
                f"`{edge.name}` is {'gathered' if edge.gathered else 'sewn in'} already",
                help="take a strip whose edges are free",
            )
        if edge.state is State.RAW and solved.materials[cloth].material.ravels:
            return fault_at(
                written,
                "strip",
                "FB335",
                f"the raw edge of `{edge.name}` stands free and `{cloth}` ravels",
                mend=mends.before(written, f"rolled hem: {{edge: {edge.name}}}"),
            )
    if base.gathered:
        return fault_at(
            written,
            "on",
            "FB333",
            f"`{base.name}` is gathered {say.ratio(base.ratio)} to 1, and a ruche lies on flat cloth, 1 to 1",
            help="sew the ruche on before the gathers",
        )
    line = _line(bench, step, strip, on)
    if top.cloth_length < line:
        return fault_at(
            written,
            "strip",
            "FB314",
            f"`{strip}` has {say.length(top.cloth_length)} of cloth for {say.length(line)},"
            f" {say.length(line - top.cloth_length)} too little to gather",
            help="make the strip longer",
        )
    depth, reach = bench.depth(on), step.mm("above hem") + bench.depth(strip)
    if reach > depth:
        return fault_at(
            written,
            "above hem",
            "FB312",
            f"the strip reaches {say.length(reach)} up and `{on}` is {say.length(depth)} deep",
            help="sew it lower, or to the tier above",
        )
    if word_of(written, "lines") == TWO and 2 * step.mm("inset") >= bench.depth(strip):
        return fault_at(
            written,
            "inset",
            "FB334",
            f"two lines {say.length(step.mm('inset'))} inside the edges cross in a strip of {say.length(bench.depth(strip))}",
            help="take a smaller inset, or one line",
        )
    return None


def _line(bench: Bench, step: SolvedStep, strip: str, on: str) -> Fraction:
    """How long the piece is where the middle of the strip lies on it."""
    return bench.along(on, step.mm("above hem") + bench.depth(strip) / 2)


TECHNIQUE = Ruche()
