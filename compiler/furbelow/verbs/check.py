"""`furbelow check`: prove a spec, write nothing."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from furbelow import __version__
from furbelow.verbs.exits import DONE, SPEC_AT_FAULT

if TYPE_CHECKING:
    from furbelow.order.checked import Checked
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
    parser.add_argument(
        "specs", metavar="SPEC", nargs="+", help="one or several, or tables of orders; `-` is standard input"
    )
    parser.add_argument("--format", choices=("text", "json", "sarif"), default="text", help="how faults are told")
    parser.add_argument("--strict", action="store_true", help="let a warning fail the check too")
    parser.set_defaults(verb=_check)


def _check(options: argparse.Namespace) -> int:
    from furbelow.diagnose.fault import Severity, has_errors
    from furbelow.verbs.reading import Reader

    reader = Reader(options)
    checked = {spec: _checked(reader, options, spec) for spec in options.specs}
    # What lies in the workroom or the class is told once, however many specs are made there.
    found = list(dict.fromkeys(fault for each in checked.values() for fault in each.faults))
    if options.format == "json":
        from furbelow.diagnose.report_json import render_json

        specs = [
            {"spec": spec, "bodies": each.bodies, "proved": each.proved, "refused": each.refused}
            for spec, each in checked.items()
        ]
        print(render_json(found, {"verb": "check", "specs": specs}), end="")
    elif options.format == "sarif":
        from furbelow.diagnose.report_sarif import render_sarif

        print(render_sarif(found, __version__), end="")
    else:
        reader.tell(found)
        for spec, each in checked.items():
            if not has_errors(each.faults) and each.proved == each.bodies:
                print(f"{spec}: sound; proved for {each.proved} {'body' if each.proved == 1 else 'bodies'}")
            elif each.bodies > 1:
                print(_refusals(spec, each))
    failed = has_errors((*found, *reader.told)) or (
        options.strict and any(fault.severity is Severity.WARNING for fault in found)
    )
    return SPEC_AT_FAULT if failed else DONE


def _checked(reader: Reader, options: argparse.Namespace, path: str) -> Checked:
    from furbelow.order.checked import Checked, checked, checked_orders
    from furbelow.order.read_order import is_table, unread_rows
    from furbelow.verbs.reading import asked

    if is_table(path):
        found = checked_orders(reader.orders(asked(argparse.Namespace(**{**vars(options), "spec": path}))))
        return found._replace(bodies=found.bodies + len(unread_rows(reader.told, path)))
    spec, faults = reader.spec_and_faults(path)
    if spec is None:
        return Checked(faults, 0, 0, {})
    orders = reader.orders_of(spec, asked(argparse.Namespace(**{**vars(options), "spec": path})), every=True)
    found = checked(spec, orders)
    return found._replace(faults=(*faults, *found.faults))


def _refusals(spec: str, found: Checked) -> str:
    """How many bodies the garment can't be made for, by reason, most first."""
    from furbelow.diagnose.codes import CODES

    lines = [f"{spec}: proved for {found.proved:,} of {found.bodies:,} bodies"]
    for code, wearers in sorted(found.refused.items(), key=lambda each: -len(each[1])):
        named = ", ".join(wearers[:_NAMED]) + (" ..." if len(wearers) > _NAMED else "")
        why = f"{CODES[code]}: " if code in CODES else ""
        lines.append(f"  {len(wearers):>5,}  {code}  {why}{named}")
    return "\n".join(lines)
