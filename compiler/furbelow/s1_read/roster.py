"""A class as a table: one wearer a row, the first column `wearer`, the others what is known of the wearer.

A column is a body measure or a choice of the garment, or one of `number`, `language`, `notes`, `workroom`. A measure has
its unit in the cell (`84 cm`) or in the heading (`waist_girth (cm)`). Except where commas part the cells, `84,5` is 84.5.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence
from dataclasses import dataclass, field

from furbelow.diagnose.fault import Fault, Label, Severity, Span, Staged, has_errors, in_reading_order
from furbelow.diagnose.nearest import nearest
from furbelow.diagnose.unseen import shows_nothing
from furbelow.garment.spec import Spec, Word, Written
from furbelow.garment.wearer import Wearer
from furbelow.measure.quantity import Quantity, QuantityFault, parse_quantity
from furbelow.measure.units import PLAIN
from furbelow.named import NamedTuple
from furbelow.s1_read.roster_cells import MOST_COLUMNS, Cell, mark_of, roster_text, rows_of
from furbelow.s1_read.values import Formulas
from furbelow.s1_read.yaml_tree import TextTree

MOST_WEARERS = 5_000
LONGEST_CELL = 200
WEARER, NUMBER, LANGUAGE, NOTES, WORKROOM = "wearer", "number", "language", "notes", "workroom"
SPEC, SIZE = "spec", "size"  # of an order

OF_A_WEARER = (NUMBER, LANGUAGE, NOTES, WORKROOM)
OF_AN_ORDER = (SPEC, SIZE, *OF_A_WEARER)
_OFTEN_TAKEN = ("height",)  # a measure that classes write down, whether or not the garment asks for it
_NAMED = re.compile(r"(?P<name>[a-z][a-z0-9_]*)\s*(?:\((?P<unit>[^()]*)\))?")
_BARE_NUMBER = re.compile(r"[\d\s.,/½¼¾]+")


class Known(NamedTuple):
    """What garments ask of a body and what they leave open, by name; `in_units`: those that are no plain numbers.

    told: what else is told of each wearer, in words.
    """

    measures: Collection[str]
    choices: Collection[str]
    in_units: Collection[str]
    told: Collection[str] = OF_A_WEARER


def known_of(specs: Sequence[Spec], told: Collection[str] = OF_A_WEARER) -> Known:
    """What the columns of a table for these garments may be."""
    measures = dict.fromkeys(name for spec in specs for name in spec.body)
    usual = {name: choice.default for spec in specs for name, choice in spec.choices.items()}
    lengths = [name for name, default in usual.items() if _has_unit(default.text)]
    return Known(tuple(measures), tuple(usual), (*measures, *lengths), told)


def _has_unit(text: str) -> bool:
    read = parse_quantity(text)
    return isinstance(read, Quantity) and read.dims != PLAIN


@dataclass(frozen=True, slots=True)
class Column:
    """What the cells below a heading are, and the unit that they are in, or "" when each says its own."""

    name: str
    unit: str
    heading: Cell


def words_in(content: bytes, file: str, column: str) -> tuple[Word, ...] | None:
    """What stands below the heading `column`, row by row; None where the table has no such column, or is none."""
    text = roster_text(content) or ""
    heading, *rows = [*rows_of(text, mark_of(text), file)] or [[]]
    at = next((at for at, cell in enumerate(heading) if cell.text.lower() == column), None)
    if at is None:
        return None
    return tuple(Word(row[at].text, row[at].span) for row in rows[:MOST_WEARERS] if at < len(row) and row[at].text)


def read_roster(content: bytes, file: str, known: Known | None = None) -> Staged[tuple[Wearer, ...]]:
    """The wearers whose rows are sound, with a fault for every row that is not.

    known: what the columns may be; without it each other column is a measure.
    Fails: FB101 for what is no text, FB150 for the heading (then there is no value), FB151 for a row,
        FB201 for a measure that can't be read.
    Warns: FB150 of a measure that the garment does not ask for.
    """
    text = roster_text(content)
    if text is None:
        line = content[: _undecoded(content)].count(b"\n") + 1
        fault = Fault(
            "FB101",
            f"line {line} of the file is not UTF-8 text",
            Label(Span(file, line, 1, line, 1)),
            help="save the file in the encoding UTF-8",
        )
        return Staged(None, (fault,))
    return _Roster(text, file, known).read()


def _undecoded(content: bytes) -> int:
    """Where what is no UTF-8 begins."""
    try:
        content.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        return error.start
    return 0


@dataclass(slots=True)
class _Roster:
    text: str
    file: str
    known: Known | None
    faults: list[Fault] = field(default_factory=list)
    mark: str = ","

    def read(self) -> Staged[tuple[Wearer, ...]]:
        self.mark = mark_of(self.text)
        heading, *rows = [*rows_of(self.text, self.mark, self.file)] or [[]]
        if not heading:
            empty = Fault("FB109", "the file is empty", Label(Span.at_start(self.file)))
            return Staged(None, (empty,))
        place = Label(heading[0].span)
        if len(heading) > MOST_COLUMNS + 1:
            headline = f"the heading has more columns than the {MOST_COLUMNS} allowed"
            return Staged(None, (Fault("FB134", headline, place, help="keep the measures alone"),))
        columns = self._columns(heading)
        if columns is None or not (self._are_known(columns, rows) and self._in_units(columns, rows)):
            return Staged(None, in_reading_order(self.faults))
        if not rows:
            said = "the table has a heading and no wearer below it"
            help_ = "write a row for each wearer"
            return Staged(None, (*self.faults, Fault("FB151", said, place, help=help_)))
        if len(rows) > MOST_WEARERS:
            headline = f"the class has {len(rows)} wearers, more than the {MOST_WEARERS} allowed"
            here = Label(rows[MOST_WEARERS][0].span)
            self.faults.append(Fault("FB134", headline, here, help="split the class"))
        wearers: dict[str, Wearer] = {}
        for row in rows[:MOST_WEARERS]:
            wearer = self._wearer(row, columns)
            if wearer and (first := wearers.get(wearer.name)):
                self.faults.append(told_twice(wearer, first))
            elif wearer:
                wearers[wearer.name] = wearer
        return Staged(tuple(wearers.values()), in_reading_order(self.faults))

    def _refuse(self, span: Span, headline: str, help_: str | None = None) -> None:
        self.faults.append(Fault("FB151", headline, Label(span), help=help_))

    def _columns(self, heading: list[Cell]) -> list[Column] | None:
        while heading and not heading[-1].text:
            heading.pop()
        if heading[0].text.lower() != WEARER:
            headline = f"the first column is `{heading[0].text[:40]}`, and the first line must begin with `{WEARER}`"
            orders = any(cell.text.lower() == SPEC for cell in heading)
            columns_said = "spec;size" if orders else "waist_girth (cm);hip_girth (cm)"
            help_ = f"begin the table with a line such as `{WEARER};{columns_said}`"
            self.faults.append(Fault("FB150", headline, Label(heading[0].span), help=help_))
            return None
        columns: list[Column] = []
        for cell in heading[1:]:
            plain = re.sub(r"(?<=[a-z])[ -](?=[a-z])", "_", cell.text.lower())
            found = _NAMED.fullmatch(plain)
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
                columns.append(Column(found["name"], unit, cell))
                continue
            self.faults.append(Fault("FB150", headline, Label(cell.span), help=help_ or None))
        return columns if len(columns) == len(heading) - 1 else None

    def _are_known(self, columns: list[Column], rows: list[list[Cell]]) -> bool:
        """Whether each column is of use, or a measure that another garment asks for."""
        strange = [told for at, column in enumerate(columns, 1) if (told := self._strange(column, at, columns, rows))]
        self.faults += strange
        return not has_errors(strange)

    def _strange(self, column: Column, at: int, columns: list[Column], rows: list[list[Cell]]) -> Fault | None:
        """What is told of a column that the garment has no use for: likely a slip, or a measure for another garment."""
        if self.known is None:
            return None
        known = (*self.known.told, *self.known.measures, *self.known.choices)
        if column.name in (*known, *_OFTEN_TAKEN):
            return None
        there = [each.name for each in columns]  # a name with a column of its own was not meant by another
        near = nearest(column.name, (name for name in known if name not in there))
        here = Label(column.heading.span)
        measured = column.unit or all(_has_unit(row[at].text) for row in rows if at < len(row) and row[at].text)
        if measured and not near:
            said = f"the garment asks for no `{column.name}`; the column is passed over"
            return Fault("FB150", said, here, help="take it away if nothing needs it", severity=Severity.WARNING)
        help_ = f"did you mean `{near[0]}`?" if near else f"the columns may be {', '.join(known)}"
        return Fault("FB150", f"the garment has no use for the column `{column.name}`", here, help=help_)

    def _in_units(self, columns: list[Column], rows: list[list[Cell]]) -> bool:
        """FB150, once, for a column of lengths that says its unit neither in the heading nor in any cell."""
        sound = True
        for at, column in enumerate(columns, 1):
            cells = [row[at].text for row in rows if at < len(row) and row[at].text]
            needs = self.known is not None and column.name in self.known.in_units and not column.unit
            if needs and cells and all(_BARE_NUMBER.fullmatch(text) for text in cells):
                said = f"the column `{column.name}` says no unit"
                help_ = f"write the heading as `{column.name} (cm)`, or `(in)`"
                self.faults.append(Fault("FB150", said, Label(column.heading.span), help=help_))
                sound = False
        return sound

    def _wearer(self, cells: list[Cell], columns: list[Column]) -> Wearer | None:
        while len(cells) > len(columns) + 1 and not cells[-1].text:
            cells.pop()
        name, *others = cells
        if torn := next((cell for cell in cells if cell.torn), None):
            self._refuse(torn.span, "a quote is not closed", "write one more quote where the cell ends")
            return None
        if shows_nothing(name.text):
            self._refuse(name.span, "this row has no wearer", "write a name or a number in its first cell")
            return None
        if len(others) > len(columns):
            self._refuse(
                others[len(columns)].span,
                f"the row of {name.text} has more than {MOST_COLUMNS} cells"
                if len(cells) > MOST_COLUMNS
                else f"the row of {name.text} has {len(cells)} cells, {len(cells) - len(columns) - 1} more than the heading",
                "a decimal comma needs semicolons between the cells" if self.mark == "," else None,
            )
            return None
        if too_long := next((cell for cell in cells if len(cell.text) > LONGEST_CELL), None):
            self._refuse(too_long.span, f"this cell has {len(too_long.text)} characters, more than {LONGEST_CELL}")
            return None
        formulas = Formulas()
        own: dict[str, Word] = {}
        told: dict[str, Written] = {}
        for cell, column in zip(others, columns, strict=False):
            if not cell.text:
                continue
            if column.name in (self.known.told if self.known else OF_A_WEARER):
                own[column.name] = Word(cell.text, cell.span)
            elif written := formulas.read(TextTree(cell.span, self._in_unit(cell, column), quoted=False)):
                told[column.name] = Written(written.text, written.formula, cell.span)
        number, wrong = number_of(own.get(NUMBER))
        faults = [*formulas.faults, *wrong]
        self.faults.extend(faults)
        if faults:
            return None
        choices = self.known.choices if self.known else ()
        return Wearer(
            name.text,
            {name: written for name, written in told.items() if name not in choices},
            {name: written for name, written in told.items() if name in choices},
            name.span,
            own.get(LANGUAGE),
            number,
            own[NOTES].text if NOTES in own else "",
            own.get(WORKROOM),
            own.get(SPEC),
            own.get(SIZE),
        )

    def _in_unit(self, cell: Cell, column: Column) -> str:
        text = cell.text if self.mark == "," else re.sub(r"(?<=\d),(?=\d)", ".", cell.text)
        return f"{text} {column.unit}" if column.unit and _BARE_NUMBER.fullmatch(text) else text


def told_twice(wearer: Wearer, first: Wearer) -> Fault:
    headline = f"the wearer {wearer.name} stands twice in the class"
    others = (Label(first.span, "the first"),)
    return Fault("FB151", headline, Label(wearer.span), others, help="give each wearer a name or number of their own")


def number_of(word: Word | None) -> tuple[int, list[Fault]]:
    """The number that a wearer is given, which marks their pieces; 0 where none is."""
    if word is None:
        return 0, []
    if word.text.isascii() and word.text.isdecimal() and 0 < int(word.text) <= MOST_WEARERS:
        return int(word.text), []
    headline = f"the number of a wearer is `{word.text[:20]}`, and it must be a whole number from 1 to {MOST_WEARERS}"
    return 0, [Fault("FB151", headline, Label(word.span), help="it marks the cut pieces, as in 5B")]
