"""`furbelow check`: prove a spec, write nothing."""

from __future__ import annotations

import argparse
from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, NamedTuple

from furbelow import __version__
from furbelow.verbs.exits import DONE, SPEC_AT_FAULT

if TYPE_CHECKING:
    from furbelow.diagnose.fault import Fault
    from furbelow.verbs.reading import Reader

_EPILOG = """\
examples, after `furbelow start larkspur --from larkspur`:
  furbelow check larkspur.yaml
  furbelow check --strict *.yaml
  furbelow check larkspur.yaml --wearer class.yaml --only Bo
"""

_NAMED = 5  # wearers named for each reason in the text; JSON has them all


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser(
        "check",
        parents=parents,
        help="prove a spec for every size, for one body, or for a whole class",
        epilog=_EPILOG,
    )
    parser.add_argument("specs", metavar="SPEC", nargs="+", help="one or several; `-` is standard input")
    parser.add_argument("--format", choices=("text", "json", "sarif"), default="text", help="how faults are told")
    parser.add_argument("--strict", action="store_true", help="let a warning fail the check too")
    parser.set_defaults(verb=_check)


class _Checked(NamedTuple):
    spec: str
    faults: Sequence[Fault]
    bodies: int
    proved: int
    refused: Mapping[str, Sequence[str]]  # fault code -> wearers

    def as_data(self) -> dict[str, object]:
        return {"spec": self.spec, "bodies": self.bodies, "proved": self.proved, "refused": self.refused}


def _check(options: argparse.Namespace) -> int:
    from furbelow.diagnose.fault import Severity, has_errors
    from furbelow.verbs.reading import Reader

    reader = Reader(options)
    checked = [_checked(reader, options, spec) for spec in dict.fromkeys(options.specs)]
    # What lies in the workroom or the class is told once, however many specs are made there.
    found = list(dict.fromkeys(fault for each in checked for fault in each.faults))
    if options.format == "json":
        from furbelow.diagnose.report_json import render_json

        print(render_json(found, {"verb": "check", "specs": [each.as_data() for each in checked]}), end="")
    elif options.format == "sarif":
        from furbelow.diagnose.report_sarif import render_sarif

        print(render_sarif(found, __version__), end="")
    else:
        reader.tell(found)
        for each in checked:
            if not has_errors(each.faults):
                print(f"{each.spec}: sound; proved for {each.proved} {'body' if each.proved == 1 else 'bodies'}")
            elif each.bodies > 1:
                print(_refusals(each.spec, each.bodies, each.proved, each.refused))
    failed = has_errors(found) or (options.strict and any(fault.severity is Severity.WARNING for fault in found))
    return SPEC_AT_FAULT if failed else DONE


def _checked(reader: Reader, options: argparse.Namespace, path: str) -> _Checked:
    from furbelow.order.chain import prove_each
    from furbelow.verbs.reading import asked

    spec, faults = reader.spec_and_faults(path)
    found: list[Fault] = list(faults)
    proved = bodies = 0
    refused: dict[str, list[str]] = {}
    if spec is not None:
        orders = reader.orders_of(spec, asked(argparse.Namespace(**{**vars(options), "spec": path})), every=True)
        bodies = len(orders)
        where: set[tuple[object, ...]] = set()
        for order, staged in prove_each(orders):
            proved += staged.ok
            for code in dict.fromkeys(fault.code for fault in staged.faults if fault.is_error):
                refused.setdefault(code, []).append(order.wearer)
            # One fault of the spec shows in every size; it is told once, with the numbers of the first.
            found += [fault for fault in staged.faults if _place(spec.file, fault) not in where]
            where.update(_place(spec.file, fault) for fault in staged.faults)
    return _Checked(path, found, bodies, proved, refused)


def _place(spec: str, fault: Fault) -> tuple[object, ...]:
    """Where a fault lies in the spec; a fault in a wearer's row lies where the spec sets what the row breaks."""
    if fault.primary is None:
        return fault.code, fault.headline
    spans = [label.span for label in (fault.primary, *fault.others)]
    return fault.code, next((span for span in spans if span.file == spec), spans[0])


def _refusals(spec: str, bodies: int, proved: int, refused: Mapping[str, Sequence[str]]) -> str:
    """How many bodies the garment can't be made for, by reason, most first."""
    from furbelow.diagnose.codes import CODES

    lines = [f"{spec}: proved for {proved:,} of {bodies:,} bodies"]
    for code, wearers in sorted(refused.items(), key=lambda each: -len(each[1])):
        named = ", ".join(wearers[:_NAMED]) + (" ..." if len(wearers) > _NAMED else "")
        why = f"{CODES[code]}: " if code in CODES else ""
        lines.append(f"  {len(wearers):>5,}  {code}  {why}{named}")
    return "\n".join(lines)
