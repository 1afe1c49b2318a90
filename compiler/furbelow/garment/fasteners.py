"""Hooks, snaps and buttons that a step sews on and the spec does not list: bought and counted like what it does list."""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Span
from furbelow.garment.solved import SolvedMaterial
from furbelow.garment.spec import FastenerKind, Material, SupplyKind
from furbelow.measure.quantity import mm
from furbelow.named import NamedTuple


class Fastener(NamedTuple):
    """One to buy; width: across, in mm, 0 where it does not matter."""

    kind: FastenerKind
    width: Fraction = Fraction(0)

    @property
    def name(self) -> str:
        """Its name among the materials: those of one width are one line of the list.

        A name of a spec has no space, so none is taken for ours.
        """
        return f"any {self.kind}" + (f" {self.width} mm" if self.width else "")

    def as_material(self, file: str) -> SolvedMaterial:
        """What the list needs to know of it. file: the spec, which says nothing of it."""
        material = Material(
            self.name,
            Span.at_start(file),
            SupplyKind.FASTENING,
            about="",
            fibre="",
            amounts={},
            offers=(),
            ravels=False,
            has_right_side=False,
            one_way=False,
            colour="",
            supplier="",
            code="",
            fastener=self.kind,
        )
        return SolvedMaterial(material, {"width": mm(self.width)} if self.width else {})
