"""The reasons for what is only known of the garment as a whole, by the names that `furbelow why` answers to."""

from __future__ import annotations

from collections.abc import Mapping

from furbelow.garment.solved import Derivation
from furbelow.measure.quantity import mm
from furbelow.s3_rehearse.proofs.wrong_length import from_top
from furbelow.s3_rehearse.run import Run
from furbelow.s3_rehearse.volume import volume_of
from furbelow.s3_rehearse.weight import weight_of


def reasons_of(run: Run) -> Mapping[str, Derivation]:
    """`top_to_hem`, `weight`, `hems_together`, `fullness_to_hem` and what they stand on.

    A maker's own names go before these.
    """
    volume, lowest = volume_of(run), max(run.drops, key=lambda piece: run.drops[piece])
    lengths = [("top_to_hem", lowest)]
    lengths += [(f"{hem.piece}.top_to_hem", hem.piece) for hem in volume.hems if hem.piece != lowest]
    found = (_length(run, name, piece) for name, piece in lengths)
    return {**{each.name: each for each in found if each}, **volume.reasons, **weight_of(run).reasons}


def _length(run: Run, name: str, piece: str) -> Derivation | None:
    """The depths that hang one from the other; None where they do not add up to the length, as with tucks and rows on a line."""
    depths = tuple(f"{hung}.depth" for hung, _ in from_top(run, piece))
    if sum(run.solved.length(depth) for depth in depths) != run.drops[piece]:
        return None
    return Derivation(
        name=name,
        value=mm(run.drops[piece]),
        formula=" + ".join(depths),
        with_values=" + ".join(run.solved.values[depth].value.show(run.solved.spec.system) for depth in depths),
        inputs=depths,
        rounded=None,
        span=None,
        origin="garment",
    )
