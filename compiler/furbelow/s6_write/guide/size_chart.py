"""The size chart: for each size of a spec the body it is for, the choices, and every piece finished and cut."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from furbelow.garment.message import Amount, Length, Pieces, Ratio, Value, Weight
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import SolvedPiece
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s3_rehearse.volume import Volume, volume_of
from furbelow.s3_rehearse.weight import weight_of
from furbelow.s6_write.words.words import Words

Garment = tuple[Rehearsal, Words]

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
    garments = [(rehearsal, _words(rehearsal)) for rehearsal in rehearsals]
    rehearsal, words = garments[0]
    spec = rehearsal.solved.spec
    groups = [
        ChartGroup(words.text("chart-body"), tuple(_measured(garments, name) for name in spec.body)),
        ChartGroup(
            words.text("chart-choices"), tuple(_measured(garments, name) for name in (*spec.choices, *spec.measures))
        ),
    ]
    groups += [_piece(garments, name) for name in rehearsal.solved.pieces]
    groups.append(_whole(garments))
    return tuple(group for group in groups if group.rows)


def _words(rehearsal: Rehearsal) -> Words:
    say = Phrasing(rehearsal.solved, rehearsal.run.room)
    words = Words(say.language, say)
    words.read("facts")
    return words


def _measured(garments: Sequence[Garment], name: str) -> ChartRow:
    values = (
        words.said(Amount(rehearsal.solved.values[name].value, words.say.system)) for rehearsal, words in garments
    )
    first, own = garments[0]
    return ChartRow(first.solved.spec.about_of(name) or own.name(name), tuple(values))


def _piece(garments: Sequence[Garment], name: str) -> ChartGroup:
    pieces = [(rehearsal.solved.pieces[name], words) for rehearsal, words in garments]
    first, words = pieces[0]

    def row(message: str, of: Callable[[SolvedPiece], Value]) -> ChartRow:
        return ChartRow(words.text(message), tuple(own.said(of(piece)) for piece, own in pieces))

    return ChartGroup(
        words.text("chart-piece", {"piece": Pieces((name,))}),
        (
            row("chart-count", lambda piece: piece.rectangles),
            row("chart-length", lambda piece: Length(piece.length)),
            row("chart-depth-folded" if first.folded else "chart-depth", lambda piece: Length(piece.depth)),
            row("chart-cut-length", lambda piece: Length(piece.blank[0], "cut")),
            row("chart-cut-depth", lambda piece: Length(piece.blank[1], "cut")),
        ),
    )


def _whole(garments: Sequence[Garment]) -> ChartGroup:
    """How full the garment is and what it weighs."""
    words = garments[0][1]
    volumes = [(volume_of(rehearsal.run), own) for rehearsal, own in garments]
    weights = [(weight_of(rehearsal.run).grams, own) for rehearsal, own in garments]

    def row(message: str, of: Callable[[Volume], Value]) -> ChartRow:
        return ChartRow(words.text(message), tuple(own.said(of(volume)) for volume, own in volumes))

    rows = [row("fact-hem", lambda volume: Length(volume.longest.round))]
    if any(volume.layers > 1 for volume, _ in volumes):
        rows.append(row("chart-hems", lambda volume: Length(volume.together, "buy")))
    rows += [
        row("fact-fullness", lambda volume: Ratio(volume.fullness)),
        ChartRow(
            words.text("chart-weight"),
            tuple(
                own.text("fact-weight-unknown") if grams is None else own.said(Weight(grams)) for grams, own in weights
            ),
        ),
    ]
    return ChartGroup(words.text("chart-garment"), tuple(rows))
