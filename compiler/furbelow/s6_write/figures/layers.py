"""Layers cut through from top to hem: which lies outside, how far each reaches, where seam margins are covered."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from furbelow.garment.bench import Bench, Ply
from furbelow.garment.message import Length, One, Part, Pieces, Things, Values
from furbelow.garment.tags import place_sign
from furbelow.garment.technique import Performed, facts_of
from furbelow.named import NamedTuple
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.hanging import chains, seam_between
from furbelow.s6_write.figures.language import ACCENT, INK, MARGIN, PLAIN, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet, width_of
from furbelow.s6_write.figures.section import Section
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.shared.stacks import HOLDING_ROW
from furbelow.techniques.stack_layers import Stacked

LEFT, APART = 40.0, 46.0
DEEP = 120.0
FINEST = 0.42
MARGIN_LONG = 16.0  # units for a margin, which would be too short to see
MOST = 4  # columns, so that what each is finds room beside them


class _Run(NamedTuple):
    """Layers beside each other that are alike: one is drawn for all of them."""

    ply: Ply
    first: int
    layers: int

    @property
    def letters(self) -> tuple[str, ...]:
        return tuple(map(place_sign, range(self.first + 1, self.first + self.layers + 1)))

    @property
    def called(self) -> str:
        return self.letters[0] if self.layers == 1 else f"{self.letters[0]}–{self.letters[-1]}"


def layers(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The stacked layers from the outside to the body, like ones once, depths to one scale."""
    words.read("figures-layers")
    runs, count = _runs(facts_of(done, Stacked).plies)
    if count < 2:
        return None
    bench = done.after
    shown = runs if len(runs) <= MOST else [*runs[: MOST - 1], runs[-1]]
    hung = [_chain(bench, each.ply.piece) for each in shown]
    deepest = max(sum((bench.depth(piece) for piece in chain), Fraction(0)) for chain in hung)
    scale = min(FINEST, DEEP / float(deepest))
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-layers-cut"))
    top = 62.0
    drawn = [each for run in shown for each in ([run] if run.layers == 1 else [run, run])]
    right = LEFT + APART * (len(drawn) - 1)
    sheet.write((LEFT, 24), words.text("figure-layers-outside"), "middle", colour=SOFT)
    sheet.write((right, 24), words.text("figure-layers-legs"), "middle", colour=SOFT)
    for index, each in enumerate(drawn):
        x, again = LEFT + APART * index, index > 0 and drawn[index - 1] is each
        _ply(sheet, x, top, _chain(bench, each.ply.piece), each.ply, bench, words, scale)
        sheet.place((x, 46), each.letters[-1:] if again else each.letters[:1], "middle")
        if again and each.layers > 2:
            sheet.write((x - APART / 2, top + 40), "…", "middle", bold=True)
    baste = top + max(float(HOLDING_ROW) * scale, 5)
    sheet.line([(LEFT - 16, baste), (right + 16, baste)], ACCENT, THICK, (11.0, 5.0))
    beside = right + 46
    number = numbers.at("stack-layers-sew", "stack-layers-sew-short")
    sheet.callout((right + 32, baste), number, (right + 16, baste))
    if number:
        sheet.write((beside, baste + 4), words.text("figure-layers-held"))
    legend: list[Part] = []
    y = baste + 28
    for each, chain in zip(shown, hung, strict=True):
        deep = sum((bench.depth(piece) for piece in chain), Fraction(0))
        row: Values = {"chain": Pieces(chain), "face": _face(words, each.ply), "layer-deep": Length(deep)}
        legend.append(Part("figure-layers-one", row))
        sheet.place((beside - 14, y), each.letters, shown=each.called)
        named = beside - 14 + width_of(each.called, True) + 6
        y = sheet.paragraph((named, y), words.said(legend[-1]), sheet.width - MARGIN - named)
    left_out = count - sum(each.layers for each in shown)
    if left_out:
        y = sheet.paragraph(
            (beside - 14, y), words.text("figure-layers-more", {"more": left_out}), sheet.width - MARGIN - beside + 14
        )
    low = max(y, top + float(deepest) * scale + 26)
    sheet.paragraph((8, low), words.text("figure-layers-scale"), 380, colour=SOFT)
    values: Values = {
        "layers": Things(tuple(legend), "clauses"),
        "from-edge": Length(HOLDING_ROW, "about"),
        "count": count,
    }
    alt, caption = (words.text(name, values) for name in ("figure-layers-alt", "figure-layers-caption"))
    return sheet.figure("layers", alt, caption)


def _runs(plies: Sequence[Ply]) -> tuple[list[_Run], int]:
    """The layers as runs of like ones, outermost first, and how many layers there are."""
    runs: list[_Run] = []
    count = 0
    for ply in plies:
        if runs and runs[-1].ply[::2] == (ply.piece, ply.right_side):
            runs[-1] = runs[-1]._replace(layers=runs[-1].layers + ply.copies)
        else:
            runs.append(_Run(ply._replace(copies=1), count, ply.copies))
        count += ply.copies
    return runs, count


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
        y = low
    sheet.line([(x - 5, y), (x + 5, y)], INK, PLAIN)


def _face(words: Words, ply: Ply) -> One:
    """Which way the right side looks, or that the cloth has none."""
    solved = words.say.solved
    cloth = solved.materials[solved.pieces[ply.piece].piece.cloth.text].material
    return One(ply.right_side if cloth.has_right_side else "either", ("either", "out", "in"))
