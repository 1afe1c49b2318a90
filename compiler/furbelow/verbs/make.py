"""`furbelow make`: write the guide for a size or a wearer, or a site of guides for a class or every size."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from furbelow.verbs.cutting_limits import add_limits, within_limits
from furbelow.verbs.exits import DONE, SPEC_AT_FAULT, WRONG_USE

_EPILOG = """\
examples, after `furbelow start larkspur --from larkspur`:
  furbelow make larkspur.yaml --size M --out guide
  furbelow make larkspur.yaml --class class.yaml --out class --no-pdf
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser(
        "make",
        parents=parents,
        help="write the guide for a size or a wearer, or all guides of a class with one order",
        epilog=_EPILOG,
    )
    parser.add_argument("spec", metavar="SPEC", help="the file of the garment")
    parser.add_argument(
        "--every-size", action="store_true", help="a guide for each size in the spec, and the size chart"
    )
    parser.add_argument("--out", metavar="DIR", required=True, help="the folder for the guide")
    parser.add_argument("--replace", action="store_true", help="write over files that were edited by hand")
    parser.add_argument("--no-pdf", action="store_true", help="leave the PDF files out")
    add_limits(parser)
    parser.set_defaults(verb=_make)


def _make(options: argparse.Namespace) -> int:
    if options.every_size and (options.size is not None or options.wearer is not None):
        print("furbelow: --every-size goes with neither --size nor --wearer", file=sys.stderr)
        return WRONG_USE
    if not options.out.strip():
        print("furbelow: --out names no folder; for this one write --out .", file=sys.stderr)
        return WRONG_USE
    from furbelow.diagnose.report_text import safe
    from furbelow.order.make_class import make_class, unread_rows
    from furbelow.order.make_one import make_one
    from furbelow.order.make_range import make_range
    from furbelow.order.shelf import Shelf
    from furbelow.verbs.reading import Reader, asked

    reader = Reader(options)
    orders = within_limits(options, reader.orders(asked(options), every=options.every_size))
    if not orders:
        print(f"furbelow: {options.spec} names no sizes; say for whom: --wearer FILE", file=sys.stderr)
        return WRONG_USE
    shelf, with_pdf = Shelf(Path(options.out), options.replace), not options.no_pdf
    unread = unread_rows(reader.told, options.wearer)
    if options.every_size:
        finished = make_range(orders, shelf, with_pdf=with_pdf)
    elif len(orders) > 1 or unread:
        named = reader.class_name(options.wearer)
        finished = make_class(orders, named, shelf, unread, with_pdf=with_pdf)
    else:
        finished = iter([make_one(orders[0], shelf, with_pdf=with_pdf)])
    all_made = not unread
    for guide in finished:
        reader.tell(guide.faults)
        if guide.page is None:
            all_made = False
        else:
            print(f"{safe(guide.whose)}: {guide.page}", flush=True)
    return DONE if all_made else SPEC_AT_FAULT
