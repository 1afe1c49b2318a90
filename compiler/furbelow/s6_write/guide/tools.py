"""The tools of a garment: what its set-ups need, what its steps ask for, and what every garment takes."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

from furbelow.garment.message import Own, Part, Things, Values
from furbelow.garment.technique import Performed, SetUp, Tool
from furbelow.s3_rehearse.proofs.too_thick import thickest
from furbelow.s3_rehearse.run import Rehearsal, Run
from furbelow.s6_write.guide.guide import Tool as Row
from furbelow.s6_write.guide.needle import needle_for
from furbelow.s6_write.guide.pins import in_tens, pins_in, pins_with_tails, tails_in
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
    Tool.ZIP_FOOT: "tool-zip-foot",
    Tool.BLUNT_STICK: "tool-blunt-stick",
    Tool.SAFETY_PINS: "tool-safety-pins",
    Tool.SAFETY_PIN: "tool-safety-pin",
    Tool.SMALL_SAFETY_PINS: "tool-small-safety-pins",
    Tool.BODKIN: "tool-bodkin",
    Tool.AWL: "tool-awl",
    Tool.EYELET_TOOL: "tool-eyelet-tool",
    Tool.TEXTILE_GLUE: "tool-glue",
    Tool.LARGE_PAPER: "tool-large-paper",
    Tool.EYE_PROTECTION: "tool-eye-protection",
    Tool.BONE_CUTTERS: "tool-bone-cutters",
    Tool.BONE_CAPS: "tool-bone-caps",
    Tool.BRUSH: "tool-brush",
    Tool.SPRAY: "tool-spray",
    Tool.BOWL: "tool-bowl",
    Tool.PAN: "tool-pan",
    Tool.MEASURING_JUG: "tool-measuring-jug",
    Tool.SCALE: "tool-scale",
    Tool.DYE_PAN: "tool-dye-pan",
    Tool.GLOVES: "tool-gloves",
    Tool.SHEET: "tool-sheet",
    Tool.HAIR_DRYER: "tool-hair-dryer",
    Tool.FORM: "tool-form",
    Tool.BOARD: "tool-board",
    Tool.FIRE_LABEL: "tool-fire-label",
}
# What the zigzag stitch is for.
_ZIGZAG = {
    Tool.NEATENING: "tool-zigzag-neatening",
    Tool.JOINING_ELASTIC: "tool-zigzag-elastic",
    Tool.BARS: "tool-zigzag-bars",
    Tool.BUTTONHOLE: "tool-zigzag-buttonhole",
}
_ALWAYS = (
    "tool-tape-measure",
    "tool-markers",
    "tool-shears",
    "tool-ruler",
    "tool-tape",
    "tool-weights",
    "tool-seam-ripper",
    "tool-blunt-needle",
    "tool-hanger",
)


def tools(
    rehearsal: Rehearsal, told: Sequence[SaidStep], words: Words, at_last: Collection[Tool] = ()
) -> Iterator[Row]:
    """told: the performed steps as they are said. at_last: what the first cut and the last look take besides."""
    words.read("tools")
    run, room = rehearsal.run, rehearsal.run.room
    worked = [(done, said.tools) for done, said in zip(run.performed, told, strict=True) if said.actions]
    # The label that says whose it is and what of is sewn in by hand.
    declared = {tool for _, asked in worked for tool in asked}.union(at_last, {Tool.HAND_NEEDLE})
    setups = {done.setup for done, _ in worked}
    setups |= {setup for tool, setup in _SET_UP_OF.items() if tool in declared}
    if declared.intersection(_ZIGZAG):
        setups.add(SetUp.ZIGZAG)  # a buttonhole is worked in a step of the straight stitch
    for setup, message in _OF_SET_UP.items():
        if setup in setups:
            yield _row(words, message, {"uses": _uses_of_zigzag(declared)})
    thick, _ = thickest(run)
    yield _row(words, "tool-needle", {"size": Own(needle_for(rehearsal.solved, thick))})
    if room.neaten_with == "pinking shears":
        yield _row(words, "tool-pinking-shears")
    yield from _pins(run, worked, words)
    for message in _ALWAYS:
        yield _row(words, message)
    if Tool.FIRE_LABEL not in declared:  # its tape does for both labels
        yield _row(words, "tool-label")
    for tool, message in _DECLARED.items():
        if tool in declared:
            yield _row(words, message)


def tool_of(asked: SetUp | Tool) -> str:
    """The message that names what a set-up or a step asks for; empty where that goes without saying."""
    if isinstance(asked, SetUp):
        return _OF_SET_UP.get(asked, "")
    own = _SET_UP_OF.get(asked)
    return _OF_SET_UP[own] if own else _DECLARED.get(asked, "")


def _row(words: Words, message: str, values: Values | None = None) -> Row:
    return Row(words.text(message, values), words.why(message, values))


def _uses_of_zigzag(declared: Collection[Tool]) -> Things:
    uses = [Part(message) for tool, message in _ZIGZAG.items() if tool in declared]
    return Things(tuple(uses) or (Part("tool-zigzag-own"),))


def _pins(run: Run, worked: Sequence[tuple[Performed, Collection[Tool]]], words: Words) -> Iterator[Row]:
    """Pins; or clips, with pins for what clips do not hold: thread tails, and folds in the middle of the cloth."""
    steps, say = [done for done, _ in worked], words.say
    if run.room.hold_with == "pins":
        yield _row(words, "tool-pins", {"number": in_tens(max(pins_with_tails(steps, say), 1))})
        return
    yield _row(words, "tool-clips", {"number": in_tens(max(pins_in(steps, say), 1))})
    if tails := max((tails_in(done.after) for done in steps), default=0):
        yield _row(words, "tool-tail-pins", {"number": in_tens(tails)})
    if flat := pins_in([done for done, asked in worked if Tool.PINS in asked], say):
        yield _row(words, "tool-flat-pins", {"number": in_tens(flat)})
