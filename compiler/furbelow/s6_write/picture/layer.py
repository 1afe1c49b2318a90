"""One layer drawn: the lowest tier first, so that the seam of the one above lies over it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import inf, pi
from random import Random

from furbelow.named import NamedTuple
from furbelow.s6_write.picture.folds import Column, Waved, columns_of, place_at
from furbelow.s6_write.picture.form import Form
from furbelow.s6_write.picture.hang import Place
from furbelow.s6_write.picture.marks import (
    OUTLINE,
    SEAM,
    creases,
    fold_edges,
    gathers,
    pleats,
    sewn_on,
)
from furbelow.s6_write.picture.ribbons import Ribbon, cut_out, ribbons_of, shaded, turns_at
from furbelow.s6_write.picture.shape import Layer
from furbelow.s6_write.picture.tints import CLOTH, INK, LINING, Tint
from furbelow.s6_write.picture.view import View, area, line

SHEER = 0.34  # how much one sheet of net hides


class Sheet(NamedTuple):
    """One sheet of cloth on its way round the form.

    under: it shows only through what lies over it, or below its hem. cut: angle up to which it is left, when layers are peeled back.
    """

    layer: Layer
    outline: Sequence[Place]
    number: int
    under: bool
    most: int
    cut: float = pi


def layer(sheet: Sheet, form: Form, view: View) -> Iterator[str]:
    tiers = sheet.layer.tiers
    above: tuple[Waved, ...] = ()
    meshes: list[list[Column]] = []
    for number, tier in enumerate(tiers):
        columns, above = columns_of(
            view,
            form,
            tuple([place for place in sheet.outline if place.tier == number]),
            f"{tier.piece} {sheet.number}",
            above,
            last=number == len(tiers) - 1,
            span=min(1.0, sheet.layer.share) * pi,
            most=sheet.most,
            fine=not sheet.under,
            dips=tuple([each.dip for each in tiers[: number + 1]]),
            floor=form.floor if any(any(each.dip) for each in tiers) else inf,
        )
        meshes.append([column for column in columns if column.angle <= sheet.cut])
    tint = LINING if sheet.layer.lining else CLOTH
    for number in range(len(tiers) - 1, -1, -1):
        for run in _runs(meshes[number], sheet.layer.share):
            yield from _tier(sheet, number, run, view, tint)


def _runs(columns: Sequence[Column], share: float) -> Iterator[Sequence[Column]]:
    """The columns without a gap between them: what does not reach all the way round is open behind."""
    start = 0
    for at in range(1, len(columns) + 1):
        if at == len(columns) or share < 1 and abs(columns[at].angle - columns[at - 1].angle) > pi:
            if at - start > 2:
                yield columns[start:at]
            start = at


def _tier(sheet: Sheet, number: int, columns: Sequence[Column], view: View, tint: Tint) -> Iterator[str]:
    tier, last = sheet.layer.tiers[number], number == len(sheet.layer.tiers) - 1
    opacity = SHEER if sheet.layer.sheer else 1.0
    luck = Random(f"{tier.piece} marks {sheet.number}")
    if sheet.under:
        yield area(cut_out(columns, left=False, right=False), tint.lit, opacity)
        if last:
            yield from sewn_on(columns, tier.marks)
            yield line([column.hem for column in columns], INK, SEAM)
        yield from _sides(columns)
        return
    for ribbon in ribbons_of(columns, view.scale):
        yield from _ribbon(ribbon, tint, opacity, view.scale, last)
        yield from sewn_on(ribbon.columns, tier.marks, ribbon.inside)
        if not ribbon.inside:
            yield from fold_edges(ribbon, tier.fullness, luck)
    if tier.pleats:
        yield pleats(columns)
    else:
        yield creases(columns, luck)
        yield gathers(columns, tier, luck)
    if number == 0:
        yield line([column.spots[0] for column in columns[::2] if column.near > 0] or [columns[0].hem], INK, SEAM)
    facing = [column.hem for column in columns[::2] if column.near > 0]
    if not last and facing:
        yield line(facing, INK, SEAM)
    yield from _sides(columns)
    if sheet.cut < pi:
        yield from _turned_back(columns[-1], view, tint)


def _turned_back(edge: Column, view: View, tint: Tint) -> Iterator[str]:
    """The corner at the cut edge of a layer that is peeled back."""
    way = [place_at(edge, step / 6) for step in range(7)]
    corner = [
        (x - 34 * view.scale * (step / 6) ** 1.3, y - 5 * view.scale * step / 6) for step, (x, y) in enumerate(way)
    ]
    yield area([*way, *corner[::-1]], tint.inside)
    yield line(corner, INK, SEAM)
    yield line(way, INK, SEAM)


def _ribbon(ribbon: Ribbon, tint: Tint, opacity: float, scale: float, last: bool) -> Iterator[str]:
    columns = ribbon.columns
    if ribbon.inside:
        turn = turns_at(ribbon)
        if turn > 0:
            yield area(cut_out(columns), tint.shade, opacity)
        if turn < len(columns[0].spots) - 1:
            yield area(cut_out(columns, turn), tint.inside, opacity)
    else:
        yield area(cut_out(columns, left=ribbon.left, right=ribbon.right), tint.lit, opacity)
        for run in shaded(ribbon, scale):
            yield area(cut_out(run), tint.shade, opacity)
    if last:
        yield line([column.hem for column in columns], INK, OUTLINE)


def _sides(columns: Sequence[Column]) -> Iterator[str]:
    """The outline: what is furthest left and right at each height."""
    levels = list(zip(*(column.spots for column in columns), strict=True))
    yield line(list(map(min, levels)), INK, OUTLINE)
    yield line(list(map(max, levels)), INK, OUTLINE)
