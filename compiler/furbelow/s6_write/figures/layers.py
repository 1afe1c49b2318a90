"""Layers cut through from top to hem: which lies outside, how far each reaches, where seam margins are covered."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Ply
from furbelow.garment.message import Length, One, Part, Pieces, Things, Values
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.hanging import chains, seam_between
from furbelow.s6_write.figures.language import ACCENT, INK, PLAIN, SOFT, THICK, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet, width_of
from furbelow.s6_write.figures.section import Section
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.shared.stacks import HOLDING_ROW
from furbelow.techniques.stack_layers import Stacked

LEFT, APART = 150.0, 46.0
DEEP = 120.0
FINEST = 0.42
MARGIN_LONG = 16.0  # units for a margin, which would be too short to see
MOST = 5


def layers(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The stacked layers from the outside to the body, depths to one scale."""
    words.read("figures-layers")
    stacked = facts_of(done, Stacked)
    plies = [Ply(ply.piece, 1, ply.right_side) for ply in stacked.plies for _ in range(ply.copies)]
    if len(plies) < 2:
        return None
    bench = done.after
    shown = plies[:MOST]
    hung = [_chain(bench, ply.piece) for ply in shown]
    deepest = max(sum((bench.depth(piece) for piece in chain), Fraction(0)) for chain in hung)
    scale = min(FINEST, DEEP / float(deepest))
    sheet = Sheet()
    sheet.write((8, 0), words.text("figure-layers-cut"), bold=True)
    top = 62.0
    right = LEFT + APART * (len(shown) - 1)
    sheet.write((LEFT, 24), words.text("figure-layers-outside"), "middle", colour=SOFT)
    sheet.write((right + (10 if len(shown) == 2 else 0), 24), words.text("figure-layers-legs"), "middle", colour=SOFT)
    legend: list[tuple[str, Part]] = []
    for index, (ply, chain) in enumerate(zip(shown, hung, strict=True)):
        x = LEFT + APART * index
        _ply(sheet, x, top, chain, ply, bench, words, scale)
        letter = "abcdefgh"[index]
        sheet.write((x, 46), letter, "middle", bold=True)
        deep = sum((bench.depth(piece) for piece in chain), Fraction(0))
        row: Values = {"chain": Pieces(chain), "face": _face(words, ply), "deep": Length(deep)}
        legend.append((letter, Part("figure-layers-one", row)))
    baste = top + max(float(HOLDING_ROW) * scale, 5)
    sheet.line([(LEFT - 16, baste), (right + 16, baste)], ACCENT, THICK, (11.0, 5.0))
    number = numbers.at("stack-layers-sew")
    sheet.callout((LEFT - 46, baste + 8), number, (LEFT - 16, baste))
    sheet.write((LEFT - 62, baste + 12), words.text("figure-layers-held") if number else "", "end")
    y = top + float(deepest) * scale + 26
    for letter, told in legend:
        sheet.write((8, y), letter, bold=True)
        y = sheet.paragraph((8 + width_of("m") + 6, y), words.said(told), 350)
    more = len(plies) - len(shown)
    if more:
        y = sheet.paragraph((8, y), words.text("figure-layers-more", {"more": more}), 376)
    sheet.paragraph((8, y), words.text("figure-layers-scale"), 380, colour=SOFT)
    values: Values = {
        "layers": Things(tuple(told for _, told in legend), "clauses"),
        "from-edge": Length(HOLDING_ROW, "about"),
        "count": len(plies),
    }
    alt, caption = (words.text(name, values) for name in ("figure-layers-alt", "figure-layers-caption"))
    return Figure("layers", sheet.svg(), alt, caption)


def _chain(bench: Bench, piece: str) -> tuple[str, ...]:
    """The piece with what hangs from it."""
    found = next(chain for chain in chains(bench, bench.unit(piece)) if piece in chain)
    return found[found.index(piece) :]


def _ply(
    sheet: Sheet, x: float, top: float, chain: tuple[str, ...], ply: Ply, bench: Bench, words: Words, scale: float
) -> None:
    """One layer hanging down from the top, with its tier seams."""
    cut = Section(sheet, (x, top), 1)
    # Going down, left of the way is to the right: the side of the body.
    ticks = {"either": 0, "out": 1, "in": -1}[_face(words, ply).word]
    inward = 1 if ply.right_side == "out" else -1
    y = top
    for index, piece in enumerate(chain):
        low = y + float(bench.depth(piece)) * scale
        upper = chain[index - 1] if index else ""
        seam = seam_between(bench, upper, piece) if upper else None
        cut.ply([(x, y), (x, low)], ticks, gathered=bool(seam) and bool(bench.edge(f"{piece}.top").gathered))
        if seam is not None:
            way = -1 if seam.turned == upper else 1
            sheet.line([(x, y), (x + 8 * inward, y + 3 * way), (x + 8 * inward, y + MARGIN_LONG * way)], INK, THICK)
            if seam.trapped:
                sheet.line([(x + 12 * inward, y), (x + 20 * inward, y + 14)], SOFT, THIN)
                anchor = "start" if inward > 0 else "end"
                margin = words.text("figure-layers-margin")
                sheet.write((x + 16 * inward, y + 25), margin, anchor, colour=SOFT, ground=True)
        y = low
    sheet.line([(x - 5, y), (x + 5, y)], INK, PLAIN)


def _face(words: Words, ply: Ply) -> One:
    """Which way the right side looks, or that the cloth has none."""
    solved = words.say.solved
    cloth = solved.materials[solved.pieces[ply.piece].piece.cloth.text].material
    return One(ply.right_side if cloth.has_right_side else "either", ("either", "out", "in"))
