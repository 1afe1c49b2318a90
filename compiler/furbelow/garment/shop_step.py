"""What a shop cuts lengths to, where a spec does not say how a material is sold."""

from __future__ import annotations

from collections import ChainMap
from fractions import Fraction

from furbelow.garment.solved import Because, Derivation, Solved, SolvedMaterial
from furbelow.garment.spec import SupplyKind
from furbelow.garment.workroom import Workroom
from furbelow.measure.measure_text import system_of
from furbelow.measure.quantity import mm

# Cloth and trims are cut to the tenth of a metre or the eighth of a yard: common practice, no source.
_USUAL = {"metric": Fraction(100), "inch": Fraction("914.4") / 8}
_CUT_TO_LENGTH = {
    SupplyKind.CLOTH,
    SupplyKind.TRIM,
    SupplyKind.CORD,
    SupplyKind.BONE,
    SupplyKind.ELASTIC,
    SupplyKind.INTERFACING,
}
SOLD_BY = "sold_by"


def with_shop_steps(solved: Solved, room: Workroom) -> Solved:
    """The garment with a step for every material that is bought by its length and has none of its own: that of the workroom,
    or what is usual in its units; a step of 0 leaves it to the exact need.
    """
    usual = room.sold_by is None
    step = _USUAL[system_of(room.units or solved.spec.units)] if room.sold_by is None else room.sold_by
    silent = [each for each in solved.materials.values() if _says_nothing(each)]
    if not silent or not step:
        return solved
    because = Because("reason-usual-step") if usual else Because("reason-workroom")
    found = {
        name: Derivation(name, mm(step), "", "", (), None, None, "material", because)
        for name in (f"{each.material.name}.{SOLD_BY}" for each in silent)
    }
    stepped = {each.material.name: each._replace(amounts={**each.amounts, SOLD_BY: mm(step)}) for each in silent}
    return solved._replace(
        materials={**solved.materials, **stepped},
        values=ChainMap(found, solved.values),  # type: ignore[arg-type]  # which only asks, and works out what is asked
        numbers={**solved.numbers, **{name: each.value for name, each in found.items()}},
    )


def is_usual(material: SolvedMaterial) -> bool:
    """Whether its step is none that the spec gives."""
    return SOLD_BY in material.amounts and not _written(material)


def _says_nothing(material: SolvedMaterial) -> bool:
    return material.material.kind in _CUT_TO_LENGTH and not _written(material)


def _written(material: SolvedMaterial) -> bool:
    return any(key.replace(" ", "_") == SOLD_BY for key in material.material.amounts)
