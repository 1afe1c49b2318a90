"""Read a workroom file: the machines, habits and prices of a place."""

from __future__ import annotations

import os
from collections.abc import Callable
from fractions import Fraction
from typing import Any

from furbelow.diagnose.fault import Fault, Label, Staged, has_errors, in_reading_order
from furbelow.garment.theme import Theme
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import Quantity, QuantityFault, parse_quantity
from furbelow.measure.units import CURRENCIES, LENGTH, PLAIN, TIME, Dims, combine, describe_dims
from furbelow.s1_read.inside import is_inside
from furbelow.s1_read.read_spec import without_echoes
from furbelow.s1_read.source import Source, read_checked
from furbelow.s1_read.values import answer_at, map_at, text_at, value_at, word_at
from furbelow.s1_read.yaml_tree import TextTree, Tree

SCHEMA = "workroom.schema.json"

_WORDS = ("title", "paper", "units", "neaten with", "gather with", "hold with", "order of work")
_LENGTHS = (
    "rounding",
    "pin spacing",
    "seam stitch",
    "gathering stitch",
    "row spacing",
    "table length",
    "table width",
    "machine takes",
    "bobbin",
)
_SPARED = ("spare across", "square ends", "sold by")
_SHARED = ("machines", "overlockers", "irons")
_PRICES = ("join price", "setup price", "cut price")
_SPEED = combine(LENGTH, TIME, -1)
_SECONDS = Fraction(3600)


def read_workroom(source: Source) -> Staged[Workroom]:
    """The workroom in a file, or every fault in it; what it does not say is as on a home table.

    source: its path, or a name for messages and its bytes.
    Fails: FB101 to FB112, FB120 to FB122, FB130 to FB135, FB165 for what it names beside itself, and what
        reading a theme fails with.
    """
    file, _, checked = read_checked(source, SCHEMA)
    if checked.value is None:
        return Staged(None, checked.faults)
    reading = _Reading(checked.value, file)
    fields = reading.fields()
    faults = in_reading_order((*checked.faults, *without_echoes(tuple(reading.faults), checked.faults)))
    return Staged(None if has_errors(faults) else Workroom(**fields), faults)


