"""Matching marks: the two edges of a seam with their marks and pins, before they are sewn."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.matching import divisions
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed, edge_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.hanging import edge_now
from furbelow.s6_write.figures.language import ACCENT, INK, LEADING, PLAIN, SEAM, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet, shortened
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

LEFT, RIGHT = 24.0, 376.0
HIGH = 30.0


def quarter_marks(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """Both edges laid out straight, apart from each other, with the marks that meet and the pins between them."""
    say = words.say
    before = done.before
    edge_here, to = before.edge(edge_of(done.step.written, "edge")), before.edge(edge_of(done.step.written, "to"))
    ring, length = before.ring(to), to.set_length
    parts = divisions(length)
    sheet = Sheet()
    top = say.the(to.pieces)
    sheet.write((LEFT - 16, 0), shortened(f"{top[0].upper()}{top[1:]}", 360, True), bold=True)
    face(sheet, [(LEFT, 10), (RIGHT, 10), (RIGHT, 10 + HIGH), (LEFT, 10 + HIGH)], wrong=True)
    edge(sheet, (LEFT, 10 + HIGH), (RIGHT, 10 + HIGH), str(to.state) if not to.gathered else "gathered", (0, -1))
    piece = to.pieces[0]
    strips = before.strips_round(piece) if ring else 1
    low = 98.0 + (LEADING if strips > 1 and parts > 4 else 0)
    face(sheet, [(LEFT, low), (RIGHT, low), (RIGHT, low + HIGH), (LEFT, low + HIGH)], wrong=False)
    worked = edge_now(before, edge_here.name)
    edge(sheet, (LEFT, low), (RIGHT, low), "gathered" if worked.gathered else str(worked.state), (0, 1))
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
        sheet.write((x, 10 + HIGH + 26 + LEADING), "other seam", "middle", colour=SOFT, ground=True)
    for index in range(2 * parts + 1):
        # Beside a mark, where both can be seen, and between two of them.
        beside = 0 if index % 2 else 5 if index < 2 * parts else -5
        _pin(sheet, LEFT + wide * index / (2 * parts) + beside, low, say.room.hold_with)
    _distances(sheet, 10 + HIGH + 26, wide, length, say)
    if parts > 4:
        worded, y = f"a mark every {say.length(length / parts)}", 10 + HIGH + 26 + LEADING * (2 if strips > 1 else 1)
        sheet.write((LEFT + wide / 2, y), worded, "middle", colour=SOFT, ground=True)
    under = f"{say.the(edge_here.pieces)}, underneath at the machine"
    y = sheet.paragraph((LEFT - 16, low + HIGH + 20), f"{under[0].upper()}{under[1:]}", 376, bold=True)
    if ring:
        for x, anchor in ((LEFT - 4, "start"), (RIGHT + 4, "end")):
            sheet.write((x, 10 + HIGH + 26 + LEADING), "side seam", anchor, colour=SOFT, ground=True)
    ends = (
        "The edges are rings: the first and the last mark are the same side seam."
        if ring
        else "The first and the last mark are the two ends."
    )
    spacing = say.about(say.room.pin_spacing)
    sheet.paragraph(
        (LEFT - 16, y), f"{ends} {say.room.hold_with.capitalize()} at the marks first, then every {spacing}.", 376
    )
    number = numbers.at("attach-mark-ring", "attach-mark-flat")
    sheet.callout((RIGHT - 40, 22), number, (LEFT + wide * 3 / 4 + 2, 10 + HIGH - 6))
    sheet.callout((RIGHT - 16, low + 18), numbers.at("attach-lay", "attach-lay-tails"), (RIGHT - 16, low))
    alt = (
        f"{say.the(to.pieces)} above and {say.the(edge_here.pieces)} below, each {say.length(length)} long, with"
        f" {parts} equal stretches marked every {say.length(length / parts)} and {say.room.hold_with} at the marks and between them."
    )
    return Figure("marks", sheet.svg(), f"{alt[0].upper()}{alt[1:]}", "Match mark to mark, right sides together.")


def _pin(sheet: Sheet, x: float, y: float, hold: str) -> None:
    if hold == "clips":
        sheet.line(
            [(x - 4, y - 9), (x + 4, y - 9), (x + 4, y + 12), (x - 4, y + 12)], INK, PLAIN, fill="#ffffff", closed=True
        )
        sheet.line([(x - 4, y + 1), (x + 4, y + 1)], INK, PLAIN)
        return
    sheet.line([(x, y - 9), (x, y + 16)], INK, PLAIN)
    sheet.disc((x, y - 10), 2.8, INK)


def _distances(sheet: Sheet, y: float, wide: float, length: Fraction, say: Phrasing) -> None:
    """The distance of every quarter mark from the first one."""
    for index in range(5):
        worded = "0" if index == 0 else say.length(length * index / 4)
        anchor = "start" if index == 0 else "end" if index == 4 else "middle"
        x = LEFT + wide * index / 4 + (-4 if index == 0 else 4 if index == 4 else 0)
        sheet.write((x, y), worded, anchor, ground=True)
