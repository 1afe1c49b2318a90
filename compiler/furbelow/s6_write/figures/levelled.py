"""A top edge before it is levelled: the line to cut along, and how far it lies below the edge at each mark."""

from __future__ import annotations

from math import cos, pi

from furbelow.garment.matching import TakenUp
from furbelow.garment.message import Values, edge_said
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.language import ACCENT, FINISHED, INK, LEADING, SOFT, THICK, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet, shortened
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.level_waist import amounts_said

LEFT, RIGHT, TOP, LOW = 24.0, 376.0, 40.0, 130.0
DEEPEST = 44.0  # units that the largest take-up is drawn deep
BETWEEN = 12  # points of the line between two marks
ALONG = ("side", "front", "side", "back", "side")  # the places as they lie along the edge
NAMES = {"front": "figure-levelled-front", "side": "figure-levelled-side", "back": "figure-levelled-back"}


def levelled(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The edge laid out straight from side seam to side seam, its marks, and what is cut away hatched both ways."""
    words.read("figures-levelled", "level-waist")
    names, (front, side, back) = facts_of(done, TakenUp)
    taken = (side, front, side, back, side)
    scale = DEEPEST / float(max(taken))
    piece = done.before.edge(names[0])
    amounts = amounts_said((front, side, back))
    values: Values = {**amounts, "edge": edge_said(piece), "edges": len(names)}
    sheet = Sheet()
    heading = words.text("figure-levelled-edge", values)
    sheet.head((LEFT - 16, 0), shortened(heading, 360, True))
    marks = [LEFT + (RIGHT - LEFT) * at / 4 for at in range(5)]
    line = _line(marks, [TOP + float(each) * scale for each in taken])
    face(sheet, [(LEFT, TOP), (RIGHT, TOP), (RIGHT, LOW), (LEFT, LOW)], wrong=False)
    sheet.lines(_hatched(line), SOFT, THIN)
    edge(sheet, (LEFT, TOP), (RIGHT, TOP), FINISHED[piece.state], (0, 1))
    sheet.line(line, ACCENT, THICK)
    for place, x, amount in zip(ALONG, marks, taken, strict=True):
        sheet.line([(x, TOP - 6), (x, TOP + 6)], INK, THICK)
        anchor = "start" if x == LEFT else "end" if x == RIGHT else "middle"
        sheet.write((x, TOP - 12), words.text(NAMES[place]), anchor)
        sheet.write((x, LOW + 16), words.said(amounts[place]), anchor, bold=bool(amount))
    # The numbers of the sentences stand below what is cut away, in the middle of two quarters.
    sheet.callout(((marks[1] + marks[2]) / 2, LOW - 14), numbers.at("level-waist-dots"))
    sheet.callout(((marks[2] + marks[3]) / 2, LOW - 14), numbers.at("level-waist-cut"))
    sheet.paragraph((LEFT - 16, LOW + 20 + LEADING), words.text("figure-levelled-drawn", values), 376)
    alt, caption = (words.text(name, values) for name in ("figure-levelled-alt", "figure-levelled-caption"))
    return sheet.figure("levelled", alt, caption)


def _line(marks: list[float], depths: list[float]) -> list[Point]:
    """A smooth line through the marks, level at each."""
    points = [(marks[0], depths[0])]
    for at in range(4):
        for step in range(1, BETWEEN + 1):
            share = (1 - cos(pi * step / BETWEEN)) / 2
            x = marks[at] + (marks[at + 1] - marks[at]) * step / BETWEEN
            points.append((x, depths[at] + (depths[at + 1] - depths[at]) * share))
    return points


def _hatched(line: list[Point]) -> list[list[Point]]:
    """Strokes both ways over what lies between the edge and the line."""
    strokes = []
    for (x, y), (further, below) in zip(line, line[1:], strict=False):
        if min(y, below) > TOP + 3:
            strokes += [[(x, TOP + 1), (further, below)], [(further, TOP + 1), (x, y)]]
    return strokes
