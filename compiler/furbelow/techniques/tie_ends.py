"""Make ties and sew them to the ends of a waistband.

What it does: sews each tie to a tube closed at one end, turns it and stitches its open end on the band.
Edges before and after: ties flat and raw, the band sewn on, before; the ties are enclosed and hang from the band after.
Allowance: the seam at both long edges and the closed end, the lap and what is folded under at the other end; ties are folded, so what shows of
    their depth is cut twice.
Example: `- tie ends: {tie: tie, to: waistband, seam: 5 mm, lap: 2 cm, turn under: 1 cm}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Ply, Seam, State
from furbelow.garment.lying import Ledger, LooseEnd, OnCloth, Window
from furbelow.garment.message import Length, One, Pieces, Stitch, Values
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
from furbelow.techniques.shared.cautions import CORDS, held_out
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import WIDE_MARGIN, bare_edge, lap_window, margins, seam_window, turn_window
from furbelow.techniques.shared.preconditions import edge_not_ready

FOR_A_KNOT, FOR_A_BOW = Fraction(100), Fraction(250)  # each tie beyond the body; house rule, maker to confirm
ENDS = 2  # of a band, each with a tie
WIDE_OFF, LENGTH_OFF = Fraction(2), Fraction(5)


class Ties(NamedTuple):
    """Two ties on a band: how far each hangs from it, and its width, in mm."""

    length: Fraction
    depth: Fraction


class TieEnds:
    name = "tie ends"
    about = "Sew two ties and stitch them to the ends of a waistband."
    pictures = (Picture.PIECES,)
    parameters = {
        "tie": Parameter("The piece for the ties, cut twice.", Kind.PIECE),
        "to": Parameter("The band they are sewn to, already on the garment.", Kind.PIECE),
        "seam": Parameter("Seam allowance along and at the closed end of each tie.", Kind.LENGTH, "5 mm"),
        "lap": Parameter("How far each tie lies on the band.", Kind.LENGTH, "2 cm"),
        "turn under": Parameter("How much of its open end is folded inside.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        tie = word_of(step, "tie")
        return (
            Allowance(tie, "top", ("seam",)),
            Allowance(tie, "bottom", ("seam",), doubles=True),
            Allowance(tie, "start", ("seam",)),
            Allowance(tie, "end", ("lap", "turn under")),
        )

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, seam, lap = done.step.written, done.step.mm("seam"), done.step.mm("lap")
        tie, band = word_of(written, "tie"), word_of(written, "to")
        windows = [
            seam_window(solved, "seam", seam, (tie,)),
            lap_window("lap", "a lap of the tie", lap, most=solved.pieces[band].length / 4),
            turn_window(
                "turn under",
                "a turn",
                done.step.mm("turn under"),
                most=WIDE_MARGIN,
                bare=bare_edge(ledger, solved, f"{tie}.end"),
            ),
        ]
        length = solved.pieces[tie].length
        hangs = LooseEnd("tie", band, "top", length - FOR_A_KNOT)
        if waist := solved.values.get("waist_girth"):
            # Both ties together, and the band between them, go round the waist and make a knot or a bow.
            round_ = waist.value.as_length_mm()
            open_ = max(round_ - solved.pieces[band].length, Fraction(0)) / 2
            hangs = hangs._replace(long=length - open_ - FOR_A_KNOT)
            windows.append(
                Window(
                    "tie",
                    "a tie",
                    length,
                    least=open_ + FOR_A_BOW,
                    most=2 * round_ + FOR_A_BOW,  # to the back, round to the front, and a bow there
                    sewable_least=open_ + FOR_A_KNOT,
                    why="it reaches half the open waist and has to be tied",
                )
            )
        sewn = margins(ledger, seam, "seam", f"{tie}.top", f"{tie}.bottom", f"{tie}.start")
        return OnCloth(sewn, tuple(windows), loose=(hangs,))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        tie, band = word_of(written, "tie"), word_of(written, "to")
        for side in ("top", "bottom", "start", "end"):
            if fault := edge_not_ready(bench, written, "tie", f"{tie}.{side}"):
                return refused(bench, step, (tie,), fault)
        if fault := _cannot_tie(bench, step, say, solved, tie, band):
            return refused(bench, step, (tie, band), fault)
        seam, lap, under, cloth = step.mm("seam"), step.mm("lap"), step.mm("turn under"), bench.cloths[tie]
        depth, length = solved.pieces[tie].depth, solved.pieces[tie].length
        after = bench.with_cloths(cloth._replace(folded=True, copies=1))
        for side, took in (("top", seam), ("bottom", seam), ("start", seam), ("end", lap + under)):
            edge = after.edge(f"{tie}.{side}")
            after = after.with_edges(edge._replace(state=State.ENCLOSED, used=edge.used + took, copies=1))
        around = length + lap + under + depth
        after = after.with_seams(
            Seam(f"{tie}.top", (), (Ply(tie, 2),), around, 2, seam, "301", State.ENCLOSED),
            Seam(f"{tie}.end", (), (Ply(tie, 2), Ply(band, 2)), depth, 2, lap, "301", State.ENCLOSED, turned=band),
        ).bearing(tie, band)
        opening = next(each for each in bench.openings.values() if each.band == band)
        after = after.with_opening(opening._replace(tied=True))
        return Performed(
            step,
            bench,
            after,
            (tie, band),
            sewn=(
                Sewn(StitchType.LOCK, around, 2, room.seam_stitch),  # the ties themselves
                Sewn(StitchType.LOCK, 2 * (lap + depth), 2, room.seam_stitch),  # on the band
            ),
            setup=SetUp.STRAIGHT,
            pinned=2 * around,
            handled=2 * length,
            facts=Ties(length, depth),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, facts = done.step, facts_of(done, Ties)
        actions = (
            Action("tie-ends-fold", ENDS),
            Action("tie-ends-sew", ENDS),
            Action("tie-ends-turn", ENDS),
            *((Action("tie-ends-turn-under", ENDS),) if step.mm("turn under") else ()),
            Action("tie-ends-lay", ENDS),
            Action("tie-ends-stitch", ENDS),
        )
        values: Values = {
            "band": Pieces((word_of(step.written, "to"),)),
            "hold": One(say.room.hold_with, ("pins", "clips")),
            "seam-width": Length(step.mm("seam")),
            "stitch": Stitch(done.sewn[0].stitch),
            "around": Length(done.sewn[0].length),
            "under": Length(step.mm("turn under")),
            "lap": Length(step.mm("lap")),
            "tie-long": Length(facts.length),
            "length-off": Length(LENGTH_OFF, "about"),
            "depth": Length(facts.depth),
            "wide-off": Length(WIDE_OFF, "about"),
        }
        cautions, tie = (CORDS, held_out(say.room), iron_hot(done, say)), word_of(step.written, "tie")
        tools = (*iron_tools(done, say, tie), Tool.BLUNT_STICK)
        return Instructions(
            "tie-ends-title",
            "tie-ends-aim",
            actions,
            values,
            cautions,
            tools,
            (tie,),
            ironed=("tie-ends-turn", "tie-ends-turn-under"),
        )


def _cannot_tie(bench: Bench, step: SolvedStep, say: Phrasing, solved: Solved, tie: str, band: str) -> Fault | None:
    written, cloth = step.written, bench.cloths[tie]
    opening = next((each for each in bench.openings.values() if each.band == band), None)
    if opening is None:
        return fault_at(
            written,
            "to",
            "FB351",
            f"`{band}` is not on an open waist yet, so its ends can't carry ties",
            help="move this step after its `fitted waistband`",
        )
    if opening.closed_by != "ties":
        return fault_at(
            written,
            "to",
            "FB351",
            f"`{band}` is closed by {opening.closed_by} and needs no ties",
            help="write `fasten: ties` in its `fitted waistband`, or leave this step out",
        )
    if cloth.ring:
        return fault_at(
            written, "tie", "FB304", f"`{tie}` is closed to a ring, and a tie is flat", help="leave its ends open"
        )
    if cloth.copies != ENDS:
        return fault_at(
            written,
            "tie",
            "FB305",
            f"a band has 2 ends and there are {cloth.copies} of `{tie}`",
            help=f"write `count: 2` in `{tie}`",
        )
    depth, wide = solved.pieces[tie].depth, solved.pieces[band].depth
    if depth > wide + solved.slack:  # both cut depths are rounded up by themselves
        return fault_at(
            written,
            "tie",
            "FB351",
            f"`{tie}` is {say.length(depth)} wide and `{band}` {say.length(wide)}, {say.length(depth - wide)} too wide",
            help="make the ties as wide as the band or narrower",
        )
    return None


TECHNIQUE = TieEnds()
