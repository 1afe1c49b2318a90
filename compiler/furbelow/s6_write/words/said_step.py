"""A step as the guide says it: its technique's instructions put into words."""

from __future__ import annotations

from collections.abc import Mapping

from furbelow.garment.message import Values
from furbelow.garment.technique import (
    Action,
    Caution,
    CautionKind,
    Instructions,
    OwnAction,
    OwnInstructions,
    Performed,
    Tool,
)
from furbelow.named import NamedTuple
from furbelow.s6_write.words.words import Words
from furbelow.techniques import technique_of


class SaidAction(NamedTuple):
    """One sentence of the guide. `mark` is the name of its message, by which figures call it; empty in a maker's own.

    copies: on how many pieces it is done before the next sentence.
    run: of several sentences that are all done on one piece, and then on the next.
    ironed: done with the hot iron in hand. ruled: it has a line drawn on the cloth.
    until: the number of the last of them, at the first of a run; else 0.
    """

    mark: str
    text: str
    check: str = ""
    tolerance: str = ""
    remedy: str = ""
    chain: str = ""
    copies: int = 1
    run: bool = False
    ironed: bool = False
    ruled: bool = False
    until: int = 0


def said_action(message: str, values: Values, words: Words) -> SaidAction:
    """A sentence that no technique says."""
    said = words.action(message, values)
    return SaidAction(message, said.text, said.check, said.tolerance, said.remedy)


class SaidStep(NamedTuple):
    title: str
    aim: str
    actions: tuple[SaidAction, ...]
    cautions: tuple[tuple[CautionKind, str], ...]
    tools: tuple[Tool, ...]
    pressed: tuple[str, ...] = ()  # the pieces that the iron touches
    number: str = ""  # the one that matters to who has done it before
    waits: tuple[SaidAction, ...] = ()  # before anything is set up for the step


def said_step(done: Performed, words: Words) -> SaidStep:
    """The step in the words of the guide; a technique's messages are in the file of its name."""
    told = technique_of(done.step.written).instructions(done, words.say)
    if isinstance(told, OwnInstructions):
        return _in_own_words(told, words)
    words.read(done.step.written.technique.replace(" ", "-"))
    title = words.action(told.title, told.values)
    return SaidStep(
        title.text,
        words.text(told.aim, told.values),
        tuple(_said(action, told, words) for action in told.actions),
        tuple((caution.kind, _caution(caution, told, words)) for caution in told.cautions),
        told.tools,
        (told.pressed or done.touches) if Tool.IRON in told.tools else (),
        title.number,
        tuple(_said(action, told, words) for action in told.waits),
    )


def _said(action: Action, told: Instructions, words: Words) -> SaidAction:
    said = said_action(action.message, {**told.values, **action.values}, words)
    said = said._replace(ironed=action.message in told.ironed, ruled=action.message in told.ruled)
    if action.chain:
        return said._replace(chain=words.said(action.chain))
    return said._replace(copies=action.copies, run=action.run and action.copies > 1)


def _caution(caution: Caution, told: Instructions, words: Words) -> str:
    words.read("cautions")
    return words.text(caution.message, {**told.values, **caution.values})


# --- in a maker's own words ---


def _in_own_words(told: OwnInstructions, words: Words) -> SaidStep:
    shown = {place: words.said(value) for place, value in told.values.items()}

    def said(own: OwnAction) -> SaidAction:
        text, check, tolerance, remedy = (_filled(each, shown) for each in own[:4])
        return SaidAction("", text, check, tolerance, remedy, copies=own.copies)

    actions = tuple(said(own) for own in told.actions)
    return SaidStep(_filled(told.title, shown), told.aim, actions, told.cautions, ())


def _filled(text: str, shown: Mapping[str, str]) -> str:
    """The sentence with every known place filled, first letter large."""
    from furbelow.techniques.own_technique import PLACE  # few specs describe a technique

    said = PLACE.sub(lambda found: shown.get(found[1].strip(), found[0]), text)
    return said[:1].upper() + said[1:]
