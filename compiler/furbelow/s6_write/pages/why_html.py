"""The reasons on the page: `<details>`, closed until a reader opens a number."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from html import escape
from typing import TYPE_CHECKING

from furbelow.s6_write.guide.guide import CutLine, Fact, Guide, Operation
from furbelow.s6_write.pages.why_lines import WhyLine, WhyLines
from furbelow.s6_write.words.messages import Messages

if TYPE_CHECKING:
    from markupsafe import Markup


class WhyHtml:
    """What the page's template asks for. Written here, since a template is compiled anew in every process.

    Each text is escaped where it is put in.
    """

    def __init__(self, guide: Guide, words: Messages) -> None:
        self._words = words
        self._lines = WhyLines(guide, words)
        self._known = frozenset(guide.told_why)
        self._with_pieces = frozenset(name for line in guide.cutting for name in line.why)

    def row(self, fact: Fact) -> str:
        """The id of a measurement's row, where that is the place of its reason; else empty."""
        return "" if self.fact(fact) or not self._is_here(fact) else _anchor(fact.name)

    def fact(self, fact: Fact) -> Markup:
        """Why the measurement is what it is; empty where it was given and stands on nothing."""
        if self._is_here(fact):
            line = self._lines.of(fact.name)
            return self._details([fact.value], _own(line) if line.below else "")
        told = _beside(self._lines.beside([fact.name])) if fact.name in self._known else ""
        return self._details([fact.value], told)

    def piece(self, line: CutLine) -> Markup:
        """Why the piece has its sizes."""
        told = "".join(_own(self._lines.of(name)) for name in line.why)
        return self._details(line.explained, told, line)

    def operation(self, operation: Operation) -> Markup:
        """Why the numbers in the steps of an operation are what they are."""
        lines = self._lines.beside(operation.why)
        return self._details(list(dict.fromkeys(line.value for line in lines)), _beside(lines) if lines else "")

    def _details(self, asked: Sequence[str], told: str, line: CutLine | None = None) -> Markup:
        """asked: the numbers that `told` gives the reasons of; line: the piece that has them."""
        from markupsafe import Markup

        if not told:
            return Markup()
        summary = escape(self._words.text("page-why", {"numbers": self._words.listed(asked)}))
        if line:
            unseen = self._words.text("page-why.unseen", {"piece": line.piece})
            summary += f'<span class="unseen"> {escape(unseen)}</span>'
        return Markup(f"<details><summary>{summary}</summary>{told}</details>")

    def _is_here(self, fact: Fact) -> bool:
        return fact.name in self._known and fact.name not in self._with_pieces


def _own(line: WhyLine) -> str:
    return f'<div class="reason" id="{_anchor(line.name)}"><p>{_number(line)}</p>{_list(line.below)}</div>'


def _beside(lines: Iterable[WhyLine]) -> str:
    return f'<div class="reason">{_list(lines)}</div>'


def _list(lines: Iterable[WhyLine]) -> str:
    told = "".join(f"<li>{_number(line)}{_list(line.below)}</li>" for line in lines)
    return f"<ul>{told}</ul>" if told else ""


def _number(line: WhyLine) -> str:
    label, told = escape(line.label), escape(line.told)
    if line.link:
        label = f'<a href="#{_anchor(line.name)}">{label}</a>'
    if line.operation:
        told = f'<a href="#operation-{escape(line.operation)}">{told}</a>'
    if line.rounding:
        told = f"{told}; {escape(line.rounding)}"
    small = f'<span class="small">{told}</span>' if told else ""
    return f'{label} <b class="value">{escape(line.value)}</b>{small}'


def _anchor(name: str) -> str:
    """The id of the place where the reason of a number is told."""
    return "why-" + re.sub(r"[^a-z0-9_.-]+", "-", name.lower())
