"""What the guide says of the garment as a whole: its length, its hems, how full it is, what it weighs."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.garment.bench import Casing
from furbelow.garment.phrasing import Phrasing, listed
from furbelow.s3_rehearse.levelling import lengths_at
from furbelow.s3_rehearse.run import Run
from furbelow.s3_rehearse.volume import Volume, volume_of
from furbelow.s3_rehearse.weight import grams_of, show_weight, weight_of
from furbelow.s6_write.guide.guide import Fact


def garment_facts(run: Run, say: Phrasing) -> Iterator[Fact]:
    """The finished length first, the weight last. Each carries the name that `furbelow why` answers to."""
    volume = volume_of(run)
    lowest = max(run.drops.values())
    yield Fact("top_to_hem", "finished length, top to hem", say.length(lowest), "the depths of the tiers together")
    yield from _levelled(run, volume, say)
    yield from _stepped(volume, say)
    hem = volume.longest
    yield Fact(hem.name, "round the hem", say.length(hem.round), f"one ring of the {say.piece(hem.piece)}")
    if volume.layers > 1:
        parts = [f"{hem.copies} x {say.length(hem.round)} of the {say.piece(hem.piece)}" for hem in volume.hems]
        yield Fact(
            "hems_together",
            f"round {'both' if volume.layers == 2 else f'all {volume.layers}'} hems",
            say.buy(volume.together),
            listed(parts),
        )
    yield Fact(
        "fullness_to_hem",
        "fullness from waist to hem",
        say.ratio(volume.fullness),
        f"{say.length(hem.round)} of hem for {say.length(volume.waist)} round the waist, before it is drawn in",
    )
    for cloth, strips in volume.strips.items():
        total = sum((count * length for count, length in strips), Fraction(0))
        yield Fact(
            f"{cloth}.gathered_strips",
            f"{cloth.replace('_', ' ')} in gathered strips",
            say.buy(total),
            "laid end to end: " + " + ".join(f"{count} x {say.cut(length)}" for count, length in strips),
        )
    yield _weight(run, say)


def elastic_reason(run: Run, casing: Casing, say: Phrasing) -> str:
    """How much shorter than the waist the elastic is, and what it carries there."""
    waist, grams = run.solved.values.get("waist_girth"), grams_of(run)
    less = waist.value.as_length_mm() - casing.elastic_length if waist else Fraction(0)
    if less <= 0:
        return "see the step that draws it in"
    carries = f", to carry about {show_weight(grams, say.system)}" if grams and run.hangs[casing.piece] == 0 else ""
    return f"{say.length(less)} shorter than the waist{carries}"


def _levelled(run: Run, volume: Volume, say: Phrasing) -> Iterator[Fact]:
    """The length at the places where the waist was taken up."""
    for length, place in zip(
        lengths_at(run, volume.longest.piece), ("in front", "at the sides", "behind"), strict=True
    ):
        if length < volume.longest.drop:
            up = say.length(volume.longest.drop - length)
            yield Fact(
                "", f"length {place}", say.length(length), f"{up} is taken up at the waist, so that the hem hangs level"
            )


def _stepped(volume: Volume, say: Phrasing) -> Iterator[Fact]:
    """Where each layer ends that is shorter than the longest."""
    for hem in volume.hems:
        if hem.drop < volume.longest.drop:
            short = say.length(volume.longest.drop - hem.drop)
            yield Fact(
                f"{hem.piece}.top_to_hem",
                f"length of the {say.piece(hem.piece)}",
                say.length(hem.drop),
                f"it ends {short} above the hem",
            )


def _weight(run: Run, say: Phrasing) -> Fact:
    weight = weight_of(run)
    if weight.grams is None:
        told = " and ".join(f"{cloth.replace('_', ' ')} has no weight" for cloth in weight.unknown)
        return Fact("", "weight", "unknown", told)
    without = listed([*weight.left_out, "thread"])
    return Fact(
        "weight", "weight", f"about {show_weight(weight.grams, say.system)}", f"the cloth as cut, without {without}"
    )
