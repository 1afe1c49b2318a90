"""Two rings that are sewn together: one slipped over the other, which face is where, edges level."""

from __future__ import annotations

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

APART, TOGETHER = 96.0, 304.0  # middles of the two views
WORDS = 184.0  # units for the words of a view
INNER, OUTER, HEM = 54.0, 63.0, 88.0  # half widths: the ring inside, the one outside, the hem of the one inside
ROUND = 0.16  # height of a mouth for its width
SEAM_AT = -0.4  # where the side seams lie, of a half width


def ring_over_ring(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """Both rings apart, and beside that one over the other; none where the edges are flat."""
    before = done.before
    edge, to = before.edge(edge_of(done.step.written, "edge")), before.edge(edge_of(done.step.written, "to"))
    if not before.ring(to):
        return None
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
    top = max(_named(sheet, APART, said("figure-rings-over"), said("figure-rings-over-how")), 26) + 6
    _ring(sheet, APART, top, top + 40, OUTER, OUTER, wrong=True)
    _mouth_front(sheet, APART, top, OUTER, False)
    sheet.arrow((APART, top + 54), (APART, top + 74), ACCENT, 2.4, 10)
    sheet.callout((APART + 24, top + 64), numbers.at("attach-slip", "attach-slip-tails"))
    low = top + 92
    _ring(sheet, APART, low, low + 46, INNER, HEM, wrong=False)
    _mouth_front(sheet, APART, low, INNER, drawn_in)
    sheet.callout((APART + HEM, low + 10), numbers.at("attach-turn"), (APART + INNER + 8, low + 18))
    foot = low + 46 + HEM * ROUND + 18
    end = _named(sheet, APART, said("figure-rings-inside"), said("figure-rings-inside-how"), foot)

    head = _written(sheet, TOGETHER, said("figure-rings-level"), 0, bold=True, colour=ACCENT)
    level = top + 34
    _ellipse(sheet, TOGETHER, level, OUTER, wrong=False)
    _ellipse(sheet, TOGETHER, level, INNER, wrong=True)
    _body(sheet, TOGETHER, level, low + 46, INNER, HEM, wrong=False)
    _body(sheet, TOGETHER, level, level + 46, OUTER, OUTER, wrong=True)
    _mouth_front(sheet, TOGETHER, level, INNER, drawn_in)
    _mouth_front(sheet, TOGETHER, level, OUTER, False)
    _label(sheet, head, said("figure-rings-wrong-side"), (TOGETHER + 0.5 * OUTER, level + 34))
    end = max(end, _written(sheet, TOGETHER, said("figure-rings-right-side"), foot))
    sheet.line([(TOGETHER, foot - 12), (TOGETHER, low + 30)], SOFT, THIN)
    sheet.write((sheet.width / 2, end + 6), said("figure-rings-note"), "middle", colour=SOFT)
    return sheet.figure("rings", said("figure-rings-alt"), said("figure-rings-caption"))


def _named(sheet: Sheet, middle: float, name: str, how: str, y: float = 0) -> float:
    return _written(sheet, middle, how, _written(sheet, middle, name, y, bold=True))


def _written(sheet: Sheet, middle: float, words: str, y: float, bold: bool = False, colour: str = INK) -> float:
    """Words in the middle of a view; the base line after the last of them."""
    return sheet.paragraph((middle, y), words, WORDS, "middle", bold, colour)


def _label(sheet: Sheet, y: float, words: str, to: Point) -> None:
    """Words with a line down to what they name."""
    low = _written(sheet, TOGETHER, words, y)
    sheet.line([(to[0], low - LEADING + 5), to], SOFT, THIN)


def _curve(middle: float, y: float, half: float, front: bool) -> list[Point]:
    """The near or the far half of a mouth, from left to right."""
    way = 1 if front else -1
    return [(middle - half * cos(pi * i / 24), y + way * half * ROUND * sin(pi * i / 24)) for i in range(25)]


def _ellipse(sheet: Sheet, middle: float, y: float, half: float, wrong: bool) -> None:
    face(sheet, [*_curve(middle, y, half, False), *reversed(_curve(middle, y, half, True))], wrong)
    sheet.line(_curve(middle, y, half, False), INK, PLAIN)


def _body(sheet: Sheet, middle: float, y: float, low: float, half: float, below: float, wrong: bool) -> None:
    foot = _curve(middle, low, below, True)
    face(sheet, [*_curve(middle, y, half, True), *reversed(foot)], wrong)
    sheet.line(foot, INK, PLAIN)
    for way in (-1, 1):
        sheet.line([(middle + way * half, y), (middle + way * below, low)], INK, PLAIN, FOLD)
    rise = (1 - SEAM_AT**2) ** 0.5 * ROUND
    seam = [(middle + SEAM_AT * half, y + rise * half), (middle + SEAM_AT * below, low + rise * below)]
    sheet.line(seam, INK, 1.8)


def _ring(sheet: Sheet, middle: float, y: float, low: float, half: float, below: float, wrong: bool) -> None:
    _ellipse(sheet, middle, y, half, not wrong)
    _body(sheet, middle, y, low, half, below, wrong)


def _mouth_front(sheet: Sheet, middle: float, y: float, half: float, drawn_in: bool) -> None:
    """The edge that is sewn, with short folds below it where it is gathered."""
    curve = _curve(middle, y, half, True)
    sheet.line(curve, ACCENT, HEAVY)
    sheet.line(_curve(middle, y, half, False), ACCENT, 1.6)
    if drawn_in:
        folds = [
            [(x, at + 3), (x + (x - middle) * 0.05, at + (14 if i % 2 else 9))] for i, (x, at) in enumerate(curve[1:-1])
        ]
        sheet.lines(folds, INK, THIN)
