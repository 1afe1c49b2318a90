"""What the guide says of the garment as a whole: its length, its hems, how full it is, what it weighs."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from compiler.s3_rehearse.run import Run
from compiler.s3_rehearse.volume import Volume, volume_of
from compiler.s3_rehearse.weight import show_weight, weight_of
from compiler.s6_write.guide import Fact
from compiler.say import Say, listed


def garment_facts(run: Run, say: Say) -> Iterator[Fact]:
    """The finished length first, the weight last. Each carries the name that `furbelow why` answers to."""
    volume = volume_of(run)
    lowest = max(run.drops.values())
    yield Fact("top_to_hem", "finished length, top to hem", say.length(lowest), "the depths of the tiers together")
    yield from _stepped(volume, say)
    hem = volume.longest
    yield Fact(hem.name, "round the hem", say.length(hem.round), f"one ring of the {say.piece(hem.piece)}")
    if volume.layers > 1:
        parts = [f"{hem.copies} x {say.length(hem.round)} of the {say.piece(hem.piece)}" for hem in volume.hems]
        yield Fact("hems_together", f"round all {volume.layers} hems", say.buy(volume.together), listed(parts))
    yield Fact(
        "fullness_to_hem", "fullness from waist to hem", say.ratio(volume.fullness),
        f"{say.length(hem.round)} of hem for {say.length(volume.waist)} round the waist, before it is drawn in",
    )  # fmt: skip
    for cloth, strips in volume.strips.items():
        total = sum((count * length for count, length in strips), Fraction(0))
        yield Fact(
            f"{cloth}.gathered_strips", f"{cloth.replace('_', ' ')} in gathered strips", say.buy(total),
            "laid end to end: " + " + ".join(f"{count} x {say.cut(length)}" for count, length in strips),
        )  # fmt: skip
    yield _weight(run, say)


def _stepped(volume: Volume, say: Say) -> Iterator[Fact]:
    """Where each layer ends, when they do not all end level."""
    if len({hem.drop for hem in volume.hems}) > 1:
        ends = [f"the {say.piece(hem.piece)} {say.length(hem.drop)}" for hem in volume.hems]
        yield Fact("", "length of each layer", listed([say.length(hem.drop) for hem in volume.hems]), "; ".join(ends))


def _weight(run: Run, say: Say) -> Fact:
    weight = weight_of(run)
    if weight.grams is None:
        told = " and ".join(f"{cloth.replace('_', ' ')} has no weight" for cloth in weight.unknown)
        return Fact("", "weight", "unknown", told)
    without = listed([*weight.left_out, "thread"])
    return Fact("weight", "weight", f"about {show_weight(weight.grams, say.system)}", f"the cloth as cut, without {without}")
