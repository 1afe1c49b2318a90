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

from furbelow.garment.message import Amount, Number, One, Value
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Derivation, SolvedStep
from furbelow.garment.spec import Written
from furbelow.measure.plain_values import Plain, as_plain
from furbelow.measure.quantity import Quantity, mm, money, number, round_to_step
from furbelow.measure.units import PLAIN
from furbelow.order.chain import Planned
from furbelow.s5_buy.amounts import COST, HOURS, amounts
from furbelow.s5_buy.shopping import Line, Unit
from furbelow.s6_write.guide.material_lines import bought
from furbelow.s6_write.words.said_step import said_step
from furbelow.s6_write.words.words import UNITS_SAID, Words

# Numbers of the spec that no maker meets: bounds of choices, and sums on the way to a cut size.
_NOT_TOLD = (" from", " to", " step", " as written", "_takes")

_KINDS = ("new", "gone", "changed")


@dataclass(frozen=True)
class Change:
    """A number before and after, as it is read; empty where there is none. `by` is the difference with its sign.

    was, now: the numbers themselves.
    """

    name: str
    before: str
    after: str
    by: str
    was: Quantity | None
    now: Quantity | None


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
    """Everything that differs, in the language of the second. before, after: what the two are called."""
    words = words_of(other)
    return Comparison(
        before,
        after,
        tuple(_numbers(one, other, words)),
        tuple(_steps(one, other)),
        tuple(_materials(one, other, words)),
        tuple(_totals(one, other, words)),
    )


def words_of(planned: Planned) -> Words:
    """The words that a comparison with this garment is told in."""
    say = Phrasing(planned.rehearsal.solved, planned.rehearsal.run.room, planned.cutting.joins)
    words = Words(say.language, say, planned.cutting.marks)
    words.read("buying", "compare")
    return words


def _numbers(one: Planned, other: Planned, words: Words) -> Iterator[Change]:
    old, new = one.rehearsal.solved.values, other.rehearsal.solved.values
    for name in (*new, *(name for name in old if name not in new)):
        is_, was = new.get(name), old.get(name)
        known = is_ or was
        if known is None or known.origin == "rule" or name.endswith(_NOT_TOLD) or name.startswith("step "):
            continue  # the lengths of a step are told in its sentences
        if known.origin == "material" and is_ and was and is_.value == was.value:
            continue
        if was is None or is_ is None or was.value != is_.value:
            numbers = was and was.value, is_ and is_.value
            yield Change(name, _shown(was, words), _shown(is_, words), _by(was, is_, words), *numbers)


def _shown(derivation: Derivation | None, words: Words) -> str:
    return words.said(Amount(derivation.value, words.say.system)) if derivation else ""


def _by(was: Derivation | None, is_: Derivation | None, words: Words) -> str:
    """How much more or less, with its sign; empty where there is one alone, or the two measure different things."""
    if was is None or is_ is None or was.value.dims != is_.value.dims:
        return ""
    more = is_.value - was.value
    return _signed(more.value, Amount(abs(more), words.say.system), words)


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
    words, told = words_of(planned), []
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


def _materials(one: Planned, other: Planned, words: Words) -> Iterator[Change]:
    old = {line.name: line for line in one.shopping.lines}
    new = {line.name: line for line in other.shopping.lines}
    for name in (*new, *(name for name in old if name not in new)):
        was, is_ = old.get(name), new.get(name)
        shown = [words.said(bought(line)) if line else "" for line in (was, is_)]
        if shown[0] != shown[1]:
            called = words.text("compare-bought", {"material": words.name(name)})
            yield Change(called, shown[0], shown[1], _more(was, is_, words), *map(_counted, (was, is_)))


def _counted(line: Line | None) -> Quantity | None:
    """What is bought, as a number: reels and pieces are counted."""
    if line is None:
        return None
    return Quantity(line.bought, PLAIN if line.unit in (Unit.REELS, Unit.PIECES) else line.unit.dims)


def _more(was: Line | None, is_: Line | None, words: Words) -> str:
    if was is None or is_ is None or was.unit != is_.unit:
        return ""
    more = is_.bought - was.bought
    if is_.unit in (Unit.REELS, Unit.PIECES):
        return f"{int(more):+}"
    return _signed(more, bought(is_._replace(bought=abs(more))), words)


def _signed(more: Fraction, shown: Value, words: Words) -> str:
    return ("-" if more < 0 else "+") + words.said(shown)


def finished(one: Planned, other: Planned, words: Words) -> Iterator[Change]:
    """How long the whole garment comes out, from its top to its lowest edge."""
    runs = one.rehearsal.run, other.rehearsal.run
    if all(run.whole for run in runs):
        was, is_ = (mm(max(run.drops.values())) for run in runs)
        if was != is_:
            shown = [words.said(Amount(length, words.say.system)) for length in (was, is_)]
            by = _signed((is_ - was).value, Amount(abs(is_ - was), words.say.system), words)
            yield Change(words.text("compare-finished"), shown[0], shown[1], by, was, is_)


