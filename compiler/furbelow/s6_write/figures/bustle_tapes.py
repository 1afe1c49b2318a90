"""A tape with rings inside the back of a skirt: let down, and drawn up by its cord; lengths down the tape to scale."""

from __future__ import annotations

from furbelow.garment.message import Length, Values
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, INK, PLAIN, THICK, WRONG_SIDE
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.bustle_tapes import Taped

HIGH, WIDE = 190.0, 96.0  # units for the whole way from the top edge to the lowest ring, and for each view
TAPE, RING = 8.0, 3.4
VIEWS = (46.0, 262.0)  # the left side of each view


def bustle_tapes(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The skirt inside out, once with the tape let down and once with it drawn up."""
    words.read("figures-bustle-tapes")
    facts = facts_of(done, Taped)
    every = facts.long / (facts.rings - 1)
    values: Values = {
        "tapes": facts.many,
        "apart": Length(facts.apart),
        "below": Length(facts.below),
        "long": Length(facts.long),
        "rings": facts.rings,
        "every": Length(every),
        "left": Length(facts.long - facts.up),
        "up": Length(facts.up),
    }
    scale = HIGH / float(facts.below + facts.long)
    sheet, top = Sheet(), 40.0
    first, hem = top + float(facts.below) * scale, top + HIGH + 34
    for left, drawn in zip(VIEWS, (False, True), strict=True):
        long = float(facts.long - (facts.up if drawn else 0)) * scale
        low = hem - (float(facts.up) * scale if drawn else 0)
        head = words.text("figure-bustle-tapes-up" if drawn else "figure-bustle-tapes-down")
        sheet.write((left - 38, 8), head, bold=True)
        face(sheet, [(left, top), (left + WIDE, top), (left + WIDE, low), (left, low)], wrong=True)
        edge(sheet, (left, top), (left + WIDE, top), "hemmed", (0, 1))
        edge(sheet, (left, low), (left + WIDE, low), "hemmed", (0, -1))
        middle = left + WIDE / 2
        if drawn:
            for at in range(facts.rings - 1):
                y = first + long * (at + 0.5) / (facts.rings - 1)
                sheet.line(wave((left + 6, y), (left + WIDE - 6, y)), INK, PLAIN)
        sheet.area(
            [
                (middle - TAPE, first),
                (middle + TAPE, first),
                (middle + TAPE, first + long),
                (middle - TAPE, first + long),
            ],
            WRONG_SIDE,
            INK,
        )
        sheet.line([(middle, first - 12), (middle, first + long)], ACCENT, THICK)
        for at in range(facts.rings):
            sheet.disc((middle, first + long * at / (facts.rings - 1)), RING, WRONG_SIDE, INK, PLAIN)
        said = values["left"] if drawn else values["long"]
        sheet.upright(first, first + long, left + WIDE + 14, words.said(said), left + WIDE + 2)
        if not drawn:
            sheet.upright(top, first, left + WIDE + 14, words.said(values["below"]), left + WIDE + 2)
            sheet.callout((left + 12, first + 24), numbers.at("bustle-tapes-rings"), (middle - TAPE, first + 24))
            sheet.callout((left + 12, first + long - 10), numbers.at("bustle-tapes-thread"), (middle, first + long))
        else:
            sheet.callout((left + 12, first - 14), numbers.at("bustle-tapes-draw"), (middle, first - 10))
            sheet.upright(low, hem, left + WIDE + 14, words.said(values["up"]), left + WIDE + 2)
    alt, caption = (words.text(name, values) for name in ("figure-bustle-tapes-alt", "figure-bustle-tapes-caption"))
    return Figure("bustle-tapes", sheet.svg(), alt, caption)
