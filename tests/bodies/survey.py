"""A class as large as wanted, drawn from a survey of bodies; and the skirt that it is measured for.

Source of the bodies: ANSUR II, Gordon et al. 2014, NATICK/TR-15/007 (see tests/data/README-bodies.md). Its waist is
taken at the navel, which is not the waist girth of ISO 8559-1.
"""

from __future__ import annotations

import csv
from collections.abc import Iterator
from pathlib import Path
from random import Random

from furbelow.garment.spec import Spec
from furbelow.s1_read.read_spec import read_spec

ROOT = Path(__file__).parents[2]
SURVEY = ROOT / "tests" / "data" / "ansur2_sample.csv"
NOISE = 8  # mm either way, so that a body drawn again is not the same body

Body = tuple[int, int, int]  # waist girth, hip girth, waist height in mm


def survey() -> list[Body]:
    with SURVEY.open(newline="") as file:
        return [
            (
                int(row["waistcircumference_mm"]),
                int(row["buttockcircumference_mm"]),
                int(row["waistheightomphalion_mm"]),
            )
            for row in csv.DictReader(file)
        ]


def bodies(number: int) -> list[Body]:
    """So many bodies: the survey's own, then the same again with noise. The same list every time."""
    chance, measured = Random(1851), survey()
    drawn = list(measured[:number])
    while len(drawn) < number:
        waist, hip, height = measured[len(drawn) % len(measured)]
        drawn.append(tuple(value + chance.randint(-NOISE, NOISE) for value in (waist, hip, height)))  # type: ignore[arg-type]
    return drawn


def roster(drawn: list[Body]) -> str:
    """The bodies as the table of a class."""

    def lines() -> Iterator[str]:
        yield "wearer;waist_girth (mm);hip_girth (mm);waist_height (mm)\n"
        for number, (waist, hip, height) in enumerate(drawn, 1):
            yield f"{number};{waist};{hip};{height}\n"

    return "".join(lines())


def skirt_text() -> str:
    """The marigold skirt with an elastic of 90 % of the waist that is rated for 50 % of stretch, as YAML."""
    text = (ROOT / "specs" / "marigold.yaml").read_text(encoding="utf-8")
    assert "stretch: 80%" in text
    assert "waist_girth * 90%" in text
    return text.replace("stretch: 80%", "stretch: 50%")


def skirt() -> Spec:
    staged = read_spec(("marigold.yaml", skirt_text().encode()))
    assert staged.value is not None, staged.faults
    return staged.value
