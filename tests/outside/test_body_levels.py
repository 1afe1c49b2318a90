"""Where the hips lie and how wide they are, against measured bodies, asked of whole garments.

Source: ANSUR II, Gordon et al. 2014, NATICK/TR-15/007, see `tests/data/README-bodies.md`. The waist of ISO 8559-1 lies
midway between the lowest rib and the top of the hip bone; the survey has both heights.
"""

from __future__ import annotations

import csv
from pathlib import Path
from statistics import quantiles

import pytest

from tests.techniques.small import work

DATA = Path(__file__).parents[1] / "data"


def _rows(name: str) -> list[dict[str, str]]:
    with (DATA / name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


WOMEN = [row for row in _rows("ansur2_sample.csv") if row["sex"] == "F"]
DEPTHS = sorted(
    (int(row["tenthribheight_mm"]) + int(row["iliocristaleheight_mm"])) // 2 - int(row["buttockheight_mm"])
    for row in _rows("ansur2_sample_levels.csv")
    if row["sex"] == "F"
)
# Hips from the narrowest to the widest of the survey, every twentieth woman, whose waist is the smaller of the two.
HIPS = sorted(
    int(row["buttockcircumference_mm"])
    for row in WOMEN
    if int(row["waistcircumference_mm"]) < int(row["buttockcircumference_mm"])
)[::20]


def _told(ring: float, level: float, hips: float) -> bool:
    """Whether a seam of so many mm round, so far below the top, is told to be too narrow to get into. The top is wide."""
    pieces = f"""yoke: {{from: lawn, length: 200 cm, cut depth: {level + 10} mm}}
skirt: {{from: lawn, length: 200 cm, depth: 60 cm}}"""
    steps = f"""- join ends: {{of: yoke, seam: 1 cm}}
- join ends: {{of: skirt, seam: 1 cm}}
- gather: {{edge: yoke.bottom, length: {ring} mm}}
- gather: {{edge: skirt.top, to: yoke.bottom}}
- attach: {{edge: skirt.top, to: yoke.bottom, seam: 1 cm}}"""
    return "FB423" in work(pieces, steps, hips=f"{hips} mm").codes


@pytest.mark.parametrize("hips", HIPS)
def test_a_ring_above_the_hips_is_as_wide_as_they_are(hips: int) -> None:
    for off in (-200, -10, -1):
        assert _told(hips + off, 150, hips), off
    for off in (0, 1, 10, 200):
        assert not _told(hips + off, 150, hips), off


def test_the_hips_are_looked_for_where_they_lie_in_nineteen_of_twenty_women() -> None:
    """Nine tenths of the hips pass over the legs and not over the hips, so the level at which it changes tells the place."""
    *_, lowest = quantiles(DEPTHS, n=40)
    highest, *_ = quantiles(DEPTHS, n=40)
    assert _told(900, highest, 1000)
    assert not _told(900, lowest, 1000)
    changes = next(level for level in range(int(highest), int(lowest) + 1) if not _told(900, level, 1000))
    assert abs(changes - sum(DEPTHS) / len(DEPTHS)) < 5
