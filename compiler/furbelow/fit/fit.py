"""The best garment under limits, truly the best of all that the free choices allow.

Rounding up, joins and the width of the bolt make needs jump, so that more fullness may now and then take less cloth;
halving the range would miss that. Every garment of the grid is therefore looked at, in the order of what is wanted,
until one holds that no other can beat. What the area of the pieces alone rules out is not planned.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import product

from furbelow.diagnose.fault import Fault, Staged, has_errors
from furbelow.fit.grid import as_chosen, free_choices, garments, values_of
from furbelow.fit.targets import Aim, Limit, read_aims, read_limits, value_of
from furbelow.garment.solved import Solved
from furbelow.measure.quantity import Quantity, mm, money, number
from furbelow.measure.units import CURRENCIES, VOLUME
from furbelow.order.at_least import at_least
from furbelow.order.chain import in_work_order, plan, prove, ready_for, solved
from furbelow.order.order import Order
from furbelow.s2_solve.solve import System
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s5_buy.amounts import COST, HOURS, amount_names, amounts

Values = Mapping[str, Quantity]
Key = tuple[Fraction, ...]


@dataclass
class Trial:
    """One garment of the grid. What is worked out of it is kept; `low` are its values with bounds for amounts."""

    choices: Mapping[str, Quantity]
    place: int  # the order on the grid, to part equals
    faults: tuple[Fault, ...] = ()
    rehearsal: Rehearsal | None = None
    low: Values | None = None
    exact: Values | None = None
    proved: bool = False


@dataclass(frozen=True)
class Missed:
    """A limit with what it came to and what it would have to be."""

    limit: Limit
    came_to: Quantity
    over: Quantity


@dataclass(frozen=True)
class Relaxed:
    """The least that one limit would have to allow, the others kept, and the choices that need it."""

    limit: Limit
    to: Quantity
    trial: Trial


@dataclass(frozen=True)
class Fit:
    """`best` holds every limit; where there is none, `nearest` misses by the least share, and `relax` says what would help.

    beaten_by: the garment most wanted of those that had to be passed over for `best`, with what it misses.
    grid: garments to choose from; refused: those that can't be sewn, of the ones looked at; ruled_out: by area alone;
    planned: cut in full.
    """

    order: Order
    aims: tuple[Aim, ...]
    limits: tuple[Limit, ...]
    best: Trial | None
    nearest: Trial | None
    beaten_by: Trial | None
    relax: tuple[Relaxed, ...]
    grid: int
    refused: int
    ruled_out: int
    planned: int
    refusals: tuple[Fault, ...] = ()

    def missed(self, trial: Trial) -> tuple[Missed, ...]:
        """The limits that a trial breaks; by area alone where it was not planned."""
        values = trial.exact or trial.low or {}
        return tuple(
            Missed(limit, value_of(limit.left, values), limit.overrun(values))
            for limit in self.limits
            if not limit.holds(values)
        )


def fit(order: Order, free: str, so_that: Sequence[str], aim: str = "") -> Staged[Fit]:
    """The best garment for the order with these choices free.

    Fails: FB201 and FB701 to FB704 for what is asked; the faults of the spec where no garment at all can be sewn.
    """
    chosen = free_choices(order.spec, free)
    if chosen.value is None:
        return Staged(None, chosen.faults)
    ready = ready_for(order)
    usual = solved(order, ready)
    if usual.value is None:
        return Staged(None, usual.faults)
    values, faults = {}, list[Fault]()
    for choice in chosen.value:
        staged = values_of(choice, usual.value)
        faults += staged.faults
        values[choice.name] = staged.value or ()
    count = garments(values)
    faults += count.faults
    known = {**_numbers(usual.value), **_kinds(usual.value)}
    limits = read_limits(so_that, known, amount_names(order.spec))
    aims = read_aims(aim, values, known)
    faults += (*limits.faults, *aims.faults)
    if faults or limits.value is None or aims.value is None:
        return Staged(None, tuple(faults))
    trials = [Trial(dict(zip(values, row, strict=True)), place) for place, row in enumerate(product(*values.values()))]
    search = _Search(order, ready, aims.value, limits.value, trials)
    return search.run()


def _numbers(found: Solved) -> dict[str, Quantity]:
    return {name: derivation.value for name, derivation in found.values.items() if derivation.origin != "rule"}


def _kinds(found: Solved) -> Values:
    """A value of the right kind for every amount, to try the limits on before anything is planned."""
    currencies = [
        base
        for material in found.materials.values()
        if "price" in material.amounts
        for base, _ in material.amounts["price"].dims
        if base in CURRENCIES
    ]
    wet = ("starch", "dye")
    kinds = {
        name: Quantity(Fraction(1), VOLUME) if material.material.kind in wet else mm(1)
        for name, material in found.materials.items()
    }
    return {**kinds, COST: money(1, currencies[0] if currencies else "EUR"), HOURS: number(1)}


@dataclass
class _Search:
    order: Order
    ready: System
    aims: tuple[Aim, ...]
    limits: tuple[Limit, ...]
    trials: list[Trial]
    planned: int = 0
    ruled_out: set[int] = field(default_factory=set)

    def run(self) -> Staged[Fit]:
        best, passed = self._first(self._wanted, self.limits)
        nearest: Trial | None = None
        relax: tuple[Relaxed, ...] = ()
        if best is None:
            nearest, _ = self._first(self._missed_by, ())
            if nearest is None:
                faults = next((trial.faults for trial in self.trials if trial.faults), ())
                return Staged(None, faults)
            relax = self._relaxed()
        refused = [trial for trial in self.trials if trial.proved and trial.faults]
        return Staged(
            Fit(
                self.order,
                self.aims,
                self.limits,
                best,
                nearest,
                passed,
                relax,
                len(self.trials),
                len(refused),
                sum(self.trials[place].exact is None for place in self.ruled_out),
                self.planned,
                refused[0].faults if refused else (),
            )
        )

    def _first(self, key: Callable[[Trial, Values], Key], limits: Iterable[Limit]) -> tuple[Trial | None, Trial | None]:
        """The trial with the smallest key that holds the limits, and the last one passed over before it.

        The key of `low` values is never above that of the exact ones, so the search may stop when it is reached.
        """
        limits = tuple(limits)
        open_: list[tuple[Key, int, Trial]] = []
        for trial in self.trials:
            if self._needs_proof(key) and not self._prove(trial):
                continue
            values = trial.low or trial.choices
            open_.append((key(trial, values), trial.place, trial))
        open_.sort(key=lambda each: each[:2])
        best: tuple[Key, int, Trial] | None = None
        passed: Trial | None = None
        for low_key, place, trial in open_:
            if best is not None and (low_key, place) >= best[:2]:
                break
            if not self._prove(trial) or trial.low is None:
                passed = trial
                continue
            low = trial.low
            if any(limit.only_grows and not limit.holds(low) for limit in limits):
                self.ruled_out.add(trial.place)
                passed = trial
                continue
            if not self._plan(trial) or trial.exact is None:
                passed = trial
                continue
            if not all(limit.holds(trial.exact) for limit in limits):
                passed = trial
                continue
            reached = (key(trial, trial.exact), place, trial)
            if best is None or reached[:2] < best[:2]:
                best = reached
        return (best[2] if best else None), passed

    def _needs_proof(self, key: Callable[[Trial, Values], Key]) -> bool:
        """The order is known at once when only free choices are wanted."""
        return key != self._wanted or any(aim.name not in self.trials[0].choices for aim in self.aims)

    def _wanted(self, trial: Trial, values: Values) -> Key:
        bought = amount_names(self.order.spec)
        key: list[Fraction] = []
        for aim in self.aims:
            if aim.most and aim.name in bought and values is not trial.exact:
                # A bound below says nothing of how much it may be.
                return (*key, Fraction(-(10**18)))
            value = values[aim.name].value
            key.append(-value if aim.most else value)
        return tuple(key)

    def _missed_by(self, trial: Trial, values: Values) -> Key:
        shares = [limit.share(values) for limit in self.limits if limit.only_grows or values is trial.exact]
        return (max(shares, default=Fraction(0)), sum(shares, Fraction(0)))

    def _relaxed(self) -> tuple[Relaxed, ...]:
        """For each limit, how little it would have to give way alone."""
        found = []
        for limit in self.limits:
            others = [other for other in self.limits if other is not limit]

            def overrun(trial: Trial, values: Values, limit: Limit = limit) -> Key:
                if not limit.only_grows and values is not trial.exact:
                    return (Fraction(-(10**18)),)
                return (limit.overrun(values).value,)

            trial, _ = self._first(overrun, others)
            if trial is not None and trial.exact is not None:
                found.append(Relaxed(limit, value_of(limit.left, trial.exact), trial))
        return tuple(found)

    def _prove(self, trial: Trial) -> bool:
        if not trial.proved:
            trial.proved = True
            written = {name: as_chosen(name, value, self.order.spec.system) for name, value in trial.choices.items()}
            order = self.order._replace(choices={**self.order.choices, **written})
            staged = prove(order, self.ready)
            if staged.value is None or has_errors(staged.faults):
                trial.faults = tuple(fault for fault in staged.faults if fault.is_error)
                return False
            trial.rehearsal = in_work_order(staged.value)
            low = at_least(trial.rehearsal)
            if low.value is None:
                trial.faults = low.faults
                return False
            trial.low = {**_numbers(trial.rehearsal.solved), **low.value}
        return not trial.faults

    def _plan(self, trial: Trial) -> bool:
        if trial.exact is None and not trial.faults:
            assert trial.rehearsal is not None
            staged = plan(trial.rehearsal)
            self.planned += 1
            if staged.value is None:
                trial.faults = staged.faults
            else:
                trial.exact = {**_numbers(trial.rehearsal.solved), **amounts(staged.value.shopping)}
        return trial.exact is not None
