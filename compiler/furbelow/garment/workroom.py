"""The workroom: machines, habits and prices of the place where the garment is made."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Literal

from furbelow.garment.spec import Word
from furbelow.garment.theme import Theme
from furbelow.named import NamedTuple

Paper = Literal["A4", "letter"]


class Workroom(NamedTuple):
    """Lengths in mm, money in the currency of the spec; None where the workroom does not say.

    The defaults are a home table with one straight-stitch and zigzag machine (house rule, maker to confirm).
    """

    title: str = "a home table"
    language: Word | None = None  # of the guides made here; None leaves it to the spec
    words: str | None = None  # a folder of messages laid over the shipped ones
    font: str | None = None  # a file, for the letters that the shipped fonts lack
    theme: Theme | None = None  # the look of guides made here
    paper: Paper = "A4"  # that guides are printed on
    reasons: bool = False  # whether paper has an appendix of what was proved and where the numbers come from
    measures: bool = True  # whether guides may tell measures of a body
    units: str | None = None  # metric or inches; None keeps the spec's
    rounding: Fraction | None = None
    neaten_with: str = "zigzag"  # overlocker, zigzag or pinking shears
    gather_with: str = "two rows by machine"  # or "two rows by hand", "pleating attachment"
    hold_with: str = "pins"  # or clips
    pin_spacing: Fraction = Fraction(20)  # on gathered net; common practice, no source
    seam_stitch: Fraction = Fraction(2)  # bearing seams, 1-2 mm; common practice, no source
    gathering_stitch: Fraction = Fraction(5)  # the longest stitch of the machine
    row_spacing: Fraction = Fraction(5)  # between two gathering rows; common practice, no source
    sitting: Fraction | None = None  # seconds of work at a time; the guide says where each sitting ends
    order_of_work: str = "each part together"  # or "fewest set-ups", "as written"
    table_length: Fraction | None = None
    table_width: Fraction | None = None
    fold_cloth: bool = False
    spare_across: Fraction = Fraction(10)  # of the width, for crooked selvedges; house rule, maker to confirm
    square_ends: Fraction = Fraction(20)  # bought for the end that is cut straight; house rule, maker to confirm
    machine_takes: Fraction = Fraction(5)  # thickness under the presser foot; house rule, maker to confirm
    sewing_speed: Fraction = Fraction(1500, 60)  # mm of seam a second: 1.5 m a minute, starts and stops included
    beginner: Fraction = Fraction(1)  # so many times as long as a practised hand do the people here take
    bobbin: Fraction | None = None  # mm of thread on a full bobbin
    lever_takes: Mapping[str, Fraction] = {}  # calibrated take-up of the attachment
    sold_by: Fraction | None = (
        None  # what shops cut lengths to where a spec is silent; None for what is usual, 0 for none
    )
    machines: int | None = (
        None  # sewing machines, overlockers and irons that a class shares; None where nothing is said
    )
    overlockers: int | None = None
    irons: int | None = None
    hourly_rate: Fraction | None = None
    margin: Fraction = Fraction(0)  # share on cost
    currency: str = "EUR"
    join_price: Fraction = Fraction(1, 4)  # what a join, a table set-up and a cut are worth avoiding
    setup_price: Fraction = Fraction(1, 2)
    cut_price: Fraction = Fraction(1, 20)
    most_joins: int | None = None  # in the strips of one cloth of one garment; None leaves it to the prices
    most_sections: int | None = None  # that one cloth of one garment is laid out in
    joins_of: Mapping[str, int] = {}  # the same for cloths by name, where one of them has a limit of its own
    sections_of: Mapping[str, int] = {}
