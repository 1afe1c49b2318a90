"""`furbelow preview`: the guide in a browser while the spec is being written."""

from __future__ import annotations

import argparse
import sys

from furbelow.order.unread import Unread
from furbelow.verbs.exits import DONE

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
    parser.add_argument("--format", choices=("text", "json"), default="text", help="how the answer is told")
    parser.set_defaults(verb=_preview)


def _preview(options: argparse.Namespace) -> int:
    from pathlib import Path

    from furbelow.preview.build import Builder
    from furbelow.preview.server import LOOPBACK, preview_server
    from furbelow.preview.trial import Trials
    from furbelow.preview.watch import Watch
    from furbelow.verbs.reading import Reader, asked

    reader = Reader(options)
    if options.size is None and options.wearer is None:
        reader.orders(asked(options))  # says that nobody is named, and the sizes
    files = [file for file in (options.spec, options.workroom, options.wearer) if file is not None]
    watch = Watch(files, Builder(asked(options)).build)
    try:
        server = preview_server(watch, Trials(asked(options)), Path(options.spec).name, options.port)
    except (OSError, OverflowError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise Unread(by_call=True, said=f"port {options.port} can't be used: {reason.lower()}") from error
    watch.start()
    address = f"http://{LOOPBACK}:{server.server_address[1]}/"
    if options.format == "json":
        reader.print_json({"address": address})
    else:
        print(f"{address}  (Ctrl-C ends it)")
    sys.stdout.flush()  # whoever started it waits for the address
    try:
        server.serve_forever()
    except KeyboardInterrupt:
        print()
    finally:
        server.server_close()
        watch.end()
    return DONE
