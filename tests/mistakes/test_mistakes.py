"""Every mistake is told for its own cause, no sound garment is refused, and what is advised mends what it is said of."""

from __future__ import annotations

import csv
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from furbelow.diagnose.fault import Change, Fault
from furbelow.diagnose.make_change import edit_of
from furbelow.garment.workroom import Workroom
from furbelow.order.checked import checked
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec

HERE = Path(__file__).parent
TOLD = {row["case"]: row for row in csv.DictReader((HERE / "told.csv").read_text(encoding="utf-8").splitlines())}
SOUND = sorted([*(HERE / "sound").glob("*.yaml"), *(HERE / "garments").glob("*.yaml")])


def _faults(name: str, text: str) -> list[Fault]:
    """All that `furbelow check` tells of a spec, for every size and the ends of every choice."""
    read = read_spec((name, text.encode()))
    if read.value is None:
        return list(read.faults)
    orders = [Order(read.value, f"size {size}", body, {}, Workroom()) for size, body in read.value.sizes.items()]
    return [*read.faults, *checked(read.value, orders).faults]


def test_every_mistake_has_a_row() -> None:
    assert {path.stem for path in (HERE / "wrong").glob("*.yaml")} == set(TOLD)


@pytest.mark.parametrize("case", sorted(TOLD))
def test_a_mistake_is_told_for_its_cause(case: str) -> None:
    text = (HERE / "wrong" / f"{case}.yaml").read_text(encoding="utf-8")
    told = {fault.code for fault in _faults(f"{case}.yaml", text)}
    assert told & set(TOLD[case]["told by"].split()), TOLD[case]["mistake"]


@pytest.mark.parametrize("path", SOUND, ids=lambda path: path.stem)
def test_a_sound_garment_is_not_refused(path: Path) -> None:
    faults = _faults(path.name, path.read_text(encoding="utf-8"))
    assert [f"{fault.code} {fault.headline}" for fault in faults if fault.is_error] == []


def _changed(source: str, change: Change) -> str:
    """The source once the change is made."""
    edit = edit_of(source, change)
    lines = source.splitlines(keepends=True)

    def offset(line: int, column: int) -> int:
        return sum(len(row) for row in lines[: line - 1]) + column - 1

    near = offset(edit.span.start_line, edit.span.start_column)
    far = offset(edit.span.end_line, edit.span.end_column)
    return source[:near] + edit.text + source[far:]


def _changes(faults: list[Fault]) -> Iterator[tuple[Fault, Change]]:
    """Each change that is advised."""
    for fault in faults:
        if fault.change:
            yield fault, fault.change


def _at(fault: Fault) -> tuple[str, str, str]:
    """What a fault is told of: its code and the start of its headline, whatever its numbers, and the key to mend."""
    return (
        fault.code,
        fault.headline.split("`")[1] if "`" in fault.headline else "",
        (fault.help or "").partition(":")[0],
    )


@pytest.mark.parametrize("case", sorted(TOLD))
def test_advice_followed_to_the_letter_mends_its_fault(case: str) -> None:
    """Each change that a fault advises, made in the text, takes that fault away and brings no other error."""
    text = (HERE / "wrong" / f"{case}.yaml").read_text(encoding="utf-8")
    faults = _faults(f"{case}.yaml", text)
    errors = {fault.code for fault in faults if fault.is_error}
    for fault, change in _changes(faults):
        mended = _faults(f"{case}.yaml", _changed(text, change))
        assert _at(fault) not in {_at(each) for each in mended}, fault.help
        assert {each.code for each in mended if each.is_error} <= errors


def _in_that_order(source: str, fault: Fault) -> str:
    """The source with the row of the step that a fault is told of put before that of the other."""
    rows = source.splitlines(keepends=True)
    assert fault.primary is not None
    moved = rows.pop(fault.primary.span.start_line - 1)
    rows.insert(fault.others[0].span.start_line - 1, moved)
    return "".join(rows)


@pytest.mark.parametrize("case", sorted(TOLD))
def test_a_step_that_is_moved_as_advised_mends_its_fault(case: str) -> None:
    text = (HERE / "wrong" / f"{case}.yaml").read_text(encoding="utf-8")
    for fault in _faults(f"{case}.yaml", text):
        if fault.help and re.fullmatch("move `[a-z ]+` before `[a-z ]+`", fault.help):
            mended = _faults(f"{case}.yaml", _in_that_order(text, fault))
            assert _at(fault) not in {_at(each) for each in mended}, fault.help


def test_advice_is_followed_in_enough_cases() -> None:
    told = [
        fault
        for case in sorted(TOLD)
        for fault, _ in _changes(_faults(f"{case}.yaml", (HERE / "wrong" / f"{case}.yaml").read_text(encoding="utf-8")))
    ]
    assert len(told) >= 20


def test_of_one_fault_in_several_sizes_the_mend_is_told_that_does_for_all() -> None:
    """Ties for a band of 60 cm: at a waist of 66 cm each bridges 3 cm, at one of 78 cm 9 cm, and has 25 cm for a bow."""
    text = (HERE / "wrong" / "A02.yaml").read_text(encoding="utf-8")
    (told,) = (fault for fault in _faults("A02.yaml", text) if fault.code == "FB421")
    assert told.help == "make it 34 cm or more"
