"""What a fault advises, as an edit of the text of its file."""

from __future__ import annotations

from furbelow.diagnose.fault import Change, Put, Span
from furbelow.named import NamedTuple


class Edit(NamedTuple):
    """`text` in the place of `span`."""

    span: Span
    text: str


def edit_of(source: str, change: Change) -> Edit:
    """The one edit that a change comes to in this source."""
    span, lines = change.span, source.splitlines(keepends=True)
    if change.put is Put.OVER:
        return Edit(span, change.text)
    first = lines[span.start_line - 1]
    if change.put is Put.INTO:
        return Edit(_at(span, span.end_line, span.end_column), _beside(lines, span, change.text))
    after = _end_of_row(lines, span.start_line)
    if change.put is Put.AWAY:
        return Edit(Span(span.file, span.start_line, 1, after, 1), "")
    row = f"{_indent(first)}- {change.text}\n"
    if change.put is Put.BEFORE:
        return Edit(_at(span, span.start_line, 1), row)
    # The last row of a file may lack its line end.
    torn = after > len(lines) and not lines[-1].endswith("\n")
    return Edit(_at(span, after, 1), f"\n{row}" if torn else row)


def _at(span: Span, line: int, column: int) -> Span:
    return Span(span.file, line, column, line, column)


def _beside(lines: list[str], last: Span, text: str) -> str:
    """A further key beside the last one: after a comma in braces, else on a line of its own under it."""
    line = lines[last.start_line - 1]
    if line.rfind("{", 0, last.start_column) > line.rfind("}", 0, last.start_column):
        return f", {text}"
    return f"\n{_indent(line)}{text}"


def _indent(line: str) -> str:
    return line[: len(line) - len(line.lstrip(" "))]


def _end_of_row(lines: list[str], first: int) -> int:
    """The line after the row that begins on this one: the next that is no deeper."""
    deep = len(_indent(lines[first - 1]))
    for number in range(first + 1, len(lines) + 1):
        line = lines[number - 1]
        if line.strip() and len(_indent(line)) <= deep:
            return number
    return len(lines) + 1
