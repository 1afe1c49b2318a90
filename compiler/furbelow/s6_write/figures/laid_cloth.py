"""What the drawings of laid cloth share: its selvedges and cut ends, words beside it with lines to their places."""

from __future__ import annotations

from collections.abc import Sequence

from furbelow.s6_write.figures.language import INK, LEADING, PLAIN, SOFT, THICK, THIN
from furbelow.s6_write.figures.pen import Point, Sheet, spread, width_of

LEFT = 86.0  # sizes stand left of the cloth
ACROSS = 250.0  # units for the cloth; names of narrow lanes stand right of it
ROOM = 15.0  # units that a line of words needs on the cloth
GAP = 13.0  # between the cloth and the words beside it


def frame(sheet: Sheet, ground: Sequence[Point], across: bool) -> None:
    """The edges of a section: selvedges above and below it, or, with lanes across, left and right."""
    upper_left, upper_right, lower_right, lower_left = ground
    if across:
        selvedges = ((upper_left, lower_left, (1.0, 0.0)), (upper_right, lower_right, (-1.0, 0.0)))
        cuts = ((upper_left, upper_right), (lower_left, lower_right))
    else:
        selvedges = ((upper_left, upper_right, (0.0, 1.0)), (lower_left, lower_right, (0.0, -1.0)))
        cuts = ((upper_left, lower_left), (upper_right, lower_right))
    for start, end, inward in selvedges:
        sheet.line([start, end], INK, THICK)
        out = (start[0] - inward[0] * 4, start[1] - inward[1] * 4), (end[0] - inward[0] * 4, end[1] - inward[1] * 4)
        sheet.line(out, INK, PLAIN, (1.2, 4))
    for start, end in cuts:
        sheet.line([start, end], INK, PLAIN)


def beside(sheet: Sheet, labels: Sequence[tuple[Point, str]], x: float, side: int, low: float, high: float) -> None:
    """Words left (side -1) or right (1) of the cloth that ends at x, each with a line to its place."""
    ordered = sorted((label for label in labels if label[1]), key=lambda label: (label[0][1], label[0][0]))
    placed = spread([at[1] for at, _ in ordered], [LEADING] * len(ordered), low, high)
    for (at, words), middle in zip(ordered, placed, strict=True):
        sheet.line([(x + (GAP - 3) * side, middle), at], SOFT, THIN)
        sheet.write((x + GAP * side, middle + 4.5), words, "end" if side < 0 else "start")


def fits_beside(sheet: Sheet, words: str, x: float, side: int) -> bool:
    """Whether these words have room between the cloth that ends at x and the edge of the sheet."""
    room = sheet.width - x if side > 0 else x
    return width_of(words) <= room - GAP - 3


def named_in(sheet: Sheet, name: str, size: str, box: tuple[float, float, float, float], ground: bool) -> bool:
    """Writes a piece's name into its left, top, right and low, with its size where there is room; whether it has room."""
    left, top, right, low = box
    room, middle, y = right - left - 6, (left + right) / 2, (top + low) / 2 + 4.5
    if low - top < ROOM - 1 or width_of(name, True) > room:
        return False
    if width_of(name, True) + width_of(f" {size}") <= room:
        begin = middle - (width_of(name, True) + 5 + width_of(size)) / 2
        sheet.write((begin, y), name, bold=True, ground=ground)
        sheet.write((begin + width_of(name, True) + 5, y), size, ground=ground)
    elif low - top >= 2 * ROOM and width_of(size) <= room:
        sheet.write((middle, y - 7), name, "middle", bold=True, ground=ground)
        sheet.write((middle, y + 8), size, "middle", ground=ground)
    else:
        sheet.write((middle, y), name, "middle", bold=True, ground=ground)
    return True


def has_room(name: str, wide: float, high: float) -> bool:
    """Whether `named_in` finds room for a name."""
    return high >= ROOM - 1 and width_of(name, True) <= wide - 6
