"""Gather a finished strip along one line or two and sew it flat on another piece.

What it does: gathers the strip along its middle, or along two lines inside its edges, and stitches it on through them.
Edges before and after: both long edges of the strip finished, and free, before; drawn to the length of the piece after.
Allowance: none. The strip lies on the piece and adds nothing to its depth.
Example: `- ruche: {strip: ruche, on: skirt, above hem: 8 cm, lines: two, inset: 1 cm}`
Source: a ruche of chiffon takes 3 x, of taffeta 2 x its line: Butterick, The New Dressmaker, 1921.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import limits
from furbelow.garment.bench import Bench, State
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    EdgesIn,
    Kind,
    OwnAction,
    OwnInstructions,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.join_ends import PINS
from furbelow.techniques.shared.preconditions import copies_differ, forms_differ, strips_not_joined

ONE, TWO = "one", "two"
TAIL = Fraction(100)


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

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        strip, on = word_of(step.written, "strip"), word_of(step.written, "on")
        if fault := _not_to_sew_on(bench, step, solved, Phrasing(solved, room), strip, on):
            return refused(bench, step, (strip, on), fault)
        base = bench.edge(f"{on}.bottom")
        edges = [bench.edge(f"{strip}.{side}") for side in ("top", "bottom")]
        after = bench.with_edges(*(edge._replace(set_length=base.cloth_length, gathered="ruche") for edge in edges))
        lines = 2 if word_of(step.written, "lines") == TWO else 1
        cloth, length, copies = edges[0].cloth_length, base.cloth_length, base.copies
        label = solved.pieces[strip].label
        row = Sewn(StitchType.LOCK, cloth, copies, room.gathering_stitch, f"gathering the {label}")
        on_it = Sewn(StitchType.LOCK, length, copies, room.seam_stitch, f"sewing on the {label}")
        return Performed(
            step,
            bench,
            after.joined((strip, on)),
            (strip, on),
            sewn=(row,) * lines + (on_it,) * lines,
            setup=SetUp.STRAIGHT,
            pinned=lines * length * copies,
            handled=lines * cloth * copies,
            facts={"cloth": cloth, "length": length, "copies": copies},
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        step, facts = done.step, done.facts
        strip, on = word_of(step.written, "strip"), word_of(step.written, "on")
        two = word_of(step.written, "lines") == TWO
        depth = done.before.depth(strip)
        cloth, length, chain = facts["cloth"], facts["length"], say.chain(facts["copies"])
        above, inset = step.mm("above hem"), step.mm("inset")
        lows = (above + inset, above + depth - inset) if two else (above + depth / 2,)
        the, pin = f"the {say.piece(strip)}", "clip" if say.room.hold_with == "clips" else "pin"
        where = f"{say.length(inset)} inside both its long edges" if two else "along its middle"
        rows = "each row" if two else "the row"
        marked = [
            OwnAction(f"Mark a line on the {say.piece(on)}, {say.length(low)} above its bottom edge.", chain=chain)
            for low in lows
        ]
        actions = (
            OwnAction(
                f"Mark {the} in quarters, every {say.length(cloth / 4)}, and the {say.piece(on)} every {say.length(length / 4)}.",
                chain=chain,
            ),
            *marked,
            OwnAction(
                f"Sew a row of the longest stitch {where}; do not sew back, and leave {say.about(TAIL)} of thread at both ends.",
                chain=chain,
            ),
            OwnAction(
                f"Pull the bobbin thread of {rows} until every quarter measures {say.length(length / 4)}.",
                check=f"{the[0].upper()}{the[1:]} is {say.length(length)} long{' on both lines' if two else ''}.",
                tolerance=f"up to {say.length(length * limits.EASE_SHARE)} short may be eased in",
                remedy=f"More than {say.length(length * limits.EASE_SHARE)} short: let the gathers out. Too long: pull closer.",
                chain=chain,
            ),
            OwnAction(
                f"Lay {the} on the {say.piece(on)}, right side up, {rows} on its line, and {pin} it at the quarters, then every"
                f" {say.about(say.room.pin_spacing)}.",
                chain=chain,
            ),
            OwnAction(
                f"Sew on {rows}, {say.length(length)}, {say.stitch(say.room.seam_stitch)}.",
                check=f"Both edges of {the} stand free and are even.",
                remedy="Unpick where the row left the line and sew it again.",
                chain=chain,
            ),
        )
        aim = f"{say.length(cloth)} of strip lies in {say.length(length)}: {say.ratio(cloth / length)} to 1."
        return OwnInstructions(f"Sew {the} on the {say.piece(on)}", aim, actions, (PINS,))


def _not_to_sew_on(bench: Bench, step: SolvedStep, solved: Solved, say: Phrasing, strip: str, on: str) -> Fault | None:
    written, top, base = step.written, bench.edge(f"{strip}.top"), bench.edge(f"{on}.bottom")
    if bench.units[strip] == bench.units[on]:
        return fault_at(
            written,
            "on",
            "FB317",
            f"`{strip}` and `{on}` belong to one unit already",
            help="check which piece the strip is meant for",
        )
    fault = (
        strips_not_joined(bench, written, "strip", (strip, on))
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
                help=f"put `- rolled hem: {{edge: {edge.name}}}` before this step",
            )
    if base.gathered:
        return fault_at(
            written,
            "on",
            "FB333",
            f"`{base.name}` is gathered {say.ratio(base.ratio)} to 1, and a ruche lies on flat cloth, 1 to 1",
            help="sew the ruche on before the gathers",
        )
    ratio, most = top.cloth_length / base.cloth_length, limits.fullest(solved, cloth)
    if ratio < 1:
        return fault_at(
            written,
            "strip",
            "FB314",
            f"`{strip}` has {say.length(top.cloth_length)} of cloth for {say.length(base.cloth_length)},"
            f" {say.length(base.cloth_length - top.cloth_length)} too little to gather",
            help="make the strip longer",
        )
    if ratio > most:
        return fault_at(
            written,
            "strip",
            "FB315",
            f"`{strip}` would be gathered {say.ratio(ratio)} to 1, and `{cloth}` takes {say.ratio(most)} to 1",
            help="make the strip shorter",
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


TECHNIQUE = Ruche()
