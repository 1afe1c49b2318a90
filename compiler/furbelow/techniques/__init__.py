"""The techniques, one file each. A new file in this folder that has a `TECHNIQUE` is a new word for makers."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from functools import cache
from importlib import import_module
from os import listdir

from furbelow.diagnose.nearest import nearest
from furbelow.garment.spec import Step
from furbelow.garment.technique import Kind, Picture, Technique


class _Library(Mapping[str, Technique]):
    """Every technique by its word, in the order of the words. A module is loaded when its word is asked for.

    A spec uses a dozen of them; to load all of them would take longer than to check it.
    """

    def __getitem__(self, word: str) -> Technique:
        if word.replace(" ", "_") in _modules() and (found := _technique(word.replace(" ", "_"))):
            return found
        raise KeyError(word)

    def __iter__(self) -> Iterator[str]:
        return iter(sorted(found.name for module in _modules() if (found := _technique(module))))

    def __len__(self) -> int:
        return sum(1 for _ in self)


@cache
def _modules() -> frozenset[str]:
    # pkgutil says the same, and loads a debugger's library for it.
    return frozenset(
        name.removesuffix(".py") for name in listdir(__path__[0]) if name.endswith(".py") and name[0] != "_"
    )


@cache
def _technique(module: str) -> Technique | None:
    found: Technique | None = getattr(import_module(f"{__name__}.{module}"), "TECHNIQUE", None)
    if found is not None:
        _hold_to_contract(found, module)
    return found


def _hold_to_contract(technique: Technique, module: str) -> None:
    """What the type checker does not see in a file that nothing imports by its name. Fails: TypeError for a slip."""
    for picture in technique.pictures:
        if not isinstance(picture, Picture):
            near = " or ".join(f"`{word}`" for word in nearest(picture, list(Picture))) or "one of Picture"
            raise TypeError(f"techniques/{module}.py: no figure is called `{picture}`; {near} is meant")
    for name, key in technique.parameters.items():
        if not isinstance(key.kind, Kind | tuple):
            near = " or ".join(f"`{word}`" for word in nearest(key.kind, list(Kind))) or "one of Kind"
            raise TypeError(f"techniques/{module}.py: `{name}` has no kind `{key.kind}`; {near} is meant")
        if key.kind is Kind.MATERIAL and not key.supplies:
            raise TypeError(f"techniques/{module}.py: `{name}` takes a material and names no kind of it in `supplies`")


_LIBRARY = _Library()


def techniques() -> Mapping[str, Technique]:
    """Every technique by its word in a spec. A technique's file has the name of its word."""
    return _LIBRARY


def technique_of(step: Step) -> Technique:
    """The technique of a step: the spec's own, or the built-in one of that name."""
    if step.own is None:
        return techniques()[step.technique]
    from furbelow.techniques.own_technique import OwnTechnique  # few specs describe one

    if not isinstance(step.own, OwnTechnique):
        raise TypeError(f"`{step.own.name}` is described as {type(step.own).__name__}, which nobody works")
    return step.own
