"""Pleats: the lines to mark on the flat cloth, and the folded edge seen from above."""

from __future__ import annotations

from furbelow.garment.message import Length, One, Values
from furbelow.garment.technique import Performed, edge_of, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.language import ACCENT, FOLD, INK, PLAIN, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet
from furbelow.s6_write.figures.section import LEVEL, Section
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.pleats import Laid, PleatKind

SHOWN = 3  # pleats that are drawn
LEFT, WIDE = 24.0, 340.0


def pleats(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """Three pleats, flat with their marks and folded; each half has its own scale."""
    words.read("figures-pleats")
    laid, worked = facts_of(done, Laid), done.before.edge(edge_of(done.step.written, "edge"))
    every, shows = worked.cloth_length / laid.pleats, laid.length / laid.pleats
    values: Values = {
        "kind": One(laid.kind, tuple(PleatKind)),
        "drawn": SHOWN,
        "count": laid.pleats,
        "every": Length(every),
        "depth": Length(laid.depth),
        "shown": Length(shows),
        "cloth": Length(worked.cloth_length),
        "length": Length(laid.length),
    }
    scale = WIDE / float(every * SHOWN)
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-pleats-flat"))
    face(sheet, [(LEFT, 34), (LEFT + WIDE, 34), (LEFT + WIDE, 74), (LEFT, 74)], wrong=False)
    edge(sheet, (LEFT, 34), (LEFT + WIDE, 34), "raw", (0, 1))
    for index in range(SHOWN + 1):
        x = LEFT + float(every) * scale * index
        sheet.line([(x, 30), (x, 74)], ACCENT, THICK)
    for place in _second_lines(laid.kind, float(every), float(laid.depth), float(shows)):
        x = LEFT + place * scale
        if LEFT <= x <= LEFT + WIDE:
            sheet.line([(x, 38), (x, 74)], INK, PLAIN, FOLD)
    sheet.across(LEFT, LEFT + float(every) * scale, 92, words.said(Length(every), "every"), 76, below=True)
    sheet.callout(
        (LEFT + float(every) * scale * 1.5, 54),
        numbers.at("pleats-mark-ring", "pleats-mark-flat", "pleats-mark-flat-middles"),
    )
    sheet.head((8, 146), words.text("figure-pleats-folded"))
    close = min(8.0, 230 / float(shows * SHOWN))
    path, high = _folded(laid.kind, float(laid.depth) * close, float(shows) * close)
    low = 174 + high
    begin = 185 - float(shows) * close * SHOWN / 2
    cut = Section(sheet, (begin, low), 1.0)
    cut.ply([(begin + x, low - level * LEVEL) for x, level in path])
    shown = words.text("figure-pleats-shown", values)
    sheet.across(begin, begin + float(shows) * close, low + 22, shown, low + 8, below=True)
    sheet.callout((376, low - 4), numbers.at("pleats-fold-knife", "pleats-fold-box", "pleats-fold-inverted"))
    y = sheet.paragraph((8, low + 58), words.text("figure-pleats-depth", values), 384)
    sheet.paragraph((8, y), words.text("figure-pleats-lines"), 384, colour=SOFT)
    alt, caption = (words.text(name, values) for name in ("figure-pleats-alt", "figure-pleats-caption"))
    return sheet.figure("pleats", alt, caption)


def _second_lines(kind: PleatKind, every: float, depth: float, shows: float) -> list[float]:
    """Where the folds are marked on the flat cloth, beside the marks."""
    if kind is PleatKind.KNIFE:
        return [index * every + 2 * depth for index in range(SHOWN)]
    off = shows / 2 if kind is PleatKind.BOX else 2 * depth
    return [index * every + side * off for index in range(SHOWN + 1) for side in (-1, 1)]


def _folded(kind: PleatKind, depth: float, shows: float) -> tuple[list[Point], float]:
    """The cloth as it lies, as (along, level) from the left, and how high it stands in units."""
    if kind is PleatKind.KNIFE:
        path: list[Point] = []
        for index in range(SHOWN):
            right = (index + 1) * shows
            # Plies of one slope: what lies behind never meets the next pleat, however deep the fold.
            path += [(index * shows, 2.0), (right, 0.0), (right - depth, 1 + 2 * depth / shows), (right, 2.0)]
        return path, LEVEL * (1 + 2 * depth / shows)
    path = [(0.0, 0.0)]
    for index in range(SHOWN):
        right, back = (index + 1) * shows, 4.0 + index % 2
        path += [(right - 2, 0.0), (right - 2, 3.0), (right - depth, 3.0), (right - depth, back)]
        path += [(right + depth, back), (right + depth, 1.0), (right + 2, 1.0), (right + 2, 0.0)]
    path = [*path[:-8], (SHOWN * shows, 0.0)]
    if kind is PleatKind.BOX:
        return path, LEVEL * 5
    return [(x, 5 - level) for x, level in path], LEVEL * 5
