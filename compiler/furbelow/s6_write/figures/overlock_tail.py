"""Fastening off the thread chain that an overlocker leaves at the end of a seam."""

from __future__ import annotations

from furbelow.garment.message import Length, Values
from furbelow.garment.technique import Performed
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import face, wave
from furbelow.s6_write.figures.language import ACCENT, HIDDEN, INK, PLAIN, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.neaten import TAIL

LEFT, END = 20.0, 230.0  # the cloth; the chain hangs on beyond its end
SCALE = 2.2  # units for a mm of chain


def overlock_tail(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The chain as it leaves the machine, then drawn back under the stitches."""
    if words.say.room.neaten_with != "overlocker":
        return None
    sheet = Sheet()
    number = numbers.at("neaten-chain")
    if number is None:
        return None
    words.read("figures-overlock-tail")
    values: Values = {"tail": Length(TAIL, "about")}
    sheet.head((8, 0), words.text("figure-tail-chain"))
    _edge(sheet, 26)
    long = float(TAIL) * SCALE
    sheet.line(_chain(END, 32, END + long), ACCENT, PLAIN)
    sheet.across(END, END + long, 62, words.text("figure-tail-length", values), 44, below=True)
    y = 112.0
    sheet.head((8, y), words.text("figure-tail-back"))
    _edge(sheet, y + 26)
    sheet.line(
        [(END, y + 32), (END + 20, y + 34), (END + 26, y + 44), (END + 12, y + 47), (END, y + 39)], ACCENT, PLAIN
    )
    back = END - float(TAIL) * SCALE * 0.6
    sheet.line([(END, y + 39), (back, y + 39)], ACCENT, THICK, HIDDEN)
    sheet.line([(back, y + 39), (back - 46, y + 66)], INK, THICK)  # the blunt needle
    sheet.disc((back - 47, y + 67), 2.4, INK)
    sheet.callout((END + 60, y + 42), number, (END + 26, y + 42))
    sheet.paragraph((END + 76, y + 40), words.text("figure-tail-needle"), 86)
    alt, caption = words.text("figure-tail-alt", values), words.text("figure-tail-caption")
    return sheet.figure("tail", alt, caption, like="tail")


def _edge(sheet: Sheet, y: float) -> None:
    """Cloth with an overlocked upper edge that ends on the right."""
    foot = y + 58
    cut = wave((LEFT, y), (LEFT, foot))
    face(sheet, [*cut, (END, foot), (END, y)], wrong=False)
    sheet.line(cut, SOFT, PLAIN)
    sheet.line([(LEFT, y), (END, y), (END, foot)], INK, PLAIN)
    count = 30
    points = [(LEFT + 4 + (END - LEFT - 4) * i / count, y + (16 if i % 2 else -2)) for i in range(count + 1)]
    sheet.line(points, INK, PLAIN)
    sheet.line([(LEFT + 4, y + 16), (END, y + 16)], INK, PLAIN)


def _chain(start: float, y: float, end: float) -> list[tuple[float, float]]:
    count = round((end - start) / 5)
    return [(start + (end - start) * i / count, y + (3 if i % 2 else -3)) for i in range(count + 1)]
