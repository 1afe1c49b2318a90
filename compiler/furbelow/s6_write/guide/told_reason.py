"""One reason in a reader's words: what a number is called, what it comes from, how it was rounded."""

from __future__ import annotations

import os
import re
from collections.abc import Mapping
from fractions import Fraction

from furbelow.garment.message import Amount, Length, Own, Part, Pieces, Share, Value, Values, flag
from furbelow.garment.solved import Because, Derivation, Rounded, Solved
from furbelow.measure.quantity import mm
from furbelow.s6_write.guide.guide import Reason
from furbelow.s6_write.words.words import Words

_NAME = re.compile(r"step \d+\.[^+*/()]*[^+*/() ]|[A-Za-z_]\w*(?:\.\w+)*")
_FUNCTION = re.compile(r"\b(max|min|round_up|round_down|round_near)\(")

# What the solver calls the measures of a piece or a material, and their messages.
_MEASURES = {
    "length": "reason-length",
    "depth": "reason-depth",
    "start_takes": "reason-start-takes",
    "end_takes": "reason-end-takes",
    "top_takes": "reason-top-takes",
    "bottom_takes": "reason-bottom-takes",
    "count": "reason-count",
    "hem_round": "reason-hem-round",
    "top_to_hem": "reason-top-to-hem",
    "top_round": "reason-top-round",
    "used": "reason-used",
    "used_weight": "reason-used-weight",
}
_FUNCTIONS = {
    "max": "reason-max",
    "min": "reason-min",
    "round_up": "reason-round-up",
    "round_down": "reason-round-down",
    "round_near": "reason-round-near",
}


