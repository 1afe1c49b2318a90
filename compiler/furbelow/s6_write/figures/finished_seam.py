"""Cuts through seams that close their own raw edges: French, flat-felled and lapped."""

from __future__ import annotations

from furbelow.garment.bench import Ply
from furbelow.garment.message import Length, Own, Pieces, Values, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.language import PLAIN, SOFT
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import made_seam, sides, wrong_side
from furbelow.s6_write.figures.section import Section, captioned, named_below
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.flat_felled_seam import from_fold
from furbelow.techniques.lapped_seam import EDGE_STITCH

FAR = 30.0  # where the cloth is broken off, units from the left


def french_seam(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The second seam of a French seam at the machine, the trimmed margin of the first one inside."""
    words.read("figures-section", "figures-finished-seam")
    say = words.say
    first, trim, second = (done.step.mm(name) for name in ("first seam", "trim to", "second seam"))
    upper, lower = _outermost(done, say)
    values: Values = {
        "first": Length(first),
        "trim": Length(trim),
        "second": Length(second),
        "upper-label": Own(say.piece(upper.piece)),
        "lower-label": Own(say.piece(lower.piece)),
    }
    scale = min(14.0, 120 / float(second))
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-french-second"))
    cut = Section(sheet, (310, 96), scale)
    cut.ply(
        [(FAR, cut.at(0, 0)[1]), *cut.turn(-0.4, 0, 1), cut.at(-float(trim), 1)], -abs(wrong_side(say, lower, True))
    )
    cut.ply([(FAR, cut.at(0, 3)[1]), *cut.turn(-0.4, 3, 2), cut.at(-float(trim), 2)], abs(wrong_side(say, upper, True)))
    cut.stitch(-0.5, 1, 2, worked=False)
    tip = cut.stitch(-float(second), 0, 3)
    top = cut.at(0, 3)[1]
    sheet.across(
        cut.at(-float(second), 0)[0], cut.at(0.4, 0)[0], top - 24, words.said(Length(second), "seam-width"), top - 8
    )
    sheet.across(
        cut.at(-float(trim), 0)[0], cut.at(0.4, 0)[0], 116, words.text("figure-french-trimmed", values), 102, below=True
    )
    sheet.callout((tip[0] - 30, tip[1] - 14), numbers.at("french-seam-second-ring", "french-seam-second-flat"), tip)
    sheet.write((322, 84), words.text("figure-french-first"), colour=SOFT)
    named_below(sheet, 152, words.text("figure-french-plies", values))
    alt, caption = words.text("figure-french-alt", values), captioned(words, done, "figure-french-caption", values)
    return sheet.figure("seam", alt, caption)


def flat_felled_seam(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A felled seam, wrong side up: the wide margin of the lower edge folded around the trimmed one of the upper."""
    words.read("figures-section", "figures-finished-seam")
    say = words.say
    seam, trim, fell = (done.step.mm(name) for name in ("seam", "trim to", "fell"))
    upper, lower = _outermost(done, say)
    scale = min(12.0, 130 / float(fell))
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-felled-seen"))
    cut = Section(sheet, (140, 92), scale)
    under, wide = float(seam - fell), float(fell)
    trimmed = [(370.0, 92.0), *cut.turn(0.3, 0, 1, to_right=False), cut.at(float(trim), 1)]
    cut.ply(trimmed, -abs(wrong_side(say, upper, True)))
    over = [(FAR, 92.0), cut.at(-1.2, 0), cut.at(-0.4, 3), *cut.turn(wide, 3, 2), cut.at(wide - under, 2)]
    cut.ply(over, abs(wrong_side(say, lower, True)))
    cut.sheet.line([cut.at(-1.6, 0.9), cut.at(0.9, 0.9)], SOFT, PLAIN)
    tip = cut.stitch(wide - float(from_fold(done.step)), 0, 3)
    top = cut.at(0, 3)[1]
    sheet.across(cut.at(0, 0)[0], cut.at(wide, 0)[0], top - 24, words.said(Length(fell), "fell"), top - 8)
    sheet.across(cut.at(0, 0)[0], cut.at(float(trim), 0)[0], 112, words.said(Length(trim), "trim"), 98, below=True)
    sheet.callout(
        (tip[0] + 40, tip[1] - 10), numbers.at("flat-felled-seam-fell-ring", "flat-felled-seam-fell-flat"), tip
    )
    named_below(sheet, 148, say.piece(lower.piece), say.piece(upper.piece))
    values: Values = {"seam-width": Length(seam), "trim": Length(trim), "fell": Length(fell)}
    alt, caption = words.text("figure-felled-alt", values), captioned(words, done, "figure-felled-caption", values)
    return sheet.figure("seam", alt, caption)


def lapped_seam(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """One edge lapped over another, right side up."""
    words.read("figures-section", "figures-finished-seam")
    say = words.say
    turn, lap = done.step.mm("turn under"), done.step.mm("lap")
    upper, lower = _outermost(done, say)
    values: Values = {
        "upper": Pieces((upper.piece,)),
        "lower": Pieces((lower.piece,)),
        "turned": flag(turn),
        "lap": Length(lap),
        "from-fold": Length(EDGE_STITCH, "about"),
    }
    scale = min(10.0, 120 / float(max(turn, lap)))
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-right-side-up"))
    cut = Section(sheet, (230, 84), scale)
    ticked = abs(wrong_side(say, upper, True))
    level = 2 if turn else 1
    cut.ply([(370.0, 84.0), cut.at(-float(lap), 0)], abs(wrong_side(say, lower, True)))
    fold = [*cut.turn(0, 2, 1), cut.at(-float(turn), 1)] if turn else [cut.at(0, 1)]
    cut.ply([(FAR, cut.at(0, level)[1]), *fold], -ticked)
    tip = cut.stitch(-float(EDGE_STITCH), 0, level)
    top = cut.at(0, level)[1]
    sheet.across(
        cut.at(-float(EDGE_STITCH), 0)[0], cut.at(0, 0)[0], top - 22, words.value(values, "from-fold"), top - 8
    )
    sheet.across(cut.at(-float(lap), 0)[0], cut.at(0, 0)[0], 104, words.value(values, "lap"), 90, below=True)
    sheet.callout((tip[0] - 40, tip[1] - 12), numbers.at("lapped-seam-sew-ring", "lapped-seam-sew-flat"), tip)
    on_top = words.text("figure-lapped-upper", {"upper-label": say.piece(upper.piece)})
    underneath = words.text("figure-lapped-lower", {"lower-label": say.piece(lower.piece)})
    named_below(sheet, 140, on_top, underneath)
    alt, caption = words.text("figure-lapped-alt", values), captioned(words, done, "figure-lapped-caption", values)
    return sheet.figure("seam", alt, caption)


def _outermost(done: Performed, say: Phrasing) -> tuple[Ply, Ply]:
    seam = made_seam(done, say)
    assert seam is not None
    upper, lower = sides(done, seam)
    return upper[0], lower[0]
