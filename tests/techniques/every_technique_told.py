"""What each technique says, by its name, in one language: the steps of the garments that have every technique in them."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from functools import cache

from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Instructions
from furbelow.resources import template
from furbelow.s6_write.words.said_step import SaidStep, said_step
from furbelow.s6_write.words.words import Words
from furbelow.techniques import _modules, technique_of

from tests.techniques.small import Worked, work
from tests.techniques.test_every_technique_in_a_guide import GARMENTS, OWN, SUPPLIES


@cache
def worked() -> tuple[Worked, ...]:
    return tuple(work(pieces, steps, own=OWN, materials=SUPPLIES) for pieces, steps in GARMENTS.values())


def instructions_in(garments: Iterable[Worked]) -> Iterator[Instructions]:
    """Those of each step, but for what a maker tells in her own words."""
    for garment in garments:
        say = Phrasing(garment.solved, garment.room)
        for done in garment.performed:
            told = technique_of(done.step.written).instructions(done, say)
            if isinstance(told, Instructions):
                yield told


@cache
def as_written() -> Mapping[str, str]:
    """What each message of a technique says in English, as it stands in the file, by its name; those said in common too."""
    said = {}
    for name in (*(module.replace("_", "-") for module in _modules()), "common"):
        file = template(f"words/en/{name}.ftl")
        text = file.read_text() if file.exists() else ""
        for found in re.finditer(r"(?m)^([a-z][a-z-]*) = (.*(?:\n +(?![. ]).*)*)", text):
            said[found[1]] = found[2]
    return said


@cache
def told_in(language: str) -> Mapping[str, tuple[SaidStep, ...]]:
    told: dict[str, tuple[SaidStep, ...]] = {}
    for garment in worked():
        # One join for each copy that may be pieced, for nothing is planned here.
        pieced = {name: each.count for name, each in garment.solved.pieces.items() if each.piece.piecing}
        words = Words(language, Phrasing(garment.solved, garment.room, pieced))
        for done in garment.performed:
            name = done.step.written.technique
            told[name] = (*told.get(name, ()), said_step(done, words))
    return dict(sorted(told.items()))


def as_read(step: SaidStep) -> str:
    """A step as a guide prints it: cautions, sentences with their checks."""
    lines = [f"## {step.title}", step.aim, *(f"! {text}" for _, text in step.cautions)]
    for number, action in enumerate(step.actions, 1):
        lines.append(f"{number}. {action.text}" + (f" ({action.chain})" if action.chain else ""))
        lines += [f"   - {part}" for part in (action.check, action.tolerance, action.remedy) if part]
    return "\n".join(lines)
