"""Read a file of swatches: the strips of each cloth, gathered or hung over an edge."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import TypeVar

from furbelow.diagnose.fault import Fault, Label, Span, Staged, has_errors, in_reading_order
from furbelow.measure.quantity import Quantity, QuantityFault, parse_quantity
from furbelow.measure.units import LENGTH, PLAIN, Dims, describe_dims
from furbelow.named import NamedTuple
from furbelow.s1_read.read_spec import without_echoes
from furbelow.s1_read.source import Source, read_checked
from furbelow.s1_read.values import map_at, value_at
from furbelow.s1_read.yaml_tree import ListTree, MapTree, TextTree, Tree
from furbelow.swatch.overhang import Overhang

SCHEMA = "swatch.schema.json"


@dataclass(frozen=True)
class Strip:
    """One test strip: depth mark, stitches to a pleat, and lengths in mm: the stitch, the strip before and after."""

    mark: Fraction
    every: Fraction
    stitch: Fraction
    flat: Fraction
    gathered: Fraction
    span: Span

    @property
    def ratio(self) -> Fraction:
        """Cloth for each gathered length."""
        return self.flat / self.gathered

    @property
    def spacing(self) -> Fraction:
        """How far apart the pleats stand, in mm: the stitches of one pleat. Definition."""
        return self.every * self.stitch

    @property
    def take_up(self) -> Fraction:
        """Cloth that one pleat takes, in mm, beyond the length that it is sewn to. Definition."""
        return (self.ratio - 1) * self.spacing


class Swatches(NamedTuple):
    """The strips by cloth: those that were gathered, and those that hung over the edge of a table."""

    gathered: Mapping[str, tuple[Strip, ...]]
    hung: Mapping[str, tuple[Overhang, ...]]


def read_swatches(source: Source) -> Staged[Swatches]:
    """The strips of a file, or every fault in it.

    Fails: FB101 to FB112, FB120 to FB122, FB130 to FB135; FB721 for a strip that came out no shorter.
    """
    _, _, checked = read_checked(source, SCHEMA)
    if checked.value is None:
        return Staged(None, checked.faults)
    reading = _Reading()
    gathered = _by_cloth(checked.value, "cloths", reading.strip)
    hung = _by_cloth(checked.value, "stiffness", reading.overhang)
    faults = in_reading_order((*checked.faults, *without_echoes(tuple(reading.faults), checked.faults)))
    return Staged(None if has_errors(faults) else Swatches(gathered, hung), faults)


_Row = TypeVar("_Row")


def _by_cloth(tree: Tree, section: str, read: Callable[[Tree], _Row | None]) -> dict[str, tuple[_Row, ...]]:
    return {
        entry.key: tuple(row for each in entry.value.rows if (row := read(each)) is not None)
        for entry in map_at(tree, section).entries
        if isinstance(entry.value, ListTree)
    }


class _Reading:
    def __init__(self) -> None:
        self.faults: list[Fault] = []

    def strip(self, row: Tree) -> Strip | None:
        if not isinstance(row, MapTree):
            return None
        mark, every = self._amount(row, "mark", PLAIN), self._amount(row, "every", PLAIN, Fraction(1))
        stitch, flat, gathered = (self._amount(row, key, LENGTH) for key in ("stitch", "flat", "gathered"))
        if mark is None or every is None or stitch is None or flat is None or gathered is None:
            return None
        if gathered >= flat:
            headline = f"a strip of {_length(flat)} came out at {_length(gathered)}, no shorter"
            place = value_at(row, "gathered")
            self.faults.append(
                Fault(
                    "FB721",
                    headline,
                    Label(place.span if place else row.span),
                    help="measure it again; a strip that is not shorter was not gathered",
                )
            )
            return None
        return Strip(mark, every, stitch, flat, gathered, row.span)

    def overhang(self, row: Tree) -> Overhang | None:
        if not isinstance(row, MapTree):
            return None
        overhang, drop = (self._amount(row, key, LENGTH) for key in ("overhang", "drop"))
        return None if overhang is None or drop is None else Overhang(overhang, drop, row.span)

    def _amount(self, row: MapTree, key: str, dims: Dims, otherwise: Fraction | None = None) -> Fraction | None:
        value = value_at(row, key)
        if not isinstance(value, TextTree):
            return otherwise
        read = parse_quantity(value.text)
        if isinstance(read, QuantityFault):
            place = value.place(read.offset, max(read.length, 1))
            self.faults.append(Fault("FB120", read.message, Label(place), help=read.help))
            return None
        said = f"`{key}` is {value.text}"
        if read.dims != dims:
            wanted = "a length such as 50 cm" if dims == LENGTH else "a plain number"
            headline = f"{said}, which is {describe_dims(read.dims)}; {wanted} is wanted"
            self.faults.append(Fault("FB121", headline, Label(value.span)))
            return None
        if read.value <= 0:
            self.faults.append(Fault("FB122", f"{said}, and it must be more than 0", Label(value.span)))
            return None
        return read.value


def _length(length: Fraction) -> str:
    return Quantity(length, LENGTH).show()
