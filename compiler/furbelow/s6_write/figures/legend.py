"""The key to the figures: every pattern and sign once, with its name."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import cache

from furbelow.garment.message import Part, Things, Values
from furbelow.s6_write.figures.edges import break_line, edge, face, left_over, wave
from furbelow.s6_write.figures.language import (
    ACCENT,
    GATHERING,
    HIDDEN,
    INK,
    LEADING,
    PLAIN,
    SEAM,
    SOFT,
    THICK,
    Pattern,
)
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.section import Section
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.messages import Messages

Draw = Callable[[Sheet, float, float], None]
Groups = Mapping[str, Sequence[tuple[Draw, str]]]  # the heads of the groups, and their signs with their names

ROW = 20.0
SAMPLE = 62.0
COLUMN = 198.0
HEAD_CLEAR = 12.0  # between a row's place and the base line of the next heading: words are ASCENT high
EDGES: Mapping[Pattern, str] = {
    "raw": "figure-legend-raw",
    "selvedge": "figure-legend-selvedge",
    "neatened": "figure-legend-neatened",
    "hemmed": "figure-legend-hemmed",
    "trimmed": "figure-legend-trimmed",
    "gathered": "figure-legend-gathered",
    "sewn": "figure-legend-sewn",
    "enclosed": "figure-legend-enclosed",
    "fold": "figure-legend-fold",
}


def how_to_read(words: Messages) -> tuple[Figure, ...]:
    """All that the figures of every guide are drawn with, cloth and work; the same for every garment."""
    # Drawn once for all guides of a class, but where a teacher has words of her own or numbers are marked.
    return _in_language(words.language) if words.is_shipped and not words.marked else _drawn(words)


@cache
def _in_language(language: str) -> tuple[Figure, ...]:
    return _drawn(Messages(language))


def _drawn(words: Messages) -> tuple[Figure, ...]:
    words.read("figures-legend")
    cloth: Groups = {
        "figure-legend-edges": [(_edge_of(pattern), name) for pattern, name in EDGES.items()],
        "figure-legend-faces": (
            (_right_side, "figure-legend-right-side"),
            (_wrong_side, "figure-legend-wrong-side"),
            (_left_over, "figure-legend-left-over"),
            (_hidden, "figure-legend-behind"),
        ),
    }
    work: Groups = {
        "figure-legend-cut": (
            (_cut, "figure-legend-stitch"),
            (_cut_wrong, "figure-legend-half"),
            (_cut_gathered, "figure-legend-gathers"),
            (_overcast, "figure-legend-overcast"),
        ),
        "figure-legend-things": (
            (_seam, "figure-legend-seam"),
            (_gathering, "figure-legend-longest"),
            (_elastic, "figure-legend-elastic"),
            (_pin, "figure-legend-pin"),
        ),
        "figure-legend-signs": (
            (_changed, "figure-legend-changed"),
            (_callout, "figure-legend-callout"),
            (_mark, "figure-legend-mark"),
            (_length, "figure-legend-length"),
            (_left_out, "figure-legend-left-out"),
        ),
    }
    return (
        _key("how-to-read-cloth", cloth, words, "figure-legend-caption"),
        _key("how-to-read-work", work, words, "figure-legend-scale"),
    )


def _key(key: str, groups: Groups, words: Messages, caption: str) -> Figure:
    sheet, y = Sheet(), -HEAD_CLEAR
    for title, signs in groups.items():
        y = _table(sheet, y + HEAD_CLEAR, words.text(title), [(draw, words.text(name)) for draw, name in signs])
    names = [Part(name) for signs in groups.values() for _, name in signs]
    values: Values = {"count": len(names), "names": Things(tuple(names), "clauses")}
    return sheet.figure(key, words.text("figure-legend-alt", values), words.text(caption))


def _table(sheet: Sheet, y: float, title: str, rows: Sequence[tuple[Draw, str]]) -> float:
    """A heading with its samples in two columns; where the next heading goes."""
    sheet.head((8, y), title)
    low = y + 20
    for pair in (rows[at : at + 2] for at in range(0, len(rows), 2)):
        ends = []
        for x, (draw, name) in zip((8, 8 + COLUMN), pair, strict=False):
            draw(sheet, x, low)
            ends.append(sheet.paragraph((x + SAMPLE + 6, low + 11), name, COLUMN - SAMPLE - 14))
        # As many lines as the longer name takes; one line each keeps to the row.
        low += ROW + max(ends) - (low + 11) - LEADING
    return low


def _edge_of(pattern: Pattern) -> Draw:
    def draw(sheet: Sheet, x: float, y: float) -> None:
        face(sheet, [(x, y), (x + SAMPLE, y), (x + SAMPLE, y + 15), (x, y + 15)], wrong=False)
        edge(sheet, (x, y), (x + SAMPLE, y), pattern, (0, 1))

    return draw


def _box(x: float, y: float) -> list[tuple[float, float]]:
    return [(x, y - 2), (x + SAMPLE, y - 2), (x + SAMPLE, y + 16), (x, y + 16)]


def _right_side(sheet: Sheet, x: float, y: float) -> None:
    face(sheet, _box(x, y), wrong=False)


def _wrong_side(sheet: Sheet, x: float, y: float) -> None:
    face(sheet, _box(x, y), wrong=True)
    sheet.line(_box(x, y), SOFT, 0.8, closed=True)


def _left_over(sheet: Sheet, x: float, y: float) -> None:
    left_over(sheet, _box(x, y))


def _hidden(sheet: Sheet, x: float, y: float) -> None:
    sheet.line([(x, y + 6), (x + SAMPLE, y + 6)], INK, PLAIN, HIDDEN)


def _seam(sheet: Sheet, x: float, y: float) -> None:
    sheet.line([(x, y + 6), (x + SAMPLE, y + 6)], INK, PLAIN, SEAM)


def _gathering(sheet: Sheet, x: float, y: float) -> None:
    sheet.line([(x, y + 6), (x + SAMPLE, y + 6)], INK, THICK, GATHERING)


def _cut(sheet: Sheet, x: float, y: float) -> None:
    cut = Section(sheet, (x, y + 13), 1)
    cut.ply([cut.at(0, 0), cut.at(SAMPLE, 0)])
    cut.ply([cut.at(0, 1), cut.at(SAMPLE, 1)])
    cut.stitch(SAMPLE / 2, 0, 1, worked=False)


def _cut_wrong(sheet: Sheet, x: float, y: float) -> None:
    cut = Section(sheet, (x, y + 7), 1)
    cut.ply([cut.at(0, 0), cut.at(SAMPLE, 0)], 1)


def _cut_gathered(sheet: Sheet, x: float, y: float) -> None:
    cut = Section(sheet, (x, y + 7), 1)
    cut.ply([cut.at(0, 0), cut.at(SAMPLE, 0)], gathered=True)


def _overcast(sheet: Sheet, x: float, y: float) -> None:
    cut = Section(sheet, (x, y + 13), 1)
    for level in (0, 1):
        cut.ply([cut.at(0, level), cut.at(SAMPLE - 8, level)])
    cut.overcast(SAMPLE - 8, 0, 1, worked=False)


def _elastic(sheet: Sheet, x: float, y: float) -> None:
    Section(sheet, (x, y + 7), 1).bar(0, SAMPLE, 0)


def _pin(sheet: Sheet, x: float, y: float) -> None:
    sheet.line([(x + 10, y + 6), (x + SAMPLE - 10, y + 6)], INK, PLAIN)
    sheet.disc((x + 10, y + 6), 2.8, INK)


def _mark(sheet: Sheet, x: float, y: float) -> None:
    sheet.line([(x, y + 8), (x + SAMPLE, y + 8)], INK, PLAIN)
    for share in (0.25, 0.75):
        sheet.line([(x + SAMPLE * share, y), (x + SAMPLE * share, y + 14)], ACCENT, THICK)


def _left_out(sheet: Sheet, x: float, y: float) -> None:
    for side in (-4, 4):
        break_line(sheet, wave((x + SAMPLE / 2 + side, y - 5), (x + SAMPLE / 2 + side, y + 17)))


def _changed(sheet: Sheet, x: float, y: float) -> None:
    edge(sheet, (x, y + 4), (x + SAMPLE, y + 4), "sewn", (0, 1), worked=True)


def _callout(sheet: Sheet, x: float, y: float) -> None:
    sheet.callout((x + SAMPLE / 2, y + 6), 12)


def _length(sheet: Sheet, x: float, y: float) -> None:
    sheet.across(x + 4, x + SAMPLE - 4, y + 8, "", y - 3)
