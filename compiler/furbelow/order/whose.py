"""Whose guide it is, in the words of the guide."""

from __future__ import annotations

from furbelow.order.order import Order
from furbelow.s6_write.words.messages import Messages


def whose(order: Order) -> str:
    """A wearer by name or number, and a size that is nobody's: "size M"."""
    if not order.size:
        return order.wearer
    words = Messages(order.spec.language, order.room.words)
    words.read("pages")
    return words.text("page-size", {"size": order.size})
