"""`furbelow fit`: the best garment under limits on cloth, cost or hours."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable
from contextlib import suppress

from furbelow.verbs.exits import DONE, SPEC_AT_FAULT

_EPILOG = """\
examples, after `furbelow start larkspur --from larkspur`:
  furbelow fit larkspur.yaml --size M --free fullness --so-that "net <= 9 m"
  furbelow fit larkspur.yaml --size M --free fullness,layers --so-that "cost <= 40 EUR and hours <= 6"
  furbelow fit larkspur.yaml --size M --free skirt_length --so-that "net <= 4.5 m" --for "most skirt_length"

A limit may name a material (what is needed of it), `cost` (of all that is bought), `hours`, a choice, or a number of
the garment such as flounce.length. Without --for, the most of each free choice is wanted, in the order given.
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser(
        "fit",
        parents=parents,
        help="find the choices that make the best garment of what is at hand",
        epilog=_EPILOG,
    )
    parser.add_argument("spec", metavar="SPEC", help="the file of the garment")
    parser.add_argument("--free", metavar="CHOICES", required=True, help="the choices to find, parted by commas")
    parser.add_argument(
        "--so-that", metavar="LIMIT", action="append", default=[], help="a limit to keep; may be given several times"
    )
    parser.add_argument("--for", metavar="AIM", dest="aim", default="", help="such as `most layers, then least cost`")
    parser.add_argument("--format", choices=("text", "json"), default="text", help="how the answer is told")
    parser.set_defaults(verb=_fit)


def _fit(options: argparse.Namespace) -> int:
    from furbelow.diagnose.fault import Fault
    from furbelow.fit.fit import fit
    from furbelow.fit.grid import FREE
    from furbelow.fit.report import as_data, as_text
    from furbelow.fit.targets import AIM, limits_by_option
    from furbelow.verbs.reading import Reader, asked

    reader = Reader(options)
    free = {name.strip() for name in options.free.split(",")}
    if held := sorted(free & {given.partition("=")[0].strip() for given in options.choices}):
        reader.stop(
            [Fault("FB703", f"`{held[0]}` is both made with --set and set free", help="leave one of the two out")],
            by_call=True,
        )
    order = reader.one_order(asked(options))
    reader.sources |= {FREE: options.free, AIM: options.aim, **limits_by_option(options.so_that)}
    staged = fit(order, options.free, options.so_that, options.aim, _progress(options.spec))
    if staged.value is None:
        by_call = any(fault.code.startswith("FB70") or fault.code == "FB201" for fault in staged.faults)
        reader.stop(staged.faults, by_call=by_call)
    if options.format == "json":
        reader.print_json(as_data(staged.value))
    else:
        print(as_text(staged.value), end="")
    return DONE if staged.value.best is not None else SPEC_AT_FAULT


def _progress(spec: str) -> Callable[[int, int], None]:
    """Tells on a terminal how far the search is, in one line that is written over and taken away at its end."""
    screen = sys.__stderr__  # what steers the terminal back to the start of its line does not go through an outlet
    if screen is None or screen.closed or not screen.isatty():
        return lambda looked_at, all_: None

    def tell(looked_at: int, all_: int) -> None:
        if looked_at % 100 == 0 or looked_at == all_:
            said = f"{spec}: looked at {looked_at:,} of {all_:,} garments" if looked_at < all_ else ""
            with suppress(OSError):
                print(f"\r{said:<70}", end="" if said else "\r", file=screen, flush=True)

    return tell
