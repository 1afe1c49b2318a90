"""Every value of a garment with the one line that fixes it, before anything is worked out."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from functools import cached_property

from furbelow.diagnose.fault import Fault, Label, Span
from furbelow.garment.solved import Allowance, Because
from furbelow.garment.spec import Choice, Material, Piece, Spec, Step, Written
from furbelow.measure.quantity import Quantity, mm, number
from furbelow.named import NamedTuple
from furbelow.s2_solve import kinds
from furbelow.s2_solve.kinds import Kind
from furbelow.s2_solve.shape import WHOLE, Shape, steps_left


class Sum(NamedTuple):
    """Named lengths, each so many times, together divided by `over`: `2 * band.depth + band.top_takes`."""

    terms: tuple[tuple[int, str], ...]
    over: int = 1

    def total(self, values: Mapping[str, Quantity]) -> Quantity:
        """The sum in mm. Every name must be a length, which the equation of each has seen to."""
        total = Fraction(0)
        for times, name in self.terms:
            # Most lengths count once, and exact products take time.
            total += values[name].value if times == 1 else times * values[name].value
        return mm(total if self.over == 1 else total / self.over)

    def text(self, shown: Mapping[str, str]) -> str:
        """The sum as a formula, with what is shown for each name."""
        said = ""
        for times, name in self.terms:
            sign = " - " if times < 0 else " + " if said else ""
            said += sign + ("" if abs(times) == 1 else f"{abs(times)} * ") + shown.get(name, name)
        if self.over == 1:
            return said
        return f"({said}) / {self.over}" if len(self.terms) > 1 else f"{said} / {self.over}"


class Fixed(NamedTuple):
    """A value that no line of the spec gives, and why."""

    quantity: Quantity
    because: Because


class Cut(NamedTuple):
    """How a size becomes a cut size, which is rounded up: `share` times the size and what the steps take."""

    takes: tuple[str, ...] = ()
    share: int = 1
    finished: bool = True  # whether the size is the finished one


class _Equation(NamedTuple):
    name: str
    origin: str
    span: Span | None
    says: Written | Sum | Fixed | None
    kind: Kind
    cut: Cut | None = None
    message: str = ""  # of a rule: what the maker says when it is broken


class Equation(_Equation):
    """One value and what fixes it. `says` is None where the wearer has yet to give it."""

    @cached_property
    def needs(self) -> tuple[str, ...]:
        """The names that it stands on."""
        says = self.says
        needs: tuple[str, ...] = ()
        if isinstance(says, Written):
            needs = tuple(sorted(says.formula.names))
        elif isinstance(says, Sum):
            needs = tuple(name for _, name in says.terms)
        if self.cut:
            needs = (*needs, *self.cut.takes, ROUNDING)
        return tuple(dict.fromkeys(needs))


class Agreement(NamedTuple):
    """A size written twice, finished and cut: `expected`, from the finished one, must be the cut one."""

    piece: str
    size: str  # length or depth
    cut: str
    finished: str
    expected: Sum


ROUNDING = "rounding"
BY_WORKROOM = Because("reason-workroom")
ONE = Because("reason-one")
NONE = Because("reason-none")
SIZES = ("length", "depth")
ATTRIBUTES = ("length", "depth", "cut_length", "cut_depth", "count")
_SIDES = {"length": ("start", "end"), "depth": ("top", "bottom")}


def step_name(step: Step, argument: str) -> str:
    """The name of a step's amount, counted from 1 as in the guide: `step 3.turn up`."""
    return f"step {step.index + 1}.{argument}"


class _Equations(NamedTuple):
    all: tuple[Equation, ...]
    agreements: tuple[Agreement, ...]
    folded: frozenset[str]
    faults: tuple[Fault, ...]


class Equations(_Equations):
    """All equations of a spec, those written twice included, and the faults of sizes fixed by nothing."""

    @cached_property
    def by_name(self) -> Mapping[str, Equation]:
        return {equation.name: equation for equation in self.all}


