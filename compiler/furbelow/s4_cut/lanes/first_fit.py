"""First fit, longest first: a correct plan at once, without any claim to be a good one."""

from __future__ import annotations

from collections import Counter

from furbelow.s4_cut.lanes.grid import Kind, Scale, side_by_side
from furbelow.s4_cut.lanes.lay import Cut, Laying, Strand


def first_fit(kinds: tuple[Kind, ...], scale: Scale) -> list[Laying]:
    """Sections for pieces laid along the bolt. A piece is joined only where it is longer than a section may be."""
    layings: list[Laying] = []
    for cut in _cuts(kinds, scale.longest):
        if not any(_place(cut, laying, scale) for laying in layings):
            layings.append(Laying(cut.length, [Strand(cut.kind.depth, [cut], cut.kind.selvedge)]))
    return layings


def first_fit_across(kinds: tuple[Kind, ...], scale: Scale) -> list[Laying]:
    """At most one section more than the longest allows, its lanes over the width, for pieces laid across."""
    strands: list[Strand] = []
    for cut in _cuts(kinds, scale.lane_over):
        for strand in strands:
            if strand.depth == cut.kind.depth and strand.used + cut.length <= scale.lane_over:
                strand.cuts.append(cut)
                break
        else:
            strands.append(Strand(cut.kind.depth, [cut]))
    return stack_across(strands, scale)


def stack_across(strands: list[Strand], scale: Scale) -> list[Laying]:
    """Lanes over the width put one below the other, in as few sections as the longest section allows by first fit."""
    layings: list[Laying] = []
    for strand in sorted(strands, key=lambda each: -each.depth):
        takes = scale.depth_on_grid(strand.depth)
        for laying in layings:
            if scale.longest is None or laying.length + takes <= scale.longest:
                laying.length += takes
                laying.strands.append(strand)
                break
        else:
            layings.append(Laying(takes, [strand], across=True))
    return layings


def _cuts(kinds: tuple[Kind, ...], room: int | None) -> list[Cut]:
    """Every piece as one cut, or as equal parts where it is longer than `room`; longest first."""
    cuts = []
    for kind in kinds:
        parts = 1 if room is None else kind.parts_in(room)
        sewn = kind.length + kind.takes * (parts - 1)
        for number in range(kind.count):
            cuts += [
                Cut(kind, number, part + 1, parts, sewn * (part + 1) // parts - sewn * part // parts)
                for part in range(parts)
            ]
    return sorted(cuts, key=lambda cut: (-cut.length, -cut.kind.depth))


def _place(cut: Cut, laying: Laying, scale: Scale) -> bool:
    kind = (cut.kind.depth, cut.kind.selvedge)
    for strand in laying.strands:
        if (strand.depth, strand.selvedge) == kind and strand.used + cut.length <= laying.length:
            strand.cuts.append(cut)
            return True
    lanes = Counter((strand.depth, strand.selvedge) for strand in laying.strands)
    lanes[kind] += 1
    if not side_by_side(lanes, scale):
        return False
    laying.strands.append(Strand(cut.kind.depth, [cut], cut.kind.selvedge))
    return True
