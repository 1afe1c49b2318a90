"""The piece view: what is worked on, before and after, with every edge in the pattern of its state.

Depths have one scale in both halves. Where the pieces are too long for the sheet, their middle is left out between two
wavy lines and their drawn widths keep the proportions of their lengths to each other.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple

from furbelow.garment.bench import Bench, Edge, Seam
from furbelow.garment.phrasing import Phrasing, listed
from furbelow.garment.technique import Performed
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.hanging import alike, chains, edge_now, layered, seam_between
from furbelow.s6_write.figures.language import (
    ACCENT,
    HIDDEN,
    INK,
    LEADING,
    PLAIN,
    SOFT,
    THIN,
    in_words,
)
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet, broken, spread, width_of
from furbelow.s6_write.figures.piece_cloth import LEFT, MIDDLE, RIGHT, Cloth, Shown
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

FULL = 0.5  # units for a mm of depth at most
APART = 26.0  # between pieces that are not sewn together


class _Label(NamedTuple):
    y: float
    rows: tuple[str, ...]
    worked: bool
    to: Point


def piece_view(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The pieces of a step before and after it, or once where nothing of them changes shape."""
    say = words.say
    before = _Half("Before", done.before, done, say)
    after = _Half("After", done.after, done, say)
    same = _looks(done.before, after.pieces) == _looks(done.after, after.pieces)
    halves = [after] if same else [before, after]
    longest = max(float(half.longest) for half in halves)
    deepest = max(float(half.deepest) for half in halves)
    most = max(sum(len(chain) for chain in half.shown) for half in halves)
    apart = max(len(half.shown) for half in halves)
    # Pieces that lie apart take room for themselves and their labels: the cloth is drawn smaller.
    upright = min(FULL, (104 if apart > 2 else 44 + 28 * min(most, 3)) / deepest)
    level = min(upright, (RIGHT - LEFT) / longest)
    sheet, y, told = Sheet(), 0.0, []
    for half in halves:
        title = "" if same else half.title
        y, worded = half.draw(sheet, y, upright, level, title)
        told.append(worded)
    cut = level < upright
    if after.inside:
        sheet.write((sheet.width / 2, y + 2), "Seam margins are drawn wider than they are.", "middle", colour=SOFT)
        y += LEADING
    if cut:
        sheet.write((sheet.width / 2, y + 2), "The middle is left out at the wavy lines.", "middle", colour=SOFT)
    changed = "" if same else " What changes is drawn thicker."
    return Figure("piece", sheet.svg(), " ".join(told), _caption(done, say, same, cut) + changed)


def _caption(done: Performed, say: Phrasing, same: bool, cut: bool) -> str:
    what = say.the(done.touches)
    scale = "depths to one scale, widths in proportion" if cut else "to scale"
    return f"{what[0].upper()}{what[1:]}{'' if same else ' before and after'}, {scale}."


def _looks(bench: Bench, pieces: tuple[str, ...]) -> object:
    edges = [edge_now(bench, f"{piece}.{side}") for piece in pieces for side in ("top", "bottom", "start", "end")]
    seams = [seam for seam in bench.seams.values() if any(ply.piece in pieces for ply in seam.plies)]
    return ([bench.cloths[piece].in_parts for piece in pieces], edges, seams, [bench.units[piece] for piece in pieces])


