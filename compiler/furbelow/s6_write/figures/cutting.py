"""The cutting plan drawn on the cloth: sections, lanes and segments to one scale, with what stays over.

Folded cloth is drawn opened out, its fold in the middle, so that both layers can be seen; the layer under the other lies
below the fold.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from furbelow.garment.phrasing import Phrasing, listed
from furbelow.s4_cut.plan import CuttingPlan, Lane, Section, Segment
from furbelow.s6_write.figures.edges import edge, face, left_over
from furbelow.s6_write.figures.free_panels import FreePanels
from furbelow.s6_write.figures.laid_cloth import (
    ACROSS,
    LEFT,
    ROOM,
    beside,
    fits_beside,
    frame,
    has_room,
    name_of,
    named_in,
)
from furbelow.s6_write.figures.language import INK, LEADING, PLAIN, RIGHT_SIDE, SOFT, THIN
from furbelow.s6_write.figures.pen import Point, Sheet, broken, shortened, width_of
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

FINEST = 0.24  # units for a mm at most
TALL = 520.0  # units of one figure at most, where sections allow it
FLAT = 60.0  # units of cloth over its width; where one scale for all sections leaves less, each has its own


def plan_figures(
    plan: CuttingPlan, letters: Mapping[str, str], words: Words, cloth: str, key: str, faces: bool
) -> tuple[Figure, ...]:
    """The sections of one cloth's plan, as many in a figure as are easily read.

    letters: the letter of each piece in the cutting list, by its name. cloth: the maker's words for the cloth.
    faces: whether its sides differ, so that panels are chalked on the wrong one.
    """
    say = words.say
    groups: list[list[_Laid | FreePanels]] = []
    firsts: list[int] = []
    tall = TALL
    for number, (section, scale) in enumerate(zip(plan.sections, _scales(plan), strict=True), 1):
        drawn: _Laid | FreePanels
        if section.panels:
            drawn = FreePanels(section, float(plan.usable_width), letters, say, scale, faces)
        else:
            drawn = _Laid(plan, section, letters, say, scale)
        if tall + drawn.high > TALL:
            groups.append([])
            firsts.append(number)
            tall = 0.0
        groups[-1].append(drawn)
        tall += drawn.high
    return tuple(
        _figure(plan, first, group, letters, say, cloth, key) for first, group in zip(firsts, groups, strict=True)
    )


def _figure(
    plan: CuttingPlan,
    first: int,
    group: list[_Laid | FreePanels],
    letters: Mapping[str, str],
    say: Phrasing,
    cloth: str,
    key: str,
) -> Figure:
    sheet, y, told = Sheet(), 0.0, []
    for number, drawn in enumerate(group, first):
        section = drawn.section
        size = f"{say.cut(section.length)} of the {cloth}"
        sheet.write((8, y), f"Section {number}", bold=True)
        after = 13 + width_of(f"Section {number}", True)
        sheet.write((after, y), shortened(f"cut {size} from the bolt", sheet.width - after - 8))
        y = drawn.draw(sheet, y + 30) + 34
        told.append(f"Section {number}, {size}: {_told(section, letters, say)}.")
    last = first + len(group) - 1
    which = f"section {first}" if first == last else f"sections {first} to {last}"
    opened = " Folded cloth is drawn opened out, the under layer below the fold." if plan.folded else ""
    scales = "to scale" if len(set(_scales(plan))) == 1 else "each section to a scale of its own"
    caption = f"How to cut the {cloth}: {which} of {len(plan.sections)}, {scales}. Cloth hatched both ways stays over.{opened}"
    if any(isinstance(drawn, FreePanels) for drawn in group):
        caption += " Panels lie as on the table, a side that had a selvedge near you; their ends are measured from the left, their sides from that near side."
    return Figure(f"{key}-{first}", sheet.svg(), " ".join(told) + opened, caption)


class _Laid:
    """One section as it is laid: rows of lanes, selvedges, the fold; `high` is how far it reaches down.

    The names of a lane stand on its pieces, beside it where one has no room, and below the section where those are too long.
    """

    def __init__(
        self, plan: CuttingPlan, section: Section, letters: Mapping[str, str], say: Phrasing, scale: float
    ) -> None:
        self.plan, self.section, self.letters, self.say, self.scale = plan, section, letters, say, scale
        self.folded = plan.folded and not section.across
        wide, deep = (plan.usable_width, section.length) if section.across else (section.length, plan.usable_width)
        self.right, self.deep = LEFT + float(wide) * scale, float(deep) * scale
        sheet = Sheet()
        self.sizes: list[str] = []  # left of each lane
        self.names: list[str] = []  # right of each lane
        below: list[str] = []
        for number, lane in enumerate(section.lanes, 1):
            size = f"{number}: {say.length(lane.depth)}"
            names = ", ".join(self._name(each) for each in lane.segments)
            short = not fits_beside(sheet, size, LEFT, -1)
            self.sizes.append(str(number) if short else size)
            placed = self._placed(lane)
            self.names.append(names if not placed and fits_beside(sheet, names, self.right, 1) else "")
            if names and (short or not (placed or self.names[-1])):
                below.append(f"Lane {number}, {say.length(lane.depth)} deep, from the left: {names}.")
        self.below = [row for words in below for row in broken(words, sheet.width - 16)]
        labels = max(len(self.sizes), sum(map(bool, self.names)) + self.folded)
        self.block = max(self.deep, labels * LEADING)

    @property
    def high(self) -> float:
        return self.block + (30 if self.section.across else 48) + len(self.below) * LEADING + (6 if self.below else 0)

    def draw(self, sheet: Sheet, y: float) -> float:
        """The section with its top at y; how far down it reaches."""
        section, scale, say = self.section, self.scale, self.say
        top = y + (self.block - self.deep) / 2
        low, right, end = top + self.deep, self.right, y + self.block
        ground = [(LEFT, top), (right, top), (right, low), (LEFT, low)]
        face(sheet, ground, wrong=False)
        self._spare(sheet, top, low)
        frame(sheet, ground, section.across)
        sizes: list[tuple[Point, str]] = []
        names: list[tuple[Point, str]] = []
        for lane, size, name in zip(section.lanes, self.sizes, self.names, strict=True):
            upper = self._top(top, lane)
            middle = upper + float(lane.depth) * scale / 2
            sizes.append(((LEFT - 1, middle), size))
            names.append(((right + 1, middle), name))
            self._lane(sheet, lane, upper, self._placed(lane))
        if self.folded:
            middle = (top + low) / 2
            edge(sheet, (LEFT - 6, middle), (right, middle), "fold", (0, 1), worked=True)
            names.append(((right + 1, middle), "fold"))
        beside(sheet, sizes, LEFT, -1, y - 4, end + 4)
        beside(sheet, names, right, 1, y - 4, end + 4)
        kept = f"{say.length(self.plan.usable_width)} between the selvedges"
        if section.across:
            sheet.across(LEFT, right, low + 16, kept, low, below=True)
            end = max(end, low) + 30
        else:
            sheet.write(((LEFT + right) / 2, top - 8), "selvedge", "middle", colour=SOFT)
            sheet.across(LEFT, right, low + 16, say.cut(section.length), low, below=True)
            # Below the names that reach further down than the cloth.
            sheet.write((LEFT + ACROSS / 2, (end if any(self.names) else low) + 46), kept, "middle", colour=SOFT)
            end += 48
        for number, row in enumerate(self.below, 1):
            sheet.write((8, end + 6 + number * LEADING), row)
        return y + self.high

    def _name(self, segment: Segment) -> str:
        return name_of(segment, self.letters)

    def _placed(self, lane: Lane) -> bool:
        """Whether all names have room on their pieces."""
        high = float(lane.depth) * self.scale
        return all(has_room(self._name(each), float(each.length) * self.scale, high) for each in lane.segments)

    def _top(self, top: float, lane: Lane) -> float:
        """Where a lane begins on the sheet, the first lane nearest to the maker, as the cloth lies on the table.

        Lanes over the width begin at the cut end, above. Folded cloth has the fold in the middle, the upper layer above it.
        """
        if self.section.across:
            return top + float(lane.offset) * self.scale
        if not self.folded:
            return top + self.deep - float(lane.offset + lane.depth) * self.scale
        fold = top + float(self.plan.usable_width) * self.scale / 2
        if lane.layer == "fold":
            return fold - float(lane.depth) * self.scale / 2
        if lane.layer == "under":
            return fold + float(lane.offset) * self.scale
        return fold - float(lane.offset + lane.depth) * self.scale

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
                    self.say.cut(segment.length),
                    (left, top, right, low),
                    lane.layer == "fold",
                )

    def _spare(self, sheet: Sheet, top: float, low: float) -> None:
        """Cloth that no segment uses, hatched both ways: the ends of lanes and what lies beside them."""
        taken = [(self._top(top, lane), lane) for lane in self.section.lanes]
        at = top
        for upper, lane in sorted(taken, key=lambda pair: pair[0]):
            self._hatch(sheet, LEFT, at, self.right, upper)
            at = upper + float(lane.depth) * self.scale
            self._hatch(sheet, LEFT + float(lane.used) * self.scale, upper, self.right, at)
        self._hatch(sheet, LEFT, at, self.right, low)

    def _hatch(self, sheet: Sheet, left: float, top: float, right: float, low: float) -> None:
        if right - left > 1 and low - top > 1:
            outline = [(left, top), (right, top), (right, low), (left, low)]
            left_over(sheet, outline)
            size = (
                f"{self.say.length(_back(right - left, self.scale))} × {self.say.length(_back(low - top, self.scale))}"
            )
            if low - top >= 2 * ROOM and width_of(size) + 10 <= right - left:
                sheet.write(((left + right) / 2, (top + low) / 2 + 4.5), size, "middle", colour=SOFT, ground=True)


def _scales(plan: CuttingPlan) -> tuple[float, ...]:
    """Units for a mm in each section: one scale for all where that leaves the lanes broad enough to see."""
    spans = [float(plan.usable_width if section.across else section.length) for section in plan.sections]
    scales = tuple(min(FINEST, ACROSS / span) for span in spans)
    together = min(scales)
    return (together,) * len(scales) if together * float(plan.usable_width) >= FLAT else scales


def _back(units: float, scale: float) -> Fraction:
    """A drawn length as the length of cloth that it stands for, to the mm below."""
    return Fraction(int(units / scale))


def _told(section: Section, letters: Mapping[str, str], say: Phrasing) -> str:
    rows = []
    for panel in section.panels:
        end, side = panel.from_end + panel.length, panel.from_edge + panel.width
        rows.append(
            f"{name_of(panel, letters)} lies {say.length(panel.from_end)} to {say.cut(end)} from the cut end and"
            f" {say.length(panel.from_edge)} to {say.cut(side)} from the near side"
        )
    for number, lane in enumerate(section.lanes, 1):
        layer = {"flat": "", "fold": " on the fold", "upper": " in the upper layer", "under": " in the under layer"}[
            lane.layer
        ]
        held = listed([f"{name_of(each, letters)} {say.cut(each.length)}" for each in lane.segments]) or "nothing"
        rows.append(f"lane {number}{layer}, {say.length(lane.depth)} deep, holds {held}")
    return "; ".join(rows)
