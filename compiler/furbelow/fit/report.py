"""What a fit found, in words and as plain values."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from furbelow.fit.fit import Fit, Missed, Trial
from furbelow.fit.fit import Values as Amounts
from furbelow.fit.targets import Limit, value_of
from furbelow.garment.exact import exact_text
from furbelow.garment.message import One, Own, Part, Things, Value, Values
from furbelow.measure.measure_text import System, show_cloth_length, show_decimal, system_of
from furbelow.measure.plain_values import Plain, as_plain
from furbelow.measure.quantity import Quantity
from furbelow.measure.units import LENGTH, PLAIN
from furbelow.order.whose import whose
from furbelow.s5_buy.amounts import COST, HOURS
from furbelow.s6_write.words.messages import Messages

Told = Mapping[str, Value | str]

_SIDES = ("under", "over")
_CALLED = {COST: "fit-cost", HOURS: "fit-hours"}


def as_text(fit: Fit) -> str:
    words = Messages(fit.order.spec.language, fit.order.room.words)
    words.read("fit")
    return "\n".join(_lines(fit, words)) + "\n"


def _lines(fit: Fit, words: Messages) -> Iterator[str]:
    asked: Told = {
        "garment": f"{fit.order.spec.title}, {whose(fit.order)}",
        "aims": Things(tuple(Own(aim.text) for aim in fit.aims), "then"),
        "limits": Things(tuple(Own(limit.text) for limit in fit.limits)),
    }
    yield words.text("fit-asked" if fit.limits else "fit-asked-no-limit", asked)
    if fit.best is not None:
        yield f"  {_choices(fit, fit.best, words)}"
        yield from _table(fit, fit.best, words)
        yield "  " + words.text("fit-make", {"options": _options(fit, fit.best)})
        if fit.beaten_by is not None:
            passed: Told = {
                "choices": _choices(fit, fit.beaten_by, words),
                "why": _why_not(fit, fit.beaten_by, words),
            }
            yield "  " + words.text("fit-no-better", passed)
    elif fit.nearest is not None:
        yield "  " + words.text("fit-none")
        yield "  " + words.text("fit-nearest", {"choices": _choices(fit, fit.nearest, words)})
        yield from _table(fit, fit.nearest, words)
        missed = fit.missed(fit.nearest)
        if len(missed) > 1:
            together = Things(tuple(Own(_amount_text(one.limit, one.came_to, fit)) for one in missed))
            yield "  " + words.text("fit-would-do-all", {"limits": together})
        for relaxed in fit.relax:
            kept = Things(tuple(Own(limit.text) for limit in fit.limits if limit is not relaxed.limit))
            told: Told = {
                "instead": _amount_text(relaxed.limit, relaxed.to, fit),
                "limit": relaxed.limit.text,
                "kept": kept,
                "choices": _choices(fit, relaxed.trial, words),
            }
            yield "  " + words.text("fit-would-do", told)
    yield "  " + words.said(_count(fit))


def _count(fit: Fit) -> Things:
    parts = [Part("fit-garments", {"garments": fit.grid})]
    if fit.refused:
        parts.append(Part("fit-refused", {"garments": fit.refused}))
    if fit.ruled_out:
        parts.append(Part("fit-ruled-out", {"garments": fit.ruled_out}))
    parts.append(Part("fit-planned", {"garments": fit.planned}))
    if fit.unsure:
        parts.append(Part("fit-unsure", {"garments": fit.unsure}))
    return Things(tuple(parts), "row")


def _table(fit: Fit, trial: Trial, words: Messages) -> Iterator[str]:
    assert trial.exact is not None

    def said(value: Quantity) -> str:
        return words.local(show(value, _system(fit)))

    for limit in fit.limits:
        side = "under" if (limit.sign in ("<=", "<")) == limit.holds(trial.exact) else "over"
        told: Told = {
            "what": limit.left.text,
            "amount": said(value_of(limit.left, trial.exact)),
            "limit": said(value_of(limit.right, trial.exact)),
            "spare": said(abs(limit.overrun(trial.exact))),
            "side": One(side, _SIDES),
        }
        yield "    " + words.text("fit-amount-of", told)
    named = {name for limit in fit.limits for name in limit.left.names}
    for name in _told(fit, trial.exact):
        if name not in named:
            amount: Told = {"what": Part(_CALLED[name]) if name in _CALLED else name, "amount": said(trial.exact[name])}
            yield "    " + words.text("fit-amount", amount)


def _told(fit: Fit, values: Amounts) -> list[str]:
    cloths = [name for name, material in fit.order.spec.materials.items() if material.kind == "cloth"]
    return [name for name in (*cloths, COST, HOURS) if name in values]


def _why_not(fit: Fit, trial: Trial, words: Messages) -> str:
    if trial.faults:
        return words.text("fit-refused-by", {"fault": trial.faults[0].headline})
    return words.said(
        Things(tuple(_missed(fit, missed, trial.exact is None, words) for missed in fit.missed(trial)), "clauses")
    )


def _missed(fit: Fit, missed: Missed, at_least: bool, words: Messages) -> Part:
    told: Values = {
        "what": Own(missed.limit.left.text),
        "came-to": Own(words.local(show(missed.came_to, _system(fit)))),
        "by": Own(words.local(show(missed.over, _system(fit)))),
        "side": One("over" if missed.limit.sign in ("<=", "<") else "under", _SIDES),
    }
    return Part("fit-missed-at-least" if at_least else "fit-missed", told)


def _amount_text(limit: Limit, to: Quantity, fit: Fit) -> str:
    return f"{limit.left.text} {limit.sign.rstrip('=')}= {show(to, _system(fit), up=limit.sign in ('<=', '<'))}"


def _choices(fit: Fit, trial: Trial, words: Messages) -> str:
    return ", ".join(f"{name} {words.local(value.show(_system(fit)))}" for name, value in trial.choices.items())


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
    """The fit as plain values for JSON; `shown` of a choice is what is typed after `--set`."""

    def trial(one: Trial | None) -> dict[str, Any] | None:
        if one is None:
            return None
        values = one.exact or one.low or {}
        return {
            "choices": {
                name: as_plain(value, exact_text(value, fit.order.spec.system)) for name, value in one.choices.items()
            },
            "amounts": {name: as_plain(values[name], show(values[name], _system(fit))) for name in _told(fit, values)},
            "exact": one.exact is not None,
            "refused": [fault.headline for fault in one.faults],
            "missed": [_missed_data(fit, missed) for missed in fit.missed(one)] if values else [],
        }

    return {
        "title": fit.order.spec.title,
        "wearer": whose(fit.order),
        "aims": [aim.text for aim in fit.aims],
        "limits": [limit.text for limit in fit.limits],
        "best": trial(fit.best),
        "nearest": trial(fit.nearest),
        "passed_over": trial(fit.beaten_by),
        "relax": [
            {
                "limit": each.limit.text,
                "to": as_plain(each.to, show(each.to, _system(fit))),
                **(trial(each.trial) or {}),
            }
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


def _missed_data(fit: Fit, missed: Missed) -> Mapping[str, str | Plain]:
    system = _system(fit)
    return {
        "limit": missed.limit.text,
        "came_to": as_plain(missed.came_to, show(missed.came_to, system)),
        "over": as_plain(missed.over, show(missed.over, system)),
    }
