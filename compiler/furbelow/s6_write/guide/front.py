"""The first page: what the garment is and what it asks, at a glance, and the plan of the sittings."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from furbelow.garment.message import Length, Money, Own, Part, Things, Value, Weight, flag
from furbelow.garment.solved import SolvedMaterial
from furbelow.garment.spec import Imprint, SupplyKind
from furbelow.garment.technique import Performed, SetUp
from furbelow.s3_rehearse.run import Rehearsal, Run
from furbelow.s3_rehearse.volume import volume_of
from furbelow.s3_rehearse.weight import weight_of
from furbelow.s5_buy.hours import LAST_LOOK, in_fives
from furbelow.s5_buy.shopping import Line, ShoppingList
from furbelow.s5_buy.sittings import left_to_dry
from furbelow.s6_write.guide.cut_operations import PRESSED
from furbelow.s6_write.guide.guide import Fact, Operation, Sitting
from furbelow.s6_write.guide.measures import measured
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.words.said_step import SaidStep
from furbelow.s6_write.words.words import Words

OVERNIGHT = ("starch-overnight",)  # sentences that let a night pass
GATHERING = ("gather", "shirring", "cartridge pleats", "ruched heading")


def at_a_glance(
    rehearsal: Rehearsal,
    shopping: ShoppingList,
    wearer: str,
    operations: Sequence[Operation],
    waits: Sequence[Part],
    words: Words,
) -> Iterator[Fact]:
    """Size, length, cloth, cost, time, weight and skill, a line each; the skill as the maker says it, where she does.

    waits: see `waits_of`.
    """
    words.read("front", "facts")
    run = rehearsal.run
    body = [
        Part("front-measure", {"name": Own(name.label), "value": Own(name.value)})
        for name in measured(rehearsal.solved, words)
    ]
    size: Value = (
        Part("front-size-with", {"whose": Own(wearer), "measures": Things(tuple(body))}) if body else Own(wearer)
    )
    yield _fact("front-size", size, words)
    if run.drops:
        hem = volume_of(run).longest.round
        long = {"length": Length(max(run.drops.values())), "hem": Length(hem)}
        yield _fact("front-length", Part("front-length-hem", long), words)
    cloths = [line for line in shopping.lines if _kind(line.material) is SupplyKind.CLOTH]
    if cloths:
        yield _fact("front-cloth", Things(tuple(_bought(line, words) for line in cloths)), words)
    costs = [line.cost for line in shopping.lines if line.cost is not None]
    if costs:
        yield _fact("front-cost", _cost(sum(costs, Fraction(0)), shopping, words), words)
    time = duration(shopping.planned_minutes)
    said = Part("front-time-waits", {"time": time, "waits": Things(tuple(waits))}) if waits else time
    yield _fact("front-time", said, words)
    if (grams := weight_of(run).grams) is not None:
        yield _fact("front-weight", Part("fact-weight-about", {"weight": Weight(grams)}), words)
    told = rehearsal.solved.spec.imprint.skill
    yield _fact("front-skill", Own(told) if told else _skill(run.performed, operations), words)


def waits_of(
    run: Run, told: Sequence[SaidStep], operations: Sequence[Operation], cut: Sequence[Operation]
) -> Iterator[tuple[str, Part]]:
    """What takes hours that are no work, with the letter of its operation: cloth that dries, an edge that hangs out overnight.

    The letter of what comes before the first cut is empty.
    """
    if any(step.message in PRESSED for operation in cut for step in operation.steps):
        yield "", Part("front-wait-wash")
    letters = {operation.key: operation.letter for operation in operations}
    wet = left_to_dry(run)
    for at, (done, said) in enumerate(zip(run.performed, told, strict=True)):
        letter = letters.get(done.key)
        if letter and said.waits:
            yield letter, Part("front-wait-hang", {"place": Own(letter)})
        if letter and at in wet:
            overnight = any(action.mark in OVERNIGHT for action in said.actions)
            yield letter, Part("front-wait-dry", {"place": Own(letter), "overnight": flag(overnight)})


def _cost(cost: Fraction, shopping: ShoppingList, words: Words) -> Value:
    """With what it leaves out, for what has no price is paid for too."""
    told = Money(cost, shopping.currency)
    without = [Own(words.name(line.name)) for line in shopping.lines if line.cost is None]
    return Part("front-cost-without", {"cost": told, "materials": Things(tuple(without))}) if without else told


def imprint_of(imprint: Imprint, words: Words) -> Iterator[Fact]:
    """Author, version and licence, as far as the maker says them."""
    words.read("front")
    for label, value in (
        ("front-author", imprint.author),
        ("front-version", imprint.version),
        ("front-licence", imprint.licence),
    ):
        if value:
            yield _fact(label, Own(value), words)


def _fact(label: str, value: Value, words: Words) -> Fact:
    return Fact(label, words.text(label), words.said(value), "")


def _kind(material: SolvedMaterial) -> SupplyKind:
    return material.material.kind


def _bought(line: Line, words: Words) -> Part:
    return Part("front-cloth-of", {"amount": Length(line.bought, "buy"), "cloth": Own(words.name(line.name))})


def _skill(performed: Sequence[Performed], operations: Sequence[Operation]) -> Part:
    used = {done.setup for done in performed}
    if SetUp.OVERLOCKER in used:
        can = "front-skill-overlocker"
    elif SetUp.ZIGZAG in used:
        can = "front-skill-zigzag"
    else:
        can = "front-skill-straight" if SetUp.STRAIGHT in used else "front-skill-hand"
    letters = {operation.key: operation.letter for operation in operations}
    gathers = (done.key for done in performed if done.step.written.technique in GATHERING)
    taught = next((letters[key] for key in gathers if key in letters), "")
    return Part("front-skill-taught", {"can": Part(can), "place": Own(taught)}) if taught else Part(can)


def plan_of_sittings(
    rehearsal: Rehearsal,
    shopping: ShoppingList,
    cut: Sequence[Operation],
    worked: Sequence[Operation],
    waits: Sequence[tuple[str, Part]],
    words: Words,
    ends: Sequence[int],
    begun: int,
) -> Iterator[Sitting]:
    """The cutting, then the sewing between its safe places; the last look closes the last sitting.

    worked: the operations of the steps, then the last look. waits: see `waits_of`. ends: see `sitting_ends`. begun: the first step
    that is left to do.
    """
    words.read("front")

    def sitting(number: int, title: str, minutes: int, work: Sequence[Operation]) -> Sitting:
        letters = {operation.letter for operation in work} if number else {""}
        told = tuple(part for letter, part in waits if letter in letters)
        besides = words.text("front-sitting-waits", {"waits": Things(told)}) if told else ""
        return Sitting(number, title, _time(minutes, words), _names(work), besides)

    if cut:
        yield sitting(0, words.text("front-cutting"), in_fives(shopping.cutting_minutes), cut)
    *steps, last = worked
    told = {operation.key: operation for operation in steps}
    performed = rehearsal.run.performed
    ends = sorted({*ends, len(performed) - 1})
    for number, end in enumerate(ends, 1):
        if end < begun and end != ends[-1]:
            continue
        first = max(ends[number - 2] + 1 if number > 1 else 0, begun)
        keys = [done.key for done in performed[first : end + 1]]
        among = [told[key] for key in keys if key in told]
        minutes = sum(map(in_fives, shopping.minutes[first : end + 1]))
        parts = dict.fromkeys(done.step.written.part for done in performed[first : end + 1] if done.step.written.part)
        if end == ends[-1]:
            among, minutes = [*among, last], minutes + LAST_LOOK
        heading = words.said(Things(tuple(map(Own, parts)))) if parts else words.text("part")
        yield sitting(number, heading, minutes, among)


def _names(operations: Sequence[Operation]) -> tuple[tuple[str, str], ...]:
    return tuple((operation.letter, operation.title) for operation in operations)


def _time(minutes: int, words: Words) -> str:
    return words.said(duration(minutes))
