"""Why a number is what it is, as `furbelow why` and an editor show it: with the names and the lines of the maker's file."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Derivation, Solved
from furbelow.garment.workroom import Workroom
from furbelow.measure.plain_values import as_plain
from furbelow.s2_solve.why import Instead, Reason
from furbelow.s6_write.guide.told_reason import because_said, rounding_said
from furbelow.s6_write.words.words import Words

_INSTEAD = {Instead.ABOVE: "why-above", Instead.ASK: "why-ask"}


class WhyText:
    """Tells reasons in the language of the garment. The numbers stand as in the file: they are to be found there."""

    def __init__(self, solved: Solved, room: Workroom) -> None:
        self._solved = solved
        self._words = Words(solved.spec.language, Phrasing(solved, room))
        self._words.read("why")

    def text(self, reason: Reason) -> str:
        """The tree in lines, each step of four spaces one level down."""
        return "\n".join(self._lines(reason, "")) + "\n"

    def markdown(self, reason: Reason) -> str:
        """The tree as a nested list."""
        return "\n".join(self._entries(reason, "")) + "\n"

    def data(self, reason: Reason) -> dict[str, Any]:
        """The tree as plain values for JSON, with empty fields left out."""
        of = reason.of
        fields: dict[str, Any] = {
            "name": of.name,
            "value": as_plain(of.value, self._value(of)),
            "formula": self._formula(of),
            "with_values": of.with_values,
            "rounding": self._rounding(of),
            "place": self._place(of),
            "origin": of.origin,
            "instead": self._instead(reason),
            "inputs": [self.data(need) for need in reason.inputs],
        }
        return {key: value for key, value in fields.items() if value}

    def _lines(self, reason: Reason, margin: str) -> Iterator[str]:
        of, inner = reason.of, margin + "    "
        place = self._place(of)
        beside = f"  [{place}]" if place and not reason.instead else ""
        yield f"{margin}{of.name} = {self._value(of)}{self._short(reason)}{beside}"
        if reason.inputs and of.formula != reason.inputs[0].of.name:
            yield inner + _sum(of)
        if of.rounded and not reason.instead:
            yield inner + self._rounding(of)
        for need in reason.inputs:
            yield from self._lines(need, inner)

    def _entries(self, reason: Reason, margin: str) -> Iterator[str]:
        of = reason.of
        more = [f"`{_sum(of)}`"] if reason.inputs else []
        more += [part for part in (self._rounding(of), self._place(of)) if part and not reason.instead]
        said = "".join(f"; {part}" for part in more)
        yield f"{margin}- `{of.name}` = **{self._value(of)}**{self._short(reason)}{said}"
        for need in reason.inputs:
            yield from self._entries(need, margin + "  ")

    def _value(self, of: Derivation) -> str:
        if of.origin == "rule":
            return self._words.text("why-holds" if of.value.value else "why-fails")
        return of.value.show(self._solved.spec.system)

    def _formula(self, of: Derivation) -> str:
        return because_said(of.because, self._words) if of.because else of.formula

    def _rounding(self, of: Derivation) -> str:
        return rounding_said(of.rounded, self._solved, self._words)

    def _place(self, of: Derivation) -> str:
        if of.span is None:
            return ""
        return self._words.text("why-place", {"file": of.span.file, "line": of.span.start_line})

    def _instead(self, reason: Reason) -> str:
        return self._words.text(_INSTEAD[reason.instead]) if reason.instead else ""

    def _short(self, reason: Reason) -> str:
        """What is said in place of a number's own reasons."""
        if reason.instead:
            return f" ({self._instead(reason)})"
        formula = self._formula(reason.of)
        return "" if reason.inputs or formula == self._value(reason.of) else f" ({formula})"


def _sum(of: Derivation) -> str:
    """The formula and the same with its numbers; a rule holds or not, so it is not said to equal them."""
    return f"{of.formula}{': ' if of.origin == 'rule' else ' = '}{of.with_values}"
