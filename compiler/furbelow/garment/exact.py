"""Values of ours put into a spec as a maker would type them, so that what is read back is exactly what was worked out."""

from __future__ import annotations

from furbelow.diagnose.fault import Span
from furbelow.garment.spec import Written
from furbelow.measure.formula import Formula, parse_formula
from furbelow.measure.quantity import Quantity, System, parse_quantity
from furbelow.measure.units import LENGTH


def exact_text(value: Quantity, system: System) -> str:
    """The value in words that mean exactly it: `2.35`, `48.5 cm`, `7/3`."""
    text = value.show(system)
    if parse_quantity(text) == value:
        return text
    unit = " mm" if value.dims == LENGTH else ""
    return f"{value.value.numerator}/{value.value.denominator}{unit}"


def as_written(text: str, place: Span) -> Written:
    """Such a text as the spec would hold it."""
    formula = parse_formula(text)
    assert isinstance(formula, Formula), formula
    return Written(text, formula, place)
