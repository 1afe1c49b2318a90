"""Two rings that are sewn together: one slipped over the other, which face is where, edges level."""

from __future__ import annotations

from collections.abc import Iterator
from math import cos, pi, sin

from furbelow.garment.message import Length, One, Values, edge_said
from furbelow.garment.technique import Performed, edge_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import face
from furbelow.s6_write.figures.hanging import edge_now
from furbelow.s6_write.figures.language import ACCENT, FOLD, HEAVY, INK, LEADING, PLAIN, SOFT, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

MIDDLE = 270.0
WORDS = 142.0  # units for the words at the left
INNER, OUTER, HEM = 62.0, 72.0, 104.0  # half widths: the ring inside, the one outside, the hem of the one inside
ROUND = 0.16  # height of a mouth for its width
PINNED = ("attach-pin-gathers", "attach-pin-pleats", "attach-pin-flat")
SEAM_AT = -0.4  # where the side seams lie, of a half width


def ring_over_ring(done: Performed, run: Run, words: Words, numbers: Numbers) -> Iterator[Figure]:
    """Both rings apart, then one over the other, a drawing each; none where the edges are flat."""
    before = done.before
    edge, to = before.edge(edge_of(done.step.written, "edge")), before.edge(edge_of(done.step.written, "to"))
    if not before.ring(to):
        return
    words.read("figures-ring-over-ring")
    values: Values = {
        "over": edge_said(to),
        "inside": edge_said(edge),
        "side": One(to.name.rpartition(".")[2] if "." in to.name else "stack", ("top", "bottom", "stack")),
        "length": Length(to.set_length),
    }

    def said(message: str) -> str:
        return words.text(message, values)

    drawn_in = bool(edge_now(before, edge.name).gathered)
    sheet = Sheet()
    sheet.write((8, 0), said("figure-rings-slip"), bold=True)
    _words(sheet, 34, said("figure-rings-over"), said("figure-rings-over-how"))
    _ring(sheet, 30, 70, OUTER, OUTER, wrong=True)
    _mouth_front(sheet, 30, OUTER, False)
    sheet.arrow((MIDDLE, 84), (MIDDLE, 106), ACCENT, 2.4, 10)
    sheet.callout((MIDDLE + 24, 94), numbers.at("attach-slip", "attach-slip-tails"))
    _words(sheet, 140, said("figure-rings-inside"), said("figure-rings-inside-how"))
    _ring(sheet, 126, 172, INNER, HEM, wrong=False)
    _mouth_front(sheet, 126, INNER, drawn_in)
    sheet.callout((MIDDLE + HEM + 12, 142), numbers.at("attach-turn"), (MIDDLE + INNER + 8, 148))
    yield Figure("rings", sheet.svg(), said("figure-rings-alt"), "")
    sheet, top = Sheet(), 36.0
    sheet.write((8, 0), said("figure-rings-level"), bold=True)
    _ellipse(sheet, top, OUTER, wrong=False)
    _ellipse(sheet, top, INNER, wrong=True)
    _body(sheet, top, top + 84, INNER, HEM, wrong=False)
    _body(sheet, top, top + 46, OUTER, OUTER, wrong=True)
    _mouth_front(sheet, top, INNER, drawn_in)
    _mouth_front(sheet, top, OUTER, False)
    low = _label(sheet, top + 2, said("figure-rings-cut-edges"), (MIDDLE - OUTER, top), True)
    low = max(top + 38, low + 2)
    low = _label(sheet, low, said("figure-rings-wrong-side"), (MIDDLE - OUTER, top + 34), False)
    low = max(top + 76, low + 2)
    _label(sheet, low, said("figure-rings-right-side"), (MIDDLE - 0.85 * HEM, top + 76), False)
    sheet.callout((MIDDLE + OUTER + 30, top + 26), numbers.at(*PINNED), (MIDDLE + SEAM_AT * OUTER, top + 26))
    low = sheet.bottom + LEADING + 8
    sheet.write((sheet.width / 2, low), said("figure-rings-note"), "middle", colour=SOFT)
    yield Figure("rings-level", sheet.svg(), said("figure-rings-level-alt"), said("figure-rings-caption"))


def _words(sheet: Sheet, y: float, name: str, how: str) -> None:
    y = sheet.paragraph((8, y), name, WORDS, bold=True)
    sheet.paragraph((8, y), how, WORDS)


def _label(sheet: Sheet, y: float, words: str, to: Point, worked: bool) -> float:
    """Words with a line to what they name; the base line after the last of them."""
    low = sheet.paragraph((8, y), words, WORDS, bold=worked, colour=ACCENT if worked else INK)
    middle = (y + low - LEADING) / 2 - 4
    sheet.line([(WORDS + 12, middle), to], ACCENT if worked else SOFT, THIN)
    return low


def _curve(y: float, half: float, front: bool) -> list[Point]:
    """The near or the far half of a mouth, from left to right."""
    way = 1 if front else -1
    return [(MIDDLE - half * cos(pi * i / 24), y + way * half * ROUND * sin(pi * i / 24)) for i in range(25)]


def _ellipse(sheet: Sheet, y: float, half: float, wrong: bool) -> None:
    face(sheet, [*_curve(y, half, False), *reversed(_curve(y, half, True))], wrong)
    sheet.line(_curve(y, half, False), INK, PLAIN)


def _body(sheet: Sheet, y: float, low: float, half: float, below: float, wrong: bool) -> None:
    foot = _curve(low, below, True)
    face(sheet, [*_curve(y, half, True), *reversed(foot)], wrong)
    sheet.line(foot, INK, PLAIN)
    for way in (-1, 1):
        sheet.line([(MIDDLE + way * half, y), (MIDDLE + way * below, low)], INK, PLAIN, FOLD)
    rise = (1 - SEAM_AT**2) ** 0.5 * ROUND
    sheet.line([(MIDDLE + SEAM_AT * half, y + rise * half), (MIDDLE + SEAM_AT * below, low + rise * below)], INK, 1.8)


def _ring(sheet: Sheet, y: float, low: float, half: float, below: float, wrong: bool) -> None:
    _ellipse(sheet, y, half, not wrong)
    _body(sheet, y, low, half, below, wrong)


def _mouth_front(sheet: Sheet, y: float, half: float, drawn_in: bool) -> None:
    """The edge that is sewn, with short folds below it where it is gathered."""
    curve = _curve(y, half, True)
    sheet.line(curve, ACCENT, HEAVY)
    sheet.line(_curve(y, half, False), ACCENT, 1.6)
    if drawn_in:
        sheet.lines(
            [
                [(x, at + 3), (x + (x - MIDDLE) * 0.05, at + (14 if i % 2 else 9))]
                for i, (x, at) in enumerate(curve[1:-1])
            ],
            INK,
            THIN,
        )
