"""Layers cut through from top to hem: which lies outside, how far each reaches, where seam margins are covered."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Ply
from furbelow.garment.phrasing import Phrasing, listed
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.hanging import chains, seam_between
from furbelow.s6_write.figures.language import ACCENT, INK, PLAIN, SOFT, THICK, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet, width_of
from furbelow.s6_write.figures.section import Section
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.stack_layers import BASTE, Stacked

LEFT, APART = 150.0, 46.0
DEEP = 230.0
FINEST = 0.42
MARGIN_LONG = 16.0  # units for a margin, which would be too short to see
MOST = 5


def layers(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The stacked layers from the outside to the body, depths to one scale."""
    say = words.say
    plies = [Ply(ply.piece, 1, ply.right_side) for ply in facts_of(done, Stacked).plies for _ in range(ply.copies)]
    if len(plies) < 2:
        return None
    bench = done.after
    shown = plies[:MOST]
    hung = [_chain(bench, ply.piece) for ply in shown]
    deepest = max(sum((bench.depth(piece) for piece in chain), Fraction(0)) for chain in hung)
    scale = min(FINEST, DEEP / float(deepest))
    sheet = Sheet()
    sheet.write((8, 0), "Cut from top to hem", bold=True)
    top = 62.0
    right = LEFT + APART * (len(shown) - 1)
    sheet.write((LEFT, 24), "outside", "middle", colour=SOFT)
    sheet.write((right + (10 if len(shown) == 2 else 0), 24), "legs", "middle", colour=SOFT)
    legend, told = [], []
    for index, (ply, chain) in enumerate(zip(shown, hung, strict=True)):
        x = LEFT + APART * index
        _ply(sheet, x, top, chain, ply, bench, say, scale)
        letter = "abcdefgh"[index]
        sheet.write((x, 46), letter, "middle", bold=True)
        deep = sum((bench.depth(piece) for piece in chain), Fraction(0))
        legend.append(
            (letter, f"{listed([say.piece(piece) for piece in chain])}, {_way(say, ply)}, {say.length(deep)} deep")
        )
        told.append(legend[-1][1])
    baste = top + max(float(BASTE) * scale, 5)
    sheet.line([(LEFT - 16, baste), (right + 16, baste)], ACCENT, THICK, (11.0, 5.0))
    number = numbers.at("stack-layers-sew")
    sheet.callout((LEFT - 46, baste + 8), number, (LEFT - 16, baste))
    sheet.write((LEFT - 62, baste + 12), "held together" if number else "", "end")
    y = top + float(deepest) * scale + 26
    for letter, worded in legend:
        sheet.write((8, y), letter, bold=True)
        y = sheet.paragraph((8 + width_of("m") + 6, y), worded, 350)
    more = len(plies) - len(shown)
    if more:
        y = sheet.paragraph((8, y), f"and {more} more layers in the same way", 376)
    sheet.paragraph(
        (8, y), "Depths to one scale; the space between layers and the margins are drawn wider.", 380, colour=SOFT
    )
    alt = f"Layers from the outside to the legs: {'; '.join(told)}. All are level at the top and held {say.about(BASTE)} below it."
    return Figure("layers", sheet.svg(), alt, f"{len(plies)} layers, the outermost on the left.")


def _chain(bench: Bench, piece: str) -> tuple[str, ...]:
    """The piece with what hangs from it."""
    found = next(chain for chain in chains(bench, bench.unit(piece)) if piece in chain)
    return found[found.index(piece) :]


def _ply(
    sheet: Sheet, x: float, top: float, chain: tuple[str, ...], ply: Ply, bench: Bench, say: Phrasing, scale: float
) -> None:
    """One layer hanging down from the top, with its tier seams."""
    cut = Section(sheet, (x, top), 1)
    cloth = say.solved.materials[say.solved.pieces[ply.piece].piece.cloth.text].material
    # Going down, left of the way is to the right: the side of the body.
    ticks = 0 if not cloth.has_right_side else 1 if ply.right_side == "out" else -1
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
                sheet.write(
                    (x + 16 * inward, y + 25), "margin", "start" if inward > 0 else "end", colour=SOFT, ground=True
                )
        y = low
    sheet.line([(x - 5, y), (x + 5, y)], INK, PLAIN)


def _way(say: Phrasing, ply: Ply) -> str:
    cloth = say.solved.materials[say.solved.pieces[ply.piece].piece.cloth.text].material
    if not cloth.has_right_side:
        return "margins towards the legs"
    return "right side out" if ply.right_side == "out" else "right side towards the legs"
