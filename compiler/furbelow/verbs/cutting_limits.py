"""The options `--most-joins` and `--most-sections`: the maker's pick out of the ways to cut a cloth."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from furbelow.order.order import Order


def add_limits(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--most-joins", metavar="N", type=_whole(0), help="at most so many joins in the strips of each cloth"
    )
    parser.add_argument(
        "--most-sections", metavar="N", type=_whole(1), help="lay each cloth out in at most so many sections"
    )


def within_limits(options: argparse.Namespace, orders: list[Order]) -> list[Order]:
    """The orders in a workroom that has the limits of the call; where the call has none, its own."""

    asked = {
        name: getattr(options, name) for name in ("most_joins", "most_sections") if getattr(options, name) is not None
    }
    return [order._replace(room=order.room._replace(**asked)) for order in orders] if asked else orders


def _whole(least: int) -> Callable[[str], int]:
    """A reader of whole numbers that are no less than `least`."""

    def read(text: str) -> int:
        if not (text.isascii() and text.isdecimal() and len(text) <= 6 and int(text) >= least):
            raise argparse.ArgumentTypeError(f"`{text[:20]}` is no whole number from {least} to 999999")
        return int(text)

    return read
