"""The reasons of a guide's numbers: what `furbelow why` says, in words for a reader who has not seen the spec."""

from __future__ import annotations

import os
import re
from collections.abc import Mapping, Sequence
from fractions import Fraction

from furbelow.garment.bench import Casing
from furbelow.garment.solved import Derivation, Solved
from furbelow.garment.spec import EdgeName
from furbelow.garment.technique import Performed
from furbelow.s2_solve.equations import step_name
from furbelow.s3_rehearse.finished_garment import reasons_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.guide.guide import CutLine, Fact, Part, Reason


def reasons(run: Run, facts: Sequence[Fact], cutting: Sequence[CutLine], parts: Sequence[Part]) -> tuple[Reason, ...]:
    """A reason for each number that these name, and for every number that it stands on, each once."""
    values, whole = run.solved.values, reasons_of(run)
    operations = [operation for part in parts for operation in part.operations]
    words = _Words(run.solved, {operation.key: operation.title for operation in operations})
    named = [fact.name for fact in facts]
    named += [name for line in cutting for name in line.why]
    named += [name for operation in operations for name in operation.why]
    told: dict[str, Reason] = {}
    left = named[::-1]
    while left:
        name = left.pop()
        if name not in told and (name in values or name in whole):
            told[name] = words.reason(values[name] if name in values else whole[name])
            left += told[name].inputs[::-1]
    return tuple(told.values())


def name_of(solved: Solved, name: str, length: Fraction) -> str:
    """The name, where that number has this length; else empty: an edge may be taken from several pieces, or tucked."""
    return name if name in solved.values and solved.length(name) == length else ""


def elastic_name(run: Run, casing: Casing) -> str:
    """The name of the length that the elastic of a casing is closed to; empty where no step gives it."""
    steps = (done.step for done in run.performed if "elastic" in done.step.written.args)
    names = (name_of(run.solved, step_name(step.written, "length"), casing.elastic_length) for step in steps)
    return next(filter(None, names), "")


def numbers_of(done: Performed, solved: Solved) -> tuple[str, ...]:
    """The names of the numbers in a step that come from others: its own formulas, and a length that it gathers to."""
    own = (step_name(done.step.written, amount) for amount in done.step.amounts)
    found = [name for name in own if name in solved.values and solved.values[name].inputs]
    target = done.step.written.args.get("to")
    if done.drawn and target is not None and isinstance(target.value, EdgeName):
        found.append(name_of(solved, f"{target.value.piece}.length", done.drawn.length))
    return tuple(filter(None, found))


class _Words:
    """A reader's words for what the solver says. titles: of the operations, by their key."""

    def __init__(self, solved: Solved, titles: Mapping[str, str]) -> None:
        self._solved = solved
        self._titles = titles

    def reason(self, derivation: Derivation) -> Reason:
        operation, place = self._operation(derivation), self._place(derivation)
        value, label = derivation.value.show(self._solved.spec.system), self._label(derivation.name)
        if derivation.origin == "step" and derivation.inputs and (title := self._titles.get(_key(derivation.name))):
            label = f"{label} for “{title}”"
        return Reason(
            name=derivation.name,
            label=label,
            value=value,
            told=self._told(derivation, value, place, self._titles.get(operation, "")),
            formula=derivation.formula,
            with_numbers=derivation.with_values,
            rounding=derivation.rounding,
            place=place,
            operation=operation,
            inputs=derivation.inputs,
        )

    def _place(self, derivation: Derivation) -> str:
        span = derivation.span
        # A body's file is nobody's business, nor is the folder that a spec lies in.
        if span is None or span.file != self._solved.spec.file or derivation.origin == "body":
            return ""
        return f"line {span.start_line} of {os.path.basename(span.file)}"

    def _operation(self, derivation: Derivation) -> str:
        """The key of the operation that the number, or the one number that it is the same as, is written for."""
        if derivation.inputs and not _is_same(derivation):
            return ""
        key = _key(derivation.formula if _is_same(derivation) else derivation.name)
        return key if key in self._titles else ""

    def _told(self, derivation: Derivation, value: str, place: str, title: str) -> str:
        formula = derivation.formula
        if _is_same(derivation):
            same = self._label(formula)
            return f"the {same} of “{title}”" if title else f"the same as the {same}"
        if derivation.inputs:
            result = "" if derivation.rounding else f" = {value}"
            return f"{self._in_words(derivation)} = {_signs(derivation.with_values)}{result}"
        if not _DIGIT.search(formula):
            return formula  # "one, as no count is written"
        if derivation.name not in self._solved.values:
            return f"{_signs(derivation.with_values)} = {value}"
        if derivation.origin == "body":
            return "a body measure"
        if derivation.origin == "choice":
            return f"a choice, {place}" if place else "a choice made for this guide"
        wherefore = f" for “{title}”" if title else ""
        as_it_is = "" if formula == value else f" as {_signs(formula)}"
        return f"written{wherefore}{as_it_is}{f' on {place}' if place else ''}"

    def _label(self, name: str, beside: str = "") -> str:
        """A name in plain words: "cut depth of the flounce"; without the piece in a sum about that same piece."""
        owner, _, own = name.rpartition(".")
        pieces, said = self._solved.pieces, own.replace("_", " ")
        if owner in pieces:
            said = _MEASURES.get(own, said)
            return said if owner == beside else f"{said} of the {pieces[owner].label}"
        if owner in self._solved.materials:
            return f"{_MEASURES.get(own, said)} of the {owner.replace('_', ' ')}"
        return said

    def _in_words(self, derivation: Derivation) -> str:
        """The formula with each name in plain words and each sign as it is written on paper."""
        piece, inputs = derivation.name.partition(".")[0], derivation.inputs

        def said(name: re.Match[str]) -> str:
            return self._label(name.group(), piece) if name.group() in inputs else name.group()

        return _signs(_NAME.sub(said, " ".join(derivation.formula.split())))


def _key(name: str) -> str:
    """The key of the operation of `step 3.seam`."""
    return name.partition(".")[0].replace(" ", "-")


def _is_same(derivation: Derivation) -> bool:
    return derivation.inputs == (derivation.formula,)


_DIGIT = re.compile(r"\d")
_NAME = re.compile(r"step \d+\.[^+*/()]*[^+*/() ]|[A-Za-z_]\w*(?:\.\w+)*")

# What the solver calls the measures of a piece or a material, as the guide says them.
_MEASURES = {
    "length": "finished length",
    "depth": "finished depth",
    "start_takes": "allowance at the start",
    "end_takes": "allowance at the end",
    "top_takes": "allowance at the top",
    "bottom_takes": "allowance at the bottom",
    "count": "number",
    "hem_round": "round the hem",
    "top_to_hem": "length from the top",
    "top_round": "round the top",
    "used": "length used",
    "used_weight": "weight used",
}


def _signs(formula: str) -> str:
    """The signs of a formula as they are written on paper, and its functions in words."""
    formula = formula.replace("*", "×").replace(" - ", " − ").replace(" / ", " ÷ ")
    return _FUNCTION.sub(lambda found: _FUNCTIONS[found.group(1)] + "(", formula)


_FUNCTION = re.compile(r"\b(max|min|round_up|round_down|round_near)\(")
_FUNCTIONS = {
    "max": "the largest of ",
    "min": "the smallest of ",
    "round_up": "rounded up ",
    "round_down": "rounded down ",
    "round_near": "rounded ",
}
