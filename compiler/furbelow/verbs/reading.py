"""Reading what a call names, with every fault printed as it is met."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterable

from furbelow.diagnose.fault import Fault
from furbelow.diagnose.report_text import render
from furbelow.order.read_order import Asked, OrderReader
from furbelow.verbs.outlet import in_colour


class Reader(OrderReader):
    def tell(self, faults: Iterable[Fault]) -> None:
        faults = tuple(faults)
        super().tell(faults)
        if faults:
            print(render(faults, self.sources, colour=in_colour()), file=sys.stderr, end="")


def asked(options: argparse.Namespace) -> Asked:
    """The files, the size and the choices of a call whose verb takes them all."""
    return Asked(options.spec, options.size, options.wearer, options.workroom, options.choices, options.language)
