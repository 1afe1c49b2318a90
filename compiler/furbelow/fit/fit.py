"""The best garment under limits, truly the best of all that the free choices allow.

Rounding up, joins and the width of the bolt make needs jump, so that more fullness may now and then take less cloth;
halving the range would miss that. Every garment of the grid is therefore looked at, in the order of what is wanted,
until one holds that no other can beat. What the area of the pieces alone rules out is not planned. The work is bounded;
where it is not enough, the fit says how many garments it did not reach.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from heapq import heapify, heappop, heappush
from itertools import product

from furbelow.diagnose.fault import Fault, Staged, has_errors
from furbelow.fit.grid import as_chosen, free_choices, garments, values_of
from furbelow.fit.targets import Aim, Limit, read_aims, read_limits, value_of
from furbelow.garment.solved import Solved
from furbelow.garment.spec import SupplyKind, Written
from furbelow.measure.quantity import Quantity, money, number
from furbelow.measure.units import LENGTH, MASS, PLAIN, VOLUME
from furbelow.order.at_least import at_least, cloth_at_least
from furbelow.order.chain import in_work_order, plan, prove, ready_for, solved
from furbelow.order.order import Order
from furbelow.s2_solve.solve import Prepared
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s5_buy.amounts import COST, HOURS, amount_names, amounts

Values = Mapping[str, Quantity]
Key = tuple[Fraction, ...]
Watch = Callable[[int, int], None]

# A rehearsal counts as one, a plan as several: so long they take beside each other. In all, some seconds.
PLAN_WORK = 5
BEST_WORK, LIKELY_WORK, NEAREST_WORK, RELAX_WORK = 400, 100, 100, 100


@dataclass
class Trial:
    """One garment of the grid. What is worked out of it is kept; `low` are its values with bounds for amounts."""

    choices: Mapping[str, Quantity]
    place: int  # the order on the grid, to part equals
    faults: tuple[Fault, ...] = ()
    low: Values | None = None
    exact: Values | None = None
    rehearsed: bool = False


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
    planned: cut in full; unsure: not reached with the work that is allowed, so that one of them may be better.
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
    unsure: int

    def missed(self, trial: Trial) -> tuple[Missed, ...]:
        """The limits that a trial breaks; by area alone where it was not planned."""
        values = trial.exact or trial.low or {}
        return tuple(
            Missed(limit, value_of(limit.left, values), limit.overrun(values))
            for limit in self.limits
            if not limit.holds(values)
        )


def fit(
    order: Order, free: str, so_that: Sequence[str], aim: str = "", watch: Watch = lambda looked_at, all_: None
) -> Staged[Fit]:
    """The best garment for the order with these choices free.

    watch: is told, as the search goes on, how many garments it has looked at, and how many there are.
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
    nothing = {name: Quantity(Fraction(0), kind.dims) for name, kind in _kinds(usual.value).items()}
    return _Search(order, ready, aims.value, limits.value, nothing, trials, watch).run()


def _numbers(found: Solved) -> dict[str, Quantity]:
    return {name: derivation.value for name, derivation in found.values.items() if derivation.origin != "rule"}


def _kinds(found: Solved) -> Values:
    """A value of the right kind for every amount, to try the limits on before anything is planned."""
    priced = (each.value.currency for each in found.values.values() if each.origin == "material")
    currency = next(filter(None, priced), "EUR")
    dims = {SupplyKind.STARCH: VOLUME, SupplyKind.DYE: MASS, SupplyKind.ZIP: PLAIN, SupplyKind.FASTENING: PLAIN}
    kinds = {
        name: Quantity(Fraction(1), dims.get(material.material.kind, LENGTH))
        for name, material in found.materials.items()
    }
    return {**kinds, COST: money(1, currency), HOURS: number(1)}


