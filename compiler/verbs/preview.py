"""`furbelow preview`: the guide in a browser while the spec is being written."""

from __future__ import annotations

import argparse
import sys

from compiler.verbs.reading import DONE, WRONG_USE


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser("preview", parents=parents, help="show the guide in a browser while you write the spec")
    parser.add_argument("spec", metavar="SPEC")
    parser.add_argument("--port", type=int, default=0, help="the port on this machine; any free one where none is given")
    parser.set_defaults(verb=_preview)


def _preview(told: argparse.Namespace) -> int:
    from pathlib import Path

    from compiler.preview.build import Builder
    from compiler.preview.server import LOOPBACK, preview_server
    from compiler.preview.watch import Watch

    files = [file for file in (told.spec, told.workroom, told.wearer) if file is not None]
    watch = Watch(files, Builder(told).build)
    try:
        server = preview_server(watch, Path(told.spec).name, told.port)
    except (OSError, OverflowError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        print(f"furbelow: port {told.port} can't be used: {reason.lower()}", file=sys.stderr)
        return WRONG_USE
    watch.start()
    print(f"http://{LOOPBACK}:{server.server_address[1]}/  (Ctrl-C ends it)", flush=True)
    try:
        server.serve_forever()
    except KeyboardInterrupt:
        print()
    finally:
        server.server_close()
        watch.end()
    return DONE
