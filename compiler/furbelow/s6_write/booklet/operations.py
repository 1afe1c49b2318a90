"""The operations of several sizes as one: sentences laid beside each other by their messages, numbers by their kinds."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import fields, replace

from furbelow.s6_write.booklet.aligned import aligned
from furbelow.s6_write.booklet.booklet import SizedOperation, SizedPart, SizedStep
from furbelow.s6_write.booklet.figures import Renumbered, called_anew, drawings
from furbelow.s6_write.booklet.sized import Sized
from furbelow.s6_write.booklet.texts import Version, grouped, skeleton, versions
from furbelow.s6_write.guide.cautions import ToldOnce
from furbelow.s6_write.guide.guide import Caution, GuideStep, Operation, Part
from furbelow.s6_write.words.holes import bare

_SAME_WORDS, _SAME_MESSAGE = 3, 1
_STEP_TEXTS = ("text", "check", "tolerance", "remedy", "chain")
_APART = (
    *_STEP_TEXTS,
    "number",
)  # what is held beside each other by itself; anything else is the same or another version


def sized_parts(each: Sequence[Sequence[Part]], sized: Sized, sat: Sequence[Collection[str]]) -> tuple[SizedPart, ...]:
    """each: the parts of every size. sat: for every size the letters of the operations behind which a sitting ends."""
    headings = {operation.key: part.title for parts in each for part in parts for operation in part.operations}
    of_sizes = {at: [operation for part in parts for operation in part.operations] for at, parts in enumerate(each)}
    told = _Told(sat)
    found: list[tuple[str, list[SizedOperation]]] = []
    for place in aligned(of_sizes, lambda one, other: int(one.key == other.key)):
        operation = _operation(place, sized, told)
        heading = bare(headings[operation.key])
        if not found or found[-1][0] != heading:
            found.append((heading, []))
        found[-1][1].append(operation)
    return tuple(SizedPart(title, tuple(operations)) for title, operations in found)


class _Told:
    """What each size has read so far: cautions, and the drawings with their places. sat: see `sized_parts`."""

    def __init__(self, sat: Sequence[Collection[str]]) -> None:
        self.sat = sat
        self.cautions = [ToldOnce() for _ in sat]
        self.drawn: dict[tuple[int, str], str] = {}


def _operation(each: Mapping[int, Operation], sized: Sized, told: _Told) -> SizedOperation:
    letters = sized.letters
    letters.begin()
    first = each.get(sized.drawn) or next(iter(each.values()))
    places = _drawn_together(aligned({at: operation.steps for at, operation in each.items()}, _likeness))
    numbers = {(at, step.number): number for number, place in enumerate(places, 1) for at, step in place.items()}
    places = [{at: _called_anew(step, at, numbers) for at, step in place.items()} for place in places]
    steps = [step for number, place in enumerate(places, 1) for step in _steps(number, place, tuple(each), sized)]
    cautions = tuple(_cautions({at: operation.cautions for at, operation in each.items()}, sized, told))
    for at, operation in each.items():
        if operation.stop or operation.letter in told.sat[at]:
            told.cautions[at].rest()
    minutes = {at: bare(operation.minutes) for at, operation in each.items()}
    title, aim, number, stop, all_of_it = (
        letters.told({at: getattr(operation, name) for at, operation in each.items()})
        for name in ("title", "aim", "number", "stop", "all_of_it")
    )
    # Last, so that a number is called as the sentences have it.
    drawn, drawn_at = drawings(
        {at: operation.figures for at, operation in each.items()}, first.letter, numbers, sized, told.drawn
    )
    return SizedOperation(
        key=first.key,
        letter=first.letter,
        title=title,
        aim=aim,
        minutes=minutes[min(minutes)] if len(set(minutes.values())) == 1 else "",
        cautions=cautions,
        figures=tuple(each.drawn for each in drawn),
        steps=tuple(replace(step, drawn_at=drawn_at.get(step.number, "")) for step in steps),
        tip=first.tip,
        stop=stop,
        number=number,
        all_of_it=all_of_it,
        sizes=sized.whose(tuple(each)),
        numbers=letters.here(),
        sized_minutes=tuple(minutes.get(at, "") for at in sized.all),
        drawings=drawn,
    )


def _called_anew(step: GuideStep, at: int, numbers: Renumbered) -> GuideStep:
    """The step with the sentences that it names called as in the booklet."""
    text, check, tolerance, remedy, chain = (called_anew(getattr(step, name), at, numbers) for name in _STEP_TEXTS)
    return replace(step, text=text, check=check, tolerance=tolerance, remedy=remedy, chain=chain)


def _likeness(one: GuideStep, other: GuideStep) -> int:
    if skeleton(one.text) == skeleton(other.text):
        return _SAME_WORDS
    return _SAME_MESSAGE if one.message == other.message else 0


def _drawn_together(places: Sequence[dict[int, GuideStep]]) -> list[dict[int, GuideStep]]:
    """Sentences that follow each other and are for different sizes have one number: one stands in the other's stead."""
    found: list[dict[int, GuideStep]] = []
    for place in places:
        if found and not found[-1].keys() & place.keys():
            found[-1] = dict(sorted({**found[-1], **place}.items()))
        else:
            found.append(place)
    return found


def _steps(number: int, place: Mapping[int, GuideStep], whose: Sequence[int], sized: Sized) -> Iterator[SizedStep]:
    """A sentence for all whose operation it is, or a version for each group of sizes for whom it is one sentence."""
    groups = grouped(place, _version_of)
    for version, group in enumerate(groups, 1):
        steps = {at: place[at] for at in group}
        first = steps[group[0]]
        text, check, tolerance, remedy, chain = (
            sized.letters.told({at: getattr(step, name) for at, step in steps.items()}) for name in _STEP_TEXTS
        )
        sizes = () if len(group) == len(whose) else tuple(group)
        values = {each.name: getattr(first, each.name) for each in fields(first)}
        told = SizedStep(**values, sizes=sizes, version=version)
        text = versions([Version(sizes, text)]) if sizes else text
        yield replace(told, number=number, text=text, check=check, tolerance=tolerance, remedy=remedy, chain=chain)


def _version_of(step: GuideStep) -> tuple[object, ...]:
    others = (getattr(step, each.name) for each in fields(step) if each.name not in _APART)
    return (skeleton(step.text), *others)


def _cautions(each: Mapping[int, Sequence[Caution]], sized: Sized, told: _Told) -> Iterator[Caution]:
    """Each caution before the first operation alone that it concerns, for every size."""
    new: dict[tuple[str, object], dict[int, str]] = {}
    for at, cautions in each.items():
        for caution in cautions:
            # In the order of the operation, told before or not.
            said = new.setdefault((caution.kind, skeleton(caution.text)), {})
            if told.cautions[at].is_new(Caution(caution.kind, bare(caution.text))):
                said[at] = caution.text
    for (kind, _), said in new.items():
        if not said:
            continue
        text = sized.letters.lettered(said)
        yield Caution(kind, text if len(said) == len(each) else versions([Version(tuple(said), text)]))
