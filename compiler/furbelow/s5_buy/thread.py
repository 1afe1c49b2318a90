"""Thread by stitch type and metres of seam: needle, bobbin and looper shares, waste, reels to buy."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from math import ceil
from typing import Literal, NamedTuple

from furbelow.measure.units import UNITS
from furbelow.s5_buy.out_of_range import OutOfRange, outside
from furbelow.s5_buy.stitch_table import STITCHES, geometric_ratio

WASTE_LOW, WASTE_HIGH = Fraction(15, 100), Fraction(20, 100)
"""Usual waste: trimmed tails, breaks, repairs. Source: Technical Bulletin, American & Efird, 2008."""

MM_PER_GRAM_OF_NE_1 = 840 * UNITS["yd"].factor / UNITS["lb"].factor
"""English cotton count: Ne 1 is 840 yards to the pound. Definition."""


class MeasuredFactors(NamedTuple):
    """Thread per seam length as unpicked from a swatch; overrides table and formula."""

    needle: Fraction
    under: Fraction


class SeamRun(NamedTuple):
    """One stretch of sewing with one stitch type, lengths in mm.

    passes: how often the length is sewn (two gathering rows are 2).
    stitch_length and thickness (all plies together) allow the geometric formula; width is the width of the
    overedge, the needle gauge or the zigzag swing.
    """

    stitch: str
    length: Fraction
    passes: int = 1
    stitch_length: Fraction | None = None
    thickness: Fraction | None = None
    width: Fraction | None = None
    measured: MeasuredFactors | None = None


class RunThread(NamedTuple):
    """Thread of one run without waste, mm, and where its ratio comes from."""

    run: SeamRun
    needle: Fraction
    bobbin: Fraction
    looper: Fraction
    ratio: Fraction
    basis: Literal["measured", "table", "geometry"]
    grounds: str


class UnknownStitch(NamedTuple):
    """A stitch type that has no ratio here: its thread is missing from the sums."""

    stitch: str
    known: tuple[str, ...]


class ThreadNeed(NamedTuple):
    """Thread to have, mm, waste included; `runs` show the sums before waste, `refused` what is left out."""

    needle: Fraction
    bobbin: Fraction
    looper: Fraction
    waste: Fraction
    runs: tuple[RunThread, ...]
    refused: tuple[UnknownStitch | OutOfRange, ...]
    reels_at_once: int

    @property
    def total(self) -> Fraction:
        """All threads together, mm, waste included."""
        return self.needle + self.bobbin + self.looper

    @property
    def usual_waste(self) -> bool:
        """Whether the waste lies within the usual 15 to 20 %."""
        return WASTE_LOW <= self.waste <= WASTE_HIGH


class ReelOrder(NamedTuple):
    """Whole reels to buy and what is left on them, mm."""

    reels: int
    bought: Fraction
    left: Fraction


def thread_for_seams(runs: Iterable[SeamRun], waste: Fraction = WASTE_LOW) -> ThreadNeed | OutOfRange:
    """Needle, bobbin and looper thread of all runs together, mm, with `waste` added.

    Ratio of a run: the swatch's if measured; otherwise the larger of table and geometry, as the table holds
    for about 7 stitches a centimetre and the geometry is a floor. One call for each thread (colour and make);
    reels_at_once is the most that any of its runs has on the machine.
    Fails: a waste below 0 or of 100 % and more; a run that can't be counted is listed in `refused`.
    """
    if wrong := outside("thread waste", waste, "share", at_least=0, below=1):
        return wrong
    counted: list[RunThread] = []
    refused: list[UnknownStitch | OutOfRange] = []
    for run in runs:
        result = _thread_of(run)
        if isinstance(result, RunThread):
            counted.append(result)
        else:
            refused.append(result)
    more = 1 + waste
    return ThreadNeed(
        needle=more * sum((run.needle for run in counted), Fraction(0)),
        bobbin=more * sum((run.bobbin for run in counted), Fraction(0)),
        looper=more * sum((run.looper for run in counted), Fraction(0)),
        waste=waste,
        runs=tuple(counted),
        refused=tuple(refused),
        reels_at_once=max((STITCHES[run.run.stitch].reels_at_once for run in counted), default=0),
    )


def _thread_of(run: SeamRun) -> RunThread | UnknownStitch | OutOfRange:
    if run.length < 0 or run.passes < 0:
        raise ValueError("a seam run can't have a length or passes below 0")
    stitch = STITCHES.get(run.stitch)
    if stitch is None:
        return UnknownStitch(run.stitch, tuple(STITCHES))
    if wrong := _unusable(run):
        return wrong
    sewn = run.length * run.passes
    basis: Literal["measured", "table", "geometry"] = "table"
    if run.measured is not None:
        needle, under = run.measured.needle * sewn, run.measured.under * sewn
        ratio, basis, grounds = run.measured.needle + run.measured.under, "measured", "unpicked swatch"
    else:
        ratio, grounds = stitch.ratio.value, f"{stitch.ratio.grounds}: {stitch.ratio.source}"
        if run.stitch_length is not None and run.thickness is not None:
            shape = geometric_ratio(run.stitch, run.stitch_length, run.thickness, run.width)
            if shape is not None and shape > ratio:
                ratio, basis, grounds = shape, "geometry", "stitch length, thickness and width of this seam"
        needle = ratio * stitch.needle_share.value * sewn
        under = ratio * sewn - needle
    bobbin = under if stitch.under == "bobbin" else Fraction(0)
    return RunThread(run, needle, bobbin, under - bobbin, ratio, basis, grounds)


def _unusable(run: SeamRun) -> OutOfRange | None:
    if run.stitch_length is not None and run.stitch_length <= 0:
        return outside("stitch length", run.stitch_length, "mm", above=0)
    for what, given in (("seam thickness", run.thickness), ("stitch width", run.width)):
        if given is not None and given < 0:
            return outside(what, given, "mm", at_least=0)
    return None


def factors_from_swatch(seam: Fraction, needle: Fraction, under: Fraction) -> MeasuredFactors | OutOfRange:
    """Thread per seam length from the threads unpicked out of a swatch.

    seam: length unpicked, mm. needle, under: threads drawn out of it, mm, pulled straight.
    Fails: a swatch without length, or a needle thread shorter than the seam it lay in.
    """
    if wrong := outside("unpicked seam", seam, "mm", above=0):
        return wrong
    if wrong := outside("needle thread unpicked", needle, "mm", at_least=seam):
        return wrong
    if wrong := outside("under thread unpicked", under, "mm", at_least=0):
        return wrong
    return MeasuredFactors(needle / seam, under / seam)


def reels_to_buy(need: Fraction, reel_length: Fraction, reels_at_once: int = 1) -> ReelOrder | OutOfRange:
    """Whole reels for `need` mm of thread, and no fewer than stand on the machine at the same time.

    Reels are taken to be swapped between needle and loopers as they run low.
    Fails: a reel without length.
    """
    if wrong := outside("reel length", reel_length, "mm", above=0):
        return wrong
    if need < 0 or reels_at_once < 0:
        raise ValueError("thread needed and reels at once can't be below 0")
    reels = max(ceil(need / reel_length), reels_at_once) if need else 0
    return ReelOrder(reels, reels * reel_length, reels * reel_length - need)


def cone_length(count_ne: Fraction, mass: Fraction) -> Fraction:
    """Thread on a cone, mm, from its resultant English cotton count and the grams of thread on it.

    Source: definition of the count (metres = Ne x g x 1.6934).
    """
    return count_ne * mass * MM_PER_GRAM_OF_NE_1


def stitches_per_inch(stitch_length: Fraction) -> Fraction:
    """Stitches in an inch for a stitch length in mm. Definition."""
    if stitch_length <= 0:
        raise ValueError("stitch length must be above 0 mm")
    return UNITS["in"].factor / stitch_length
