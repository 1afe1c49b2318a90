"""Templates ready to be filled in, compiled once and kept where Python keeps the byte-code of this folder.

Compiling the templates takes longer than filling them in. As with any byte-code, a file that is stale, torn or made by
another version is passed over, and where none can be kept (a folder without the right to write, a full disk,
`PYTHONDONTWRITEBYTECODE`) the templates are compiled afresh. Nothing of a guide is in these files.
"""

from __future__ import annotations

import sys
from contextlib import suppress
from importlib.util import cache_from_source
from pathlib import Path
from typing import Any

from jinja2 import Environment, FileSystemBytecodeCache, FunctionLoader, StrictUndefined
from jinja2.bccache import Bucket
from jinja2.runtime import Context

from furbelow.resources import template


def environment(**options: Any) -> Environment:
    """The templates of `templates/` by file name, and how a copy is called; a name that a template misspells is an error.

    options: of `jinja2.Environment`. One template is filled in by one kind of environment only, for what was compiled
    is kept under its name.
    """
    found = Environment(
        loader=FunctionLoader(lambda name: template(name).read_text(encoding="utf-8")),
        undefined=StrictUndefined,
        keep_trailing_newline=True,
        bytecode_cache=_BesideByteCode(str(Path(cache_from_source(__file__)).parent)),
        **options,
    )
    found.context_class = _Context
    return found


class _Context(Context):
    """What a template knows while it is filled in; see `filled_in`."""

    def __init__(self, environment: Environment, parent: dict[str, Any], *told: Any, **named: Any) -> None:
        super().__init__(environment, parent, *told, **named)
        parent.get("contexts", []).append(self)


class _BesideByteCode(FileSystemBytecodeCache):
    def dump_bytecode(self, bucket: Bucket) -> None:
        if not sys.dont_write_bytecode:
            with suppress(OSError):
                super().dump_bytecode(bucket)
