"""The demo specs: every size has every number, and what is printed adds up."""

from pathlib import Path

import pytest
from furbelow.garment.spec import Spec
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.body import size_body
from furbelow.s2_solve.solve import Prepared, prepare
from furbelow.s2_solve.takes import allowances
from furbelow.techniques import technique_of

SPECS = sorted((Path(__file__).parents[2] / "specs").glob("*.yaml"))


def demo(path: Path) -> tuple[Spec, Prepared]:
    read = read_spec(path)
    assert read.faults == ()
    assert read.value
    return read.value, prepare(read.value, allowances(read.value, technique_of))


def test_there_are_demo_specs() -> None:
    assert len(SPECS) >= 3


@pytest.mark.parametrize("path", SPECS, ids=lambda path: path.stem)
def test_every_size_is_solved_and_its_sums_add_up(path: Path) -> None:
    spec, system = demo(path)
    assert len(spec.sizes) >= 5
    for size in spec.sizes:
        body = size_body(spec, size)
        assert body.value
        result = system.solve(f"size {size}", body.value, {})
        assert result.faults == ()
        assert result.value
        for name, piece in result.value.pieces.items():
            taken = {
                side: result.value.length(takes) if (takes := f"{name}.{side}_takes") in result.value.values else 0
                for side in ("top", "bottom", "start", "end")
            }
            assert piece.cut_length == piece.length + taken["start"] + taken["end"]
            assert piece.cut_depth == piece.depth * (1 + piece.folded) + taken["top"] + taken["bottom"]
            assert (piece.cut_length / result.value.rounding).denominator == 1
            assert (piece.cut_depth / result.value.rounding).denominator == 1


def test_the_tiers_of_the_three_tier_skirt_are_as_long_on_the_body_as_the_skirt_or_less_than_a_step_more() -> None:
    spec, system = demo(next(path for path in SPECS if path.stem == "marigold"))
    for size in spec.sizes:
        solved = system.solve(size, size_body(spec, size).value or {}, {}).value
        assert solved
        tiers = solved.length("top.depth") + solved.length("middle.depth") + solved.length("lower.depth")
        assert 0 <= tiers - solved.length("skirt_length") < solved.rounding
