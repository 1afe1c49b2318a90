"""Every size of every demo is proved, and the sums that a person can check on the page add up."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from furbelow.garment.spec import Spec
from furbelow.measure.quantity import parse_quantity
from furbelow.order.chain import prove
from furbelow.s4_cut.cut import cut
from furbelow.s5_buy.buy import buy

from tests.demos.demos import EVERY_SIZE, NAMES, guide, order, spec, steps_of, theatre


def _mm(shown: str) -> Fraction:
    quantity = parse_quantity(shown)
    return quantity.as_length_mm()  # type: ignore[union-attr]


@pytest.mark.parametrize("name", NAMES)
def test_a_demo_has_five_sizes_or_more(name: str) -> None:
    garment: Spec = spec(name)
    assert len(garment.sizes) >= 5


@pytest.mark.parametrize(("name", "size"), EVERY_SIZE)
def test_it_is_proved_without_a_word_of_warning(name: str, size: str) -> None:
    staged = prove(order(name, size))
    assert staged.ok
    assert staged.faults == ()


@pytest.mark.parametrize(("name", "size"), EVERY_SIZE)
def test_the_depths_hang_down_to_the_length_that_was_asked(name: str, size: str) -> None:
    rehearsal = prove(order(name, size)).value
    assert rehearsal is not None
    asked = rehearsal.solved.length("worn.length")
    assert asked <= max(rehearsal.run.drops.values()) <= asked + rehearsal.solved.rounding


@pytest.mark.parametrize(("name", "size"), EVERY_SIZE)
def test_the_printed_depths_add_up_to_the_printed_length(name: str, size: str) -> None:
    written = guide(name, size)
    shown = next(proof.shown for proof in written.proofs if proof.claim.startswith("The depths add up"))
    parts, total = shown.split(" = ")
    assert sum(_mm(part) for part in parts.split(" + ")) == _mm(total)
    assert total in [fact.value for fact in written.facts]


@pytest.mark.parametrize(("name", "size"), EVERY_SIZE)
def test_the_printed_costs_add_up(name: str, size: str) -> None:
    asked = order(name, size, theatre())
    rehearsal = prove(asked).value
    assert rehearsal is not None
    cutting = cut(rehearsal.solved, asked.room).value
    assert cutting is not None
    shopping = buy(rehearsal, cutting).value
    assert shopping is not None
    assert shopping.costs is not None
    assert shopping.costs.materials == sum(line.cost or 0 for line in shopping.lines)
    assert all(line.bought >= line.need or line.unit == "reels" for line in shopping.lines)


@pytest.mark.parametrize(("name", "size"), EVERY_SIZE)
def test_the_lanes_of_each_section_hold_the_cut_sizes_of_the_list(name: str, size: str) -> None:
    asked = order(name, size)
    rehearsal = prove(asked).value
    assert rehearsal is not None
    solved = rehearsal.solved
    cutting = cut(solved, asked.room).value
    assert cutting is not None
    for cloth in cutting.sheets:
        sheet = cutting.sheet(cloth)
        lengths: dict[tuple[str, int], Fraction] = {}
        for section in sheet.plan.sections:
            for lane in section.lanes:
                for segment in lane.segments:
                    key = segment.strip, segment.copy
                    length = solved.pieces[segment.strip].blank[0] if segment.turned else segment.length
                    lengths[key] = lengths.get(key, Fraction(0)) + length
            for panel in section.panels:
                lengths[panel.strip, panel.copy] = solved.pieces[panel.strip].blank[0]
        for strip in sheet.strips:
            copies = [length for (name_, _), length in lengths.items() if name_ == strip.name]
            assert len(copies) == strip.count
            assert all(length >= strip.length for length in copies)


@pytest.mark.parametrize("name", NAMES)
def test_steps_are_numbered_through_and_each_says_one_thing(name: str) -> None:
    size = next(iter(spec(name).sizes))
    written = guide(name, size)
    for operation in written.operations:
        assert [step.number for step in operation.steps] == list(range(1, len(operation.steps) + 1))
    for step in steps_of(written):
        assert len(step.text.split()) <= 45, step.text
        assert not re.search(r"\bNone\b|\{|\}", step.text), step.text