class _Reading:
    def __init__(self, tree: Tree, file: str) -> None:
        self.tree, self.file = tree, file
        self.faults: list[Fault] = []
        self.currency = ""  # of the first price; all others must agree

    def fields(self) -> dict[str, Any]:
        """What the file says, by the fields of Workroom."""
        fields: dict[str, Any] = {key: text_at(self.tree, key) for key in _WORDS if value_at(self.tree, key)}
        fields["language"] = word_at(self.tree, "language")
        fields["words"] = self._beside("words", "folder", os.path.isdir)
        fields["font"] = self._beside("font", "file", os.path.isfile)
        fields["theme"] = self._theme()
        fields |= {key: self._length(key) for key in _LENGTHS}
        fields["sewing speed"] = self._amount("sewing speed", _SPEED, "a speed such as 2 m/min")
        fields["beginner"] = self._amount("beginner", PLAIN, "a number such as 1.5", least=Fraction(1))
        fields["sitting"] = self._amount("sitting", TIME, "a time such as 2 h")
        fields["margin"] = self._amount("margin", PLAIN, "a share such as 15%", least=Fraction(0))
        fields |= {key: self._length(key, least=Fraction(0)) for key in _SPARED}
        fields |= {key: self._price(key) for key in _PRICES}
        fields["most joins"] = self._count("most joins", least=0)
        fields["most sections"] = self._count("most sections", least=1)
        fields |= {key: self._count(key, least=1) for key in _SHARED}
        per_second = self._price("hourly rate", per_time=True)
        fields["hourly rate"] = None if per_second is None else per_second * _SECONDS
        fields["attachment takes"] = self._marks()
        given = {key.replace(" ", "_"): value for key, value in fields.items() if value not in (None, {})}
        given["reasons"] = answer_at(self.tree, "reasons", otherwise=Workroom().reasons)
        given["fold_cloth"] = answer_at(self.tree, "fold cloth", otherwise=Workroom().fold_cloth)
        if "attachment_takes" in given:
            given["lever_takes"] = given.pop("attachment_takes")
        return given | ({"currency": self.currency} if self.currency else {})

    def _beside(self, key: str, what: str, is_there: Callable[[str], bool]) -> str | None:
        """The path of a folder or file that the file names beside itself."""
        value = value_at(self.tree, key)
        if not isinstance(value, TextTree):
            return None
        here = os.path.dirname(os.path.abspath(self.file))
        path = os.path.join(here, value.text)
        if not is_inside(path, here):
            said = f"`{key}` is {value.text[:80]}, which lies outside of the folder of this file"
            self._refuse("FB165", value, said, "put it into the folder of this file, or one within it")
        elif not is_there(path):
            self._refuse("FB165", value, f"`{key}` is {value.text[:80]}, and there is no such {what}")
        else:
            return path
        return None

    def _theme(self) -> Theme | None:
        path = self._beside("theme", "file", os.path.isfile)
        if path is None:
            return None
        from furbelow.s1_read.read_theme import read_theme

        staged = read_theme(path)
        self.faults += staged.faults
        return staged.value

    def _quantity(self, value: TextTree) -> Quantity | None:
        read = parse_quantity(value.text)
        if isinstance(read, QuantityFault):
            place = value.place(read.offset, max(read.length, 1))
            self.faults.append(Fault("FB120", read.message, Label(place), help=read.help))
            return None
        return read

    def _refuse(self, code: str, value: TextTree, headline: str, help_: str | None = None) -> None:
        self.faults.append(Fault(code, headline, Label(value.span), help=help_))

    def _amount(self, key: str, dims: Dims, wanted: str, least: Fraction | None = None) -> Fraction | None:
        """The amount under a key in base units: at least `least`, or above 0 where nothing is said."""
        value = value_at(self.tree, key)
        if not isinstance(value, TextTree) or (read := self._quantity(value)) is None:
            return None
        said = f"`{key}` is {value.text}"
        if read.dims != dims:
            self._refuse("FB121", value, f"{said}, which is {describe_dims(read.dims)}; {wanted} is wanted")
        elif least is None and read.value <= 0:
            self._refuse("FB122", value, f"{said}, and it must be more than 0")
        elif least is not None and read.value < least:
            self._refuse("FB122", value, f"{said}, less than the least of {least}")
        else:
            return read.value
        return None

    def _length(self, key: str, least: Fraction | None = None) -> Fraction | None:
        return self._amount(key, LENGTH, "a length such as 5 mm", least)

    def _count(self, key: str, least: int) -> int | None:
        value = value_at(self.tree, key)
        amount = self._amount(key, PLAIN, "a whole number such as 2", least=Fraction(least))
        if amount is None or amount.denominator == 1:
            return None if amount is None else int(amount)
        assert isinstance(value, TextTree)
        self._refuse("FB122", value, f"`{key}` is {value.text}, and it must be a whole number")
        return None

    def _price(self, key: str, per_time: bool = False) -> Fraction | None:
        value = value_at(self.tree, key)
        if not isinstance(value, TextTree) or (read := self._quantity(value)) is None:
            return None
        said = f"`{key}` is {value.text}"
        money = [base for base, exponent in read.dims if base in CURRENCIES and exponent == 1]
        dims: Dims = ((money[0], 1),) if money else ()
        if not money or read.dims != (combine(dims, TIME, -1) if per_time else dims):
            wanted = "a price for the time, such as 14 EUR/h," if per_time else "a price such as 0.25 EUR"
            self._refuse("FB121", value, f"{said}, which is {describe_dims(read.dims)}; {wanted} is wanted")
        elif self.currency not in ("", money[0]):
            headline = f"{said}, and other prices are in {self.currency}"
            self._refuse("FB121", value, headline, "give all prices in one currency")
        elif read.value < 0:
            self._refuse("FB122", value, f"{said}, less than the least of 0")
        else:
            self.currency = money[0]
            return read.value
        return None

    def _marks(self) -> dict[str, Fraction]:
        """The share of its length that the cloth loses, by the depth mark of the attachment."""
        marks = {}
        for entry in map_at(self.tree, "attachment takes").entries:
            value = entry.value
            if not isinstance(value, TextTree) or (read := self._quantity(value)) is None:
                continue
            if read.dims != PLAIN or not 0 < read.value < 1:
                headline = f"mark {entry.key[:20]} takes {value.text}, and a share between 0% and 100% is wanted"
                self._refuse("FB122", value, headline, "write a share such as 50%")
            else:
                marks[entry.key] = read.value
        return marks
