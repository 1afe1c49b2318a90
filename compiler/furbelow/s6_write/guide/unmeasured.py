"""A guide without the measures of a body: the numbers of the work stay, and what they come from is not told."""

from __future__ import annotations

from dataclasses import replace

from furbelow.garment.spec import Spec
from furbelow.s6_write.guide.content_key import content_key
from furbelow.s6_write.guide.guide import Guide


def unmeasured(guide: Guide, spec: Spec) -> Guide:
    """The guide as it may be shown to others. Reasons go as a whole, for each of them leads down to the body."""
    facts = tuple(replace(fact, reason="") for fact in guide.facts if fact.name not in spec.body)
    parts = tuple(
        replace(part, operations=tuple(replace(each, why=()) for each in part.operations)) for part in guide.parts
    )
    shown = replace(
        guide,
        facts=facts,
        cutting=tuple(replace(line, why=()) for line in guide.cutting),
        parts=parts,
        proofs=tuple(replace(proof, shown="") for proof in guide.proofs),
        overview=None,
        picture=(),  # what it says in words tells the waist
        glance=tuple(fact for fact in guide.glance if fact.name != "front-size"),
        measuring=None,
        measures=(),
        reasons=(),
        reasons_in="",
        content_key="",
    )
    return replace(shown, content_key=content_key(shown))
