"""Matching marks: the two edges of a seam with their marks and pins, before they are sewn."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.message import Length, One, Values, edge_said, flag
from furbelow.garment.technique import Performed, edge_of, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.hanging import edge_now
from furbelow.s6_write.figures.language import ACCENT, FINISHED, INK, LEADING, PLAIN, SEAM, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet, shortened
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.attach import Attached

LEFT, RIGHT = 24.0, 376.0
HIGH = 30.0


def quarter_marks(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """Both edges laid out straight, apart from each other, with the marks that meet and the pins between them."""
    words.read("figures", "figures-quarter-marks")
    room, before = words.say.room, done.before
    edge_here, to = before.edge(edge_of(done.step.written, "edge")), before.edge(edge_of(done.step.written, "to"))
    ring, length = before.ring(to), to.set_length
    facts = facts_of(done, Attached)
    parts = facts.parts
    values: Values = {
        "to": edge_said(to),
        "edge": edge_said(edge_here),
        "parts": parts,
        "part": Length(length / parts),
        "length": Length(length),
        "hold": One(room.hold_with, ("pins", "clips")),
        "spacing": Length(facts.apart, "about"),
        "under": flag(not facts.gathers_up),
    }
    sheet = Sheet()
    sheet.write((LEFT - 16, 0), shortened(words.text("figure-marks-above", values), 360, True), bold=True)
    face(sheet, [(LEFT, 10), (RIGHT, 10), (RIGHT, 10 + HIGH), (LEFT, 10 + HIGH)], wrong=True)
    edge(sheet, (LEFT, 10 + HIGH), (RIGHT, 10 + HIGH), FINISHED[to.state] if not to.gathered else "gathered", (0, -1))
    piece = to.pieces[0]
    strips = before.strips_round(piece) if ring else 1
    low = 98.0 + (LEADING if strips > 1 and parts > 4 else 0)
    face(sheet, [(LEFT, low), (RIGHT, low), (RIGHT, low + HIGH), (LEFT, low + HIGH)], wrong=False)
    worked = edge_now(before, edge_here.name)
    edge(sheet, (LEFT, low), (RIGHT, low), "gathered" if worked.gathered else FINISHED[worked.state], (0, 1))
    wide = RIGHT - LEFT
    for index in range(parts + 1):
        x = LEFT + wide * index / parts
        sheet.line([(x, 10 + HIGH - 9), (x, 10 + HIGH + 5)], ACCENT, THICK)
        sheet.line([(x, low - 5), (x, low + 9)], ACCENT, THICK)
        sheet.line([(x, 10 + HIGH + 7), (x, low - 7)], SOFT, PLAIN, (2, 4))
    for index in range(1, strips):  # seams between the panels of one ring; those at its ends are one seam, too
        x = LEFT + wide * index / strips
        sheet.line([(x, 10), (x, 10 + HIGH)], INK, PLAIN)
        sheet.line([(x + 3, 10), (x + 3, 10 + HIGH)], INK, PLAIN, SEAM)
        other = words.text("figure-marks-other-seam")
        sheet.write((x, 10 + HIGH + 26 + LEADING), other, "middle", colour=SOFT, ground=True)
    for index in range(2 * parts + 1):
        # Beside a mark, where both can be seen, and between two of them.
        beside = 0 if index % 2 else 5 if index < 2 * parts else -5
        _pin(sheet, LEFT + wide * index / (2 * parts) + beside, low, room.hold_with)
    _distances(sheet, 10 + HIGH + 26, wide, length, words)
    if parts > 4:
        every, y = words.text("figure-marks-every", values), 10 + HIGH + 26 + LEADING * (2 if strips > 1 else 1)
        sheet.write((LEFT + wide / 2, y), every, "middle", colour=SOFT, ground=True)
    y = sheet.paragraph((LEFT - 16, low + HIGH + 20), words.text("figure-marks-below", values), 376, bold=True)
    if ring:
        for x, anchor in ((LEFT - 4, "start"), (RIGHT + 4, "end")):
            seam = words.text("figure-side-seam")
            sheet.write((x, 10 + HIGH + 26 + LEADING), seam, anchor, colour=SOFT, ground=True)
    held = words.text("figure-marks-hold-ring" if ring else "figure-marks-hold-flat", values)
    sheet.paragraph((LEFT - 16, y), held, 376)
    number = numbers.at("mark-parts-ring", "mark-parts-flat")
    sheet.callout((RIGHT - 40, 22), number, (LEFT + wide * 3 / 4 + 2, 10 + HIGH - 6))
    sheet.callout((RIGHT - 16, low + 18), numbers.at("attach-lay", "attach-lay-tails"), (RIGHT - 16, low))
    return Figure(
        "marks", sheet.svg(), words.text("figure-marks-alt", values), words.text("figure-marks-caption", values)
    )


def _pin(sheet: Sheet, x: float, y: float, hold: str) -> None:
    if hold == "clips":
        sheet.line(
            [(x - 4, y - 9), (x + 4, y - 9), (x + 4, y + 12), (x - 4, y + 12)], INK, PLAIN, fill="#ffffff", closed=True
        )
        sheet.line([(x - 4, y + 1), (x + 4, y + 1)], INK, PLAIN)
        return
    sheet.line([(x, y - 9), (x, y + 16)], INK, PLAIN)
    sheet.disc((x, y - 10), 2.8, INK)


def _distances(sheet: Sheet, y: float, wide: float, length: Fraction, words: Words) -> None:
    """The distance of every quarter mark from the first one."""
    for index in range(5):
        worded = "0" if index == 0 else words.said(Length(length * index / 4))
        anchor = "start" if index == 0 else "end" if index == 4 else "middle"
        x = LEFT + wide * index / 4 + (-4 if index == 0 else 4 if index == 4 else 0)
        sheet.write((x, y), worded, anchor, ground=True)
