"""`furbelow make`: write the guide for a size or a wearer, or a site of guides for a class or every size."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterable
from pathlib import Path
from typing import TYPE_CHECKING

from furbelow.verbs.cutting_limits import add_limits, within_limits
from furbelow.verbs.reading import DONE, SPEC_AT_FAULT, WRONG_USE, Reader, Stop, folder_names

if TYPE_CHECKING:
    from furbelow.diagnose.fault import Fault
    from furbelow.order.order import Order
    from furbelow.s6_write.pages.class_page import Missing


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser(
        "make",
        parents=parents,
        help="write the guide for a size or a wearer, or all guides of a class with one order",
    )
    parser.add_argument("spec", metavar="SPEC")
    parser.add_argument(
        "--every-size", action="store_true", help="a guide for each size in the spec, and the size chart"
    )
    parser.add_argument("--out", metavar="DIR", required=True, help="the folder for the guide")
    parser.add_argument("--replace", action="store_true", help="write over files that were edited by hand")
    parser.add_argument("--no-pdf", action="store_true", help="leave the PDF files out")
    add_limits(parser)
    parser.set_defaults(verb=_make)


class _Listener(Reader):
    """A reader that also keeps what it tells."""

    def __init__(self) -> None:
        super().__init__()
        self.told: list[Fault] = []

    def tell(self, faults: Iterable[Fault]) -> None:
        faults = tuple(faults)
        self.told += faults
        super().tell(faults)


def _make(options: argparse.Namespace) -> int:
    if options.every_size and (options.size is not None or options.wearer is not None):
        print("furbelow: --every-size goes with neither --size nor --wearer", file=sys.stderr)
        raise Stop(WRONG_USE)
    reader = _Listener()
    orders = within_limits(options, reader.orders(options, every=options.every_size))
    if not orders:
        print(f"furbelow: {options.spec} names no sizes; say for whom: --wearer FILE", file=sys.stderr)
        raise Stop(WRONG_USE)
    unread = _unread(reader.told, options.wearer)
    if options.every_size or len(orders) > 1 or unread:
        return _make_site(options, reader, orders, unread)
    return _make_one(options, reader, orders[0])


def _make_one(options: argparse.Namespace, reader: Reader, order: Order) -> int:
    from furbelow.diagnose.report_text import safe
    from furbelow.order.chain import make
    from furbelow.s4_cut.plan_cache import PLANS_FILE
    from furbelow.s6_write.folder import write_folder

    staged = make(order, with_pdf=not options.no_pdf, kept=_kept(Path(options.out)))
    reader.tell(staged.faults)
    if staged.value is None:
        return SPEC_AT_FAULT
    written = write_folder(Path(options.out), staged.value, replace=options.replace, working=(PLANS_FILE,))
    reader.tell(written.faults)
    if written.value is None:
        return SPEC_AT_FAULT
    print(f"{safe(order.wearer)}: {Path(options.out) / 'guide.html'}")
    return DONE


def _kept(folder: Path) -> bytes:
    """The cutting plans of an earlier run; nothing where there is no such file, or none that can be read."""
    from furbelow.s1_read.source import read_bytes
    from furbelow.s4_cut.plan_cache import PLANS_FILE

    _, content = read_bytes(folder / PLANS_FILE)
    return content.value or b""


def _make_site(options: argparse.Namespace, reader: Reader, orders: list[Order], unread: list[Missing]) -> int:
    """A folder of guides for each order, and what is for all beside them; whoever can't be made is named as missing."""
    from furbelow.diagnose.report_text import safe
    from furbelow.order.chain import plan, prove_each
    from furbelow.s4_cut.plan_cache import PLANS_FILE, KeptPlans
    from furbelow.s5_buy.class_order import Garment, class_order
    from furbelow.s6_write.folder import write_folder
    from furbelow.s6_write.pages.class_files import class_files
    from furbelow.s6_write.pages.class_page import Made, Missing, class_page
    from furbelow.s6_write.pages.files import files_of

    out, with_pdf = Path(options.out), not options.no_pdf
    folders = folder_names(order.wearer for order in orders)
    garments: dict[int, Garment] = {}
    made: list[Made] = []
    missing: list[Missing] = []
    for number, (order, proved) in enumerate(prove_each(orders), 1):
        plans = KeptPlans(_kept(out / folders[order.wearer]))
        planned = plan(proved.value, plans.planner(order.room)) if proved.value is not None else None
        faults = (*proved.faults, *(planned.faults if planned else ()))
        found = planned.value if planned else None
        if found is not None:
            files = files_of(found.rehearsal, found.cutting, found.shopping, order.wearer, with_pdf=with_pdf)
            files = {**files, PLANS_FILE: plans.as_file()}
            written = write_folder(out / folders[order.wearer], files, replace=options.replace, working=(PLANS_FILE,))
            faults = (*faults, *written.faults)
            if written.value is not None:
                garments[number] = Garment(found.rehearsal, found.cutting, found.shopping)
                made.append(Made(number, order.wearer, folders[order.wearer], tuple(files)))
                print(f"{safe(order.wearer)}: {out / folders[order.wearer] / 'guide.html'}", flush=True)
        reader.tell(faults)
        if number not in garments:
            missing.append(Missing(order.wearer, _in_words(faults)))
    if not garments:
        return SPEC_AT_FAULT
    whole = class_order(garments)
    sizes = [each.whose.removeprefix("size ") for each in made] if options.every_size else []
    whose = _whose(options, len(orders))
    page = class_page(whole, whose, made, [*missing, *unread], sizes, with_pdf=with_pdf)
    written = write_folder(out, class_files(page, whole), replace=options.replace)
    reader.tell(written.faults)
    if written.value is None:
        return SPEC_AT_FAULT
    print(f"{safe(whose)}: {out / 'index.html'}")
    return SPEC_AT_FAULT if missing or unread else DONE


def _unread(faults: Iterable[Fault], wearers: str | None) -> list[Missing]:
    """The rows of the class that could not be read, by their lines."""
    rows: dict[int, list[Fault]] = {}
    for fault in faults:
        if fault.is_error and fault.primary is not None and fault.primary.span.file == wearers:
            rows.setdefault(fault.primary.span.start_line, []).append(fault)
    if not rows:
        return []  # one guide alone does not need the class page
    from furbelow.s6_write.pages.class_page import Missing

    return [Missing(f"line {line} of the class file", _in_words(told)) for line, told in sorted(rows.items())]


def _in_words(faults: Iterable[Fault]) -> tuple[str, ...]:
    """What kept a guide from being made. Not the headlines: they say measures, and the page is for all to see."""
    from furbelow.diagnose.codes import CODES

    return tuple(dict.fromkeys(CODES[fault.code] for fault in faults if fault.is_error))


def _whose(options: argparse.Namespace, number: int) -> str:
    """What the class is called, in its file or by its number."""
    from furbelow.s1_read.read_wearers import SCHEMA
    from furbelow.s1_read.source import read_checked
    from furbelow.s1_read.values import text_at

    if options.every_size:
        return "every size"
    named = ""
    if not options.wearer.lower().endswith(".csv"):
        named = text_at(read_checked(options.wearer, SCHEMA)[2].value, "class")
    return named or f"a class of {number}"
