"""The demo specs, read once, and orders made from them."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from pathlib import Path

from furbelow.garment.spec import Spec, Written
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import plan, prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s1_read.read_workroom import read_workroom
from furbelow.s6_write.guide.compose import compose
from furbelow.s6_write.guide.guide import Guide, GuideStep

SPECS = Path(__file__).parents[2] / "specs"
NAMES = tuple(sorted(path.stem for path in SPECS.glob("*.yaml")))


@cache
def spec(name: str) -> Spec:
    staged = read_spec(SPECS / f"{name}.yaml")
    assert staged.value is not None, staged.faults
    return staged.value


@cache
def theatre() -> Workroom:
    staged = read_workroom(SPECS / "workrooms" / "theatre.yaml")
    assert staged.value is not None, staged.faults
    return staged.value


def order(name: str, size: str, room: Workroom | None = None, choices: Mapping[str, Written] | None = None) -> Order:
    garment = spec(name)
    return Order(garment, f"size {size}", garment.sizes[size], choices or {}, room or Workroom())


@cache
def guide(name: str, size: str, *, at_home: bool = False) -> Guide:
    """The guide for a size, in the theatre's workroom or with no workroom file."""
    proved = prove(order(name, size, None if at_home else theatre())).value
    assert proved is not None
    planned = plan(proved).value
    assert planned is not None
    return compose(planned.rehearsal, planned.cutting, planned.shopping, f"size {size}")


EVERY_SIZE = tuple((name, size) for name in NAMES for size in spec(name).sizes)


def steps_of(guide: Guide) -> tuple[GuideStep, ...]:
    """Every step of a guide in its order, cutting first."""
    return tuple(step for operation in guide.operations for step in operation.steps)


def cutting_of(guide: Guide) -> tuple[GuideStep, ...]:
    """The steps of the cutting."""
    return tuple(step for operation in guide.cut for step in operation.steps)
