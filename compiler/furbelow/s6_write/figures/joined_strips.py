"""Strips that are cut in segments: every copy with its own segments and joins, as the cutting plan gives them."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.message import Length, Own, Pieces, Things, Values
from furbelow.garment.tags import tag
from furbelow.garment.technique import Performed
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.language import LEADING, MARGIN, SOFT
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet, width_of
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

HIGH = 20.0
APART = 9.0  # units between the segments of one strip


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
                "segments": Things(tuple(Length(length, "cut") for length in cut)),
            }
            sheet.write((MARGIN, y + LEADING), words.text("figure-strips-alike", values))
            told.append(words.text("figure-strips-alt", values))
            if len(cut) > 1:  # nothing is done at one that is whole
                _strip(sheet, y + LEADING + 10, mark, copies[0], cut, words, scale)
                y += 10 + HIGH + 12
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


def _strip(sheet: Sheet, y: float, mark: str, copy: int, cut: tuple[Fraction, ...], words: Words, scale: float) -> None:
    left = MARGIN + 4
    for part, length in enumerate(cut, 1):
        right = left + float(length) * scale
        corners = [(left, y), (right, y), (right, y + HIGH), (left, y + HIGH)]
        face(sheet, corners, wrong=False)
        for start, end, inward in zip(
            corners, [*corners[1:], corners[0]], ((0, 1), (-1, 0), (0, -1), (1, 0)), strict=True
        ):
            joined = (inward[0] < 0 and part < len(cut)) or (inward[0] > 0 and part > 1)
            edge(sheet, start, end, "raw", inward, joined)
        name = tag(mark, copy, part if len(cut) > 1 else 0)
        length_said = words.said(Length(length, "cut"))
        wide, middle = right - left - 6, (left + right) / 2
        if width_of(name, True) + width_of(length_said) + 6 <= wide:
            begin = middle - (width_of(name, True) + 6 + width_of(length_said)) / 2
            sheet.write((begin, y + HIGH / 2 + 4.5), name, bold=True)
            sheet.write((begin + width_of(name, True) + 6, y + HIGH / 2 + 4.5), length_said)
        elif width_of(name, True) <= wide:
            sheet.write((middle, y + HIGH / 2 + 4.5), name, "middle", bold=True)
        left = right + APART
