"""`furbelow make`: write the guide for a size, a wearer or a class."""

from __future__ import annotations

import argparse
from collections.abc import Mapping
from pathlib import Path

from compiler.verbs.reading import DONE, SPEC_AT_FAULT, Reader, folder_names


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser("make", parents=parents, help="write the guide for a size, a wearer or a class")
    parser.add_argument("spec", metavar="SPEC")
    parser.add_argument("--out", metavar="DIR", required=True, help="the folder for the guide")
    parser.add_argument("--replace", action="store_true", help="write over files that were edited by hand")
    parser.add_argument("--no-pdf", action="store_true", help="leave guide.pdf out")
    parser.set_defaults(verb=_make)


def _make(told: argparse.Namespace) -> int:
    from compiler.pipeline import make
    from compiler.s6_write.folder import write_folder

    reader = Reader()
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
    folders = folder_names(order.wearer for order in orders)
    for wearer, files in made.items():
        folder = Path(told.out) / folders[wearer] if len(orders) > 1 else Path(told.out)
        written = write_folder(folder, files, replace=told.replace)
        reader.tell(written.faults)
        if written.value is None:
            failed = True
            continue
        print(f"{wearer}: {folder / 'guide.html'}")
    return SPEC_AT_FAULT if failed else DONE
