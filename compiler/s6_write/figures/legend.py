"""The key to the figures: every pattern and sign once, with its name."""

from __future__ import annotations

from compiler.s6_write.figures.edges import break_line, edge, face, hatching, wave
from compiler.s6_write.figures.language import (
    ACCENT,
    ELASTIC,
    FOLD,
    GATHERING,
    HIDDEN,
    INK,
    PLAIN,
    SEAM,
    SOFT,
    THICK,
)
from compiler.s6_write.figures.pen import Sheet
from compiler.s6_write.figures.section import Section
from compiler.s6_write.guide import Figure

ROW = 30.0
SAMPLE = 70.0
EDGES = {
    "raw": "raw edge",
    "selvedge": "selvedge",
    "neatened": "neatened edge",
    "hemmed": "hemmed edge",
    "trimmed": "edge with trim",
    "gathered": "gathered or pleated",
    "sewn": "edge in a seam",
    "enclosed": "enclosed edge",
}


def how_to_read() -> Figure:
    """All that the figures of every guide are drawn with; the same for every garment."""
    sheet = Sheet()
    sheet.write((8, 0), "Edges of cloth", bold=True)
    for index, (pattern, name) in enumerate(EDGES.items()):
        x, y = 8 + 200 * (index % 2), 22 + ROW * (index // 2)
        face(sheet, [(x, y), (x + SAMPLE, y), (x + SAMPLE, y + 14), (x, y + 14)], wrong=False)
        edge(sheet, (x, y), (x + SAMPLE, y), pattern, (0, 1))
        sheet.write((x + SAMPLE + 8, y + 10), name)
    y = 22 + ROW * 4 + 18
    sheet.write((8, y), "Cloth, stitches and signs", bold=True)
    signs = (
        (_right_side, "right side"), (_wrong_side, "wrong side"), (_fold, "fold"), (_hidden, "behind the cloth"),
        (_seam, "seam, topstitching"), (_gathering, "longest stitch"), (_cut, "cut through, stitched"), (_elastic, "elastic"),
        (_pin, "pin"), (_mark, "matching mark"), (_left_out, "middle left out"), (_changed, "what this step does"),
        (_callout, "see that sentence"), (_length, "a length"),
    )  # fmt: skip
    for index, (draw, name) in enumerate(signs):
        x, low = 8 + 200 * (index % 2), y + 22 + ROW * (index // 2)
        draw(sheet, x, low)
        sheet.write((x + SAMPLE + 8, low + 10), name)
    said = ", ".join([*EDGES.values(), *(name for _, name in signs)])
    alt = f"The {len(EDGES) + len(signs)} patterns and signs of the figures, each with its name: {said}."
    return Figure("how-to-read", sheet.svg(), alt, "How to read the figures.")


def _box(x: float, y: float) -> list[tuple[float, float]]:
    return [(x, y - 3), (x + SAMPLE, y - 3), (x + SAMPLE, y + 15), (x, y + 15)]


def _right_side(sheet: Sheet, x: float, y: float) -> None:
    face(sheet, _box(x, y), wrong=False)


def _wrong_side(sheet: Sheet, x: float, y: float) -> None:
    sheet.lines(hatching(_box(x, y)))
    sheet.line(_box(x, y), SOFT, 0.8, closed=True)


def _fold(sheet: Sheet, x: float, y: float) -> None:
    sheet.line([(x, y + 6), (x + SAMPLE, y + 6)], INK, PLAIN, FOLD)


def _hidden(sheet: Sheet, x: float, y: float) -> None:
    sheet.line([(x, y + 6), (x + SAMPLE, y + 6)], INK, PLAIN, HIDDEN)


def _seam(sheet: Sheet, x: float, y: float) -> None:
    sheet.line([(x, y + 6), (x + SAMPLE, y + 6)], INK, PLAIN, SEAM)


def _gathering(sheet: Sheet, x: float, y: float) -> None:
    sheet.line([(x, y + 6), (x + SAMPLE, y + 6)], INK, THICK, GATHERING)


def _cut(sheet: Sheet, x: float, y: float) -> None:
    cut = Section(sheet, (x, y + 12), 1)
    cut.ply([cut.at(0, 0), cut.at(SAMPLE, 0)])
    cut.ply([cut.at(0, 1), cut.at(SAMPLE, 1)])
    cut.stitch(SAMPLE / 2, 0, 1, worked=False)


def _elastic(sheet: Sheet, x: float, y: float) -> None:
    sheet.line(_box(x, y), INK, PLAIN, fill=ELASTIC, closed=True)


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
