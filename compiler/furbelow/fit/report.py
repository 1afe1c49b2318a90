"""What a fit found, in words and as plain values."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from furbelow.fit.fit import Fit, Missed, Trial, Values
from furbelow.fit.targets import Limit, value_of
from furbelow.garment.exact import exact_text
from furbelow.measure.measure_text import System, show_cloth_length, show_decimal, system_of
from furbelow.measure.quantity import Quantity
from furbelow.measure.units import LENGTH, PLAIN
from furbelow.s5_buy.amounts import COST, HOURS


def as_text(fit: Fit) -> str:
    return "\n".join(_lines(fit)) + "\n"


def _lines(fit: Fit) -> Iterator[str]:
    spec, said = fit.order.spec, " and ".join(limit.text for limit in fit.limits) or "no limit"
    aims = ", then ".join(aim.text for aim in fit.aims)
    yield f"{spec.title}, {fit.order.wearer}: {aims}, so that {said}"
    if fit.best is not None:
        yield f"  {_choices(fit, fit.best)}"
        yield from _table(fit, fit.best)
        yield f"  make it with {_options(fit, fit.best)}"
        if fit.beaten_by is not None:
            yield f"  no better: with {_choices(fit, fit.beaten_by)} {_why_not(fit, fit.beaten_by)}"
    elif fit.nearest is not None:
        yield "  no garment of these choices keeps within that"
        yield f"  nearest: {_choices(fit, fit.nearest)}"
        yield from _table(fit, fit.nearest)
        missed = fit.missed(fit.nearest)
        together = " and ".join(_amount_text(one.limit, one.came_to, fit) for one in missed)
        if len(missed) > 1:
            yield f"  would do: {together} in place of all that is missed"
        for relaxed in fit.relax:
            kept = " and ".join(limit.text for limit in fit.limits if limit is not relaxed.limit)
            kept = f", keeping {kept}" if kept else ""
            yield (
                f"  would do: {_amount_text(relaxed.limit, relaxed.to, fit)} in place of `{relaxed.limit.text}`{kept},"
                f" with {_choices(fit, relaxed.trial)}"
            )
    yield f"  {_count(fit)}"


def _count(fit: Fit) -> str:
    parts = [f"{fit.grid:,} garments to choose from"]
    if fit.refused:
        parts.append(f"{fit.refused:,} refused by the proofs")
    if fit.ruled_out:
        parts.append(f"{fit.ruled_out:,} ruled out by the area of their pieces alone")
    parts.append(f"{fit.planned:,} cut to the last strip")
    if fit.unsure:
        parts.append(f"{fit.unsure:,} not reached in the work allowed, so one of them may be better")
    return ", ".join(parts)


def _table(fit: Fit, trial: Trial) -> Iterator[str]:
    assert trial.exact is not None
    for limit in fit.limits:
        left, right = value_of(limit.left, trial.exact), value_of(limit.right, trial.exact)
        spare = abs(limit.overrun(trial.exact))
        side = "under" if (limit.sign in ("<=", "<")) == limit.holds(trial.exact) else "over"
        yield f"    {limit.left.text}: {show(left, _system(fit))} of {show(right, _system(fit))}, {show(spare, _system(fit))} {side}"
    named = {name for limit in fit.limits for name in limit.left.names}
    for name in _told(fit, trial.exact):
        if name not in named:
            yield f"    {name}: {show(trial.exact[name], _system(fit))}"


def _told(fit: Fit, values: Values) -> list[str]:
    cloths = [name for name, material in fit.order.spec.materials.items() if material.kind == "cloth"]
    return [name for name in (*cloths, COST, HOURS) if name in values]


def _why_not(fit: Fit, trial: Trial) -> str:
    if trial.faults:
        return f"it can't be made: {trial.faults[0].headline}"
    at_least = "" if trial.exact is not None else "at least "
    return "; ".join(_missed(fit, missed, at_least) for missed in fit.missed(trial))


def _missed(fit: Fit, missed: Missed, at_least: str = "") -> str:
    over = "over" if missed.limit.sign in ("<=", "<") else "short"
    came, by = show(missed.came_to, _system(fit)), show(missed.over, _system(fit))
    return f"{missed.limit.left.text} comes to {at_least}{came}, {by} {over}"


def _amount_text(limit: Limit, to: Quantity, fit: Fit) -> str:
    return f"{limit.left.text} {limit.sign.rstrip('=')}= {show(to, _system(fit), up=limit.sign in ('<=', '<'))}"


def _choices(fit: Fit, trial: Trial) -> str:
    return ", ".join(f"{name} {value.show(_system(fit))}" for name, value in trial.choices.items())


def _options(fit: Fit, trial: Trial) -> str:
    texts = {name: exact_text(value, fit.order.spec.system) for name, value in trial.choices.items()}
    return " ".join(f'--set "{name}={text}"' if " " in text else f"--set {name}={text}" for name, text in texts.items())


def _system(fit: Fit) -> System:
    return system_of(fit.order.room.units or fit.order.spec.units)


def show(value: Quantity, system: System, *, up: bool = True) -> str:
    """An amount as it is bought: cloth in m or yd, and never shown as less than it is."""
    if value.dims == LENGTH and abs(value.value) >= 1000:
        return show_cloth_length(value.value, system, mode="up" if up else "down")
    if value.dims == PLAIN:
        return show_decimal(value.value, 2, "up" if up else "down")
    return value.show(system)


def as_data(fit: Fit) -> dict[str, Any]:
    """The fit as plain values for JSON; lengths in mm, every number exact as a text with its unit beside it."""

    def trial(one: Trial | None) -> dict[str, Any] | None:
        if one is None:
            return None
        values = one.exact or one.low or {}
        return {
            "choices": {name: exact_text(value, fit.order.spec.system) for name, value in one.choices.items()},
            "amounts": {name: show(values[name], _system(fit)) for name in _told(fit, values)},
            "exact": one.exact is not None,
            "refused": [fault.headline for fault in one.faults],
            "missed": [_missed_data(fit, missed) for missed in fit.missed(one)] if values else [],
        }

    return {
        "title": fit.order.spec.title,
        "wearer": fit.order.wearer,
        "aims": [aim.text for aim in fit.aims],
        "limits": [limit.text for limit in fit.limits],
        "best": trial(fit.best),
        "nearest": trial(fit.nearest),
        "passed_over": trial(fit.beaten_by),
        "relax": [
            {"limit": each.limit.text, "to": show(each.to, _system(fit)), **(trial(each.trial) or {})}
            for each in fit.relax
        ],
        "garments": {
            "all": fit.grid,
            "refused": fit.refused,
            "ruled_out_by_area": fit.ruled_out,
            "planned": fit.planned,
            "not_reached": fit.unsure,
        },
    }


def _missed_data(fit: Fit, missed: Missed) -> Mapping[str, str]:
    system = _system(fit)
    return {
        "limit": missed.limit.text,
        "came_to": show(missed.came_to, system),
        "over": show(missed.over, system),
    }
