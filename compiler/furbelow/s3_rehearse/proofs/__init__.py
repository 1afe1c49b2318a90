"""The proofs, one file each, named after the fault that it looks for. Each opens with what it guarantees and what it
cannot know."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from importlib import import_module
from os import listdir

from furbelow.s3_rehearse.run import Proof, Run


@cache
def proofs() -> tuple[Callable[[Run], Proof], ...]:
    """Every proof in this folder, in the order of their names."""
    names = sorted(name.removesuffix(".py") for name in listdir(__path__[0]) if name.endswith(".py") and name[0] != "_")
    return tuple(import_module(f"{__name__}.{name}").prove for name in names)
