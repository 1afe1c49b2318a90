"""The size chart: for each size of a spec the body it is for, the choices, and every piece finished and cut."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from furbelow.garment.phrasing import Phrasing
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s3_rehearse.volume import volume_of
from furbelow.s3_rehearse.weight import show_weight, weight_of

# Sizes side by side: as many as fit on a sheet of paper.
SIDE_BY_SIDE = 6


@dataclass(frozen=True)
class ChartRow:
    label: str
    values: tuple[str, ...]  # one a size


@dataclass(frozen=True)
class ChartGroup:
    title: str
    rows: tuple[ChartRow, ...]


@dataclass(frozen=True)
class ChartTable:
    sizes: tuple[str, ...]
    groups: tuple[ChartGroup, ...]


def size_chart(rehearsals: Sequence[Rehearsal], sizes: Sequence[str]) -> tuple[ChartTable, ...]:
    """The chart, in tables that a sheet of paper holds side by side. sizes: a name for each rehearsal."""
    if len(rehearsals) != len(sizes):
        raise ValueError("a size chart needs one name for each garment")
    parts = range(0, len(sizes), SIDE_BY_SIDE)
    return tuple(
        ChartTable(tuple(sizes[at : at + SIDE_BY_SIDE]), _groups(rehearsals[at : at + SIDE_BY_SIDE])) for at in parts
    )


def _groups(rehearsals: Sequence[Rehearsal]) -> tuple[ChartGroup, ...]:
    first = rehearsals[0].solved
    spec = first.spec
    choices = {name: choice.about for name, choice in spec.choices.items()}
    choices |= {name: measure.about for name, measure in spec.measures.items()}
    groups = [
        ChartGroup("Body", tuple(_measured(rehearsals, name, "") for name in spec.body)),
        ChartGroup("Choices", tuple(_measured(rehearsals, name, about) for name, about in choices.items())),
    ]
    groups += [_piece(rehearsals, name, f"The {piece.label}") for name, piece in first.pieces.items()]
    groups.append(_whole(rehearsals))
    return tuple(group for group in groups if group.rows)


def _measured(rehearsals: Sequence[Rehearsal], name: str, about: str) -> ChartRow:
    values = (each.solved.values[name].value.show(_say(each).system) for each in rehearsals)
    return ChartRow(about or name.replace("_", " "), tuple(values))


def _piece(rehearsals: Sequence[Rehearsal], name: str, title: str) -> ChartGroup:
    pieces = [(each.solved.pieces[name], _say(each)) for each in rehearsals]
    return ChartGroup(
        title,
        (
            ChartRow("how many", tuple(str(piece.count) for piece, _ in pieces)),
            ChartRow("finished length", tuple(say.length(piece.length) for piece, say in pieces)),
            ChartRow(
                "finished depth, folded" if pieces[0][0].folded else "finished depth",
                tuple(say.length(piece.depth) for piece, say in pieces),
            ),
            ChartRow("cut length", tuple(say.cut(piece.blank[0]) for piece, say in pieces)),
            ChartRow("cut depth", tuple(say.cut(piece.blank[1]) for piece, say in pieces)),
        ),
    )


def _whole(rehearsals: Sequence[Rehearsal]) -> ChartGroup:
    """How full the garment is and what it weighs."""
    volumes = [(volume_of(each.run), _say(each)) for each in rehearsals]
    weights = [(weight_of(each.run).grams, _say(each).system) for each in rehearsals]
    rows = [
        ChartRow("round the hem", tuple(say.length(volume.longest.round) for volume, say in volumes)),
        ChartRow("round all hems", tuple(say.buy(volume.together) for volume, say in volumes)),
        ChartRow("fullness from waist to hem", tuple(say.ratio(volume.fullness) for volume, say in volumes)),
        ChartRow(
            "weight, about",
            tuple("unknown" if grams is None else show_weight(grams, system) for grams, system in weights),
        ),
    ]
    if all(volume.layers == 1 for volume, _ in volumes):
        del rows[1]
    return ChartGroup("The whole garment", tuple(rows))


def _say(rehearsal: Rehearsal) -> Phrasing:
    return Phrasing(rehearsal.solved, rehearsal.run.room)
