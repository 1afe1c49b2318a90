"""Whether elastic goes into a casing: the questions that every way of drawing it in asks."""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Casing
from furbelow.garment.limits import width_of
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import SolvedStep
from furbelow.garment.technique import fault_at
from furbelow.techniques.shared.preconditions import no_length

PASS = Fraction(3)  # gap wider than the elastic by an eighth of an inch at least; published 2018, rounded down


def does_not_go_in(say: Phrasing, step: SolvedStep, casing: Casing, elastic: str, longest: Fraction) -> Fault | None:
    """The fault of elastic that does not go into this casing, or is longer than it. longest: as it is worn, at rest.

    Fails: FB208, FB322, FB323, FB324.
    """
    written, name, width = step.written, casing.name, width_of(say.solved, elastic)
    if inside := casing.elastic or casing.cord:
        headline = f"the casing in `{name}` holds `{inside}` already"
        return fault_at(written, "into", "FB322", headline, help="leave one of the two steps out")
    if not casing.open:
        headline = f"the gap in `{name}` is sewn shut before the elastic goes in"
        return fault_at(written, "into", "FB322", headline, help="move `close gap` after this step")
    if width > casing.width:
        return fault_at(
            written,
            "elastic",
            "FB323",
            f"`{elastic}` is {say.length(width)} wide and the casing is {say.length(casing.width)} inside,"
            f" {say.length(width - casing.width)} too narrow",
            help="make the casing deeper or choose a narrower elastic",
        )
    gap = casing.width if casing.in_seam else casing.gap
    if not casing.flat and gap < width + PASS:
        return fault_at(
            written,
            "into",
            "FB323",
            f"the gap of {say.length(gap)} is too narrow for elastic {say.length(width)} wide,"
            f" {say.length(width + PASS - gap)} short",
            notes=(f"{say.length(width)} + {say.length(PASS)} to pull it through = {say.length(width + PASS)}",),
            help="make the casing deeper: its gap is as wide as its channel"
            if casing.in_seam
            else "leave a wider gap in the casing",
        )
    if fault := no_length(step, "length"):
        return fault
    if longest > casing.length:
        return fault_at(
            written,
            "length",
            "FB324",
            f"the elastic of {say.length(longest)} is longer than its casing of {say.length(casing.length)},"
            f" by {say.length(longest - casing.length)}",
            help="shorten the elastic: it can't draw the waist in",
        )
    return None
