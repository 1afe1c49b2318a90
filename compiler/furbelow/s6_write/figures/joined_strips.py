"""Strips that are cut in segments: every copy with its own segments and joins, as the cutting plan gives them."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from furbelow.garment.message import Length, Own, Pieces, Things, Values
from furbelow.garment.tags import tag
from furbelow.garment.technique import Performed
from furbelow.named import NamedTuple
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.language import ASCENT, LEADING, MARGIN, SOFT, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet, spread, width_of
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

HIGH = 20.0
APART = 9.0  # units between the segments of one strip
BETWEEN = 6.0  # units between two words, and at least between two labels


def joined_strips(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """Each strip of the step with its segments, lengths to one scale; strips cut alike are drawn once."""
    words.read("figures-joined-strips")
    lengths = words.say.lengths
    pieces = [piece for piece in done.touches if any(len(cut) > 1 for cut in lengths.get(piece, ()))]
    if not pieces:
        return None
    longest = max(sum(cut) for piece in pieces for cut in lengths[piece])
    most = max(len(cut) for piece in pieces for cut in lengths[piece])
    sheet = Sheet()
    scale = (sheet.width - 2 * MARGIN - 8 - APART * (most - 1)) / float(longest)
    y, told = 0.0, []
    sheet.callout((sheet.width - 20, 0), numbers.at("join-strips-lay"))
    for piece in pieces:
        mark = words.marks.get(piece) or str(list(words.say.solved.pieces).index(piece) + 1)
        head = words.text("figure-strips-piece", {"mark": mark, "label": words.say.piece(piece)})
        sheet.head((MARGIN, y), head)
        y += 8
        for cut, copies in _alike(lengths[piece]).items():
            values: Values = {
                "piece": Pieces((piece,)),
                "strips": Things(tuple(Own(tag(mark, copy)) for copy in copies)),
                "joins": len(cut) - 1,
                "segments": Things(
                    tuple(Own(_long(length, tag(mark, copies[0], part), words)) for part, length in enumerate(cut, 1))
                ),
            }
            sheet.write((MARGIN, y + LEADING), words.text("figure-strips-alike", values))
            told.append(words.text("figure-strips-alt", values))
            if len(cut) > 1:  # nothing is done at one that is whole
                y = _strip(sheet, y + LEADING + 10, mark, copies[0], cut, words, scale) - LEADING + 12
            y += LEADING + 2
        y += 16
    sheet.write((sheet.width / 2, y - 6), words.text("figure-strips-note"), "middle", colour=SOFT)
    return sheet.figure("strips", " ".join(told), words.text("figure-strips-caption"))


def _alike(cuts: tuple[tuple[Fraction, ...], ...]) -> dict[tuple[Fraction, ...], list[int]]:
    """The copies, counted from 1, by how they are cut."""
    found: dict[tuple[Fraction, ...], list[int]] = {}
    for copy, cut in enumerate(cuts, 1):
        found.setdefault(cut, []).append(copy)
    return found


def _strip(
    sheet: Sheet, y: float, mark: str, copy: int, cut: tuple[Fraction, ...], words: Words, scale: float
) -> float:
    """The segments beside each other with their tags and lengths; how far down they reach.

    What has no room inside a segment stands beneath it, at the end of a short line.
    """
    middles, labels, left = [], [], MARGIN + 4
    for part, length in enumerate(cut, 1):
        right = left + float(length) * scale
        corners = [(left, y), (right, y), (right, y + HIGH), (left, y + HIGH)]
        face(sheet, corners, wrong=False)
        for start, end, inward in zip(
            corners, [*corners[1:], corners[0]], ((0, 1), (-1, 0), (0, -1), (1, 0)), strict=True
        ):
            joined = (inward[0] < 0 and part < len(cut)) or (inward[0] > 0 and part > 1)
            edge(sheet, start, end, "raw", inward, joined)
        label = _Label(tag(mark, copy, part), _long(length, tag(mark, copy, part), words))
        labels.append((label, label.inside(right - left - 6)))
        middles.append((left + right) / 2)
        left = right + APART
    beneath = [(at, label.beneath(inside)) for at, (label, inside) in zip(middles, labels, strict=True) if inside < 2]
    rows = ceil(sum(width for _, width in beneath) / (sheet.width - 2 * MARGIN))
    places: dict[float, tuple[float, float]] = {}
    for row in range(rows):
        those = beneath[row::rows]
        base = y + HIGH + 8 + LEADING * (row + 1)
        found = spread([at for at, _ in those], [width for _, width in those], MARGIN, sheet.width - MARGIN)
        places |= {at: (middle, base) for (at, _), middle in zip(those, found, strict=True)}
    for at, (label, inside) in zip(middles, labels, strict=True):
        if at in places:
            middle, base = places[at]
            sheet.line([(at, y + HIGH + 1), (middle, base - ASCENT - 1)], SOFT, THIN)
        # Of every segment the tag, then the length, wherever they stand: so drawings of several sizes can be compared.
        label.write(sheet, (at, y + HIGH / 2 + 4.5), places.get(at, (at, 0)), inside)
    return y + HIGH + (8 + LEADING * rows if rows else 0)


def _long(length: Fraction, tagged: str, words: Words) -> str:
    return words.said(Length(length, "cut"), f"segment {tagged}")


class _Label(NamedTuple):
    """A segment's tag and length as they are written."""

    tag: str
    length: str

    @property
    def both(self) -> float:
        return width_of(self.tag, True) + BETWEEN + width_of(self.length)

    def inside(self, room: float) -> int:
        """How many of the two go into a segment with so much room."""
        return 2 if self.both <= room else 1 if width_of(self.tag, True) <= room else 0

    def beneath(self, inside: int) -> float:
        """The width of what stands beneath the segment, and the gap to the next."""
        return (width_of(self.length) if inside else self.both) + BETWEEN

    def write(self, sheet: Sheet, within: Point, beneath: Point, inside: int) -> None:
        """within, beneath: the middles of their places, on the base line."""
        if inside == 1:
            sheet.write(within, self.tag, "middle", bold=True)
            sheet.write(beneath, self.length, "middle")
            return
        middle, base = within if inside else beneath
        sheet.write((middle - self.both / 2, base), self.tag, bold=True)
        sheet.write((middle + self.both / 2, base), self.length, "end")
