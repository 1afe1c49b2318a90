"""What swatches say, in words, as plain values, and as lines for the workroom file."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from math import ceil, floor
from typing import Any

from furbelow.measure.quantity import show_decimal, show_length
from furbelow.swatch.overhang import Overhang, Stiffness
from furbelow.swatch.take_up import Setting, TakeUp

TEST_STRIP = Fraction(500)  # mm
FEW = 4  # strips over an edge: as in ASTM D1388, both faces, both ways of the cloth


def marks_between(line: TakeUp) -> tuple[Fraction, ...]:
    """The whole marks that were tried or lie between those that were, as far as the line has them take any cloth."""
    marks = (Fraction(mark) for mark in range(ceil(line.least), floor(line.most) + 1))
    return tuple(mark for mark in marks if line.of_pleat(mark) > 0)


def workroom_line(line: TakeUp, stitch: Fraction) -> str:
    """The line of the workroom file: the share that the cloth loses at each whole mark, pleated at every stitch."""
    shares = {mark: 1 - 1 / line.ratio(mark, stitch) for mark in marks_between(line)}
    said = ", ".join(f"{mark}: {show_decimal(share * 100, 1)}%" for mark, share in shares.items())
    return f"attachment takes: {{{said}}}"


def as_text(cloth: str, line: TakeUp, every: Fraction, stitch: Fraction, setting: Setting | None) -> Iterator[str]:
    spacing = every * stitch
    often = "every stitch" if every == 1 else f"every {show_decimal(every, 1)} stitches"
    sure = "" if line.scatter is None else f", give or take {line.scatter:.2f} mm"
    base = f"{'plus' if line.base > 0 else 'less'} {show_decimal(abs(line.base), 2)} mm"
    yield f"{cloth}: {line.strips} strips; pleating at {often} of {show_decimal(stitch, 1)} mm"
    yield f"  a pleat takes {show_decimal(line.slope, 2)} mm for each mark {base}{sure}"
    yield "  mark  share lost  ratio  50 cm comes out"
    for mark in marks_between(line):
        expected, shortest, longest = line.length_of(TEST_STRIP, mark, spacing)
        reach = "" if line.scatter is None else f"  ({_cm(shortest)} to {_cm(longest)})"
        share = show_decimal((1 - 1 / line.ratio(mark, spacing)) * 100, 1)
        yield f"  {show_decimal(mark, 1):>4}  {share:>8} %  {show_decimal(line.ratio(mark, spacing), 2):>5}  {_cm(expected)}{reach}"
    if line.scatter is None:
        yield "  two strips make a line and leave nothing to say how sure it is; gather a third"
    if setting is not None:
        yield from _setting_text(line, setting)


def _setting_text(line: TakeUp, setting: Setting) -> Iterator[str]:
    often = "every stitch" if setting.every == 1 else f"every {show_decimal(setting.every, 1)} stitches"
    expected, shortest, longest = line.length_of(TEST_STRIP, setting.mark, setting.spacing)
    yield (
        f"  for {show_decimal(setting.asked, 2)} to 1: depth at mark {show_decimal(setting.mark, 1)}, {often} of"
        f" {show_decimal(setting.stitch, 1)} mm, which gives {show_decimal(setting.ratio, 2)} to 1"
    )
    wanted = TEST_STRIP / setting.asked
    check = f"  check: gather {_cm(TEST_STRIP)} first; {_cm(wanted)} is wanted, {_cm(expected)} expected"
    if line.scatter is not None:
        check += f", and {_cm(shortest)} to {_cm(longest)} in 19 strips of 20"
    yield check
    yield "  longer than wanted: set it a little deeper; shorter: a little shallower; and gather another strip"


def as_data(line: TakeUp, every: Fraction, stitch: Fraction, setting: Setting | None) -> dict[str, Any]:
    """The line as plain values for JSON: lengths in mm, rounded to a thousandth."""
    spacing = every * stitch
    table = []
    for mark in marks_between(line):
        expected, shortest, longest = line.length_of(TEST_STRIP, mark, spacing)
        row = {
            "mark": _number(mark),
            "ratio": _number(line.ratio(mark, spacing)),
            "strip": _number(TEST_STRIP),
            "comes_out": _number(expected),
        }
        if line.scatter is not None:
            row |= {"shortest": _number(shortest), "longest": _number(longest)}
        table.append(row)
    told: dict[str, Any] = {
        "strips": line.strips,
        "take_up_of_a_pleat": {"base": _number(line.base), "for_each_mark": _number(line.slope)},
        "scatter": None if line.scatter is None else round(line.scatter, 3),
        "every": _number(every),
        "stitch": _number(stitch),
        "marks": table,
    }
    if setting is not None:
        told["setting"] = {
            "asked": _number(setting.asked),
            "mark": _number(setting.mark),
            "ratio": _number(setting.ratio),
            "strip_should_come_out": _number(TEST_STRIP / setting.asked),
        }
    return told


def stiffness_text(cloth: str, strips: Sequence[Overhang], found: Stiffness) -> Iterator[str]:
    count = "1 strip" if found.strips == 1 else f"{found.strips} strips"
    yield f"{cloth}: {count} over the edge of a table"
    yield "  overhang  hangs down"
    for strip in strips:
        yield f"  {_mm(strip.overhang):>8}  {_mm(strip.drop):>10}"
    apart = f"; the strips say {_mm(found.least)} to {_mm(found.most)}" if found.strips > 1 else ""
    yield f"  bending length {_mm(found.mean)}{apart}"
    if found.strips < FEW:
        yield f"  measure {FEW} at least: the right side up and down, cut along the cloth and across it"
    yield f"  for the spec, under the cloth: {bending_line(found)}"


def bending_line(found: Stiffness) -> str:
    return f"bending length: {round(found.mean)} mm"


def stiffness_data(found: Stiffness) -> dict[str, Any]:
    """Bending lengths as plain values for JSON, in mm."""
    return {
        "strips": found.strips,
        "bending_length": _number(found.mean),
        "least": _number(found.least),
        "most": _number(found.most),
    }


def _mm(length: Fraction) -> str:
    return f"{show_decimal(length, 1)} mm"


def _number(value: Fraction) -> float:
    return round(float(value), 3)


def _cm(length: Fraction) -> str:
    return show_length(length, "metric", Fraction(1))
