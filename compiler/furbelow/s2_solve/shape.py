"""Which pieces and steps a garment has for one body: repeats go as far as a choice says, and a count may be 0.

A piece that is left out keeps its sizes, so that formulas may go on naming it; it is not cut, and a step on it falls away.
In a list only its name does.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment.spec import (
    Arg,
    Condition,
    EdgeName,
    LayerName,
    Material,
    Piece,
    Spec,
    Step,
    Within,
    Word,
    Written,
    each_of,
)
from furbelow.measure.formula import EvaluationFault, evaluate, names_in
from furbelow.measure.quantity import Quantity
from furbelow.named import NamedTuple

_PIECE_KINDS, _NEW_EDGE = ("piece", "pieces"), "name"
_DEEPEST = 40  # measures that stand on measures; beyond, the value is left to the equations


class Shape(NamedTuple):
    """What is not made for this body: pieces by name, steps by index."""

    without: frozenset[str] = frozenset()
    skips: frozenset[int] = frozenset()


WHOLE = Shape()


def may_vary(spec: Spec) -> bool:
    """Whether anything of the spec may be left out; most specs are made whole."""
    return any(piece.count or piece.within for piece in spec.pieces.values()) or any(step.only for step in spec.steps)


def shape_of(spec: Spec, body: Mapping[str, Written], choices: Mapping[str, Written]) -> Shape:
    """What is left out for this body with these choices. What can't be known beforehand is there."""
    known = _Known(spec, {**body, **choices})
    without = {name for name, piece in spec.pieces.items() if _left_out(piece, known)}
    if not without and not any(step.only for step in spec.steps):
        return WHOLE
    gone, skips = set(without), set()
    for step in spec.steps:
        if all(known.holds(condition) for condition in step.only) and _rest(step, gone) is not None:
            continue
        skips.add(step.index)
        gone.update(
            arg.value.text for arg in step.args.values() if arg.kind == _NEW_EDGE and isinstance(arg.value, Word)
        )
    return Shape(frozenset(without), frozenset(skips))


def steps_left(spec: Spec, shape: Shape) -> tuple[Step, ...]:
    """The steps that are done, without the names of what is left out."""
    gone = shape.without | {
        arg.value.text
        for step in spec.steps
        if step.index in shape.skips
        for arg in step.args.values()
        if arg.kind == _NEW_EDGE and isinstance(arg.value, Word)
    }
    rests = (_rest(step, gone) for step in spec.steps if step.index not in shape.skips)
    return tuple(step for step in rests if step is not None)


def made(spec: Spec, shape: Shape) -> Spec:
    """The spec of what is made: its pieces, its steps, and the materials that these use."""
    if shape == WHOLE:
        return spec
    pieces = {name: piece for name, piece in spec.pieces.items() if name not in shape.without}
    steps = steps_left(spec, shape)
    hidden = {name: by for name, by in spec.worn.hidden.items() if name in pieces}
    idle = _used(spec.pieces, spec.steps) - _used(pieces, steps)
    materials: dict[str, Material] = {name: each for name, each in spec.materials.items() if name not in idle}
    return spec._replace(pieces=pieces, steps=steps, worn=spec.worn._replace(hidden=hidden), materials=materials)


def strange_conditions(spec: Spec) -> Iterator[Fault]:
    """FB173 for each condition that hangs on what is known only when the garment is worked out."""
    known = {*spec.body, *spec.choices, *spec.measures, *(f"{piece}.count" for piece in spec.pieces)}
    for written in dict.fromkeys(_written(spec)):
        for name in names_in(written.formula.root):
            if name.name not in known:
                span = written.span.inside(name.start, name.end - name.start)
                yield Fault(
                    "FB173",
                    f"`{name.name}` does not decide what is made: it is known only when all pieces are",
                    Label(span),
                    help="let it hang on choices, body measures, your own measures, or the count of a piece",
                )


def _written(spec: Spec) -> Iterator[Written]:
    conditions = [condition for step in spec.steps for condition in step.only]
    conditions += [piece.within for piece in spec.pieces.values() if piece.within]
    for condition in conditions:
        yield condition.most if isinstance(condition, Within) else condition


def _used(pieces: Mapping[str, Piece], steps: tuple[Step, ...]) -> set[str]:
    used = {piece.cloth.text for piece in pieces.values()}
    return used | {
        arg.value.text
        for step in steps
        for arg in step.args.values()
        if arg.kind == "material" and isinstance(arg.value, Word)
    }


def _left_out(piece: Piece, known: _Known) -> bool:
    if piece.within and not known.holds(piece.within):
        return True
    count = piece.count and known.value(piece.count)
    return isinstance(count, Quantity) and count.value == 0


def _rest(step: Step, gone: set[str] | frozenset[str]) -> Step | None:
    """The step without what is gone; None where nothing is left to do."""
    args: dict[str, Arg] = {}
    for name, arg in step.args.items():
        values = each_of(arg.value)
        left = tuple(value for value in values if not _is_gone(value, arg.kind, gone))
        if left == values:
            args[name] = arg
        elif arg.needed and not left:
            return None
        elif type(arg.value) is not tuple:
            return None  # what a single name stands for is what the step is about
        elif left:
            args[name] = arg._replace(value=left)  # type: ignore[arg-type]  # of the kind that it had
    worked = any(_names_cloth(arg) for arg in args.values())
    return step._replace(args=args) if worked or not any(map(_names_cloth, step.args.values())) else None


def _names_cloth(arg: Arg) -> bool:
    return arg.kind in _PIECE_KINDS or any(isinstance(value, EdgeName | LayerName) for value in each_of(arg.value))


def _is_gone(value: Written | EdgeName | Word | LayerName, kind: str, gone: set[str] | frozenset[str]) -> bool:
    match value:
        case EdgeName():
            return value.piece in gone
        case LayerName():
            return value.edge.piece in gone
        case Word() if kind in _PIECE_KINDS:
            return value.text in gone
    return False


class _Known:
    """Values that hang on the body and the choices alone."""

    def __init__(self, spec: Spec, given: Mapping[str, Written]) -> None:
        self._spec = spec
        self._given = given
        self._deep = 0

    def holds(self, condition: Condition) -> bool:
        if isinstance(condition, Within):
            most = self.value(condition.most)
            return not isinstance(most, Quantity) or Fraction(condition.number) <= most.value
        return self.value(condition) is not False

    def value(self, written: Written) -> Quantity | bool | EvaluationFault:
        return evaluate(written.formula, self._look_up, self._spec.system)

    def _look_up(self, name: str) -> Quantity:
        spec = self._spec
        piece, _, size = name.partition(".")
        written = self._given.get(name)
        if written is None and name in spec.choices:
            written = spec.choices[name].default
        if written is None and name in spec.measures:
            written = spec.measures[name].value
        if written is None and size == "count" and piece in spec.pieces:
            within = spec.pieces[piece].within
            if within and not self.holds(within):
                return Quantity(Fraction(0), ())
            written = spec.pieces[piece].count
            if written is None:
                return Quantity(Fraction(1), ())
        if written is None or self._deep >= _DEEPEST:
            raise KeyError(name)
        self._deep += 1
        try:
            value = self.value(written)
        finally:
            self._deep -= 1
        if not isinstance(value, Quantity):
            raise KeyError(name)
        return value
