"""The reasons on the page: `<details>`, closed until a reader opens a number."""

from __future__ import annotations

import re
from collections.abc import Iterable
from html import escape
from typing import TYPE_CHECKING

from furbelow.s6_write.guide.guide import CutLine, Fact, Guide, Operation
from furbelow.s6_write.pages.why_lines import WhyLine, WhyLines

if TYPE_CHECKING:
    from markupsafe import Markup


class WhyHtml:
    """What the page's template asks for. Written here, since a template is compiled anew in every process.

    Each text is escaped where it is put in.
    """

    def __init__(self, guide: Guide) -> None:
        self._lines = WhyLines(guide)
        self._known = frozenset(guide.told_why)
        self._with_pieces = frozenset(name for line in guide.cutting for name in line.why)

    def row(self, fact: Fact) -> str:
        """The id of a measurement's row, where that is the place of its reason; else empty."""
        return "" if self.fact(fact) or not self._is_here(fact) else _anchor(fact.name)

    def fact(self, fact: Fact) -> Markup:
        """Why the measurement is what it is; empty where it was given and stands on nothing."""
        if self._is_here(fact):
            line = self._lines.of(fact.name)
            return _details(fact.value, _own(line) if line.below else "")
        told = _beside(self._lines.beside([fact.name])) if fact.name in self._known else ""
        return _details(fact.value, told)

    def piece(self, line: CutLine) -> Markup:
        """Why the piece has its sizes."""
        told = "".join(_own(self._lines.of(name)) for name in line.why)
        return _details(line.explained, told, f" for the {line.piece}")

    def operation(self, operation: Operation) -> Markup:
        """Why the numbers in the steps of an operation are what they are."""
        lines = self._lines.beside(operation.why)
        return _details(", ".join(dict.fromkeys(line.value for line in lines)), _beside(lines) if lines else "")

    def _is_here(self, fact: Fact) -> bool:
        return fact.name in self._known and fact.name not in self._with_pieces


def _details(asked: str, told: str, unseen: str = "") -> Markup:
    from markupsafe import Markup

    if not told:
        return Markup()
    more = f'<span class="unseen">{escape(unseen)}</span>' if unseen else ""
    return Markup(f"<details><summary>Why {escape(asked)}{more}</summary>{told}</details>")


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
