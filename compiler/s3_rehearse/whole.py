"""The reasons for what is only known of the garment as a whole, by the names that `furbelow why` answers to."""

from __future__ import annotations

from collections.abc import Mapping

from compiler.s2_solve.solved import Derivation
from compiler.s3_rehearse.run import Run
from compiler.s3_rehearse.volume import volume_of
from compiler.s3_rehearse.weight import weight_of


def reasons_of(run: Run) -> Mapping[str, Derivation]:
    """`weight`, `hems_together`, `fullness_to_hem` and what they stand on. A maker's own names go before these."""
    return {**volume_of(run).reasons, **weight_of(run).reasons}
