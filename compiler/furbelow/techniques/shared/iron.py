"""How hot the iron may be for the cloth of a step, and what it does to cloth that melts."""

from __future__ import annotations

from collections.abc import Iterable

from furbelow.garment.message import Fibre
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Action, Caution, CautionKind, Performed, Tool

# ISO 3758: three dots 200 C, two dots 150 C, one dot 110 C without steam.
DOTS = {"cotton": 3, "linen": 3, "wool": 2, "silk": 2, "polyester": 2, "viscose": 2, "nylon": 1, "acetate": 1}
UNKNOWN = 1  # the least heat for a fibre that no label names


def dots_of(say: Phrasing, piece: str) -> int:
    """The dots of heat that the cloth of a piece takes, 1 to 3."""
    return DOTS.get(say.solved.materials[say.solved.pieces[piece].piece.cloth.text].material.fibre, UNKNOWN)


_SET = {1: "iron-set-one-dot", 2: "iron-set-two-dots", 3: "iron-set-three-dots"}
IRON_SET = frozenset(_SET.values())


def iron_set(say: Phrasing, piece: str) -> Action:
    """Setting the iron for the cloth of a piece."""
    material = say.solved.materials[say.solved.pieces[piece].piece.cloth.text].material
    return Action(_SET[dots_of(say, piece)], values={"fibre": Fibre(material.fibre)})


def by_heat(say: Phrasing, pieces: Iterable[str]) -> list[str]:
    """These pieces, those that take the least heat first: an iron heats up faster than it cools down."""
    return sorted(pieces, key=lambda piece: dots_of(say, piece))


def iron_hot(done: Performed, say: Phrasing) -> Caution:
    """What the iron can do, and what it does to cloth that melts where such cloth is worked on."""
    return Caution(CautionKind.HEAT, "caution-iron-melts" if _melts(done, say) else "caution-iron")


def iron_tools(done: Performed, say: Phrasing, *set_for: str) -> tuple[Tool, ...]:
    """The iron, with a press cloth where the caution asks for one, or the heat for these pieces: all of the step, if none
    is named."""
    cloth = _melts(done, say) or any(dots_of(say, piece) < 3 for piece in set_for or done.touches)
    return (Tool.IRON, Tool.PRESS_CLOTH) if cloth else (Tool.IRON,)


def _melts(done: Performed, say: Phrasing) -> bool:
    return any(dots_of(say, piece) == 1 for piece in done.touches)
