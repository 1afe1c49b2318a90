"""The shipped words, read once and kept where Python keeps the byte-code of this folder.

Reading them takes longer than saying them. As with any byte-code, a file that is stale, torn or made by another version is
passed over, and where none can be kept the words are read afresh. What is kept runs code when it is loaded, as byte-code
does: so a teacher's own words are never kept.
"""

from __future__ import annotations

import os
import pickle
import sys
from collections.abc import Callable
from contextlib import suppress
from hashlib import sha256
from importlib.util import cache_from_source
from pathlib import Path

from fluent.syntax import ast

_MARK = 64  # letters: the sum of what was read, by what, and of what is kept


def kept_words(name: str, source: str, read: Callable[[str, str], ast.Resource]) -> ast.Resource:
    """The messages of a shipped file without their places, which faults alone name; shipped words have none.

    name: of the file, such as `words/de/gather.ftl`. read: how it is read where it is not kept.
    """
    file = Path(cache_from_source(__file__)).parent / f"{name.replace('/', '-')}.{sys.implementation.cache_tag}"
    with suppress(OSError):
        kept = file.read_bytes()
        if kept[:_MARK] == _mark(source, kept[_MARK:]):
            found: ast.Resource = pickle.loads(kept[_MARK:])
            return found
    words = read(name, source)
    _without_places(words)
    if not sys.dont_write_bytecode:
        kept = pickle.dumps(words, pickle.HIGHEST_PROTOCOL)
        beside = file.with_suffix(f".{os.getpid()}")
        with suppress(OSError):
            beside.write_bytes(_mark(source, kept) + kept)
            os.replace(beside, file)
    return words


def _mark(source: str, kept: bytes) -> bytes:
    return sha256(f"{sys.version}\n{ast.__file__}\n{source}".encode() + kept).hexdigest().encode()


def _without_places(node: object) -> None:
    if isinstance(node, ast.SyntaxNode):
        node.span = None
    for held in vars(node).values() if isinstance(node, ast.BaseNode) else ():
        for each in held if isinstance(held, list) else (held,):
            _without_places(each)
