"""Elastic: how far it stretches, how long to cut it, whether it passes the hips."""

from __future__ import annotations

from fractions import Fraction
from typing import Literal, NamedTuple

from furbelow.measure.units import UNITS
from furbelow.s5_buy.out_of_range import OutOfRange, outside

MOST_STRETCH = Fraction(1)
"""Good elastic comes back from twice its length, no rating above it is believed.

Source: infosekolah.net, Elastic (notion), an encyclopaedia mirror.
"""


def stretch(rest: Fraction, stretched: Fraction) -> Fraction | OutOfRange:
    """How much longer than at rest, as a share of the rest length (20 to 28 cm is 40 %).

    Fails: no rest length; a stretched length below the rest length.
    Source: definition.
    """
    if wrong := outside("elastic at rest", rest, "mm", above=0):
        return wrong
    return outside("stretched elastic", stretched, "mm", at_least=rest) or stretched / rest - 1


class Reduction(NamedTuple):
    """A usual way to make elastic shorter than the waist: by a share of it or by a length, from and to."""

    by: Literal["share", "length"]
    least: Fraction
    most: Fraction
    source: str


_INCH = UNITS["in"].factor

REDUCTIONS: dict[str, Reduction] = {
    "firm": Reduction("length", 2 * _INCH, 2 * _INCH, "sewingtrip.com, How to measure elastic for waistband"),
    "usual": Reduction("length", 2 * _INCH, 4 * _INCH, "lightsalmonsweet.pages.dev, How to sew elastic"),
    "knitted": Reduction("share", Fraction(5, 100), Fraction(10, 100), "habipax.co.nz, Types of elastic"),
    "woven": Reduction("share", Fraction(0), Fraction(0), "habipax.co.nz, Types of elastic"),
}
"""Presets from shop and blog pages: starting points, not rules."""


class ElasticCut(NamedTuple):
    """Elastic for a waist, mm: `ring` round the body at rest, `cut` off the card with the overlap on it.

    reduction: how much shorter than the waist the ring is, as a share of the waist.
    """

    ring: Fraction
    cut: Fraction
    reduction: Fraction


def cut_by_share(waist: Fraction, share: Fraction, overlap: Fraction) -> ElasticCut | OutOfRange:
    """Elastic whose ring is `share` shorter than the waist; ends lapped by `overlap`.

    Fails: a share below 0 or of 100 % and more; an overlap below 0.
    """
    wrong = outside("elastic reduction", share, "share", at_least=0, below=1)
    return wrong or _cut(waist, waist * (1 - share), overlap)


def cut_by_length(waist: Fraction, less: Fraction, overlap: Fraction) -> ElasticCut | OutOfRange:
    """Elastic whose ring is `less` mm shorter than the waist; ends lapped by `overlap`.

    Fails: a reduction below 0 or as long as the waist; an overlap below 0.
    """
    wrong = outside("elastic reduction", less, "mm", at_least=0, below=waist)
    return wrong or _cut(waist, waist - less, overlap)


def _cut(waist: Fraction, ring: Fraction, overlap: Fraction) -> ElasticCut | OutOfRange:
    if waist <= 0:
        raise ValueError("a waist is above 0 mm")
    # Lapped ends lie on each other: the ring is shorter than what was cut by one overlap.
    wrong = outside("elastic overlap", overlap, "mm", at_least=0)
    return wrong or ElasticCut(ring, ring + overlap, 1 - ring / waist)


class Passage(NamedTuple):
    """Whether a ring of elastic passes a girth.

    needed: the stretch it takes, a share; rated: the stretch it is good for.
    short_by: mm by which the ring at its rated stretch is smaller than the girth, 0 when it passes.
    """

    needed: Fraction
    rated: Fraction
    short_by: Fraction

    @property
    def passes(self) -> bool:
        """The ring reaches the girth within its rating."""
        return self.short_by == 0


def girth_to_pass(waist: Fraction, hip: Fraction, ease: Fraction = Fraction(0)) -> Fraction:
    """The larger of waist and hip, and ease on top: hips are not always the larger one.

    Source: squaredancesewing.com, tiered skirt calculations (2 in of ease there).
    """
    return max(waist, hip) + ease


def pass_girth(ring: Fraction, girth: Fraction, rated: Fraction) -> Passage | OutOfRange:
    """Whether a ring of `ring` mm at rest passes `girth` when it is good for `rated` stretch (50 % is 1/2).

    Fails: a ring without length; a rating below 0 or above 100 %.
    """
    wrong = outside("elastic ring", ring, "mm", above=0) or outside(
        "rated stretch", rated, "share", at_least=0, at_most=MOST_STRETCH
    )
    if wrong:
        return wrong
    needed = max(girth / ring - 1, Fraction(0))
    return Passage(needed, rated, max(girth - ring * (1 + rated), Fraction(0)))


def shortest_ring(girth: Fraction, rated: Fraction) -> Fraction | OutOfRange:
    """The shortest ring at rest, mm, that passes `girth` within its rated stretch. Fails: as pass_girth."""
    wrong = outside("rated stretch", rated, "share", at_least=0, at_most=MOST_STRETCH)
    return wrong or girth / (1 + rated)
