"""Every length of every step, written or not, is told when it is next to nothing and when it is a room long."""

from __future__ import annotations

import copy
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
import yaml
from furbelow.garment.technique import Kind
from furbelow.techniques import techniques

from tests.s3_rehearse.mutants import Outcome, outcome

TESTS = Path(__file__).parents[1]
GARMENTS = sorted([*(TESTS / "mistakes" / "garments").glob("*.yaml"), *(TESTS / "mistakes" / "sound").glob("*.yaml")])
TINY, HUGE = "0.2 mm", "4 m"
EACH = 2  # garments in which a number is tried
# What a number may be, and why it is no mistake.
MAY_BE = {
    ("boning channel", "above hem", TINY): "a hoop may lie on the hem itself",
    ("headed row", "above hem", TINY): "a row may hang from the hem itself",
    ("patch pocket", "from start", TINY): "a pocket may begin at the side seam",
    ("patch pocket", "below top", TINY): "it may begin at the top of a piece",
    ("tucks", "space", TINY): "tucks may meet",
    ("ring cut", "hem", HUGE): "a hem may be as wide as that",
    ("gores", "hem", HUGE): "a hem may be as wide as that",
    ("gather", "length", HUGE): "the cloth may be longer still",
    ("fitted waistband", "overlap", TINY): "ends that are tied may just meet",
    ("binding strip", "fold ends", TINY): "as good as nothing on a ring",
}
# Numbers that only count with another word beside them. How much of a dyed trim is sewn on, no step knows yet.
COUNTS: dict[tuple[str, str], Callable[[dict[str, str]], bool]] = {
    ("ruche", "inset"): lambda args: args.get("lines") == "two",
    ("insert elastic", "spare"): lambda args: args.get("cut") == "long",
    ("bound edge", "overlap"): lambda args: "edge" in args,
    ("bagged lining", "gap"): lambda args: args.get("leave open") != "top",
    ("dye", "length"): lambda args: False,
    ("fastening", "button"): lambda args: args.get("by", "").startswith("button") and "with" not in args,
    ("adjustable elastic", "button"): lambda args: "with" not in args,
}
ONLY_WRITTEN = {"open", "open at hem", "gap below top"}
_sound: dict[str, tuple[dict[str, Any], Outcome]] = {}


def _cases() -> Iterator[tuple[str, str, str, str, int]]:
    """technique, parameter, value, file, number of the step."""
    tried: dict[tuple[str, str], int] = {}
    for path in GARMENTS:
        steps = yaml.load(path.read_text(encoding="utf-8"), yaml.BaseLoader)["steps"]
        for at, step in enumerate(steps):
            name = next((key for key in step if key in techniques()), None)
            if name is None or not isinstance(step[name], dict):
                continue
            for key, parameter in techniques()[name].parameters.items():
                counts = COUNTS.get((name, key))
                idle = counts is not None and not counts(step[name])
                idle = idle or (key in ONLY_WRITTEN and key not in step[name])
                if parameter.kind is not Kind.LENGTH or idle or (parameter.default == "" and key not in step[name]):
                    continue
                if tried.setdefault((name, key), 0) < EACH:
                    tried[name, key] += 1
                    yield name, key, TINY, path.name, at
                    yield name, key, HUGE, path.name, at


def _garment(name: str) -> tuple[dict[str, Any], Outcome]:
    if name not in _sound:
        path = next(each for each in GARMENTS if each.name == name)
        doc = yaml.load(path.read_text(encoding="utf-8"), yaml.BaseLoader)
        _sound[name] = doc, outcome(doc)
    return _sound[name]


@pytest.mark.parametrize(("technique", "key", "value", "name", "at"), list(_cases()))
def test_a_number_without_sense_is_told(technique: str, key: str, value: str, name: str, at: int) -> None:
    doc, sound = _garment(name)
    changed = copy.deepcopy(doc)
    changed["steps"][at][technique][key] = value
    got = outcome(changed)
    told = got.final is None or bool(got.codes - sound.codes)
    assert told or (technique, key, value) in MAY_BE