def equations_of(
    spec: Spec,
    takes: Mapping[int, tuple[Allowance, ...]],
    rounding: Fraction | None,
    given: Mapping[str, Written],
    shape: Shape = WHOLE,
) -> Equations:
    """The equations of a spec.

    takes: what each step takes of the pieces, by the index of the step.
    rounding: the workroom's step in mm, which goes before the spec's.
    given: body measures and choices whose value for this wearer is itself a formula.
    shape: what is left out for this body.
    """
    done = steps_left(spec, shape)
    found: list[Equation] = [_rounding(spec, rounding)]
    for measure in spec.body.values():
        written = given.get(measure.name)
        span = written.span if written else measure.span
        found.append(Equation(measure.name, "body", span, written, kinds.SOME_LENGTH))
        found += _bounds(measure.name, "body", {"from": measure.low, "to": measure.high})
    for choice in spec.choices.values():
        found.append(choice_equation(choice, given.get(choice.name, choice.default)))
        found += _bounds(choice.name, "choice", {"from": choice.low, "to": choice.high, "step": choice.step})
    for own in spec.measures.values():
        found.append(Equation(own.name, "measure", own.value.span, own.value, kinds.ANYTHING))
    found += _worn(spec)
    for material in spec.materials.values():
        found += _material(material)
    taken, folded = _taken(spec, done, takes)
    agreements: list[Agreement] = []
    faults: list[Fault] = []
    for piece in spec.pieces.values():
        found += _count_and_piecing(piece, left_out=piece.name in shape.without)
        for size in SIZES:
            share = 2 if size == "depth" and piece.name in folded else 1
            names = tuple(name for side in _SIDES[size] if (name := _takes_name(piece.name, side)) in taken)
            found += _size(piece, size, names, share, agreements, faults)
    found += taken.values()
    for step in done:
        found += _amounts(step, takes.get(step.index, ()))
    for count, rule in enumerate(spec.rules, 1):
        name = f"rule {count}"
        check = rule.check
        found.append(Equation(name, "rule", check.span, check, kinds.ANYTHING, message=rule.message))
    return Equations(tuple(found), tuple(agreements), folded, tuple(faults))


def choice_equation(choice: Choice, written: Written) -> Equation:
    return Equation(choice.name, "choice", written.span, written, kinds.ANYTHING)


def _rounding(spec: Spec, rounding: Fraction | None) -> Equation:
    if rounding is None:
        return Equation(ROUNDING, "measure", spec.rounding.span, spec.rounding, kinds.NO_NEGATIVE_LENGTH)
    fixed = Fixed(mm(rounding), BY_WORKROOM)
    return Equation(ROUNDING, "measure", None, fixed, kinds.NO_NEGATIVE_LENGTH)


def _bounds(name: str, origin: str, bounds: Mapping[str, Written | None]) -> Iterator[Equation]:
    kind = kinds.A_LENGTH if origin == "body" else kinds.ANYTHING
    for bound, written in bounds.items():
        if written:
            yield Equation(f"{name} {bound}", origin, written.span, written, kind)


def _worn(spec: Spec) -> Iterator[Equation]:
    worn = spec.worn
    lines = {
        "worn.over": (worn.over, kinds.SOME_LENGTH),
        "worn.ease": (worn.ease, kinds.A_LENGTH),
        "worn.length": (worn.length, kinds.SOME_LENGTH),
    } | {f"worn.hidden.{piece}": (by, kinds.NO_NEGATIVE_LENGTH) for piece, by in worn.hidden.items()}
    for name, (written, kind) in lines.items():
        if written:
            yield Equation(name, "measure", written.span, written, kind)


def _material(material: Material) -> Iterator[Equation]:
    for key, written in material.amounts.items():
        key = key.replace(" ", "_")
        kind = kinds.kind_of_amount(key, material)
        yield Equation(f"{material.name}.{key}", "material", written.span, written, kind)
    for count, offer in enumerate(material.offers, 1):
        name = f"{material.name} offer {count}"
        yield Equation(f"{name}.width", "material", offer.width.span, offer.width, kinds.SOME_LENGTH)
        if offer.price:
            yield Equation(f"{name}.price", "material", offer.price.span, offer.price, kinds.CLOTH_PRICE)


def _takes_name(piece: str, side: str) -> str:
    return f"{piece}.{side}_takes"


