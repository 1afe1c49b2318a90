"""What is to be cut: strips, the bolt, and what each action costs.

Lengths are `Fraction`s of a millimetre, prices are fractions of a currency unit. `usable_width` is what is left
after the selvedges are off, the cloth has been washed and something is spared across: the caller takes all away. Shrinkage along the bolt is
handled here: a plan is drawn on shrunk cloth, and `bolt_length` is what has to be bought for it.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil, floor
from typing import Literal

from furbelow.garment.spec import Grain
from furbelow.named import NamedTuple

# How a kind of piece is laid: its length along the bolt; its length over the width of the cloth, pieced from
# lanes that run selvedge to selvedge; or, whole, with its length over the width but in a lane along the bolt.
Way = Literal["along", "across", "turned"]


class Strip(NamedTuple):
    """`count` equal strips or panels of cut size `length` x `depth`.

    join_allowance: taken from each of the two segments at a join.
    shortest_segment: no segment of a pieced strip is shorter, allowances included.
    most_joins: joins in one strip; counts only where `piecing` is allowed.
    grain: how the length may lie. All copies of one strip lie the same way, so that they hang alike.
    selvedge: one of its long edges is the selvedge, so it lies along the bolt in a lane at the side of the cloth.
    """

    name: str
    length: Fraction
    depth: Fraction
    count: int = 1  # type: ignore[assignment]  # a method of tuples bears the name too
    piecing: bool = False
    join_allowance: Fraction = Fraction(0)
    shortest_segment: Fraction = Fraction(0)
    most_joins: int = 2
    grain: Grain = "along"
    wearer: str | None = None
    selvedge: bool = False


class Bolt(NamedTuple):
    """The cloth: `usable_width` across, as long as need be.

    folded: folded lengthwise, so lanes come in mirrored pairs and one lane may lie on the fold.
    one_way: pieces whose grain is free all lie the same way.
    grid: cut lengths are whole multiples of it.
    shrinkage: share of the bought length that washing takes (1/20 means 5 %).
    longest_section: the longest length that can be laid out and slit at once.
    spared: what is left over of the width, and is not in `usable_width`.
    squared: bought beyond the plan, for the end that is cut straight before anything is measured.
    most_joins, most_sections: in the strips of one garment, and that it is laid out in; None where the prices decide.
    """

    usable_width: Fraction
    grid: Fraction = Fraction(5)
    folded: bool = False
    one_way: bool = False
    shrinkage: Fraction = Fraction(0)
    longest_section: Fraction | None = None
    spared: Fraction = Fraction(0)
    squared: Fraction = Fraction(0)
    most_joins: int | None = None
    most_sections: int | None = None

    @property
    def selvedges(self) -> int:
        """How many lanes of a section may lie at a selvedge: pieces at the far one are turned round, which one-way cloth
        does not allow."""
        return 1 if self.one_way else 2


class CutPrices(NamedTuple):
    """What cloth, a join, a set-up of the table and a cut cost.

    A section is one set-up. Cuts are counted as one for each section, lane and segment; a panel that is chalked by
    itself counts as several, its marks among them (CHALKED, or SHEARED).
    """

    cloth_per_mm: Fraction
    per_join: Fraction = Fraction(0)
    per_setup: Fraction = Fraction(0)
    per_cut: Fraction = Fraction(0)


# What a panel that is chalked by itself counts as, in cuts: its place measured from the end and from the edge, and two
# straight cuts; or, where shears go round it, a cut for each side.
CHALKED, SHEARED = 4, 6


class Misfit(NamedTuple):
    """A strip that no plan can hold: its `size` exceeds `room` in the named direction."""

    strip: str
    wearer: str | None
    direction: Literal["width", "section", "joins"]
    size: Fraction
    room: Fraction


def joins_allowed(strip: Strip, grid: Fraction) -> int:
    """The most joins that `most_joins` and `shortest_segment` leave possible; 0 for a strip cut whole."""
    if not strip.piecing:
        return 0
    length, takes, shortest = (
        ceil(strip.length / grid),
        join_takes(strip, grid),
        shortest_on_grid(strip, grid),
    )
    joins = 0
    while joins < strip.most_joins and length + takes * (joins + 1) >= shortest * (joins + 2):
        joins += 1
    return joins


def join_takes(strip: Strip, grid: Fraction) -> int:
    """Grid steps of length that one join takes from the cloth."""
    return ceil(2 * strip.join_allowance / grid)


def shortest_on_grid(strip: Strip, grid: Fraction) -> int:
    """The shortest segment in grid steps. A segment always shows something beyond its two allowances."""
    return max(ceil(strip.shortest_segment / grid), join_takes(strip, grid) + 1)


def ways_to_lay(strip: Strip, bolt: Bolt) -> tuple[Way, ...]:
    """Every way in which the strip can be laid on the bolt, the plainest first; empty for a misfit."""
    ways: list[Way] = []
    limit = bolt.longest_section
    if (
        strip.grain != "across"
        and width_of_lane(strip, bolt) <= bolt.usable_width
        and _pieces_fit(strip, limit, bolt.grid)
    ):
        ways.append("along")
    if strip.grain != "along" and not strip.selvedge:
        over_width = _pieces_fit(strip, bolt.usable_width, bolt.grid)
        if over_width and (limit is None or _up(strip.depth, bolt.grid) <= limit):
            ways.append("across")
            if strip.length <= bolt.usable_width:
                ways.append("turned")
    return tuple(ways)


def on_the_table(bolt: Bolt, strips: tuple[Strip, ...], table: Fraction) -> Bolt:
    """The bolt with no section longer than the table, or than what has to be cut in one length."""
    while not all(ways_to_lay(strip, bolt._replace(longest_section=table)) for strip in strips):
        table *= 2  # a whole strip that is longer is drawn over the table along the same tapes
    return bolt._replace(longest_section=table)


def misfits(strips: tuple[Strip, ...], bolt: Bolt) -> tuple[Misfit, ...]:
    """The strips that can't be cut from the bolt at all, with the size that is too large and the room there is."""
    found = []
    for strip in strips:
        if ways_to_lay(strip, bolt):
            continue
        limit = bolt.longest_section
        over_width, along = width_of_lane(strip, bolt), strip.length
        if strip.grain == "across":
            over_width, along = strip.length, strip.depth
        if over_width > bolt.usable_width and not (strip.grain == "across" and strip.piecing):
            found.append(Misfit(strip.name, strip.wearer, "width", over_width, bolt.usable_width))
        elif strip.piecing:
            room = bolt.usable_width if strip.grain == "across" else (limit or bolt.usable_width)
            found.append(Misfit(strip.name, strip.wearer, "joins", strip.length, room))
        else:
            found.append(Misfit(strip.name, strip.wearer, "section", along, limit or bolt.usable_width))
    return tuple(found)


def width_of_lane(strip: Strip, bolt: Bolt) -> Fraction:
    """What a lane of this strip takes of the width: on folded cloth a lane at the selvedge lies in both layers."""
    return strip.depth * 2 if strip.selvedge and bolt.folded else strip.depth


def _up(length: Fraction, grid: Fraction) -> Fraction:
    return ceil(length / grid) * grid


def _pieces_fit(strip: Strip, lane: Fraction | None, grid: Fraction) -> bool:
    if lane is None:
        return True
    room, length = floor(lane / grid), ceil(strip.length / grid)
    if length <= room:
        return True
    takes = join_takes(strip, grid)
    return any(room * (joins + 1) >= length + takes * joins for joins in range(1, joins_allowed(strip, grid) + 1))
