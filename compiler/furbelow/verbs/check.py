"""`furbelow check`: prove a spec, write nothing."""

from __future__ import annotations

import argparse
from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

from furbelow import __version__
from furbelow.verbs.exits import DONE, SPEC_AT_FAULT

if TYPE_CHECKING:
    from furbelow.diagnose.fault import Fault
    from furbelow.order.order import Order

_NAMED = 5  # wearers named for each reason in the text; JSON has them all


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser(
        "check", parents=parents, help="prove a spec for every size, for one body, or for a whole class"
    )
    parser.add_argument("spec", metavar="SPEC")
    parser.add_argument("--format", choices=("text", "json", "sarif"), default="text", help="how faults are told")
    parser.set_defaults(verb=_check)


def _check(options: argparse.Namespace) -> int:
    from furbelow.diagnose.fault import has_errors
    from furbelow.order.checked import at_the_ends, checked_each
    from furbelow.verbs.reading import Reader, asked

    reader = Reader()
    spec, faults = reader.spec_and_faults(options.spec)
    found: list[Fault] = list(faults)
    proved = 0
    sound: list[Order] = []
    refused: dict[str, list[str]] = {}  # fault code -> wearers
    bodies = 0
    if spec is not None:
        orders = reader.orders_of(spec, asked(options), every=True)
        bodies = len(orders)
        where: set[tuple[object, ...]] = set()
        for order, staged in checked_each(orders):
            proved += staged.ok
            if staged.ok:
                sound.append(order)
            for code in dict.fromkeys(fault.code for fault in staged.faults if fault.is_error):
                refused.setdefault(code, []).append(order.wearer)
            # One fault of the spec shows in every size; it is told once, with the numbers of the first.
            found += [fault for fault in staged.faults if _place(spec.file, fault) not in where]
            where.update(_place(spec.file, fault) for fault in staged.faults)
        if not has_errors(found):
            found += at_the_ends(sound)
    if options.format == "json":
        from furbelow.diagnose.report_json import render_json

        print(render_json(found, {"bodies": bodies, "proved": proved, "refused": refused}), end="")
    elif options.format == "sarif":
        from furbelow.diagnose.report_sarif import render_sarif

        print(render_sarif(found, __version__), end="")
    else:
        reader.tell(found)
        if spec is not None and not has_errors(found):
            print(f"{options.spec}: sound; proved for {proved} {'body' if proved == 1 else 'bodies'}")
        elif bodies > 1:
            print(_refusals(options.spec, bodies, proved, refused))
    return SPEC_AT_FAULT if has_errors(found) else DONE


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
