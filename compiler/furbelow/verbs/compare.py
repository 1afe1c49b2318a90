"""`furbelow compare`: what changes for the maker between two specs or two sizes."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from furbelow.verbs.exits import DONE, SPEC_AT_FAULT

if TYPE_CHECKING:
    from furbelow.order.chain import Planned
    from furbelow.order.order import Order
    from furbelow.verbs.reading import Reader

_EPILOG = """\
examples, after `furbelow start larkspur --from larkspur`:
  furbelow compare larkspur.yaml --size M --size L
  furbelow compare larkspur.yaml --wearer class.yaml --only Ada --only Bo
  furbelow compare larkspur.yaml --size M --set-second fullness=2.5
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    common = parents[0]
    parser = verbs.add_parser(
        "compare",
        parents=[common],
        help="say what changes for the maker between two specs, sizes or choices",
        epilog=_EPILOG,
    )
    parser.add_argument("spec", metavar="SPEC", help="the file of the garment")
    parser.add_argument("second", metavar="SECOND", nargs="?", help="another spec; without it, the same one again")
    who = parser.add_mutually_exclusive_group()
    who.add_argument("--size", metavar="NAME", action="append", default=[], dest="sizes", help="once, or once for each")
    who.add_argument(
        "--wearer", "--class", dest="wearer", metavar="FILE", help="a file with one wearer, or a class to take two of"
    )
    parser.add_argument(
        "--only", metavar="NAME", action="append", default=[], help="a wearer of the class; once, or once for each"
    )
    parser.add_argument("--workroom", metavar="FILE", help="a file with the machines, habits and prices of the room")
    parser.add_argument("--language", metavar="CODE", help="the language of the answer")
    parser.add_argument("--set", metavar="CHOICE=VALUE", action="append", default=[], help="a choice in both")
    parser.add_argument(
        "--set-second", metavar="CHOICE=VALUE", action="append", default=[], help="a choice in the second"
    )
    parser.add_argument("--format", choices=("text", "json"), default="text", help="how the answer is told")
    parser.set_defaults(verb=_compare)


def _compare(options: argparse.Namespace) -> int:
    from furbelow.compare.compare import as_data, as_text, compare, words_of
    from furbelow.verbs.reading import Reader

    reader = Reader(options)
    first = _order(reader, options, options.spec, 0, options.set)
    second = _order(reader, options, options.second or options.spec, -1, options.set + options.set_second)
    one, other = _planned(reader, first), _planned(reader, second)
    if one is None or other is None:
        return SPEC_AT_FAULT
    found = compare(one, other, *_names(options, first, second))
    if options.format == "json":
        reader.print_json(as_data(found))
    else:
        print(as_text(found, words_of(other)), end="")
    return DONE


def _order(reader: Reader, options: argparse.Namespace, path: str, which: int, choices: list[str]) -> Order:
    """The order of the first (0) or the last (-1) of those that the call names."""
    from furbelow.order.read_order import Asked
    from furbelow.order.unread import Unread

    if len(options.sizes) > 2 or len(options.only) > 2:
        raise Unread(by_call=True, said="give one body for both, or one for each: --size M --size L")
    size = options.sizes[which] if options.sizes else None
    only = options.only[which:][:1]
    asked = Asked(path, size, options.wearer, options.workroom, choices, only=only, language=options.language)
    return reader.one_order(asked)


def _planned(reader: Reader, order: Order) -> Planned | None:
    from furbelow.order.chain import planned

    found = planned(order)
    reader.tell(found.faults)
    return found.value


def _names(options: argparse.Namespace, first: Order, second: Order) -> tuple[str, str]:
    """What the two are called: by what tells them apart."""
    from furbelow.order.whose import whose

    if options.second and options.second != options.spec:
        return f"{options.spec}, {whose(first)}", f"{options.second}, {whose(second)}"
    chosen = [", ".join([whose(order), *_said(order)]) for order in (first, second)]
    return f"{first.spec.title}: {chosen[0]}", chosen[1]


def _said(order: Order) -> list[str]:
    return [f"{name} {written.text}" for name, written in order.choices.items()]
