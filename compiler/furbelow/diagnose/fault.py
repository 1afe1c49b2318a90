"""Faults as values: what is wrong, where, and the one change that mends it.

Every stage returns a `Staged` value: its result and all the faults that it met, never only the first.
How a fault is shown lies in report_text.py, report_json.py and report_sarif.py.
"""

from collections.abc import Iterable
from enum import Enum
from fractions import Fraction
from typing import Generic, NamedTuple, TypeVar

T = TypeVar("T")


class Severity(Enum):
    """How much a fault weighs: an error stops the guide, a warning or a note does not."""

    ERROR = "error"
    WARNING = "warning"
    NOTE = "note"


class Span(NamedTuple):
    """A place in a file.

    Lines and columns count from 1, in Unicode characters; the end is the first place after it.
    """

    file: str
    start_line: int
    start_column: int
    end_line: int
    end_column: int

    @staticmethod
    def at_start(file: str) -> "Span":
        """The empty place at the start of a file, for faults of the file as a whole."""
        return Span(file, 1, 1, 1, 1)

    def inside(self, offset: int, length: int) -> "Span":
        """The place `offset` characters into this one, kept within it.

        Only a place on one line can be cut; a longer one is returned whole.
        """
        if self.start_line != self.end_line:
            return self
        start = min(self.start_column + max(offset, 0), self.end_column)
        end = min(start + max(length, 0), self.end_column)
        return Span(self.file, self.start_line, start, self.end_line, end)

    def __str__(self) -> str:
        return f"{self.file}:{self.start_line}:{self.start_column}"


class Label(NamedTuple):
    """What one place has to do with the fault, said in a few words."""

    span: Span
    text: str = ""


class Put(Enum):
    """Where the text of a change goes: in the place of the span, or into the row of a step, before or after that row;
    or away with the row."""

    OVER = "over"
    INTO = "into"
    BEFORE = "before"
    AFTER = "after"
    AWAY = "away"


class Change(NamedTuple):
    """What the advice of a fault comes to in the file, for an editor that makes it.

    text: a value, a key with its value, or the row of a step without its dash. span: what it replaces; of a row, any place
    in its first line; for INTO, the last value that the row has.
    """

    put: Put
    span: Span
    text: str = ""


class Fault(NamedTuple):
    """One fault, told to the maker.

    code: FB and three digits, named in codes.py. FB1 read, FB2 solve, FB3 steps of the rehearsal, FB4 proofs,
        FB5 cut, FB6 buy and write.
    headline: states the fault, with both numbers and their difference; lowercase, no full stop, no advice.
    primary: the place to mend. others: the places that take part.
    notes: the arithmetic. help: one change that mends it. change: the same for an editor, where it is one of text.
    needs: how much that change comes to, where it is a number: of like faults for several bodies the one that needs most is
        told, so that its mend does for all of them.
    """

    code: str
    headline: str
    primary: Label | None = None
    others: tuple[Label, ...] = ()
    notes: tuple[str, ...] = ()
    help: str | None = None
    severity: Severity = Severity.ERROR
    change: Change | None = None
    needs: Fraction | None = None

    @property
    def is_error(self) -> bool:
        return self.severity is Severity.ERROR


class Staged(NamedTuple, Generic[T]):
    """What a stage hands on: its value, where there is one, and every fault it met."""

    value: T | None
    faults: tuple[Fault, ...] = ()

    @property
    def ok(self) -> bool:
        """Whether the next stage can go on: a value, and no error."""
        return self.value is not None and not has_errors(self.faults)


def has_errors(faults: Iterable[Fault]) -> bool:
    return any(fault.is_error for fault in faults)


def in_reading_order(faults: Iterable[Fault]) -> tuple[Fault, ...]:
    """The faults as a reader meets them: by file, line and column, each told once; placeless ones first."""

    def place(fault: Fault) -> tuple[bool, str, int, int, str]:
        if fault.primary is None:
            return (False, "", 0, 0, fault.code)
        span = fault.primary.span
        return (True, span.file, span.start_line, span.start_column, fault.code)

    return tuple(sorted(dict.fromkeys(faults), key=place))
