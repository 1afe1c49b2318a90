"""Like rows of a file that stand below each other, set in columns: the sizes of a spec read as the table that they are."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from furbelow.s1_read.yaml_tree import Entry, ListTree, MapTree, TextTree, Tree

_LINE_END = re.compile(r"(\r\n|\n|\r)")


def in_columns(text: str, tree: Tree) -> str:
    """The text with more spaces in its tables, and nothing else changed. tree: of this text.

    Rows of a table are entries of one map on lines that follow each other, each with a map in braces of the same keys. Their
    braces stand below each other, and their values too where all of these are plain texts.
    """
    parts = _LINE_END.split(text)
    for rows in _tables(tree, parts):
        cut = [_cells(row, parts[_at(row)]) for row in rows]
        widths = [max(map(len, column)) for column in zip(*cut, strict=True)]
        for row, cells in zip(rows, cut, strict=True):
            padded = (cell.ljust(width) for cell, width in zip(cells[:-1], widths, strict=False))
            parts[_at(row)] = _with_comment(
                "".join([*padded, cells[-1]]), parts[_at(row)], row.value.span.end_column - 1
            )
    return "".join(parts)


def _with_comment(anew: str, line: str, end: int) -> str:
    """The line anew, what follows its value where it stood before, as far as there is room. end: of the value, in `line`."""
    if not (comment := line[end:].lstrip()):
        return anew
    return f"{anew.rstrip().ljust(len(line) - len(comment) - 1)} {comment}"


def _at(row: Entry) -> int:
    """The place of the row's line among the parts: between two lines stands their end."""
    return 2 * (row.key_span.start_line - 1)


def _tables(tree: Tree, parts: Sequence[str]) -> Iterator[list[Entry]]:
    waiting = [tree]
    while waiting:
        node = waiting.pop()
        if isinstance(node, ListTree):
            waiting += node.rows
        elif isinstance(node, MapTree):
            waiting += [entry.value for entry in node.entries]
            yield from (rows for rows in _runs(node, parts) if len(rows) > 1)


def _runs(node: MapTree, parts: Sequence[str]) -> Iterator[list[Entry]]:
    """The entries in braces, those together that are rows of one table."""
    run: list[Entry] = []
    for entry in node.entries:
        if run and not (_in_braces(entry, parts) and _like(run[-1], entry)):
            yield run
            run = []
        if _in_braces(entry, parts):
            run.append(entry)
    yield run


def _in_braces(entry: Entry, parts: Sequence[str]) -> bool:
    """Whether the value is a map in braces, on the line of its key."""
    here, value = entry.key_span.start_line, entry.value
    on_one_line = isinstance(value, MapTree) and here == value.span.start_line == value.span.end_line
    return on_one_line and parts[_at(entry)][value.span.start_column - 1 :].startswith("{")


def _like(one: Entry, other: Entry) -> bool:
    """Whether both are rows of one table: one below the other, of the same keys."""
    below = other.key_span.start_line == one.key_span.start_line + 1
    level = other.key_span.start_column == one.key_span.start_column
    return below and level and _keys(one) == _keys(other)


def _keys(row: Entry) -> list[str]:
    return [entry.key for entry in row.value.entries] if isinstance(row.value, MapTree) else []


def _cells(row: Entry, line: str) -> list[str]:
    """The line to the end of its value, cut at its brace, and at each key behind the first where all are plain texts."""
    assert isinstance(row.value, MapTree)
    entries = row.value.entries
    plain = all(isinstance(entry.value, TextTree) for entry in entries)
    starts = [row.value.span, *(entry.key_span for entry in entries[1:] if plain)]
    bounds = [0, *(span.start_column - 1 for span in starts), row.value.span.end_column - 1]
    return [line[start:end] for start, end in zip(bounds, bounds[1:], strict=False)]
