"""A casing seen flat: divided in channels by its rows, or with the end of its elastic buttoned on beside the gap."""

from __future__ import annotations

from furbelow.garment.message import Length, Pieces, Values, flag
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import face, wave
from furbelow.s6_write.figures.language import ACCENT, ELASTIC, FOLD, HIDDEN, INK, PLAIN, SEAM, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.adjustable_elastic import REACH, Buttoned
from furbelow.techniques.divide_casing import Divided
from furbelow.techniques.shared.casings import EDGE_STITCH

LEFT, RIGHT, TOP = 30.0, 320.0, 26.0
DEEP = 110.0  # units for the casing
BELOW = 40.0  # of cloth below it


def channels(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The casing from the side of its row, its depth to scale: the fold, the new rows, and the gap where they leave one."""
    words.read("figures", "figures-casing-inside")
    casing, rows = facts_of(done, Divided)
    values: Values = {
        "piece": Pieces((casing.piece,)),
        "channels": casing.channels,
        "rows": rows,
        "channel": Length(casing.width),
        "gap": Length(casing.gap),
        "open": flag(casing.left_open),
    }
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-channels-head"))
    deep = float(casing.width) * casing.channels + float(EDGE_STITCH)
    scale = DEEP / deep
    low = _cloth(sheet, TOP + DEEP)
    open_at = (130.0, 220.0) if casing.left_open else None
    step = float(casing.width) * scale
    for number in range(1, casing.channels + 1):
        y = TOP + number * step
        new = number < casing.channels
        _row(sheet, y, open_at, ACCENT if new else INK)
        sheet.upright(y - step, y, RIGHT + 8, words.value(values, "channel"), RIGHT)
    if open_at:
        sheet.across(*open_at, low + 16, words.value(values, "gap"), TOP + step, below=True)
    sewn = numbers.at("divide-casing-sew-gap", "divide-casing-sew")
    sheet.callout((LEFT + 34, TOP + step - 18), sewn, (LEFT + 58, TOP + step))
    sheet.write((sheet.width / 2, low + 48), words.text("figure-channels-note"), "middle", colour=SOFT)
    alt, caption = words.text("figure-channels-alt", values), words.text("figure-channels-caption", values)
    return sheet.figure("channels", alt, caption)


def buttoned_elastic(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The inside of the casing at its gap: the fast end dotted, the other out of the gap and over its button."""
    words.read("figures", "figures-casing-inside")
    facts = facts_of(done, Buttoned)
    casing = facts.casing
    values: Values = {
        "piece": Pieces((casing.piece,)),
        "reach": Length(REACH),
        "first": Length(facts.first),
        "out": Length(facts.out),
    }
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-buttoned-head"))
    low = _cloth(sheet, TOP + DEEP / 2)
    row, middle = TOP + DEEP / 2 - 6, TOP + DEEP / 4
    gap = (190.0, 230.0)
    _row(sheet, row, gap if casing.left_open else None, INK)
    high, foot = middle - 12, middle + 12
    # It comes round inside from the right, out of the gap and on over the fast end, which lies inside on the left.
    sheet.line([(RIGHT - 4, high), (gap[1], high)], SOFT, PLAIN, HIDDEN)
    sheet.line([(RIGHT - 4, foot), (gap[1], foot)], SOFT, PLAIN, HIDDEN)
    end, button = gap[0] - 96, gap[0] - 63
    sheet.line(
        [(end, high), (gap[1] - 6, high), (gap[1] - 6, foot), (end, foot)], INK, PLAIN, fill=ELASTIC, closed=True
    )
    for at in range(5):
        x = button - 27 + 22 * at
        sheet.line([(x, middle), (x + 10, middle)], INK, THICK)
    sheet.disc((button, middle), 8, "none", ACCENT, THICK)
    fast = gap[0] - 8
    sheet.lines(
        [[(fast - 4, high + 4), (fast + 4, foot - 4)], [(fast - 4, foot - 4), (fast + 4, high + 4)]], ACCENT, THICK
    )
    sheet.across(button, gap[0], low + 16, words.value(values, "reach"), foot, below=True)
    sheet.callout((fast + 40, TOP - 14), numbers.at("adjustable-elastic-fast"), (fast + 3, high + 3))
    sheet.callout((button - 46, TOP - 14), numbers.at("adjustable-elastic-button"), (button - 6, middle - 6))
    sheet.write((sheet.width / 2, low + 48), words.text("figure-buttoned-note"), "middle", colour=SOFT)
    alt, caption = words.text("figure-buttoned-alt", values), words.text("figure-buttoned-caption", values)
    return sheet.figure("buttoned-elastic", alt, caption)


def _cloth(sheet: Sheet, low: float) -> float:
    """The casing with its fold above and cloth below, broken off; where the drawing ends."""
    foot = low + BELOW
    sides = [wave((x, TOP), (x, foot)) for x in (LEFT, RIGHT)]
    face(sheet, [(LEFT, TOP), (RIGHT, TOP), *sides[1][1:], *reversed(sides[0])], wrong=False)
    for side in sides:
        sheet.line(side, SOFT, PLAIN)
    sheet.line([(LEFT, TOP), (RIGHT, TOP)], INK, PLAIN, FOLD)
    return foot


def _row(sheet: Sheet, y: float, gap: tuple[float, float] | None, colour: str) -> None:
    for start, end in ((LEFT, gap[0]), (gap[1], RIGHT)) if gap else ((LEFT, RIGHT),):
        sheet.line([(start, y), (end, y)], colour, THICK, SEAM)
