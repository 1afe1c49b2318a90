"""What a call names, read: the spec, the workroom, the choices and the bodies, each body an order."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable, Mapping, Sequence
from typing import Never

from furbelow.diagnose.fault import Fault, Label, Span
from furbelow.diagnose.nearest import nearest
from furbelow.garment.spec import Spec, Word, Written
from furbelow.garment.wearer import Wearer
from furbelow.garment.workroom import Workroom
from furbelow.measure.formula import FormulaFault, parse_formula
from furbelow.named import NamedTuple
from furbelow.order.language import in_language
from furbelow.order.order import Order
from furbelow.order.unread import Unread
from furbelow.s1_read.inside import is_inside
from furbelow.s1_read.read_spec import read_spec
from furbelow.s1_read.source import Source, read_bytes
from furbelow.s1_read.yaml_tree import LARGEST_FILE
from furbelow.s2_solve.body import size_body

UnreadRows = tuple[int, ...]  # the lines of the rows of a table, or a class, that could not be read


class Asked(NamedTuple):
    """What a call names: files by their paths, a size of the spec, choices as `name=value`."""

    spec: str
    size: str | None = None
    wearer: str | None = None
    workroom: str | None = None
    choices: Sequence[str] = ()
    only: Sequence[str] = ()  # wearers of a class, by name
    language: str | None = None


class Body(NamedTuple):
    """Somebody the garment is for. own: choices that stand beside the measures; those of the call go before them."""

    wearer: str
    measures: Mapping[str, Written]
    own: Mapping[str, Written]
    language: Word | None = None
    size: str = ""
    number: int = 0
    notes: str = ""
    workroom: Word | None = None  # another than that of the call


STANDARD_INPUT = "-"
_NAMED = 12  # of a class, in a message


class OrderReader:
    """Reads the files of an order. It keeps their text, so that faults can show the line, and all that it has told."""

    def __init__(self) -> None:
        self.sources: dict[str, str] = {}
        self.told: list[Fault] = []
        self._rooms: dict[str, Workroom] = {}  # that rows of a roster name

    def tell(self, faults: Iterable[Fault]) -> None:
        self.told += faults

    def tell_of_files(self, faults: Iterable[Fault]) -> None:
        """Of faults in files that the call does not name."""
        faults = tuple(faults)
        for path in {fault.primary.span.file for fault in faults if fault.primary}:
            self.keep(path)
        self.tell(faults)

    def stop(self, faults: Iterable[Fault], *, by_call: bool = False) -> Never:
        self.tell(faults)
        raise Unread(by_call=by_call)

    def keep(self, path: str) -> None:
        # As the reader does it: never a pipe or a device, and never more than a spec may hold.
        _, content = read_bytes(path)
        read = content.value or b""
        text = read.decode("utf-8-sig", errors="replace")
        if path.lower().endswith(".csv"):
            from furbelow.s1_read.roster_cells import roster_text

            text = roster_text(read) or text
        self.sources[path] = text

    def orders(self, asked: Asked, *, every: bool = False) -> list[Order]:
        """What is to be made, one order a body; every: one for each size where the call names nobody."""
        spec, faults = self.spec_and_faults(asked.spec)
        if spec is None:
            self.stop(faults)
        self.tell(faults)
        return self.orders_of(spec, asked, every=every)

    def one_order(self, asked: Asked) -> Order:
        """What is to be made for the one body that the call names."""
        return self.the_one(self.orders(asked))

    def the_one(self, orders: Sequence[Order]) -> Order:
        """The only order; a class, where one wearer is meant, is refused."""
        if len(orders) > 1:
            names = _some(order.wearer for order in orders)
            said = f"the class has {len(orders)} wearers; say which: --only NAME ({names})"
            raise Unread(by_call=True, said=said)
        return orders[0]

    def orders_of(self, spec: Spec, asked: Asked, *, every: bool = False) -> list[Order]:
        choices = self.choices(asked.choices)
        room = self.workroom(asked.workroom)
        bodies = self._bodies(spec, asked, every=every)
        by_call = self.language(asked.language)
        specs: dict[str | None, Spec] = {}  # by the language that is meant
        orders = []
        for each in bodies:
            works_in = room if each.workroom is None else self.own_workroom(each.workroom)
            meant = by_call or each.language or works_in.language
            if (said := meant and meant.text) not in specs:
                specs[said] = self.in_language(spec, meant)
            chosen = {**each.own, **choices}
            orders.append(
                Order(specs[said], each.wearer, each.measures, chosen, works_in, each.size, each.number, each.notes)
            )
        return orders

    def language(self, given: str | None) -> Word | None:
        """The language of `--language`, whose place is the option itself."""
        if given is None:
            return None
        self.sources["--language"] = given
        return Word(given, Span("--language", 1, 1, 1, len(given) + 1))

    def in_language(self, spec: Spec, meant: Word | None) -> Spec:
        staged = in_language(spec, meant)
        if staged.value is None:
            self.stop(staged.faults, by_call=meant is not None and meant.span.file == "--language")
        self.tell(staged.faults)
        return staged.value

    def spec_and_faults(self, path: str) -> tuple[Spec | None, tuple[Fault, ...]]:
        source: Source = path
        if path == STANDARD_INPUT:
            # No more than a spec may hold, and the sign beyond it that tells the reader so.
            source = (path, sys.stdin.buffer.read(LARGEST_FILE + 1))
            self.sources[path] = source[1].decode("utf-8-sig", errors="replace")
        else:
            self.keep(path)
        staged = read_spec(source)
        self._keep_named(staged.faults, *(staged.value.built_on if staged.value else ()))
        return staged.value, staged.faults

    def _keep_named(self, faults: tuple[Fault, ...], *files: str) -> None:
        """The sources that faults lie in, and those of other files."""
        named = {label.span.file for fault in faults for label in (fault.primary, *fault.others) if label}
        for file in named.union(files):
            if file not in self.sources:
                self.keep(file)

    def workroom(self, path: str | None) -> Workroom:
        if path is None:
            return Workroom()
        from furbelow.s1_read.read_workroom import read_workroom

        self.keep(path)
        staged = read_workroom(path)
        self._keep_named(staged.faults)
        if staged.value is None:
            self.stop(staged.faults)
        self.tell(staged.faults)
        theme = staged.value.theme
        fonts = [(staged.value.font, path)] if staged.value.font else []
        fonts += [(font, theme.file) for font in theme.fonts] if theme else []
        for font, named_in in fonts:
            from furbelow.s6_write.pages.own_font import font_faults

            if wrong := font_faults(font, named_in):
                self.stop(wrong)
        if staged.value.words is not None:
            from furbelow.s6_write.words.check_own import check_own

            if wrong := check_own(staged.value.words):
                self.tell_of_files(wrong)
                raise Unread(by_call=False)
        return staged.value

    def choices(self, given: Sequence[str]) -> Mapping[str, Written]:
        """The choices of `--set`, each read as a formula whose place is the option itself."""
        choices = {}
        for text in given:
            name, equals, value = text.partition("=")
            place = f"--set {name.strip()}"
            self.sources[place] = value
            span = Span(place, 1, 1, 1, len(value) + 1)
            if not equals:
                fault = Fault("FB201", f"`--set {text}` names no value", help="write it as --set choice=value")
                self.stop([fault], by_call=True)
            formula = parse_formula(value)
            if isinstance(formula, FormulaFault):
                here = Label(span.inside(formula.offset, max(formula.length, 1)))
                self.stop([Fault("FB201", formula.message, here, help=formula.help)], by_call=True)
            choices[name.strip()] = Written(value, formula, span)
        return choices

    def _bodies(self, spec: Spec, asked: Asked, *, every: bool) -> list[Body]:
        """The size, wearer or class named; every size where none is, if that is wanted."""
        if asked.only and asked.wearer is None:
            raise Unread(by_call=True, said="--only names a wearer of a class: give the class with --wearer FILE")
        if asked.wearer is not None:
            return [
                Body(
                    wearer.name,
                    wearer.body,
                    wearer.choices,
                    wearer.language,
                    number=wearer.number,
                    notes=wearer.notes,
                    workroom=wearer.workroom,
                )
                for wearer in self._wearers(asked.wearer, spec, asked)
            ]
        if asked.size is not None:
            staged = size_body(spec, asked.size)
            if staged.value is None:
                self.stop(staged.faults, by_call=True)
            return [Body(f"size {asked.size}", staged.value, {}, size=asked.size)]
        if every:
            return [Body(f"size {name}", body, {}, size=name) for name, body in spec.sizes.items()]
        sizes = ", ".join(spec.sizes) or "none"
        raise Unread(by_call=True, said=f"say for whom: --size NAME (sizes: {sizes}) or --wearer FILE")

    def class_name(self, path: str) -> str:
        from furbelow.s1_read.read_wearers import class_name

        return class_name(path)

    def own_workroom(self, named: Word) -> Workroom:
        """The workroom that a wearer's row names, in a file beside the roster or in a folder there."""
        path = beside(named, "workroom")
        if isinstance(path, Fault):
            self.stop([path])
        if path not in self._rooms:
            self._rooms[path] = self.workroom(path)
        return self._rooms[path]

    def _wearers(self, path: str, spec: Spec, asked: Asked) -> tuple[Wearer, ...]:
        from furbelow.s1_read.read_wearers import read_wearers
        from furbelow.s1_read.roster import known_of

        self.keep(path)
        staged = read_wearers(path, known_of([spec]))
        if staged.value is None:
            self.stop(staged.faults)
        self.tell(staged.faults)
        wearers = staged.value
        return those_only(wearers, asked.only, path)


