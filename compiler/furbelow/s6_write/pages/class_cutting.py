"""The cutting of a whole class as a guide of its own: the same list, drawings and steps as in each guide."""

from __future__ import annotations

from dataclasses import replace

from furbelow.garment.message import Length, Supply
from furbelow.garment.spec import SupplyKind
from furbelow.garment.tags import tag
from furbelow.s5_buy.class_cutting import BEFORE, marked
from furbelow.s5_buy.class_order import ClassOrder
from furbelow.s6_write.guide.cut_operations import cut_operations
from furbelow.s6_write.guide.cutting_pages import cut_lines
from furbelow.s6_write.guide.guide import Caution, CutLine, Guide
from furbelow.s6_write.guide.letters import letters_of
from furbelow.s6_write.guide.material_lines import material_lines
from furbelow.s6_write.pages.class_page import content_key, title_of
from furbelow.s6_write.words.words import Words


def class_cutting(order: ClassOrder, whose: str, cautions: tuple[Caution, ...], words: Words) -> Guide:
    """A guide with nothing in it but what cutting for all needs. Cut sizes stand under numbers, without names."""
    cloths = order.cutting.sheets
    shopping = order.shopping._replace(lines=tuple(line for line in order.shopping.lines if line.name in cloths))
    letters = letters_of(tuple(cloths), ())[0]
    guide = Guide(
        title=title_of(order, words),
        wearer=words.text("class-cutting-for", {"whose": whose}),
        about=_about(order, words),
        facts=(),
        cautions=cautions,
        tools=(),
        materials=material_lines(shopping, words),
        cutting=_cut_lines(order, words),
        key=(),
        cut=tuple(cut_operations(order.cutting, order.solved, words, letters, _trims(order))),
        parts=(),
        proofs=(),
        notes="",
        overview=None,
        rounding=words.said(Length(order.solved.rounding)),
        content_key="",
        language=words.language,
    )
    return replace(guide, content_key=content_key(guide))


def _trims(order: ClassOrder) -> tuple[str, ...]:
    """What shrinks in the wash of all that is given out but the cloth."""
    kinds, bone = (SupplyKind.TRIM, SupplyKind.CORD), "use-hoop"
    lines = (line for line in order.shopping.lines if line.material.material.kind in kinds)
    return tuple(line.name for line in lines if any(place.message != bone for place in line.placement))


def _about(order: ClassOrder, words: Words) -> str:
    """It says no name: who a number stands for is on the class page alone."""
    mark = next(iter(order.cutting.marks.values()))
    number = str(next(iter(order.garments)))
    values = {"example": tag(mark, 1), "piece": mark.removeprefix(f"{number}{BEFORE}"), "number": number}
    return words.text("class-cutting-about", values)


def _cut_lines(order: ClassOrder, words: Words) -> tuple[CutLine, ...]:
    joins = order.cutting.joins
    cloths = {strip.name: cloth for cloth, sheets in order.cutting.sheets.items() for strip in sheets[0].strips}
    lines = []
    for number, garment in order.garments.items():
        for name, line in zip(garment.pieces, cut_lines(garment.pieces, garment.cutting, words), strict=True):
            joined = joins.get(marked(number, name), 0)
            note = words.text("class-joins", {"joins": joined}) if joined else words.text("class-whole")
            # Without its reasons: they stand on measures of the body, and this page is for all to see.
            mark = order.cutting.marks[marked(number, name)]
            cloth = words.said(Supply(cloths[marked(number, name)]))
            lines.append(replace(line, mark=mark, cloth=cloth, note=note, why=()))
    return tuple(lines)
