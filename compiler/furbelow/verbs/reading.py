"""Reading what a call names, with every fault printed as it is met."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterable, Mapping

from furbelow.diagnose.fault import Fault
from furbelow.diagnose.report_json import render_json
from furbelow.diagnose.report_text import render
from furbelow.order.order import Order
from furbelow.order.read_order import Asked, OrderReader, is_table
from furbelow.verbs.outlet import in_colour


class Reader(OrderReader):
    """Of one call. What it has told is left with the options, for an answer in JSON that ends early."""

    def __init__(self, options: argparse.Namespace) -> None:
        super().__init__()
        self._called = options.called
        options.told = self.told

    def orders(self, asked: Asked, *, every: bool = False) -> list[Order]:
        """Those of a spec for whom the call names; or where a table of orders stands in its place, those of its rows."""
        if is_table(asked.spec):
            from furbelow.order.order_table import table_orders

            return table_orders(self, asked)
        return super().orders(asked, every=every)

    def print_json(self, told: Mapping[str, object]) -> None:
        """The answer of the verb, with the faults that were told on the way."""
        print(render_json(self.told, {"verb": self._called, **told}), end="")

    def tell(self, faults: Iterable[Fault]) -> None:
        """A warning that is the same for many of a class is printed with the first of them; an error is each one's own."""
        faults = tuple(faults)
        said = [fault for fault in faults if fault.is_error or fault not in self.told]
        super().tell(faults)
        if said:
            print(render(said, self.sources, colour=in_colour()), file=sys.stderr, end="")


def asked(options: argparse.Namespace) -> Asked:
    """The files, the size and the choices of a call whose verb takes them all."""
    return Asked(
        options.spec,
        options.size,
        options.wearer,
        options.workroom,
        options.choices,
        only=options.only,
        language=options.language,
    )
