"""The shopping list of a garment: what each material needs, what to buy of it, and what all of it costs."""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum
from fractions import Fraction

from furbelow.garment.message import Part
from furbelow.garment.solved import SolvedMaterial
from furbelow.measure.units import LENGTH, MASS, PLAIN, VOLUME, Dims
from furbelow.named import NamedTuple
from furbelow.s5_buy.bobbins import BobbinPlan
from furbelow.s5_buy.cost import Costs
from furbelow.s5_buy.offers import Offered
from furbelow.s5_buy.thread import ThreadNeed


class Unit(StrEnum):
    """What a material is counted in: mm, ml, g, pieces, or reels, of which the need is still in mm."""

    LENGTH = "length"
    VOLUME = "volume"
    MASS = "mass"
    REELS = "reels"
    PIECES = "pieces"

    @property
    def dims(self) -> Dims:
        """What the need of it measures."""
        return {Unit.VOLUME: VOLUME, Unit.MASS: MASS, Unit.PIECES: PLAIN}.get(self, LENGTH)


class Line(NamedTuple):
    """One material on the list. `need` and `bought` as `unit` says; cost None without a price."""

    material: SolvedMaterial
    need: Fraction
    bought: Fraction
    unit: Unit
    cost: Fraction | None
    placement: tuple[Part, ...]  # where it goes
    offers: tuple[Offered, ...] = ()  # of a cloth, the chosen width first
    fibres: tuple[str, ...] = ()  # of what a dye is for
    reel: Fraction = Fraction(0)  # mm of thread on each, of what is bought in reels

    @property
    def name(self) -> str:
        return self.material.material.name


class ShoppingList(NamedTuple):
    """Times in minutes: `minutes` of each performed step, in their order, and of the cutting.

    planned_minutes: all of it with the last look, each time as the guide prints it, so that they add up there.
    """

    lines: tuple[Line, ...]
    thread: ThreadNeed
    bobbins: BobbinPlan | None  # None where the workroom does not say what a bobbin holds
    minutes: tuple[Fraction, ...]
    cutting_minutes: Fraction
    planned_minutes: int
    currency: str
    costs: Costs | None  # None where the workroom does not say what an hour costs, or says it in another currency

    @property
    def hours(self) -> Fraction:
        return Fraction(self.planned_minutes, 60)


def each_once(placements: Iterable[Part]) -> tuple[Part, ...]:
    told: list[Part] = []
    for placement in placements:
        if placement not in told:
            told.append(placement)
    return tuple(told)
