"""The reasons for what is only known of the garment as a whole, by the names that `furbelow why` answers to."""

from __future__ import annotations

from collections.abc import Mapping

from compiler.measure_text import System
from compiler.quantity import mm
from compiler.s2_solve.solved import Derivation
from compiler.s3_rehearse.proofs.wrong_length import above
from compiler.s3_rehearse.run import Run
from compiler.s3_rehearse.volume import volume_of
from compiler.s3_rehearse.weight import weight_of


def reasons_of(run: Run) -> Mapping[str, Derivation]:
    """`top_to_hem`, `weight`, `hems_together`, `fullness_to_hem` and what they stand on.

    A maker's own names go before these.
    """
    return {**_top_to_hem(run), **volume_of(run).reasons, **weight_of(run).reasons}


def _top_to_hem(run: Run) -> Mapping[str, Derivation]:
    """The depths that hang one from the other; nothing where they do not add up to the length, as with tucks."""
    lowest = max(run.drops, key=lambda piece: run.drops[piece])
    depths = tuple(f"{piece}.depth" for piece in above(run, lowest))
    if sum(run.solved.length(depth) for depth in depths) != run.drops[lowest]:
        return {}
    system: System = "inch" if run.solved.spec.units == "inches" else "metric"
    return {
        "top_to_hem": Derivation(
            name="top_to_hem",
            value=mm(run.drops[lowest]),
            formula=" + ".join(depths),
            with_values=" + ".join(run.solved.values[depth].value.show(system) for depth in depths),
            inputs=depths,
            rounding="",
            span=None,
            origin="garment",
        )
    }
