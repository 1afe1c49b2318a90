"""A section of lanes drawn on its cloth: rows of lanes, selvedges, the fold, and what stays over."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from furbelow.garment.message import Length, Own, Things, Value
from furbelow.s4_cut.plan import CuttingPlan, Lane, Section, Segment, tag_of
from furbelow.s6_write.figures.edges import edge, face, left_over
from furbelow.s6_write.figures.laid_cloth import (
    ACROSS,
    LEFT,
    ROOM,
    beside,
    fits_beside,
    frame,
    has_room,
    named_in,
)
from furbelow.s6_write.figures.language import GROUND, INK, LEADING, PLAIN, RIGHT_SIDE, SOFT, THICK, THIN
from furbelow.s6_write.figures.pen import Point, Sheet, broken, width_of
from furbelow.s6_write.words.words import Words

HATCH_SHOWS = 20.0  # units of hatching beside the size of what stays over, at least
DOT, DOT_IN = 1.6, 4.0  # the end of a line to a piece: its radius, and how far it lies inside


class LaidLanes:
    """One section as it is laid: rows of lanes, selvedges, the fold; `high` is how far it reaches down.

    The names of a lane stand on its pieces, beside it where one has no room, and below the section where those are too long.
    """

    def __init__(
        self, plan: CuttingPlan, section: Section, marks: Mapping[str, str], words: Words, scale: float
    ) -> None:
        self.plan, self.section, self.marks, self.words, self.scale = plan, section, marks, words, scale
        self.folded = plan.folded and not section.across
        lies = (plan.usable_width, section.length) if section.across else (section.length, plan.usable_width)
        self.size = lies  # along and down the sheet, in mm
        self.right, self.deep = LEFT + float(lies[0]) * scale, float(lies[1]) * scale
        sheet = Sheet()
        self.sizes: list[str] = []  # left of each lane
        self.names: list[str] = []  # right of each lane
        below: list[str] = []
        for number, lane in enumerate(section.lanes, 1):
            values: dict[str, Value] = {
                "lane": number,
                "depth": Length(lane.depth, "cut"),
                "pieces": Things(tuple(Own(self._name(each)) for each in lane.segments), "row"),
            }
            size, names = words.text("figure-cutting-lane", values), words.value(values, "pieces")
            short = not fits_beside(sheet, size, LEFT, -1)
            self.sizes.append(str(number) if short else size)
            placed = self._placed(lane)
            self.names.append(names if not placed and fits_beside(sheet, names, self.right, 1) else "")
            if names and (short or not (placed or self.names[-1])):
                below.append(words.text("figure-cutting-lane-names", values))
        self.below = [row for told in below for row in broken(told, sheet.width - 16)]
        labels = max(len(self.sizes), sum(map(bool, self.names)) + self.folded)
        self.block = max(self.deep, labels * LEADING)

    @property
    def high(self) -> float:
        return self.block + (30 if self.section.across else 48) + len(self.below) * LEADING + (6 if self.below else 0)

    def draw(self, sheet: Sheet, y: float) -> float:
        """The section with its top at y; how far down it reaches."""
        section, scale, words = self.section, self.scale, self.words
        top = y + (self.block - self.deep) / 2
        low, right, end = top + self.deep, self.right, y + self.block
        ground = [(LEFT, top), (right, top), (right, low), (LEFT, low)]
        face(sheet, ground, wrong=False)
        self._spare(sheet, top)
        frame(sheet, ground, section.across)
        sizes: list[tuple[Point, str]] = []
        names: list[tuple[Point, str]] = []
        led: list[Point] = []  # ends of named pieces with cloth over between them and their names
        for lane, size, name in zip(section.lanes, self.sizes, self.names, strict=True):
            upper = top + float(self._from_top(lane)) * scale
            high = float(lane.depth) * scale
            middle = upper + high / 2
            sizes.append(((LEFT - 1, middle), size))
            # Clear of the size of what stays over, which stands in the middle of a high lane.
            level = upper + ROOM / 2 if high >= 2 * ROOM else middle
            names.append(((right + 1, level), name))
            if name and right - self._end(lane) > 1:
                led.append((self._end(lane), level))
            self._lane(sheet, lane, upper, self._placed(lane))
        if self.folded:
            middle = (top + low) / 2
            edge(sheet, (LEFT - 6, middle), (right, middle), "fold", (0, 1), worked=True)
            names.append(((right + 1, middle), words.text("figure-cutting-fold")))
        beside(sheet, sizes, LEFT, -1, y - 4, end + 4)
        for at in led:
            # Over the hatching the line to the name stands on white, and it ends in the piece with a dot (ISO 128-22).
            sheet.line([(at[0] + 1, at[1]), (right, at[1])], GROUND, THICK + 2)
            sheet.line([(at[0] - DOT_IN, at[1]), (right + 1, at[1])], INK, THIN)
            sheet.disc((at[0] - DOT_IN, at[1]), DOT, INK)
        beside(sheet, names, right, 1, y - 4, end + 4)
        kept = words.text("figure-cutting-between", {"width": Length(self.plan.usable_width)})
        if section.across:
            sheet.across(LEFT, right, low + 16, kept, low, below=True)
            end = max(end, low) + 30
        else:
            sheet.write(((LEFT + right) / 2, top - 8), words.text("figure-cutting-selvedge"), "middle", colour=SOFT)
            sheet.across(LEFT, right, low + 16, words.said(Length(section.length, "cut")), low, below=True)
            # Below the names that reach further down than the cloth.
            sheet.write((LEFT + ACROSS / 2, (end if any(self.names) else low) + 46), kept, "middle", colour=SOFT)
            end += 48
        for number, row in enumerate(self.below, 1):
            sheet.write((8, end + 6 + number * LEADING), row)
        return y + self.high

    def _name(self, segment: Segment) -> str:
        return tag_of(segment, self.marks)

    def _placed(self, lane: Lane) -> bool:
        """Whether all names have room on their pieces."""
        high = float(lane.depth) * self.scale
        return all(has_room(self._name(each), float(each.length) * self.scale, high) for each in lane.segments)

    def _from_top(self, lane: Lane) -> Fraction:
        """How many mm below the top of the drawing a lane begins, the first lane nearest to the maker, as the cloth lies.

        Lanes over the width begin at the cut end, above. Folded cloth has the fold in the middle, the upper layer above it.
        """
        if self.section.across:
            return lane.offset
        if not self.folded:
            return self.size[1] - lane.offset - lane.depth
        fold = self.size[1] / 2
        if lane.layer == "fold":
            return fold - lane.depth / 2
        if lane.layer == "under":
            return fold + lane.offset
        return fold - lane.offset - lane.depth

    def _end(self, lane: Lane) -> float:
        """Where the last piece of a lane ends on the sheet."""
        return LEFT + float(lane.used) * self.scale

    def _lane(self, sheet: Sheet, lane: Lane, top: float, named: bool) -> None:
        low = top + float(lane.depth) * self.scale
        for segment in lane.segments:
            left = LEFT + float(segment.start) * self.scale
            right = left + float(segment.length) * self.scale
            outline = [(left, top), (right, top), (right, low), (left, low)]
            sheet.line(outline, INK, PLAIN if low - top > 4 else THIN, fill=RIGHT_SIDE, closed=True)
            if named:
                named_in(
                    sheet,
                    self._name(segment),
                    self.words.said(Length(segment.length, "cut")),
                    (left, top, right, low),
                    lane.layer == "fold",
                )

    def _spare(self, sheet: Sheet, top: float) -> None:
        """Cloth that no segment uses, hatched both ways: the ends of lanes and what lies beside them."""
        along, down = self.size
        at = Fraction(0)
        for upper, lane in sorted(
            ((self._from_top(lane), lane) for lane in self.section.lanes), key=lambda pair: pair[0]
        ):
            self._hatch(sheet, top, Fraction(0), at, along, upper)
            at = upper + lane.depth
            self._hatch(sheet, top, lane.used, upper, along, at)
        self._hatch(sheet, top, Fraction(0), at, along, down)

    def _hatch(self, sheet: Sheet, y: float, near: Fraction, upper: Fraction, far: Fraction, lower: Fraction) -> None:
        """One rectangle over, in mm from the left end and from the top of the cloth, which is drawn at y."""
        left, right = (LEFT + float(at) * self.scale for at in (near, far))
        top, low = (y + float(at) * self.scale for at in (upper, lower))
        if right - left > 1 and low - top > 1:
            left_over(sheet, [(left, top), (right, top), (right, low), (left, low)])
            size = self.words.text(
                "figure-cutting-over", {"length": Length(far - near), "width": Length(lower - upper)}
            )
            if low - top >= 2 * ROOM and width_of(size) + HATCH_SHOWS <= right - left:
                sheet.write(((left + right) / 2, (top + low) / 2 + 4.5), size, "middle", colour=SOFT, ground=True)