@dataclass
class _Search:
    """Looks at garments in the order of what is wanted, each no closer than it must be.

    Three looks, each dearer than the one before: the numbers and the area of the cloth; the rehearsal with what it
    takes at least; the cutting plan. Of a garment only the values that are asked for are kept.
    """

    order: Order
    ready: Prepared
    aims: tuple[Aim, ...]
    limits: tuple[Limit, ...]
    nothing: Values  # of every amount, none
    trials: list[Trial]
    watch: Watch
    looked_at: int = 0
    rehearsed: int = 0
    planned: int = 0
    unsure: int = 0
    ruled_out: set[int] = field(default_factory=set)
    typed: dict[tuple[str, Quantity], Written] = field(default_factory=dict)
    share: dict[str, Fraction] = field(default_factory=dict)  # what the last plan took, of the least that it might

    def run(self) -> Staged[Fit]:
        best, passed = self._first(self._wanted, self.limits, BEST_WORK, likely=True)
        unsure = self.unsure
        nearest: Trial | None = None
        relax: tuple[Relaxed, ...] = ()
        if best is None:
            nearest, _ = self._first(self._missed_by, (), NEAREST_WORK)
            if nearest is None:
                faults = next((trial.faults for trial in self.trials if trial.faults), ())
                return Staged(None, faults)
            if not any(not limit.holds(nearest.exact or {}) for limit in self.limits):
                best, nearest = nearest, None
            else:
                relax = self._relaxed()
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
                sum(bool(trial.faults) for trial in self.trials),
                sum(self.trials[place].exact is None for place in self.ruled_out),
                self.planned,
                unsure,
            )
        )

    def _first(
        self, key: Callable[[Trial, Values], Key], limits: Iterable[Limit], work: int, *, likely: bool = False
    ) -> tuple[Trial | None, Trial | None]:
        """The trial with the smallest key that holds the limits, and the last one passed over before it.

        The key of `low` values is never above that of the exact ones: the first whose exact key comes out is the best.
        work: a rehearsal counts as one, a plan as several. Where it is used up, `unsure` counts the garments that
        were not reached. likely: then look for one among these that holds.
        """
        limits = tuple(limits)
        # The order is known at once when only free choices are wanted.
        at_once = key == self._wanted and all(aim.name in self.trials[0].choices for aim in self.aims)
        open_ = [
            (key(trial, trial.exact or trial.low or trial.choices), trial.place)
            for trial in self.trials
            if at_once or self._look(trial)
        ]
        heapify(open_)
        self.unsure, end = 0, self._work + work
        passed: Trial | None = None
        while open_:
            _, place = heappop(open_)
            trial = self.trials[place]
            if trial.exact is not None and all(limit.holds(trial.exact) for limit in limits):
                return trial, passed
            if trial.exact is None and self._work >= end:
                rest = [trial, *(self.trials[place] for _, place in sorted(open_))]
                self.unsure = sum(each.exact is None for each in rest)
                known = (each for each in rest if each.exact and all(limit.holds(each.exact) for limit in limits))
                found = next(known, None)
                return found or (self._likely(rest, limits) if likely else None), passed
            if trial.exact is None and self._closer(trial, limits):
                heappush(open_, (key(trial, trial.exact or trial.low or trial.choices), place))
            else:
                passed = trial
        return None, passed

    def _likely(self, rest: Iterable[Trial], limits: tuple[Limit, ...]) -> Trial | None:
        """One that holds: the first of those that would if they wasted as the one planned before.

        An earlier one may hold too, if it wastes less.
        """
        end = self._work + LIKELY_WORK
        tight = [limit for limit in limits if limit.only_grows]
        for trial in rest:
            if self._work >= end:
                return None
            while trial.exact is None:
                if trial.low is not None and not all(limit.holds(self._as_cut(trial.low)) for limit in tight):
                    break
                if not self._closer(trial, limits):
                    break
            if trial.exact is not None and all(limit.holds(trial.exact) for limit in limits):
                return trial
        return None

    def _as_cut(self, low: Values) -> Values:
        """The amounts as they would be if they were wasted as in the garment planned last."""
        return {name: Quantity(value.value * self.share.get(name, 1), value.dims) for name, value in low.items()}

    @property
    def _work(self) -> int:
        return self.rehearsed + PLAN_WORK * self.planned

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

            trial, _ = self._first(overrun, others, RELAX_WORK // len(self.limits))
            if trial is not None and trial.exact is not None:
                found.append(Relaxed(limit, value_of(limit.left, trial.exact), trial))
        return tuple(found)

    def _holds(self, trial: Trial, limits: tuple[Limit, ...]) -> bool:
        while trial.exact is None and self._closer(trial, limits):
            pass
        return trial.exact is not None and all(limit.holds(trial.exact) for limit in limits)

    def _closer(self, trial: Trial, limits: tuple[Limit, ...]) -> bool:
        """Looks at it one step closer. Whether it can still be sewn within the limits, for all that is known."""
        if trial.low is not None and not self._may_hold(trial, limits):
            return False
        look = self._look if trial.low is None else self._plan if trial.rehearsed else self._rehearse
        return look(trial) and (trial.exact is not None or self._may_hold(trial, limits))

    def _may_hold(self, trial: Trial, limits: tuple[Limit, ...]) -> bool:
        assert trial.low is not None
        holds = all(limit.holds(trial.low) for limit in limits if limit.only_grows)
        if not holds:
            self.ruled_out.add(trial.place)
        return holds

    def _look(self, trial: Trial) -> bool:
        """The numbers of the garment, and the least cloth that they can take."""
        if trial.low is None and not trial.faults:
            self.looked_at += 1
            self.watch(self.looked_at, len(self.trials))
            numbers = solved(self._order(trial), self.ready)
            low = cloth_at_least(numbers.value, self.order.room) if numbers.ok and numbers.value else None
            if low is None or low.value is None or numbers.value is None:
                trial.faults = _first_error(low.faults if low else numbers.faults)
            else:
                needs, cost = low.value
                least = {**self.nothing, **needs, COST: Quantity(cost, self.nothing[COST].dims)}
                trial.low = self._asked_for(numbers.value, least)
        return not trial.faults

    def _rehearse(self, trial: Trial) -> bool:
        """Whether it can be sewn, and the least of every amount. Not kept: most garments are not planned after it."""
        if not trial.rehearsed and not trial.faults:
            trial.rehearsed = True
            rehearsal = self._rehearsal(trial)
            low = at_least(rehearsal) if rehearsal else None
            if low is not None and low.value is not None and rehearsal is not None:
                trial.low = self._asked_for(rehearsal.solved, low.value)
            elif low is not None:
                trial.faults = _first_error(low.faults)
        return not trial.faults

    def _plan(self, trial: Trial) -> bool:
        rehearsal = self._rehearsal(trial)
        assert rehearsal is not None  # it was rehearsed before
        staged = plan(rehearsal)
        self.planned += 1
        if staged.value is None:
            trial.faults = _first_error(staged.faults)
        else:
            assert trial.low is not None
            trial.exact = self._asked_for(rehearsal.solved, amounts(staged.value.shopping))
            for name, low in trial.low.items():
                if name in self.nothing and low.value:
                    self.share[name] = trial.exact[name].value / low.value
        return trial.exact is not None

    def _rehearsal(self, trial: Trial) -> Rehearsal | None:
        self.rehearsed += 1
        staged = prove(self._order(trial), self.ready)
        if staged.value is None or has_errors(staged.faults):
            trial.faults = _first_error(staged.faults)
            return None
        return in_work_order(staged.value)

    def _order(self, trial: Trial) -> Order:
        written = {name: self._as_typed(name, value) for name, value in trial.choices.items()}
        return self.order._replace(choices={**self.order.choices, **written})

    def _as_typed(self, name: str, value: Quantity) -> Written:
        """A choice with this value; thousands of garments share a few of them."""
        if (name, value) not in self.typed:
            self.typed[name, value] = as_chosen(name, value, self.order.spec.system)
        return self.typed[name, value]

    def _asked_for(self, found: Solved, amounts: Values) -> Values:
        """Of all values those that the limits, the aims and the report name: a garment has hundreds."""
        names = {name for limit in self.limits for side in (limit.left, limit.right) for name in side.names}
        names |= {aim.name for aim in self.aims} | self.nothing.keys()
        # A number of the garment is only told, and so worked out in words, where it is asked for.
        values = {name: found.values[name].value for name in names if name not in amounts and name in found.values}
        return {**values, **{name: amounts[name] for name in names if name in amounts}}


def _first_error(faults: Iterable[Fault]) -> tuple[Fault, ...]:
    return next(((fault,) for fault in faults if fault.is_error), ())
