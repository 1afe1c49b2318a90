"""The reason for every number, put into words only when somebody asks."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from furbelow.garment.solved import Derivation
from furbelow.s2_solve.equations import ROUNDING, Equation, Fixed
from furbelow.s2_solve.evaluate import Evaluation, text_of


class Derivations(Mapping[str, Derivation]):
    """A derivation for every value that was worked out, by name."""

    def __init__(self, equations: Mapping[str, Equation], workings: Evaluation) -> None:
        self._equations = equations
        self._workings = workings
        self._told: dict[str, Derivation] = {}

    def __getitem__(self, name: str) -> Derivation:
        if name not in self._told:
            self._told[name] = self._tell(name)
        return self._told[name]

    def __iter__(self) -> Iterator[str]:
        return iter(self._workings.values)

    def __len__(self) -> int:
        return len(self._workings.values)

    def __contains__(self, name: object) -> bool:
        return name in self._workings.values

    def _tell(self, name: str) -> Derivation:
        value, equation = self._workings.values[name], self._equations[name]
        assert equation.says is not None
        rounded = self._workings.rounded.get(name)
        # What the steps take moved the size only where the cut size was rounded.
        unmoved = (ROUNDING,) if rounded else (ROUNDING, *(equation.cut.takes if equation.cut else ()))
        return Derivation(
            name=name,
            value=value,
            formula=text_of(equation),
            with_values=self._workings.put_in(equation.says),
            inputs=tuple(need for need in equation.needs if need not in unmoved),
            rounded=rounded,
            span=equation.span,
            origin=equation.origin,
            because=equation.says.because if isinstance(equation.says, Fixed) else None,
        )
