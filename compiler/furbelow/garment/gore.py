"""Gores: panels wider at the hem, laid head to tail in rectangles, with one side straight or both slanting alike."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from fractions import Fraction
from functools import lru_cache
from math import ceil, sqrt

from furbelow.named import NamedTuple

FRONT, SIDE, BACK = "front", "side", "back"
GORE_PLACES = (FRONT, SIDE, BACK)
LEAST_UNLIKE = Fraction(1)  # mm


class Width(NamedTuple):
    """Like gores of one garment: where they hang, the finished edges of each in mm, and how many they are."""

    place: str
    top: Fraction
    hem: Fraction
    many: int


class Laid(NamedTuple):
    """A gore in its rectangle: from where to where it lies on the upper and on the lower edge, in mm from the left."""

    place: str
    upper: tuple[Fraction, Fraction]
    lower: tuple[Fraction, Fraction]

    @property
    def ends(self) -> Fraction:
        return max(self.upper[1], self.lower[1])

    def moved(self, by: Fraction) -> Laid:
        return self._replace(
            upper=(self.upper[0] + by, self.upper[1] + by), lower=(self.lower[0] + by, self.lower[1] + by)
        )


Row = tuple[Laid, ...]
Line = tuple[Fraction, Fraction]  # where it meets the upper and the lower edge of the rectangle


class Gore(NamedTuple):
    """All lengths in mm. top, hem: the finished edges of one gore, of one on average where they differ; depth: between them.

    above, below: what seams and turns take beyond the two; ends: the margin at each side, measured level.
    widths: the gores that there are. both: both sides slant alike, else one is straight. one_way: none may stand on its head.
    room: the widest a row of them may be. rounding: to which the rectangles are cut, where both sides slant; 0 for none.
    """

    top: Fraction
    hem: Fraction
    depth: Fraction
    above: Fraction
    below: Fraction
    ends: Fraction
    widths: tuple[Width, ...]
    both: bool
    one_way: bool
    room: Fraction
    rounding: Fraction = Fraction(0)

    @property
    def cut_top(self) -> Fraction:
        """Level across the cut top: a slanting side runs on through the margin."""
        return self._narrow(self.top, self.hem)

    @property
    def cut_bottom(self) -> Fraction:
        return self._broad(self.top, self.hem)

    @property
    def cut_depth(self) -> Fraction:
        return self.above + self.depth + self.below

    @property
    def area(self) -> Fraction:
        """Of one cut gore in mm2, on average."""
        return (self.cut_top + self.cut_bottom) / 2 * self.cut_depth

    @property
    def paired(self) -> bool:
        """Two with a straight side lie head to tail in each rectangle, and nothing stays over."""
        return not self.both and not self.one_way

    @property
    def rows(self) -> tuple[Row, ...]:
        """The gores of each rectangle, from left to right."""
        return _rows(self)

    @property
    def blank(self) -> tuple[Fraction, Fraction]:
        """Width and height of the rectangles, which are all alike."""
        wide = max(row[-1].ends for row in self.rows)
        # Beside a last slanting side there is room; a straight one is the side of its rectangle.
        step = self.rounding if self.both else Fraction(0)
        return (step * ceil(wide / step) if step else wide), self.cut_depth

    @property
    def round(self) -> tuple[str, ...]:
        """The gores in the order in which they are sewn, from the front on."""
        many = {width.place: width.many for width in self.widths}
        sides = many.get(SIDE, 0)
        first = sides - sides // 2
        return (
            *(FRONT,) * many.get(FRONT, 0),
            *(SIDE,) * first,
            *(BACK,) * many.get(BACK, 0),
            *(SIDE,) * (sides - first),
        )

    @property
    def differ(self) -> bool:
        """Whether some gores are wider than others, so that each has its own place."""
        return len(self.widths) > 1

    @property
    def slants(self) -> tuple[Fraction, Fraction]:
        """How long the sides are for each length of depth, of the gore whose sides are shortest and of the one whose are
        longest: a slanting side is longer than the gore is deep. Where neighbours differ, the seam is as long as the shorter.
        With one straight side, both are told as the mean of that and the slanting one."""
        found = []
        for width in self.widths:
            slanting = self._slanting(width) / self.cut_depth
            found.append(slanting if self.both else (1 + slanting) / 2)
        return min(found), max(found)

    @property
    def unlike(self) -> tuple[tuple[str, str, Fraction], ...]:
        """Neighbours whose cut sides are not equally long: where the longer hangs, where the shorter does, and by how many mm.
        Less than the needle can tell does not count."""
        sides = {width.place: self._slanting(width) for width in self.widths}
        found: dict[tuple[str, str], Fraction] = {}
        for one, other in zip(self.round, (*self.round[1:], *self.round[:1]), strict=True):
            longer, shorter = sorted((one, other), key=lambda place: sides[place], reverse=True)
            if sides[longer] - sides[shorter] >= LEAST_UNLIKE:
                found[longer, shorter] = sides[longer] - sides[shorter]
        return tuple((longer, shorter, by) for (longer, shorter), by in found.items())

    @property
    def side_seam(self) -> tuple[int, bool]:
        """The seam nearest to the wearer's left side: after how many gores it comes, counted from the front on, and whether
        it lies at the side at every height, a quarter of the way round from the middle of the front."""
        widths = {width.place: width for width in self.widths}
        count, found = len(self.round), []
        # The middle of the front is that of the front gore; without one it is where the order begins.
        half = (widths[FRONT].top / 2, widths[FRONT].hem / 2) if FRONT in widths else (Fraction(0), Fraction(0))
        quarter = (half[0] + self.top * count / 4, half[1] + self.hem * count / 4)
        passed = (Fraction(0), Fraction(0))
        for number, place in enumerate(self.round, 1):
            width = widths[place]
            passed = (passed[0] + width.top, passed[1] + width.hem)
            found.append((max(abs(passed[0] - quarter[0]), abs(passed[1] - quarter[1])), number))
        nearest, number = min(found)
        return number, nearest == 0

    def cut_widths(self, width: Width) -> tuple[Fraction, Fraction]:
        """Level across the cut top and bottom of one gore."""
        return self._narrow(width.top, width.hem), self._broad(width.top, width.hem)

    def _slanting(self, width: Width) -> Fraction:
        """How long a slanting side of one cut gore is."""
        narrow, broad = self.cut_widths(width)
        return slope((broad - narrow) / (2 if self.both else 1), self.cut_depth)

    def alike(self) -> tuple[tuple[Row, int], ...]:
        """Each way in which a rectangle is marked, whatever place its gores have, and how many are."""
        many = Counter(map(_outline, self.rows))
        first = {_outline(row): row for row in reversed(self.rows)}
        return tuple((first[outline], number) for outline, number in many.items())

    def placed(self, row: Row) -> tuple[tuple[Row, int], ...]:
        """The rectangles marked like this one, by the places that their gores have, and how many there are of each."""
        return tuple(Counter(each for each in self.rows if _outline(each) == _outline(row)).items())

    def _narrow(self, top: Fraction, hem: Fraction) -> Fraction:
        return top - (hem - top) * self.above / self.depth + 2 * self.ends

    def _broad(self, top: Fraction, hem: Fraction) -> Fraction:
        return hem + (hem - top) * self.below / self.depth + 2 * self.ends

    def outline(self, width: Width, turned: bool) -> Laid:
        """One gore by itself, its left corner at 0."""
        narrow, broad = self.cut_widths(width)
        if turned:
            off = (broad - narrow) / 2 if self.both else broad - narrow
            return Laid(width.place, (Fraction(0), broad), (off, off + narrow))
        off = (broad - narrow) / 2 if self.both else Fraction(0)
        return Laid(width.place, (off, off + narrow), (Fraction(0), broad))


def _outline(row: Row) -> tuple[tuple[Line, Line], ...]:
    """From where to where each gore lies on both edges, whatever its place."""
    return tuple((laid.upper, laid.lower) for laid in row)


def lines_of(row: Row, wide: Fraction) -> tuple[Line, ...]:
    """The lines to draw in a rectangle so wide, from the left; its own two sides are left out."""
    found = [line for laid in row for line in zip(laid.upper, laid.lower, strict=True)]
    sides = {(Fraction(0), Fraction(0)), (wide, wide)}
    return tuple(line for line in dict.fromkeys(found) if line not in sides)


def slope(across: Fraction, high: Fraction) -> Fraction:
    """How long a slanting line is that goes so far across over this height, to 0.1 mm."""
    return Fraction(round(sqrt(float(high**2 + across**2)), 1)).limit_denominator(10)


@lru_cache(maxsize=64)
def _rows(gore: Gore) -> tuple[Row, ...]:
    singles = [width for width in gore.widths for _ in range(width.many)]
    if not gore.both:
        size = 2 if gore.paired else 1
        return tuple(_row(gore, singles[at : at + size]) for at in range(0, len(singles), size))
    return next(
        rows
        for many in range(1, len(singles) + 1)
        for rows in (tuple(_row(gore, each) for each in _shared_out(gore, singles, many)),)
        if many == len(singles) or max(row[-1].ends for row in rows) <= gore.room
    )


def _row(gore: Gore, widths: Sequence[Width]) -> Row:
    """Gores side by side as close as they go, every second one on its head where it may."""
    return tuple(
        _side_by_side(gore.outline(width, at % 2 == 1 and not gore.one_way) for at, width in enumerate(widths))
    )


def _side_by_side(gores: Iterator[Laid]) -> Iterator[Laid]:
    upper = lower = Fraction(0)
    for gore in gores:
        placed = gore.moved(max(upper - gore.upper[0], lower - gore.lower[0]))
        upper, lower = placed.upper[1], placed.lower[1]
        yield placed


def _shared_out(gore: Gore, singles: Sequence[Width], rows: int) -> list[list[Width]]:
    """The gores in so many rows of about one width: the broadest first, each to the row with the most room. In a row they
    lie by the slant of their sides, so that no more stays over than at one end."""
    shared: list[list[Width]] = [[] for _ in range(rows)]
    for width in sorted(singles, key=lambda each: sum(gore.cut_widths(each)), reverse=True):
        min(shared, key=lambda row: sum(sum(gore.cut_widths(each)) for each in row)).append(width)
    return [sorted(row, key=lambda each: each.hem - each.top) for row in shared]
