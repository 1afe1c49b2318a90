"""Keep a plan in a file: a key that changes with anything that could change the plan, and JSON both ways."""

from __future__ import annotations

import json
import re
from dataclasses import asdict
from fractions import Fraction
from hashlib import sha256
from typing import Any

from furbelow.s4_cut.plan import CuttingPlan, How, Lane, Panel, Section, Segment
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip

_FRACTION = re.compile(r"-?[0-9]{1,40}(/[0-9]{1,40})?")

# Raise it whenever the planner may find another plan for the same problem, so that kept plans are made afresh.
PLANNER_VERSION = 3


def plan_key(
    strips: tuple[Strip, ...],
    bolt: Bolt,
    prices: CutPrices,
    within: tuple[int | None, int | None] = (None, None),
) -> str:
    """64 hexadecimal digits that stand for the problem and this version of the planner.

    within: the most joins and the most sections allowed.
    """
    problem = [PLANNER_VERSION, [asdict(strip) for strip in strips], asdict(bolt), asdict(prices), within]
    return sha256(json.dumps(problem, default=str, sort_keys=True).encode()).hexdigest()


def to_json(plan: CuttingPlan) -> str:
    """The plan as JSON text; fractions are strings such as "127/2"."""
    return json.dumps(asdict(plan), default=str, indent=1, ensure_ascii=False) + "\n"


def from_json(text: str) -> CuttingPlan:
    """The plan that `to_json` wrote. Raises ValueError for any other text."""
    try:
        told = json.loads(text)
        told["sections"] = tuple(_section(each) for each in told["sections"])
        told["how"] = How(told["how"])
        return CuttingPlan(**_fractions(told, "usable_width", "laid_length", "bolt_length", "cost", "bound"))
    except (KeyError, TypeError, AttributeError, ArithmeticError, RecursionError) as fault:
        raise ValueError(f"this is no cutting plan: {fault}") from fault


def _section(told: dict[str, Any]) -> Section:
    told["lanes"] = tuple(_lane(each) for each in told["lanes"])
    # A named tuple is a list in JSON.
    named = (dict(zip(Panel._fields, each, strict=True)) for each in told["panels"])
    told["panels"] = tuple(Panel(**_fractions(each, "from_end", "from_edge", "length", "width")) for each in named)
    return Section(**_fractions(told, "start", "length"))


def _lane(told: dict[str, Any]) -> Lane:
    told["segments"] = tuple(Segment(**_fractions(each, "length", "start")) for each in told["segments"])
    return Lane(**_fractions(told, "offset", "depth"))


def _fractions(told: dict[str, Any], *names: str) -> dict[str, Any]:
    return {name: _fraction(value) if name in names else value for name, value in told.items()}


def _fraction(told: str) -> Fraction:
    # Only what `to_json` writes: "1e999999999" is a fraction too, and one that fills the memory.
    if not _FRACTION.fullmatch(told):
        raise ValueError(f"{told[:20]!r} is no fraction of a plan")
    return Fraction(told)
