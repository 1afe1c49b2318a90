"""How hot the iron may be for the cloth of a step, and what it does to cloth that melts."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from furbelow.garment.bench import Bench, Seam
from furbelow.garment.heat import coolest, dots_for
from furbelow.garment.limits import is_net
from furbelow.garment.message import Fibre, Part, Supply, Value, Values
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved
from furbelow.garment.technique import Action, Caution, CautionKind, Performed, Tool, words_of


def dots_of(say: Phrasing, bench: Bench, piece: str) -> int:
    """The dots of heat, 1 to 3, that all takes which the iron can touch: the piece, what it is sewn to, trims and elastic."""
    return dots_for(say.solved.materials[coolest(say.solved, bench, piece)].material.fibre)


_SET = {1: "iron-set-one-dot", 2: "iron-set-two-dots", 3: "iron-set-three-dots"}
LONG = Fraction(300)  # mm of a seam; house rule, maker to confirm
IRON_SET = frozenset(_SET.values())
# A step that sets the iron for what it fuses, or for steam alone, and not for what the cloth takes.
SET_BY_STEP = frozenset({"interface-iron", "shirring-iron"})


def iron_set(say: Phrasing, bench: Bench, piece: str) -> Action:
    """Setting the iron for a piece and all that is sewn to it."""
    name, pressed = coolest(say.solved, bench, piece), say.solved.pieces[piece].piece.cloth.text
    fibre = say.solved.materials[name].material.fibre
    supply: Values = {"supply": Supply(name)}
    told: Value = Part("iron-unknown", supply)
    if fibre:
        own = fibre == say.solved.materials[pressed].material.fibre
        told = Fibre(fibre) if own else Part("iron-fibre-of", {"fibre": Fibre(fibre), **supply})
    return Action(_SET[dots_for(fibre)], values={"fibre": told})


def long_seam(solved: Solved, seam: Seam) -> bool:
    """Whether an upright seam is pressed with the iron at once: a nail does not hold it flat, no cloth of it is net, and no
    step of the spec presses its pieces by itself."""
    pieces = {ply.piece for ply in seam.plies}
    alone = (step.written for step in solved.steps if step.written.technique == "press")
    net = any(is_net(solved, solved.pieces[piece].piece.cloth.text) for piece in pieces)
    return seam.length >= LONG and not net and not any(pieces & set(words_of(step, "piece")) for step in alone)


def by_heat(say: Phrasing, bench: Bench, pieces: Iterable[str]) -> list[str]:
    """These pieces, those that take the least heat first: an iron heats up faster than it cools down."""
    return sorted(pieces, key=lambda piece: dots_of(say, bench, piece))


def iron_hot(done: Performed, say: Phrasing) -> Caution:
    """What the iron can do, and what it does to cloth that melts where such cloth is worked on."""
    return Caution(CautionKind.HEAT, "caution-iron-melts" if _melts(done, say) else "caution-iron")


def iron_tools(done: Performed, say: Phrasing, *set_for: str) -> tuple[Tool, ...]:
    """The iron, with a press cloth where the caution asks for one, or the heat for these pieces: all of the step, if none
    is named."""
    cloth = _melts(done, say) or any(dots_of(say, done.after, piece) < 3 for piece in set_for or done.touches)
    return (Tool.IRON, Tool.PRESS_CLOTH) if cloth else (Tool.IRON,)


def _melts(done: Performed, say: Phrasing) -> bool:
    return any(dots_of(say, done.after, piece) == 1 for piece in done.touches)
