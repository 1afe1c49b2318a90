"""What is told of a record: of one copy among others, of a pair, of strips that are joined, of what can't be so."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.amend.amend import amend
from furbelow.amend.fresh_guide import fresh_guide
from furbelow.amend.read_record import read_record
from furbelow.amend.report import as_text

from tests.amend.test_amend import amended, record, refused
from tests.demos.demos import order


def test_one_short_copy_is_not_the_whole_garment() -> None:
    """The other copy hangs 53 cm and covers the lining; both hems are 558 and 600 cm, and the lining's 156 cm."""
    found = amended("larkspur", "M", "cut: flounce, copy: b, length: 560 cm, depth: 36 cm")
    together = found.together.rehearsal
    assert max(together.run.drops.values()) == 530
    (hems,) = [fact.value for fact in fresh_guide(found).facts if fact.label == "round all 3 hems"]
    assert hems == "13.14 m"
    last = fresh_guide(found).operations[-1]
    assert any("53 cm" in step.text for step in last.steps)
    told = {operation.letter: operation for operation in fresh_guide(found).operations}
    assert "558 cm" in " ".join(step.text for step in told["Fb"].steps)
    assert "600 cm" in " ".join(step.text for step in told["F"].steps)


def test_a_pocket_that_came_out_shorter_has_its_own_numbers_and_may_be_matched() -> None:
    found = amended("bindweed", "C", "cut: pocket, copy: a, depth: 20 cm")
    assert "where it is to match the other, cut that to 20 cm as well" in as_text(found)
    told = [operation for operation in fresh_guide(found).operations if "pocket" in operation.title]
    assert len(told) == 2
    assert all(operation.title.startswith("Sew each copy of the pocket") for operation in told)
    checks = [" ".join(step.check for step in operation.steps) for operation in told]
    assert "18 cm high" in checks[0]
    assert "15.5 cm high" in checks[1]


def test_strips_that_were_measured_joined_are_not_joined_again() -> None:
    planned = order("marigold", "16")
    tiers = ("top", "middle", "lower")
    short = [f"cut: {tier}, length: {length} in" for tier, length in zip(tiers, (50, 74, 111), strict=True)]
    read = read_record(("record.yaml", record(*short)))
    assert read.value is not None
    found = amend(planned, read.value).value
    assert found is not None
    assert not any(operation.title.startswith("Join the strips") for operation in fresh_guide(found).operations)
    assert "Join the strips" not in as_text(found)
    one = amended("marigold", "16", "cut: middle, length: 74 in")
    assert any(operation.title.startswith("Join the strips") for operation in fresh_guide(one).operations)


def test_a_choice_is_checked_either_way() -> None:
    found = amended("larkspur", "M", "edge: flounce.top, copy: b, length: 287.5 cm")
    (step,) = fresh_guide(found).operations[0].steps
    assert "If you let the gathers out, each quarter measures 75 cm" in step.check
    assert "If you ease" in step.check


def test_rates_are_by_the_yard_where_lengths_are_in_inches() -> None:
    """2 in of 46 in are 1.57 in of each 36."""
    found = amended("marigold", "12", "edge: middle.top, length: 44 in")
    assert "1 5/8 in in each yard" in as_text(found)
    assert "metre" not in as_text(found)


@pytest.mark.parametrize(
    ("rows", "headline", "mend"),
    [
        (
            ("ring: upper, length: 296 cm", "ring: upper, length: 298 cm"),
            "`ring: upper` was measured twice: 296 cm on line 3 and 298 cm here",
            "keep the later of the two",
        ),
        (
            ("ring: upper, copy: 2b, length: 296 cm",),
            "`copy: 2b` is a tag of piece 2, and `upper` is piece 1",
            "write the letter of the tag alone, or name its piece",
        ),
        (
            ("ring: upper, copy: ab, length: 296 cm",),
            "copy ab of `upper` was measured, and there are 2",
            "write a copy from 1 to 2, or leave `copy` out for all of them",
        ),
        (
            ("edge: skirt_top, length: 158 cm",),
            "`skirt_top` is never gathered, pleated or eased in",
            "measure `ring: upper` or `ring: lining`",
        ),
        (
            ("ring: skirt_top, length: 158 cm",),
            "`skirt_top` is a stack, and a ring is of one piece",
            "measure `edge: skirt_top` where it is gathered, or `ring: upper` or `ring: lining`",
        ),
        (
            ("cloth: net, shrinkage: 4",),
            "`shrinkage` is 4, and it must be less than all",
            "write a share such as `4%`",
        ),
    ],
)
def test_a_slip_is_told_with_a_mend_that_mends_it(rows: tuple[str, ...], headline: str, mend: str) -> None:
    fault = refused("larkspur", "M", *rows)[0]
    assert (fault.headline, fault.help) == (headline, mend)


def test_what_flares_is_measured_by_its_edge() -> None:
    (fault,) = refused("peony", "C", "edge: skirt.top, length: 84 cm")
    assert fault.help == "measure `ring: skirt.top` or `cut: skirt`"
    assert amended("peony", "C", "ring: skirt.top, length: 84 cm").findings


@pytest.mark.parametrize(("copy", "which"), [("1a", 1), ("A", 1), ("1b·2", 2), ("b", 2)])
def test_a_copy_is_called_as_on_its_tag(copy: str, which: int) -> None:
    found = amended("larkspur", "M", f"ring: upper, copy: {copy}, length: 296 cm")
    assert [finding.measured.copy for finding in found.findings] == [which]


def test_an_empty_record_is_begun_as_a_record() -> None:
    (fault,) = read_record(("record.yaml", b"")).faults
    assert fault.help == "begin it with `record: 1`"


@pytest.mark.parametrize("length", ["2870 cm", "29.85 cm"])
def test_what_is_cut_is_not_mended_by_other_numbers_in_the_spec(length: str) -> None:
    """A slipped digit: the mend is to measure again, and nothing that would be written in the spec."""
    faults = refused("larkspur", "M", f"ring: upper, length: {length}")
    assert all(fault.help and fault.help.startswith("measure `upper` again") for fault in faults)
    assert all(fault.change is None for fault in faults)


def test_more_joins_are_offered_only_where_they_help() -> None:
    """With 6 joins the net takes 4.38 m, and no way takes less."""
    assert "buy 56 cm more before you cut\n" in as_text(amended("larkspur", "M", "cloth: net, length: 400 cm"))
    found = amended("larkspur", "M", "cloth: net, length: 450 cm")
    assert "buy 6 cm more before you cut, or choose a way to cut with more joins" in as_text(found)


def test_what_is_sewn_in_already_is_let_be() -> None:
    """The net is stacked and gathered: the flounce below it is long sewn on, whatever it measured."""
    found = amended("larkspur", "M", "edge: flounce.top, copy: a, length: 290 cm", "edge: net_top, length: 150 cm")
    first, second = found.findings
    assert first.verdict is None
    assert second.verdict is not None
    assert "it is sewn in already: go on" in as_text(found)
    assert first.wanted == Fraction(3000)
