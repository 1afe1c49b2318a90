"""The options `--most-joins` and `--most-sections`: the maker's pick out of the ways to cut a cloth."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from furbelow.garment.workroom import Workroom
    from furbelow.order.order import Order

_Limit = tuple[str, int]  # a cloth, or "" for every one, and its limit


def add_limits(parser: argparse.ArgumentParser) -> None:
    for option, least, help_ in (
        ("--most-joins", 0, "at most so many joins in the strips of each cloth, or of the one named"),
        ("--most-sections", 1, "lay each cloth, or the one named, out in at most so many sections"),
    ):
        parser.add_argument(
            option,
            metavar="[CLOTH=]N",
            type=_limit(least),
            action="append",
            default=[],
            help=f"{help_}; may be repeated",
        )


def within_limits(options: argparse.Namespace, orders: list[Order]) -> list[Order]:
    """The orders in a workroom that has the limits of the call; where the call has none, its own."""
    from furbelow.order.unread import Unread

    joins, sections = dict[str, int](options.most_joins), dict[str, int](options.most_sections)
    cloths = [name for name, kind in orders[0].spec.materials.items() if kind.kind == "cloth"] if orders else []
    if strangers := [name for name in (*joins, *sections) if name and name not in cloths]:
        raise Unread(by_call=True, said=f"no cloth is called {strangers[0]}; the cloths are {', '.join(cloths)}")
    return [order._replace(room=_limited(order, joins, sections)) for order in orders]


def _limited(order: Order, joins: dict[str, int], sections: dict[str, int]) -> Workroom:
    room = order.room
    return room._replace(
        most_joins=joins.get("", room.most_joins),
        most_sections=sections.get("", room.most_sections),
        joins_of={name: most for name, most in joins.items() if name},
        sections_of={name: most for name, most in sections.items() if name},
    )


def _limit(least: int) -> Callable[[str], _Limit]:
    """A reader of whole numbers that are no less than `least`, with the name of a cloth before them or without."""

    def read(text: str) -> _Limit:
        cloth, _, number = text.rpartition("=")
        if not (number.isascii() and number.isdecimal() and len(number) <= 6 and int(number) >= least):
            raise argparse.ArgumentTypeError(f"`{number[:20]}` is no whole number from {least} to 999999")
        return cloth.strip(), int(number)

    return read
