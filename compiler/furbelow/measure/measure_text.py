"""Measures as text, the way a maker writes them; the only place where numbers are rounded for reading."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache
from typing import Literal

from furbelow.measure.units import CURRENCIES, LENGTH, MASS, PLAIN, TIME, UNITS, Dims, combine

System = Literal["metric", "inch"]
Rounding = Literal["near", "up", "down"]


def system_of(units: str) -> System:
    """The system of a spec or a workroom that says `units: inches` or `units: metric`."""
    return "inch" if units == "inches" else "metric"


def round_to_step(value: Fraction, step: Fraction, mode: Rounding = "near") -> Fraction:
    """The nearest multiple of the step (halves go up), or the one above or below. The step is above 0."""
    return _whole(value.numerator * step.denominator, value.denominator * step.numerator, mode) * step


def _whole(above: int, below: int, mode: Rounding) -> int:
    """The whole number for above/below, which need not be in lowest terms. A guide asks for it a thousand times."""
    if mode == "up":
        return -(-above // below)
    return above // below if mode == "down" else (2 * above + below) // (2 * below)


_INCH = UNITS["in"].factor
_YARD = UNITS["yd"].factor


def show_length(length_mm: Fraction, system: System, step: Fraction | None = None, mode: Rounding = "near") -> str:
    """A length of a piece: `23.5 cm`, `302 cm`, `5 mm` below 1 cm; `12 1/2 in`.

    step: what it is rounded to, in mm. Without one it is shown exactly when tenths of a mm or sixty-fourths
    of an inch say it, else rounded to a tenth of a mm or a sixteenth of an inch.
    """
    return _length_shown(length_mm, system, step, mode)


@lru_cache(maxsize=4096)  # a guide says each length six times
def _length_shown(length_mm: Fraction, system: System, step: Fraction | None, mode: Rounding) -> str:
    if step is not None:
        length_mm = round_to_step(length_mm, step, mode)
    if system == "inch":
        inches = length_mm / _INCH
        exact = 64 % inches.denominator == 0
        return f"{show_mixed(inches, 64 if exact else 16, mode)} in"
    if 0 < abs(length_mm) < 10:
        return f"{show_decimal(length_mm, 1, mode)} mm"
    return f"{show_decimal(length_mm / 10, 2, mode)} cm"


def show_apart(one: Fraction, other: Fraction, system: System, step: Fraction | None = None) -> tuple[str, str, str]:
    """Two lengths in mm that differ, and the distance between them, by the first step at which the sum can be followed:
    the two read unlike, and the distance that is shown is theirs. step: the coarsest one, in mm; 1 mm or 1/8 in.

    Finer than a tape shows, the distance is that of the two as they are shown: it need not be right to the last digit.
    """
    unit = _INCH if system == "inch" else Fraction(1)
    coarsest = step or (_INCH / 8 if system == "inch" else unit)
    halves = (coarsest / 2**n for n in range(4)) if system == "inch" else (coarsest,)
    for each in (*halves, *(unit / 10**n for n in range(1, 13))):
        long, short = round_to_step(one, each), round_to_step(other, each)
        gap = abs(long - short)
        if gap and (gap == round_to_step(abs(one - other), each) or each <= unit / 10):
            break
    return _digits(long, system), _digits(short, system), _digits(gap, system)


def _digits(length_mm: Fraction, system: System) -> str:
    """A length that is rounded already, with all its digits."""
    if system == "inch":
        inches = length_mm / _INCH
        return f"{show_mixed(inches, 64) if 64 % inches.denominator == 0 else show_decimal(inches, 12)} in"
    return f"{show_decimal(length_mm, 12)} mm" if abs(length_mm) < 10 else f"{show_decimal(length_mm / 10, 13)} cm"


def show_cloth_length(length_mm: Fraction, system: System, step: Fraction | None = None, mode: Rounding = "up") -> str:
    """A length to buy: `3.1 m`, `3 1/4 yd`. Without a step, to the cm or to the eighth of a yard, upwards."""
    if step is not None:
        length_mm = round_to_step(length_mm, step, mode)
    if system == "inch":
        return f"{show_mixed(length_mm / _YARD, 8, mode)} yd"
    return f"{show_decimal(length_mm / 1000, 2, mode)} m"


def show_volume(ml: Fraction) -> str:
    """A volume as a kitchen measures it, never too little: "1.5 ml", "45 ml", "110 ml", "1.1 l"."""
    if ml > 1000:
        return f"{show_decimal(ml / 1000, 1, 'up')} l"
    step = Fraction(1, 2) if ml < 20 else Fraction(5) if ml < 100 else Fraction(10)
    return f"{show_decimal(-(-ml // step) * step, 1)} ml"


def show_decimal(value: Fraction, places: int, mode: Rounding = "near") -> str:
    """The value with at most so many decimals, no zeros at the end: `23.5`, `302`."""
    shown = show_fixed(value, places, mode)
    shown = shown.rstrip("0").rstrip(".") if "." in shown else shown
    return "0" if shown == "-0" else shown


def show_fixed(value: Fraction, places: int, mode: Rounding = "near") -> str:
    """The value with exactly so many decimals: `1.80`."""
    scaled = _whole(value.numerator * 10**places, value.denominator, mode)
    digits = str(abs(scaled)).rjust(places + 1, "0")
    split = len(digits) - places
    return "-" * (scaled < 0) + digits[:split] + ("." + digits[split:] if places else "")


def show_mixed(value: Fraction, finest: int, mode: Rounding = "near") -> str:
    """The value as a whole number and a fraction down to 1/finest: `12 1/2`, `1/8`, `3`."""
    rounded = round_to_step(value, Fraction(1, finest), mode)
    whole, rest = divmod(abs(rounded.numerator), rounded.denominator)
    shown = f"{rest}/{rounded.denominator}" if rest else ""
    return "-" * (rounded < 0) + (f"{whole} {shown}".strip() if whole or not shown else shown)


# How a compound is shown: EUR/m, g/m2, per cm.
_SHOWN_BASES = {"length": ("m", 1000), "mass": ("g", 1), "time": ("h", 3600), "volume": ("ml", 1)}


def show_measure(value: Fraction, dims: Dims, system: System = "metric") -> str:
    """A value in base units as a maker writes it: `72 cm`, `2.5`, `25 g/m2`, `1.80 EUR/m`, `1 h 30 min`."""
    if dims == LENGTH:
        return show_length(value, system)
    if dims == PLAIN:
        return show_decimal(value, 3)
    if dims == MASS:
        return f"{show_decimal(value / 1000, 3)} kg" if abs(value) >= 1000 else f"{show_decimal(value, 4)} g"
    if dims == TIME:
        return _show_time(value)
    if dims == combine(PLAIN, LENGTH, -1):
        per, unit = (_INCH, "in") if system == "inch" else (Fraction(10), "cm")
        return f"{show_decimal(value * per, 3)} per {unit}"
    if dims == combine(PLAIN, TIME, -1):
        return f"{show_decimal(value * 60, 2)} per min"
    return _show_compound(value, dims, system)


# The unit that each base takes inside a compound, and its size in base units.
_COMPOUND: dict[str, tuple[str, Fraction | int]] = {
    "length": ("m", 1000),
    "mass": ("g", 1),
    "time": ("h", 3600),
    "volume": ("ml", 1),
}


def _show_compound(value: Fraction, dims: Dims, system: System) -> str:
    above, below = "", ""
    # Cloth is priced by the yard where it is sold by it; weights and speeds are said in metres everywhere.
    by_the_yard = system == "inch" and any(base in CURRENCIES for base, _ in dims)
    for base, exponent in dims:
        symbol, scale = _COMPOUND.get(base, (base, 1))
        if base == "length" and by_the_yard:
            symbol, scale = "yd", _YARD
        value /= Fraction(scale) ** exponent
        power = "" if abs(exponent) == 1 else str(abs(exponent))
        if exponent > 0:
            above += f" {symbol}{power}"
        else:
            below += f"/{symbol}{power}"
    priced = any(base in CURRENCIES for base, _ in dims)
    # Yarn counts are millionths: 50 denier is 0.0055556 g/m.
    places = 4 if abs(value) >= Fraction(1, 10) else 7
    return (show_fixed(value, 2) if priced else show_decimal(value, places)) + (above or " 1") + below


def _show_time(seconds: Fraction) -> str:
    if abs(seconds) < 60:
        return f"{show_decimal(seconds, 1)} s"
    minutes = round_to_step(seconds / 60, Fraction(1)).numerator
    hours, rest = divmod(abs(minutes), 60)
    shown = " ".join(part for part in (f"{hours} h" if hours else "", f"{rest} min" if rest else "") if part)
    return "-" * (minutes < 0) + shown
