"""A class as a table: one wearer a row, the first column `wearer`, the others body measures; `language` is that of the guide.

A measure has its unit in the cell (`84 cm`) or in the heading (`waist_girth (cm)`). Cells are parted by semicolons,
tabs or commas; except with commas, `84,5` means 84.5. Source for the cells: RFC 4180 (2005), on one line each.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from furbelow.diagnose.fault import Fault, Label, Span, Staged, in_reading_order
from furbelow.diagnose.unseen import shows_nothing
from furbelow.garment.spec import Word, Written
from furbelow.garment.wearer import Wearer
from furbelow.measure.quantity import QuantityFault, parse_quantity
from furbelow.s1_read.values import Formulas
from furbelow.s1_read.yaml_tree import TextTree

MOST_WEARERS = 5_000
MOST_COLUMNS = 200
LONGEST_CELL = 200
WEARER, LANGUAGE = "wearer", "language"

_SEPARATORS = (";", "\t", ",")
_MEASURE = re.compile(r"(?P<name>[a-z][a-z0-9_]*)\s*(?:\((?P<unit>[^()]*)\))?")
_BARE_NUMBER = re.compile(r"[\d\s./½¼¾]+")


@dataclass(frozen=True, slots=True)
class Cell:
    """The text of a cell without its quotes, and its place. torn: a quote is opened or closed on another line."""

    text: str
    span: Span
    torn: bool = False


@dataclass(frozen=True, slots=True)
class Column:
    """A body measure and the unit its cells are in, or "" when each cell says its own."""

    name: str
    unit: str


def read_roster(content: bytes, file: str) -> Staged[tuple[Wearer, ...]]:
    """The wearers whose rows are sound, with a fault for every row that is not.

    Fails: FB101 for other text than UTF-8, FB150 for the heading (then there is no value), FB151 for a row,
        FB201 for a measure that can't be read.
    """
    try:
        text = content.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = content[: error.start].count(b"\n") + 1
        fault = Fault(
            "FB101",
            f"line {line} of the file is not UTF-8 text",
            Label(Span(file, line, 1, line, 1)),
            help="save the file in the encoding UTF-8",
        )
        return Staged(None, (fault,))
    return _Roster(text, file).read()


@dataclass(slots=True)
class _Roster:
    text: str
    file: str
    faults: list[Fault] = field(default_factory=list)
    separator: str = ","

    def read(self) -> Staged[tuple[Wearer, ...]]:
        # Python would end a line at a form feed and at U+2028 too, which editors and spreadsheets do not.
        lines = re.split(r"\r\n|\n|\r", self.text)
        numbered = [(number, line) for number, line in enumerate(lines, 1) if re.sub(r"[\s,;]", "", line)]
        if not numbered:
            empty = Fault("FB109", "the file is empty", Label(Span.at_start(self.file)))
            return Staged(None, (empty,))
        heading = numbered[0][1]
        self.separator = next((mark for mark in _SEPARATORS if mark in heading), ",")
        heading_place = Span(self.file, numbered[0][0], 1, numbered[0][0], 1)
        if (count := heading.count(self.separator)) > MOST_COLUMNS:
            headline = f"the heading has {count + 1:,} columns, more than the {MOST_COLUMNS} allowed"
            return Staged(None, (Fault("FB134", headline, Label(heading_place), help="keep the measures alone"),))
        columns = self._columns(self._cells(*numbered[0]))
        if columns is None:
            return Staged(None, in_reading_order(self.faults))
        if len(numbered) == 1:
            said = "the table has a heading and no wearer below it"
            help_ = "write a row for each wearer"
            return Staged(None, (*self.faults, Fault("FB151", said, Label(heading_place), help=help_)))
        wearers: dict[str, Wearer] = {}
        if len(numbered) - 1 > MOST_WEARERS:
            extra = Span(self.file, numbered[MOST_WEARERS + 1][0], 1, numbered[MOST_WEARERS + 1][0], 1)
            headline = f"the class has {len(numbered) - 1} wearers, more than the {MOST_WEARERS} allowed"
            self.faults.append(Fault("FB134", headline, Label(extra), help="split the class"))
        for number, line in numbered[1 : MOST_WEARERS + 1]:
            wearer = self._wearer(self._cells(number, line), columns)
            if wearer and (first := wearers.get(wearer.name)):
                others = (Label(first.span, "the first"),)
                self._refuse(
                    wearer.span,
                    f"the wearer {wearer.name} stands twice in the class",
                    "give each wearer a name or number of their own",
                    others,
                )
            elif wearer:
                wearers[wearer.name] = wearer
        return Staged(tuple(wearers.values()), in_reading_order(self.faults))

    def _refuse(self, span: Span, headline: str, help_: str | None = None, others: tuple[Label, ...] = ()) -> None:
        self.faults.append(Fault("FB151", headline, Label(span), others, help=help_))

    def _cells(self, number: int, line: str) -> list[Cell]:
        """The cells of a line; of one with more than any table has, so many that it is seen."""
        mark = re.escape(self.separator)
        pattern = re.compile(rf'\s*"((?:[^"]|"")*)"\s*(?={mark}|$)|([^{mark}]*)')
        cells: list[Cell] = []
        place = 0
        while place <= len(line) and len(cells) <= MOST_COLUMNS + 1:
            found = pattern.match(line, place)
            assert found  # the second way matches everywhere
            quoted = found.group(1) is not None
            start, end = found.span(1 if quoted else 2)
            raw = line[start:end]
            start += len(raw) - len(raw.lstrip())
            text = raw.strip()
            span = Span(self.file, number, start + 1, number, start + 1 + len(text))
            # A name has no use for a single quote; a measure may end with one, as in 5' 6".
            torn = not quoted and (text.startswith('"') or (not cells and text.count('"') % 2 == 1))
            cells.append(Cell(text.replace('""', '"') if quoted else text, span, torn))
            place = found.end() + 1
        return cells

    def _columns(self, heading: list[Cell]) -> list[Column] | None:
        while heading and not heading[-1].text:
            heading.pop()
        if heading[0].text.lower() != WEARER:
            headline = f"the first column is `{heading[0].text[:40]}`, and the first line must begin with `{WEARER}`"
            help_ = "begin the table with a line such as `wearer;waist_girth (cm);hip_girth (cm)`"
            self.faults.append(Fault("FB150", headline, Label(heading[0].span), help=help_))
            return None
        columns: list[Column] = []
        for cell in heading[1:]:
            plain = re.sub(r"(?<=[a-z])[ -](?=[a-z])", "_", cell.text.lower())
            found = _MEASURE.fullmatch(plain)
            unit = (found["unit"] or "").strip() if found else ""
            if not found:
                headline, help_ = (
                    f"the heading `{cell.text[:40]}` is no name of a measure",
                    "write it as `waist_girth (cm)`",
                )
            elif unit and isinstance(fault := parse_quantity(f"1 {unit}"), QuantityFault):
                headline, help_ = f"in the heading `{cell.text[:40]}`, {fault.message}", fault.help or ""
            elif found["name"] in [column.name for column in columns]:
                headline, help_ = f"the column `{found['name']}` stands twice", "take one of the two away"
            else:
                columns.append(Column(found["name"], unit))
                continue
            self.faults.append(Fault("FB150", headline, Label(cell.span), help=help_ or None))
        return columns if len(columns) == len(heading) - 1 else None

    def _wearer(self, cells: list[Cell], columns: list[Column]) -> Wearer | None:
        while len(cells) > len(columns) + 1 and not cells[-1].text:
            cells.pop()
        name, *measures = cells
        if torn := next((cell for cell in cells if cell.torn), None):
            self._refuse(torn.span, "a quote is not closed on its line", "write each wearer on one line")
            return None
        if shows_nothing(name.text):
            self._refuse(name.span, "this row has no wearer", "write a name or a number in its first cell")
            return None
        if len(measures) > len(columns):
            self._refuse(
                measures[len(columns)].span,
                f"the row of {name.text} has more than {MOST_COLUMNS} cells"
                if len(cells) > MOST_COLUMNS
                else f"the row of {name.text} has {len(cells)} cells, {len(cells) - len(columns) - 1} more than the heading",
                "a decimal comma needs semicolons between the cells" if self.separator == "," else None,
            )
            return None
        if too_long := next((cell for cell in cells if len(cell.text) > LONGEST_CELL), None):
            self._refuse(too_long.span, f"this cell has {len(too_long.text)} characters, more than {LONGEST_CELL}")
            return None
        formulas = Formulas()
        body: dict[str, Written] = {}
        language = None
        for cell, column in zip(measures, columns, strict=False):
            if column.name == LANGUAGE:
                language = Word(cell.text, cell.span) if cell.text else None
            elif cell.text and (
                written := formulas.read(TextTree(cell.span, self._in_unit(cell, column), quoted=False))
            ):
                body[column.name] = Written(written.text, written.formula, cell.span)
        self.faults.extend(formulas.faults)
        return None if formulas.faults else Wearer(name.text, body, {}, name.span, language)

    def _in_unit(self, cell: Cell, column: Column) -> str:
        text = cell.text if self.separator == "," else re.sub(r"(?<=\d),(?=\d)", ".", cell.text)
        return f"{text} {column.unit}" if column.unit and _BARE_NUMBER.fullmatch(text) else text
