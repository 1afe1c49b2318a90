"""A band that becomes a casing, cut through in its three states: sewn on, folded up, folded over and topstitched."""

from __future__ import annotations

from collections.abc import Iterator

from furbelow.garment.bench import Ply
from furbelow.garment.message import Length, Pieces, Values
from furbelow.garment.technique import Performed, edge_of, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.band_section import COVER, gathered_ply
from furbelow.s6_write.figures.language import HIDDEN, INK, PLAIN, SOFT, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import MOST_PLIES, plies_said, single, wrong_side
from furbelow.s6_write.figures.section import LEVEL, Section, captioned, named_below
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.band_casing import Banded
from furbelow.techniques.shared.casings import EDGE_STITCH, holds_said

FAR = 30.0
ROWS_APART = 11.0  # units between two rows of stitches, which lie nearer than can be drawn


def band_with_channel(done: Performed, run: Run, words: Words, numbers: Numbers) -> Iterator[Figure]:
    """The band laid on and sewn, folded up, and folded over and topstitched, a drawing each; the inside of the garment is up."""
    words.read("figures", "figures-seam-section", "figures-casing-section")
    work = _Work(done, words, numbers)
    work.laid_on(0)
    yield work.sheet.figure("band", words.text("figure-casing-laid-on-alt", work.values), "")
    work.sheet = Sheet()
    work.folded_up(0)
    yield work.sheet.figure("band-up", words.text("figure-casing-folded-up-alt", work.values), "")
    work.sheet = sheet = Sheet()
    y = work.folded_over(0)
    if done.after.casings[work.band].left_open:
        y = sheet.paragraph((8, y + 16), words.text("figure-casing-gap", work.values), 384)
    skirt, top = words.text("figure-casing-skirt", work.values), words.text("figure-casing-top", work.values)
    y = named_below(sheet, y + 16, skirt, top)
    sheet.write((sheet.width / 2, y + 4), words.text("figure-casing-rows"), "middle", colour=SOFT)
    caption = captioned(words, done, "figure-casing-caption", work.values)
    yield sheet.figure("band-over", words.text("figure-casing-folded-over-alt", work.values), caption)


