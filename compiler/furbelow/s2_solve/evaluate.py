"""One value from its equation: evaluated, measured against what it must be, rounded where it is cut."""

from __future__ import annotations

from collections.abc import Iterator

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment.solved import Rounded
from furbelow.garment.spec import Written
from furbelow.measure.formula import EvaluationFault, evaluate, spelled_out, substitute_text
from furbelow.measure.formula_parser import COMPARISONS
from furbelow.measure.formula_tree import Amount, Infix, Prefix, Term
from furbelow.measure.quantity import Quantity, System, mm, number
from furbelow.measure.units import LENGTH, PLAIN
from furbelow.s2_solve.equations import ROUNDING, Cut, Equation, Fixed, Sum
from furbelow.s2_solve.rounding import cut_up_to


class Evaluation:
    """The values so far, what rounding changed, and the faults, each with the name that it befell."""

    def __init__(
        self,
        system: System,
        values: dict[str, Quantity] | None = None,
        rounded: dict[str, Rounded] | None = None,
        faults: list[tuple[str, Fault]] | None = None,
    ) -> None:
        self.system = system
        self.values = {} if values is None else values
        self.rounded = {} if rounded is None else rounded
        self.faults = [] if faults is None else faults

    def evaluate(self, equation: Equation) -> None:
        """Add the value of the equation; in silence nothing when a value that it needs is missing."""
        says = equation.says
        if says is None or not all(map(self.values.__contains__, equation.needs)):
            return
        value: Quantity | bool | EvaluationFault
        if isinstance(says, Written):
            value = evaluate(says.formula, self.values.__getitem__, self.system)
        else:
            value = says.total(self.values) if isinstance(says, Sum) else says.quantity
        if isinstance(value, EvaluationFault):
            self._tell(equation, self._unworkable(equation, value))
        elif isinstance(value, bool):
            self.values[equation.name] = number(int(value))
            if not value:
                self._tell(equation, self._broken(equation))
        elif fault := self._unfit(equation, value):
            self._tell(equation, fault)
        else:
            self.values[equation.name] = self._cut(equation.name, equation.cut, value) if equation.cut else value

    def show(self, name: str) -> str:
        return self.values[name].show(self.system)

    def put_in(self, says: Written | Sum | Fixed) -> str:
        """What the equation says, with the values in place of the names."""
        if isinstance(says, Fixed):
            return says.quantity.show(self.system)
        if isinstance(says, Sum):
            return says.text({name: self.show(name) for _, name in says.terms})
        return substitute_text(says.formula, {name: self.show(name) for name in says.formula.names})

    def _tell(self, equation: Equation, fault: Fault) -> None:
        self.faults.append((equation.name, fault))

    def _cut(self, name: str, cut: Cut, value: Quantity) -> Quantity:
        step, takes = self.values[ROUNDING].value, sum(self.values[taken].value for taken in cut.takes)
        before = cut.share * value.value + takes
        after = cut_up_to(before, step)
        if after == before:
            return value
        size = (after - takes) / cut.share
        self.rounded[name] = Rounded(step, before, after, *((value.value, size) if cut.finished else ()))
        return mm(size)

    def _unworkable(self, equation: Equation, found: EvaluationFault) -> Fault:
        assert isinstance(equation.says, Written)
        span = equation.says.span.inside(found.offset, found.length)
        headline = f"`{equation.name}` can't be worked out: {found.message}"
        return Fault("FB202", headline, Label(span), notes=self._arithmetic(equation), help=found.help)

    def _unfit(self, equation: Equation, value: Quantity) -> Fault | None:
        if misfit := equation.kind.misfit(value):
            code, headline = "FB207", f"`{equation.name}` {misfit}: {value.show(self.system)}"
        elif outside := equation.kind.outside(value):
            code, headline = (
                "FB208",
                f"`{equation.name}` comes out at {value.show(self.system)} and {outside}",
            )
        else:
            return None
        label = Label(equation.span) if equation.span else None
        help_ = self._mend(equation) if code == "FB207" else _larger(equation)
        return Fault(code, headline, label, notes=self._arithmetic(equation), help=help_)

    def _mend(self, equation: Equation) -> str | None:
        """What to write in place of a value of the wrong kind."""
        if not isinstance(equation.says, Written):
            return None
        root = equation.says.formula.root
        if isinstance(root, Amount) and root.quantity.dims == PLAIN and equation.kind.dims == (LENGTH,):
            return f"write the unit: `{equation.says.text} {'in' if self.system == 'inch' else 'cm'}`"
        return f"write it as in `{equation.kind.like}`" if equation.kind.like else None

    def _arithmetic(self, equation: Equation) -> tuple[str, ...]:
        if not equation.needs or equation.says is None:
            return ()
        said, worked = text_of(equation), self.put_in(equation.says)
        return (f"{said} = {worked}",) if said != worked else ()

    def _broken(self, equation: Equation) -> Fault:
        assert isinstance(equation.says, Written)
        formula = equation.says.formula
        notes = []
        for term in _comparisons(formula.root):
            (left, left_said), (right, right_said) = (self._side(equation.says, t) for t in (term.left, term.right))
            apart = abs(left - right).show(self.system)
            less = f", {apart} {'less' if left < right else 'more'}" if left != right else ", the same"
            notes.append(f"{left_said} and {right_said}{less}")
        headline = " ".join(equation.message.split()).rstrip(".")
        label = Label(equation.says.span, "this rule does not hold")
        return Fault("FB216", headline, label, notes=tuple(notes))

    def _side(self, says: Written, term: Term) -> tuple[Quantity, str]:
        """The value of one side of a comparison, and as it is said: "flounce.depth is 12 cm"."""
        text = says.formula.text[term.start : term.end]
        value = evaluate(says.formula._replace(root=term, is_check=False), self.values.__getitem__, self.system)
        assert isinstance(value, Quantity)
        shown = value.show(self.system)
        return value, shown if shown == text else f"{text} is {shown}"


def _larger(equation: Equation) -> str:
    """What to do about a value that is too small, too large or not whole."""
    like = f", like `{equation.kind.like}`" if equation.kind.like else ""
    return "change a number that it is worked out from" if equation.needs else f"write another value{like}"


def text_of(equation: Equation) -> str:
    """What fixes the value, as a formula in names; empty where a rule of ours fixes it."""
    says = equation.says
    if isinstance(says, Written):
        return spelled_out(says.formula)
    if isinstance(says, Sum):
        return says.text({})
    return ""


def _comparisons(term: Term) -> Iterator[Infix]:
    match term:
        case Infix(sign=sign) if sign in COMPARISONS:
            yield term
        case Infix():
            yield from _comparisons(term.left)
            yield from _comparisons(term.right)
        case Prefix():
            yield from _comparisons(term.operand)
