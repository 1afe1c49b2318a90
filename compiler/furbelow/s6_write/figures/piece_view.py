"""The piece view: what is worked on, before and after, with every edge in the pattern of its state.

Depths have one scale in both halves. Where the pieces are too long for the sheet, their middle is left out between two
wavy lines and their drawn widths keep the proportions of their lengths to each other.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from typing import Literal, get_args

from furbelow.garment.bench import Bench, Edge, Seam
from furbelow.garment.message import Length, One, Part, Pieces, Things, Values, edge_said, flag
from furbelow.garment.technique import Performed
from furbelow.named import NamedTuple
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
    look_of,
)
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet, broken, spread, width_of
from furbelow.s6_write.figures.piece_cloth import LEFT, MIDDLE, RIGHT, Cloth, Shown
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

FULL = 0.3  # units for a mm of depth at most
APART = 26.0  # between pieces that are not sewn together
# Of a garment of more pieces only those of the step and what is sewn to them are drawn: more can't be read on a sheet.
MOST_PIECES = 12

When = Literal["before", "after"]
SIDES = ("top", "bottom")
UP = ("margins", "either", "wrong", "right")
MARGINS = ("none", "covered", "stitched-down", "enclosed", "neatened", "raw")


class _Label(NamedTuple):
    y: float
    rows: tuple[str, ...]
    worked: bool
    to: Point


def piece_view(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The pieces of a step before and after it; None where nothing of them changes."""
    if not done.touches:
        return None  # a trim or another supply is worked on by itself
    words.read("figures-piece-view")
    before = _Half("before", done.before, done, words)
    after = _Half("after", done.after, done, words)
    if _looks(done.before, after.pieces) == _looks(done.after, after.pieces):
        return None
    halves = [before, after]
    longest = max(float(half.longest) for half in halves)
    deepest = max(float(half.deepest) for half in halves)
    most = max(sum(len(chain) for chain in half.shown) for half in halves)
    apart = max(len(half.shown) for half in halves)
    # Pieces that lie apart take room for themselves and their labels: the cloth is drawn smaller.
    upright = min(FULL, (104 if apart > 2 else 44 + 28 * min(most, 3)) / deepest)
    level = min(upright, (RIGHT - LEFT) / longest)
    sheet, y, told = Sheet(), 0.0, []
    for half in halves:
        y, worded = half.draw(sheet, y, upright, level)
        told.append(worded)
    cut = level < upright
    if after.inside:
        sheet.write((sheet.width / 2, y + 2), words.text("figure-piece-margins-wide"), "middle", colour=SOFT)
        y += LEADING
    if cut:
        sheet.write((sheet.width / 2, y + 2), words.text("figure-piece-left-out"), "middle", colour=SOFT)
        y += LEADING
    if _further(done):
        sheet.write((sheet.width / 2, y + 2), words.text("figure-piece-further"), "middle", colour=SOFT)
    values: Values = {"pieces": worked_on(done), "broken": flag(cut)}
    return sheet.figure("piece", " ".join(told), words.text("figure-piece-caption", values))


def worked_on(done: Performed) -> Things:
    """The pieces of a step as messages name them: layers that lie in one stack by its name, however many they are."""
    left, told = list(dict.fromkeys(done.touches)), []
    stacks = (edge for name, edge in done.after.edges.items() if "." not in name)
    for stack in sorted(stacks, key=lambda edge: -len(set(edge.pieces))):
        inside = set(stack.pieces)
        if len(inside) > 1 and inside <= set(left):
            told.append(edge_said(stack)._replace(side=""))
            left = [piece for piece in left if piece not in inside]
    return Things((*told, *(Pieces((piece,)) for piece in left)))


def _further(done: Performed) -> bool:
    """Whether more hangs on the pieces of a step than is drawn."""
    reached = {other for piece in done.touches for other in done.after.unit(piece)}
    return len(reached) > MOST_PIECES and bool(reached - _sewn_to(done))


def _sewn_to(done: Performed) -> set[str]:
    """The pieces of a step, and those that share a seam with one of them."""
    seams = ({ply.piece for ply in seam.plies} for seam in done.after.seams.values())
    return set(done.touches).union(*(pieces for pieces in seams if not pieces.isdisjoint(done.touches)))


