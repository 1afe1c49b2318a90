"""A section of panels that lie freely, as it lies before the maker: the cut end left, the near side below.

Under the cloth stands how far each end of a panel lies from the cut end, left of it how far each side lies from the edge.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from furbelow.garment.message import Length
from furbelow.s4_cut.plan import Section, tag_of
from furbelow.s6_write.figures.edges import face, left_over
from furbelow.s6_write.figures.laid_cloth import LEFT, beside, frame, has_room, named_in
from furbelow.s6_write.figures.language import INK, LEADING, MARGIN, PLAIN
from furbelow.s6_write.figures.pen import Point, Sheet, width_of
from furbelow.s6_write.words.words import Words


class FreePanels:
    """One section, drawn to scale; `high` is how far it reaches down, the words under it included."""

    def __init__(
        self, section: Section, width: float, marks: Mapping[str, str], words: Words, scale: float, wrong_up: bool
    ) -> None:
        self.section, self.marks, self.words, self.scale, self.wrong_up = section, marks, words, scale, wrong_up
        words.read("figures-cutting")
        self.deep = width * scale
        self.right = LEFT + float(section.length) * scale
        ends = {each.from_end for each in section.panels} | {each.from_end + each.length for each in section.panels}
        self.ends = [(LEFT + float(end) * scale, self._at(end)) for end in sorted({Fraction(0), *ends})]
        sides = {each.from_edge for each in section.panels} | {each.from_edge + each.width for each in section.panels}
        self.sides = [(float(side) * scale, self._at(side)) for side in sorted({Fraction(0), *sides})]
        self.rows = _rows(self.ends)
        small = [
            each
            for each in section.panels
            if not has_room(tag_of(each, marks), float(each.length) * scale, float(each.width) * scale)
        ]
        self.block = max(self.deep, LEADING * len(self.sides), LEADING * len(small))

    @property
    def high(self) -> float:
        rows = 1 + max(row for row, _ in self.rows)
        return self.block + 22 + rows * LEADING

    def draw(self, sheet: Sheet, y: float) -> float:
        """The section with its top at y; how far down it reaches."""
        low = y + self.block
        top = low - self.deep
        left_over(sheet, [(LEFT, top), (self.right, top), (self.right, low), (LEFT, low)])
        small: list[tuple[Point, str]] = []
        for panel in self.section.panels:
            left, bottom = LEFT + float(panel.from_end) * self.scale, low - float(panel.from_edge) * self.scale
            right, upper = left + float(panel.length) * self.scale, bottom - float(panel.width) * self.scale
            outline = [(left, upper), (right, upper), (right, bottom), (left, bottom)]
            face(sheet, outline, self.wrong_up)
            sheet.line(outline, INK, PLAIN, closed=True)
            name = tag_of(panel, self.marks)
            length, width = Length(panel.length, "cut"), Length(panel.width, "cut")
            size = self.words.text("figure-cutting-over", {"length": length, "width": width})
            if not named_in(sheet, name, size, (left, upper, right, bottom), ground=self.wrong_up):
                small.append((((left + right) / 2, (upper + bottom) / 2), name))
        frame(sheet, [(LEFT, top), (self.right, top), (self.right, low), (LEFT, low)], across=False)
        beside(sheet, small, self.right, 1, y - 4, low + 4)
        beside(sheet, [((LEFT - 1, low - side), told) for side, told in self.sides], LEFT, -1, y - 8, low + 4)
        sheet.lines(
            [
                [(x, low + 2), (x, low + 8 + LEADING * row)]
                for (x, _), (row, _) in zip(self.ends, self.rows, strict=True)
            ]
        )
        for (_, told), (row, left) in zip(self.ends, self.rows, strict=True):
            sheet.write((left, low + 19 + LEADING * row), told, ground=True)
        return y + self.high

    def _at(self, place: Fraction) -> str:
        return self.words.said(Length(place, "cut") if place else 0)


def _rows(labels: Sequence[tuple[float, str]]) -> list[tuple[int, float]]:
    """For each label under the cloth, the row and the left end that keep it clear of the others."""
    ends: list[float] = []
    placed = []
    for x, words in labels:
        wide = width_of(words)
        left = max(x - wide / 2, MARGIN)
        row = next((row for row, end in enumerate(ends) if end + 8 <= left), len(ends))
        ends[row : row + 1] = [left + wide]
        placed.append((row, left))
    return placed
