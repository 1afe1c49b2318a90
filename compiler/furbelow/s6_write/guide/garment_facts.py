"""What the guide says of the garment as a whole: its length, its hems, how full it is, what it weighs."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.garment.bench import Casing
from furbelow.garment.message import Length, Own, Part, Pieces, Ratio, Supply, Things, Value, Values, Weight, flag
from furbelow.s3_rehearse.levelling import lengths_at, slanting_at_sides
from furbelow.s3_rehearse.run import Run
from furbelow.s3_rehearse.volume import Hem, Volume, volume_of
from furbelow.s3_rehearse.weight import grams_of, weight_of
from furbelow.s6_write.guide.guide import Fact
from furbelow.s6_write.words.words import Words

_PLACES = ("fact-length-front", "fact-length-sides", "fact-length-back")


def garment_facts(run: Run, words: Words) -> Iterator[Fact]:
    """The finished length first, the weight last. Each carries the name that `furbelow why` answers to."""
    words.read("facts")
    volume = volume_of(run)
    yield fact(words, "top_to_hem", "fact-length", Length(max(run.drops.values())))
    yield from _levelled(run, volume, words)
    yield from _stepped(volume, words)
    yield from _hems(volume, words)
    waist = Length(volume.waist)
    hem = Length(volume.longest.round)
    yield fact(words, "fullness_to_hem", "fact-fullness", Ratio(volume.fullness), {"hem": hem, "waist": waist})
    for cloth, strips in volume.strips.items():
        total = sum((count * length for count, length in strips), Fraction(0))
        rows = [Part("fact-strip", {"count": count, "length": Length(length, "cut")}) for count, length in strips]
        said: Values = {"cloth": Own(words.name(cloth)), "strips": Things(tuple(rows), "sum")}
        yield fact(words, f"{cloth}.gathered_strips", "fact-strips", Length(total, "buy"), said)
    yield _weight(run, words)


def fact(words: Words, name: str, message: str, value: Value, values: Values | None = None) -> Fact:
    """A row of the table: a message with its `.why`. name: what `furbelow why` answers to, empty for nothing."""
    return Fact(name, words.text(message, values), words.said(value), words.why(message, values))


def elastic_reason(run: Run, casing: Casing, words: Words) -> str:
    """How much shorter than the waist the elastic is, and what it carries there."""
    words.read("facts")
    waist, grams = run.solved.values.get("waist_girth"), grams_of(run)
    less = waist.value.as_length_mm() - casing.elastic_length if waist else Fraction(0)
    if less <= 0:
        return words.text("fact-elastic-why-step")
    if grams and run.hangs[casing.piece] == 0:
        return words.text("fact-elastic-why-carries", {"less": Length(less), "weight": Weight(grams)})
    return words.text("fact-elastic-why-less", {"less": Length(less)})


def _levelled(run: Run, volume: Volume, words: Words) -> Iterator[Fact]:
    """The length at the places where the waist was taken up, or the hem is cut higher."""
    dips = flag(len(set(run.bottom_at(volume.longest.piece))) > 1)
    slanting = slanting_at_sides(run, volume.longest.piece) if dips.word == "yes" else Fraction(0)
    for length, place in zip(lengths_at(run, volume.longest.piece), _PLACES, strict=True):
        if length < volume.longest.drop:
            along = slanting if place == "fact-length-sides" else Fraction(0)
            values: Values = {
                "up": Length(volume.longest.drop - length),
                "dips": dips,
                "slants": flag(along),
                "down": Length(length),
            }
            yield fact(words, "", place, Length(length + along), values)


def _stepped(volume: Volume, words: Words) -> Iterator[Fact]:
    """Where each layer ends that is shorter than the longest."""
    for hem in volume.hems:
        if hem.drop < volume.longest.drop:
            short = Length(volume.longest.drop - hem.drop)
            values: Values = {"piece": Pieces((hem.piece,)), "short": short}
            yield fact(words, f"{hem.piece}.top_to_hem", "fact-length-layer", Length(hem.drop), values)


def _hems(volume: Volume, words: Words) -> Iterator[Fact]:
    longest = volume.longest
    yield fact(words, longest.name, "fact-hem", Length(longest.round), {"piece": Pieces((longest.piece,))})
    if volume.layers > 1:
        hems = Things(tuple(_hem(hem) for hem in volume.hems))
        values: Values = {"layers": volume.layers, "hems": hems}
        yield fact(words, "hems_together", "fact-hems", Length(volume.together, "buy"), values)


def _hem(hem: Hem) -> Part:
    return Part("fact-hem-of", {"copies": hem.copies, "round": Length(hem.round), "piece": Pieces((hem.piece,))})


def _weight(run: Run, words: Words) -> Fact:
    weight = weight_of(run)
    label = words.text("fact-weight")
    if weight.grams is None:
        cloths = [Part("fact-no-weight", {"cloth": Own(words.name(cloth))}) for cloth in weight.unknown]
        told = words.why("fact-weight-unknown", {"cloths": Things(tuple(cloths))})
        return Fact("", label, words.text("fact-weight-unknown"), told)
    left_out: list[Value] = [*map(Supply, weight.left_out), Part("thread")]
    about = words.text("fact-weight-about", {"weight": Weight(weight.grams)})
    return Fact("weight", label, about, words.why("fact-weight", {"left-out": Things(tuple(left_out))}))
