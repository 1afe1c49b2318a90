"""General rectangles on a bolt of fixed width: the least length found, its bound, and whether that is proven.

Three searches share the work, which is counted in rectangles tried and never in seconds, so that the same
input gives the same plan on any machine:
- rows by falling height, which always end and give a first length;
- a beam search (rectangles_search) for ever shorter lengths: with ever wider beams, different tastes, and
  along the bolt or across it, since what fits in width x length fits in length x width;
- for few rectangles a complete search (rectangles_proof) that lifts the bound.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import reduce
from math import gcd

from furbelow.named import NamedTuple
from furbelow.s4_cut.panels.rectangles_bound import OutOfWork, least_length
from furbelow.s4_cut.panels.rectangles_proof import decide
from furbelow.s4_cut.panels.rectangles_search import Laid, Taste, search

_TASTES = (Taste(0.03, 0.5, 0.5), Taste(0.01, 1, 1), Taste(0.1, 1, 1), Taste(0.3, 2, 1))
_QUICK_BEAM, _FIRST_BEAM = 2, 6
_FEW = 24  # rectangles; above, the complete search hardly ever ends


class Place(NamedTuple):
    """Where a rectangle lies: x across the bolt, y along it, both of its nearest corner."""

    x: int
    y: int
    turned: bool


class Packing(NamedTuple):
    """Rectangles on a bolt.

    length: of bolt needed. places: one for each rectangle, in the order given.
    bound: no plan is shorter. tried: the work done.
    """

    length: int
    places: tuple[Place, ...]
    bound: int
    tried: int

    @property
    def proven(self) -> bool:
        """No shorter plan is possible."""
        return self.length == self.bound


class TooWide(NamedTuple):
    """Why there is no packing: the places in the list of the rectangles wider than the bolt."""

    rects: tuple[int, ...]


def pack(
    rects: Sequence[tuple[int, int]],
    width: int,
    *,
    work: int,
    turns: bool = False,
    stop: Callable[[], bool] | None = None,
) -> Packing | TooWide:
    """The shortest packing found of rectangles, each (across, along), on a bolt of `width`.

    All in one unit, whole numbers above 0. turns: each may also lie on its side.
    work: about how many placements may be tried (some 500,000 a second). stop: asked now and then whether to end;
    a plan that should be the same everywhere is made without it.
    """
    if width <= 0 or any(w <= 0 or h <= 0 for w, h in rects):
        raise ValueError("widths and lengths must be above 0")
    wide = tuple(k for k, (w, h) in enumerate(rects) if (min(w, h) if turns else w) > width)
    if wide:
        return TooWide(wide)
    # Whole centimetres given in millimetres are as easy as centimetres.
    across = reduce(gcd, (w for w, _ in rects), 0) or 1
    along = reduce(gcd, (h for _, h in rects), 0) or 1
    if turns:
        across = along = gcd(across, along)
    small = [(w // across, h // along) for w, h in rects]
    desk = _Desk(small, width // across, turns, work, stop)
    desk.improve()
    places = [Place(0, 0, False)] * len(rects)
    for k, x, y, turned in desk.laid:
        places[k] = Place(x * across, y * along, turned)
    return Packing(desk.length * along, tuple(places), desk.bound * along, desk.tried)


class _Desk:
    """The best plan so far, and what work is left."""

    def __init__(
        self, rects: list[tuple[int, int]], width: int, turns: bool, work: int, stop: Callable[[], bool] | None
    ) -> None:
        self.rects, self.width, self.turns, self.work, self.stop = rects, width, turns, work, stop
        self.tried = 0
        self.bound = least_length(rects, width, turns)
        self.laid = rows(rects, width, turns)
        self.length = self._length(self.laid)

    def spend(self, tried: int) -> bool:
        self.tried += tried
        return self.tried < self.work and not (self.stop and self.stop())

    def improve(self) -> None:
        """Shorten the plan until it is proven or the work is done."""
        # A first good plan soon: a few hundredths over the bound, or as much more as it takes.
        step = 1 + self.bound // 40
        ceiling = self.bound + step - 1
        while ceiling < self.length and self.spend(0) and not self._try(ceiling, _QUICK_BEAM, _TASTES[0], False):
            ceiling, step = ceiling + step, 2 * step
        beam = _FIRST_BEAM
        while self.length > self.bound and self.spend(0):
            before = self.tried
            for taste in _TASTES:
                for sideways in (False, True):
                    while self.length > self.bound and self._try(self.length - 1, beam, taste, sideways):
                        pass
            if len(self.rects) <= _FEW:
                self._prove(self.tried - before)
            beam += beam // 2

    def _try(self, ceiling: int, beam: int, taste: Taste, sideways: bool) -> bool:
        if not self.spend(0):
            return False
        rects, width = self.rects, self.width
        if sideways:
            rects, width, ceiling = [(h, w) for w, h in rects], ceiling, width
        laid = search(rects, width, ceiling, turns=self.turns, beam=beam, taste=taste, spend=self.spend)
        if laid is None:
            return False
        self._keep([(k, y, x, turned) for k, x, y, turned in laid] if sideways else laid)
        return True

    def _prove(self, work: int) -> None:
        """Lift the bound as far as so much work goes."""
        until = self.tried + work
        try:
            while self.bound < self.length:
                laid = decide(
                    self.rects,
                    self.width,
                    self.bound,
                    turns=self.turns,
                    spend=lambda tried: self.spend(tried) and self.tried < until,
                )
                if laid is None:
                    self.bound += 1
                else:
                    self._keep(laid)
        except OutOfWork:
            pass

    def _keep(self, laid: Laid) -> None:
        self.laid, self.length = laid, self._length(laid)

    def _length(self, laid: Laid) -> int:
        return max((y + self.rects[k][0 if turned else 1] for k, _, y, turned in laid), default=0)


def rows(rects: Sequence[tuple[int, int]], width: int, turns: bool) -> Laid:
    """A plan in rows: the tallest first, each into the first row that has room.

    Source: first fit by decreasing height, Coffman et al. 1980, SIAM J. Comput. 9:808-826.
    """
    lying = [(w, h, turns and (w > width or w < h <= width)) for w, h in rects]
    sized = [(h, w, turned) if turned else (w, h, turned) for w, h, turned in lying]
    laid: Laid = []
    open_rows: list[list[int]] = []  # start of the free width, y
    length = 0
    for k in sorted(range(len(rects)), key=lambda k: (-sized[k][1], -sized[k][0], k)):
        w, h, turned = sized[k]
        row = next((row for row in open_rows if row[0] + w <= width), None)
        if row is None:
            row = [0, length]
            open_rows.append(row)
            length += h
        laid.append((k, row[0], row[1], turned))
        row[0] += w
    return laid
