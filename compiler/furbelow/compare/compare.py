"""What changes for the maker from one garment to another: numbers, steps, materials, cost and time.

The two may be two versions of a spec, two sizes of one, or two garments that have nothing in common.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import asdict, dataclass
from difflib import SequenceMatcher
from fractions import Fraction
from typing import Any

from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Derivation, SolvedStep
from furbelow.garment.spec import Written
from furbelow.measure.measure_text import System, show_cloth_length
from furbelow.measure.quantity import Quantity, money, round_to_step, show_decimal
from furbelow.measure.units import PLAIN
from furbelow.order.chain import Planned
from furbelow.s5_buy.amounts import COST, HOURS, amounts
from furbelow.s5_buy.shopping import Line, Unit
from furbelow.s6_write.words.said_step import said_step
from furbelow.s6_write.words.words import Words

# Numbers of the spec that no maker meets: bounds of choices, and sums on the way to a cut size.
_NOT_TOLD = (" from", " to", " step", " as written", "_takes")


_COUNTED = {Unit.VOLUME: "ml", Unit.MASS: "g", Unit.REELS: "reels", Unit.PIECES: "pieces"}


@dataclass(frozen=True)
class Change:
    """A number before and after, as it is read; empty where there is none. `by` is the difference with its sign."""

    name: str
    before: str
    after: str
    by: str = ""


@dataclass(frozen=True)
class StepChange:
    """A step that is new, gone or changed, with the sentences that go and those that come in their place."""

    kind: str
    title: str
    gone: tuple[str, ...] = ()
    come: tuple[str, ...] = ()


@dataclass(frozen=True)
class Comparison:
    before: str
    after: str
    numbers: tuple[Change, ...]
    steps: tuple[StepChange, ...]
    materials: tuple[Change, ...]
    totals: tuple[Change, ...]

    @property
    def alike(self) -> bool:
        return not (self.numbers or self.steps or self.materials or self.totals)


def compare(one: Planned, other: Planned, before: str, after: str) -> Comparison:
    """Everything that differs. before, after: what the two are called."""
    say = Phrasing(other.rehearsal.solved, other.rehearsal.run.room, other.cutting.joins)
    return Comparison(
        before,
        after,
        tuple(_numbers(one, other, say.system)),
        tuple(_steps(one, other)),
        tuple(_materials(one, other, say.system)),
        tuple(_totals(one, other)),
    )


def _numbers(one: Planned, other: Planned, system: System) -> Iterator[Change]:
    old, new = one.rehearsal.solved.values, other.rehearsal.solved.values
    for name in (*new, *(name for name in old if name not in new)):
        is_, was = new.get(name), old.get(name)
        known = is_ or was
        if known is None or known.origin == "rule" or name.endswith(_NOT_TOLD) or name.startswith("step "):
            continue  # the lengths of a step are told in its sentences
        if known.origin == "material" and is_ and was and is_.value == was.value:
            continue
        if was is None or is_ is None or was.value != is_.value:
            yield Change(name, _shown(was, system), _shown(is_, system), _by(was, is_, system))


def _shown(derivation: Derivation | None, system: System) -> str:
    return derivation.value.show(system) if derivation else ""


def _by(was: Derivation | None, is_: Derivation | None, system: System) -> str:
    return difference(was.value, is_.value, system) if was and is_ else ""


def difference(was: Quantity, is_: Quantity, system: System) -> str:
    """How much more or less, with its sign; empty where the two measure different things."""
    if was.dims != is_.dims or was == is_:
        return ""
    more = is_ - was
    return ("+" if more.value > 0 else "-") + abs(more).show(system)


def _steps(one: Planned, other: Planned) -> Iterator[StepChange]:
    old, new = _told(one), _told(other)
    marks = [mark for mark, _, _ in old], [mark for mark, _, _ in new]
    for kind, a, b, c, d in SequenceMatcher(None, *marks, autojunk=False).get_opcodes():
        if kind != "equal":
            yield from (StepChange("gone", title, lines) for _, title, lines in old[a:b])
            yield from (StepChange("new", title, (), lines) for _, title, lines in new[c:d])
            continue
        for (_, _, were), (_, title, are) in zip(old[a:b], new[c:d], strict=True):
            if were != are:
                yield StepChange(
                    "changed",
                    title,
                    tuple(line for line in were if line not in are),
                    tuple(line for line in are if line not in were),
                )


def _told(planned: Planned) -> list[tuple[str, str, tuple[str, ...]]]:
    """(what tells the step apart, its title, its sentences) for each step that has any."""
    say = Phrasing(planned.rehearsal.solved, planned.rehearsal.run.room, planned.cutting.joins)
    words, told = Words(say.language, say, planned.cutting.letters), []
    for done in planned.rehearsal.run.performed:
        telling = said_step(done, words)
        lines = [line for action in telling.actions for line in (action.text, action.check, action.remedy) if line]
        if lines:
            told.append((_mark(done.step), telling.title, tuple(dict.fromkeys(lines))))
    return told


def _mark(step: SolvedStep) -> str:
    """A step is the same in both garments when its technique does the same to the same things, whatever the lengths."""
    named = [
        f"{arg.name} {_words(arg.value)}" for arg in step.written.args.values() if not isinstance(arg.value, Written)
    ]
    return "; ".join([step.written.technique, *named])


def _words(value: object) -> str:
    if type(value) is tuple:
        return ", ".join(_words(one) for one in value)
    return getattr(value, "text", "") or str(getattr(value, "edge", value))


def _materials(one: Planned, other: Planned, system: System) -> Iterator[Change]:
    old = {line.name: line for line in one.shopping.lines}
    new = {line.name: line for line in other.shopping.lines}
    for name in (*new, *(name for name in old if name not in new)):
        was, is_ = old.get(name), new.get(name)
        shown = [_bought(line, system) if line else "" for line in (was, is_)]
        if shown[0] != shown[1]:
            yield Change(f"{name} to buy", shown[0], shown[1], _more(was, is_, system))


def _bought(line: Line, system: System) -> str:
    if line.unit is Unit.LENGTH:
        return show_cloth_length(line.bought, system)
    return f"{show_decimal(line.bought, 0, 'up')} {_COUNTED[line.unit]}"


def _more(was: Line | None, is_: Line | None, system: System) -> str:
    if was is None or is_ is None or was.unit != is_.unit:
        return ""
    more = is_.bought - was.bought
    sign = "+" if more > 0 else "-"
    if is_.unit is Unit.LENGTH:
        return sign + show_cloth_length(abs(more), system)
    return f"{sign}{show_decimal(abs(more), 0)}"


def _totals(one: Planned, other: Planned) -> Iterator[Change]:
    old, new = amounts(one.shopping), amounts(other.shopping)
    for name in (COST, HOURS):
        if old[name] != new[name]:
            yield Change(name, _total(old[name]), _total(new[name]), _sign(old[name], new[name]))
    before, after = _sections(one), _sections(other)
    for name, was, is_ in (
        ("times the table is laid out", before[0], after[0]),
        ("joins in strips", before[1], after[1]),
        ("steps to do", _actions(one), _actions(other)),
    ):
        if was != is_:
            yield Change(name, str(was), str(is_), f"{is_ - was:+}")
    price, newer = one.shopping.costs, other.shopping.costs
    if price and newer and price.price != newer.price:
        currency = other.shopping.currency
        was_price, is_price = money(price.price, currency), money(newer.price, currency)
        yield Change("price to ask", _total(was_price), _total(is_price), _sign(was_price, is_price))


def _total(value: Quantity) -> str:
    return show_decimal(value.value, 1) if value.dims == PLAIN else value.show()


def _sign(was: Quantity, is_: Quantity) -> str:
    """The difference of the two as they are shown, so that the line adds up."""
    if was.dims != is_.dims:
        return ""
    places = Fraction(1, 10 if was.dims == PLAIN else 100)
    more = round_to_step(is_.value, places) - round_to_step(was.value, places)
    return ("-" if more < 0 else "+") + _total(Quantity(abs(more), was.dims))


def _sections(planned: Planned) -> tuple[int, int]:
    plans = [sheets[0].plan for sheets in planned.cutting.sheets.values()]
    return sum(plan.setups for plan in plans), sum(plan.joins for plan in plans)


def _actions(planned: Planned) -> int:
    say = Phrasing(planned.rehearsal.solved, planned.rehearsal.run.room, planned.cutting.joins)
    words = Words(say.language, say, planned.cutting.letters)
    return sum(len(said_step(done, words).actions) for done in planned.rehearsal.run.performed)


# --- telling it ---


def as_text(found: Comparison) -> str:
    lines = [f"{found.before} -> {found.after}"]
    if found.alike:
        lines.append("  nothing changes for the maker")
    for heading, changes in (
        ("numbers", found.numbers),
        ("materials", found.materials),
        ("in all", found.totals),
    ):
        if changes:
            lines.append(heading)
            width = max(len(change.name) for change in changes)
            lines += [_line(change, width) for change in changes]
    if found.steps:
        lines.append("steps")
        for step in found.steps:
            lines.append(f"  {step.kind}: {step.title}")
            if step.kind == "changed":
                lines += _sentences(step)
    return "\n".join(lines) + "\n"


_MEASURE = re.compile(r"\d+(?:\.\d+|/\d+| \d+/\d+)?(?: (?:mm|cm|m|in|yd|ml|%)\b)?")


def _sentences(step: StepChange) -> Iterator[str]:
    """The sentences that changed; where only measures differ, one sentence with both."""
    gone, come = list(step.gone), list(step.come)
    for line in step.come:
        same = next((old for old in gone if _MEASURE.sub("#", old) == _MEASURE.sub("#", line)), None)
        if same is not None:
            gone.remove(same)
            come.remove(line)
            yield f"    {_both(same, line)}"
    yield from (f"    - {line}" for line in gone)
    yield from (f"    + {line}" for line in come)


def _both(old: str, new: str) -> str:
    """The new sentence with each measure that differs told as `156 cm -> 176 cm`."""
    olds = iter(_MEASURE.findall(old))

    def told(found: re.Match[str]) -> str:
        was = next(olds)
        return found[0] if was == found[0] else f"{was} -> {found[0]}"

    return _MEASURE.sub(told, new)


def _line(change: Change, width: int) -> str:
    name = change.name.ljust(width)
    if not change.before:
        return f"  {name}  new: {change.after}"
    if not change.after:
        return f"  {name}  gone, was {change.before}"
    return f"  {name}  {change.before} -> {change.after}" + (f"  ({change.by})" if change.by else "")


def as_data(found: Comparison) -> Mapping[str, Any]:
    """The comparison as plain values for JSON."""
    return asdict(found)
