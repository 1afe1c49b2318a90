"""Cuts through seams that close their own raw edges: French, flat-felled and lapped."""

from __future__ import annotations

from furbelow.garment.bench import Ply
from furbelow.garment.technique import Performed
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.language import PLAIN, SOFT
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import new_seam, sides, wrong_side
from furbelow.s6_write.figures.section import Section, named_below, note_below, sides_told
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.lapped_seam import EDGE_STITCH

FAR = 30.0  # where the cloth is broken off, units from the left


def french_seam(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The second seam of a French seam at the machine, the trimmed margin of the first one inside."""
    say = words.say
    first, trim, second = (done.step.mm(name) for name in ("first seam", "trim to", "second seam"))
    upper, lower = _outermost(done)
    scale = min(14.0, 120 / float(second))
    sheet = Sheet()
    sheet.write((8, 0), "The second seam, at the machine", bold=True)
    cut = Section(sheet, (310, 96), scale)
    cut.ply(
        [(FAR, cut.at(0, 0)[1]), *cut.turn(-0.4, 0, 1), cut.at(-float(trim), 1)], -abs(wrong_side(say, lower, True))
    )
    cut.ply([(FAR, cut.at(0, 3)[1]), *cut.turn(-0.4, 3, 2), cut.at(-float(trim), 2)], abs(wrong_side(say, upper, True)))
    cut.stitch(-0.5, 1, 2, worked=False)
    tip = cut.stitch(-float(second), 0, 3)
    top = cut.at(0, 3)[1]
    sheet.across(cut.at(-float(second), 0)[0], cut.at(0.4, 0)[0], top - 24, say.length(second), top - 8)
    sheet.across(cut.at(-float(trim), 0)[0], cut.at(0.4, 0)[0], 116, f"trimmed to {say.length(trim)}", 102, below=True)
    sheet.callout((tip[0] - 30, tip[1] - 14), numbers.at("french-seam-second"), tip)
    sheet.write((322, 84), "first seam", colour=SOFT)
    low = named_below(sheet, 152, f"{say.piece(upper.piece)} above, {say.piece(lower.piece)} below")
    note_below(sheet, low)
    alt = (
        f"Cut through a French seam, right sides together: the first seam of {say.length(first)} lies on the fold, its margin"
        f" trimmed to {say.length(trim)} between the plies; the second row runs {say.length(second)} from the fold."
    )
    return Figure("seam", sheet.svg(), alt, f"The raw edges lie inside the second seam.{sides_told(done, say)}")


def flat_felled_seam(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A felled seam, wrong side up: the wide margin folded around the trimmed one."""
    say = words.say
    seam, trim, fell = (done.step.mm(name) for name in ("seam", "trim to", "fell"))
    upper, lower = _outermost(done)
    scale = min(12.0, 130 / float(fell))
    sheet = Sheet()
    sheet.write((8, 0), "Wrong side up", bold=True)
    cut = Section(sheet, (140, 92), scale)
    under, wide = float(seam - fell), float(fell)
    ticked = abs(wrong_side(say, upper, True))
    trimmed = [(370.0, 92.0), *cut.turn(0.3, 0, 1, to_right=False), cut.at(float(trim), 1)]
    cut.ply(trimmed, -ticked)
    over = [(FAR, 92.0), cut.at(-1.2, 0), cut.at(-0.4, 3), *cut.turn(wide, 3, 2), cut.at(wide - under, 2)]
    cut.ply(over, ticked)
    cut.sheet.line([cut.at(-1.6, 0.9), cut.at(0.9, 0.9)], SOFT, PLAIN)
    tip = cut.stitch(wide - 1.5, 0, 3)
    top = cut.at(0, 3)[1]
    sheet.across(cut.at(0, 0)[0], cut.at(wide, 0)[0], top - 24, say.length(fell), top - 8)
    sheet.across(cut.at(0, 0)[0], cut.at(float(trim), 0)[0], 112, say.length(trim), 98, below=True)
    sheet.callout((tip[0] + 40, tip[1] - 10), numbers.at("flat-felled-seam-fell"), tip)
    low = named_below(sheet, 148, say.piece(upper.piece), say.piece(lower.piece))
    note_below(sheet, low)
    alt = (
        f"Cut through a flat-felled seam, wrong side up: a margin of {say.length(seam)} folded around one trimmed to"
        f" {say.length(trim)}, laid flat {say.length(fell)} wide and stitched along its fold."
    )
    return Figure("seam", sheet.svg(), alt, f"The wide margin closes over the narrow one.{sides_told(done, say)}")


def lapped_seam(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """One edge lapped over another, right side up."""
    say = words.say
    turn, lap = done.step.mm("turn under"), done.step.mm("lap")
    seam = new_seam(done)
    if seam is None:
        return None
    lower, upper = (plies[0] for plies in sides(done, seam))
    if str(done.step.written.args["edge"].value).partition(".")[0] not in (upper.piece, ""):
        upper, lower = lower, upper
    scale = min(10.0, 120 / float(max(turn, lap)))
    sheet = Sheet()
    sheet.write((8, 0), "Right side up", bold=True)
    cut = Section(sheet, (230, 84), scale)
    ticked = abs(wrong_side(say, upper, True))
    level = 2 if turn else 1
    cut.ply([(370.0, 84.0), cut.at(-float(lap), 0)], abs(wrong_side(say, lower, True)))
    fold = [*cut.turn(0, 2, 1), cut.at(-float(turn), 1)] if turn else [cut.at(0, 1)]
    cut.ply([(FAR, cut.at(0, level)[1]), *fold], -ticked)
    tip = cut.stitch(-float(EDGE_STITCH), 0, level)
    top = cut.at(0, level)[1]
    sheet.across(cut.at(-float(EDGE_STITCH), 0)[0], cut.at(0, 0)[0], top - 22, say.about(EDGE_STITCH), top - 8)
    sheet.across(cut.at(-float(lap), 0)[0], cut.at(0, 0)[0], 104, say.length(lap), 90, below=True)
    sheet.callout((tip[0] - 40, tip[1] - 12), numbers.at("lapped-seam-sew"), tip)
    low = named_below(sheet, 140, f"{say.piece(upper.piece)}, on top", f"{say.piece(lower.piece)}, underneath")
    note_below(sheet, low)
    alt = (
        f"Cut through a lapped seam, right side up: the {say.piece(upper.piece)} over the {say.piece(lower.piece)} by"
        f" {say.length(lap)}, sewn {say.about(EDGE_STITCH)} from the fold."
    )
    return Figure("seam", sheet.svg(), alt, f"The upper edge lies on the lower one.{sides_told(done, say)}")


def _outermost(done: Performed) -> tuple[Ply, Ply]:
    seam = new_seam(done)
    assert seam is not None
    upper, lower = sides(done, seam)
    return upper[0], lower[0]
