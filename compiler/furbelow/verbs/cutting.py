"""`furbelow cutting`: the cutting plan of each cloth, how good it is, and the other ways to cut it."""

from __future__ import annotations

import argparse

from furbelow.verbs.cutting_limits import add_limits, within_limits
from furbelow.verbs.exits import DONE, SPEC_AT_FAULT

_EPILOG = """\
examples, after `furbelow start larkspur --from larkspur`:
  furbelow cutting larkspur.yaml --size M
  furbelow cutting larkspur.yaml --size M --most-joins 0
  furbelow cutting larkspur.yaml --size M --most-sections 1 --format json
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser(
        "cutting",
        parents=parents,
        help="show the cutting plan of each cloth, how good it is, and what fewer joins would cost",
        epilog=_EPILOG,
    )
    parser.add_argument("spec", metavar="SPEC", help="the file of the garment")
    add_limits(parser)
    parser.add_argument("--format", choices=("text", "json"), default="text", help="how the answer is told")
    parser.set_defaults(verb=_cutting)


def _cutting(options: argparse.Namespace) -> int:
    from furbelow.compare.ways_to_cut import as_data, as_text, ways_to_cut
    from furbelow.order.chain import planned_each
    from furbelow.order.whose import whose
    from furbelow.verbs.reading import Reader, asked

    reader = Reader(options)
    shown, all_sound = [], True
    for order, planned in planned_each(within_limits(options, reader.orders(asked(options)))):
        reader.tell(planned.faults)
        if planned.value is None:
            all_sound = False
            continue
        ways = ways_to_cut(planned.value)
        if options.format == "json":
            shown.append(as_data(planned.value, ways, whose(order)))
        else:
            print(as_text(planned.value, ways, whose(order)), end="")
    if options.format == "json":
        reader.print_json({"cuttings": shown})
    return DONE if all_sound else SPEC_AT_FAULT
