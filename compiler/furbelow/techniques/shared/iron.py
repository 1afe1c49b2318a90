"""How hot the iron may be for the cloth of a step, and what it does to cloth that melts."""

from __future__ import annotations

from collections.abc import Iterable

from furbelow.garment.bench import Bench
from furbelow.garment.heat import coolest, dots_for
from furbelow.garment.message import Fibre, Part, Supply
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Action, Caution, CautionKind, Performed, Tool


def dots_of(say: Phrasing, bench: Bench, piece: str) -> int:
    """The dots of heat, 1 to 3, that all takes which the iron can touch: the piece, what it is sewn to, trims and elastic."""
    return dots_for(say.solved.materials[coolest(say.solved, bench, piece)].material.fibre)


_SET = {1: "iron-set-one-dot", 2: "iron-set-two-dots", 3: "iron-set-three-dots"}
IRON_SET = frozenset(_SET.values())
# A step that sets the iron for what it fuses, or for steam alone, and not for what the cloth takes.
SET_BY_STEP = frozenset({"interface-iron", "shirring-iron"})
# Sentences that press: before the first of them the iron is set. A test holds them to what is said.
PRESSES = frozenset(
    {
        "bagged-lining-roll",
        "band-casing-fold",
        "band-casing-fold-holes",
        "band-casing-fold-up",
        "bias-strip-first-seam",
        "bias-strip-second-seam",
        "binding-strip-ends",
        "binding-strip-press",
        "bound-edge-fold",
        "cartridge-pleats-turn",
        "cartridge-pleats-turn-carrier",
        "channel-band-fold",
        "darts-press",
        "deep-hem-fold-up-flat",
        "deep-hem-fold-up-ring",
        "deep-hem-turn-under",
        "eyelets-patch-iron",
        "facing-ends",
        "facing-turn",
        "fitted-waistband-fold",
        "fitted-waistband-press",
        "fitted-waistband-turn",
        "flat-felled-seam-fold",
        "flat-felled-seam-open-edges",
        "flat-felled-seam-open-ends",
        "folded-casing-fold",
        "folded-casing-fold-once",
        "folded-casing-turn-under",
        "french-seam-press",
        "french-seam-press-edges",
        "french-seam-press-ends",
        "godets-other",
        "interface-crease",
        "interface-fuse",
        "lapped-seam-fold",
        "narrow-hem-first-turn",
        "narrow-hem-second-turn",
        "open-seam-press",
        "patch-pocket-hem",
        "patch-pocket-press",
        "petersham-turn",
        "placket-fold",
        "placket-press",
        "pleats-press",
        "press-seams",
        "press-seams-then-folds",
        "shirring-steam",
        "side-pocket-turn",
        "slit-press",
        "slit-press-vent",
        "stack-layers-fold",
        "straps-turn",
        "tie-ends-turn",
        "tie-ends-turn-under",
        "tucks-press",
        "turn-seam-press",
        "turned-lining-press",
        "zip-fold-out",
        "zip-press-coils",
        "zip-press-open",
    }
)


def iron_set(say: Phrasing, bench: Bench, piece: str) -> Action:
    """Setting the iron for a piece and all that is sewn to it."""
    name = coolest(say.solved, bench, piece)
    fibre = say.solved.materials[name].material.fibre
    told = Fibre(fibre) if fibre else Part("iron-unknown", {"supply": Supply(name)})
    return Action(_SET[dots_for(fibre)], values={"fibre": told})


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
