"""Sew a French seam: a narrow seam on the right side, closed inside a second one on the wrong side.

What it does: sews wrong sides together, trims, turns and sews again right sides together around the raw edges.
Edges before and after: raw or neatened before; sewn after, with a margin that is enclosed on all sides.
Allowance: first seam + second seam, at both edges; what is trimmed belongs to the first.
Example: `- french seam: {of: panel, first seam: 3/8 in, trim to: 1/8 in, second seam: 3/8 in}`
Source: first 3/8 in, trimmed to 1/8 in, then 3/8 in: Utah State University Extension, sewing leaflet; 1/8 in and then
    1/4 in from the fold, too bulky for thick cloth: A Complete Course in Dressmaking, vol. 1, 1921.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment.bench import Bench, Seam, State
from furbelow.garment.limits import NARROWEST_TURN, gram_per_m2
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import Length, Stitch, Values
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
    fault_at,
    new_seam,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import SHEARS, held_out
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

THICK = Fraction(150)  # g/m2 above which the four plies make a ridge; house rule, maker to confirm
WAYS = Laying(
    faces="wrong",
    flat="french-seam-lay-edges",
    ring=("french-seam-turn", "french-seam-slip"),
    pin="french-seam-pin",
)


class FrenchSeam:
    name = "french seam"
    about = "Sew a seam twice so that its raw edges are closed inside it."
    pictures = (Picture.PIECES, Picture.FRENCH_SEAM)
    parameters = {
        **WHERE,
        "first seam": Parameter("Allowance of the first seam, wrong sides together.", Kind.LENGTH, "9 mm"),
        "trim to": Parameter("What is left of the first allowance before the second seam.", Kind.LENGTH, "3 mm"),
        "second seam": Parameter("Allowance of the second seam, measured from the fold.", Kind.LENGTH, "6 mm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return takes_either(step, edges_in, "first seam", "second seam")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        first, second = done.step.mm("first seam"), done.step.mm("second seam")
        on = either_laid(done, ledger, solved, "first seam", first + second)
        windows = (
            Window("first seam", "a first seam", first, sewable_least=NARROWEST_TURN, why="it is trimmed afterwards"),
            trim_window(done),
            Window(
                "second seam", "a second seam", second, sewable_least=NARROWEST_TURN, why="it holds the raw edges in"
            ),
        )
        return on._replace(windows=(*on.windows, *windows))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        first, trim, second = (step.mm(key) for key in ("first seam", "trim to", "second seam"))
        done = sewn_either(bench, step, solved, room, first + second)
        if done.refused:
            return done
        if fault := _does_not_close(step, Phrasing(solved, room), first, trim, second):
            return refused(bench, step, done.touches, fault)
        seam = new_seam(done)._replace(state=State.ENCLOSED, width=second)
        row = Sewn(StitchType.LOCK, seam.length, seam.copies, room.seam_stitch)
        return done._replace(
            after=done.after.with_seams(seam),
            faults=_bulky(step, solved, seam),
            sewn=(row, row),
            pinned=2 * done.pinned,
            handled=seam.length * seam.copies,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        seam, ends, ring = new_seam(done), closes_ends(done.step.written), runs_round(done)

        def each(name: str) -> Action:
            return Action(name, seam.copies)

        actions = (
            *laid(done, say, WAYS),
            each("french-seam-first-ring" if ring else "french-seam-first-flat"),
            each("french-seam-trim"),
            each("french-seam-press"),
            each("french-seam-second-ring" if ring else "french-seam-second-flat"),
            each("french-seam-press-ends" if ends else "french-seam-press-edges"),
            *(tag(done, done.touches, say) if ends else ()),
        )
        values: Values = {
            **either_said(done, say, WAYS),
            "first": Length(done.step.mm("first seam")),
            "trim": Length(done.step.mm("trim to")),
            "second": Length(done.step.mm("second seam")),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        title = "french-seam-title-ends" if ends else "french-seam-title-edges"
        cautions = (held_out(say.room), SHEARS, iron_hot(done, say))
        tools = iron_tools(done, say)
        return Instructions(
            title,
            "french-seam-aim",
            actions,
            values,
            cautions,
            tools,
            ironed=("french-seam-press", "french-seam-press-edges", "french-seam-press-ends"),
        )


def _does_not_close(step: SolvedStep, say: Phrasing, first: Fraction, trim: Fraction, second: Fraction) -> Fault | None:
    if trim >= second:
        return fault_at(
            step.written,
            "trim to",
            "FB331",
            f"a margin of {say.length(trim)} does not fit inside a second seam of {say.length(second)}"
            + (f", {say.length(trim - second)} too wide" if trim > second else ""),
            notes=("raw edges as wide as the second seam come out at its stitches",),
            help=f"trim to {say.length(second / 2)} or make the second seam wider",
        )
    if trim > first:
        return fault_at(
            step.written,
            "trim to",
            "FB331",
            f"a first seam of {say.length(first)} can't be trimmed to {say.length(trim)}, {say.length(trim - first)} more",
            help=f"trim to {say.length(first)} or less",
        )
    return None


def _bulky(step: SolvedStep, solved: Solved, seam: Seam) -> tuple[Fault, ...]:
    for piece in dict.fromkeys(ply.piece for ply in seam.plies):
        cloth = solved.pieces[piece].piece.cloth.text
        if (weight := gram_per_m2(solved, cloth)) > THICK:
            return (
                fault_at(
                    step.written,
                    None,
                    "FB332",
                    f"a French seam in `{cloth}` of {float(weight):.3g} g/m2 makes a ridge; it suits cloth up to {THICK} g/m2",
                    help="use a flat-felled or a bound seam",
                    severity=Severity.WARNING,
                ),
            )
    return ()


TECHNIQUE = FrenchSeam()
