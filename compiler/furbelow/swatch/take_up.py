"""How much cloth a pleat takes at each depth mark: a straight line through the strips, and how sure it is.

A pleat of depth d takes 2 d of cloth beyond the stitches that hold it, and d grows evenly with the mark; so the take-up
of one pleat, (flat / gathered - 1) x stitches x stitch length, is a straight line in the mark, whatever the stitch.
Fitted by least squares, with the prediction interval for one further strip.
Source: the line and its interval, Draper and Smith, Applied Regression Analysis, 1998; quantiles, Student's t.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import sqrt

from furbelow.diagnose.fault import Fault, Label, Staged
from furbelow.measure.quantity import show_decimal
from furbelow.swatch.read_swatch import Strip

# Student's t, two-sided 95 %, by degrees of freedom from 1; beyond the table the last one, which is on the safe side.
_T95 = (
    12.706,
    4.303,
    3.182,
    2.776,
    2.571,
    2.447,
    2.365,
    2.306,
    2.262,
    2.228,
    2.201,
    2.179,
    2.160,
    2.145,
    2.131,
    2.120,
    2.110,
    2.101,
    2.093,
    2.086,
    2.080,
    2.074,
    2.069,
    2.064,
    2.060,
    2.056,
    2.052,
    2.048,
    2.045,
    2.042,
)


@dataclass(frozen=True)
class TakeUp:
    """Cloth taken by one pleat, mm = `base` + `slope` x mark, for marks from `least` to `most`.

    scatter: standard deviation of one strip about the line, mm; None where the strips are too few to tell.
    """

    base: Fraction
    slope: Fraction
    least: Fraction
    most: Fraction
    mean_mark: Fraction
    spread: Fraction  # sum of squared distances of the marks from their mean
    strips: int
    scatter: float | None

    def of_pleat(self, mark: Fraction) -> Fraction:
        """The cloth that one pleat takes at this mark, in mm."""
        return self.base + self.slope * mark

    def ratio(self, mark: Fraction, spacing: Fraction) -> Fraction:
        """Cloth for each gathered length, the pleats `spacing` mm apart."""
        return 1 + self.of_pleat(mark) / spacing

    def mark_for(self, ratio: Fraction, spacing: Fraction) -> Fraction:
        """The mark, not rounded, that takes the cloth to this ratio."""
        return ((ratio - 1) * spacing - self.base) / self.slope

    def off_by(self, mark: Fraction) -> Fraction | None:
        """How far the take-up of one further pleat lies off the line in 19 strips of 20, in mm; None if not known."""
        if self.scatter is None:
            return None
        freedom = self.strips - 2
        lies_off = 1 + 1 / self.strips + float((mark - self.mean_mark) ** 2 / self.spread)
        return Fraction(_T95[min(freedom, len(_T95)) - 1] * self.scatter * sqrt(lies_off)).limit_denominator(10**6)

    def length_of(self, flat: Fraction, mark: Fraction, spacing: Fraction) -> tuple[Fraction, Fraction, Fraction]:
        """How long a strip of `flat` mm comes out: as expected, and the shortest and longest in 19 strips of 20."""
        expected = flat / self.ratio(mark, spacing)
        off = self.off_by(mark)
        if off is None:
            return expected, expected, expected
        most = 1 + (self.of_pleat(mark) + off) / spacing
        least = 1 + max(self.of_pleat(mark) - off, Fraction(0)) / spacing
        return expected, flat / most, flat / least


def take_up(cloth: str, strips: Sequence[Strip]) -> Staged[TakeUp]:
    """The line through the strips of a cloth.

    Fails: FB722 for strips at fewer than two marks, or where a deeper mark takes no more cloth.
    """
    marks = [strip.mark for strip in strips]
    place = Label(strips[0].span) if strips else None
    if len(set(marks)) < 2:
        headline = f"the strips of `{cloth}` are all at one mark, and a line needs two"
        return Staged(None, (Fault("FB722", headline, place, help="gather strips at two or more depth marks"),))
    count, taken = len(strips), [strip.take_up for strip in strips]
    mean_mark, mean_taken = sum(marks, Fraction(0)) / count, sum(taken, Fraction(0)) / count
    spread = sum(((mark - mean_mark) ** 2 for mark in marks), Fraction(0))
    slope = (
        sum(((mark - mean_mark) * (take - mean_taken) for mark, take in zip(marks, taken, strict=True)), Fraction(0))
        / spread
    )
    base = mean_taken - slope * mean_mark
    if slope <= 0:
        headline = (
            f"at deeper marks the strips of `{cloth}` lose no more cloth: {show_decimal(slope, 3)} mm a pleat and mark"
        )
        return Staged(None, (Fault("FB722", headline, place, help="look for two strips that were exchanged"),))
    squares = sum(((take - base - slope * mark) ** 2 for mark, take in zip(marks, taken, strict=True)), Fraction(0))
    scatter = sqrt(squares / (count - 2)) if count > 2 else None
    return Staged(TakeUp(base, slope, min(marks), max(marks), mean_mark, spread, count, scatter))


@dataclass(frozen=True)
class Setting:
    """How to set the attachment for a ratio: the mark to the half, and what it gives there."""

    mark: Fraction
    every: Fraction
    stitch: Fraction
    ratio: Fraction
    asked: Fraction

    @property
    def spacing(self) -> Fraction:
        return self.every * self.stitch


def setting_for(cloth: str, line: TakeUp, ratio: Fraction, every: Fraction, stitch: Fraction) -> Staged[Setting]:
    """The setting that takes the cloth nearest to the ratio, the mark rounded to a half.

    Fails: FB723 when the mark would lie beyond those that were tried.
    """
    exact = line.mark_for(ratio, every * stitch)
    mark = Fraction(round(exact * 2), 2)
    if not line.least <= mark <= line.most:
        reach = sorted(line.ratio(end, every * stitch) for end in (line.least, line.most))
        headline = (
            f"{show_decimal(ratio, 2)} to 1 would need mark {show_decimal(exact, 1)}, and `{cloth}` was tried from mark"
            f" {show_decimal(line.least, 1)} to {show_decimal(line.most, 1)}"
        )
        note = f"those take it from {show_decimal(reach[0], 2)} to {show_decimal(reach[1], 2)} to 1"
        help_ = "gather strips further out, change the stitch length, or pleat after more or fewer stitches"
        return Staged(None, (Fault("FB723", headline, notes=(note,), help=help_),))
    return Staged(Setting(mark, every, stitch, line.ratio(mark, every * stitch), ratio))
