"""The depth mark of a pleating attachment for a fullness, from what swatches gave."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction


def mark_for(takes: Mapping[str, Fraction], ratio: Fraction) -> Fraction | None:
    """The mark, to the half, that takes cloth to this ratio; None where the swatches do not reach so far.

    takes: the share of its length that the cloth loses at each mark, pleated at every stitch.
    Between two marks the cloth that a pleat takes grows evenly, as its depth does.
    """
    # Cloth beyond each gathered length is what a pleat takes, in stitches.
    known = sorted((Fraction(mark), 1 / (1 - share) - 1) for mark, share in takes.items() if _is_number(mark))
    wanted = ratio - 1
    for (low, takes_low), (high, takes_high) in zip(known, known[1:], strict=False):
        if takes_low <= wanted <= takes_high and takes_low < takes_high:
            exact = low + (high - low) * (wanted - takes_low) / (takes_high - takes_low)
            return Fraction(round(exact * 2), 2)
    return next((mark for mark, takes_there in known if takes_there == wanted), None)


def _is_number(mark: str) -> bool:
    try:
        Fraction(mark)
    except (ValueError, ZeroDivisionError):
        return False
    return True
