"""A guide for every size of a spec, one after another as they are finished, and the page with the chart of the sizes."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from furbelow.order.make_class import Making
from furbelow.order.make_one import Finished
from furbelow.order.order import Order
from furbelow.order.shelf import Shelf


def make_range(orders: Sequence[Order], shelf: Shelf, *, with_pdf: bool = True) -> Iterator[Finished]:
    """orders: one for each size. What is bought and cut for all is one order, as for a class."""
    return Making(orders, shelf, with_pdf).finished("", are_sizes=True)
