"""The shortest layout of rectangles that comes apart by cuts from side to side, each through a whole part.

Every such layout is two smaller ones, side by side or one behind the other. So for every choice of rectangles the
blocks that they can form are kept, none of them both as wide and as long as another, and larger choices are put
together from smaller ones. Like rectangles are counted, not told apart. A block that leaves more empty than the
whole layout may is dropped: with a close ceiling few blocks are left.

Source: blocks built from pairs, Wang 1983, Oper. Res. 31:573-586.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import product
from math import prod

from furbelow.named import NamedTuple
from furbelow.s4_cut.panels.rectangles_bound import OutOfWork


class Block(NamedTuple):
    """A rectangle of the given kind, or two blocks side by side (`beside`) or one behind the other."""

    wide: int
    long: int
    kind: int
    halves: tuple[Block, Block] | None
    beside: bool


def shortest_through(
    kinds: Sequence[tuple[int, int, int]], width: int, ceiling: int, spend: Callable[[int], bool]
) -> tuple[int, list[tuple[int, int, int]]] | None:
    """(length, (kind, x across, y along) of each rectangle); None where no such layout is within `ceiling`.

    kinds: (across, along, how many) of each kind, whole numbers above 0.
    Fails: OutOfWork when `spend`, told how many pairs of blocks are looked at, says that no work is left.
    """
    counts = tuple(many for _, _, many in kinds)
    budget = width * ceiling - sum(w * h * many for w, h, many in kinds)
    if budget < 0:
        return None
    # A choice of rectangles is known by one number: how many of each kind, as the digits of a number with mixed bases.
    steps = [prod(many + 1 for many in counts[kind + 1 :]) for kind in range(len(counts))]
    blocks: list[list[Block]] = []
    for code, chosen in enumerate(product(*(range(many + 1) for many in counts))):
        if sum(chosen) == 1:
            kind = chosen.index(1)
            w, h, _ = kinds[kind]
            blocks.append([Block(w, h, kind, None, False)] if w <= width and h <= ceiling else [])
            continue
        most = budget + sum(w * h * many for (w, h, _), many in zip(kinds, chosen, strict=True))
        parts = [0]
        for step, many in zip(steps, chosen, strict=True):
            parts = [part + step * number for part in parts for number in range(many + 1)]
        best: dict[int, Block] = {}
        looked_at = len(parts) // 8
        for part in parts:
            if part and 2 * part <= code and blocks[part] and blocks[code - part]:
                looked_at += len(blocks[part]) * len(blocks[code - part])
                for p, q in product(blocks[part], blocks[code - part]):
                    _keep(best, p, q, width, ceiling, most)
        if not spend(looked_at):
            raise OutOfWork
        blocks.append(_undominated(best))
    found = min(blocks[-1], key=lambda each: (each.long, each.wide), default=None)
    return None if found is None else (found.long, list(_places(found, 0, 0)))


def _keep(best: dict[int, Block], p: Block, q: Block, width: int, ceiling: int, most: int) -> None:
    """Put two blocks together both ways; the larger one lies at the near corner."""
    wide, long = p.wide + q.wide, max(p.long, q.long)
    if wide <= width and wide * long <= most and (wide not in best or long < best[wide].long):
        best[wide] = Block(wide, long, -1, (p, q) if p.long >= q.long else (q, p), True)
    wide, long = max(p.wide, q.wide), p.long + q.long
    if long <= ceiling and wide * long <= most and (wide not in best or long < best[wide].long):
        best[wide] = Block(wide, long, -1, (p, q) if p.wide >= q.wide else (q, p), False)


def _undominated(best: dict[int, Block]) -> list[Block]:
    kept: list[Block] = []
    for _, block in sorted(best.items()):
        if not kept or block.long < kept[-1].long:
            kept.append(block)
    return kept


def _places(block: Block, x: int, y: int) -> list[tuple[int, int, int]]:
    if block.halves is None:
        return [(block.kind, x, y)]
    first, second = block.halves
    beyond = (x + first.wide, y) if block.beside else (x, y + first.long)
    return _places(first, x, y) + _places(second, *beyond)
