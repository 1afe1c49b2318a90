"""The piece view: what is worked on, before and after, with every edge in the pattern of its state.

Depths have one scale in both halves. Where the pieces are too long for the sheet, their middle is left out between two
wavy lines and their drawn widths keep the proportions of their lengths to each other.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from compiler.cloth.bench import Bench, Edge, Seam
from compiler.s3_rehearse.run import Run
from compiler.s6_write.figures.edges import break_line, edge, face, wave
from compiler.s6_write.figures.hanging import chains, edge_now, seam_between
from compiler.s6_write.figures.language import (
    ACCENT,
    HIDDEN,
    INK,
    LEADING,
    PLAIN,
    SEAM,
    SOFT,
    THIN,
    in_words,
    pattern_of,
)
from compiler.s6_write.figures.numbers import Numbers
from compiler.s6_write.figures.pen import Point, Sheet, broken, spread, width_of
from compiler.s6_write.guide import Figure
from compiler.say import Say, listed
from compiler.techniques.technique import Performed

LEFT, RIGHT = 92.0, 306.0  # the cloth is drawn between; labels stand outside
MIDDLE = (LEFT + RIGHT) / 2
MARGIN_SHOWN = 8.0  # units for a seam margin, which would be too narrow to see
FULL = 0.5  # units for a mm of depth at most
APART = 30.0  # between pieces that are not sewn together


@dataclass(frozen=True)
class _Shown:
    """One piece as it is drawn: half widths above and below, heights."""

    name: str
    top: Edge
    bottom: Edge
    y0: float
    y1: float
    half_above: float
    half_below: float
    ring: bool


@dataclass(frozen=True)
class _Label:
    y: float
    rows: tuple[str, ...]
    worked: bool
    to: Point


def piece_view(done: Performed, run: Run, say: Say, numbers: Numbers) -> Figure | None:
    """The pieces of a step before and after it, or once where nothing of them changes shape."""
    before = _Half("Before", done.before, done, say)
    after = _Half("After", done.after, done, say)
    same = _looks(done.before, after.pieces) == _looks(done.after, after.pieces)
    halves = [after] if same else [before, after]
    longest = max(float(half.longest) for half in halves)
    deepest = max(float(half.deepest) for half in halves)
    most = max(sum(len(chain) for chain in half.shown) for half in halves)
    upright = min(FULL, (60 + 40 * min(most, 3)) / deepest)
    level = min(upright, (RIGHT - LEFT) / longest)
    sheet, y, told = Sheet(), 0.0, []
    for half in halves:
        title = "" if same else half.title
        y, words = half.draw(sheet, y, upright, level, title)
        told.append(words)
    cut = level < upright
    if after.inside:
        sheet.write((sheet.width / 2, y + 2), "Seam margins are drawn wider than they are.", "middle", colour=SOFT)
        y += LEADING
    if cut:
        sheet.write((sheet.width / 2, y + 2), "The middle is left out at the wavy lines.", "middle", colour=SOFT)
    changed = "" if same else " The edges that this step changes are drawn thicker."
    return Figure("piece", sheet.svg(), " ".join(told), _caption(done, say, same, cut) + changed)


def _caption(done: Performed, say: Say, same: bool, cut: bool) -> str:
    what = say.the(done.touches)
    scale = "depths to one scale, widths in proportion" if cut else "to scale"
    return f"{what[0].upper()}{what[1:]}{'' if same else ' before and after'}, {scale}."


def _looks(bench: Bench, pieces: tuple[str, ...]) -> object:
    edges = [edge_now(bench, f"{piece}.{side}") for piece in pieces for side in ("top", "bottom", "start", "end")]
    seams = [seam for seam in bench.seams.values() if any(ply.piece in pieces for ply in seam.plies)]
    return ([bench.cloths[piece].in_parts for piece in pieces], edges, seams, [bench.units[piece] for piece in pieces])


class _Half:
    """One half of the figure: the pieces at one moment."""

    def __init__(self, title: str, bench: Bench, done: Performed, say: Say) -> None:
        self.title, self.bench, self.done, self.say = title, bench, done, say
        reached = {other for piece in done.touches for other in done.after.unit(piece)}
        now = {other for piece in done.touches for other in bench.unit(piece)}
        self.pieces = tuple(piece for piece in bench.cloths if piece in reached & now)
        changed_seams = self._changed_seams()
        if changed_seams and all(name.endswith(".joins") for name in changed_seams):
            self.pieces = tuple(piece for piece in self.pieces if self._joins(piece)) or self.pieces
        ranked = [piece for chain in chains(done.after, self.pieces) for piece in chain]
        found = chains(bench, sorted(self.pieces, key=ranked.index))
        # What changes in a margin only is drawn from the wrong side, where the margin lies.
        edges = (edge_now(bench, f"{piece}.{side}") for piece in done.touches for side in ("top", "bottom"))
        changed = any(done.before.edges.get(each.name) != done.after.edges.get(each.name) for each in edges)
        same_units = done.before.units == done.after.units
        self.inside = bool(self._changed_seams()) and not changed and same_units and not self._ends_move()
        # Chains behind the outer one of the same unit are drawn as hidden outlines.
        self.shown: list[tuple[str, ...]] = []
        self.hidden: list[tuple[str, ...]] = []
        for chain in found:
            behind = any(bench.units[chain[0]] == bench.units[other[0]] for other in self.shown)
            (self.hidden if behind else self.shown).append(chain)

    def _ends_move(self) -> bool:
        """Whether a step closes rings or joins strips, which is seen from the right side."""
        return {name: (cloth.ring, cloth.in_parts) for name, cloth in self.done.before.cloths.items()} != {
            name: (cloth.ring, cloth.in_parts) for name, cloth in self.done.after.cloths.items()
        }

    def _length(self, worked: Edge) -> Fraction:
        return worked.set_length / 2 if self.bench.ring(worked) else worked.set_length

    @property
    def longest(self) -> Fraction:
        return max(self._length(edge_now(self.bench, f"{piece}.{side}")) for piece in self.pieces for side in ("top", "bottom"))

    @property
    def deepest(self) -> Fraction:
        return max(
            sum((self.bench.depth(piece) for chain in self.shown for piece in chain), Fraction(0)),
            *(sum((self.bench.depth(piece) for piece in chain), Fraction(0)) for chain in self.hidden),
            Fraction(1),
        )

    def draw(self, sheet: Sheet, y: float, upright: float, level: float, title: str) -> tuple[float, str]:
        self._head(sheet, y, title)
        top = y + 12
        y += 34
        placed: list[list[_Shown]] = []
        for chain in self.shown:
            row = []
            for piece in chain:
                row.append(self._shown(piece, y, upright, level))
                y = row[-1].y1
            placed.append(row)
            y += APART
        y -= APART
        for chain in self.hidden:
            y = max(y, self._behind(sheet, chain, placed, upright, level))
        left: list[_Label] = []
        right: list[_Label] = []
        for row in placed:
            for index, shown in enumerate(row):
                self._cloth(sheet, shown, level < upright)
                above = row[index - 1] if index else None
                left.append(self._edge_label(shown, above))
                right.append(self._piece_label(shown))
            if self.inside:
                for upper, lower in pairwise(row):
                    self._margin(sheet, upper, lower, 4.0 if level < upright and lower.half_above > 22 else 0.0)
            left.append(self._last_label(row[-1]))
        right += self._behind_labels(placed, upright)
        low = max(self._write(sheet, left, top, y, "left"), self._write(sheet, right, top, y, "right"))
        return max(y, low) + 26, self._told(placed)

    def _head(self, sheet: Sheet, y: float, title: str) -> None:
        copies = max(self.bench.cloths[piece].copies for piece in self.pieces)
        rings = [self.bench.cloths[piece].ring for piece in self.pieces]
        notes = []
        if copies > 1:
            notes.append(f"{copies} alike")
        if all(rings):
            notes.append("a ring, lengths all round")
        elif not any(rings):
            notes.append("flat")
        notes.append(self._side())
        x = 8.0
        if title:
            sheet.write((x, y), f"{title}:", bold=True)
            x += width_of(f"{title}:", True) + 4
        sheet.write((x, y), ", ".join(notes), colour=SOFT)

    def _side(self) -> str:
        solved = self.say.solved
        cloths = {solved.pieces[piece].piece.cloth.text for piece in self.pieces}
        if not any(solved.materials[cloth].material.has_right_side for cloth in cloths):
            return "margins up" if self.inside else "either side up"
        return "wrong side up" if self.inside else "right side up"

    def _shown(self, piece: str, y: float, upright: float, level: float) -> _Shown:
        top, bottom = (edge_now(self.bench, f"{piece}.{side}") for side in ("top", "bottom"))
        above, below = (float(self._length(each)) * level / 2 for each in (top, bottom))
        deep = max(float(self.bench.depth(piece)) * upright, 6.0)
        return _Shown(piece, top, bottom, y, y + deep, above, below, self.bench.cloths[piece].ring)

    def _cloth(self, sheet: Sheet, shown: _Shown, cut: bool) -> None:
        above, below = shown.half_above, shown.half_below
        corners = (MIDDLE - above, shown.y0), (MIDDLE + above, shown.y0), (MIDDLE + below, shown.y1), (MIDDLE - below, shown.y1)
        if shown.ring and shown.top.state not in ("sewn", "enclosed", "hemmed"):
            self._mouth(sheet, shown)
        if self.bench.cloths[shown.name].in_parts and self._joins(shown.name):
            self._parts(sheet, shown)
            return
        gap = 4.0 if cut and min(above, below) > 22 else 0.0
        if gap:
            cuts = [wave((MIDDLE + side, shown.y0), (MIDDLE + side, shown.y1)) for side in (-gap, gap)]
            face(sheet, [corners[0], *cuts[0], corners[3]], wrong=self.inside)
            face(sheet, [*cuts[1], corners[2], corners[1]], wrong=self.inside)
            for line in cuts:
                break_line(sheet, line)
        else:
            face(sheet, corners, wrong=self.inside)
        for start, end, each, inward in ((corners[0], corners[1], shown.top, 1.0), (corners[3], corners[2], shown.bottom, -1.0)):
            worked = self._worked(each.name)
            for a, b in _with_gap(start, end, gap):
                edge(sheet, a, b, self._pattern(shown, each), (0, inward), worked)
        self._sides(sheet, shown, corners)

    def _pattern(self, shown: _Shown, each: Edge) -> str:
        """The pattern of an edge; the top of a folded band is its fold."""
        return "fold" if self._folded(shown, each) else pattern_of(each)

    def _folded(self, shown: _Shown, each: Edge) -> bool:
        return self.bench.cloths[shown.name].folded and each is shown.top

    def _parts(self, sheet: Sheet, shown: _Shown) -> None:
        """A strip as it comes from the table, in the segments that the cutting plan gives it."""
        parts = min(self._joins(shown.name), 6) + 1
        gap = 7.0
        wide = (2 * shown.half_above - gap * (parts - 1)) / parts
        for index in range(parts):
            left = MIDDLE - shown.half_above + index * (wide + gap)
            corners = [(left, shown.y0), (left + wide, shown.y0), (left + wide, shown.y1), (left, shown.y1)]
            face(sheet, corners, wrong=False)
            for start, end, inward in zip(corners, [*corners[1:], corners[0]], ((0, 1), (-1, 0), (0, -1), (1, 0)), strict=True):
                joined = inward[0] != 0 and 0 < index + (inward[0] < 0) < parts
                edge(sheet, start, end, "raw", inward, joined)

    def _margin(self, sheet: Sheet, upper: _Shown, lower: _Shown, gap: float) -> None:
        """The margin of the seam between two pieces, seen from the wrong side."""
        seam = seam_between(self.bench, upper.name, lower.name)
        if seam is None:
            return
        up = seam.turned == upper.name
        free = lower.y0 + (-MARGIN_SHOWN if up else MARGIN_SHOWN)
        worked = seam.name in self._changed_seams()
        half = lower.half_above
        for left, right in _with_gap((MIDDLE - half, free), (MIDDLE + half, free), gap):
            strip = [left, right, (right[0], lower.y0), (left[0], lower.y0)]
            face(sheet, strip, wrong=True)
            edge(sheet, left, right, str(seam.state), (0, 1 if up else -1), worked)
            sheet.line([(left[0], lower.y0), (right[0], lower.y0)], INK, PLAIN)
            if seam.topstitched:
                y = lower.y0 + (-5 if up else 5)
                sheet.line([(left[0], y), (right[0], y)], ACCENT if worked else INK, PLAIN, SEAM)

    def _sides(self, sheet: Sheet, shown: _Shown, corners: tuple[Point, Point, Point, Point]) -> None:
        ends = edge_now(self.bench, f"{shown.name}.start"), edge_now(self.bench, f"{shown.name}.end")
        for start, end, each, inward in ((corners[0], corners[3], ends[0], 1.0), (corners[1], corners[2], ends[1], -1.0)):
            pattern = "fold" if shown.ring else pattern_of(each)
            edge(sheet, start, end, pattern, (inward, 0), not shown.ring and self._worked(each.name))
        if shown.ring:
            share = -0.55
            worked = self._worked(ends[0].name)
            line = [(MIDDLE + share * shown.half_above, shown.y0), (MIDDLE + share * shown.half_below, shown.y1)]
            sheet.line(line, ACCENT if worked else INK, PLAIN + 0.6 * worked)
            if self.inside:
                self._ends_margin(sheet, line, shown.name, worked)
            else:
                sheet.line([(x + 3, y) for x, y in line], ACCENT if worked else INK, PLAIN, SEAM)
        joins = 0 if self.bench.cloths[shown.name].in_parts else self._joins(shown.name)
        for index in range(1, min(joins, 6) + 1):
            share = -1 + 2 * index / (min(joins, 6) + 1)
            if abs(share) < 0.08:
                share = 0.12
            worked = f"{shown.name}.joins" in self._changed_seams()
            line = [(MIDDLE + share * shown.half_above, shown.y0), (MIDDLE + share * shown.half_below, shown.y1)]
            sheet.line(line, ACCENT if worked else INK, THIN + 0.6 * worked, SEAM)

    def _ends_margin(self, sheet: Sheet, line: list[Point], piece: str, worked: bool) -> None:
        """The margin of the seam that closes a ring, seen from the wrong side."""
        seam = next(seam for seam in self.bench.seams.values() if f"{piece}.start" in seam.edges)
        free = [(x + MARGIN_SHOWN, y) for x, y in line]
        face(sheet, [*line, free[1], free[0]], wrong=True)
        edge(sheet, free[0], free[1], str(seam.state), (-1, 0), worked)

    def _mouth(self, sheet: Sheet, shown: _Shown) -> None:
        """The opening of a ring, where its inside is seen."""
        half, high = shown.half_above, min(9.0, shown.half_above / 4)
        curve = [
            (MIDDLE - half + 2 * half * i / 16, shown.y0 - high * (1 - (2 * i / 16 - 1) ** 2)) for i in range(17)
        ]
        face(sheet, curve, wrong=True)
        sheet.line(curve, INK, PLAIN)

    def _joins(self, piece: str) -> int:
        """Joins in one strip: those of the cutting plan, shared over the strips that were cut."""
        cut = self.done.before.cloths[piece].piece.count
        return -(-self.say.joins.get(piece, 0) // cut)

    def _changed_seams(self) -> frozenset[str]:
        before, after = self.done.before.seams, self.done.after.seams
        return frozenset(name for name, seam in after.items() if before.get(name) != seam)

    def _worked(self, name: str) -> bool:
        """Whether this step changes the edge, or a seam that it lies in."""
        before, after = self.done.before, self.done.after
        if name in before.edges and name in after.edges:
            if before.edges[name].state != after.edges[name].state:
                return True
            if before.edges[name].gathered != after.edges[name].gathered:
                return True
        elif name in after.edges:
            return True
        changed = self._changed_seams()
        return any(name in after.seams[seam].edges for seam in changed)

    # --- labels ---

    def _edge_label(self, shown: _Shown, above: _Shown | None) -> _Label:
        to = (MIDDLE - shown.half_above, shown.y0)
        length = self.say.length(shown.top.set_length)
        if above is None:
            words = "fold" if self._folded(shown, shown.top) else in_words(shown.top)
            return _Label(shown.y0, (length, words), self._worked(shown.top.name), to)
        seam = seam_between(self.bench, above.name, shown.name)
        rows = (length, "seam") if seam is None else (length, _margin(seam))
        worked = seam is not None and seam.name in self._changed_seams()
        return _Label(shown.y0, rows, worked, to)

    def _last_label(self, shown: _Shown) -> _Label:
        to = (MIDDLE - shown.half_below, shown.y1)
        rows = (self.say.length(shown.bottom.set_length), in_words(shown.bottom))
        return _Label(shown.y1, rows, self._worked(shown.bottom.name), to)

    def _piece_label(self, shown: _Shown) -> _Label:
        rows = (self.say.piece(shown.name), f"{self.say.length(self.bench.depth(shown.name))} deep")
        middle = (shown.y0 + shown.y1) / 2
        return _Label(middle, rows, False, (MIDDLE + (shown.half_above + shown.half_below) / 2, middle))

    def _behind(
        self, sheet: Sheet, chain: tuple[str, ...], placed: list[list[_Shown]], upright: float, level: float
    ) -> float:
        """A layer inside the outer one, its outline dashed; how far down it reaches."""
        y = self._level(chain, placed)
        for piece in chain:
            shown = self._shown(piece, y, upright, level)
            above, below = shown.half_above, shown.half_below
            sheet.line(
                [(MIDDLE - above, y), (MIDDLE + above, y), (MIDDLE + below, shown.y1), (MIDDLE - below, shown.y1)],
                SOFT, PLAIN, HIDDEN, closed=True,
            )  # fmt: skip
            y = shown.y1
        return y

    def _level(self, chain: tuple[str, ...], placed: list[list[_Shown]]) -> float:
        """The height at which an inner layer begins: that of the outer layer in the same stack or seam."""
        stack = edge_now(self.bench, f"{chain[0]}.top").name
        for row in placed:
            for shown in row:
                if shown.top.name == stack:
                    return shown.y0
        return placed[0][0].y0

    def _behind_labels(self, placed: list[list[_Shown]], upright: float) -> list[_Label]:
        labels = []
        for chain in self.hidden:
            deep = sum((self.bench.depth(piece) for piece in chain), Fraction(0))
            y = self._level(chain, placed) + float(deep) * upright
            half = float(self._length(edge_now(self.bench, f"{chain[-1]}.bottom")))
            rows = (f"{self.say.piece(chain[-1])} inside", f"{self.say.length(deep)} deep")
            labels.append(_Label(y, rows, False, (min(MIDDLE + half, MIDDLE + 20), y)))
        return labels

    def _write(self, sheet: Sheet, labels: list[_Label], low: float, high: float, side: str) -> float:
        """The labels on one side of the cloth, each with a line to its place; how far down they reach."""
        room = LEFT - 18 if side == "left" else sheet.width - RIGHT - 22
        labels = sorted(labels, key=lambda label: label.y)
        rows = [[row for words in label.rows for row in broken(words, room, label.worked)] for label in labels]
        heights = [LEADING * len(row) + 5 for row in rows]
        middles = spread([label.y for label in labels], heights, low, high + 18)
        for label, lines, middle in zip(labels, rows, middles, strict=True):
            y = middle - LEADING * len(lines) / 2 + 11
            x = LEFT - 12 if side == "left" else RIGHT + 14
            anchor = "end" if side == "left" else "start"
            ink = ACCENT if label.worked else INK
            elbow = (LEFT - 8, middle) if side == "left" else (RIGHT + 10, middle)
            sheet.line([elbow, label.to], ACCENT if label.worked else SOFT, THIN)
            for words in lines:
                sheet.write((x, y), words, anchor, label.worked, ink)
                y += LEADING
        return (middles[-1] + heights[-1] / 2) if labels else high

    def _told(self, placed: list[list[_Shown]]) -> str:
        """The half in words, for those who can't see it."""
        parts = []
        for row in placed:
            for shown in row:
                form = "ring" if shown.ring else "flat"
                name, deep = self.say.piece(shown.name), self.say.length(self.bench.depth(shown.name))
                edges = listed(
                    [
                        f"{side} edge {self.say.length(each.set_length)}, {in_words(each)}"
                        for side, each in (("top", shown.top), ("bottom", shown.bottom))
                    ]
                )
                parts.append(f"{name} ({form}), {deep} deep, {edges}")
        parts += [f"{self.say.piece(piece)} inside" for chain in self.hidden for piece in chain]
        return f"{self.title}: {'; '.join(parts)}."


def _margin(seam: Seam) -> str:
    if seam.trapped:
        return "seam, margin covered"
    if seam.topstitched:
        return "seam stitched down"
    if seam.state == "enclosed":
        return "seam enclosed"
    return f"seam, {seam.state} margin"


def _with_gap(start: Point, end: Point, gap: float) -> list[tuple[Point, Point]]:
    if not gap:
        return [(start, end)]
    return [(start, (MIDDLE - gap, start[1])), ((MIDDLE + gap, end[1]), end)]
