"""From a spec and a body to every measurement of the garment.

What does not hang on the body is done once, in `prepare`; `Prepared.solve` then takes one body after another.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Staged, in_reading_order
from furbelow.garment.bias import BiasStrip
from furbelow.garment.gore import Gore
from furbelow.garment.ring_sector import RingSector
from furbelow.garment.solved import Allowance, Solved, SolvedMaterial, SolvedPiece, SolvedStep
from furbelow.garment.spec import Spec, Step, Written
from furbelow.measure.quantity import Quantity
from furbelow.named import NamedTuple
from furbelow.s2_solve import kinds
from furbelow.s2_solve.agreement import disagreements
from furbelow.s2_solve.body import missing_measures, out_of_range, unknown_choices
from furbelow.s2_solve.currencies import other_currencies
from furbelow.s2_solve.derivations import Derivations
from furbelow.s2_solve.equations import (
    Equation,
    Equations,
    choice_equation,
    equations_of,
    step_name,
)
from furbelow.s2_solve.evaluate import Evaluation
from furbelow.s2_solve.on_selvedge import not_on_selvedge
from furbelow.s2_solve.shape import WHOLE, Shape, made, may_vary, shape_of, strange_conditions
from furbelow.s2_solve.shaped import shape_of_piece
from furbelow.s2_solve.structure import structure_of


def prepare(
    spec: Spec,
    takes: Mapping[int, tuple[Allowance, ...]],
    rounding: Fraction | None = None,
    given: Mapping[str, Written] | None = None,
    shape: Shape = WHOLE,
) -> Prepared:
    """The spec checked in structure, in the order to work in, with all that is the same for every body done.

    takes: what each step takes of the pieces, by the index of the step.
    rounding: the workroom's step for cut sizes in mm, 0 for none; None leaves it to the spec.
    given: body measures and choices whose value is itself a formula in names.
    shape: what is left out.
    """
    given = given or {}
    equations = equations_of(spec, takes, rounding, given, shape)
    structure = structure_of(equations.all, spec)
    workings = Evaluation(spec.system)
    waiting: list[Equation] = []
    # Measures and choices wait for the body, and so does all that stands on them.
    varied = {*spec.body, *spec.choices}
    for equation in structure.order:
        if equation.name in varied or not varied.isdisjoint(equation.needs):
            varied.add(equation.name)
            waiting.append(equation)
        else:
            workings.evaluate(equation)
    faults = (
        *strange_conditions(spec),
        *equations.faults,
        *structure.faults,
        *(fault for name, fault in workings.faults if _owner(name) not in shape.without),
    )
    return Prepared(spec, takes, rounding, given, equations, tuple(waiting), workings, faults, shape)


def _owner(name: str) -> str:
    """The piece whose size has this name."""
    return name.partition(".")[0].partition(" ")[0]


class Prepared(NamedTuple):
    """A spec ready for bodies. `waiting` hangs on the body, `done` does not; `faults` are the spec's own."""

    spec: Spec
    takes: Mapping[int, tuple[Allowance, ...]]
    rounding: Fraction | None
    given: Mapping[str, Written]
    equations: Equations
    waiting: tuple[Equation, ...]
    done: Evaluation
    faults: tuple[Fault, ...]
    shape: Shape = WHOLE

    def solve(self, wearer: str, body: Mapping[str, Written], choices: Mapping[str, Written]) -> Staged[Solved]:
        """Every measurement of the garment for one body, and all faults met on the way.

        wearer: who the garment is for, as the faults say it: "size M", "Bo".
        choices: the choices made; the others keep their defaults.
        The value is None when a piece, step or material has no measurement.
        """
        given = {name: written for name, written in body.items() if name in self.spec.body}
        given |= {name: written for name, written in choices.items() if name in self.spec.choices}
        formulas = {name: written for name, written in given.items() if written.formula.names}
        shape = shape_of(self.spec, body, given) if may_vary(self.spec) else WHOLE
        if formulas != self.given or shape != self.shape:
            # The order may be another when a wearer's measure hangs on other names.
            return prepare(self.spec, self.takes, self.rounding, formulas, shape).solve(wearer, body, choices)
        workings = Evaluation(self.done.system, dict(self.done.values), dict(self.done.rounded))
        own = {name: self._given(name, written) for name, written in given.items()}
        for equation in self.waiting:
            workings.evaluate(own.get(equation.name, equation))
        faults = [
            *self.faults,
            *missing_measures(self.spec, wearer, body),
            *unknown_choices(self.spec, choices),
        ]
        astray = list(out_of_range(self.spec, wearer, given, workings))
        workings.faults += disagreements(self.equations, workings)
        workings.faults += other_currencies(self.equations, workings)
        if workings.faults:
            hidden = self._standing_on({name for name, _ in astray})
            faults += [
                fault
                for name, fault in workings.faults
                if name not in hidden and _owner(name) not in self.shape.without
            ]
        faults += [fault for _, fault in astray]
        found = self._solved(wearer, own, workings)
        if found is None and not faults:
            # What is left out has no size, and something that is made stands on it.
            faults += [fault for _, fault in workings.faults]
        faults += not_on_selvedge(found) if found else ()
        return Staged(found, in_reading_order(faults))

    def _given(self, name: str, written: Written) -> Equation:
        if name in self.spec.choices:
            return choice_equation(self.spec.choices[name], written)
        return Equation(name, "body", written.span, written, kinds.SOME_LENGTH)

    def _standing_on(self, names: set[str]) -> set[str]:
        """The names that are worked out from these."""
        found = set(names)
        for equation in self.waiting:
            if not found.isdisjoint(equation.needs):
                found.add(equation.name)
        return found - names

    def _solved(self, wearer: str, own: Mapping[str, Equation], workings: Evaluation) -> Solved | None:
        values, spec = workings.values, made(self.spec, self.shape)
        try:
            pieces = {name: self._piece(name, values, spec.steps) for name in spec.pieces}
            materials = {
                name: SolvedMaterial(
                    material,
                    {key: values[f"{name}.{key.replace(' ', '_')}"] for key in material.amounts},
                )
                for name, material in spec.materials.items()
            }
            steps = tuple(
                SolvedStep(
                    step,
                    {
                        argument.name: values[step_name(step, argument.name)]
                        for argument in step.args.values()
                        if isinstance(argument.value, Written)
                    },
                )
                for step in spec.steps
            )
            rounding = values["rounding"].as_length_mm()
        except KeyError:
            return None
        explained = Derivations({**self.equations.by_name, **own}, workings)
        return Solved(spec, wearer, rounding, explained, pieces, materials, steps, values)

    def _piece(self, name: str, values: Mapping[str, Quantity], steps: tuple[Step, ...]) -> SolvedPiece:
        cut = (values[f"{name}.cut_length"].value, values[f"{name}.cut_depth"].value)
        shape = shape_of_piece(self.spec, name, values, steps, self.takes)
        blank = cut
        if isinstance(shape, RingSector):
            blank = shape.blank(values["rounding"].value)
        elif isinstance(shape, Gore):
            blank = shape.blank
        elif isinstance(shape, BiasStrip):
            side = shape.side(values["rounding"].value)
            blank = (side, side)
        return SolvedPiece(
            piece=self.spec.pieces[name],
            count=int(values[f"{name}.count"].as_number()),
            length=values[f"{name}.length"].value,
            cut_length=cut[0],
            depth=values[f"{name}.depth"].value,
            cut_depth=cut[1],
            folded=name in self.equations.folded,
            blank=blank,
            ring=shape if isinstance(shape, RingSector) else None,
            gore=shape if isinstance(shape, Gore) else None,
            bias=shape if isinstance(shape, BiasStrip) else None,
        )
