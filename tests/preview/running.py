"""A preview that runs in the test's own process."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from furbelow.order.read_order import Asked
from furbelow.preview.build import Builder
from furbelow.preview.server import preview_server
from furbelow.preview.trial import Trials
from furbelow.preview.watch import Watch

SPECS = Path(__file__).parents[2] / "specs"


def call(spec: Path, **more: Any) -> Asked:
    return Asked(str(spec), **more)


@contextmanager
def running(spec: Path, **more: Any) -> Iterator[tuple[Watch, int]]:
    """The watch and the port of a preview of that spec, for its first size."""
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