def is_table(spec: str) -> bool:
    """Whether what is named in the place of a spec is a table of orders, each with a spec of its own."""
    return spec.lower().endswith(".csv")


def beside(named: Word, what: str) -> str | Fault:
    """The path of a file that a row names: beside the table, or in a folder there. Fails: FB165."""
    here = os.path.dirname(os.path.abspath(named.span.file))
    path = os.path.join(os.path.dirname(named.span.file), named.text)
    if not is_inside(os.path.abspath(path), here):
        return Fault(
            "FB165",
            f"the {what} is {named.text[:80]}, which lies outside of the folder of this file",
            Label(named.span),
        )
    if not os.path.isfile(path):
        return Fault("FB165", f"the {what} is {named.text[:80]}, and there is no such file", Label(named.span))
    return path


def those_only(wearers: tuple[Wearer, ...], only: Sequence[str], path: str) -> tuple[Wearer, ...]:
    """The wearers that are asked for by name; all where none is. path: of their file."""
    known = {wearer.name for wearer in wearers}
    if strangers := [name for name in only if name not in known]:
        near = nearest(strangers[0], known)
        mend = f"did you mean {near[0]}?" if near else f"the wearers are {_some(known)}"
        raise Unread(by_call=True, said=f"{path} has no wearer {strangers[0]}: {mend}")
    return tuple(wearer for wearer in wearers if not only or wearer.name in only)


def unread_rows(faults: Iterable[Fault], file: str | None) -> UnreadRows:
    """The lines of a class file that could not be read. faults: all that reading told."""
    places = (fault.primary.span for fault in faults if fault.is_error and fault.primary is not None)
    return tuple(sorted({place.start_line for place in places if place.file == file}))


def _some(names: Iterable[str]) -> str:
    told = list(names)
    return ", ".join(told[:_NAMED]) + (", ..." if len(told) > _NAMED else "")
