"""A bottom edge before its dip is cut: the line to cut along, and how far it lies above the edge at each mark."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.message import Length, Pieces, Values
from furbelow.garment.technique import Performed, edge_of, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.language import ACCENT, FINISHED, INK, SOFT, THICK, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet, shortened
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.dipped_hem import Dipped, rise_at

LEFT, RIGHT, TOP, LOW = 24.0, 376.0, 30.0, 124.0
DEEPEST = 56.0  # units that the largest rise is drawn
BETWEEN = 12  # points of the line between two marks
DOT = 2.2
ALONG = ("side", "front", "side", "back", "side")  # the places as they lie along the edge
NAMES = {"front": "figure-dipped-hem-front", "side": "figure-dipped-hem-side", "back": "figure-dipped-hem-back"}


def dipped_hem(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The edge laid out straight from side seam to side seam, its marks, and what is cut off hatched both ways."""
    words.read("figures-dipped-hem")
    facts = facts_of(done, Dipped)
    front, side, back = facts.rises
    rises = {"front": front, "side": side, "back": back}
    before = done.before.edge(edge_of(done.step.written, "edge"))
    values: Values = {"piece": Pieces(before.pieces), "front": Length(front), "side": Length(side)}
    sheet = Sheet()
    sheet.head((LEFT - 16, 0), shortened(words.text("figure-dipped-hem-head", values), 360, True))
    marks = [LEFT + (RIGHT - LEFT) * at / 4 for at in range(5)]
    line = _line(facts)
    face(sheet, [(LEFT, TOP), (RIGHT, TOP), (RIGHT, LOW), (LEFT, LOW)], wrong=False)
    sheet.lines(_hatched(line), SOFT, THIN)
    edge(sheet, (LEFT, LOW), (RIGHT, LOW), FINISHED[before.state], (0, -1))
    sheet.line(line, ACCENT, THICK)
    for at in range(4 * facts.steps + 1):
        sheet.disc(_on_line(facts, Fraction(at, facts.steps)), DOT, ACCENT, ACCENT, THIN)
    for place, x in zip(ALONG, marks, strict=True):
        sheet.line([(x, LOW - 6), (x, LOW + 6)], INK, THICK)
        anchor = "start" if x == LEFT else "end" if x == RIGHT else "middle"
        sheet.write((x, LOW + 22), words.text(NAMES[place]), anchor)
        sheet.write((x, LOW + 38), words.said(Length(rises[place]), place) if rises[place] else "0", anchor, bold=True)
    sheet.callout(((marks[1] + marks[2]) / 2 - 14, TOP + 14), numbers.at("dipped-hem-dots"), (marks[1], LOW - DEEPEST))
    sheet.callout(((marks[2] + marks[3]) / 2, TOP + 14), numbers.at("dipped-hem-cut"), line[len(line) * 5 // 8])
    alt, caption = (words.text(name, values) for name in ("figure-dipped-hem-alt", "figure-dipped-hem-caption"))
    return sheet.figure("dipped-hem", alt, caption)


def _line(facts: Dipped) -> list[Point]:
    """The curve through all dots."""
    return [_on_line(facts, Fraction(at, BETWEEN)) for at in range(4 * BETWEEN + 1)]


def _on_line(facts: Dipped, quarters: Fraction) -> Point:
    """Where the line lies so many quarters from the side seam, the front first."""
    from_front = abs(quarters - 1)
    rise = rise_at(facts.rises, min(from_front, 4 - from_front))
    return LEFT + (RIGHT - LEFT) * float(quarters) / 4, LOW - float(rise / facts.rises[0]) * DEEPEST


def _hatched(line: list[Point]) -> list[list[Point]]:
    """Strokes both ways over what lies between the line and the edge."""
    strokes = []
    for (x, y), (further, above) in zip(line, line[1:], strict=False):
        if max(y, above) < LOW - 3:
            strokes += [[(x, LOW - 1), (further, above)], [(further, LOW - 1), (x, y)]]
    return strokes
