"""Two holes in a casing to come: where the middle of the front lies, how far apart they are, what lies behind them."""

from __future__ import annotations

from furbelow.garment.message import Length, Pieces, Values
from furbelow.garment.technique import Performed, edge_of, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, FOLD, HEAVY, HIDDEN, PLAIN, SOFT, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.eyelets import BUTTONHOLES, PATCH, Pierced
from furbelow.techniques.shared.casings import holes_said

LEFT, RIGHT, TOP = 40.0, 340.0, 30.0
MOST, WIDEST = 150.0, 120.0  # units for the depth shown, and between the holes


def eyelets(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The right side of the piece round the middle of its front, to scale; the patches behind are dotted."""
    words.read("figures", "figures-eyelets")
    facts, written = facts_of(done, Pierced), done.step.written
    apart, holes = done.step.mm("apart"), done.after.holes[edge_of(written, "in")]
    deep = facts.from_edge
    scale = min(MOST / float(deep + facts.size / 2 + 2 * PATCH), WIDEST / float(apart), 4.0)
    middle, y = (LEFT + RIGHT) / 2, TOP + float(deep) * scale
    low = y + (float(facts.size) / 2 + 2 * float(PATCH)) * scale
    values: Values = {
        "piece": Pieces(done.touches),
        "apart": Length(apart),
        "from-edge": Length(facts.from_edge),
        "middle": Length(facts.middle),
        "hole": Length(facts.size),
        **holes_said(holes),
    }
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-eyelets-head"))
    sides = [wave((at, TOP), (at, low)) for at in (LEFT, RIGHT)]
    foot = wave((LEFT, low), (RIGHT, low))
    face(sheet, [(LEFT, TOP), (RIGHT, TOP), *sides[1][1:], *reversed(foot), *reversed(sides[0])], wrong=False)
    for line in (*sides, foot):
        sheet.line(line, SOFT, PLAIN)
    edge(sheet, (LEFT, TOP), (RIGHT, TOP), "raw", (0, 1))
    sheet.line([(middle, TOP), (middle, low)], SOFT, THIN, FOLD)
    places = [middle + way * float(apart) / 2 * scale for way in (-1, 1)]
    for x in places:
        half = float(facts.size / 2 + PATCH) * scale
        corners = [(x - half, y - half), (x + half, y - half), (x + half, y + half), (x - half, y + half)]
        sheet.line(corners, SOFT, PLAIN, HIDDEN, closed=True)
        if word_of(written, "as") == BUTTONHOLES:
            sheet.line([(x, y - float(facts.size) / 2 * scale), (x, y + float(facts.size) / 2 * scale)], ACCENT, HEAVY)
        else:
            sheet.disc((x, y), float(facts.size) / 2 * scale, "none", ACCENT, HEAVY)
    sheet.across(places[0], places[1], low + 18, words.value(values, "apart"), y + half, below=True)
    sheet.upright(TOP, y, RIGHT + 8, words.said(Length(deep), "depth"), places[1] + half)
    sheet.write((middle, TOP - 8), words.text("figure-eyelets-front"), "middle", colour=SOFT)
    made = numbers.at("eyelets-buttonholes", "eyelets-work", "eyelets-set")
    sheet.callout((places[0] - half - 22, y - half - 8), made, (places[0], y - float(facts.size) / 4 * scale))
    marked = numbers.at("eyelets-mark-ring", "eyelets-mark-flat", "eyelets-mark-panel")
    sheet.callout((middle + 26, low - 10), marked, (middle, low - 16))
    sheet.write((sheet.width / 2, low + 50), words.text("figure-eyelets-note"), "middle", colour=SOFT)
    alt, caption = words.text("figure-eyelets-alt", values), words.text("figure-eyelets-caption", values)
    return sheet.figure("eyelets", alt, caption)
