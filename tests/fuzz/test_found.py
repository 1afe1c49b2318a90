"""What fuzzing found, each kept as a small case."""

from __future__ import annotations

import pytest

from tests.fuzz.chain import through_the_chain
from tests.fuzz.mutate import SPECS

LARKSPUR = (SPECS / "larkspur.yaml").read_text(encoding="utf-8")


def test_two_parts_may_bear_one_heading() -> None:
    twice = LARKSPUR.replace("en: Lining", "en: Finish")
    assert through_the_chain(twice.encode(), write=True)[0] == "made"


@pytest.mark.parametrize(
    ("sound", "found"),
    [
        ("length: waist_girth - 15 cm", "length: 0 cm"),
        ("length: waist_girth - 15 cm, overlap: 2 cm", "length: waist_girth - 15 cm, overlap: 0 cm"),
        ("gather: {edge: flounce.top, to: upper.bottom}", "gather: {edge: flounce.top, length: 0 cm}"),
    ],
)
def test_a_length_of_nothing_is_refused_at_its_step(sound: str, found: str) -> None:
    assert sound in LARKSPUR
    reached, faults = through_the_chain(LARKSPUR.replace(sound, found).encode(), write=True)
    assert reached == "refused when solved or rehearsed"
    assert "FB208" in {fault.code for fault in faults}


@pytest.mark.parametrize("hem", ["second turn: 900 mm", "second turn: 60 cm"])
def test_a_hem_needs_cloth_to_lie_on(hem: str) -> None:
    spec = LARKSPUR.replace("second turn: 10 mm", hem)
    assert {fault.code for fault in through_the_chain(spec.encode())[1]} == {"FB312"}


def test_a_layer_is_stacked_once() -> None:
    spec = LARKSPUR.replace("layers: [upper.top], as", "layers: [upper.top, upper.top], as")
    told = through_the_chain(spec.encode())[1]
    assert [fault.headline for fault in told] == ["`upper.top` already lies in this stack"]


def test_a_stack_is_no_layer_of_itself_and_two_are_none_of_each_other() -> None:
    own = LARKSPUR.replace("layers: [upper.top], as: net_top", "layers: [upper.top, net_top], as: net_top")
    reached, told = through_the_chain(own.encode())
    assert reached == "refused when read"
    assert [fault.headline for fault in told] == ["`net_top` is made by this step, and is no layer of itself"]
    each_other = LARKSPUR.replace("layers: [upper.top], as", "layers: [upper.top, skirt_top], as")
    assert through_the_chain(each_other.encode())[0] == "refused when solved or rehearsed"


@pytest.mark.parametrize("demo", ["larkspur", "marigold"])
def test_a_gap_leaves_something_of_its_casing_to_stitch(demo: str) -> None:
    spec = (SPECS / f"{demo}.yaml").read_text(encoding="utf-8")
    wide = spec.replace("gap: 5 cm", "gap: 50 m").replace("gap: 2 in", "gap: 99 yd")
    assert wide != spec
    assert {fault.code for fault in through_the_chain(wide.encode(), write=True)[1]} == {"FB352"}


@pytest.mark.parametrize("text", ["\u200b", '"\u2060\u200d"', "\u00ad", '"\u0301"'])
@pytest.mark.parametrize("where", ["en: Larkspur dancing underskirt", "en: Lining"])
def test_a_text_that_nobody_can_see_is_refused_where_it_stands(where: str, text: str) -> None:
    """The writer of the PDF asks for a title, and refused one without letters: our bug, to the maker."""
    key = where.partition(":")[0]
    reached, faults = through_the_chain(LARKSPUR.replace(where, f"{key}: {text}").encode())
    assert reached == "refused when read"
    assert [fault.headline for fault in faults] == ["nothing of this text can be seen"]


def test_very_many_unknown_keys_are_told_by_the_first_and_a_count() -> None:
    many = LARKSPUR + "".join(f"\nkey_{number}: 1" for number in range(9_000))
    _, faults = through_the_chain(many.encode())
    assert len(faults) == 21
    assert faults[-1].headline == "8,980 more keys of a garment spec are unknown"
