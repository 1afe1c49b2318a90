"""Tables with a column for each size: what the garment asks, when it is sewn, whom it fits, what is bought."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TypeVar

from furbelow.garment.message import Length, Supply
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.offers import offered
from furbelow.s6_write.booklet.booklet import SizedMeasure, SizedPlan, SizedRow, SizedSitting
from furbelow.s6_write.booklet.texts import Skeleton, grouped, skeleton
from furbelow.s6_write.guide.guide import Fact, Guide, MaterialLine, Measure, Sitting
from furbelow.s6_write.words.holes import Hole, bare, parted
from furbelow.s6_write.words.words import Words

T = TypeVar("T")
_GAP = "…"  # where a number stands in what is said of a tool
_WHO = "front-size"  # the sizes stand above the columns, and their measures in a table of their own


def at_a_glance(each: Sequence[Guide]) -> tuple[SizedRow, ...]:
    """What the garment is and asks, as on the first page of a guide."""
    facts: dict[str, dict[int, Fact]] = {}
    for at, guide in enumerate(each):
        for fact in guide.glance:
            if fact.name != _WHO:
                facts.setdefault(fact.name, {})[at] = fact
    return tuple(
        SizedRow(
            _first(said).label, tuple(bare(said[at].value) if at in said else "" for at in range(len(each))), name=name
        )
        for name, said in facts.items()
    )


def cutting_time(each: Sequence[Guide]) -> SizedRow | None:
    """How long each size takes to cut, with the letters of that work."""
    first = [next((sitting for sitting in guide.sittings if not sitting.number), None) for guide in each]
    told = next(filter(None, first), None)
    if told is None:
        return None
    letters = ", ".join(letter for letter, _ in told.work)
    return SizedRow(bare(told.title), tuple(bare(sitting.minutes) if sitting else "" for sitting in first), letters)


def plans(each: Sequence[Guide]) -> tuple[SizedPlan, ...]:
    """The sittings; one plan for all sizes whose sittings differ in nothing but their time."""
    whole = tuple(range(len(each)))
    found = []
    for group in grouped(dict(enumerate(each)), lambda guide: tuple(map(_sitting_of, guide.sittings))):
        first = each[group[0]].sittings
        if not first:
            continue
        sittings = tuple(
            SizedSitting(
                sitting.number,
                bare(sitting.title),
                tuple(bare(each[at].sittings[place].minutes) if at in group else "" for at in whole),
                tuple((letter, bare(title)) for letter, title in sitting.work),
                bare(sitting.waits),
            )
            for place, sitting in enumerate(first)
        )
        found.append(SizedPlan(() if len(group) == len(each) else tuple(group), sittings))
    return tuple(found)


def _sitting_of(sitting: Sitting) -> tuple[object, ...]:
    return sitting.number, sitting.title, sitting.work, sitting.waits


def measures(each: Sequence[Guide]) -> tuple[SizedMeasure, ...]:
    """The size chart: the measures of the body that each size is for."""
    found: dict[str, dict[int, Measure]] = {}
    for at, guide in enumerate(each):
        for measure in guide.measures:
            found.setdefault(measure.name, {})[at] = measure
    return tuple(
        SizedMeasure(
            _first(said).number,
            _first(said).label,
            bare(_first(said).how),
            tuple(bare(said[at].value) if at in said else "" for at in range(len(each))),
        )
        for said in found.values()
    )


def bought(each: Sequence[Guide]) -> tuple[SizedRow, ...]:
    """What to buy of each material. What is bought by another description for some size has a row of its own."""
    found: dict[tuple[str, str], dict[int, MaterialLine]] = {}
    for at, guide in enumerate(each):
        for line in guide.materials:
            found.setdefault((bare(line.name), bare(line.description)), {})[at] = line
    return tuple(
        SizedRow(name, tuple(bare(lines[at].amount) if at in lines else "" for at in range(len(each))), described)
        for (name, described), lines in found.items()
    )


def tools_of(each: Sequence[Sequence[str]]) -> tuple[list[list[str]], tuple[SizedRow, ...]]:
    """Tools of all sizes: those that are said alike, and a row for each of which every size wants another number."""
    alike: dict[Skeleton, dict[int, str]] = {}
    for at, lines in enumerate(each):
        for line in lines:
            alike.setdefault(skeleton(line), {})[at] = line
    differing = {
        words: said
        for words, said in alike.items()
        if len(said) == len(each) and len(set(map(bare, said.values()))) > 1 and len(_numbers(said[0])) == 1
    }
    rows = tuple(
        SizedRow(
            "".join(part if isinstance(part, str) else _GAP for part in parted(said[0])),
            tuple(_numbers(said[at])[0].shown for at in range(len(each))),
        )
        for said in differing.values()
    )
    return [[line for line in lines if skeleton(line) not in differing] for lines in each], rows


def _numbers(line: str) -> list[Hole]:
    return [part for part in parted(line) if isinstance(part, Hole)]


def widths(each: Sequence[tuple[Cutting, Words]]) -> tuple[SizedRow, ...]:
    """Cloth to buy in each width that it is offered in, where there are several. each: the cutting of every size."""
    found: dict[tuple[str, str], dict[int, str]] = {}
    several = {name for cutting, _ in each for name, sheets in cutting.sheets.items() if len(sheets) > 1}
    for at, (cutting, words) in enumerate(each):
        words.read("booklet")
        for name, sheets in cutting.sheets.items():
            for sheet in sorted(sheets, key=lambda sheet: sheet.width) if name in several else ():
                label = words.text("booklet-width", {"cloth": Supply(name), "width": Length(sheet.width)})
                found.setdefault((name, label), {})[at] = words.said(Length(offered(sheet).bought, "buy"))
    return tuple(
        SizedRow(label, tuple(said.get(at, "") for at in range(len(each)))) for (_, label), said in found.items()
    )


def _first(said: Mapping[int, T]) -> T:
    return next(iter(said.values()))
