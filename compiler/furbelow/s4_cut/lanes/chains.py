"""Strips that share lanes follow each other from lane to lane: where a lane ends, the strip goes on in the next."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypeAlias

from furbelow.named import NamedTuple
from furbelow.s4_cut.lanes.grid import Kind

# Orders tried before a chain is given up; groups of one garment need a few dozen.
MOST_TRIES = 4000


class Link(NamedTuple):
    """One segment in a chain: of the `number`-th member of its kind in the chain, `part` counted from 1."""

    kind: int
    number: int
    part: int
    length: int


class TooManyOrders(Exception):
    """The tries ran out before an order was found or excluded."""


def chain(lanes: Sequence[int], kinds: Sequence[Kind], counts: tuple[int, ...]) -> list[tuple[int, list[Link]]] | None:
    """The links of each lane, as (lane length, links); None when no order keeps the limits on joins and segments.

    lanes: lengths of the lanes. counts: how many pieces of each kind.
    A segment is always cut as long as the lane and the shortest segment allow: room left in a lane helps nobody.
    Raises TooManyOrders.
    """
    found = _Orders(kinds, counts).follow(0, tuple(sorted(lanes)), counts, None, (None, 0))
    return None if found is None else [(lane, links) for lane, links in _lanes(found) if links]


class _Orders:
    """The orders in which strips may follow each other, looked through one by one."""

    def __init__(self, kinds: Sequence[Kind], counts: tuple[int, ...]) -> None:
        self.kinds, self.counts = kinds, counts
        self.failed: set[tuple[object, ...]] = set()
        self.tries = 0

    def follow(
        self,
        free: int,
        open_lanes: tuple[int, ...],
        left: tuple[int, ...],
        begun: tuple[int, int, int] | None,
        laid: _Laid,
    ) -> _Laid:
        """What is laid in the end. begun: (kind, length still to cut, segments cut) of a strip that goes on in this lane."""
        if begun is None and not any(left):
            return laid
        state = (free, open_lanes, left, begun)
        if state in self.failed:
            return None
        self.tries += 1
        if self.tries > MOST_TRIES:
            raise TooManyOrders
        kinds, follow = self.kinds, self.follow
        options = [begun] if begun else [(i, kinds[i].length, 0) for i, number in enumerate(left) if number]
        for index, rest, cut in options:
            kind = kinds[index]
            after = left if begun else (*left[:index], left[index] - 1, *left[index + 1 :])
            number = self.counts[index] - after[index] - 1
            if rest <= free:
                found = follow(free - rest, open_lanes, after, None, (laid, Link(index, number, cut + 1, rest)))
                if found is not None:
                    return found
                continue
            length = min(free, rest + kind.takes - kind.shortest)
            if cut >= kind.most or length < kind.shortest:
                continue
            goes_on = (index, rest + kind.takes - length, cut + 1)
            for lane in sorted(set(open_lanes), reverse=True):
                added = (laid, Link(index, number, cut + 1, length)), lane
                found = follow(lane, _without(open_lanes, lane), after, goes_on, added)
                if found is not None:
                    return found
        if begun is None:
            for lane in sorted(set(open_lanes), reverse=True):
                found = follow(lane, _without(open_lanes, lane), left, None, (laid, lane))
                if found is not None:
                    return found
        self.failed.add(state)
        return None


# What was laid before, and the last link, or the length of the lane that is begun: parts that ways have in common are kept once.
_Laid: TypeAlias = "tuple[_Laid, Link | int] | None"


def _lanes(laid: _Laid) -> list[tuple[int, list[Link]]]:
    """Each lane with its links."""
    parts: list[Link | int] = []
    while laid is not None:
        laid, part = laid
        parts.append(part)
    lanes: list[tuple[int, list[Link]]] = []
    for part in reversed(parts):
        if isinstance(part, int):
            lanes.append((part, []))
        else:
            lanes[-1][1].append(part)
    return lanes


def _without(lanes: tuple[int, ...], lane: int) -> tuple[int, ...]:
    index = lanes.index(lane)
    return lanes[:index] + lanes[index + 1 :]
