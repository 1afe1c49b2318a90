"""The whole garment, layer beside layer, with its finished measures."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Edge
from furbelow.garment.message import Length, One, Own, Part, Pieces, Things, Values, flag
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.hanging import chains, edge_now, layered
from furbelow.s6_write.figures.language import LEADING, SOFT, THIN, Pattern, pattern_of
from furbelow.s6_write.figures.pen import Sheet, broken, shortened, spread
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

DEEP = 210.0  # units for the longest layer
FINEST = 0.45
PLACES = ("all", "outside", "inside", "between", "sewn-on")


def overview(run: Run, words: Words) -> Figure:
    """The garment as it is after the last step, each layer by itself, heights to one scale."""
    words.read("figures-piece-view", "figures-overview")
    bench = run.final
    found = chains(bench, bench.cloths)
    columns = 2 if len(found) > 1 else 1
    room = 384.0 / columns
    upright = min(FINEST, DEEP / float(max(run.drops.values())))
    longest = max(
        _length(run, edge_now(bench, f"{piece}.{side}")) for piece in bench.cloths for side in ("top", "bottom")
    )
    level = min(upright, (120.0 if columns == 2 else 250.0) / float(longest))
    sheet, y, told = Sheet(), 0.0, []
    for start in range(0, len(found), columns):
        low = y
        for column, chain in enumerate(found[start : start + columns]):
            layer = _Layer(sheet, run, words, chain, 8 + column * room, room - 8, upright, level)
            reached, worded = layer.draw(y, _named(run, chain, found))
            low = max(low, reached)
            told.append(worded)
        y = low + 34
    widths = words.text("figure-overview-to-scale", {"level": flag(level >= upright)})
    sheet.write((sheet.width / 2, y - 8), widths, "middle", colour=SOFT)
    for casing in bench.casings.values():
        if casing.elastic:
            waist: Values = {"rest": Length(casing.elastic_length), "cloth": Length(casing.length)}
            sheet.write((sheet.width / 2, y + 10), words.text("figure-overview-waist", waist), "middle")
            told.append(words.text("figure-overview-waist-told", waist))
    values: Values = {
        "title": Own(run.solved.spec.title),
        "long": Length(max(run.drops.values())),
        "layers": Own(" ".join(told)),
    }
    alt, caption = (words.text(name, values) for name in ("figure-overview-alt", "figure-overview-caption"))
    return sheet.figure("overview", alt, caption)


class _Layer:
    """One chain of pieces from the top down."""

    def __init__(
        self,
        sheet: Sheet,
        run: Run,
        words: Words,
        chain: tuple[str, ...],
        left: float,
        room: float,
        upright: float,
        level: float,
    ) -> None:
        self.sheet, self.run, self.words, self.chain = sheet, run, words, chain
        self.left, self.room, self.upright, self.level = left, room, upright, level
        self.middle = left + (62 if room < 200 else 128)
        self.labels = left + (126 if room < 200 else 268)

    def draw(self, y: float, name: Values) -> tuple[float, str]:
        """The layer from this height on, under its name; how far down it reaches, and all of it in words."""
        run, words, bench = self.run, self.words, self.run.final
        head = y
        for row in broken(words.text("figure-overview-name", name), self.room, bold=True):
            self.sheet.write((self.left, head), row, bold=True)
            head += LEADING
        top = y + 2 * LEADING + 12
        places = []
        for piece in self.chain:
            start = top + float(run.hangs[piece]) * self.upright
            high = max(float(bench.depth(piece)) * self.upright, 5.0)
            self._piece(piece, start, start + high)
            places.append((piece, start, start + high))
        reached = self._label(places, top - 16)
        last, low = self.chain[-1], places[-1][2]
        hem = edge_now(bench, f"{last}.bottom")
        pieces = tuple(
            Part("figure-overview-piece", {"piece": Pieces((piece,)), "deep": Length(bench.depth(piece))})
            for piece in self.chain
        )
        values: Values = {
            **name,
            "pieces": Things(pieces, "row"),
            "hem": Length(hem.set_length),
            "ring": flag(bench.ring(hem) and last not in bench.borne),
            "level": flag(last not in bench.borne),
            "drop": Length(run.drops[last]),
        }
        y = max(low, 0) + 18
        self.sheet.write((self.middle, y), words.text("figure-overview-hem", values), "middle")
        if last not in bench.borne:
            y += LEADING
            self.sheet.write((self.middle, y), words.text("figure-overview-drop", values), "middle")
            front, side, back = run.bottom_at(last)
            if front != back:
                y += LEADING
                dips: Values = {"front": Length(front), "side": Length(side), "back": Length(back)}
                self.sheet.write((self.middle, y), words.text("figure-overview-dips", dips), "middle")
        return max(y, reached), words.text("figure-overview-layer", values)

    def _piece(self, piece: str, y: float, low: float) -> None:
        bench = self.run.final
        top, bottom = (edge_now(bench, f"{piece}.{side}") for side in ("top", "bottom"))
        above, below = (float(_length(self.run, each)) * self.level / 2 for each in (top, bottom))
        if bench.cloths[piece].folded:
            below = above
        corners = [
            (self.middle - above, y),
            (self.middle + above, y),
            (self.middle + below, low),
            (self.middle - below, low),
        ]
        face(self.sheet, corners, wrong=False)
        pattern: Pattern = "fold" if bench.cloths[piece].folded else pattern_of(top)
        edge(self.sheet, corners[0], corners[1], pattern, (0, 1))
        edge(self.sheet, corners[3], corners[2], pattern_of(bottom), (0, -1))
        for start, end, inward in ((corners[0], corners[3], 1.0), (corners[1], corners[2], -1.0)):
            edge(self.sheet, start, end, "fold", (inward, 0))

    def _label(self, places: list[tuple[str, float, float]], top: float) -> float:
        room = self.left + self.room - self.labels
        rows = [[shortened(row, room) for row in self._named(piece, room)] for piece, _, _ in places]
        heights = [LEADING * len(row) + 4 for row in rows]
        middles = spread([(low + high) / 2 for _, low, high in places], heights, top, places[-1][2])
        for (piece, low, high), lines, middle in zip(places, rows, middles, strict=True):
            half = float(_length(self.run, edge_now(self.run.final, f"{piece}.top"))) * self.level / 2
            self.sheet.line([(self.labels - 4, middle), (self.middle + half, (low + high) / 2)], SOFT, THIN)
            y = middle - LEADING * len(lines) / 2 + 11
            for worded in lines:
                self.sheet.write((self.labels, y), worded)
                y += LEADING
        return middles[-1] + heights[-1] / 2

    def _named(self, piece: str, room: float) -> list[str]:
        name = self.words.text("piece-alone", {"piece": Pieces((piece,))})
        return [*broken(name, room), self.words.said(Length(self.run.final.depth(piece)))]


def _length(run: Run, each: Edge) -> Fraction:
    """How wide an edge lies flat. What hangs with a ring goes round as it does, though a slit opens it."""
    bench = run.final
    hang = [piece for piece in bench.unit(each.pieces[0]) if piece not in bench.borne]
    along = hang if each.pieces[0] in hang else each.pieces
    return each.set_length / 2 if any(bench.cloths[piece].ring for piece in along) else each.set_length


def _named(run: Run, chain: tuple[str, ...], found: tuple[tuple[str, ...], ...]) -> Values:
    """What `figure-overview-name` needs: where the layer lies, on which piece, and how many lie there alike."""
    lines = _on_lines(run)
    hung = [each for each in found if each[0] not in lines]
    if chain[0] in lines:
        place = "sewn-on"
    elif len(hung) == 1:
        place = "all" if len(found) == 1 else "outside"
    else:
        place = "outside" if chain == hung[0] else "inside" if chain == hung[-1] else "between"
    on = Pieces((lines.get(chain[0], chain[0]),))
    return {"place": One(place, PLACES), "on": on, "layers": layered(run.final, chain[-1])}


def _on_lines(run: Run) -> dict[str, str]:
    """The pieces that are sewn on another one, along a line across it or by an end, each with that piece."""
    bench = run.final
    lines = [(seam.edges[0], seam.on.piece) for seam in bench.seams.values() if seam.on]
    return {name.partition(".")[0]: on for edge, on in lines for name in bench.opened(edge)} | {**bench.borne}
