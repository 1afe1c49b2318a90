"""Fold a closed band in half and stitch a channel for elastic along its fold, before the band is sewn on.

What it does: folds the band along its length, edge-stitches the fold, sews a second row below it, and opens the seam of the
    band between the two rows for the elastic.
Edges before and after: a ring with a seam, both long edges raw or neatened, before; one stacked edge of two plies, with an
    open casing along the fold, after.
Allowance: none; the band is folded, so its depth is cut twice.
Example: `- channel band: {band: waistband, as: band_edge, edge stitch: 2 mm, channel: 28 mm}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Casing, Edge, Ply, State
from furbelow.garment.lying import Ledger, Lies, Occupant, OnCloth, Window
from furbelow.garment.matching import divisions
from furbelow.garment.message import Length, One, Pieces, Stitch, Values, edge_said
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
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.tolerance import folded_off
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.casings import OPENED, seam_not_to_open, unpicking
from furbelow.techniques.shared.cautions import RIPPER
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.preconditions import edge_not_ready

FAR_FROM_FOLD = Fraction(15)  # a row further off keeps no fold sharp; house rule, maker to confirm
CLEAR = Fraction(3)  # from the lower row to the seam that follows: the foot must pass beside it; house rule


class Channelled(NamedTuple):
    """A band folded with its channel, in mm: its length round, its depth as folded, and from the fold to its rows."""

    length: Fraction
    depth: Fraction
    edge_stitch: Fraction
    row: Fraction


class ChannelBand:
    name = "channel band"
    about = "Fold a closed band in half and stitch a channel for elastic along its fold, before it is sewn on."
    pictures = (Picture.PIECES, Picture.CHANNEL)
    parameters = {
        "band": Parameter("The piece that becomes the band, its ends sewn together.", Kind.PIECE),
        "as": Parameter("A name for its two raw edges, which are sewn on as one.", Kind.NAME),
        "edge stitch": Parameter("From the fold to the row that keeps it sharp.", Kind.LENGTH, "2 mm"),
        "channel": Parameter("Clear width of the channel, from that row to the next.", Kind.LENGTH),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return (Allowance(word_of(step, "band"), "bottom", (), doubles=True),)

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        band, facts = word_of(done.step.written, "band"), facts_of(done, Channelled)
        fold = solved.pieces[band].cut_depth / 2
        down = ledger.band(band, "top", fold - facts.row, fold + facts.row)
        beside = Window(
            "edge stitch", "a row beside the fold", facts.edge_stitch, most=FAR_FROM_FOLD, sewable_least=Fraction(1)
        )
        return OnCloth((Occupant(band, Lies.CHANNEL, "the channel", down=down, arg="channel"),), (beside,))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written = step.written
        band = word_of(written, "band")
        upper, lower = f"{band}.top", f"{band}.bottom"
        for name in (upper, lower):
            if fault := edge_not_ready(bench, written, "band", name):
                return refused(bench, step, (band,), fault)
        edge, cloth = bench.edge(lower), bench.cloths[band]
        edge_stitch, channel = step.mm("edge stitch"), step.mm("channel")
        facts = Channelled(edge.set_length, solved.pieces[band].depth, edge_stitch, edge_stitch + channel)
        if fault := self._refusal(bench, step, solved, room, facts):
            return refused(bench, step, (band,), fault)
        stack = Edge(
            word_of(written, "as"),
            (Ply(band, 2),),
            1,
            edge.set_length,
            edge.set_length,
            State.RAW if State.RAW in (bench.edge(upper).state, edge.state) else State.NEATENED,
            marks=divisions(edge.set_length),
        )
        after = bench.with_edges(stack).with_cloths(cloth._replace(folded=True, pressed=True))
        after = after._replace(layered={**after.layered, upper: stack.name, lower: stack.name})
        # Its own seam ends up inside the fold, where a raw margin is closed in as well.
        own = [seam for seam in bench.seams.values() if {ply.piece for ply in seam.plies} == {band}]
        closed = {State.RAW: State.ENCLOSED}
        after = after.with_seams(
            *(each._replace(trapped=True, state=closed.get(each.state, each.state)) for each in own)
        )
        after = after.with_casing(Casing(band, band, channel, edge.set_length, channel, in_seam=True))
        rows = (facts.length, facts.length)
        return Performed(
            step,
            bench,
            after,
            (band,),
            sewn=tuple(Sewn(StitchType.LOCK, row, 1, room.seam_stitch) for row in rows),
            setup=SetUp.STRAIGHT,
            handled=facts.length,
            facts=facts,
        )

    def _refusal(
        self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom, facts: Channelled
    ) -> Fault | None:
        written, say = step.written, Phrasing(solved, room)
        band = word_of(written, "band")
        if not bench.cloths[band].ring or f"{band}.ends" not in bench.seams:
            return fault_at(
                written,
                "band",
                "FB304",
                f"`{band}` is still flat, and its channel is opened in the seam that closes it",
                help=f"put `- join ends: {{of: {band}}}` before this step",
            )
        if fault := seam_not_to_open(bench, written, "band", band):
            return fault
        if bench.cloths[band].copies != 1:
            return fault_at(
                written,
                "band",
                "FB305",
                f"there are {bench.cloths[band].copies} of `{band}`, and one band goes round the waist",
                help="write `count: 1`",
            )
        over = facts.row + CLEAR - facts.depth
        if over > 0:
            return fault_at(
                written,
                "channel",
                "FB310",
                f"a channel of {say.length(facts.row - facts.edge_stitch)} does not fit a band {say.length(facts.depth)}"
                f" deep, {say.length(over)} too wide",
                notes=(
                    f"{say.length(facts.edge_stitch)} + {say.length(facts.row - facts.edge_stitch)} + {say.length(CLEAR)}"
                    f" beside the seam = {say.length(facts.row + CLEAR)}",
                ),
                help=f"make `{band}` {say.length(facts.row + CLEAR)} deep or more",
            )
        return None

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, band = facts_of(done, Channelled), word_of(done.step.written, "band")
        edge = done.after.edge(word_of(done.step.written, "as"))
        actions = (
            "channel-band-fold",
            "channel-band-edge-stitch",
            "channel-band-row",
        )
        values: Values = {
            "band": Pieces((band,)),
            "stack": edge_said(edge),
            "length": Length(facts.length),
            "depth": Length(say.solved.pieces[band].cut_depth / 2, "cut"),
            "off": Length(folded_off(), "off"),
            "edge-stitch": Length(facts.edge_stitch, "about"),
            "row": Length(facts.row),
            "channel": Length(facts.row - facts.edge_stitch),
            "stitch": Stitch(done.sewn[0].stitch),
            "hold": One(say.room.hold_with, ("pins", "clips")),
            "opened": One("rows", OPENED),
        }
        return Instructions(
            "channel-band-title",
            "channel-band-aim",
            (*map(Action, actions), *unpicking(done.after.casings[band])),
            values,
            (iron_hot(done, say), RIPPER),
            iron_tools(done, say, band),
            (band,),
            ironed=("channel-band-fold",),
        )


TECHNIQUE = ChannelBand()
