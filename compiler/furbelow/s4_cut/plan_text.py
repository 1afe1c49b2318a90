"""Keep a plan in a file: a key that changes with anything that could change the plan, and JSON both ways."""

from __future__ import annotations

import json
import re
from fractions import Fraction
from hashlib import sha256
from typing import Any, get_args

from furbelow.s4_cut.plan import CuttingPlan, How, Lane, Layer, Panel, Section, Segment
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip

_FRACTION = re.compile(r"-?[0-9]{1,40}(/[0-9]{1,40})?")

# Raise it whenever the planner may find another plan for the same problem, so that kept plans are made afresh.
PLANNER_VERSION = 4


def plan_key(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> str:
    """64 hexadecimal digits that stand for the problem and this version of the planner."""
    problem = [PLANNER_VERSION, [strip._asdict() for strip in strips], bolt._asdict(), prices._asdict()]
    return sha256(json.dumps(problem, default=str, sort_keys=True).encode()).hexdigest()


def to_json(plan: CuttingPlan) -> str:
    """The plan as JSON text; fractions are strings such as "127/2"."""
    told = {**plan._asdict(), "sections": [_told(section) for section in plan.sections]}
    return json.dumps(told, default=str, ensure_ascii=False)


def _told(section: Section) -> dict[str, Any]:
    lanes = [{**lane._asdict(), "segments": [each._asdict() for each in lane.segments]} for lane in section.lanes]
    return {**section._asdict(), "lanes": lanes}  # a panel is a list


def from_json(text: str) -> CuttingPlan:
    """The plan that `to_json` wrote. Raises ValueError for any other text."""
    try:
        told = json.loads(text)
        told["sections"] = tuple(_section(each) for each in _list(told["sections"]))
        told["how"] = How(told["how"])
        _typed(told, int, "joins", "cuts")
        _typed(told, bool, "folded", "proven")
        return CuttingPlan(**_fractions(told, "usable_width", "laid_length", "bolt_length", "cost", "bound"))
    except (KeyError, TypeError, AttributeError, ArithmeticError, RecursionError) as fault:
        raise ValueError(f"this is no cutting plan: {fault}") from fault


def _section(told: dict[str, Any]) -> Section:
    told["lanes"] = tuple(_lane(each) for each in _list(told["lanes"]))
    named = (dict(zip(Panel._fields, _list(each), strict=True)) for each in _list(told["panels"]))
    panels = (_typed(_piece(each), int, "copy") for each in named)
    told["panels"] = tuple(Panel(**_fractions(each, "from_end", "from_edge", "length", "width")) for each in panels)
    return Section(**_fractions(_typed(told, bool, "across"), "start", "length"))


def _lane(told: dict[str, Any]) -> Lane:
    segments = (_typed(_piece(each), int, "copy", "part", "parts") for each in _list(told["segments"]))
    told["segments"] = tuple(Segment(**_fractions(each, "length", "start")) for each in segments)
    if told["layer"] not in get_args(Layer):
        raise ValueError(f"{told['layer']!r:.20} is no layer")
    return Lane(**_fractions(_typed(told, bool, "selvedge"), "offset", "depth"))


def _piece(told: dict[str, Any]) -> dict[str, Any]:
    return _typed(_typed(_typed(told, str, "strip"), bool, "turned"), str | None, "wearer")


def _list(told: Any) -> list[Any]:
    return _typed({"": told}, list, "")[""]  # type: ignore[no-any-return]  # a list, as it was just asked


def _typed(told: dict[str, Any], kind: Any, *names: str) -> dict[str, Any]:
    """The same values, those of these names being of the kind, to the letter: in Python `True` is a number too."""
    for name in names:
        if not isinstance(told[name], kind) or (kind is int and isinstance(told[name], bool)):
            raise ValueError(f"{name!r} is {told[name]!r:.20}")
    return told


def _fractions(told: dict[str, Any], *names: str) -> dict[str, Any]:
    return {name: fraction_of(value) if name in names else value for name, value in told.items()}


def fraction_of(told: str) -> Fraction:
    """Fails: ValueError for what is no fraction of a plan."""
    # Only what `to_json` writes: "1e999999999" is a fraction too, and one that fills the memory.
    if not _FRACTION.fullmatch(told):
        raise ValueError(f"{told[:20]!r} is no fraction of a plan")
    return Fraction(told)
