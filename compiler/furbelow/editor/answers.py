"""What an editor asks of a spec's text, answered without any protocol: faults, and where a number comes from."""

from __future__ import annotations

import re
from collections.abc import Mapping

from furbelow.diagnose.fault import Fault, Label, Span, in_reading_order
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove_each, solved
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s1_read.used_files import files_used, library_faults
from furbelow.s2_solve.why import why

_NAME = re.compile(r"[a-z_][a-z0-9_]*(?:\.[a-z_][a-z0-9_]*)?")


def faults_of(file: str, text: str) -> tuple[Fault, ...]:
    """Every fault of the spec in reading order: those of the reader, or else those of the proof of every size.

    Of a library, those of its keys: it is proved with each garment that uses it. What lies in another file is told where
    this one leads to it.
    """
    if (library := library_faults(file, text)) is not None:
        return library
    found = _faults_of(file, text)
    leads = (
        {used.path: used.named for used in files_used(file, text)}
        if any(_lies_elsewhere(each, file) for each in found)
        else {}
    )
    return in_reading_order(_told_here(fault, leads) for fault in found)


def _lies_elsewhere(fault: Fault, file: str) -> bool:
    """Whether the fault lies in another file than this."""
    return fault.primary is not None and fault.primary.span.file != file


def _told_here(fault: Fault, leads: Mapping[str, Span]) -> Fault:
    at = fault.primary and leads.get(fault.primary.span.file)
    if not at or not fault.primary:
        return fault
    return fault._replace(headline=f"{fault.primary.span}: {fault.headline}", primary=Label(at))


def _faults_of(file: str, text: str) -> tuple[Fault, ...]:
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
    return tuple(found)


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
