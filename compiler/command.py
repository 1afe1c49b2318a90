"""The command `furbelow`: its verbs, what they print, and their exit codes.

Only argparse is loaded before a verb is known, so that help comes at once.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Never

from compiler import __version__

if TYPE_CHECKING:
    from compiler.diagnostics import Fault
    from compiler.pipeline import Order
    from compiler.s1_read.spec import Spec, Written
    from compiler.s1_read.wearer import Wearer
    from compiler.workroom import Workroom

DONE, SPEC_AT_FAULT, WRONG_USE, OUR_BUG = 0, 1, 2, 3

_EPILOG = """\
examples:
  furbelow check specs/larkspur.yaml
  furbelow make specs/larkspur.yaml --size M --out guide
  furbelow make specs/larkspur.yaml --wearer specs/wearers/bo.yaml --set layers=3 --out guide
  furbelow why specs/larkspur.yaml flounce.cut_depth --size M

exit codes: 0 done, 1 the spec is at fault, 2 wrong use, 3 our bug
"""


def main(arguments: list[str] | None = None) -> Never:
    """Runs one verb and leaves with its exit code."""
    sys.exit(run(sys.argv[1:] if arguments is None else arguments))


def run(arguments: list[str]) -> int:
    """The exit code of one call."""
    told = _parser().parse_args(arguments)
    try:
        code: int = told.verb(told)
    except _Stop as stop:
        return stop.code
    except BrokenPipeError:
        return DONE
    except KeyboardInterrupt:
        print("furbelow: stopped; nothing half written", file=sys.stderr)
        return WRONG_USE
    except Exception as error:  # a fault of ours must still be told in words
        if told.debug:
            raise
        print(
            f"furbelow: this is our bug, not yours: {type(error).__name__}: {error}\n"
            "  Nothing was written. Run the same command with --debug and report what it prints.",
            file=sys.stderr,
        )
        return OUR_BUG
    return code


class _Stop(Exception):
    """Ends a verb whose message is printed already."""

    def __init__(self, code: int) -> None:
        self.code = code


def _parser() -> argparse.ArgumentParser:
    common = argparse.ArgumentParser(add_help=False)
    common.add_argument("--debug", action="store_true", help="show a traceback for a bug of ours")
    body = argparse.ArgumentParser(add_help=False)
    who = body.add_mutually_exclusive_group()
    who.add_argument("--size", metavar="NAME", help="a size named in the spec")
    who.add_argument("--wearer", metavar="FILE", help="a file with the measures of one wearer or a class")
    body.add_argument("--workroom", metavar="FILE", help="a file with the machines, habits and prices of the room")
    body.add_argument(
        "--set", metavar="CHOICE=VALUE", action="append", default=[], dest="choices", help="make a choice"
    )

    parser = argparse.ArgumentParser(
        prog="furbelow",
        description="From a garment spec to the guide that someone sews from.",
        epilog=_EPILOG,
        formatter_class=argparse.RawDescriptionHelpFormatter,
        parents=[common],
    )
    parser.add_argument("--version", action="version", version=f"furbelow {__version__}")
    verbs = parser.add_subparsers(title="verbs", required=True, metavar="VERB")

    check = verbs.add_parser("check", parents=[common, body], help="prove a spec for every size, or for one body")
    check.add_argument("spec", metavar="SPEC")
    check.add_argument("--format", choices=("text", "json", "sarif"), default="text", help="how faults are told")
    check.set_defaults(verb=_check)

    make = verbs.add_parser("make", parents=[common, body], help="write the guide for a size, a wearer or a class")
    make.add_argument("spec", metavar="SPEC")
    make.add_argument("--out", metavar="DIR", required=True, help="the folder for the guide")
    make.add_argument("--replace", action="store_true", help="write over files that were edited by hand")
    make.add_argument("--no-pdf", action="store_true", help="leave guide.pdf out")
    make.set_defaults(verb=_make)

    why = verbs.add_parser("why", parents=[common, body], help="say where a number comes from")
    why.add_argument("spec", metavar="SPEC")
    why.add_argument("name", metavar="NAME", help="such as flounce.cut_depth")
    why.add_argument("--format", choices=("text", "markdown", "json"), default="text")
    why.set_defaults(verb=_why)
    return parser


# --- the verbs ---


def _check(told: argparse.Namespace) -> int:
    from compiler.diagnostics import has_errors
    from compiler.pipeline import Order, prove

    reader = _Reader()
    spec, faults = reader.spec_and_faults(told.spec)
    found: list[Fault] = list(faults)
    proved = 0
    if spec is not None:
        room = reader.workroom(told.workroom)
        choices = reader.choices(told.choices)
        bodies = reader.bodies(spec, told, every=True)
        where: dict[tuple[object, ...], Fault] = {}
        for wearer, body, own in bodies:
            staged = prove(Order(spec, wearer, body, {**own, **choices}, room))
            proved += staged.ok
            for fault in staged.faults:
                # One fault of the spec shows in every size; it is told once, with the numbers of the first.
                where.setdefault((fault.code, fault.primary.span if fault.primary else fault.headline), fault)
        found += where.values()
    if told.format == "json":
        from compiler.report_json import render_json

        print(render_json(found), end="")
    elif told.format == "sarif":
        from compiler.report_sarif import render_sarif

        print(render_sarif(found, __version__), end="")
    else:
        reader.tell(found)
        if spec is not None and not has_errors(found):
            print(f"{told.spec}: sound; proved for {_count(proved, 'body', 'bodies')}")
    return SPEC_AT_FAULT if has_errors(found) else DONE


def _make(told: argparse.Namespace) -> int:
    from compiler.pipeline import make
    from compiler.s6_write.folder import write_folder

    reader = _Reader()
    orders = reader.orders(told)
    made: dict[str, Mapping[str, bytes]] = {}
    failed = False
    for order in orders:
        staged = make(order, with_pdf=not told.no_pdf)
        reader.tell(staged.faults)
        if staged.value is None:
            failed = True
            continue
        made[order.wearer] = staged.value
    for wearer, files in made.items():
        folder = Path(told.out) / _folder_name(wearer) if len(orders) > 1 else Path(told.out)
        written = write_folder(folder, files, replace=told.replace)
        reader.tell(written.faults)
        if written.value is None:
            failed = True
            continue
        print(f"{wearer}: {folder / 'guide.html'}")
    return SPEC_AT_FAULT if failed else DONE


def _why(told: argparse.Namespace) -> int:
    import json

    from compiler.pipeline import solved
    from compiler.s2_solve.why import as_data, as_markdown, as_text, why

    reader = _Reader()
    order = reader.orders(told, first_only=True)[0]
    numbers = solved(order)
    if numbers.value is None:
        reader.tell(numbers.faults)
        return SPEC_AT_FAULT
    reason = why(numbers.value, told.name)
    if reason.value is None:
        reader.tell(reason.faults)
        return WRONG_USE
    if told.format == "json":
        print(json.dumps(as_data(reason.value), indent=2, ensure_ascii=False))
    else:
        print((as_markdown if told.format == "markdown" else as_text)(reason.value))
    return DONE


# --- reading what the call names ---


class _Reader:
    """Reads files for a verb and keeps their text, so that faults can show the line."""

    def __init__(self) -> None:
        self.sources: dict[str, str] = {}

    def tell(self, faults: Iterable[Fault]) -> None:
        from compiler.report_text import render

        told = list(faults)
        if told:
            print(render(told, self.sources, colour=sys.stderr.isatty()), file=sys.stderr, end="")

    def stop(self, faults: Iterable[Fault], code: int = SPEC_AT_FAULT) -> Never:
        self.tell(faults)
        raise _Stop(code)

    def _keep(self, path: str) -> None:
        try:
            self.sources[path] = Path(path).read_text(encoding="utf-8-sig")
        except (OSError, UnicodeDecodeError):
            self.sources[path] = ""

    def spec_and_faults(self, path: str) -> tuple[Spec | None, tuple[Fault, ...]]:
        from compiler.s1_read.read_spec import read_spec

        self._keep(path)
        staged = read_spec(Path(path))
        return staged.value, staged.faults

    def workroom(self, path: str | None) -> Workroom:
        from compiler.workroom import Workroom

        if path is None:
            return Workroom()
        from compiler.s1_read.read_workroom import read_workroom

        self._keep(path)
        staged = read_workroom(Path(path))
        if staged.value is None:
            self.stop(staged.faults)
        self.tell(staged.faults)
        return staged.value

    def choices(self, given: list[str]) -> Mapping[str, Written]:
        """The choices of `--set`, each read as a formula whose place is the option itself."""
        from compiler.diagnostics import Fault, Label, Span
        from compiler.s1_read.spec import Written
        from compiler.s2_solve.formula import FormulaFault, parse_formula

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
        self, spec: Spec, told: argparse.Namespace, *, every: bool = False
    ) -> list[tuple[str, Mapping[str, Written], Mapping[str, Written]]]:
        """(who, body, own choices) for the size, wearer or class named; for every size where none is."""
        from compiler.s2_solve.body import size_body

        if told.wearer is not None:
            return [(wearer.name, wearer.body, wearer.choices) for wearer in self._wearers(told.wearer)]
        if told.size is not None:
            staged = size_body(spec, told.size)
            if staged.value is None:
                self.stop(staged.faults, WRONG_USE)
            return [(f"size {told.size}", staged.value, {})]
        if every:
            return [(f"size {name}", body, {}) for name, body in spec.sizes.items()]
        sizes = ", ".join(spec.sizes) or "none"
        print(f"furbelow: say for whom: --size NAME (sizes: {sizes}) or --wearer FILE", file=sys.stderr)
        raise _Stop(WRONG_USE)

    def _wearers(self, path: str) -> tuple[Wearer, ...]:
        from compiler.s1_read.read_wearers import read_wearers

        self._keep(path)
        staged = read_wearers(Path(path))
        if staged.value is None:
            self.stop(staged.faults)
        self.tell(staged.faults)
        return staged.value

    def orders(self, told: argparse.Namespace, *, first_only: bool = False) -> list[Order]:
        """What is to be made, one order a body."""
        from compiler.pipeline import Order

        spec, faults = self.spec_and_faults(told.spec)
        if spec is None:
            self.stop(faults)
        self.tell(faults)
        room, choices = self.workroom(told.workroom), self.choices(told.choices)
        bodies = self.bodies(spec, told)
        if first_only:
            bodies = bodies[:1]
        return [Order(spec, wearer, body, {**own, **choices}, room) for wearer, body, own in bodies]


def _folder_name(wearer: str) -> str:
    """A plain folder name for a wearer: letters, digits and dashes."""
    plain = "".join(letter if letter.isascii() and letter.isalnum() else "-" for letter in wearer.lower())
    return plain.strip("-") or "wearer"


def _count(number: int, one: str, many: str) -> str:
    return f"{number} {one if number == 1 else many}"
