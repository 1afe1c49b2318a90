"""A band that becomes a casing, cut through in its three states: sewn on, folded up, folded over and topstitched."""

from __future__ import annotations

from furbelow.garment.bench import Ply
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed, edge_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.band_section import COVER, gathered_ply
from furbelow.s6_write.figures.language import HIDDEN, INK, LEADING, PLAIN, SOFT, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import MOST_PLIES, listed_plies, single, wrong_side
from furbelow.s6_write.figures.section import LEVEL, Section, named_below, note_below, sides_told
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.band_casing import EDGE_STITCH

FAR = 30.0
ROWS_APART = 11.0  # units between two rows of stitches, which lie nearer than can be drawn


def band_with_channel(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The band laid on and sewn, folded up, and folded over and topstitched; the inside of the garment is up."""
    say = words.say
    work = _Work(done, say, numbers)
    sheet = work.sheet
    y = work.laid_on(0)
    y = work.folded_up(y + 30)
    y = work.folded_over(y + 30)
    band = say.piece(work.band)
    y = sheet.paragraph(
        (8, y + 16),
        f"Leave the gap of {say.length(done.step.mm('gap'))} open beside the side seam: the elastic goes in there later.",
        384,
    )
    y = named_below(sheet, y + 6, f"skirt: {listed_plies(say, work.plies)}", f"{band}, top of the garment")
    note_below(sheet, y)
    sheet.write(
        (sheet.width / 2, y + 8 + LEADING), "The two rows of stitches are drawn further apart.", "middle", colour=SOFT
    )
    depth, seam = say.length(done.facts["depth"]), say.length(done.step.mm("seam"))
    alt = (
        f"Cut through the {band} three times, inside up. First it lies on the inside of the skirt, right side down, raw edges level,"
        f" sewn {seam} from the edge. Second it is folded up, away from the skirt, the margin under it. Third it is folded over the"
        f" top to the outside, {depth} deep, its turn of {seam} covering the first row, and topstitched; the elastic comes later,"
        " between the margin and the outside."
    )
    return Figure(
        "band", sheet.svg(), alt, f"The band cut through: sewn on, folded up, folded over.{sides_told(done, say)}"
    )


class _Work:
    """The cuts of one step, to one scale; x is 0 at the first row of stitches and runs to the top of the garment."""

    def __init__(self, done: Performed, say: Phrasing, numbers: Numbers) -> None:
        self.done, self.say, self.numbers, self.sheet = done, say, numbers, Sheet()
        self.band = word_of(done.step.written, "band")
        self.edge = done.before.edge(edge_of(done.step.written, "to"))
        self.plies = single(self.edge.plies)[:MOST_PLIES]
        self.count = len(self.plies)
        self.depth, self.seam = float(done.facts["depth"]), float(done.step.mm("seam"))
        self.scale = min(8.0, 220 / (2 * self.depth))
        # It is sewn on right side down, so that its right side comes out when it is folded over.
        self.side = wrong_side(say, Ply(self.band), up=True)

    def laid_on(self, y: float) -> float:
        self._head(y, "1. Laid on the inside, sewn")
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
            self.say.length(self.done.step.mm("seam")),
            low + 6,
            below=True,
        )
        self.sheet.callout((tip[0] + 22, high - 22), self.numbers.of("sew", "from the edge"), tip)
        return low + 34

    def folded_up(self, y: float) -> float:
        self._head(y, "2. Folded up, away from the skirt")
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
            self.numbers.of("fold the band up"),
            (cut.at(self.depth, 0)[0], high - 4),
        )
        return low + 12

    def folded_over(self, y: float) -> float:
        self._head(y, "3. Folded over to the outside, topstitched")
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
        self.sheet.write((352, middle - 2), "elastic")
        self.sheet.write((352, middle + 12), "later")
        self._sides(cut, level + 1, out)
        high, low = cut.at(0, level + 1)[1], cut.at(0, out)[1]
        depth = f"{self.say.length(self.done.facts['depth'])} deep"
        self.sheet.across(cut.at(-COVER, 0)[0], cut.at(self.depth, 0)[0], high - 22, depth, high - 8)
        foot = (cut.at(row, 0)[0], low + 6)
        self.sheet.callout((foot[0] + 40, low + 24), self.numbers.of("topstitch"), foot)
        self.sheet.callout(
            (cut.at(-COVER, 0)[0] - 40, low + 24),
            self.numbers.of("folded edge over"),
            (cut.at(-COVER, 0)[0] - 6, low - 2),
        )
        return low + 36

    def _head(self, y: float, words: str) -> None:
        self.sheet.write((8, y), words, bold=True)

    def _skirt(self, cut: Section) -> None:
        for level, ply in enumerate(self.plies):
            side = wrong_side(self.say, ply, up=ply.right_side == "out")
            cut.ply(
                [(FAR, cut.at(0, level)[1]), cut.at(self.seam, level)], side, gathered_ply(self.done, self.edge, ply)
            )

    def _sides(self, cut: Section, high: float, low: float) -> None:
        """Which side of the garment is up and which down."""
        self.sheet.write((FAR - 22, cut.at(0, high)[1] - 10), "inside", colour=SOFT)
        self.sheet.write((FAR - 22, cut.at(0, low)[1] + 20), "outside", colour=SOFT)
