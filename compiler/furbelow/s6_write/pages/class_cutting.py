"""The cutting of a whole class as guides of their own, a part each: the same list, drawings and steps as in each guide."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from furbelow.garment.message import Own, Supply, Values
from furbelow.garment.spec import SupplyKind
from furbelow.garment.tags import tag
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.class_cutting import BEFORE, SPARE, marked
from furbelow.s5_buy.class_order import ClassOrder
from furbelow.s6_write.guide.content_key import content_key
from furbelow.s6_write.guide.cut_operations import cut_operations
from furbelow.s6_write.guide.cutting_pages import cut_lines
from furbelow.s6_write.guide.guide import Caution, CutLine, Guide
from furbelow.s6_write.guide.letters import letters_of
from furbelow.s6_write.guide.material_lines import material_lines
from furbelow.s6_write.guide.told_reason import cut_rounding
from furbelow.s6_write.pages.class_page import title_of
from furbelow.s6_write.words.ranges import ranges
from furbelow.s6_write.words.words import Words


def cutting_names(parts: int) -> tuple[str, ...]:
    """The names of the files for so many parts, without what says their kind."""
    return ("class-cutting",) if parts == 1 else tuple(f"class-cutting-{part}" for part in range(1, parts + 1))


def class_cutting(
    order: ClassOrder, cut: Sequence[Cutting], part: int, whose: str, cautions: tuple[Caution, ...], words: Words
) -> Guide:
    """A guide with nothing in it but what cutting a part takes. Cut sizes stand under numbers, without names.

    cut: the cutting for all in its parts. part: which of them, counted from 1.
    """
    cutting, parts = cut[part - 1], len(cut)
    cloths = cutting.sheets
    begun = {cloth for earlier in cut[: part - 1] for cloth in earlier.sheets}
    shopping = order.shopping._replace(lines=tuple(line for line in order.shopping.lines if line.name in cloths))
    letters = letters_of(tuple(order.cutting.sheets), ())[0]
    for_all: Values = {"whose": Own(whose), "part": part, "parts": parts}
    lines = tuple(_cut_lines(order, cutting, words))
    guide = Guide(
        title=title_of(order, words),
        wearer=words.text("class-cutting-for" if parts == 1 else "class-cutting-for-part", for_all),
        about=_about(lines[0].mark, cut, part, words),
        facts=(),
        cautions=cautions,
        tools=(),
        # All cloth is bought at once.
        materials=material_lines(shopping, words) if parts == 1 else (),
        cutting=lines,
        key=(),
        cut=tuple(cut_operations(cutting, order.solved, words, letters, _trims(order) if part == 1 else (), begun)),
        parts=(),
        proofs=(),
        notes="",
        overview=None,
        rounding=cut_rounding(order.solved, words),
        content_key="",
        language=words.language,
    )
    return replace(guide, content_key=content_key(guide))


def _trims(order: ClassOrder) -> tuple[str, ...]:
    """What shrinks in the wash of all that is given out but the cloth."""
    kinds, bone = (SupplyKind.TRIM, SupplyKind.CORD), "use-hoop"
    lines = (line for line in order.shopping.lines if line.material.material.kind in kinds)
    return tuple(line.name for line in lines if any(place.message != bone for place in line.placement))


def _about(mark: str, cut: Sequence[Cutting], part: int, words: Words) -> str:
    """It says no name: who a number stands for is on the class page alone. mark: of a piece, as an example."""
    number, _, piece = mark.partition(BEFORE)
    values = {"example": tag(mark, 1), "piece": piece, "number": number}
    about = words.text("class-cutting-about", values)
    told = [about]
    if spare := _spare(cut[part - 1]):
        told.append(words.text("class-cutting-spare", {"example": tag(spare, 1)}))
    if len(cut) == 1:
        return "\n\n".join(told)
    ends = {number: at for at, each in enumerate(cut) for number in _numbers(each)}
    here = _numbers(cut[part - 1])
    told.insert(1, words.text("class-cutting-parts-are"))
    for message, goes_on in (("class-cutting-piles-whole", False), ("class-cutting-piles-go-on", True)):
        if piles := [number for number in here if (ends[number] >= part) is goes_on]:
            told.append(words.text(message, {"numbers": ranges(piles), "count": len(piles)}))
    return "\n\n".join(told)


def _spare(cutting: Cutting) -> str:
    """The mark of a piece that was planned and is nobody's any more; empty where there is none."""
    strips = (strip for sheets in cutting.sheets.values() for strip in sheets[0].strips)
    return next((cutting.marks[strip.name] for strip in strips if strip.name.endswith(SPARE)), "")


def _numbers(cutting: Cutting) -> set[int]:
    """Of those who have something in it."""
    return {int(strip.wearer) for sheets in cutting.sheets.values() for strip in sheets[0].strips if strip.wearer}


def _cut_lines(order: ClassOrder, cutting: Cutting, words: Words) -> Iterator[CutLine]:
    """Of the pieces that are cut here, in the order of the class."""
    joins = cutting.joins
    cloths = {strip.name: cloth for cloth, sheets in cutting.sheets.items() for strip in sheets[0].strips}
    # Only of those who have something in it: the work is not to grow with the class for each part.
    numbers = _numbers(cutting)
    for number in (number for number in order.garments if number in numbers):
        garment = order.garments[number]
        pieces = {name: piece for name, piece in garment.pieces.items() if marked(number, name) in cloths}
        for name, line in zip(pieces, cut_lines(pieces, garment.cutting, words), strict=True):
            joined = joins.get(marked(number, name), 0)
            note = words.text("class-joins", {"joins": joined}) if joined else words.text("class-whole")
            # Without its reasons: they stand on measures of the body, and this page is for all to see.
            mark = cutting.marks[marked(number, name)]
            cloth = words.said(Supply(cloths[marked(number, name)]))
            yield replace(line, mark=mark, cloth=cloth, note=note, why=())
