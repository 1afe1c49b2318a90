"""The tools of a garment: what its set-ups need, what its steps ask for, and what every garment takes."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from furbelow.garment.limits import gram_per_m2
from furbelow.garment.message import Own, Part, Things, Values
from furbelow.garment.technique import Performed, SetUp, Tool
from furbelow.s3_rehearse.run import Rehearsal, Run
from furbelow.s6_write.guide.guide import Tool as Row
from furbelow.s6_write.words.said_step import SaidStep
from furbelow.s6_write.words.words import Words

# The tool that a set-up brings by itself, in the order of the list.
_OF_SET_UP = {
    SetUp.STRAIGHT: "tool-machine",
    SetUp.ZIGZAG: "tool-zigzag",
    SetUp.OVERLOCKER: "tool-overlocker",
    SetUp.ATTACHMENT: "tool-attachment",
    SetUp.HAND: "tool-hand-needle",
    SetUp.IRON: "tool-iron",
}
# A tool that steps of another set-up ask for: hems and bands are pressed in steps of the sewing machine.
_SET_UP_OF = {Tool.IRON: SetUp.IRON, Tool.HAND_NEEDLE: SetUp.HAND}
# The others that steps ask for, in the order of the list.
_DECLARED = {
    Tool.PRESS_CLOTH: "tool-press-cloth",
    Tool.HEMMING_FOOT: "tool-hemming-foot",
    Tool.BLUNT_STICK: "tool-blunt-stick",
    Tool.BRUSH: "tool-brush",
    Tool.SPRAY: "tool-spray",
    Tool.BOWL: "tool-bowl",
    Tool.PAN: "tool-pan",
    Tool.SHEET: "tool-sheet",
    Tool.FIRE_LABEL: "tool-fire-label",
}
# Machine needles by cloth weight in g/m2, metric size and, in brackets, the older number: common practice, no source.
_NEEDLES = ((60, "70 (10)"), (150, "80 (12)"), (250, "90 (14)"))
_NEEDLE_FOR_HEAVY = "100 (16)"


def tools(rehearsal: Rehearsal, told: Sequence[SaidStep], words: Words) -> Iterator[Row]:
    """told: the performed steps as they are said."""
    words.read("tools")
    run, room = rehearsal.run, rehearsal.run.room
    declared = {tool for said in told if said.actions for tool in said.tools}
    setups = {done.setup for done in run.performed}
    setups |= {setup for tool, setup in _SET_UP_OF.items() if tool in declared}
    for setup, message in _OF_SET_UP.items():
        if setup in setups:
            yield _row(words, message, {"uses": _uses_of_zigzag(run)})
    for tool, message in _DECLARED.items():
        if tool in declared:
            yield _row(words, message)
    yield _row(words, "tool-needle", {"size": Own(_needle(rehearsal))})
    if room.neaten_with == "pinking shears":
        yield _row(words, "tool-pinking-shears")
    yield _row(words, "tool-clips" if room.hold_with == "clips" else "tool-pins", {"number": _pins(run, run.performed)})
    if room.hold_with == "clips" and (most := _tail_pins(run)):
        yield _row(words, "tool-tail-pins", {"number": most})
    if room.hold_with == "clips" and Tool.PINS in declared:
        flat = [done for done, said in zip(run.performed, told, strict=True) if Tool.PINS in said.tools]
        yield _row(words, "tool-flat-pins", {"number": _pins(run, flat)})
    for message in _ALWAYS:
        yield _row(words, message)
    if run.final.casings:
        yield _row(words, "tool-safety-pins")


_ALWAYS = ("tool-measuring", "tool-ruler", "tool-tape", "tool-weights", "tool-seam-ripper", "tool-blunt-needle")


def _row(words: Words, message: str, values: Values | None = None) -> Row:
    return Row(words.text(message, values), words.why(message, values))


def _uses_of_zigzag(run: Run) -> Things:
    uses = []
    named = {done.step.written.technique for done in run.performed}
    if "neaten" in named and run.room.neaten_with == "zigzag":
        uses.append(Part("tool-zigzag-neatening"))
    if "insert elastic" in named:
        uses.append(Part("tool-zigzag-elastic"))
    return Things(tuple(uses) or (Part("tool-zigzag-bars"),))


def _needle(rehearsal: Rehearsal) -> str:
    """For the lightest cloth."""
    solved = rehearsal.solved
    lightest = min(gram_per_m2(solved, piece.piece.cloth.text) for piece in solved.pieces.values())
    return next((size for limit, size in _NEEDLES if lightest <= limit), _NEEDLE_FOR_HEAVY)


def _pins(run: Run, steps: Sequence[Performed]) -> int:
    """What the step of these takes that takes most."""
    held = (done.pinned if done.pinned_at_once is None else done.pinned_at_once for done in steps)
    pinned = max(held, default=Fraction(0))
    # A tenth more: thread tails are wound round pins too.
    return int(pinned / run.room.pin_spacing * Fraction(11, 10) / 10 + 1) * 10


def _tail_pins(run: Run) -> int:
    return max((done.thread_ends for done in run.performed if done.step.written.technique == "gather"), default=0)