class _Work:
    """The cuts of one step, to one scale; x is 0 at the first row of stitches and runs to the top of the garment."""

    def __init__(self, done: Performed, words: Words, numbers: Numbers) -> None:
        self.done, self.words, self.numbers, self.sheet = done, words, numbers, Sheet()
        self.band = word_of(done.step.written, "band")
        self.edge = done.before.edge(edge_of(done.step.written, "to"))
        self.plies = single(self.edge.plies)[:MOST_PLIES]
        self.count = len(self.plies)
        depth, seam = facts_of(done, Banded).depth, done.step.mm("seam")
        self.depth, self.seam = float(depth), float(seam)
        self.values: Values = {
            "band": Pieces((self.band,)),
            "plies": plies_said(self.plies),
            "depth": Length(depth),
            "seam-width": Length(seam),
            "holds": holds_said(words.say.solved, self.band),
            "gap": Length(done.step.mm("gap")),
        }
        self.scale = min(8.0, 220 / (2 * self.depth))
        # It is sewn on right side down, so that its right side comes out when it is folded over.
        self.side = wrong_side(words.say, Ply(self.band), up=True)

    def laid_on(self, y: float) -> float:
        self._head(y, "figure-casing-laid-on")
        cut = Section(self.sheet, (380 - 14 - self.seam * self.scale, y + 32 + LEVEL * (self.count + 1)), self.scale)
        self._skirt(cut)
        level, end = self.count, self.seam - 2 * self.depth - self.seam
        turned = [cut.at(end + self.seam, level + 1), *reversed(cut.turn(end, level, level + 1, to_right=False))]
        cut.ply([*turned, cut.at(self.seam, level)], self.side)
        tip = cut.stitch(0, 0, level)
        self._sides(cut, level + 1, 0)
        high, low = cut.at(0, level)[1], cut.at(0, 0)[1]
        self.sheet.across(
            cut.at(0, 0)[0],
            cut.at(self.seam, 0)[0],
            low + 20,
            self.words.said(Length(self.done.step.mm("seam")), "seam-width"),
            low + 6,
            below=True,
        )
        self.sheet.callout((tip[0] + 22, high - 22), self.numbers.at("band-casing-sew"), tip)
        return low + 34

    def folded_up(self, y: float) -> float:
        self._head(y, "figure-casing-folded-up")
        cut = Section(self.sheet, (374 - 2 * self.depth * self.scale, y + 34 + LEVEL * (self.count + 1)), self.scale)
        self._skirt(cut)
        level, end = self.count, 2 * self.depth
        cut.ply(
            [
                cut.at(self.seam, level),
                *cut.turn(-0.4, level, level + 1, to_right=False),
                *cut.turn(end, level + 1, level),
                cut.at(end - self.seam, level),
            ],
            -self.side,
        )
        cut.stitch(0.6, 0, level, worked=False)
        self._sides(cut, level + 1, 0)
        high, low = cut.at(0, level + 1)[1], cut.at(0, 0)[1]
        self.sheet.callout(
            (cut.at(self.depth, 0)[0], high - 20),
            self.numbers.at("band-casing-fold-up"),
            (cut.at(self.depth, 0)[0], high - 4),
        )
        return low + 12

    def folded_over(self, y: float) -> float:
        self._head(y, "figure-casing-folded-over")
        cut = Section(self.sheet, (330 - self.depth * self.scale, y + 62 + LEVEL * (self.count + 1)), self.scale)
        self._skirt(cut)
        level, out = self.count, -3
        cut.ply(
            [
                cut.at(self.seam, level),
                *cut.turn(-0.4, level, level + 1, to_right=False),
                *cut.turn(self.depth, level + 1, out),
                *cut.turn(-COVER, out, out + 1, to_right=False),
                cut.at(self.seam - COVER, out + 1),
            ],
            -self.side,
        )
        cut.stitch(0.6, 0, level, worked=False)
        row = max(float(EDGE_STITCH) - COVER, 0.6 + ROWS_APART / self.scale)
        cut.stitch(row, out, level + 1)
        left, right = cut.at(row, 0)[0] + 7, cut.at(self.depth, 0)[0] - 5
        middle = cut.at(0, -1)[1]
        bar = [(left, middle - 4), (right, middle - 4), (right, middle + 4), (left, middle + 4)]
        self.sheet.line(bar, INK, PLAIN, HIDDEN, closed=True)
        self.sheet.line([(right - 2, middle), (350, middle)], SOFT, THIN)
        self.sheet.write((352, middle - 2), self.words.text("figure-casing-held", self.values))
        self.sheet.write((352, middle + 12), self.words.text("figure-casing-later"))
        self._sides(cut, level + 1, out)
        high, low = cut.at(0, level + 1)[1], cut.at(0, out)[1]
        depth = self.words.text("figure-casing-deep", self.values)
        self.sheet.across(cut.at(-COVER, 0)[0], cut.at(self.depth, 0)[0], high - 22, depth, high - 8)
        foot = (cut.at(row, 0)[0], low + 6)
        self.sheet.callout((foot[0] + 40, low + 24), self.numbers.at("band-casing-topstitch"), foot)
        self.sheet.callout(
            (cut.at(-COVER, 0)[0] - 40, low + 24),
            self.numbers.at("band-casing-cover"),
            (cut.at(-COVER, 0)[0] - 6, low - 2),
        )
        return low + 36

    def _head(self, y: float, message: str) -> None:
        self.sheet.head((8, y), self.words.text(message))

    def _skirt(self, cut: Section) -> None:
        for level, ply in enumerate(self.plies):
            side = wrong_side(self.words.say, ply, up=ply.right_side == "out")
            cut.ply(
                [(FAR, cut.at(0, level)[1]), cut.at(self.seam, level)], side, gathered_ply(self.done, self.edge, ply)
            )

    def _sides(self, cut: Section, high: float, low: float) -> None:
        """Which side of the garment is up and which down."""
        self.sheet.write((FAR - 22, cut.at(0, high)[1] - 10), self.words.text("figure-casing-inside"), colour=SOFT)
        self.sheet.write((FAR - 22, cut.at(0, low)[1] + 20), self.words.text("figure-casing-outside"), colour=SOFT)
