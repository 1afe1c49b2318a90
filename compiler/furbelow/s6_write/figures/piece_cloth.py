"""Pieces as cloth in the piece view: faces, edges in the pattern of their state, seams, margins, breaks."""

from __future__ import annotations

from furbelow.garment.bench import Bench, Edge
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed
from furbelow.named import NamedTuple
from furbelow.s6_write.figures.edges import break_line, edge, face, wave
from furbelow.s6_write.figures.hanging import edge_now, seam_between
from furbelow.s6_write.figures.language import ACCENT, FINISHED, INK, PLAIN, SEAM, THIN, Pattern, pattern_of
from furbelow.s6_write.figures.pen import Point, Sheet

LEFT, RIGHT = 92.0, 306.0  # the cloth is drawn between; labels stand outside
MIDDLE = (LEFT + RIGHT) / 2
MARGIN_SHOWN = 8.0  # units for a seam margin, which would be too narrow to see


class Shown(NamedTuple):
    """One piece as it is drawn: half widths above and below, heights."""

    name: str
    top: Edge
    bottom: Edge
    y0: float
    y1: float
    half_above: float
    half_below: float
    ring: bool


class Cloth:
    """Draws the pieces of one bench; `inside` shows the wrong side with its margins."""

    def __init__(self, bench: Bench, done: Performed, say: Phrasing) -> None:
        self.bench, self.done, self.say = bench, done, say
        self.inside = False

    def draw(self, sheet: Sheet, shown: Shown, cut: bool) -> None:
        """One piece; `cut` breaks its middle out where it is wide enough."""
        above, below = shown.half_above, shown.half_below
        corners = (
            (MIDDLE - above, shown.y0),
            (MIDDLE + above, shown.y0),
            (MIDDLE + below, shown.y1),
            (MIDDLE - below, shown.y1),
        )
        if shown.ring and shown.top.state not in ("sewn", "enclosed", "hemmed"):
            self._mouth(sheet, shown)
        gap = 4.0 if cut and min(above, below) > 22 else 0.0
        if gap:
            cuts = [wave((MIDDLE + side, shown.y0), (MIDDLE + side, shown.y1)) for side in (-gap, gap)]
            face(sheet, [corners[0], *cuts[0], corners[3]], wrong=self.inside)
            face(sheet, [*cuts[1], corners[2], corners[1]], wrong=self.inside)
            for line in cuts:
                break_line(sheet, line)
        else:
            face(sheet, corners, wrong=self.inside)
        for start, end, each, inward in (
            (corners[0], corners[1], shown.top, 1.0),
            (corners[3], corners[2], shown.bottom, -1.0),
        ):
            worked = self.worked(each.name)
            for a, b in with_gap(start, end, gap):
                edge(sheet, a, b, self._pattern(shown, each), (0, inward), worked)
        self._sides(sheet, shown, corners)

    def _pattern(self, shown: Shown, each: Edge) -> Pattern:
        """The pattern of an edge; the top of a folded band is its fold."""
        return "fold" if self.folded(shown, each) else pattern_of(each)

    def folded(self, shown: Shown, each: Edge) -> bool:
        """Whether what shows here is the fold of a band."""
        return self.bench.cloths[shown.name].folded and each is shown.top

    def margin(self, sheet: Sheet, upper: Shown, lower: Shown, gap: float) -> None:
        """The margin of the seam between two pieces, seen from the wrong side."""
        seam = seam_between(self.bench, upper.name, lower.name)
        if seam is None:
            return
        up = seam.turned == upper.name
        free = lower.y0 + (-MARGIN_SHOWN if up else MARGIN_SHOWN)
        worked = seam.name in self.changed_seams()
        half = lower.half_above
        for left, right in with_gap((MIDDLE - half, free), (MIDDLE + half, free), gap):
            strip = [left, right, (right[0], lower.y0), (left[0], lower.y0)]
            face(sheet, strip, wrong=True)
            edge(sheet, left, right, FINISHED[seam.state], (0, 1 if up else -1), worked)
            sheet.line([(left[0], lower.y0), (right[0], lower.y0)], INK, PLAIN)
            if seam.topstitched:
                y = lower.y0 + (-5 if up else 5)
                sheet.line([(left[0], y), (right[0], y)], ACCENT if worked else INK, PLAIN, SEAM)

    def _sides(self, sheet: Sheet, shown: Shown, corners: tuple[Point, Point, Point, Point]) -> None:
        ends = edge_now(self.bench, f"{shown.name}.start"), edge_now(self.bench, f"{shown.name}.end")
        for start, end, each, inward in (
            (corners[0], corners[3], ends[0], 1.0),
            (corners[1], corners[2], ends[1], -1.0),
        ):
            pattern: Pattern = "fold" if shown.ring else pattern_of(each)
            edge(sheet, start, end, pattern, (inward, 0), not shown.ring and self.worked(each.name))
        if shown.ring:
            share = -0.55
            worked = self.worked(ends[0].name)
            line = [(MIDDLE + share * shown.half_above, shown.y0), (MIDDLE + share * shown.half_below, shown.y1)]
            sheet.line(line, ACCENT if worked else INK, PLAIN + 0.6 * worked)
            if self.inside:
                self._ends_margin(sheet, line, shown.name, worked)
            else:
                sheet.line([(x + 3, y) for x, y in line], ACCENT if worked else INK, PLAIN, SEAM)
        joins = 0 if self.bench.cloths[shown.name].in_parts else self.joins(shown.name)
        for index in range(1, min(joins, 6) + 1):
            share = -1 + 2 * index / (min(joins, 6) + 1)
            if abs(share) < 0.2:  # beside the place where the middle is left out
                share = max(0.25, 11 / shown.half_above)
            worked = f"{shown.name}.joins" in self.changed_seams()
            line = [(MIDDLE + share * shown.half_above, shown.y0), (MIDDLE + share * shown.half_below, shown.y1)]
            sheet.line(line, ACCENT if worked else INK, THIN + 0.6 * worked, SEAM)

    def _ends_margin(self, sheet: Sheet, line: list[Point], piece: str, worked: bool) -> None:
        """The margin of the seam that closes a ring, seen from the wrong side."""
        seam = next((seam for seam in self.bench.seams.values() if f"{piece}.start" in seam.edges), None)
        if seam is None:
            return
        free = [(x + MARGIN_SHOWN, y) for x, y in line]
        face(sheet, [*line, free[1], free[0]], wrong=True)
        edge(sheet, free[0], free[1], FINISHED[seam.state], (-1, 0), worked)

    def _mouth(self, sheet: Sheet, shown: Shown) -> None:
        """The opening of a ring, where its inside is seen."""
        half, high = shown.half_above, min(9.0, shown.half_above / 4)
        curve = [(MIDDLE - half + 2 * half * i / 16, shown.y0 - high * (1 - (2 * i / 16 - 1) ** 2)) for i in range(17)]
        face(sheet, curve, wrong=True)
        sheet.line(curve, INK, PLAIN)

    def joins(self, piece: str) -> int:
        """Joins in one strip: those of the cutting plan, shared over the strips that were cut."""
        cut = self.done.before.cloths[piece].piece.count
        return -(-self.say.joins.get(piece, 0) // cut)

    def changed_seams(self) -> frozenset[str]:
        """The seams that this step sews, neatens or turns; one that is only covered stays as it was."""
        before, after = self.done.before.seams, self.done.after.seams
        return frozenset(
            name
            for name, seam in after.items()
            if name not in before or before[name]._replace(trapped=seam.trapped) != seam
        )

    def worked(self, name: str) -> bool:
        """Whether this step changes the edge, or a seam that it lies in."""
        before, after = self.done.before, self.done.after
        if name in before.edges and name in after.edges:
            if before.edges[name].state != after.edges[name].state:
                return True
            if before.edges[name].gathered != after.edges[name].gathered:
                return True
        elif name in after.edges:
            return True
        changed = self.changed_seams()
        return any(name in after.seams[seam].edges for seam in changed)


def with_gap(start: Point, end: Point, gap: float) -> list[tuple[Point, Point]]:
    if not gap:
        return [(start, end)]
    return [(start, (MIDDLE - gap, start[1])), ((MIDDLE + gap, end[1]), end)]