class Teller:
    """A reader's words for what the solver says. titles: of the operations, by their key."""

    def __init__(self, solved: Solved, titles: Mapping[str, str], words: Words) -> None:
        words.read("reasons")
        self._solved, self._titles, self._words = solved, titles, words

    def reason(self, derivation: Derivation) -> Reason:
        operation, place = self._operation(derivation), self._place(derivation)
        summed = self.in_words(derivation) if derivation.inputs and not _is_same(derivation) else ""
        label = self._label(derivation.name)
        if derivation.origin == "step" and derivation.inputs and (title := self._titles.get(_key(derivation.name))):
            label = self._words.text("reason-for", {"label": label, "title": title})
        return Reason(
            name=derivation.name,
            label=label,
            value=self._words.said(self._amount(derivation)),
            told=self._told(derivation, place, self._titles.get(operation, ""), summed),
            formula=because_said(derivation.because, self._words) if derivation.because else derivation.formula,
            with_numbers=derivation.with_values,
            rounding=rounding_said(derivation.rounded, self._solved, self._words),
            place=place,
            operation=operation,
            inputs=derivation.inputs,
            sum=summed,
        )

    def _amount(self, derivation: Derivation) -> Amount:
        return Amount(derivation.value, self._solved.spec.system)

    def _place(self, derivation: Derivation) -> str:
        span = derivation.span
        # A body's file is nobody's business, nor is the folder that a spec lies in.
        if span is None or span.file != self._solved.spec.file or derivation.origin == "body":
            return ""
        return self._words.text("reason-place", {"line": span.start_line, "file": os.path.basename(span.file)})

    def _operation(self, derivation: Derivation) -> str:
        """The key of the operation that the number, or the one number that it is the same as, is written for."""
        if derivation.inputs and not _is_same(derivation):
            return ""
        key = _key(derivation.formula if _is_same(derivation) else derivation.name)
        return key if key in self._titles else ""

    def _told(self, derivation: Derivation, place: str, title: str, summed: str) -> str:
        words, value = self._words, self._words.said(self._amount(derivation))
        if _is_same(derivation):
            same = {"same": self._label(derivation.formula), "title": title}
            return words.text("reason-same-of" if title else "reason-same", same)
        if derivation.inputs:
            result = "" if derivation.rounded else f" = {value}"
            return f"{summed} = {self.signs(derivation.with_values)}{result}"
        if derivation.because:
            return because_said(derivation.because, words)
        if derivation.name not in self._solved.values:
            return f"{self.signs(derivation.with_values)} = {value}"
        if derivation.origin == "body":
            return words.text("reason-body")
        if derivation.origin == "choice":
            return words.text("reason-choice", {"place": place}) if place else words.text("reason-choice-made")
        formula = self.signs(derivation.formula)
        shown = derivation.formula != derivation.value.show(self._solved.spec.system)
        said: dict[str, Value | str] = {"asked": flag(title), "shown": flag(shown), "placed": flag(place)}
        return words.text("reason-written", {**said, "title": title, "formula": formula, "place": place})

    def _label(self, name: str, beside: str = "") -> str:
        """A name in plain words: "cut depth of the flounce"; without the piece in a sum about that same piece."""
        owner, _, own = name.rpartition(".")
        words = self._words
        spec = self._solved.spec
        is_named = not owner and any(own in section for section in (spec.body, spec.choices, spec.measures))
        of_piece, of_material = owner in self._solved.pieces, owner in self._solved.materials
        measure: Value
        if own in _MEASURES and (of_piece or of_material):
            measure = Part(_MEASURES[own])
        else:
            measure = Own(words.name(own) if is_named else words.number(own))
        if of_piece and owner != beside:
            return words.text("reason-of-piece", {"measure": measure, "piece": Pieces((owner,))})
        if of_material:
            return words.text("reason-of-material", {"measure": measure, "material": words.name(owner)})
        return words.said(measure)

    def in_words(self, derivation: Derivation) -> str:
        """The formula with each name in plain words and each sign as it is written on paper."""
        piece, inputs = derivation.name.partition(".")[0], derivation.inputs

        def said(name: re.Match[str]) -> str:
            return self._label(name.group(), piece) if name.group() in inputs else name.group()

        return self.signs(_NAME.sub(said, " ".join(derivation.formula.split())))

    def signs(self, formula: str) -> str:
        """The signs of a formula as they are written on paper, and its functions in words."""
        formula = self._words.reckoned(formula.replace("*", "×").replace(" - ", " − ").replace(" / ", " ÷ "))
        return _FUNCTION.sub(lambda found: f"{self._words.text(_FUNCTIONS[found.group(1)])} (", formula)


def because_said(because: Because, words: Words) -> str:
    """Why a number is what it is, where it stands on no formula."""
    values: dict[str, Value] = dict(because.counts)
    if because.share is not None:
        values["share"] = Share(because.share)
    words.read("reasons")
    return words.text(because.message, values)


def cut_rounding(solved: Solved, words: Words) -> str:
    """The step that cut sizes are rounded up to, as messages are given it."""
    return words.said(Length(solved.rounding)) if solved.rounding else "none"


def rounding_said(rounded: Rounded | None, solved: Solved, words: Words) -> str:
    """How a number was rounded; empty where it was not."""
    if rounded is None:
        return ""

    def shown(length: Fraction) -> Amount:
        return Amount(mm(length), solved.spec.system)

    values: Values = {
        "step": shown(rounded.step),
        "before": shown(rounded.cut_before),
        "after": shown(rounded.cut),
    }
    words.read("reasons")
    if rounded.finished_before is None or rounded.finished is None:
        return words.text("reason-rounded", values)
    finished: Values = {"finished-before": shown(rounded.finished_before), "finished-after": shown(rounded.finished)}
    same = [words.said(values[name]) for name in ("before", "after")] == [
        words.said(each) for each in finished.values()
    ]
    return words.text("reason-rounded" if same else "reason-rounded-cut", {**values, **finished})


def _key(name: str) -> str:
    """The key of the operation of `step 3.seam`."""
    return name.partition(".")[0].replace(" ", "-")


def _is_same(derivation: Derivation) -> bool:
    return derivation.inputs == (derivation.formula,)
