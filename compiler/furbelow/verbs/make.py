"""`furbelow make`: write the guide for a size or a wearer, or a site of guides for a class or every size."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from furbelow.named import NamedTuple
from furbelow.order.unread import Unread
from furbelow.verbs.cutting_limits import add_limits, within_limits
from furbelow.verbs.exits import DONE, SPEC_AT_FAULT, STOPPED

if TYPE_CHECKING:
    from furbelow.order.crew import Crew
    from furbelow.order.make_one import Finished
    from furbelow.order.order import Order
    from furbelow.verbs.reading import Reader

MOST_WORKERS = 256

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
    parser.add_argument(
        "spec", metavar="SPEC", help="the file of the garment, or a table of orders with a column `spec` (a .csv file)"
    )
    parser.add_argument(
        "--every-size", action="store_true", help="a guide for each size in the spec, and the size chart"
    )
    parser.add_argument(
        "--booklet", action="store_true", help="one guide for all sizes in the spec: numbers that differ have letters"
    )
    parser.add_argument("--out", metavar="DIR", required=True, help="the folder for the guide")
    parser.add_argument("--replace", action="store_true", help="write over files that were edited by hand")
    parser.add_argument("--no-pdf", action="store_true", help="leave the PDF files out")
    parser.add_argument(
        "--print", action="store_true", help="one PDF of all guides too, for a printer that prints on both sides"
    )
    parser.add_argument(
        "--data", action="store_true", help="write the guides of a class as Markdown with drawings and as JSON too"
    )
    parser.add_argument("--no-measures", action="store_true", help="leave the measures of bodies out of all pages")
    parser.add_argument(
        "--demonstration", action="store_true", help="write the plan for who shows the work too, beside one guide"
    )
    parser.add_argument(
        "--workers", metavar="N", type=_workers, help="processes that work at the same time; as many as the machine has"
    )
    parser.add_argument(
        "--cluster", metavar="ADDRESS", help="let the workers of this Dask scheduler make the guides of a class"
    )
    parser.add_argument(
        "--recut",
        action="store_true",
        help="plan the cutting of the class anew; without it what was planned stays, for it may be cut",
    )
    parser.add_argument(
        "--apart", action="store_true", help="let everybody buy and cut alone, though the guides are made together"
    )
    parser.add_argument("--dismiss", action="store_true", help="take the guides of who has left out of the folder")
    parser.add_argument(
        "--reasons",
        action="store_true",
        help="on paper, an appendix of what was proved and where the numbers come from",
    )
    add_limits(parser)
    parser.add_argument("--format", choices=("text", "json"), default="text", help="how the answer is told")
    parser.set_defaults(verb=_make)


def _workers(text: str) -> int:
    if not (text.isascii() and text.isdecimal() and 0 < int(text[:4]) <= MOST_WORKERS):
        raise argparse.ArgumentTypeError(f"`{text[:20]}` is no whole number from 1 to {MOST_WORKERS}")
    return int(text)


class _Done(NamedTuple):
    """What a call came to: its exit code, and each page as JSON tells it."""

    code: int
    pages: list[dict[str, object]]


def _make(options: argparse.Namespace) -> int:
    from furbelow.order.read_order import is_table
    from furbelow.resources import languages as known_languages

    of_all = "--every-size" if options.every_size else "--booklet"
    one_body = options.size is not None or options.wearer is not None
    if (options.every_size or options.booklet) and (one_body or is_table(options.spec)):
        raise Unread(by_call=True, said=f"{of_all} goes with a spec, and with neither --size nor --wearer")
    if options.print and options.no_pdf:
        raise Unread(by_call=True, said="--print and --no-pdf can't both be meant")
    if options.booklet and (found := _not_with_booklet(options)):
        raise Unread(by_call=True, said=f"--booklet does not go with {found}")
    if not options.out.strip():
        raise Unread(by_call=True, said="--out names no folder; for this one write --out .")
    languages = tuple(dict.fromkeys((options.language or "").split(",")))
    if len(languages) > 1 and (unknown := [each for each in languages if each not in known_languages()]):
        said = f"there are no words for a guide in {', '.join(f'`{each[:20]}`' for each in unknown)}"
        raise Unread(by_call=True, said=f"{said}; the languages are {', '.join(known_languages())}")
    if len(languages) > 1 and (is_table(options.spec) or (options.wearer is not None and not options.only)):
        said = "several languages go with a size, one wearer (--only NAME), --every-size or --booklet; a row of a class has its own"
        raise Unread(by_call=True, said=said)
    from furbelow.verbs.reading import Reader

    reader = Reader(options)
    if len(languages) == 1:
        done = _make_in(options, reader, ())
    else:
        code, pages, folder = DONE, list[dict[str, object]](), Path(options.out)
        for language in languages:
            options.language, options.out = language, str(folder / language)
            one = _make_in(options, reader, languages)
            code, pages = max(code, one.code), [*pages, *one.pages]
            if one.code == STOPPED:
                break
        done = _Done(code, pages)
    if options.format == "json":
        reader.print_json({"pages": done.pages})
    return done.code


def _make_in(options: argparse.Namespace, reader: Reader, languages: tuple[str, ...]) -> _Done:
    """All that is asked for, in one language. languages: all that it is made in, each in a folder beside the others."""
    from furbelow.order.read_order import is_table, unread_rows
    from furbelow.verbs.reading import asked

    orders = within_limits(options, reader.orders(asked(options), every=options.every_size or options.booklet))
    if options.reasons:
        orders = [order._replace(room=order.room._replace(reasons=True)) for order in orders]
    if options.no_measures:
        orders = [order._replace(room=order.room._replace(measures=False)) for order in orders]
    if not orders:
        raise Unread(by_call=True, said=f"{options.spec} names no sizes; say for whom: --wearer FILE")
    if options.booklet:
        return _make_booklet(options, reader, orders, languages)
    of_table = is_table(options.spec)
    unread = unread_rows(reader.told, options.spec if of_table else options.wearer)
    if options.every_size or len(orders) > 1 or unread or (of_table and not options.only):
        if options.demonstration:
            said = "--demonstration goes with one guide: give --size NAME or --only NAME"
            raise Unread(by_call=True, said=said)
        return _make_together(options, reader, orders, unread, languages)
    from furbelow.order.make_one import make_one
    from furbelow.order.shelf import Shelf

    shelf = Shelf(Path(options.out), options.replace)
    with_pdf, with_measures = not options.no_pdf, not options.no_measures
    one = make_one(
        orders[0],
        shelf,
        with_pdf=with_pdf,
        with_measures=with_measures,
        shown=options.demonstration,
        languages=languages,
    )
    return _told_of_one(options, reader, one)


def _told_of_one(options: argparse.Namespace, reader: Reader, one: Finished) -> _Done:
    from furbelow.diagnose.report_text import safe

    reader.tell(one.faults)
    if options.format != "json" and one.page is not None:
        print(f"{safe(one.whose)}: {one.page}", flush=True)
    return _Done(SPEC_AT_FAULT if one.page is None else DONE, [_told(one)])


def _not_with_booklet(options: argparse.Namespace) -> str:
    """What a booklet does without: it holds no work of a class."""
    others = ("every_size", "demonstration", "recut", "dismiss", "cluster", "print")
    return ", ".join(f"--{name.replace('_', '-')}" for name in others if getattr(options, name))


def _make_booklet(
    options: argparse.Namespace, reader: Reader, orders: Sequence[Order], languages: tuple[str, ...]
) -> _Done:
    from furbelow.order.make_booklet import make_booklet
    from furbelow.order.shelf import Shelf

    if len(orders) < 2:
        raise Unread(by_call=True, said=f"{options.spec} has one size; make its guide with --size")
    shelf = Shelf(Path(options.out), options.replace)
    with_pdf, with_measures = not options.no_pdf, not options.no_measures
    one = make_booklet(orders, shelf, with_pdf=with_pdf, with_measures=with_measures, languages=languages)
    return _told_of_one(options, reader, one)


def _told(one: Finished) -> dict[str, object]:
    return {"of": one.whose, "page": None if one.page is None else one.page.as_posix(), "unchanged": one.unchanged}


def _make_together(
    options: argparse.Namespace,
    reader: Reader,
    orders: Sequence[Order],
    unread: tuple[int, ...],
    languages: tuple[str, ...],
) -> _Done:
    """The guides of a class or of every size."""
    from furbelow.order.crew import crew_of, hands
    from furbelow.order.make_class import Making, Together
    from furbelow.order.pupil import HowMade
    from furbelow.order.read_order import is_table
    from furbelow.order.shelf import Shelf
    from furbelow.s6_write.folder import SetKind
    from furbelow.verbs.progress import Progress

    shelf = Shelf(Path(options.out), options.replace)
    with_data = options.data or options.every_size
    each = HowMade(not options.no_pdf, not options.no_measures, with_data, languages)
    how = Together(each, options.recut, options.dismiss, bool(options.only), options.apart, options.print)
    progress = Progress(len(orders))
    crew: Crew
    if options.cluster is None:
        crew = crew_of(hands(options.workers, len(orders)))
    else:
        from furbelow.order.cluster import Cluster, NoCluster

        try:
            crew = Cluster(options.cluster)
        except NoCluster as none:
            raise Unread(by_call=True, said=str(none)) from none
    if options.every_size:
        of, named = SetKind.SIZES, ""
    elif is_table(options.spec):
        of, named = SetKind.ORDERS, Path(options.spec).stem
    else:
        of, named = SetKind.CLASS, reader.class_name(options.wearer)
    finished = Making(orders, shelf, of, named, unread, crew=crew, how=how, seen=progress.planned)
    all_made, told = not unread, list[dict[str, object]]()
    try:
        for one in finished:
            if one.faults:
                progress.clear()
                reader.tell(one.faults)
            if options.format == "json":
                told.append(_told(one))
            else:
                progress.finished(one)
            all_made = all_made and one.page is not None
    except KeyboardInterrupt:
        progress.clear()
        crew.end()  # a guide that is being written is finished; only then the folder tells which are whole
        complete = finished.complete()
        so_far = "no guide was written" if complete is None else f"{complete} of {len(orders)} guides are complete"
        print(f"furbelow: stopped; {so_far}, and the same command goes on from there", file=sys.stderr)
        return _Done(STOPPED, told)
    finally:
        crew.end()
    return _Done(DONE if all_made else SPEC_AT_FAULT, told)
