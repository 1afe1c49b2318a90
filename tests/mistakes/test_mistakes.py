"""Every mistake is told for its own cause, no sound garment is refused, and what is advised mends what it is said of."""

from __future__ import annotations

import csv
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from furbelow.diagnose.fault import Fault, has_errors
from furbelow.garment.workroom import Workroom
from furbelow.order.checked import at_the_ends, checked_each
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec

HERE = Path(__file__).parent
TOLD = {row["case"]: row for row in csv.DictReader((HERE / "told.csv").read_text(encoding="utf-8").splitlines())}
SOUND = sorted([*(HERE / "sound").glob("*.yaml"), *(HERE / "garments").glob("*.yaml")])


def _faults(name: str, text: str) -> list[Fault]:
    """All that `furbelow check` tells of a spec, for every size and the ends of every choice."""
    read = read_spec((name, text.encode()))
    found = list(read.faults)
    if read.value is not None:
        sound = []
        orders = [Order(read.value, f"size {size}", body, {}, Workroom()) for size, body in read.value.sizes.items()]
        for order, proved in checked_each(orders):
            found += proved.faults
            sound += [order] if proved.ok else []
        if not has_errors(found):
            found += at_the_ends(sound)
    return found


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


_WRITE = re.compile(r"write `(?P<key>[a-z ]+): (?P<value>[^`]+)` or (?:more|less)")


def _advised() -> Iterator[tuple[str, str, Fault, re.Match[str]]]:
    for case in sorted(TOLD):
        text = (HERE / "wrong" / f"{case}.yaml").read_text(encoding="utf-8")
        for fault in _faults(f"{case}.yaml", text):
            advice = _WRITE.fullmatch(fault.help or "")
            if advice and fault.primary and fault.code == "FB421":
                yield case, text, fault, advice
                break


def test_a_number_that_is_advised_mends_what_it_is_said_of() -> None:
    """Followed to the letter, each number that a message advises takes its own fault away and brings no other error there."""
    followed = 0
    for case, text, fault, advice in _advised():
        assert fault.primary is not None
        lines = text.splitlines()
        at = fault.primary.span.start_line - 1
        key, value = advice["key"], advice["value"]
        if re.search(rf"[{{,] *{key}: ", lines[at]):
            lines[at] = re.sub(rf"([{{,] *){key}: [^,}}]+", rf"\g<1>{key}: {value}", lines[at])
        else:
            lines[at] = re.sub(r"\}\s*$", f", {key}: {value}}}", lines[at])
        mended = _faults(f"{case}.yaml", "\n".join(lines))
        there = [each for each in mended if each.primary and each.primary.span.start_line == at + 1]
        assert [each.headline for each in there if each.code == fault.code and key in (each.help or "")] == [], case
        assert len({each.code for each in mended if each.is_error}) <= len(
            {each.code for each in _faults(case, text) if each.is_error}
        ), case
        followed += 1
    assert followed >= 10