def _looks(bench: Bench, pieces: tuple[str, ...]) -> object:
    edges = [edge_now(bench, f"{piece}.{side}") for piece in pieces for side in ("top", "bottom", "start", "end")]
    seams = [seam for seam in bench.seams.values() if any(ply.piece in pieces for ply in seam.plies)]
    return ([bench.cloths[piece].in_parts for piece in pieces], edges, seams, [bench.units[piece] for piece in pieces])


class _Half:
    """One half of the figure: the pieces at one moment."""

    def __init__(self, when: When, bench: Bench, done: Performed, words: Words) -> None:
        self.when, self.bench, self.done, self.words = when, bench, done, words
        self.cloth = Cloth(bench, done, words.say)
        reached = {other for piece in done.touches for other in done.after.unit(piece)}
        now = {other for piece in done.touches for other in bench.unit(piece)}
        near = reached if len(reached) <= MOST_PIECES else reached & _sewn_to(done)
        self.pieces = tuple(piece for piece in bench.cloths if piece in near & now)
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
            if chain == max(unit, key=self._deep):
                self.shown.append(chain)
            elif self._lies_inside(chain) or set(chain) & set(done.touches):
                self.hidden.append(chain)  # what an earlier step sewed on is left out

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

    def draw(self, sheet: Sheet, y: float, upright: float, level: float) -> tuple[float, str]:
        self._head(sheet, y)
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
            if self._lies_inside(chain):
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

    def _head(self, sheet: Sheet, y: float) -> None:
        copies = max(alike(self.bench, piece) for piece in self.pieces)
        rings = [self.bench.cloths[piece].ring for piece in self.pieces]
        notes = [Part("figure-piece-alike", {"copies": copies})] if copies > 1 else []
        if all(rings):
            notes.append(Part("figure-piece-ring"))
        elif not any(rings):
            notes.append(Part("figure-piece-flat"))
        notes.append(Part("figure-piece-up", {"up": self._up()}))
        title = self.words.text("figure-piece-before" if self.when == "before" else "figure-piece-after")
        sheet.head((8, y), title)
        sheet.write((12 + width_of(title, True), y), self.words.said(Things(tuple(notes), "row")), colour=SOFT)

    def _up(self) -> One:
        """Which face of the cloth is seen; margins are all that tells the faces of some cloth apart."""
        solved = self.words.say.solved
        cloths = {solved.pieces[piece].piece.cloth.text for piece in self.pieces}
        if not any(solved.materials[cloth].material.has_right_side for cloth in cloths):
            return One("margins" if self.inside else "either", UP)
        return One("wrong" if self.inside else "right", UP)

    def _shown(self, piece: str, y: float, upright: float, level: float) -> Shown:
        top, bottom = (edge_now(self.bench, f"{piece}.{side}") for side in ("top", "bottom"))
        above, below = (float(self._length(each)) * level / 2 for each in (top, bottom))
        deep = max(float(self.bench.depth(piece)) * upright, 6.0)
        return Shown(piece, top, bottom, y, y + deep, above, below, self.bench.cloths[piece].ring)

    # --- labels ---

    def _alike(self, shown: Shown) -> bool:
        """Whether one label can stand for the top and the bottom edge."""
        top, bottom = shown.top, shown.bottom
        same = (top.set_length, look_of(top)) == (bottom.set_length, look_of(bottom))
        return (
            same and not self.cloth.folded(shown, top) and self.cloth.worked(top.name) == self.cloth.worked(bottom.name)
        )

    def _both_edges(self, shown: Shown) -> _Label:
        middle = (shown.y0 + shown.y1) / 2
        rows = (self._said(shown.top.set_length), self.words.text("figure-piece-both", {"state": look_of(shown.top)}))
        return _Label(
            middle,
            rows,
            self.cloth.worked(shown.top.name),
            (MIDDLE - (shown.half_above + shown.half_below) / 2, middle),
        )

    def _edge_label(self, shown: Shown, above: Shown | None) -> _Label:
        to = (MIDDLE - shown.half_above, shown.y0)
        length = self._said(shown.top.set_length)
        if above is None:
            worded = (
                self.words.text("figure-piece-fold") if self.cloth.folded(shown, shown.top) else self._look(shown.top)
            )
            return _Label(shown.y0, (length, worded), self.cloth.worked(shown.top.name), to)
        seam = seam_between(self.bench, above.name, shown.name)
        rows = (length, self.words.text("figure-piece-seam", {"margin": _margin(seam)}))
        worked = seam is not None and seam.name in self.cloth.changed_seams()
        return _Label(shown.y0, rows, worked, to)

    def _last_label(self, shown: Shown) -> _Label:
        to = (MIDDLE - shown.half_below, shown.y1)
        rows = (self._said(shown.bottom.set_length), self._look(shown.bottom))
        return _Label(shown.y1, rows, self.cloth.worked(shown.bottom.name), to)

    def _piece_label(self, shown: Shown) -> _Label:
        layers = layered(self.bench, shown.name)
        rows = (
            self.words.text("piece-alone", {"piece": Pieces((shown.name,))}),
            self._deep_said(self.bench.depth(shown.name)),
            *([self.words.text("figure-piece-layers", {"layers": layers})] if layers > 1 else []),
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

    def _lies_inside(self, chain: tuple[str, ...]) -> bool:
        """Whether it is a layer of a stack; a facing, strip or tie is sewn on."""
        return "." not in edge_now(self.bench, f"{chain[0]}.top").name

    def _behind_said(self, chain: tuple[str, ...], piece: str) -> Part:
        where = One("inside" if self._lies_inside(chain) else "sewn-on", ("inside", "sewn-on"))
        return Part("figure-piece-behind", {"piece": Pieces((piece,)), "where": where})

    def _behind_labels(self, placed: list[list[Shown]], upright: float) -> list[_Label]:
        labels = []
        for chain in self.hidden:
            deep = self._deep(chain)
            y = self._level(chain, placed) + float(deep) * upright
            half = float(self._length(edge_now(self.bench, f"{chain[-1]}.bottom")))
            rows = (self.words.said(self._behind_said(chain, chain[-1])), self._deep_said(deep))
            labels.append(_Label(y, rows, False, (min(MIDDLE + half, MIDDLE + 20), y)))
        return labels

    def _write(self, sheet: Sheet, labels: list[_Label], low: float, high: float, side: str) -> float:
        """The labels on one side of the cloth, each with a line to its place; how far down they reach."""
        room = LEFT - 18 if side == "left" else sheet.width - RIGHT - 22
        labels = sorted(labels, key=lambda label: label.y)
        rows = [[row for worded in label.rows for row in broken(worded, room, label.worked)] for label in labels]
        heights = [LEADING * len(row) + 5 for row in rows]
        middles = spread([label.y for label in labels], heights, low, high + 18)
        for label, lines, middle in zip(labels, rows, middles, strict=True):
            y = middle - LEADING * len(lines) / 2 + 11
            x = LEFT - 12 if side == "left" else RIGHT + 14
            anchor = "end" if side == "left" else "start"
            ink = ACCENT if label.worked else INK
            elbow = (LEFT - 8, middle) if side == "left" else (RIGHT + 10, middle)
            sheet.line([elbow, label.to], ACCENT if label.worked else SOFT, THIN)
            for worded in lines:
                sheet.write((x, y), worded, anchor, label.worked, ink)
                y += LEADING
        return (middles[-1] + heights[-1] / 2) if labels else high

    def _said(self, length: Fraction) -> str:
        return self.words.said(Length(length))

    def _look(self, worked: Edge) -> str:
        return self.words.text("figure-edge-state", {"state": look_of(worked)})

    def _deep_said(self, deep: Fraction) -> str:
        return self.words.text("figure-piece-deep", {"deep": Length(deep)})

    def _told(self, placed: list[list[Shown]]) -> str:
        """The half in words, for those who can't see it."""
        parts = [self._told_one(shown) for row in placed for shown in row]
        parts += [self._behind_said(chain, piece) for chain in self.hidden for piece in chain]
        pieces = Things(tuple(parts), "clauses")
        return self.words.text("figure-piece-told", {"when": One(self.when, get_args(When)), "pieces": pieces})

    def _told_one(self, shown: Shown) -> Part:
        edges = tuple(
            Part(
                "figure-piece-edge",
                {"side": One(side, SIDES), "length": Length(each.set_length), "state": look_of(each)},
            )
            for side, each in zip(SIDES, (shown.top, shown.bottom), strict=True)
        )
        values: Values = {
            "piece": Pieces((shown.name,)),
            "ring": flag(shown.ring),
            "layers": layered(self.bench, shown.name),
            "deep": Length(self.bench.depth(shown.name)),
            "edges": Things(edges),
        }
        return Part("figure-piece-told-one", values)


def _margin(seam: Seam | None) -> One:
    if seam is None:
        return One("none", MARGINS)
    return One("covered" if seam.trapped else "stitched-down" if seam.topstitched else str(seam.state), MARGINS)
