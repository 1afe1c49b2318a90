"""A long cutting in parts that are cut one after another, each no more than is read, printed and held at once."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from furbelow.s4_cut.cut import Cutting, Sheet
from furbelow.s4_cut.plan import Section

MOST = 120  # pieces in a part: those of ten skirts of two tiers in two layers


def in_parts(cutting: Cutting, most: int | None = None) -> tuple[Cutting, ...]:
    """The sections in their order, cloth after cloth; the cutting itself where it is short enough, no part without cloth.

    A part goes on over the next cloth where it has room. It ends where no copies of a piece are left to the next one, if it
    is half full by then. Marks are those of all. most: pieces in a part, `MOST` where none is given.
    """
    sections = [(cloth, each) for cloth in cutting.sheets for each in cutting.sheet(cloth).plan.sections]
    most = most or MOST
    if not sections:
        return ()
    if sum(len(section.pieces) for _, section in sections) <= most:
        return (cutting,)
    return tuple(_part(cutting, sections[first:end]) for first, end in _bounds([each for _, each in sections], most))


def _bounds(sections: Sequence[Section], most: int) -> Iterator[tuple[int, int]]:
    last = {piece.strip: at for at, section in enumerate(sections) for piece in section.pieces}
    begun = ends = open_until = 0
    held = held_there = 0
    for at, section in enumerate(sections):
        pieces = len(section.pieces)
        if at > begun and held + pieces > most:
            if ends == begun or held_there * 2 < most:
                ends, held_there = at, held
            yield begun, ends
            begun, held, held_there = ends, held - held_there, 0
        held += pieces
        open_until = max([open_until, *(last[piece.strip] for piece in section.pieces)])
        if open_until == at:
            ends, held_there = at + 1, held
    yield begun, len(sections)


def _part(cutting: Cutting, sections: Sequence[tuple[str, Section]]) -> Cutting:
    by_cloth: dict[str, list[Section]] = {}
    for cloth, section in sections:
        by_cloth.setdefault(cloth, []).append(section)
    sheets = {cloth: (_sheet(cutting.sheet(cloth), of_it),) for cloth, of_it in by_cloth.items()}
    return cutting._replace(sheets=sheets)


def _sheet(sheet: Sheet, sections: Sequence[Section]) -> Sheet:
    cut = {piece.strip for section in sections for piece in section.pieces}
    laid = sum((section.length for section in sections), Fraction(0))
    bought = laid / (1 - sheet.bolt.shrinkage)
    plan = sheet.plan._replace(sections=tuple(sections), laid_length=laid, bolt_length=bought)
    return sheet._replace(strips=tuple(strip for strip in sheet.strips if strip.name in cut), plan=plan)
