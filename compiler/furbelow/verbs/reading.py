"""Reading what a call names: the spec, the workroom, the choices and the bodies; and how a verb ends early."""

from __future__ import annotations

import argparse
import re
import sys
import unicodedata
from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING, Never

if TYPE_CHECKING:
    from furbelow.diagnose.fault import Fault
    from furbelow.garment.spec import Spec, Written
    from furbelow.garment.wearer import Wearer
    from furbelow.garment.workroom import Workroom
    from furbelow.order.order import Order

DONE, SPEC_AT_FAULT, WRONG_USE, OUR_BUG = 0, 1, 2, 3

# Names that stand for devices on some systems. Source: Microsoft, "Naming Files, Paths, and Namespaces".
_DEVICE = re.compile(r"con|prn|aux|nul|(com|lpt)[0-9]")


class Stop(Exception):
    """Ends a verb whose message is printed already."""

    def __init__(self, code: int) -> None:
        self.code = code


class Reader:
    """Reads files for a verb and keeps their text, so that faults can show the line."""

    def __init__(self) -> None:
        self.sources: dict[str, str] = {}

    def tell(self, faults: Iterable[Fault]) -> None:
        from furbelow.diagnose.report_text import render

        told = list(faults)
        if told:
            print(render(told, self.sources, colour=sys.stderr.isatty()), file=sys.stderr, end="")

    def stop(self, faults: Iterable[Fault], code: int = SPEC_AT_FAULT) -> Never:
        self.tell(faults)
        raise Stop(code)

    def keep(self, path: str) -> None:
        from furbelow.s1_read.source import read_bytes

        # As the reader does it: never a pipe or a device, and never more than a spec may hold.
        _, content = read_bytes(path)
        self.sources[path] = (content.value or b"").decode("utf-8-sig", errors="replace")

    def spec_and_faults(self, path: str) -> tuple[Spec | None, tuple[Fault, ...]]:
        from furbelow.s1_read.read_spec import read_spec

        self.keep(path)
        staged = read_spec(path)
        return staged.value, staged.faults

    def workroom(self, path: str | None) -> Workroom:
        from furbelow.garment.workroom import Workroom

        if path is None:
            return Workroom()
        from furbelow.s1_read.read_workroom import read_workroom

        self.keep(path)
        staged = read_workroom(path)
        if staged.value is None:
            self.stop(staged.faults)
        self.tell(staged.faults)
        return staged.value

    def choices(self, given: list[str]) -> Mapping[str, Written]:
        """The choices of `--set`, each read as a formula whose place is the option itself."""
        from furbelow.diagnose.fault import Fault, Label, Span
        from furbelow.garment.spec import Written
        from furbelow.measure.formula import FormulaFault, parse_formula

        choices = {}
        for text in given:
            name, equals, value = text.partition("=")
            place = f"--set {name.strip()}"
            self.sources[place] = value
            span = Span(place, 1, 1, 1, len(value) + 1)
            if not equals:
                fault = Fault("FB201", f"`--set {text}` names no value", help="write it as --set choice=value")
                self.stop([fault], WRONG_USE)
            formula = parse_formula(value)
            if isinstance(formula, FormulaFault):
                here = Label(span.inside(formula.offset, max(formula.length, 1)))
                self.stop([Fault("FB201", formula.message, here, help=formula.help)], WRONG_USE)
            choices[name.strip()] = Written(value, formula, span)
        return choices

    def bodies(
        self, spec: Spec, options: argparse.Namespace, *, every: bool = False
    ) -> list[tuple[str, Mapping[str, Written], Mapping[str, Written]]]:
        """(who, body, own choices) for the size, wearer or class named; for every size where none is."""
        from furbelow.s2_solve.body import size_body

        if options.wearer is not None:
            return [(wearer.name, wearer.body, wearer.choices) for wearer in self._wearers(options.wearer)]
        if options.size is not None:
            staged = size_body(spec, options.size)
            if staged.value is None:
                self.stop(staged.faults, WRONG_USE)
            return [(f"size {options.size}", staged.value, {})]
        if every:
            return [(f"size {name}", body, {}) for name, body in spec.sizes.items()]
        sizes = ", ".join(spec.sizes) or "none"
        print(f"furbelow: say for whom: --size NAME (sizes: {sizes}) or --wearer FILE", file=sys.stderr)
        raise Stop(WRONG_USE)

    def _wearers(self, path: str) -> tuple[Wearer, ...]:
        from furbelow.s1_read.read_wearers import read_wearers

        self.keep(path)
        staged = read_wearers(path)
        if staged.value is None:
            self.stop(staged.faults)
        self.tell(staged.faults)
        return staged.value

    def orders(self, options: argparse.Namespace, *, first_only: bool = False, every: bool = False) -> list[Order]:
        """What is to be made, one order a body; every: one for each size where the call names nobody."""
        from furbelow.order.order import Order

        spec, faults = self.spec_and_faults(options.spec)
        if spec is None:
            self.stop(faults)
        self.tell(faults)
        room, choices = self.workroom(options.workroom), self.choices(options.choices)
        bodies = self.bodies(spec, options, every=every)
        if first_only:
            bodies = bodies[:1]
        return [Order(spec, wearer, body, {**own, **choices}, room) for wearer, body, own in bodies]


def folder_name(wearer: str) -> str:
    """A plain folder name for a wearer: letters, digits and dashes, and never that of a device."""
    bare = "".join(sign for sign in unicodedata.normalize("NFKD", wearer.lower()) if not unicodedata.combining(sign))
    plain = "".join(sign if sign.isascii() and sign.isalnum() else "-" for sign in bare).strip("-")[:60]
    return f"wearer-{plain}" if _DEVICE.fullmatch(plain) else plain or "wearer"


def folder_names(wearers: Iterable[str]) -> dict[str, str]:
    """A folder name for each wearer, no two alike: where two would be, the later one gets a number."""
    names: dict[str, str] = {}
    given: set[str] = set()
    for wearer in wearers:
        plain = name = folder_name(wearer)
        number = 1
        while name in given:
            number += 1
            name = f"{plain}-{number}"
        given.add(name)
        names[wearer] = name
    return names


def count(number: int, one: str, many: str) -> str:
    return f"{number} {one if number == 1 else many}"
