"""Two counts of who a skirt can't be made for: the compiler's, body by body, and one made straight from the table."""

from __future__ import annotations

import contextlib
import io
import json
from pathlib import Path

import numpy as np
import pytest
from furbelow.verbs.command import run

from tests.bodies.survey import bodies, roster, skirt_text, survey

_INCH = 25.4


@pytest.fixture(scope="module")
def told(tmp_path_factory: pytest.TempPathFactory) -> dict[str, object]:
    """What `check --class` says of all 800 bodies of the sample."""
    folder: Path = tmp_path_factory.mktemp("class")
    (folder / "skirt.yaml").write_text(skirt_text(), encoding="utf-8")
    (folder / "class.csv").write_text(roster(survey()), encoding="utf-8")
    out = io.StringIO()
    with contextlib.redirect_stdout(out):
        code = run(["check", str(folder / "skirt.yaml"), "--class", str(folder / "class.csv"), "--format", "json"])
    assert code == 1
    (loaded,) = json.loads(out.getvalue())["specs"]
    assert isinstance(loaded, dict)
    return loaded


def _columns() -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    waist, hip, height = np.array(survey(), dtype=float).T
    return waist, hip, height


def _in_range() -> np.ndarray:
    waist, hip, height = _columns()
    return (
        (waist >= 22 * _INCH)
        & (waist <= 54 * _INCH)
        & (hip >= 30 * _INCH)
        & (hip <= 60 * _INCH)
        & (height >= 34 * _INCH)
        & (height <= 48 * _INCH)
    )


def _refused(told: dict[str, object], code: str) -> set[int]:
    refused = told["refused"]
    assert isinstance(refused, dict)
    return {int(wearer) for wearer in refused.get(code, ())}


def _rows(wanted: np.ndarray) -> set[int]:
    return {int(row) + 1 for row in np.flatnonzero(wanted)}


def test_every_body_is_counted_once(told: dict[str, object]) -> None:
    assert told["bodies"] == 800


def test_the_elastic_is_refused_for_the_bodies_that_arithmetic_says(told: dict[str, object]) -> None:
    """Elastic of 0.90 waist must stretch to the larger of hip and waist; more than 50 % is refused."""
    waist, hip, _ = _columns()
    stretch = np.maximum(waist, hip) / (0.9 * waist) - 1
    wanted = _rows(_in_range() & (stretch > 0.5))
    assert 5 < len(wanted) < 40  # so the comparison says something
    assert _refused(told, "FB409") == wanted


def test_bodies_out_of_the_range_of_the_spec_are_told_as_such(told: dict[str, object]) -> None:
    assert _refused(told, "FB211") == _rows(~_in_range())


def test_nothing_else_is_refused(told: dict[str, object]) -> None:
    waist, hip, height = _columns()
    stretch = np.maximum(waist, hip) / (0.9 * waist) - 1
    too_long = height > 49 * _INCH  # the usual skirt length, waist height less 9 in, is at most 40 in
    assert _refused(told, "FB212") == _rows(too_long)
    assert told["proved"] == int(np.sum(_in_range() & (stretch <= 0.5)))
    assert set(told["refused"]) <= {"FB211", "FB212", "FB409"}  # type: ignore[call-overload]


def test_noise_makes_other_bodies_of_the_same_build() -> None:
    drawn = bodies(2000)
    assert drawn[:800] == survey()
    assert len(set(drawn)) > 1990
    assert bodies(2000) == drawn
    assert all(
        abs(a - b) <= 8
        for one, other in zip(drawn, survey() * 3, strict=False)
        for a, b in zip(one, other, strict=True)
    )
