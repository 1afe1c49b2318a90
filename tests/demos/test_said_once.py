"""The demos that say once what is there several times: at both ends of their choices, and a child's skirt without cords."""

from __future__ import annotations

import pytest
from furbelow.diagnose.fault import Span
from furbelow.garment.spec import Written
from furbelow.garment.workroom import Workroom
from furbelow.measure.formula import parse_formula
from furbelow.measure.formula_parser import Formula
from furbelow.order.chain import prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec

from tests.demos.demos import SPECS, spec


def chosen(**choices: str) -> dict[str, Written]:
    found = {}
    for name, value in choices.items():
        formula = parse_formula(value)
        assert isinstance(formula, Formula)
        found[name] = Written(value, formula, Span.at_start("choices"))
    return found


@pytest.mark.parametrize(("layers", "pairs"), [("2", 1), ("6", 3), ("8", 4)])
def test_a_dance_petticoat_has_as_many_true_pairs_as_are_chosen(layers: str, pairs: int) -> None:
    garment = spec("lupin")
    staged = prove(Order(garment, "size M", garment.sizes["M"], chosen(layers=layers), Workroom()))
    assert staged.value is not None, staged.faults
    solved = staged.value.solved
    uppers = [piece for name, piece in solved.pieces.items() if name.startswith("upper_")]
    assert [piece.count for piece in uppers] == [2] * pairs
    stack = staged.value.run.final.edge("net_top")
    assert sum(ply.copies for ply in stack.plies) == int(layers)
    # Each pair is 1 cm shorter than the one over it, the lining 3 cm shorter than the last.
    drops = staged.value.run.drops
    assert drops["flounce_1"] - drops[f"flounce_{pairs}"] == 10 * (pairs - 1)


@pytest.mark.parametrize(("layers", "lined"), [("3", "0"), ("7", "0"), ("7", "1")])
def test_a_childs_skirt_has_its_layers_and_a_lining_or_none(layers: str, lined: str) -> None:
    garment = spec("clover")
    staged = prove(Order(garment, "size 110", garment.sizes["110"], chosen(layers=layers, lined=lined), Workroom()))
    assert staged.value is not None, staged.faults
    assert not [fault for fault in staged.faults if fault.is_error]
    solved = staged.value.solved
    assert len([name for name in solved.pieces if name.startswith("net_")]) == int(layers)
    assert ("lining" in solved.pieces) is (lined == "1")


def test_a_cord_with_long_ends_is_refused_in_a_childs_skirt() -> None:
    text = (SPECS / "clover.yaml").read_text(encoding="utf-8")
    start = text.index("  - adjustable elastic")
    end = text.index("notes:")
    cord = text[:start] + "  - drawstring: {cord: tie, into: band, ends: 30 cm, for: child}\n" + text[end:]
    cord = cord.replace("gap in: seam", "gap: 4 cm").replace(
        "pieces:\n", "  tie: {kind: cord, width: 5 mm}\npieces:\n", 1
    )
    read = read_spec(("clover.yaml", cord.encode()))
    assert read.value is not None, read.faults
    faults = prove(Order(read.value, "size 110", read.value.sizes["110"], {}, Workroom())).faults
    assert [
        fault.code for fault in faults if fault.is_error and "cord" in fault.headline or "ends" in fault.headline
    ] != []
