"""`furbelow amend`: go on from what was really measured."""

from __future__ import annotations

import argparse

from furbelow.verbs.exits import DONE, SPEC_AT_FAULT

_EPILOG = """\
examples, after `furbelow start larkspur --from larkspur`:
  furbelow amend larkspur.yaml --size M --measured record.yaml
  furbelow amend larkspur.yaml --size M --measured record.yaml --out guide-from-here

Give the same --size or --wearer, --set and --workroom as the guide was made with.
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser(
        "amend",
        parents=parents,
        help="say what to do about what was measured, and write the guide from there on",
        epilog=_EPILOG,
    )
    parser.add_argument("spec", metavar="SPEC", help="the file of the garment")
    parser.add_argument("--measured", metavar="RECORD", required=True, help="the file with what was measured")
    parser.add_argument("--out", metavar="DIR", help="the folder for the guide of the steps that are left")
    parser.add_argument("--replace", action="store_true", help="write over files that were edited by hand")
    parser.add_argument("--no-pdf", action="store_true", help="leave guide.pdf out")
    parser.add_argument("--format", choices=("text", "json"), default="text", help="how the answer is told")
    parser.set_defaults(verb=_amend)


def _amend(options: argparse.Namespace) -> int:
    from pathlib import Path

    from furbelow.amend.amend import amend
    from furbelow.amend.read_record import read_record
    from furbelow.amend.report import as_data, as_text
    from furbelow.verbs.reading import Reader, asked

    reader = Reader(options)
    order = reader.one_order(asked(options))
    reader.keep(options.measured)
    record = read_record(Path(options.measured))
    if record.value is None:
        reader.stop(record.faults)
    reader.tell(record.faults)
    staged = amend(order, record.value)
    reader.tell(staged.faults)
    if staged.value is None:
        return SPEC_AT_FAULT
    if options.format == "json":
        reader.print_json(as_data(staged.value))
    else:
        print(as_text(staged.value), end="")
    if options.out is None:
        return DONE
    from furbelow.amend.fresh_guide import amended_files
    from furbelow.diagnose.report_text import safe
    from furbelow.order.shelf import Shelf
    from furbelow.s6_write.folder import SetKind

    files = amended_files(staged.value, with_pdf=not options.no_pdf)
    kept_out = Shelf(Path(options.out), options.replace).put(files, SetKind.AMENDED)
    reader.tell(kept_out)
    if kept_out:
        return SPEC_AT_FAULT
    if options.format == "text":
        print(f"{safe(order.wearer)}: {Path(options.out) / 'guide.html'}")
    return DONE
