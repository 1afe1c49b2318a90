"""`furbelow-editor`: the language server as a command of its own.

Started so, no folder that it is started in comes before the installed modules, as with `python -m`: the folder of a spec
that somebody sent may hold code of any name.
"""

from __future__ import annotations

import sys


def main() -> None:
    """Serves one editor over standard input and output."""
    try:
        from furbelow.editor.server import server
    except ModuleNotFoundError as missing:
        if missing.name not in ("pygls", "lsprotocol"):
            raise
        print("furbelow-editor: it needs more than furbelow: pip install 'furbelow[editor]'", file=sys.stderr)
        sys.exit(2)
    server().start_io()
