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
    Sewn,
    edge_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.either_seam import WHERE, new_seam, seam_words, sewn_either, takes_either
from furbelow.techniques.join_ends import PINS, tag
from furbelow.techniques.neaten import BLADES
from furbelow.techniques.press import iron_caution


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
        rows = ("seam", "felling")
        sewn = (
            Sewn(StitchType.LOCK, seam.length, seam.copies, room.seam_stitch, f"{row}, {done.sewn[0].what}")
            for row in rows
        )
        return done._replace(
            after=done.after.with_seams(seam),
            sewn=tuple(sewn),
            pinned=2 * done.pinned,
            handled=2 * seam.length * seam.copies,
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        seam, step = new_seam(done), done.step
        seam_is, ends = seam_words(done, say)
        width, trim, fell = (say.length(step.mm(key)) for key in ("seam", "trim to", "fell"))
        under = say.length(step.mm("seam") - step.mm("fell"))
        chain, pin = say.chain(seam.copies), "clip" if say.room.hold_with == "clips" else "pin"
        length = say.length(seam.length)
        actions = (
            OwnAction(f"Lay {ends} right sides together, level, and {pin} them.", chain=chain),
            OwnAction(f"Sew {width} from the edge, {say.stitch(done.sewn[0].stitch)}, {length}.", chain=chain),
            OwnAction(
                f"Trim only the lower margin to {trim}.",
                check=f"The upper margin is still {width} wide.",
                chain=chain,
            ),
            OwnAction(f"Fold {under} of the wide margin under, over the trimmed one, and press it.", chain=chain),
            OwnAction(
                f"Lay the fold flat on {say.the(seam.turned)} and {pin} it.",
                check=f"The fold is {fell} wide all along and no raw edge shows.",
                tolerance=f"{say.about(Fraction(1))} more or less",
                remedy="Where a raw edge shows, trim the lower margin there and fold again.",
                chain=chain,
            ),
            OwnAction(
                f"Sew close to the fold, {length}.",
                check="Both rows run side by side.",
                remedy="Unpick where the row left the fold and sew it again.",
                chain=chain,
            ),
            *(tag(done, done.touches, say) if "of" in step.written.args else ()),
        )
        return OwnInstructions(
            f"Flat-felled seam: {seam_is}",
            "The seam lies flat and no raw edge shows on either side.",
            actions,
            (PINS, iron_caution(done, say), BLADES),
        )


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
