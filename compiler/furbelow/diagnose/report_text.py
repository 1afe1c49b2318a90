"""Faults as plain text for a terminal: what is wrong, the lines that take part with marks, a mend.

error FB105: the key `net` stands twice in one place
  specs/larkspur.yaml:14:3
     9   net: {kind: cloth}
         ^^^ it stands here first
    ...
    14   net: {kind: trim}
         ^^^
  mend: take one of the two away, or rename it
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Mapping, Sequence

from furbelow.diagnose.fault import Fault, Label, Severity, in_reading_order
from furbelow.diagnose.unseen import marked_unseen

# A line longer than this is shown in part, around the place.
_WIDEST = 110
_MOST_SHOWN = 200  # nobody reads on; JSON has them all
_BEFORE = 40
_PLAIN, _BOLD, _FAINT = "\x1b[0m", "\x1b[1m", "\x1b[2m"
_COLOURS = {Severity.ERROR: "\x1b[31m", Severity.WARNING: "\x1b[33m", Severity.NOTE: "\x1b[36m"}


def render(faults: Iterable[Fault], sources: Mapping[str, str], *, colour: bool = False) -> str:
    """The faults in reading order, a blank line between them; "" for none. Of very many, the first and a count.

    sources: the text of each file by the name that the places use. A place in any other file is named
    without its lines. Control characters are shown as `\ufffd`, so that no text can steer the terminal.
    """
    lines = {file: re.split(r"\r\n|\n|\r", text.removeprefix("\ufeff")) for file, text in sources.items()}
    told = in_reading_order(faults)
    page = "\n".join(_Page(lines, colour).fault(fault) for fault in told[:_MOST_SHOWN])
    return page + (f"\n{len(told) - _MOST_SHOWN:,} more faults are not shown\n" if len(told) > _MOST_SHOWN else "")


def tally(faults: Iterable[Fault]) -> str:
    """How many there are of each kind: `2 errors, 1 warning`."""
    counts = dict.fromkeys(Severity, 0)
    for fault in faults:
        counts[fault.severity] += 1
    return ", ".join(f"{n} {kind.value}{'s' * (n != 1)}" for kind, n in counts.items() if n) or "no faults"


class _Page:
    def __init__(self, lines: Mapping[str, Sequence[str]], colour: bool) -> None:
        self._lines = lines
        self._colour = colour

    def fault(self, fault: Fault) -> str:
        name = self._painted(f"{fault.severity.value} {fault.code}:", _BOLD + _COLOURS[fault.severity])
        rows = [f"{name} {self._painted(safe(fault.headline), _BOLD)}"]
        labels = ([fault.primary] if fault.primary else []) + list(fault.others)
        for file in dict.fromkeys(label.span.file for label in labels):
            here = [label for label in labels if label.span.file == file]
            # The place to mend names the file's line, and the excerpt follows the file.
            rows.append(f"  {safe(str(here[0].span))}")
            rows += self._excerpt(fault, here)
        rows += [f"  note: {_indented(note)}" for note in fault.notes]
        if fault.help:
            rows.append(f"  {self._painted('mend:', _BOLD)} {_indented(fault.help)}")
        return "\n".join(rows) + "\n"

    def _excerpt(self, fault: Fault, labels: Sequence[Label]) -> list[str]:
        source = self._lines.get(labels[0].span.file, ())
        margin = len(str(max(label.span.start_line for label in labels))) + 6
        rows: list[str] = []
        before = 0
        for line in sorted({label.span.start_line for label in labels}):
            here = sorted((label for label in labels if label.span.start_line == line), key=lambda label: label.span)
            if line > len(source):
                rows += [f"{line:>{margin}}   {safe(label.text)}" for label in here if label.text]
                continue
            if before and line > before + 1:
                rows.append(f"{'...':>{margin}}")
            text = source[line - 1]
            start = _window(text, here[0].span.start_column - 1)
            rows.append(f"{self._painted(f'{line:>{margin}}', _FAINT)}   {_cut(text, start)}".rstrip())
            for label in here:
                paint = _COLOURS[fault.severity] if label is fault.primary else _FAINT
                rows.append(" " * (margin + 3) + self._marks(label, text, start, paint))
            before = line
        return rows

    def _marks(self, label: Label, text: str, start: int, paint: str) -> str:
        span = label.span
        longer = span.end_line > span.start_line
        first = min(span.start_column - 1, len(text))
        last = len(text) if longer else min(span.end_column - 1, len(text))
        shown_last = min(last, start + _WIDEST)
        indent = _width(_cut(text, start)[: max(first - start, 0)])
        carets = "^" * max(_width(safe(text[max(first, start) : shown_last])), 1)
        said = safe(label.text) + (f" (to line {span.end_line})" if longer else "")
        return f"{' ' * indent}{self._painted(carets, paint)} {said.strip()}".rstrip()

    def _painted(self, text: str, paint: str) -> str:
        return f"{paint}{text}{_PLAIN}" if self._colour else text


def _window(text: str, place: int) -> int:
    """Where a long line begins to be shown, so that the place is seen."""
    return 0 if len(text) <= _WIDEST or place < _WIDEST - _BEFORE else min(place, len(text)) - _BEFORE


def _cut(text: str, start: int) -> str:
    shown = safe(text[start : start + _WIDEST])
    if start:
        shown = "…" + shown[1:]
    return shown + "…" if start + _WIDEST < len(text) else shown


def safe(text: str) -> str:
    """The text with a space for each tab and a mark for what would steer a terminal or turn the direction."""
    return marked_unseen(text.replace("\n", "\ufffd").replace("\t", " "), lambda sign: "\ufffd")


def _width(text: str) -> int:
    """Columns that the text takes: two for wide East Asian characters and emoji, none for combining marks."""
    return sum(0 if unicodedata.combining(c) else 2 if unicodedata.east_asian_width(c) in "WF" else 1 for c in text)


def _indented(text: str) -> str:
    return "\n        ".join(safe(row) for row in text.split("\n"))
