"""What is worked out of shipped files, kept where Python keeps the byte-code of this folder.

As with any byte-code, a file that is stale, torn or made by another version is passed over, and where none can be kept the
work is done afresh. Nothing of a maker's is kept.
"""

from __future__ import annotations

import marshal
import os
import sys
from collections.abc import Callable
from contextlib import suppress
from hashlib import sha256
from importlib.util import cache_from_source
from typing import Any

_MARK = 32  # bytes: the sum of what it was worked out of, by which Python, and of what is kept


def kept(name: str, source: bytes, work_out: Callable[[], Any]) -> Any:
    """What was worked out, of texts, numbers, tuples and dictionaries alone. source: all that it hangs on."""
    file = f"{os.path.dirname(cache_from_source(__file__))}/{name.replace('/', '-')}.{sys.implementation.cache_tag}"
    with suppress(OSError), open(file, "rb") as held:
        found = held.read()
        if found[:_MARK] == _mark(source, found[_MARK:]):
            return marshal.loads(found[_MARK:])
    made = work_out()
    if not sys.dont_write_bytecode:
        content = marshal.dumps(made)
        beside = f"{file}.{os.getpid()}"
        with suppress(OSError):
            with open(beside, "wb") as held:
                held.write(_mark(source, content) + content)
            os.replace(beside, file)
    return made


def _mark(source: bytes, content: bytes) -> bytes:
    return sha256(sys.version.encode() + source + content).digest()
