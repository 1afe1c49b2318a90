"""What comes before a step begins: a night that it waits for, and what is set right: the stitch of the step before, a bobbin that runs out, the heat of the iron."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from furbelow.garment.bench import Bench
from furbelow.garment.limits import is_net
from furbelow.garment.message import Length, Stitch, Supply, Values
from furbelow.garment.technique import Performed, SetUp, facts_of
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.words.said_step import SaidAction, SaidStep, said_action
from furbelow.s6_write.words.words import Words
from furbelow.techniques.gather import Gathered
from furbelow.techniques.neaten import Neatened
from furbelow.techniques.shared.gathers import ROWS
from furbelow.techniques.shared.iron import IRON_SET, SET_BY_STEP, by_heat, iron_set
from furbelow.techniques.shared.zigzag import zigzag_set

CLEAR = Fraction(20)  # mm from a cut edge: beyond every seam margin; house rule, maker to confirm
PRACTICE = Fraction(200)  # mm of offcut
LEFT_ON = Fraction(10)  # minutes that a hot iron waits; house rule, maker to confirm
TRIAL = Fraction(100)  # mm of a first seam, with a new needle
_AT_MACHINE = (SetUp.STRAIGHT, SetUp.ZIGZAG)


def before_step(
    performed: Sequence[Performed],
    told: Sequence[SaidStep],
    at: int,
    shopping: ShoppingList,
    words: Words,
) -> Iterator[SaidAction]:
    """The actions before the step at that place among the performed ones. told: these as they are said."""
    yield from told[at].waits
    worked = [done for done, said in zip(performed[:at], told[:at], strict=True) if said.actions]
    if performed[at].setup is SetUp.STRAIGHT and _at_zigzag(worked):
        yield said_action("machine-straight", {"stitch": Stitch(words.say.room.seam_stitch)}, words)
    if performed[at].setup in _AT_MACHINE and not any(done.setup in _AT_MACHINE for done in worked):
        values: Values = {
            "trial": Length(words.say.strip(TRIAL)),
            "stitch": Stitch(words.say.room.seam_stitch),
            "bobbins": shopping.bobbins.bobbins if shopping.bobbins else 0,
            "bobbin-thread": Length(shopping.thread.bobbin, "thread"),
        }
        yield said_action("machine-trial", values, words)
    neatened = [done for done in (*worked, performed[at]) if _overlocked(done)]
    if neatened and neatened[0] is performed[at]:
        yield said_action("overlocker-trial", {"trial": Length(words.say.strip(TRIAL))}, words)
    if _crosses_zip(performed[at]):
        yield said_action("machine-zip-open", {}, words)
    yield from _marks_on_net(performed, at, words)
    yield from _lines_on_net(performed, told, at, words)
    yield from _practice(performed, at, words)
    yield from _fresh_bobbins(shopping, at, words)


def _marks_on_net(performed: Sequence[Performed], at: int, words: Words) -> Iterator[SaidAction]:
    """How each net is marked, before the first step that marks an edge of it."""
    known = {cloth for done in performed[:at] for cloth in _marked(done, words)}
    for cloth in dict.fromkeys(_marked(performed[at], words)):
        if cloth not in known:
            values: Values = {"net": Supply(cloth), "clear": Length(CLEAR, "about")}
            yield said_action("marks-on-net", values, words)


def _lines_on_net(
    performed: Sequence[Performed], told: Sequence[SaidStep], at: int, words: Words
) -> Iterator[SaidAction]:
    """What stands for a line on each net, before the first step that has one drawn on it."""

    def ruled(step: int) -> Iterator[str]:
        if any(action.ruled for action in told[step].actions):
            cloths = (words.say.solved.pieces[piece].piece.cloth.text for piece in performed[step].touches)
            yield from (cloth for cloth in cloths if is_net(words.say.solved, cloth))

    known = {cloth for step in range(at) for cloth in ruled(step)}
    for cloth in dict.fromkeys(ruled(at)):
        if cloth not in known:
            yield said_action("lines-on-net", {"net": Supply(cloth)}, words)


def _marked(done: Performed, words: Words) -> Iterator[str]:
    """The nets of which a step marks an edge."""
    solved = words.say.solved
    for name, edge in done.after.edges.items():
        earlier = done.before.edges.get(name)
        if edge.marks and (earlier is None or edge.marks != earlier.marks):
            cloths = (solved.pieces[piece].piece.cloth.text for piece in edge.pieces)
            yield from (cloth for cloth in cloths if is_net(solved, cloth))


def _overlocked(done: Performed) -> bool:
    """Whether a step neatens with the overlocker; one that rolls an edge in it has a trial of its own setting."""
    return isinstance(done.facts, Neatened) and done.setup is SetUp.OVERLOCKER


def _crosses_zip(done: Performed) -> bool:
    """Whether rows are sewn along the top of an opening that a zip closes."""
    zipped = (opening.name for opening in done.before.openings.values() if opening.zipped)
    changed = any(done.after.edges[name] != done.before.edges[name] for name in zipped if name in done.after.edges)
    return changed and done.setup in _AT_MACHINE


def _practice(performed: Sequence[Performed], at: int, words: Words) -> Iterator[SaidAction]:
    """The first gathering by machine is tried on an offcut: as full as the work will be."""
    rows = [done for done in performed if isinstance(done.facts, Gathered) and done.facts.method == ROWS]
    if not rows or rows[0] is not performed[at]:
        return
    facts, strip = facts_of(rows[0], Gathered), words.say.strip(PRACTICE)
    values: Values = {
        "flat": Length(strip),
        "short": Length(strip / facts.ratio),
        "first-row": Length(facts.rows[0], "about"),
        "second-row": Length(facts.rows[-1], "about"),
    }
    yield said_action("practise-gathering", values, words)


def with_zigzag_tried(performed: Sequence[Performed], said: SaidStep, at: int, words: Words) -> SaidStep:
    """The step without the trial of its zigzag, where that was tried on all its cloths before.

    said: the step at that place, as it is told so far.
    """
    if not said.actions or said.actions[0].mark != "neaten-try-zigzag":
        return said
    pieces = words.say.solved.pieces
    before = [done for done in performed[:at] if isinstance(done.facts, Neatened)]
    if not {pieces[piece].piece.cloth.text for piece in performed[at].touches} <= {
        pieces[piece].piece.cloth.text for done in before for piece in done.touches
    }:
        return said
    setting = zigzag_set(words.say.room.seam_stitch)
    return said._replace(actions=(said_action(setting.message, setting.values, words), *said.actions[1:]))


def with_iron_set(
    performed: Sequence[Performed],
    told: Sequence[SaidStep],
    said: SaidStep,
    at: int,
    minutes: Sequence[Fraction],
    words: Words,
    stops: Sequence[str],
) -> SaidStep:
    """The step with the iron set just before it presses, where it is cold or the cloth takes another heat than it stands at.

    Not where the step says so itself. said: the step at that place, as it is told so far. minutes: that each step takes. stops: what is said after each where the work may be
    put away, and the iron with it.
    """
    if not said.pressed or _set_by(said):
        return said
    bench = performed[at].after  # a step may press what it has sewn together
    wanted = iron_set(words.say, bench, by_heat(words.say, bench, said.pressed)[0])
    if any(action.mark == wanted.message for action in said.actions):
        return said
    pressed = [step for step in range(at) if told[step].pressed and told[step].actions]
    last = pressed[-1] if pressed else at
    waited = _after_press(told[last], minutes[last]) + sum(minutes[last + 1 : at], Fraction(0))
    cold = last == at or any(stops[last:at]) or waited > LEFT_ON
    if not cold and _left_at(performed[last].after, told[last], words) == wanted.message:
        return said
    actions = said.actions
    before = next((place for place, action in enumerate(actions) if action.ironed), 0)
    # What is done on one piece after the other stays whole.
    while before and actions[before].run and actions[before - 1].run:
        before -= 1
    setting = said_action(wanted.message, wanted.values, words)
    return said._replace(actions=(*actions[:before], setting, *actions[before:]))


def _after_press(said: SaidStep, minutes: Fraction) -> Fraction:
    """How long a step goes on after it pressed last: its sentences are taken to be equally long."""
    last = max((at for at, action in enumerate(said.actions) if action.ironed), default=0)
    return minutes * (len(said.actions) - 1 - last) / len(said.actions)


def _set_by(said: SaidStep) -> str:
    """The message by which a step sets the iron to no heat of its cloth; empty where it does not."""
    return next((action.mark for action in said.actions if action.mark in SET_BY_STEP), "")


def _left_at(bench: Bench, said: SaidStep, words: Words) -> str:
    """The message of the heat at which a step leaves the iron: that of its coolest cloth, or where it sets the iron anew
    for each, of its hottest."""
    if own := _set_by(said):
        return own
    pieces = by_heat(words.say, bench, said.pressed)
    anew = any(action.mark in IRON_SET for action in said.actions)
    return iron_set(words.say, bench, pieces[-1 if anew else 0]).message


def _at_zigzag(before: Sequence[Performed]) -> bool:
    sewn = [done.setup for done in before if done.setup in (SetUp.ZIGZAG, SetUp.STRAIGHT)]
    return bool(sewn) and sewn[-1] is SetUp.ZIGZAG


def _fresh_bobbins(shopping: ShoppingList, at: int, words: Words) -> Iterator[SaidAction]:
    if shopping.bobbins is None or words.say.room.bobbin is None:
        return
    for fresh in shopping.bobbins.fresh:
        if fresh.rows.step != at:
            continue
        sewn = fresh.rows.before + fresh.piece - 1
        yield said_action(
            "bobbin-fresh-within" if sewn else "bobbin-fresh",
            {
                "sewn": sewn,
                "rows": fresh.rows.all,
                "left": Length(fresh.left, "thread_left"),
                "full": Length(words.say.room.bobbin, "buy"),
            },
            words,
        )
    spare = [inside.changes for inside in shopping.bobbins.inside if inside.rows.step == at]
    if spare:
        yield said_action("bobbin-spare", {"spare": max(spare)}, words)
