"""The cases under tests/faults: each planted fault is told, with its code, its place and its message."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path

import pytest
from furbelow.diagnose.fault import Fault, in_reading_order
from furbelow.garment.spec import Spec
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.body import size_body

FOLDER = Path(__file__).parent / "faults"


# The demo garments as they stood when each text was told in English alone: a case holds to their lines, and the demos go on.
GARMENTS = Path(__file__).parent / "faults" / "garments"

_EXPECTED = re.compile(
    r"#\s*(?P<severity>error|warning|note)(?P<nowhere> nowhere)?:\s*(?P<code>FB\d{3})(?::(?P<column>\d+))?\s+(?P<part>\S.*)"
)
_HELP = re.compile(r"#\s*help:\s*(?P<part>\S.*)")
_SOUND = re.compile(r"#\s*sound\s*")
_BASE = re.compile(r"Base:\s*(?P<name>[\w-]+)")


@dataclass
class Expected:
    """A fault that must be told. `line` counts from 1; None where the fault has no place."""

    severity: str
    code: str
    part: str
    column: int | None = None
    line: int | None = None
    help: str = ""

    def is_told_by(self, fault: Fault) -> bool:
        span = fault.primary.span if fault.primary else None
        return (
            fault.severity.value == self.severity
            and fault.code == self.code
            and self.part in fault.headline
            and (span.start_line if span else None) == self.line
            and (self.column is None or (span is not None and span.start_column == self.column))
            and self.help in (fault.help or "")
        )

    def __str__(self) -> str:
        at = "nowhere" if self.line is None else f"line {self.line}" + (f":{self.column}" if self.column else "")
        return f"{self.severity} {self.code} at {at}: {self.part}" + (f" (help: {self.help})" if self.help else "")


@dataclass
class Case:
    name: str
    spec: str
    expected: list[Expected] = field(default_factory=list)


class BadCase(Exception):
    """A case that is not written as tests/faults/README.md says."""


def cases_in(path: Path) -> Iterator[Case]:
    base = case_base = name = None
    block: list[str] | None = None
    kind = ""
    for line in path.read_text(encoding="utf-8").splitlines():
        if block is not None:
            if line.strip() == "```":
                if name is None:
                    raise BadCase(f"{path.name}: a block stands before the first heading")
                yield case_of(f"{path.relative_to(FOLDER).with_suffix('')}: {name}", kind, block, case_base or base)
                block = None
            else:
                block.append(line)
        elif line.startswith("## "):
            name, case_base = line[3:].strip(), None
        elif found := _BASE.fullmatch(line.strip()):
            base, case_base = (base, found["name"]) if name else (found["name"], None)
        elif line.startswith("```"):
            kind, block = line[3:].strip(), []


def case_of(name: str, kind: str, block: Sequence[str], base: str | None) -> Case:
    if kind == "yaml":
        lines = list(block)
    elif kind == "diff" and base:
        spec = (GARMENTS / f"{base}.yaml").read_text(encoding="utf-8")
        lines = changed(spec.splitlines(), block, name)
    else:
        raise BadCase(f"{name}: a block is yaml, or diff with a base")
    case = Case(name, "")
    kept: list[str] = []
    sound = False
    waiting: list[Expected] = []
    for line in lines:
        text = line.strip()
        if found := _EXPECTED.fullmatch(text):
            column = int(found["column"]) if found["column"] else None
            case.expected.append(Expected(found["severity"], found["code"], found["part"], column))
            waiting += [] if found["nowhere"] else case.expected[-1:]
        elif (found := _HELP.fullmatch(text)) and case.expected:
            case.expected[-1].help = found["part"]
        elif _SOUND.fullmatch(text):
            sound = True
        elif re.match(r"#\s*(error|warning|note|help)\b", text):
            raise BadCase(f"{name}: this can't be read: {text}")
        else:
            kept.append(line)
            for expected in waiting:
                expected.line = len(kept)
            waiting = []
    if sound is any(expected.severity == "error" for expected in case.expected):
        raise BadCase(f"{name}: a case is sound, or it has an error")
    case.spec = "\n".join(kept) + "\n"
    return case


def changed(lines: list[str], block: Sequence[str], name: str) -> list[str]:
    """The lines with every change of a diff block made."""
    for change in _changes(block):
        old = [line[1:].strip() for line in change if line[:1] in ("-", " ")]
        if not old:
            raise BadCase(f"{name}: a change shows no line of the base")
        places = [at for at in range(len(lines)) if [line.strip() for line in lines[at : at + len(old)]] == old]
        if len(places) != 1:
            raise BadCase(f"{name}: `{old[0]}` and what follows it is found {len(places)} times in the base")
        new, at = [], places[0]
        for line in change:
            if line[:1] in ("-", " "):
                new += [lines[at]] if line[0] == " " else []
                at += 1
            else:
                new.append(line[1:] if line[:1] == "+" else line)
        lines = [*lines[: places[0]], *new, *lines[at:]]
    return lines


def _changes(block: Sequence[str]) -> Iterator[list[str]]:
    change: list[str] = []
    for line in [*block, "..."]:
        if line.strip() == "...":
            if change:
                yield change
            change = []
        elif line[:1] in ("-", "+", " ") or line.startswith("#"):
            change.append(line)
        elif line.strip():
            raise BadCase(f"a line of a diff begins with -, + or a space: {line}")


def faults_of(case: Case) -> tuple[Fault, ...]:
    """Every fault that the reader tells, or else the proof of each size, at a home table."""
    read = read_spec(("case.yaml", case.spec.encode()))
    if read.value is None:
        return read.faults
    # A fault of the spec shows in every size; as on the command line, it is told with the numbers of the first.
    told: list[Fault] = []
    for faults in _of_every_size(read.value):
        places = {(fault.code, fault.primary and fault.primary.span) for fault in told}
        told += [fault for fault in faults if (fault.code, fault.primary and fault.primary.span) not in places]
    return in_reading_order((*read.faults, *told))


def _of_every_size(spec: Spec) -> Iterator[tuple[Fault, ...]]:
    for size in spec.sizes:
        body = size_body(spec, size)
        yield body.faults
        if body.value is not None:
            yield prove(Order(spec, f"size {size}", body.value, {}, Workroom())).faults


CASES = [case for path in sorted(FOLDER.rglob("*.md")) if path != FOLDER / "README.md" for case in cases_in(path)]


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.name)
def test_a_planted_fault_is_told_where_it_stands(case: Case) -> None:
    faults = faults_of(case)
    told = "\n".join(
        f"{f.severity.value} {f.code} at {f.primary.span if f.primary else 'nowhere'}: {f.headline} (help: {f.help})"
        for f in faults
    )
    missing = [str(expected) for expected in case.expected if not any(map(expected.is_told_by, faults))]
    assert not missing, f"not told: {missing}\ntold:\n{told}"
    unexpected = [f for f in faults if f.is_error and not any(expected.is_told_by(f) for expected in case.expected)]
    assert not unexpected, f"told besides: {[f.headline for f in unexpected]}\ntold:\n{told}"


def test_no_two_cases_have_the_same_name() -> None:
    names = [case.name for case in CASES]
    assert sorted(names) == sorted(set(names))


@pytest.mark.parametrize(
    ("block", "message"),
    [
        (["-no such line"], "found 0 times"),
        (["-c"], "found 2 times"),
        (["+new"], "shows no line"),
        (["c"], "begins with"),
    ],
)
def test_a_change_that_fits_nowhere_is_refused(block: list[str], message: str) -> None:
    with pytest.raises(BadCase, match=message):
        changed(["a", "c", "b", "c"], block, "case")


def test_a_change_is_made_where_its_lines_stand() -> None:
    assert changed(["a", "c", "  b", "c"], [" b", "-c", "+ d", "...", "-a"], "case") == ["c", "  b", " d"]
