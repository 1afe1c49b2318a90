"""What is said behind the work: the words of the craft that were used, and how the garment is kept.

Washing, storing and the label: common practice, no source. The words of the label: UK SI 1985/2043, schedule 2.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from furbelow.garment.limits import burns_fast
from furbelow.garment.message import Fibre, Length, Own, Things, Values, flag
from furbelow.garment.spec import SupplyKind
from furbelow.garment.technique import Performed
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.guide.guide import Operation, Term
from furbelow.s6_write.words.words import Words

ALWAYS = ("term-right-side", "term-margin", "term-selvedge", "term-sew-back", "term-offcut", "term-hand")
HAND = Fraction(100)  # mm; common practice, no source
# The words that a technique uses, beyond those that every guide does.
USES: Mapping[str, tuple[str, ...]] = {
    "gather": ("term-gather", "term-run", "term-bobbin-thread"),
    "attach": ("term-ease",),
    "neaten": ("term-neaten",),
    "turn seam": ("term-topstitch",),
    "edge with trim": ("term-raw-edge",),
    "band casing": ("term-casing",),
    "folded casing": ("term-casing",),
    "insert elastic": ("term-bodkin",),
    "adjustable elastic": ("term-bodkin",),
    "drawstring": ("term-bodkin",),
    "ribbon threading": ("term-bodkin",),
    "join strips": ("term-strip",),
    "join ends": ("term-ring",),
    "stack layers": ("term-layer",),
    "tucks": ("term-topstitch",),
    "gores": ("term-gore",),
    "zip": ("term-baste", "term-lap"),
    "interface": ("term-interfacing",),
    "bustle tapes": ("term-bustle",),
}


def terms(performed: Sequence[Performed], words: Words) -> Iterator[Term]:
    """The words of the craft that this guide uses, in the order of the alphabet."""
    words.read("front")
    values: Values = {"hand": Length(HAND, "about")}
    used = [name for done in performed for name in USES.get(done.step.written.technique, ())]
    told = (Term(words.text(name), words.text(f"{name}.means", values)) for name in dict.fromkeys((*ALWAYS, *used)))
    yield from sorted(told, key=lambda term: term.word.lower())


def afterwards(run: Run, operations: Sequence[Operation], words: Words) -> Iterator[Term]:
    """Washing, starch, storing, the label."""
    words.read("front")
    cloths = [each.material for each in run.solved.materials.values() if each.material.kind is SupplyKind.CLOTH]
    fibres = Things(tuple(dict.fromkeys(Fibre(cloth.fibre) for cloth in cloths)))
    said: Values = {"fibres": fibres}
    yield _term("after-wash", said, words)
    letters = {operation.key: operation.letter for operation in operations}
    stiffened = [done.key for done in run.performed if done.step.written.technique == "starch"]
    places = [letters[key] for key in stiffened if key in letters]
    if places:
        yield _term("after-starch", {"places": Things(tuple(map(Own, places)))}, words)
    yield _term("after-store", {}, words)
    yield _term("after-label", {**said, "fire": flag(burns_fast(run.solved))}, words)


def _term(name: str, values: Values, words: Words) -> Term:
    return Term(words.text(f"{name}.head"), words.text(name, values))
