"""How much heat fibres take, and what is sewn together takes: as little as the coolest of it."""

from __future__ import annotations

from furbelow.garment.bench import Bench
from furbelow.garment.solved import Solved
from furbelow.garment.spec import SupplyKind

# ISO 3758: three dots 200 C, two dots 150 C, one dot 110 C without steam.
DOTS = {"cotton": 3, "linen": 3, "wool": 2, "silk": 2, "polyester": 2, "viscose": 2, "nylon": 1, "acetate": 1}
UNKNOWN = 1  # the least heat for a fibre that no label names


def dots_for(fibre: str) -> int:
    """The dots of heat that a fibre takes, 1 to 3."""
    return DOTS.get(fibre, UNKNOWN)


def coolest(solved: Solved, bench: Bench, piece: str) -> str:
    """The material that takes the least heat of all that is sewn together with a piece: cloth, trims, tapes and elastic.

    Interfacing of no given fibre is meant to be pressed with its cloth; buttons, hooks and eyelets are pressed round.
    """
    unit = bench.unit(piece)
    materials = [solved.pieces[each].piece.cloth.text for each in unit]
    materials += [supply for each in unit for supply in sorted(bench.sewn_on.get(each, ())) if _tells(solved, supply)]
    return min(dict.fromkeys(materials), key=lambda name: dots_for(solved.materials[name].material.fibre))


def _tells(solved: Solved, supply: str) -> bool:
    material = solved.materials[supply].material
    return material.kind not in (SupplyKind.INTERFACING, SupplyKind.FASTENING) or material.fibre in DOTS
