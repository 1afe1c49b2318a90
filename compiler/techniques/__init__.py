"""The techniques, one file each. A new file in this folder that has a `TECHNIQUE` is a new word for makers."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from importlib import import_module
from pkgutil import iter_modules

from compiler.s1_read.spec import Step
from compiler.techniques.technique import Technique


@cache
def techniques() -> Mapping[str, Technique]:
    """Every technique by its word in a spec, in the order of the words."""
    found = {}
    for module in iter_modules(__path__):
        technique = getattr(import_module(f"{__name__}.{module.name}"), "TECHNIQUE", None)
        if technique is not None:
            found[technique.name] = technique
    return dict(sorted(found.items()))


def technique_of(step: Step) -> Technique:
    """The technique of a step: the spec's own, or the built-in one of that name."""
    return step.own or techniques()[step.technique]
