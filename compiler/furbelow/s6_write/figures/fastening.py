"""A fastening: the closed ends of an opening from the outside, and where its halves are sewn on."""

from __future__ import annotations

from math import cos, pi, sin

from furbelow.garment.message import Length, Values, flag
from furbelow.garment.technique import Performed, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, HEAVY, HIDDEN, INK, PLAIN, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.fastening import BAR, BUTTONS, EYE, LOOPS, SNAPS, Fastened

LEFT, RIGHT, TOP, LOW = 40.0, 330.0, 20.0, 150.0
END = 150.0  # of the cloth that lies on top, or where both ends meet
WIDE = 74.0  # of the overlap
APART = 52.0
BAND = 26.0  # of the band above, where one closes the top
UNSEEN = (3.0, 2.0)  # of what lies inside: denser than a line, to be told from the cloth


def fastening(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """Both ends level at the top; what lies inside or beneath is dotted."""
    words.read("figures-fastening")
    facts, by = facts_of(done, Fastened), word_of(done.step.written, "by")
    below, apart, overlap = Length(facts.below, "about"), Length(facts.apart, "about"), Length(facts.overlap)
    first = apart if facts.under else below
    values: Values = {
        "count": facts.fasteners,
        "below": first,
        "under": flag(facts.under),
        "loops": flag(by == LOOPS),
        "overlaps": flag(facts.overlap),
        "overlap": overlap,
        "waist": Length(facts.waist),
    }
    beneath = END + (WIDE if facts.overlap else 0)
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-fastening-outside"))
    if facts.under:
        face(sheet, [(LEFT, TOP - BAND), (RIGHT, TOP - BAND), (RIGHT, TOP), (LEFT, TOP)], wrong=False)
    sides = [wave((at, TOP), (at, LOW)) for at in (LEFT, RIGHT)]
    face(sheet, [(LEFT, TOP), (RIGHT, TOP), *sides[1][1:], *reversed(sides[0])], wrong=False)
    for line in sides:
        sheet.line(line, SOFT, PLAIN)
    edge(sheet, (LEFT, TOP), (RIGHT, TOP), "fold", (0, 1))
    sheet.line([(END, TOP), (END, LOW)], INK, THICK)
    if facts.overlap:
        sheet.line([(beneath, TOP), (beneath, LOW)], SOFT, PLAIN, HIDDEN)
        sheet.across(END, beneath, LOW + 20, words.said(overlap), LOW + 4, below=True)
    places = [TOP + 20 + APART * at for at in range(min(facts.fasteners, 2))]
    for y in places:
        _halves(sheet, by, y)
    sheet.upright(TOP, places[0], RIGHT + 16, words.said(first), END + 52)
    if len(places) > 1:
        sheet.upright(places[0], places[1], RIGHT + 16, words.said(apart), END + 52)
    on_top = numbers.at("fastening-hook", "fastening-snap-on-top", "fastening-buttonhole", "fastening-loop")
    other = numbers.at(
        "fastening-bar", "fastening-eye", "fastening-snap-beneath", "fastening-button", "fastening-loop-button"
    )
    sheet.callout(
        (END + 104, places[0] + 26),
        on_top,
        {SNAPS: (END + 26, places[0]), BUTTONS: (END + 34, places[0]), LOOPS: (END - 12, places[0] + 8)}.get(
            by, (END + 45, places[0] - 7)
        ),
    )
    sheet.callout((END - 66, places[0] + 26), other, (END - 36 if by in (EYE, LOOPS) else END + 8, places[0] + 9))
    sheet.paragraph(
        (sheet.width / 2, LOW + 50), words.text("figure-fastening-note", values), 380, "middle", colour=SOFT
    )
    alt = words.text("figure-fastening-alt-buttons" if facts.button else "figure-fastening-alt", values)
    caption = words.text("figure-fastening-caption", values)
    return sheet.figure("fastening", alt, caption)


def _halves(sheet: Sheet, by: str, y: float) -> None:
    """The half of the cloth on top lies to the right of its end, dotted; the other meets it."""
    if by == SNAPS:
        turns = [2 * pi * at / 24 for at in range(24)]
        rim: list[Point] = [(END + 16 + 11 * cos(turn), y + 11 * sin(turn)) for turn in turns]
        sheet.line(rim, ACCENT, HEAVY, UNSEEN, closed=True)
        sheet.disc((END + 16, y), 3, ACCENT)
        return
    if by in (BUTTONS, LOOPS):
        middle = END + 16 if by == BUTTONS else END - 26
        turns = [2 * pi * at / 24 for at in range(24)]
        sheet.line([(middle + 12 * cos(turn), y + 12 * sin(turn)) for turn in turns], INK, THICK, closed=True)
        sheet.lines(
            [[(middle - 3, y - 3), (middle + 3, y + 3)], [(middle - 3, y + 3), (middle + 3, y - 3)]], INK, THICK
        )
        if by == BUTTONS:
            sheet.line([(middle - 4, y), (middle + 24, y)], ACCENT, HEAVY)
        else:
            sheet.line(
                [(END, y - 10), (END - 20, y - 14), (END - 40, y), (END - 20, y + 14), (END, y + 10)], ACCENT, HEAVY
            )
        return
    hook: list[Point] = [(END + 44, y - 8), (END + 11, y - 8), (END + 5, y), (END + 11, y + 8), (END + 28, y + 8)]
    sheet.line(hook, ACCENT, HEAVY, UNSEEN)
    if by == BAR:
        sheet.line([(END + 11, y - 16), (END + 11, y + 16)], INK, HEAVY, UNSEEN)
    else:
        eye: list[Point] = [(END - 36, y - 10), (END + 8, y - 5), (END + 8, y + 5), (END - 36, y + 10)]
        sheet.line(eye, INK, HEAVY, UNSEEN)