def _taken(
    spec: Spec, steps: tuple[Step, ...], takes: Mapping[int, tuple[Allowance, ...]]
) -> tuple[dict[str, Equation], frozenset[str]]:
    """What the steps take at each edge that they take anything of, and the pieces that are folded."""
    found: dict[str, tuple[Span, dict[str, int]]] = {}
    folded: set[str] = set()
    for step in steps:
        for taking in takes.get(step.index, ()):
            # A piece that no line describes is the reader's fault to tell.
            if taking.piece not in spec.pieces:
                continue
            if taking.doubles:
                folded.add(taking.piece)
            for argument in taking.args:
                if argument not in step.args:
                    raise LookupError(f"step {step.index + 1} takes `{argument}`, which it does not have")
                name, term = _takes_name(taking.piece, taking.side), step_name(step, argument)
                _, times = found.setdefault(name, (step.span, {}))
                times[term] = times.get(term, 0) + 1
    equations = {}
    for name, (span, times) in found.items():
        says = Sum(tuple((count, term) for term, count in times.items()))
        equations[name] = Equation(name, "allowance", span, says, kinds.NO_NEGATIVE_LENGTH)
    return equations, frozenset(folded)


def _count_and_piecing(piece: Piece, *, left_out: bool) -> Iterator[Equation]:
    says: Written | Fixed = piece.count or Fixed(number(1), ONE)
    if left_out and piece.within:
        says = Fixed(number(0), NONE)
    span = piece.count.span if piece.count else piece.span
    yield Equation(f"{piece.name}.count", "piece", span, says, kinds.NO_COUNT if left_out else kinds.A_COUNT)
    if piecing := piece.piecing:
        name = f"{piece.name} piecing"
        yield Equation(f"{name}.seam", "piece", piecing.seam.span, piecing.seam, kinds.NO_NEGATIVE_LENGTH)
        yield Equation(f"{name}.shortest", "piece", piecing.shortest.span, piecing.shortest, kinds.NO_NEGATIVE_LENGTH)
        yield Equation(f"{name}.most_joins", "piece", piecing.most_joins.span, piecing.most_joins, kinds.JOINS)


def _size(
    piece: Piece,
    size: str,
    takes: tuple[str, ...],
    share: int,
    agreements: list[Agreement],
    faults: list[Fault],
) -> Iterator[Equation]:
    """Length or depth, finished and cut, by whichever of the two is written."""
    finished: Written | None = getattr(piece, size)
    cut: Written | None = getattr(piece, f"cut_{size}")
    finished_name, cut_name = f"{piece.name}.{size}", f"{piece.name}.cut_{size}"
    from_finished = Sum(((share, finished_name), *((1, name) for name in takes)))
    from_cut = Sum(((1, cut_name), *((-1, name) for name in takes)), over=share)
    some = kinds.PIECE_SIZE
    if finished and not cut:
        yield Equation(finished_name, "piece", finished.span, finished, some, Cut(takes, share))
        yield Equation(cut_name, "piece", finished.span, from_finished, some)
    elif cut and not finished:
        yield Equation(cut_name, "piece", cut.span, cut, some, None if piece.lies_cut else Cut(finished=False))
        yield Equation(finished_name, "piece", cut.span, from_cut, some)
    elif cut and finished:
        first, second = f"{finished_name} as written", f"{cut_name} as written"
        yield Equation(first, "piece", finished.span, finished, some)
        yield Equation(second, "piece", cut.span, cut, some)
        yield Equation(cut_name, "piece", cut.span, Sum(((1, second),)), some, Cut(finished=False))
        yield Equation(finished_name, "piece", finished.span, from_cut, some)
        expected = Sum(((share, first), *((1, name) for name in takes)))
        agreements.append(Agreement(piece.name, size, second, first, expected))
    else:
        faults.append(
            Fault(
                "FB205",
                f"nothing fixes the {size} of `{piece.name}`",
                Label(piece.span, f"this piece has no {size}"),
                help=f"write `{size}:`, the size when finished, or `cut {size}:`",
            )
        )


def _amounts(step: Step, takes: tuple[Allowance, ...]) -> Iterator[Equation]:
    taken = {argument for taking in takes for argument in taking.args}
    by_word = {"length": kinds.NO_NEGATIVE_LENGTH, "number": kinds.A_NUMBER}
    for argument in step.args.values():
        if isinstance(argument.value, Written):
            # What a step takes is a length, even where the technique does not say so.
            word = "length" if argument.name in taken else argument.kind
            kind = by_word.get(word, kinds.LENGTH_OR_NUMBER)
            yield Equation(step_name(step, argument.name), "step", argument.value.span, argument.value, kind)
