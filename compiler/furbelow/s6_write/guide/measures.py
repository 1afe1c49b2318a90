"""The measures of the body that a garment is made to, and where the tape lies for each.

Source: ISO 8559-1:2017 for what each measure is, from memory; the waist midway between the lowest rib and the hip bone:
Anthropometry, Apparel Sizing and Design, page 52.
"""

from __future__ import annotations

from collections.abc import Iterator

from furbelow.garment.message import Amount, One
from furbelow.garment.solved import Solved
from furbelow.s6_write.guide.guide import Measure
from furbelow.s6_write.words.words import Words

# The names that are understood, in the order from top to bottom in which they are numbered.
KNOWN = (
    "height",
    "neck_girth",
    "chest_girth",
    "waist_girth",
    "waist_height",
    "hip_girth",
    "hip_height",
    "hip_depth",
    "knee_height",
)


def measured(solved: Solved, words: Words) -> Iterator[Measure]:
    """The measures that some number of this garment stands on, those whose line is drawn first.

    A body is nobody's business: no other is shown.
    """
    words.read("front")
    spec = solved.spec
    needed = {name for number in solved.values.values() for name in number.inputs}
    asked = [name for name in spec.body if name in needed]
    known = sorted((name for name in asked if name in KNOWN), key=KNOWN.index)
    for number, name in enumerate(known, 1):
        how = words.text(
            "front-how", {"name": One(name.replace("_", "-"), tuple(each.replace("_", "-") for each in KNOWN))}
        )
        yield _measure(solved, words, number, name, how)
    for name in asked:
        if name not in known:
            yield _measure(solved, words, 0, name, "")


def _measure(solved: Solved, words: Words, number: int, name: str, how: str) -> Measure:
    label = solved.spec.about_of(name) or words.name(name)
    value = words.said(Amount(solved.values[name].value, words.say.system))
    return Measure(name, number, label, how, value, tuple(_sizes(solved, name, words)))


def _sizes(solved: Solved, name: str, words: Words) -> Iterator[tuple[str, str]]:
    """Where the guide speaks in the units in which the sizes are written."""
    if words.say.system == solved.spec.system:
        for size, body in solved.spec.sizes.items():
            if name in body:
                yield size, words.reckoned(body[name].text)
