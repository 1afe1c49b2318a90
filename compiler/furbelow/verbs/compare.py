"""`furbelow compare`: what changes for the maker between two specs or two sizes."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from furbelow.verbs.exits import DONE, SPEC_AT_FAULT, WRONG_USE

if TYPE_CHECKING:
    from furbelow.order.chain import Planned
    from furbelow.order.order import Order
    from furbelow.verbs.reading import Reader

_EPILOG = """\
examples:
  furbelow compare specs/larkspur.yaml --size M --size L
  furbelow compare old/larkspur.yaml specs/larkspur.yaml --size M
  furbelow compare specs/larkspur.yaml specs/larkspur.yaml --size M --size M --set-second fullness=2.5
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    common = parents[0]
    parser = verbs.add_parser(
        "compare",
        parents=[common],
        help="say what changes for the maker between two specs, sizes or choices",
        epilog=_EPILOG,
    )
    parser.add_argument("spec", metavar="SPEC")
    parser.add_argument("second", metavar="SECOND", nargs="?", help="another spec; without it, the same one again")
    parser.add_argument(
        "--size", metavar="NAME", action="append", default=[], dest="sizes", help="once, or once for each"
    )
    parser.add_argument("--workroom", metavar="FILE", help="a file with the machines, habits and prices of the room")
    parser.add_argument("--language", metavar="CODE", help="the language in which steps are told")
    parser.add_argument("--set", metavar="CHOICE=VALUE", action="append", default=[], help="a choice in both")
    parser.add_argument(
        "--set-second", metavar="CHOICE=VALUE", action="append", default=[], help="a choice in the second"
    )
    parser.add_argument("--format", choices=("text", "json"), default="text")
    parser.set_defaults(verb=_compare)


def _compare(options: argparse.Namespace) -> int:
    import sys

    from furbelow.compare.compare import as_data, as_text, compare
    from furbelow.diagnose.json_text import json_text
    from furbelow.verbs.reading import Reader

    if len(options.sizes) not in (1, 2):
        print("furbelow: give one size for both, or one for each: --size M --size L", file=sys.stderr)
        return WRONG_USE
    reader = Reader()
    first = _order(reader, options, options.spec, options.sizes[0], options.set)
    second = _order(
        reader, options, options.second or options.spec, options.sizes[-1], options.set + options.set_second
    )
    one, other = _planned(reader, first), _planned(reader, second)
    if one is None or other is None:
        return SPEC_AT_FAULT
    found = compare(one, other, *_names(options, first, second))
    if options.format == "json":
        from furbelow.diagnose.json_text import json_text

        print(json_text(as_data(found)))
    else:
        print(as_text(found), end="")
    return DONE


def _order(reader: Reader, options: argparse.Namespace, path: str, size: str, choices: list[str]) -> Order:
    from furbelow.order.read_order import Asked

    return reader.orders(Asked(path, size, workroom=options.workroom, choices=choices, language=options.language))[0]


def _planned(reader: Reader, order: Order) -> Planned | None:
    from furbelow.order.chain import planned

    found = planned(order)
    reader.tell(found.faults)
    return found.value


def _names(options: argparse.Namespace, first: Order, second: Order) -> tuple[str, str]:
    """What the two are called: by what tells them apart."""
    if options.second and options.second != options.spec:
        return f"{options.spec}, {first.wearer}", f"{options.second}, {second.wearer}"
    chosen = [", ".join([order.wearer, *_said(order)]) for order in (first, second)]
    return f"{first.spec.title}: {chosen[0]}", chosen[1]


def _said(order: Order) -> list[str]:
    return [f"{name} {written.text}" for name, written in order.choices.items()]
