"""The whole chain over one hostile spec: what it promises whatever it is given."""

from __future__ import annotations

import re
import signal
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from types import FrameType

from furbelow.diagnose.codes import CODES
from furbelow.diagnose.fault import Fault, Span
from furbelow.diagnose.report_json import render_json
from furbelow.diagnose.report_text import render
from furbelow.garment.spec import Written
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.make_one import make_guide
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec

NAME = "spec.yaml"
REACHES = ("refused when read", "refused when solved or rehearsed", "proved", "made")

_BREAK = re.compile(r"\r\n|\r|\n")  # the other line breaks of Unicode are refused in a spec


class Hang(Exception):
    """A spec took longer than it may."""


@contextmanager
def at_most(seconds: float, *, working: bool = False) -> Iterator[None]:
    """Ends what runs inside with a Hang after so long; not a test's clock but a way out of an endless loop.

    working: count the processor's time, which other programs on the machine do not lengthen.
    """
    timer, told = (signal.ITIMER_PROF, signal.SIGPROF) if working else (signal.ITIMER_REAL, signal.SIGALRM)

    def end(_number: int, _frame: FrameType | None) -> None:
        raise Hang(f"longer than {seconds} s")

    before = signal.signal(told, end)
    signal.setitimer(timer, seconds)
    try:
        yield
    finally:
        signal.setitimer(timer, 0)
        signal.signal(told, before)


def through_the_chain(content: bytes, *, size: int = 0, write: bool = False) -> tuple[str, tuple[Fault, ...]]:
    """How far the spec came, and all that was told. size: which of the spec's sizes, counted round.

    Raises AssertionError where a fault is not as it should be; any other exception is a bug of ours.
    """
    read = read_spec((NAME, content))
    reached, told = REACHES[0], read.faults
    if read.value is not None:
        sizes = list(read.value.sizes)
        body: Mapping[str, Written] = read.value.sizes[sizes[size % len(sizes)]] if sizes else {}
        order = Order(read.value, "size", body, {}, Workroom())
        proved = prove(order)
        told += proved.faults
        reached = REACHES[2] if proved.ok else REACHES[1]
        if proved.ok and write:
            made = make_guide(order, with_pdf=False)
            told += made.faults
            if made.value is not None:
                reached = REACHES[3]
                assert made.value.files["guide.html"].startswith(b"<!DOCTYPE html>")
    else:
        assert told, "refused without a word"
    well_told(told, content)
    return reached, told


def well_told(faults: Iterable[Fault], content: bytes) -> None:
    """Every fault has a registered code and lies inside the file, and every report can show it."""
    text = content.decode("utf-8-sig", errors="replace")
    lines = _BREAK.split(text)
    faults = tuple(faults)
    for fault in faults:
        assert fault.code in CODES, f"{fault.code} is not registered"
        assert fault.headline
        for label in (*([fault.primary] if fault.primary else ()), *fault.others):
            assert _inside(label.span, lines), f"{fault.code} at {label.span}: {fault.headline}"
    render(faults, {NAME: text})
    render_json(faults, {})


def _inside(span: Span, lines: list[str]) -> bool:
    if span.file != NAME or not 1 <= span.start_line <= span.end_line <= len(lines):
        return False
    if (span.start_line, span.start_column) > (span.end_line, span.end_column):
        return False
    return 1 <= span.start_column <= len(lines[span.start_line - 1]) + 1 and (
        1 <= span.end_column <= len(lines[span.end_line - 1]) + 1
    )
