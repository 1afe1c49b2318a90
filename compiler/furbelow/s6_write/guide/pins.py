"""How many pins and clips to have: those of the step that takes most, and those that hold thread tails meanwhile."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from furbelow.garment.bench import Bench
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed
from furbelow.techniques.shared.gathers import tail_pins


def pins_in(steps: Iterable[Performed], say: Phrasing) -> int:
    """What holds edges in the step of these that takes most, at the spacing of the workroom."""
    return max((_holding(done, say) for done in steps), default=0)


def pins_with_tails(steps: Iterable[Performed], say: Phrasing) -> int:
    """The same with the pins that thread tails are wound round while edges are pinned."""
    return max((tails_in(done.before) + _holding(done, say) for done in steps), default=0)


def _holding(done: Performed, say: Phrasing) -> int:
    held = done.pinned if done.pinned_at_once is None else done.pinned_at_once
    return say.pins(held, say.room.pin_spacing) if held else 0


def tails_in(bench: Bench) -> int:
    """Pins that hold the thread tails of gathers."""
    return sum(map(tail_pins, bench.edges.values()))


def in_tens(count: int) -> int:
    """As pins are counted out: to the next ten."""
    return -(-Fraction(count) // 10) * 10
