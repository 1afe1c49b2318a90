"""What an editor asks of a spec's text, answered without any protocol: faults, and where a number comes from."""

from __future__ import annotations

import re

from furbelow.diagnose.fault import Fault, in_reading_order
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove_each, solved
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.why import why

_NAME = re.compile(r"[a-z_][a-z0-9_]*(?:\.[a-z_][a-z0-9_]*)?")


def faults_of(file: str, text: str) -> tuple[Fault, ...]:
    """Every fault of the spec in reading order: those of the reader, or else those of the proof of every size."""
    read = read_spec((file, text.encode("utf-8", "surrogatepass")))
    found = list(read.faults)
    if read.value is not None:
        orders = (Order(read.value, f"size {size}", body, {}, Workroom()) for size, body in read.value.sizes.items())
        told: dict[tuple[str, object], Fault] = {}
        for _, proved in prove_each(orders):
            for fault in proved.faults:
                # One place is told once, with the numbers of the first size that has it.
                told.setdefault((fault.code, fault.primary and fault.primary.span), fault)
        found += told.values()
    return in_reading_order(found)


def explained(file: str, text: str, line: int, column: int) -> str | None:
    """The value of the name at that place for the spec's first size, and where it comes from, as Markdown.

    line and column count from 0, in characters. Nothing where no number has that name, or the spec can't be solved.
    """
    lines = text.splitlines()
    if not 0 <= line < len(lines):
        return None
    name = next((word.group() for word in _NAME.finditer(lines[line]) if word.start() <= column <= word.end()), None)
    read = read_spec((file, text.encode("utf-8", "surrogatepass"))) if name else None
    if name is None or read is None or read.value is None or not read.value.sizes:
        return None
    size, body = next(iter(read.value.sizes.items()))
    numbers = solved(Order(read.value, f"size {size}", body, {}, Workroom()))
    if numbers.value is None or name not in numbers.value.values:
        return None
    reason = why(numbers.value, name)
    if reason.value is None:
        return None
    from furbelow.s6_write.pages.why_text import WhyText  # words are heavy to load, and faults need none

    return f"size {size}\n\n{WhyText(numbers.value, Workroom()).markdown(reason.value)}"
