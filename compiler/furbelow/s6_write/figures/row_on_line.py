"""A row on a line across a piece: laid upside down and sewn, then turned down over its seam."""

from __future__ import annotations

from furbelow.garment.message import Length, Pieces, Values, edge_said, flag
from furbelow.garment.technique import Performed, edge_of, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, INK, PLAIN, SEAM, SOFT, THICK, Pattern
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.sew_on import OnBase
from furbelow.techniques.shared.lines import line_said, measured_up

LEFT, RIGHT = 110.0, 300.0
DOWN, ROW, SEAM_WIDE, BELOW = 64.0, 48.0, 16.0, 74.0  # units, not to scale


def row_on_line(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The base with the row laid on it, then with the row hanging."""
    words.read("figures", "figures-row-on-line")
    facts, written = facts_of(done, OnBase), done.step.written
    row, on = done.before.edge(edge_of(written, "edge")), word_of(written, "on")
    values: Values = {
        "row": edge_said(row),
        "on": Pieces((on,)),
        **line_said(done.before, done.step, on, facts.down),
        "seam-width": Length(done.step.mm("seam")),
        "hangs": Length(facts.hangs),
        "gathered": flag(row.gathered),
    }
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-row-laid"))
    y = _base(sheet, 14)
    line = y + DOWN
    _row(sheet, line + SEAM_WIDE, line - ROW, bool(row.gathered), wrong=True)
    sheet.line([(LEFT, line), (RIGHT, line)], ACCENT, THICK, SEAM)
    if not measured_up(done.before, done.step, on):
        sheet.upright(y, line, LEFT - 16, words.value(values, "from-edge"), LEFT - 2, "left")
    sheet.upright(line, line + SEAM_WIDE, RIGHT + 14, words.value(values, "seam-width"), RIGHT + 2)
    sheet.callout((LEFT + 40, line + SEAM_WIDE + 26), numbers.at("sew-on-lay"), (LEFT + 40, line + SEAM_WIDE))
    sewn = numbers.at("sew-on-sew-ring", "sew-on-sew-flat")
    sheet.callout((RIGHT - 40, line + SEAM_WIDE + 26), sewn, (RIGHT - 40, line))
    sheet.paragraph((RIGHT + 14, line - ROW + 12), words.text("figure-row-hem-up"), 84)
    y = line + BELOW + 40
    sheet.head((8, y), words.text("figure-row-hanging"))
    y = _base(sheet, y + 14)
    line = y + DOWN
    _row(sheet, line, line + ROW, bool(row.gathered), wrong=False)
    sheet.upright(line, line + ROW, RIGHT + 14, words.value(values, "hangs"), RIGHT + 2)
    sheet.callout((LEFT - 40, line + 10), numbers.at("sew-on-turn-down"), (LEFT, line))
    sheet.write((sheet.width / 2, line + BELOW + 20), words.text("figure-not-to-scale"), "middle", colour=SOFT)
    return sheet.figure("row", words.text("figure-row-alt", values), words.text("figure-row-caption", values))


def _base(sheet: Sheet, y: float) -> float:
    """The base, right side up, broken off below and at both sides; the height of its top edge."""
    low = y + DOWN + BELOW
    sides = [wave((x, y), (x, low)) for x in (LEFT - 8, RIGHT + 8)]
    foot = wave((LEFT - 8, low), (RIGHT + 8, low))
    face(sheet, [*sides[0], *foot[1:], *reversed(sides[1])], wrong=False)
    for broken in (*sides, foot):
        sheet.line(broken, SOFT, PLAIN)
    sheet.line([(LEFT - 8, y), (RIGHT + 8, y)], INK, PLAIN)
    return y


def _row(sheet: Sheet, sewn: float, hem: float, gathered: bool, wrong: bool) -> None:
    """The row from its sewn edge to its hem, wider there where it is gathered."""
    wider = 6.0 if gathered else 0.0
    face(sheet, [(LEFT, sewn), (RIGHT, sewn), (RIGHT + wider, hem), (LEFT - wider, hem)], wrong)
    inward = (0.0, 1.0 if hem > sewn else -1.0)
    pattern: Pattern = "gathered" if gathered else "raw" if wrong else "fold"
    edge(sheet, (LEFT, sewn), (RIGHT, sewn), pattern, inward, worked=not wrong)
    edge(sheet, (LEFT - wider, hem), (RIGHT + wider, hem), "hemmed", (0.0, -inward[1]))
    for x, way in ((LEFT, -wider), (RIGHT, wider)):
        sheet.line([(x, sewn), (x + way, hem)], INK, PLAIN)