class _Half:
    """One half of the figure: the pieces at one moment."""

    def __init__(self, title: str, bench: Bench, done: Performed, say: Phrasing) -> None:
        self.title, self.bench, self.done, self.say = title, bench, done, say
        self.cloth = Cloth(bench, done, say)
        reached = {other for piece in done.touches for other in done.after.unit(piece)}
        now = {other for piece in done.touches for other in bench.unit(piece)}
        self.pieces = tuple(piece for piece in bench.cloths if piece in reached & now)
        ranked = [piece for chain in chains(done.after, self.pieces) for piece in chain]
        found = chains(bench, sorted(self.pieces, key=ranked.index))
        # What changes in a margin only is drawn from the wrong side, where the margin lies.
        edges = (edge_now(bench, f"{piece}.{side}") for piece in done.touches for side in ("top", "bottom"))
        changed = any(done.before.edges.get(each.name) != done.after.edges.get(each.name) for each in edges)
        same_units = done.before.units == done.after.units
        self.inside = self.cloth.inside = (
            bool(self.cloth.changed_seams()) and not changed and same_units and not self._ends_move()
        )
        # Of the chains of one unit the deepest is drawn, the others as hidden outlines: they lie inside or beside it.
        self.shown: list[tuple[str, ...]] = []
        self.hidden: list[tuple[str, ...]] = []
        for chain in found:
            unit = [other for other in found if bench.units[other[0]] == bench.units[chain[0]]]
            (self.shown if chain == max(unit, key=self._deep) else self.hidden).append(chain)

    def _deep(self, chain: tuple[str, ...]) -> Fraction:
        return sum((self.bench.depth(piece) for piece in chain), Fraction(0))

    def _ends_move(self) -> bool:
        """Whether a step closes rings or joins strips, which is seen from the right side."""
        return {name: (cloth.ring, cloth.in_parts) for name, cloth in self.done.before.cloths.items()} != {
            name: (cloth.ring, cloth.in_parts) for name, cloth in self.done.after.cloths.items()
        }

    def _length(self, worked: Edge) -> Fraction:
        # An edge that is slit open is drawn as the ring that its piece still is.
        ring = all(self.bench.cloths[piece].ring for piece in worked.pieces)
        return worked.set_length / 2 if ring else worked.set_length

    @property
    def longest(self) -> Fraction:
        return max(
            self._length(edge_now(self.bench, f"{piece}.{side}")) for piece in self.pieces for side in ("top", "bottom")
        )

    @property
    def deepest(self) -> Fraction:
        return max(
            sum((self._deep(chain) for chain in self.shown), Fraction(0)),
            *(self._deep(chain) for chain in self.hidden),
            Fraction(1),
        )

    def draw(self, sheet: Sheet, y: float, upright: float, level: float, title: str) -> tuple[float, str]:
        self._head(sheet, y, title)
        top = y + 12
        y += 34
        placed: list[list[Shown]] = []
        for chain in self.shown:
            row = []
            for piece in chain:
                row.append(self._shown(piece, y, upright, level))
                y = row[-1].y1
            placed.append(row)
            y += APART
        y -= APART
        for chain in self.hidden:
            if self._where(chain) == "inside":
                y = max(y, self._behind(sheet, chain, placed, upright, level))
        left: list[_Label] = []
        right: list[_Label] = []
        for row in placed:
            if len(row) == 1 and self._alike(row[0]):
                self.cloth.draw(sheet, row[0], level < upright)
                left.append(self._both_edges(row[0]))
                right.append(self._piece_label(row[0]))
                continue
            for index, shown in enumerate(row):
                self.cloth.draw(sheet, shown, level < upright)
                above = row[index - 1] if index else None
                left.append(self._edge_label(shown, above))
                right.append(self._piece_label(shown))
            if self.inside:
                for upper, lower in pairwise(row):
                    self.cloth.margin(sheet, upper, lower, 4.0 if level < upright and lower.half_above > 22 else 0.0)
            left.append(self._last_label(row[-1]))
        right += self._behind_labels(placed, upright)
        low = max(self._write(sheet, left, top, y, "left"), self._write(sheet, right, top, y, "right"))
        return max(y, low) + 26, self._told(placed)

    def _head(self, sheet: Sheet, y: float, title: str) -> None:
        copies = max(alike(self.bench, piece) for piece in self.pieces)
        rings = [self.bench.cloths[piece].ring for piece in self.pieces]
        notes = [f"{copies} alike"] if copies > 1 else []
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

    def _shown(self, piece: str, y: float, upright: float, level: float) -> Shown:
        top, bottom = (edge_now(self.bench, f"{piece}.{side}") for side in ("top", "bottom"))
        above, below = (float(self._length(each)) * level / 2 for each in (top, bottom))
        deep = max(float(self.bench.depth(piece)) * upright, 6.0)
        return Shown(piece, top, bottom, y, y + deep, above, below, self.bench.cloths[piece].ring)

    # --- labels ---

    def _alike(self, shown: Shown) -> bool:
        """Whether one label can stand for the top and the bottom edge."""
        top, bottom = shown.top, shown.bottom
        same = (top.set_length, in_words(top)) == (bottom.set_length, in_words(bottom))
        return (
            same and not self.cloth.folded(shown, top) and self.cloth.worked(top.name) == self.cloth.worked(bottom.name)
        )

    def _both_edges(self, shown: Shown) -> _Label:
        middle = (shown.y0 + shown.y1) / 2
        rows = (self.say.length(shown.top.set_length), f"{in_words(shown.top)} top and bottom")
        return _Label(
            middle,
            rows,
            self.cloth.worked(shown.top.name),
            (MIDDLE - (shown.half_above + shown.half_below) / 2, middle),
        )

    def _edge_label(self, shown: Shown, above: Shown | None) -> _Label:
        to = (MIDDLE - shown.half_above, shown.y0)
        length = self.say.length(shown.top.set_length)
        if above is None:
            words = "fold" if self.cloth.folded(shown, shown.top) else in_words(shown.top)
            return _Label(shown.y0, (length, words), self.cloth.worked(shown.top.name), to)
        seam = seam_between(self.bench, above.name, shown.name)
        rows = (length, "seam") if seam is None else (length, _margin(seam))
        worked = seam is not None and seam.name in self.cloth.changed_seams()
        return _Label(shown.y0, rows, worked, to)

    def _last_label(self, shown: Shown) -> _Label:
        to = (MIDDLE - shown.half_below, shown.y1)
        rows = (self.say.length(shown.bottom.set_length), in_words(shown.bottom))
        return _Label(shown.y1, rows, self.cloth.worked(shown.bottom.name), to)

    def _piece_label(self, shown: Shown) -> _Label:
        layers = layered(self.bench, shown.name)
        rows = (
            self.say.piece(shown.name),
            f"{self.say.length(self.bench.depth(shown.name))} deep",
            *([f"{layers} layers"] if layers > 1 else []),
        )
        middle = (shown.y0 + shown.y1) / 2
        return _Label(middle, rows, False, (MIDDLE + (shown.half_above + shown.half_below) / 2, middle))

    def _behind(
        self, sheet: Sheet, chain: tuple[str, ...], placed: list[list[Shown]], upright: float, level: float
    ) -> float:
        """A layer inside the outer one, its outline dashed; how far down it reaches."""
        y = self._level(chain, placed)
        for piece in chain:
            shown = self._shown(piece, y, upright, level)
            above, below = shown.half_above, shown.half_below
            sheet.line(
                [(MIDDLE - above, y), (MIDDLE + above, y), (MIDDLE + below, shown.y1), (MIDDLE - below, shown.y1)],
                SOFT,
                PLAIN,
                HIDDEN,
                closed=True,
            )
            y = shown.y1
        return y

    def _level(self, chain: tuple[str, ...], placed: list[list[Shown]]) -> float:
        """The height at which an inner layer begins: that of the outer layer in the same stack or seam."""
        stack = edge_now(self.bench, f"{chain[0]}.top").name
        for row in placed:
            for shown in row:
                if shown.top.name == stack:
                    return shown.y0
        return placed[0][0].y0

    def _where(self, chain: tuple[str, ...]) -> str:
        """A layer of a stack lies inside; a facing, strip or tie is sewn on."""
        return "sewn on" if "." in edge_now(self.bench, f"{chain[0]}.top").name else "inside"

    def _behind_labels(self, placed: list[list[Shown]], upright: float) -> list[_Label]:
        labels = []
        for chain in self.hidden:
            deep = self._deep(chain)
            y = self._level(chain, placed) + float(deep) * upright
            half = float(self._length(edge_now(self.bench, f"{chain[-1]}.bottom")))
            rows = (f"{self.say.piece(chain[-1])} {self._where(chain)}", f"{self.say.length(deep)} deep")
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

    def _told(self, placed: list[list[Shown]]) -> str:
        """The half in words, for those who can't see it."""
        parts = []
        for row in placed:
            for shown in row:
                layers = layered(self.bench, shown.name)
                form = ("ring" if shown.ring else "flat") + (f", {layers} layers" if layers > 1 else "")
                name, deep = self.say.piece(shown.name), self.say.length(self.bench.depth(shown.name))
                edges = listed(
                    [
                        f"{side} edge {self.say.length(each.set_length)}, {in_words(each)}"
                        for side, each in (("top", shown.top), ("bottom", shown.bottom))
                    ]
                )
                parts.append(f"{name} ({form}), {deep} deep, {edges}")
        parts += [f"{self.say.piece(piece)} {self._where(chain)}" for chain in self.hidden for piece in chain]
        return f"{self.title}: {'; '.join(parts)}."


def _margin(seam: Seam) -> str:
    if seam.trapped:
        return "seam, margin covered"
    if seam.topstitched:
        return "seam stitched down"
    if seam.state == "enclosed":
        return "seam enclosed"
    return f"seam, {seam.state} margin"
