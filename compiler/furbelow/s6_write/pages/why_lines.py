"""How much of a reason is told in one place: the number, what it stands on, and what that stands on; then a link."""

from __future__ import annotations

from collections.abc import Iterable

from furbelow.named import NamedTuple
from furbelow.s6_write.guide.guide import Guide, Reason
from furbelow.s6_write.words.messages import Messages

# Numbers below a number: what a step takes, its margin, the width of a bought tape. All others have a place of their own.
_DEEPEST = 3


class WhyLine(NamedTuple):
    """One number and where it comes from.

    link: whether its own reason is told in another place. operation: the key of the operation of this guide that the words
    lead to; empty for most.
    """

    name: str
    label: str
    value: str
    told: str
    rounding: str
    link: bool
    operation: str
    below: tuple[WhyLine, ...]


class WhyLines:
    """The reasons of a guide as its pages show them."""

    def __init__(self, guide: Guide, words: Messages) -> None:
        words.read("pages")
        self._words = words
        self._reasons = {reason.name: reason for reason in guide.reasons}
        self._own = frozenset(guide.told_why)
        self._named = {fact.name: fact.label for fact in guide.facts}
        self._in_order = guide.told_why
        self._keys = frozenset(operation.key for operation in guide.operations)

    def of(self, name: str) -> WhyLine:
        """The number in its own place."""
        return self._line(self._reasons[name], 0)

    def beside(self, names: Iterable[str]) -> tuple[WhyLine, ...]:
        """Numbers in the place of another: where they have one of their own, with a link to it."""
        return tuple(self._line(self._reasons[name], 1) for name in names)

    def listed(self) -> tuple[WhyLine, ...]:
        """All that are told in places of their own, each with its name in the summary table, for a list without links.

        A number that has no place of its own is told once.
        """
        told: set[str] = set()
        return tuple(self._without_links(self.of(name), told, self._named.get(name, "")) for name in self._in_order)

    def _without_links(self, line: WhyLine, told: set[str], also: str = "") -> WhyLine:
        label = line.label if also in line.label else also if line.label in also else f"{line.label} ({also})"
        below = []
        for each in line.below:
            if not each.link and each.name not in told:
                told.add(each.name)
                below.append(self._without_links(each, told))
        return line._replace(label=label, below=tuple(below))

    def _line(self, reason: Reason, depth: int) -> WhyLine:
        link = depth > 0 and reason.name in self._own
        inputs = [self._reasons[name] for name in reason.inputs]
        # A number that is the same as another says so; the other follows only where it has more to say.
        if [each.name for each in inputs] == [reason.formula] and not self._says_more(inputs[0]):
            inputs = []
        if link or depth == _DEEPEST:
            inputs = []
        told = self._words.text("page-then-rounded", {"told": reason.told}) if link and reason.rounding else reason.told
        return WhyLine(
            name=reason.name,
            label=reason.label,
            value=reason.value,
            told="" if link and depth > 1 else told,
            rounding="" if link else reason.rounding,
            link=link,
            operation=reason.operation if reason.operation in self._keys else "",
            below=tuple(self._line(each, depth + 1) for each in inputs),
        )

    def _says_more(self, reason: Reason) -> bool:
        return bool(reason.inputs) or reason.name in self._own
