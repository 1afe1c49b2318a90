"""The builds of a preview: each is the guide for one body, or what keeps it from being one."""

from __future__ import annotations

import argparse
from collections.abc import Iterable
from dataclasses import dataclass

from furbelow.diagnose.fault import Fault, has_errors
from furbelow.diagnose.report_text import render, tally
from furbelow.order.chain import plan, prove
from furbelow.order.order import Order
from furbelow.verbs.reading import Reader, Stop


@dataclass(frozen=True)
class Built:
    """guide: the page, or nothing where the spec is at fault. report: all faults as text, "" for none."""

    guide: bytes | None
    report: str
    tally: str


class _Listener(Reader):
    """A reader that keeps what it would tell."""

    def __init__(self) -> None:
        super().__init__()
        self.told: list[Fault] = []

    def tell(self, faults: Iterable[Fault]) -> None:
        self.told += faults


class Builder:
    """Builds for the size or wearer that the call names; for the spec's first size where it names none."""

    def __init__(self, options: argparse.Namespace) -> None:
        self._told = options
        self._plans = b""  # of the last build: most saves leave some cloth to be cut as it was

    def build(self) -> Built:
        reader = _Listener()
        try:
            guide = self._guide(reader, self._told)
        except Stop:
            guide = None
        except Exception as error:  # one bad build must not end the preview
            report = f"this is our bug, not yours: {type(error).__name__}: {error}\n"
            return Built(None, report, "a bug of ours")
        sound = guide is not None and not has_errors(reader.told)
        return Built(guide if sound else None, render(reader.told, reader.sources), tally(dict.fromkeys(reader.told)))

    def _guide(self, reader: _Listener, options: argparse.Namespace) -> bytes | None:
        spec, faults = reader.spec_and_faults(options.spec)
        reader.tell(faults)
        if spec is None:
            return None
        room, choices = reader.workroom(options.workroom), reader.choices(options.choices)
        if options.size is None and options.wearer is None:
            if not spec.sizes:
                nobody = "the spec has no sizes, and the call names no wearer"
                reader.tell([Fault("FB214", nobody, help="add `sizes` to the spec, or call with --wearer FILE")])
                return None
            options = argparse.Namespace(**{**vars(options), "size": next(iter(spec.sizes))})
        wearer, body, own = reader.bodies(spec, options)[0]
        proved = prove(Order(spec, wearer, body, {**own, **choices}, room))
        reader.tell(proved.faults)
        if proved.value is None:
            return None
        from furbelow.s4_cut.plan_cache import KeptPlans

        plans = KeptPlans(self._plans)
        planned = plan(proved.value, plans.planner(room))
        reader.tell(planned.faults)
        if planned.value is None:
            return None
        self._plans = plans.as_file()
        from furbelow.s6_write.guide.compose import compose
        from furbelow.s6_write.pages.page import html

        found = planned.value
        return html(compose(found.rehearsal, found.cutting, found.shopping, wearer)).encode()
