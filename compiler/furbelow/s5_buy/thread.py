"""Thread by stitch type and metres of seam: needle, bobbin and looper shares, waste, reels to buy."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from math import ceil

from furbelow.garment.solved import SolvedMaterial
from furbelow.garment.stitch import StitchType
from furbelow.measure.units import LENGTH, UNITS
from furbelow.named import NamedTuple
from furbelow.s5_buy.stitch_table import STITCHES, geometric_ratio

MM_PER_GRAM_OF_NE_1 = 840 * UNITS["yd"].factor / UNITS["lb"].factor
"""English cotton count: Ne 1 is 840 yards to the pound. Definition."""


class SeamRun(NamedTuple):
    """One stretch of sewing with one stitch type, lengths in mm.

    passes: how often the length is sewn, once for each like piece. thickness: of all plies under the needle together.
    """

    stitch: StitchType
    length: Fraction
    passes: int
    stitch_length: Fraction
    thickness: Fraction


class ThreadNeed(NamedTuple):
    """Thread to have, mm, waste included.

    reels_at_once: on all machines together, each threaded for itself. on_looper: so many of them stand on the one with loopers.
    """

    needle: Fraction
    bobbin: Fraction
    looper: Fraction
    waste: Fraction
    reels_at_once: int
    on_looper: int = 0

    @property
    def total(self) -> Fraction:
        """All threads together, mm, waste included."""
        return self.needle + self.bobbin + self.looper


class ReelOrder(NamedTuple):
    """Whole reels to buy and what is left on them, mm."""

    reels: int
    bought: Fraction
    left: Fraction


def thread_for_seams(runs: Iterable[SeamRun], waste: Fraction) -> ThreadNeed:
    """Needle, bobbin and looper thread of all runs together, mm, with a share of `waste` added.

    The ratio of a run is the larger of table and geometry, as the table holds for about 7 stitches a centimetre and the
    geometry is a floor. One call for each thread (colour and make). A machine with loopers stands threaded beside the one
    for seams, so the most that a run has on either are added.
    """
    needle = bobbin = looper = Fraction(0)
    seams = loopers = 0
    for run in runs:
        stitch = STITCHES[run.stitch]
        ratio = max(stitch.ratio.value, geometric_ratio(run.stitch, run.stitch_length, run.thickness))
        whole = ratio * run.length * run.passes
        above = whole * stitch.needle_share.value
        needle += above
        if stitch.under == "bobbin":
            bobbin += whole - above
        else:
            looper += whole - above
        if stitch.under == "looper":
            loopers = max(loopers, stitch.reels_at_once)
        else:
            seams = max(seams, stitch.reels_at_once)
    more = 1 + waste
    return ThreadNeed(more * needle, more * bobbin, more * looper, waste, seams + loopers, loopers)


def reel_length(thread: SolvedMaterial) -> Fraction | None:
    """Thread on a reel in mm: as it is written, or by its weight and count; None where nobody says."""
    reel, count = thread.amounts.get("reel"), thread.amounts.get("count")
    if reel is None:
        return None
    return reel.as_length_mm() if count is None or reel.dims == LENGTH else cone_length(count.value, reel.as_mass_g())


def cone_length(count_ne: Fraction, grams: Fraction) -> Fraction:
    """Thread on a cone, mm, from its resultant English cotton count and the weight of thread on it.

    Source: definition of the count (metres = Ne x g x 1.6934).
    """
    return count_ne * grams * MM_PER_GRAM_OF_NE_1


def reels_to_buy(need: Fraction, reel_length: Fraction, reels_at_once: int = 1) -> ReelOrder:
    """Whole reels for `need` mm of thread, and no fewer than stand on the machine at the same time.

    Reels are taken to be swapped between the machines as they run low. reel_length: above 0, as the solver asks.
    """
    reels = max(ceil(need / reel_length), reels_at_once) if need else 0
    return ReelOrder(reels, reels * reel_length, reels * reel_length - need)
