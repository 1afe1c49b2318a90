"""`furbelow check`: prove a spec, write nothing."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from compiler import __version__
from compiler.verbs.reading import DONE, SPEC_AT_FAULT, Reader, count

if TYPE_CHECKING:
    from compiler.diagnostics import Fault


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser("check", parents=parents, help="prove a spec for every size, or for one body")
    parser.add_argument("spec", metavar="SPEC")
    parser.add_argument("--format", choices=("text", "json", "sarif"), default="text", help="how faults are told")
    parser.set_defaults(verb=_check)


def _check(told: argparse.Namespace) -> int:
    from compiler.diagnostics import has_errors
    from compiler.pipeline import Order, prove

    reader = Reader()
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
            print(f"{told.spec}: sound; proved for {count(proved, 'body', 'bodies')}")
    return SPEC_AT_FAULT if has_errors(found) else DONE
