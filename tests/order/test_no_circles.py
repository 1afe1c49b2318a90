"""What a guide was made of is free once its files are there: nothing of it goes round in a circle until Python looks for those."""

from __future__ import annotations

import gc
from collections.abc import Mapping
from pathlib import Path

import pytest
from furbelow.garment.spec import Spec
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import guide_of, planned
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s6_write.pages.files import files_of

SPECS = sorted((Path(__file__).parents[2] / "specs").glob("*.yaml"))


def written(spec: Spec, size: str) -> Mapping[str, bytes]:
    found = planned(Order(spec, size, spec.sizes[size], {}, Workroom())).value
    assert found is not None
    return files_of(guide_of(found, size), *found, with_pdf=False)


def home_of(value: object) -> str:
    """The module that a function, or the type of another value, is from."""
    return str(getattr(value, "__module__", None) or type(value).__module__)


@pytest.mark.parametrize("path", SPECS, ids=lambda path: path.stem)
def test_nothing_of_ours_is_left_in_circles(path: Path) -> None:
    spec = read_spec(path).value
    assert spec is not None
    first, *_, last = spec.sizes
    written(spec, first)  # what is loaded or kept once for all guides
    gc.collect()
    gc.disable()
    gc.set_debug(gc.DEBUG_SAVEALL)
    try:
        written(spec, last)
        gc.collect()
        left = {f"{home_of(each)}: {getattr(each, '__qualname__', type(each).__qualname__)}" for each in gc.garbage}
    finally:
        gc.set_debug(0)
        gc.garbage.clear()
        gc.enable()
    assert sorted(each for each in left if each.startswith("furbelow")) == []
