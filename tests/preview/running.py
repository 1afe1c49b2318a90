"""A preview that runs in the test's own process."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import yaml
from furbelow.order.read_order import Asked
from furbelow.preview.build import Builder
from furbelow.preview.server import preview_server
from furbelow.preview.trial import Trials
from furbelow.preview.watch import Watch

SPECS = Path(__file__).parents[2] / "specs"


def call(spec: Path, **more: Any) -> Asked:
    """For the first size where `more` names nobody."""
    first = next(iter(yaml.safe_load(spec.read_text(encoding="utf-8"))["sizes"]))
    return Asked(str(spec), **({"size": str(first)} | more if "wearer" not in more else more))


@contextmanager
def running(spec: Path, **more: Any) -> Iterator[tuple[Watch, int]]:
    """The watch and the port of a preview of that spec."""
    watch = Watch([str(spec)], Builder(call(spec, **more)).build)
    server = preview_server(watch, Trials(call(spec)), spec.name)
    serving = threading.Thread(target=server.serve_forever, kwargs={"poll_interval": 0.02}, daemon=True)
    serving.start()
    watch.start()
    try:
        yield watch, server.server_address[1]
    finally:
        server.shutdown()
        serving.join()
        server.server_close()
        watch.end()
