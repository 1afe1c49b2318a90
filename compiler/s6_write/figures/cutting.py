"""The cutting plan drawn on the cloth: sections, lanes and segments to one scale, with what stays over.

Folded cloth is drawn opened out, its fold in the middle, so that both layers can be seen; the layer under the other lies
below the fold.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from compiler.s4_cut.plan import CuttingPlan, Lane, Section, Segment
from compiler.s6_write.figures.edges import edge, face, left_over
from compiler.s6_write.figures.language import INK, LEADING, PLAIN, RIGHT_SIDE, SOFT, THICK, THIN
from compiler.s6_write.figures.pen import Sheet, shortened, spread, width_of
from compiler.s6_write.guide import Figure
from compiler.say import Say, listed

LEFT = 86.0  # lane sizes stand left of the cloth
ACROSS = 250.0  # units for the cloth; names of narrow lanes stand right of it
ROOM = 15.0  # units that a line of words needs in a lane
FINEST = 0.24  # units for a mm at most
TALL = 520.0  # units of one figure at most, where sections allow it


def plan_figures(plan: CuttingPlan, letters: Mapping[str, str], say: Say, cloth: str, key: str) -> tuple[Figure, ...]:
    """The sections of one cloth's plan, as many in a figure as are easily read.

    letters: the letter of each piece in the cutting list, by its name. cloth: the maker's words for the cloth.
    """
    scale = _scale(plan)
    groups: list[list[int]] = []
    tall = TALL
    for number, section in enumerate(plan.sections):
        high = _height(plan, section, scale)
        if tall + high > TALL:
            groups.append([])
            tall = 0.0
        groups[-1].append(number)
        tall += high
    return tuple(_figure(plan, tuple(group), letters, say, cloth, scale, key) for group in groups)


def _figure(
    plan: CuttingPlan, numbers: tuple[int, ...], letters: Mapping[str, str], say: Say, cloth: str, scale: float, key: str
) -> Figure:
    sheet, y, told = Sheet(), 0.0, []
    for number in numbers:
        section = plan.sections[number]
        size = f"{say.cut(section.length)} of the {cloth}"
        sheet.write((8, y), f"Section {number + 1}", bold=True)
        beside = 13 + width_of(f"Section {number + 1}", True)
        sheet.write((beside, y), shortened(f"cut {size} from the bolt", sheet.width - beside - 8))
        y = _Laid(sheet, plan, section, letters, say, scale).draw(y + 30) + 34
        told.append(f"Section {number + 1}, {size}: {_told(section, letters, say)}.")
    first, last = numbers[0] + 1, numbers[-1] + 1
    which = f"section {first}" if first == last else f"sections {first} to {last}"
    opened = " Folded cloth is drawn opened out, the under layer below the fold." if plan.folded else ""
    caption = f"How to cut the {cloth}: {which} of {len(plan.sections)}, to scale. Cloth hatched both ways stays over.{opened}"
    return Figure(f"{key}-{first}", sheet.svg(), " ".join(told) + opened, caption)


class _Laid:
    """One section as it is laid: rows of lanes, selvedges, the fold."""

    def __init__(
        self, sheet: Sheet, plan: CuttingPlan, section: Section, letters: Mapping[str, str], say: Say, scale: float
    ) -> None:
        self.sheet, self.plan, self.section, self.letters, self.say, self.scale = sheet, plan, section, letters, say, scale
        self.folded = plan.folded and not section.across

    def draw(self, y: float) -> float:
        """The section with its top at y; how far down it reaches."""
        section, scale = self.section, self.scale
        wide, deep = (self.plan.usable_width, section.length) if section.across else (section.length, self.plan.usable_width)
        right, low = LEFT + float(wide) * scale, y + float(deep) * scale
        ground = [(LEFT, y), (right, y), (right, low), (LEFT, low)]
        face(self.sheet, ground, wrong=False)
        self._spare(y, right, low)
        self._frame(ground)
        depths: list[tuple[float, str]] = []
        narrow: list[tuple[float, str]] = []
        for number, lane in enumerate(section.lanes, 1):
            top = self._top(y, lane)
            middle = top + float(lane.depth) * scale / 2
            depths.append((middle, f"{number}: {self.say.length(lane.depth)}"))
            if float(lane.depth) * scale >= ROOM - 1:
                self._lane(lane, top, named=True)
            else:
                self._lane(lane, top, named=False)
                narrow.append((middle, ", ".join(name_of(each, self.letters) for each in lane.segments)))
        if self.folded:
            self._fold((y + low) / 2, right)
            narrow.append(((y + low) / 2, "fold"))
        self._beside(depths, LEFT, -1, y - 4, low + 4)
        self._beside(narrow, right, 1, y - 4, low + 4)
        kept = f"{self.say.length(self.plan.usable_width)} between the selvedges"
        if section.across:
            self.sheet.across(LEFT, right, low + 16, kept, low, below=True)
            return low + 30
        self.sheet.write(((LEFT + right) / 2, y - 8), "selvedge", "middle", colour=SOFT)
        self.sheet.across(LEFT, right, low + 16, self.say.cut(wide), low, below=True)
        self.sheet.write((LEFT + ACROSS / 2, low + 46), kept, "middle", colour=SOFT)
        return low + 48

    def _beside(self, labels: list[tuple[float, str]], x: float, side: int, low: float, high: float) -> None:
        """Words beside the cloth, each with a line to its height."""
        labels = sorted(label for label in labels if label[1])
        placed = spread([at for at, _ in labels], [LEADING] * len(labels), low, high)
        for (at, words), middle in zip(labels, placed, strict=True):
            self.sheet.line([(x + 10 * side, middle), (x + 1 * side, at)], SOFT, THIN)
            words = shortened(words, self.sheet.width - x - 17 if side > 0 else LEFT - 17)
            self.sheet.write((x + 13 * side, middle + 4.5), words, "end" if side < 0 else "start")

    def _top(self, y: float, lane: Lane) -> float:
        """Where a lane begins on the sheet; folded cloth has the fold in the middle, upper layer above it."""
        if not self.folded:
            return y + float(lane.offset) * self.scale
        fold = y + float(self.plan.usable_width) * self.scale / 2
        if lane.layer == "fold":
            return fold - float(lane.depth) * self.scale / 2
        if lane.layer == "under":
            return fold + float(lane.offset) * self.scale
        return fold - float(lane.offset + lane.depth) * self.scale

    def _lane(self, lane: Lane, top: float, named: bool) -> None:
        low = top + float(lane.depth) * self.scale
        for segment in lane.segments:
            left = LEFT + float(segment.start) * self.scale
            right = left + float(segment.length) * self.scale
            self.sheet.line([(left, top), (right, top), (right, low), (left, low)], INK, PLAIN, fill=RIGHT_SIDE, closed=True)
            if named:
                self._name(segment, left, right, top, low, lane.layer == "fold")

    def _name(self, segment: Segment, left: float, right: float, top: float, low: float, ground: bool) -> None:
        """The letter, copy and part of a segment, and its length where there is room."""
        short = name_of(segment, self.letters)
        room, middle = right - left - 6, (left + right) / 2
        length = self.say.cut(segment.length)
        y = (top + low) / 2 + 4.5
        if width_of(short, True) + width_of(f" {length}") <= room:
            begin = middle - (width_of(short, True) + 5 + width_of(length)) / 2
            self.sheet.write((begin, y), short, bold=True, ground=ground)
            self.sheet.write((begin + width_of(short, True) + 5, y), length, ground=ground)
        elif low - top >= 2 * ROOM and max(width_of(short, True), width_of(length)) <= room:
            self.sheet.write((middle, y - 7), short, "middle", bold=True)
            self.sheet.write((middle, y + 8), length, "middle")
        elif width_of(short, True) <= room + 4:
            self.sheet.write((middle, y), short, "middle", bold=True)

    def _spare(self, y: float, right: float, low: float) -> None:
        """Cloth that no segment uses, hatched both ways: the ends of lanes and what lies beside them."""
        taken = [(self._top(y, lane), lane) for lane in self.section.lanes]
        at = y
        for top, lane in sorted(taken, key=lambda pair: pair[0]):
            self._hatch(LEFT, at, right, top)
            at = top + float(lane.depth) * self.scale
            self._hatch(LEFT + float(lane.used) * self.scale, top, right, at)
        self._hatch(LEFT, at, right, low)

    def _hatch(self, left: float, top: float, right: float, low: float) -> None:
        if right - left > 1 and low - top > 1:
            outline = [(left, top), (right, top), (right, low), (left, low)]
            left_over(self.sheet, outline)
            size = f"{self.say.length(_back(right - left, self.scale))} × {self.say.length(_back(low - top, self.scale))}"
            if low - top >= 2 * ROOM and width_of(size) + 10 <= right - left:
                self.sheet.write(((left + right) / 2, (top + low) / 2 + 4.5), size, "middle", colour=SOFT, ground=True)

    def _frame(self, ground: list[tuple[float, float]]) -> None:
        upper_left, upper_right, lower_right, lower_left = ground
        if self.section.across:
            selvedges = ((upper_left, lower_left, (1.0, 0.0)), (upper_right, lower_right, (-1.0, 0.0)))
            cuts = ((upper_left, upper_right), (lower_left, lower_right))
        else:
            selvedges = ((upper_left, upper_right, (0.0, 1.0)), (lower_left, lower_right, (0.0, -1.0)))
            cuts = ((upper_left, lower_left), (upper_right, lower_right))
        for start, end, inward in selvedges:
            self.sheet.line([start, end], INK, THICK)
            out = (start[0] - inward[0] * 4, start[1] - inward[1] * 4), (end[0] - inward[0] * 4, end[1] - inward[1] * 4)
            self.sheet.line(out, INK, PLAIN, (1.2, 4))
        for start, end in cuts:
            self.sheet.line([start, end], INK, PLAIN)

    def _fold(self, y: float, right: float) -> None:
        edge(self.sheet, (LEFT - 6, y), (right, y), "fold", (0, 1), worked=True)


def name_of(segment: Segment, letters: Mapping[str, str]) -> str:
    """How a segment is called on the cloth: "B2" for the second copy of B, "B2·1" for the first of its parts."""
    return f"{letters[segment.strip]}{segment.copy}" + (f"·{segment.part}" if segment.parts > 1 else "")


def _scale(plan: CuttingPlan) -> float:
    """Units for a mm: large enough for words in the lanes where it can be, small enough for the sheet."""
    longest = max(plan.usable_width if section.across else section.length for section in plan.sections)
    return min(FINEST, ACROSS / float(longest))


def _back(units: float, scale: float) -> Fraction:
    """A drawn length as the length of cloth that it stands for, to the mm below."""
    return Fraction(int(units / scale))


def _height(plan: CuttingPlan, section: Section, scale: float) -> float:
    return float(section.length if section.across else plan.usable_width) * scale + 78


def _told(section: Section, letters: Mapping[str, str], say: Say) -> str:
    rows = []
    for number, lane in enumerate(section.lanes, 1):
        layer = {"flat": "", "fold": " on the fold", "upper": " in the upper layer", "under": " in the under layer"}[lane.layer]
        held = listed([f"{name_of(each, letters)} {say.cut(each.length)}" for each in lane.segments]) or "nothing"
        rows.append(f"lane {number}{layer}, {say.length(lane.depth)} deep, holds {held}")
    return "; ".join(rows)
