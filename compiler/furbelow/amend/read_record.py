"""Read a record of the work: what was measured, of what."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Span, Staged, has_errors, in_reading_order
from furbelow.garment.tags import copy_called
from furbelow.measure.quantity import QuantityFault, parse_quantity
from furbelow.measure.units import LENGTH, PLAIN, Dims, describe_dims
from furbelow.s1_read.read_spec import lies_in, without_echoes
from furbelow.s1_read.source import Source, read_checked
from furbelow.s1_read.values import rows_at, text_at, value_at
from furbelow.s1_read.yaml_tree import MapTree, TextTree, Tree

SCHEMA = "record.schema.json"
KINDS = ("edge", "ring", "cut", "cloth", "elastic")
SIZES = {
    "edge": ("length",),
    "ring": ("length",),
    "cut": ("length", "depth"),
    "cloth": ("width", "length", "shrinkage"),
    "elastic": ("length",),
}
_SHARES = ("shrinkage",)  # what is no length
_TAG = re.compile(r"(\d*)([A-Za-z]+)(?:·\d+)?")


@dataclass(frozen=True)
class Measured:
    """One measurement: mm, or a share. kind and size: as in SIZES; copy: None for all.

    do: ease, let out, trim, or empty. called: the copy as it was written; tag: the number of a piece in it, as on its tag.
    """

    kind: str
    name: str
    size: str
    value: Fraction
    copy: int | None
    do: str
    span: Span
    called: str = ""
    tag: str = ""


def read_record(source: Source) -> Staged[tuple[Measured, ...]]:
    """The measurements in their order, or every fault in the file.

    Fails: FB101 to FB112, FB120 to FB122, FB130 to FB135; FB711 for a row that measures nothing, or several things.
    """
    _, _, checked = read_checked(source, SCHEMA)
    if checked.value is None:
        return Staged(None, checked.faults)
    reading = _Reading()
    measured = tuple(
        one
        for row in rows_at(checked.value, "measured")
        # A row with a mistyped key is told of once.
        if not any(lies_in(fault, row.span) for fault in checked.faults)
        for one in reading.row(row)
    )
    faults = in_reading_order((*checked.faults, *without_echoes(tuple(reading.faults), checked.faults)))
    return Staged(None if has_errors(faults) else measured, faults)


class _Reading:
    def __init__(self) -> None:
        self.faults: list[Fault] = []

    def row(self, row: Tree) -> list[Measured]:
        if not isinstance(row, MapTree):
            return []
        kinds = [kind for kind in KINDS if value_at(row, kind)]
        if len(kinds) != 1:
            said = "measures " + (" and ".join(f"`{kind}`" for kind in kinds) if kinds else "no thing")
            self.faults.append(
                Fault(
                    "FB711",
                    f"this row {said}",
                    Label(row.span),
                    help="name one `edge`, `ring`, `cut` piece, `cloth` or `elastic` in each row",
                )
            )
            return []
        (kind,) = kinds
        given = [size for size in ("length", "depth", "width", *_SHARES) if value_at(row, size)]
        wrong = [size for size in given if size not in SIZES[kind]]
        if wrong or not given:
            said = f"`{wrong[0]}` is no measure of" if wrong else "nothing is measured of"
            wanted = " or ".join(f"`{size}`" for size in SIZES[kind])
            self.faults.append(Fault("FB711", f"{said} the {kind}", Label(row.span), help=f"give its {wanted}"))
            return []
        called = text_at(row, "copy")
        tag, letter = _of_tag(called)
        copy = copy_called(letter) or self._amount(row, "copy", PLAIN)
        if isinstance(copy, Fraction) and copy.denominator != 1:
            self.faults.append(Fault("FB122", f"`copy` is {text_at(row, 'copy')}, which is not whole", Label(row.span)))
            return []
        name, do = text_at(row, kind), text_at(row, "do")
        if do and kind != "edge":
            self.faults.append(
                Fault("FB711", f"`do: {do}` is for a gathered edge, and this is a {kind}", Label(row.span))
            )
            return []
        found = []
        for size in given:
            value = self._amount(row, size, PLAIN if size in _SHARES else LENGTH)
            if value is not None:
                place = value_at(row, size)
                span = place.span if place else row.span
                found.append(Measured(kind, name, size, value, int(copy) if copy else None, do, span, called, tag))
        return found

    def _amount(self, row: MapTree, key: str, dims: Dims) -> Fraction | None:
        value = value_at(row, key)
        if not isinstance(value, TextTree):
            return None
        read = parse_quantity(value.text)
        if isinstance(read, QuantityFault):
            place = value.place(read.offset, max(read.length, 1))
            self.faults.append(Fault("FB120", read.message, Label(place), help=read.help))
        elif read.dims != dims:
            plain = "a share such as 4%" if key in _SHARES else "a plain number"
            wanted = "a length such as 383 cm" if dims == LENGTH else plain
            headline = f"`{key}` is {value.text}, which is {describe_dims(read.dims)}; {wanted} is wanted"
            self.faults.append(Fault("FB121", headline, Label(value.span)))
        elif read.value >= 1 and key in _SHARES:
            self.faults.append(
                Fault(
                    "FB122",
                    f"`{key}` is {value.text}, and it must be less than all",
                    Label(value.span),
                    help=f"write a share such as `{value.text}%`" if read.value < 100 else "write a share such as `4%`",
                )
            )
        elif read.value <= 0 and not (read.value == 0 and key in _SHARES):
            self.faults.append(
                Fault("FB122", f"`{key}` is {value.text}, and it must be more than 0", Label(value.span))
            )
        else:
            return read.value
        return None


def _of_tag(written: str) -> tuple[str, str]:
    """The number of the piece and the letter of the copy on a tag such as 2a or 2a·1; without a number the letter alone."""
    found = _TAG.fullmatch(written)
    return (found[1], found[2].lower()) if found else ("", written)
