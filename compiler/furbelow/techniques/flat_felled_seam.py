"""Sew a flat-felled seam: one margin trimmed, the other folded over it and stitched flat.

What it does: sews a plain seam, trims one margin, folds the wide one around it and stitches the fold down.
Edges before and after: raw or neatened before; sewn after, the margin enclosed and flat under two rows.
Allowance: the seam, at both edges; the fold is made out of it.
Example: `- flat felled seam: {of: panel, seam: 15 mm, trim to: 5 mm, fell: 9 mm}`
Source: seam of the class 2 (lapped) in BS 3870:1991; the widths are common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, State
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, Pieces, Stitch, Values
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
    Sewn,
    Tool,
    edge_of,
    fault_at,
    new_seam,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import PINS_OUT, SHEARS, held_out
from furbelow.techniques.shared.either_seam import (
    WHERE,
    Laying,
    closes_ends,
    either_laid,
    either_said,
    laid,
    runs_round,
    sewn_either,
    takes_either,
)
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import trim_window
from furbelow.techniques.shared.marks import tag

EDGE_STITCH = Fraction(2)  # from the fold
OFF = Fraction(1)  # how far the fold may be off its width
WAYS = Laying(
    faces="right",
    flat="flat-felled-seam-lay-edges",
    ring=("flat-felled-seam-turn", "flat-felled-seam-slip"),
    pin="flat-felled-seam-pin",
)


class FlatFelledSeam:
    name = "flat felled seam"
    about = "Sew a seam whose margins are folded into each other and stitched flat."
    pictures = (Picture.PIECES, Picture.FLAT_FELLED_SEAM)
    parameters = {
        **WHERE,
        "seam": Parameter("Seam allowance at both edges.", Kind.LENGTH, "15 mm"),
        "trim to": Parameter("What is left of the margin that lies underneath.", Kind.LENGTH, "5 mm"),
        "fell": Parameter("Width of the finished fold, from the seam to its stitched edge.", Kind.LENGTH, "9 mm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return takes_either(step, edges_in, "seam")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        on = either_laid(done, ledger, solved, "seam", done.step.mm("seam"))
        return on._replace(windows=(*on.windows, trim_window(done)))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        done = sewn_either(bench, step, solved, room, step.mm("seam"))
        if done.refused:
            return done
        fault = _gathered(bench, step, Phrasing(solved, room)) or _does_not_fold(step, Phrasing(solved, room))
        if fault:
            return refused(bench, step, done.touches, fault)
        plain = new_seam(done)
        seam = plain._replace(
            state=State.ENCLOSED, width=step.mm("fell"), turned=plain.plies[0].piece, topstitched=True
        )
        row = Sewn(StitchType.LOCK, seam.length, seam.copies, room.seam_stitch)
        return done._replace(
            after=done.after.with_seams(seam),
            sewn=(row, row),
            pinned=2 * done.pinned,
            handled=2 * seam.length * seam.copies,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        seam, step, ends, ring = new_seam(done), done.step, closes_ends(done.step.written), runs_round(done)
        # The margin of the piece that the fold lies on is the one to be trimmed, so it is pressed underneath.
        flat_on = done.touches if ends else done.before.edge(edge_of(step.written, "to")).pieces

        def each(name: str) -> Action:
            return Action(name, seam.copies)

        actions = (
            *laid(done, say, WAYS),
            each("flat-felled-seam-sew-ring" if ring else "flat-felled-seam-sew-flat"),
            each("flat-felled-seam-open-ends" if ends else "flat-felled-seam-open-edges"),
            each("flat-felled-seam-trim"),
            each("flat-felled-seam-fold"),
            each("flat-felled-seam-lay-flat"),
            each("flat-felled-seam-fell-ring" if ring else "flat-felled-seam-fell-flat"),
            *(tag(done, done.touches, say) if ends else ()),
        )
        values: Values = {
            **either_said(done, say, WAYS),
            "flat-on": Pieces(flat_on),
            "seam-width": Length(step.mm("seam")),
            "trim": Length(step.mm("trim to")),
            "fell": Length(step.mm("fell")),
            "under": Length(step.mm("seam") - step.mm("fell")),
            "from-fold": Length(from_fold(step)),
            "apart": Length(step.mm("fell") - from_fold(step)),
            "stitch": Stitch(done.sewn[0].stitch),
            "fold-off": Length(OFF, "off"),
        }
        held = (held_out(say.room), PINS_OUT) if say.room.hold_with == "clips" else (PINS_OUT,)
        title = "flat-felled-seam-title-ends" if ends else "flat-felled-seam-title-edges"
        cautions = (*held, iron_hot(done, say), SHEARS)
        tools = (Tool.PINS, *iron_tools(done, say))
        return Instructions(
            title,
            "flat-felled-seam-aim",
            actions,
            values,
            cautions,
            tools,
            ironed=("flat-felled-seam-fold", "flat-felled-seam-open-edges", "flat-felled-seam-open-ends"),
        )


def from_fold(step: SolvedStep) -> Fraction:
    """How far from the fold its row is sewn: over the middle of what is folded under, where that is narrow."""
    return min(EDGE_STITCH, (step.mm("seam") - step.mm("fell")) / 2)


def _gathered(bench: Bench, step: SolvedStep, say: Phrasing) -> Fault | None:
    for arg in ("edge", "to"):
        if arg in step.written.args and (edge := bench.edge(edge_of(step.written, arg))).gathered:
            return fault_at(
                step.written,
                arg,
                "FB333",
                f"`{edge.name}` is gathered {say.ratio(edge.ratio)} to 1, and a felled seam folds only flat cloth, 1 to 1",
                help="use `attach`, then `neaten`, or a `french seam` in thin cloth",
            )
    return None


def _does_not_fold(step: SolvedStep, say: Phrasing) -> Fault | None:
    seam, trim, fell = (step.mm(key) for key in ("seam", "trim to", "fell"))
    if trim >= fell:
        return fault_at(
            step.written,
            "trim to",
            "FB331",
            f"a margin of {say.length(trim)} is not covered by a fold of {say.length(fell)}"
            + (f", {say.length(trim - fell)} too wide" if trim > fell else ""),
            help="trim the lower margin narrower than the fold",
        )
    if not fell / 2 <= seam - fell <= fell:
        return fault_at(
            step.written,
            "fell",
            "FB334",
            f"a margin of {say.length(seam)} leaves {say.length(seam - fell)} to fold under a fold of {say.length(fell)};"
            f" it takes {say.length(fell / 2)} to {say.length(fell)}",
            notes=(f"{say.length(seam)} - {say.length(fell)} = {say.length(seam - fell)}",),
            help=f"make `fell` {say.length(seam * 3 / 5)}",
        )
    return None


TECHNIQUE = FlatFelledSeam()
