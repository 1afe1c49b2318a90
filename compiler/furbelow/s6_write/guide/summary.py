"""The table of measurements: body and choices, the garment as a whole, its waist, and how long the work takes."""

from __future__ import annotations

from collections.abc import Iterator

from furbelow.garment.bench import Casing, Opening
from furbelow.garment.message import Amount, Length, Number, One, Values, flag
from furbelow.garment.solved import Derivation
from furbelow.s3_rehearse.run import Rehearsal, Run
from furbelow.s3_rehearse.ways_in import ways_in
from furbelow.s5_buy.hours import in_fives
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.guide.garment_facts import elastic_reason, fact, garment_facts
from furbelow.s6_write.guide.guide import Fact
from furbelow.s6_write.guide.reasons import elastic_name, name_of
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.guide.told_reason import Teller, because_said, rounding_said
from furbelow.s6_write.words.words import Words

_FASTENERS = ("hook-and-bar", "hook-and-eye", "button", "snaps", "ties", "zip")


def summary(rehearsal: Rehearsal, words: Words) -> Iterator[Fact]:
    words.read("facts")
    solved, run = rehearsal.solved, rehearsal.run
    spec = solved.spec
    # A body is nobody's business: only the measures that some number of this guide stands on are shown.
    needed = {name for number in solved.values.values() for name in number.inputs}
    names = [*(name for name in spec.body if name in needed), *spec.choices, *spec.measures]
    teller = Teller(solved, {}, words)
    for name in names:
        yield _solved(solved.values[name], spec.about_of(name) or words.name(name), words, teller)
    yield from garment_facts(run, words)
    for casing in run.final.casings.values():
        yield from _casing(run, casing, words)
    for opening in ways_in(run.final):
        yield from _opening(opening, words)


def times(shopping: ShoppingList, words: Words) -> Iterator[Fact]:
    """How long the work takes, for planning the day: the times of the steps as they are printed, added up."""
    whole, beginner = duration(shopping.planned_minutes), words.say.room.beginner
    if beginner == 1:
        yield fact(words, "", "fact-time", whole)
    else:
        yield fact(words, "", "fact-time-beginner", whole, {"times": Number(beginner)})
    yield Fact("", words.text("fact-time-cutting"), words.said(duration(in_fives(shopping.cutting_minutes))), "")


def _solved(derivation: Derivation, label: str, words: Words, teller: Teller) -> Fact:
    system = words.say.system
    if derivation.because:
        reason = because_said(derivation.because, words)
    elif derivation.formula == derivation.value.show(system):
        reason = ""
    elif words.say.solved.spec.is_translated:
        reason = teller.in_words(derivation)
        if derivation.with_values and derivation.with_values != derivation.formula:
            reason = f"{reason} = {teller.signs(derivation.with_values)}"
    else:
        # The maker's names read as words: `waist_height` is the waist height.
        reason = derivation.formula.replace("_", " ")
        if derivation.with_values and derivation.with_values != derivation.formula:
            reason = f"{reason} = {derivation.with_values.replace('_', ' ')}"
    if rounding := rounding_said(derivation.rounded, words.say.solved, words):
        reason = f"{reason}; {rounding}"
    value = words.said(Amount(derivation.value, system))
    return Fact(derivation.name, label, value, "" if derivation.origin == "body" else reason)


def _casing(run: Run, casing: Casing, words: Words) -> Iterator[Fact]:
    name = name_of(run.solved, f"{casing.piece}.length", casing.length)
    yield fact(words, name, "fact-casing", Length(casing.length))
    if casing.elastic:
        label, value = words.text("fact-elastic"), words.said(Length(casing.elastic_length))
        yield Fact(elastic_name(run, casing), label, value, elastic_reason(run, casing, words))


def _opening(opening: Opening, words: Words) -> Iterator[Fact]:
    by = One(opening.closed_by.replace(" ", "-") or "zip", _FASTENERS)
    values: Values = {"by": by, "banded": flag(bool(opening.band))}
    yield fact(words, "", "fact-waist", Length(opening.waist), values)
    yield fact(words, "", "fact-opening", Length(opening.length))
