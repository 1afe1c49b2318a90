"""Panels side by side before they are sewn to one ring: each by its number and place, and the seam that stays open."""

from __future__ import annotations

from furbelow.garment.bench import Opening
from furbelow.garment.message import Length, Pieces, Things, Values, flag
from furbelow.garment.technique import Performed, new_seam
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import face
from furbelow.s6_write.figures.language import ACCENT, INK, PLAIN, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet, shortened, width_of
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.shared.closed_ends import place_said, row_of, seam_named

LEFT, WIDE, TOP, HIGH = 24.0, 340.0, 56.0, 120.0  # units of the whole row
MOST = 12  # panels that still can be told apart


def panels_in_row(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """Gores that have places of their own, right side up in the order in which they are sewn, true to scale."""
    gore = row_of(done)
    if gore is None or len(gore.round) > MOST:
        return None
    words.read("figures-panels", "gores")
    seam, piece = new_seam(done), done.touches[0]
    opening = next((each for each in done.after.openings.values() if each.seam == seam.name), None)
    named = seam_named(done)
    values: Values = {
        **named,
        "piece": Pieces((piece,)),
        "order": Things(tuple(place_said(place) for place in gore.round), "row"),
        "opened": flag(opening),
        "open": Length(opening.length if opening else seam.length),
    }
    sheet = Sheet()
    sheet.head((LEFT - 16, 0), shortened(words.text("figure-panels-head", values), 360, True))
    widths = {width.place: gore.cut_widths(width) for width in gore.widths}
    broad = sum(float(widths[place][1]) for place in gore.round)
    scale = min(WIDE / broad, HIGH / float(gore.cut_depth))
    low, x = TOP + float(gore.cut_depth) * scale, LEFT + (WIDE - broad * scale) / 2
    after, upper = gore.side_seam[0], []
    for number, place in enumerate(gore.round, 1):
        narrow, wide = (float(each) * scale for each in widths[place])
        inset = (wide - narrow) / 2
        corners: list[Point] = [(x + inset, TOP), (x + inset + narrow, TOP), (x + wide, low), (x, low)]
        face(sheet, corners, wrong=False)
        sheet.line([*corners, corners[0]], INK, PLAIN)
        sheet.write((x + wide / 2, TOP + 40), str(number), "middle", bold=True)
        said = words.text("gore-place", place_said(place).values)
        if width_of(said) < wide:
            sheet.write((x + wide / 2, low + 16), said, "middle")
        upper.append((corners[1], corners[2], corners[0], corners[3]))
        x += wide
    right, low_right, _, _ = upper[after - 1]
    _, _, left, low_left = upper[after % len(upper)]
    if opening:
        _open(sheet, opening, float(gore.cut_depth), (right, low_right), (left, low_left))
    over = ((right[0] + left[0]) / 2, TOP - 10)
    sheet.callout((over[0], TOP - 28), numbers.at("seam-open-top", "tag-seam"), over)
    alt, caption = (words.text(name, values) for name in ("figure-panels-alt", "figure-panels-caption"))
    return sheet.figure("panels", alt, caption)


def _open(sheet: Sheet, opening: Opening, deep: float, *sides: tuple[Point, Point]) -> None:
    """The edges that stay open, heavy from the top down, with a mark across each end."""
    for (x, y), (to_x, to_y) in sides:
        share = min(float(opening.length) / deep, 1.0)
        end = (x + (to_x - x) * share, y + (to_y - y) * share)
        sheet.line([(x, y), end], ACCENT, THICK)
        sheet.line([(end[0] - 5, end[1]), (end[0] + 5, end[1])], ACCENT, THICK)
