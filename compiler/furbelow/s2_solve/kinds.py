"""What a value must be: a length above nothing, a whole count, a price per length."""

from __future__ import annotations

from collections.abc import Mapping

from furbelow.garment.spec import Material, SupplyKind
from furbelow.measure.quantity import Quantity
from furbelow.measure.units import CURRENCIES, LENGTH, MASS, PLAIN, VOLUME, Dims, combine, describe_dims
from furbelow.named import NamedTuple


class Kind(NamedTuple):
    """`dims`: what it may measure, anything when empty; with `priced`, what the money is counted per.

    `most`: the largest value in base units, and as it is said. `like`: how such a quantity is written.
    """

    said: str
    dims: tuple[Dims, ...] = ()
    priced: bool = False
    above: int | None = None
    least: int | None = None
    below: int | None = None
    most: tuple[int, str] | None = None
    whole: bool = False
    like: str = ""

    def misfit(self, quantity: Quantity) -> str | None:
        """Why the quantity is none such: "is a number and must be a length"; None when it fits."""
        if not self.dims or self._measures(quantity.dims):
            return None
        return f"is {describe_dims(quantity.dims)} and must be {self.said}"

    def _measures(self, dims: Dims) -> bool:
        if not self.priced:
            return dims in self.dims
        currencies = [base for base, exponent in dims if base in CURRENCIES and exponent == 1]
        return len(currencies) == 1 and tuple(part for part in dims if part[0] != currencies[0]) in self.dims

    def outside(self, quantity: Quantity) -> str | None:
        """The bound that the value breaks: "must be above 0"; None when it keeps all."""
        value = quantity.value
        if self.above is not None and value <= self.above:
            return f"must be above {self.above}"
        if self.least is not None and value < self.least:
            return f"must be {self.least} or more"
        if self.below is not None and value >= self.below:
            return f"must be below {self.below * 100}%"
        if self.most and value > self.most[0]:
            return f"must be {self.most[1]} or less"
        if self.whole and value.denominator != 1:
            return "must be a whole number"
        return None


ANYTHING = Kind("a quantity")
A_LENGTH = Kind("a length", (LENGTH,), like="30 cm")
SOME_LENGTH = Kind("a length", (LENGTH,), above=0, like="30 cm")
NO_NEGATIVE_LENGTH = Kind("a length", (LENGTH,), least=0, like="1 cm")
A_NUMBER = Kind("a number", (PLAIN,), least=0, like="2")
# No garment has more; a slip of the pen must not keep the planning of the cut busy for hours. House rule.
A_COUNT = Kind("a whole number", (PLAIN,), least=1, most=(1000, "1000"), whole=True, like="2")
NO_COUNT = Kind("a whole number", (PLAIN,), least=0, whole=True)  # of a piece that is left out
PIECE_SIZE = Kind("a length", (LENGTH,), above=0, most=(1_000_000, "1 km"), like="30 cm")
JOINS = Kind("a whole number", (PLAIN,), least=0, whole=True, like="2")
LENGTH_OR_NUMBER = Kind("a length or a number", (LENGTH, PLAIN), least=0)

_PER_AREA = combine(MASS, (("length", 2),), -1)
_PER_LENGTH = combine(MASS, LENGTH, -1)
_PER = tuple(combine(PLAIN, measured, -1) for measured in (PLAIN, LENGTH, (("length", 2),), MASS, VOLUME))
CLOTH_PRICE = Kind("a price per length", (combine(PLAIN, LENGTH, -1),), priced=True, least=0, like="6.20 EUR/m")

_AMOUNTS: Mapping[str, Kind] = {
    "width": SOME_LENGTH,
    "length": SOME_LENGTH,
    "selvedge": NO_NEGATIVE_LENGTH,
    "weight": Kind("a weight per area or per length", (_PER_AREA, _PER_LENGTH), above=0, like="80 g/m2"),
    "shrinkage": Kind("a share", (PLAIN,), least=0, below=1, like="3%"),
    "sold_by": Kind("a length, a weight, a volume or a count", (LENGTH, MASS, VOLUME, PLAIN), above=0, like="10 cm"),
    "price": Kind("a price", _PER, priced=True, least=0, like="3.20 EUR"),
    "stretch": Kind("a share", (PLAIN,), least=0, like="80%"),
    "reel": SOME_LENGTH,
    "count": Kind("a number", (PLAIN,), above=0, like="25"),
    "gathers": Kind("a number", (PLAIN,), least=1, like="4"),
    "bending_length": Kind("a length", (LENGTH,), above=0, most=(1000, "1 m"), like="42 mm"),
    "spare": Kind("a length, a weight, a volume or a number", (LENGTH, MASS, VOLUME, PLAIN), least=0, like="20 cm"),
}


def kind_of_amount(key: str, material: Material) -> Kind:
    """What the amount of a material under this key must be; anything under a key not known here."""
    if key == "reel" and "count" in material.amounts:
        return Kind("a length or a weight", (LENGTH, MASS), above=0, like="95 g")
    if material.kind is SupplyKind.CLOTH and key == "price":
        return CLOTH_PRICE
    if material.kind is SupplyKind.CLOTH and key == "weight":
        return Kind("a weight per area", (_PER_AREA,), above=0, like="80 g/m2")
    return _AMOUNTS.get(key, ANYTHING)
