"""A cord in its casing: both ends out of the gap, bars beside the gap, its length against the casing."""

from __future__ import annotations

from furbelow.garment.message import Length, Values, flag
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.elastic import CasingView
from furbelow.s6_write.figures.language import ACCENT, HIDDEN, INK, MARGIN, PLAIN, RIGHT_SIDE, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.drawstring import Threaded


def drawstring(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The cord through the channel, and the two lengths to one scale."""
    words.read("figures", "figures-drawstring")
    facts = facts_of(done, Threaded)
    casing, cut = facts.casing, facts.cut
    if casing.flat or casing.holes:
        return None  # no gap to show: the cord goes in at one end or hole and out at the other
    values: Values = {
        "gap": Length(casing.gap),
        "casing": Length(casing.length),
        "cut": Length(cut),
        "knotted": flag(facts.knotted),
    }
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-cord-through"))
    view = CasingView(sheet, casing, 32, words, in_front=True)
    view.casing()
    middle, foot = (view.top + view.low) / 2, view.low + 40
    for gap, way, far in ((view.left, -1, 30.0), (view.right, 1, 370.0)):
        sheet.line([(far, middle), (gap + 22 * way, middle), (gap - 6 * way, view.low)], INK, THICK, HIDDEN)
        end = (gap - 16 * way, foot)
        sheet.line([(gap - 6 * way, view.low), end], INK, 3.0)
        if facts.knotted:
            sheet.disc(end, 4.5, INK)
        else:  # folded under: twice as thick
            sheet.line([((gap - 6 * way + 3 * end[0]) / 4, (view.low + 3 * foot) / 4), end], INK, 6.0)
        # The bar of zigzag that keeps the gap from tearing further.
        points = [(gap + (3 if i % 2 else -3), view.low - 14 + 3 * i) for i in range(7)]
        sheet.line(points, ACCENT, THICK)
    sheet.callout((view.right + 34, view.low + 20), numbers.at("drawstring-bars"), (view.right + 3, view.low))
    sheet.callout((view.right + 60, middle - 14), numbers.at("drawstring-thread"), (view.right + 60, middle))
    sheet.callout(
        (view.left - 30, foot - 12), numbers.at("drawstring-knot", "drawstring-fold"), (view.left + 12, foot - 2)
    )
    sheet.across(view.left, view.right, foot + 28, words.text("figure-gap", values), view.low + 4, below=True)
    y = foot + 74
    sheet.head((8, y), words.text("figure-cord-lengths"))
    scale = (sheet.width - 2 * MARGIN) / float(max(casing.length, cut))
    y += 14
    far = MARGIN + float(casing.length) * scale
    sheet.line([(MARGIN, y), (far, y), (far, y + 12), (MARGIN, y + 12)], INK, PLAIN, fill=RIGHT_SIDE, closed=True)
    sheet.write((MARGIN, y + 27), words.text("figure-cord-casing", values))
    sheet.line([(MARGIN, y + 44), (MARGIN + float(cut) * scale, y + 44)], INK, 3.0)
    sheet.write((MARGIN, y + 62), words.text("figure-cord-length", values))
    sheet.write((sheet.width / 2, y + 84), words.text("figure-cord-behind"), "middle", colour=SOFT)
    return sheet.figure("cord", words.text("figure-cord-alt", values), words.text("figure-cord-caption"))
