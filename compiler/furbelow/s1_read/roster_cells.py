"""The text of a table and its rows of cells, each cell with its place.

Cells are parted by semicolons, tabs or commas. Source for them: RFC 4180 (2005), line breaks inside quotes too. The text
is UTF-8, UTF-16 with its mark, or what a spreadsheet on a western Windows writes (cp1252).
"""

from __future__ import annotations

import codecs
import re
from collections.abc import Iterator

from furbelow.diagnose.fault import Span
from furbelow.named import NamedTuple

MOST_COLUMNS = 200
MOST_LINES = 20  # of one row

_MARKS = (";", "\t", ",")

_UTF16 = (codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)
# Python would end a line at a form feed and at U+2028 too, which editors and spreadsheets do not.
_LINE_END = re.compile(r"\r\n|\n|\r")


class Cell(NamedTuple):
    """The text of a cell without its quotes, and its place. torn: a quote is opened and never closed."""

    text: str
    span: Span
    torn: bool = False


def roster_text(content: bytes) -> str | None:
    """The text of a table, and nothing for bytes that are none."""
    encodings = ("utf-16",) if content.startswith(_UTF16) else ("utf-8-sig", "cp1252")
    for encoding in encodings:
        try:
            return content.decode(encoding)
        except UnicodeDecodeError:
            continue
    return None


def mark_of(text: str) -> str:
    """The sign that parts the cells: the first that the heading holds of semicolon, tab and comma."""
    heading = next((line for line in _LINE_END.split(text) if _says_something(line)), "")
    return next((mark for mark in _MARKS if mark in heading), ",")


def rows_of(text: str, mark: str, file: str) -> Iterator[list[Cell]]:
    """Every row in which something stands."""
    lines = _LINE_END.split(text)
    at = 0
    while at < len(lines):
        if not _says_something(lines[at]):
            at += 1
            continue
        cells, more = _cells(lines[at], mark, file, at + 1), 1
        while any(cell.torn for cell in cells) and more < MOST_LINES and at + more < len(lines):
            more += 1
            cells = _cells("\n".join(lines[at : at + more]), mark, file, at + 1)
        if any(cell.torn for cell in cells):  # its quote is closed nowhere: the rows below it stand for themselves
            cells, more = _cells(lines[at], mark, file, at + 1), 1
        yield cells
        at += more


def _says_something(line: str) -> bool:
    return bool(re.sub(r"[\s,;]", "", line))


def _cells(row: str, mark: str, file: str, line: int) -> list[Cell]:
    """The cells of a row; of one with more than any table has, so many that it is seen."""
    sign = re.escape(mark)
    pattern = re.compile(rf'\s*"((?:[^"]|"")*)"\s*(?={sign}|\Z)|([^{sign}]*)')
    cells: list[Cell] = []
    place = 0
    while place <= len(row) and len(cells) <= MOST_COLUMNS + 1:
        found = pattern.match(row, place)
        assert found  # the second way matches everywhere
        quoted = found.group(1) is not None
        start, end = found.span(1 if quoted else 2)
        raw = row[start:end]
        start += len(raw) - len(raw.lstrip())
        text = raw.strip()
        span = Span(file, *_at(row, line, start), *_at(row, line, start + len(text)))
        # A name has no use for a single quote; a measure may end with one, as in 5' 6".
        torn = not quoted and (text.startswith('"') or "\n" in text or (not cells and text.count('"') % 2 == 1))
        said = re.sub(r"\s*\n\s*", " ", text)
        cells.append(Cell(said.replace('""', '"') if quoted else said, span, torn))
        place = found.end() + 1
    return cells


def _at(row: str, line: int, place: int) -> tuple[int, int]:
    """Line and column of a place in a row whose first line is `line`."""
    return line + row.count("\n", 0, place), place - row.rfind("\n", 0, place)
