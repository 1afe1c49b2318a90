"""How far below the top of the garment each piece lies, followed through the seams.

A piece sewn to another *hangs* from it, is a folded band *beyond* its edge, or lies *level* with it, top to top or bottom
to bottom. What is sewn on by its bottom edge and hangs from nothing else hangs upside down.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from enum import StrEnum
from fractions import Fraction

from furbelow.garment.bench import Bench, Edge, OnLine, Seam
from furbelow.named import NamedTuple

BAGS = Fraction(5)  # two ways to one level may differ by so much; house rule, maker to confirm


class Way(StrEnum):
    HANGS = "hangs"
    LEVEL = "level"
    HEMS_LEVEL = "hems level"


class Joint(NamedTuple):
    """The piece `down` beside the piece `up`: its top lies `below` mm under that of `up`."""

    up: str
    down: str
    way: Way
    below: Fraction
    seam: str


class Levels(NamedTuple):
    """tops, bottoms: mm below the top of the garment, by piece. over: the pieces that each hangs from. bags: seams whose
    two ways to one level differ, by how much. upside_down: pieces that hang by their bottom edge."""

    tops: Mapping[str, Fraction]
    bottoms: Mapping[str, Fraction]
    over: Mapping[str, tuple[str, ...]]
    bags: tuple[tuple[Joint, Fraction], ...]
    upside_down: frozenset[str]


def levels_of(bench: Bench) -> Levels:
    """The levels on the bench as it is."""
    sure: list[Joint] = []
    doubtful: list[Joint] = []
    for joint in _joints(bench):
        (doubtful if joint.way is Way.HEMS_LEVEL else sure).append(joint)
    tops: dict[str, Fraction] = {}
    upside_down: set[str] = set()
    bags = _follow(bench, sure, tops)
    groups = _groups(bench, sure)
    for joint in doubtful:
        # Both hang from above: then their hems must reach one level. Else what was sewn on hangs by its hem.
        if groups[joint.up] == groups[joint.down]:
            gap = tops[joint.up] + joint.below - tops[joint.down]
            if abs(gap) > BAGS:
                bags.append((joint, gap))
            continue
        hangs = joint._replace(way=Way.HANGS, below=bench.depth(joint.up))
        upside_down.add(joint.down)
        sure.append(hangs)
        moved, by = groups[joint.down], tops[joint.up] + hangs.below - tops[joint.down]
        for piece, group in groups.items():
            if group == moved:
                tops[piece] += by
                groups[piece] = groups[joint.up]
    for group in set(groups.values()):
        pieces = [piece for piece, own in groups.items() if own == group]
        highest = min(tops[piece] for piece in pieces)
        for piece in pieces:
            tops[piece] -= highest
    bottoms = {piece: top + bench.depth(piece) for piece, top in tops.items()}
    for piece, on in bench.borne.items():  # no further than what it lies in or on
        bottoms[piece] = min(bottoms[piece], bottoms[on])
    return Levels(tops, bottoms, _over(bench, sure), tuple(bags), frozenset(upside_down))


def _follow(bench: Bench, joints: list[Joint], tops: dict[str, Fraction]) -> list[tuple[Joint, Fraction]]:
    """Every piece's level from the first piece of its group; what is reached on two ways that differ is given back."""
    bags: list[tuple[Joint, Fraction]] = []
    beside: dict[str, list[tuple[str, Fraction, Joint]]] = {}
    for joint in joints:
        beside.setdefault(joint.up, []).append((joint.down, joint.below, joint))
        beside.setdefault(joint.down, []).append((joint.up, -joint.below, joint))
    for first in bench.cloths:
        if first in tops:
            continue
        tops[first], left = Fraction(0), [first]
        while left:
            piece = left.pop(0)
            for other, below, joint in beside.get(piece, ()):
                if other not in tops:
                    tops[other] = tops[piece] + below
                    left.append(other)
                elif abs(gap := tops[piece] + below - tops[other]) > BAGS and all(
                    joint is not told for told, _ in bags
                ):
                    bags.append((joint, gap if other == joint.down else -gap))
    return bags


def _groups(bench: Bench, joints: list[Joint]) -> dict[str, str]:
    groups = {piece: piece for piece in bench.cloths}
    for joint in joints:
        old, new = groups[joint.down], groups[joint.up]
        groups = {piece: new if group == old else group for piece, group in groups.items()}
    return groups


def _over(bench: Bench, joints: list[Joint]) -> dict[str, tuple[str, ...]]:
    found: dict[str, tuple[str, ...]] = {}
    for piece in bench.cloths:
        over: list[str] = []
        left = [piece]
        while left:
            hung = left.pop(0)
            ups = [joint.up for joint in joints if joint.down == hung and joint.way is Way.HANGS]
            left += [up for up in ups if up not in over and up != piece]
            over += [up for up in ups if up not in over and up != piece]
        found[piece] = tuple(over)
    return found


def _joints(bench: Bench) -> Iterator[Joint]:
    for seam in bench.seams.values():
        if seam.on:
            yield from _on_line(bench, seam, seam.on)
        elif len(seam.edges) == 2 and not seam.edges[0].endswith((".start", ".end")):
            yield from _across(bench, seam)
    for name, edge in bench.edges.items():
        if "." not in name:
            yield from _stacked(bench, edge)


def _on_line(bench: Bench, seam: Seam, line: OnLine) -> Iterator[Joint]:
    """What is sewn on along a line hangs from it, however deep the seams above it on its piece become."""
    below = line.down - bench.edge(f"{line.piece}.top").used
    for name in bench.opened(seam.edges[0]):
        yield Joint(line.piece, name.partition(".")[0], Way.HANGS, below, seam.name)


def _across(bench: Bench, seam: Seam) -> Iterator[Joint]:
    ours, theirs = (bench.opened(name) for name in seam.edges)
    for one in ours:
        for other in theirs:
            (piece, side), (beside, along) = one.split("."), other.split(".")
            if piece != beside and {side, along} <= {"top", "bottom"}:
                yield _joint(bench, seam, piece, side, beside, along)


def _joint(bench: Bench, seam: Seam, piece: str, side: str, beside: str, along: str) -> Joint:
    """`piece` is what the seam names first: what is sewn on, or with a band what the band is sewn to."""
    if bench.cloths[beside].folded != bench.cloths[piece].folded:
        band, cloth, edge = (beside, piece, side) if bench.cloths[beside].folded else (piece, beside, along)
        if edge == "top":
            return Joint(band, cloth, Way.HANGS, bench.depth(band), seam.name)
        return Joint(cloth, band, Way.HANGS, bench.depth(cloth), seam.name)
    if side != along:
        up, down = (piece, beside) if side == "bottom" else (beside, piece)
        return Joint(up, down, Way.HANGS, bench.depth(up), seam.name)
    if side == "top":
        return Joint(beside, piece, Way.LEVEL, Fraction(0), seam.name)
    lies_inside = seam.trapped and seam.turned == piece  # a facing, turned up inside
    way = Way.LEVEL if lies_inside else Way.HEMS_LEVEL
    return Joint(beside, piece, way, bench.depth(beside) - bench.depth(piece), seam.name)


def _stacked(bench: Bench, stack: Edge) -> Iterator[Joint]:
    """Layers hang level from the edge that they are stacked at."""
    names = [name for name in bench.opened(stack.name) if name.endswith(".top")]
    for other in names[1:]:
        first, piece = names[0].partition(".")[0], other.partition(".")[0]
        if first != piece:
            yield Joint(first, piece, Way.LEVEL, Fraction(0), stack.name)