def _totals(one: Planned, other: Planned, words: Words) -> Iterator[Change]:
    yield from finished(one, other, words)
    old, new = amounts(one.shopping), amounts(other.shopping)
    for name, message in ((COST, "compare-cost"), (HOURS, "compare-hours")):
        total = _total(message, old[name], new[name], words)
        if total.before != total.after:
            yield total
    before, after = _sections(one), _sections(other)
    for message, was, is_ in (
        ("compare-layouts", before[0], after[0]),
        ("compare-joins", before[1], after[1]),
        ("compare-actions", _actions(one), _actions(other)),
    ):
        if was != is_:
            yield Change(words.text(message), str(was), str(is_), f"{is_ - was:+}", number(was), number(is_))
    price, newer = one.shopping.costs, other.shopping.costs
    if price and newer and price.price != newer.price:
        currency = other.shopping.currency
        yield _total("compare-price", money(price.price, currency), money(newer.price, currency), words)


def _total(message: str, was: Quantity, is_: Quantity, words: Words) -> Change:
    """The difference is that of the two as they are shown, so that the line adds up."""
    before, after = words.said(_amount(was)), words.said(_amount(is_))
    if was.dims != is_.dims:
        return Change(words.text(message), before, after, "", was, is_)
    places = Fraction(1, 10 if was.dims == PLAIN else 100)
    more = round_to_step(is_.value, places) - round_to_step(was.value, places)
    by = _signed(more, _amount(Quantity(abs(more), was.dims)), words)
    return Change(words.text(message), before, after, by, was, is_)


def _amount(value: Quantity) -> Value:
    """Hours in tenths, or money."""
    return Number(value.value, 1) if value.dims == PLAIN else Amount(value, "metric")


def _sections(planned: Planned) -> tuple[int, int]:
    plans = [sheets[0].plan for sheets in planned.cutting.sheets.values()]
    return sum(plan.setups for plan in plans), sum(plan.joins for plan in plans)


def _actions(planned: Planned) -> int:
    words = words_of(planned)
    return sum(len(said_step(done, words).actions) for done in planned.rehearsal.run.performed)


# --- telling it ---


def as_text(found: Comparison, words: Words) -> str:
    lines = [f"{found.before} -> {found.after}"]
    if found.alike:
        lines.append(f"  {words.text('compare-alike')}")
    for heading, changes in (
        ("compare-numbers", found.numbers),
        ("compare-materials", found.materials),
        ("compare-totals", found.totals),
    ):
        if changes:
            lines.append(words.text(heading))
            width = max(len(change.name) for change in changes)
            lines += [_line(change, width, words) for change in changes]
    if found.steps:
        lines.append(words.text("compare-steps"))
        measure = _measures(words)
        for step in found.steps:
            lines.append(f"  {words.text('compare-step', {'kind': One(step.kind, _KINDS), 'title': step.title})}")
            if step.kind == "changed":
                lines += _sentences(step, measure)
    return "\n".join(lines) + "\n"


def _measures(words: Words) -> re.Pattern[str]:
    """A number as the language writes it, with its unit where it has one."""
    units = [words.text("unit", {"number": "", "unit": One(unit, UNITS_SAID)}).strip() for unit in UNITS_SAID]
    either = "|".join(sorted({re.escape(unit) for unit in (*units, "%")}, key=len, reverse=True))
    return re.compile(rf"\d+(?:[.,]\d+|/\d+|[ \u00a0]\d+/\d+)?(?:[ \u00a0](?:{either})(?!\w))?")


def _sentences(step: StepChange, measure: re.Pattern[str]) -> Iterator[str]:
    """The sentences that changed; where only measures differ, one sentence with both."""
    gone, come = list(step.gone), list(step.come)
    for line in step.come:
        same = next((old for old in gone if measure.sub("#", old) == measure.sub("#", line)), None)
        if same is not None:
            gone.remove(same)
            come.remove(line)
            yield f"    {_both(same, line, measure)}"
    yield from (f"    - {line}" for line in gone)
    yield from (f"    + {line}" for line in come)


def _both(old: str, new: str, measure: re.Pattern[str]) -> str:
    """The new sentence with each measure that differs told as `156 cm -> 176 cm`."""
    olds = iter(measure.findall(old))

    def told(found: re.Match[str]) -> str:
        was = next(olds)
        return found[0] if was == found[0] else f"{was} -> {found[0]}"

    return measure.sub(told, new)


def _line(change: Change, width: int, words: Words) -> str:
    name = change.name.ljust(width)
    if not change.before:
        return f"  {name}  {words.text('compare-came', {'after': change.after})}"
    if not change.after:
        return f"  {name}  {words.text('compare-went', {'before': change.before})}"
    return f"  {name}  {change.before} -> {change.after}" + (f"  ({change.by})" if change.by else "")


def as_data(found: Comparison) -> Mapping[str, Any]:
    """The comparison as plain values for JSON."""
    return {
        "before": found.before,
        "after": found.after,
        "numbers": [_change(change) for change in found.numbers],
        "steps": [asdict(step) for step in found.steps],
        "materials": [_change(change) for change in found.materials],
        "totals": [_change(change) for change in found.totals],
    }


def _change(change: Change) -> dict[str, str | Plain | None]:
    was, now = change.was, change.now
    return {
        "name": change.name,
        "before": as_plain(was, change.before) if was else None,
        "after": as_plain(now, change.after) if now else None,
        "by": as_plain(now - was, change.by) if was and now and was.dims == now.dims else None,
    }
