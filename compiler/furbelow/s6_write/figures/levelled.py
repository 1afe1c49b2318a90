"""A top edge before it is levelled: the line to cut along, and how far it lies below the edge at each mark."""

from __future__ import annotations

from math import cos, pi

from furbelow.garment.technique import Performed
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.language import ACCENT, INK, LEADING, SOFT, THICK, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet, shortened
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

LEFT, RIGHT, TOP, LOW = 24.0, 376.0, 40.0, 130.0
DEEPEST = 44.0  # units that the largest take-up is drawn deep
BETWEEN = 12  # points of the line between two marks
NAMES = ("side", "front", "side", "back", "side")


def levelled(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The edge laid out straight from side seam to side seam, its marks, and what is cut away hatched both ways."""
    say = words.say
    front, side, back = done.facts["taken"]
    taken = (side, front, side, back, side)
    scale = DEEPEST / float(max(taken))
    names = done.facts["names"]
    piece = done.before.edge(names[0])
    sheet = Sheet()
    the = say.the(piece.pieces)
    sheet.write((LEFT - 16, 0), shortened(f"{the[0].upper()}{the[1:]}, the top edge", 360, True), bold=True)
    marks = [LEFT + (RIGHT - LEFT) * at / 4 for at in range(5)]
    line = _line(marks, [TOP + float(each) * scale for each in taken])
    face(sheet, [(LEFT, TOP), (RIGHT, TOP), (RIGHT, LOW), (LEFT, LOW)], wrong=False)
    sheet.lines(_hatched(line), SOFT, THIN)
    edge(sheet, (LEFT, TOP), (RIGHT, TOP), str(piece.state), (0, 1))
    sheet.line(line, ACCENT, THICK)
    for name, x, amount in zip(NAMES, marks, taken, strict=True):
        sheet.line([(x, TOP - 6), (x, TOP + 6)], INK, THICK)
        anchor = "start" if x == LEFT else "end" if x == RIGHT else "middle"
        sheet.write((x, TOP - 12), name, anchor)
        sheet.write((x, LOW + 16), say.length(amount) if amount else "nothing", anchor, bold=bool(amount))
    # The numbers of the sentences stand below what is cut away, in the middle of two quarters.
    sheet.callout(((marks[1] + marks[2]) / 2, LOW - 14), numbers.of("measure down"))
    sheet.callout(((marks[2] + marks[3]) / 2, LOW - 14), numbers.of("cut along"))
    worded = "What is taken up is drawn deeper than it is."
    if len(names) > 1:
        worded += f" Do the same at each of the {len(names)} top edges."
    sheet.paragraph((LEFT - 16, LOW + 20 + LEADING), worded, 376)
    told = ", ".join(
        f"{say.length(each) if each else 'nothing'} {place}"
        for each, place in zip((front, side, back), ("at the front", "at the sides", "at the back"), strict=True)
    )
    alt = f"The top edge of {the} with a line below it to cut along: {told}. The line is smooth and runs level at the front and the back."
    return Figure("levelled", sheet.svg(), alt, "Where the edge is cut lower.")


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
