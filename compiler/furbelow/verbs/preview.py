"""`furbelow preview`: the guide in a browser while the spec is being written."""

from __future__ import annotations

import argparse
import sys

from furbelow.verbs.exits import DONE, WRONG_USE

_EPILOG = """\
examples, after `furbelow start larkspur --from larkspur`:
  furbelow preview larkspur.yaml --size M
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser(
        "preview", parents=parents, help="show the guide in a browser while you write the spec", epilog=_EPILOG
    )
    parser.add_argument("spec", metavar="SPEC", help="the file of the garment")
    parser.add_argument(
        "--port", type=int, default=0, help="the port on this machine; any free one where none is given"
    )
    parser.set_defaults(verb=_preview)


def _preview(options: argparse.Namespace) -> int:
    from pathlib import Path

    from furbelow.preview.build import Builder
    from furbelow.preview.server import LOOPBACK, preview_server
    from furbelow.preview.trial import Trials
    from furbelow.preview.watch import Watch
    from furbelow.verbs.reading import asked

    files = [file for file in (options.spec, options.workroom, options.wearer) if file is not None]
    watch = Watch(files, Builder(asked(options)).build)
    try:
        server = preview_server(watch, Trials(asked(options)), Path(options.spec).name, options.port)
    except (OSError, OverflowError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        print(f"furbelow: port {options.port} can't be used: {reason.lower()}", file=sys.stderr)
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
