"""Cuts through a waist where the lining, turned in, hides all margins: the band on the lining, all as it is sewn, and as it is worn."""

from __future__ import annotations

from collections.abc import Iterator

from furbelow.garment.bench import Edge, Ply
from furbelow.garment.message import Length, Pieces, Values, edge_said
from furbelow.garment.tags import place_sign
from furbelow.garment.technique import Performed, edge_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.band_section import gathered_ply
from furbelow.s6_write.figures.language import SOFT, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import wrong_side
from furbelow.s6_write.figures.section import LEVEL, Section, captioned
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

LETTERS = tuple(map(place_sign, (1, 2, 3)))  # the lining, the band, the layers
ROW_IN = 1.0  # mm that the first row lies in the margin
OPENED = (0.35, 0.75)  # where the opening of the channel is drawn, as shares of the depth of the band
FAR = 30.0  # mm of the layers and the lining that are drawn below the seam


def turned_lining(done: Performed, run: Run, words: Words, numbers: Numbers) -> Iterator[Figure]:
    """The band on the lining, which way its halves lie; layers, band and lining level at the top and sewn; then the band up and
    the lining turned in."""
    words.read("figures-section", "figures-turned-lining")
    written, before = done.step.written, done.before
    lining, band, to = (before.edge(edge_of(written, name)) for name in ("lining", "band", "to"))
    values: Values = {
        "lining": Pieces(lining.pieces),
        "band": Pieces(tuple(dict.fromkeys(band.pieces))),
        "layers": Pieces(tuple(dict.fromkeys(to.pieces))),
        "to": edge_said(to),
        "seam-width": Length(done.step.mm("seam")),
        "inside": Length(done.step.mm("seam") - 1),
    }
    drawing = _Drawing(done, words, lining, band, to)
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-lining-band"))
    fold, tip, low = drawing.band_on_lining(sheet, 44.0)
    sheet.callout((fold[0] + 30, fold[1] - 22), numbers.at("turned-lining-lay-band"), fold)
    sheet.callout((tip[0] - 30, tip[1] - 14), numbers.at("turned-lining-sew-band"), tip)
    drawing.legend(sheet, low + 4, 2)
    caption = captioned(words, done, "figure-lining-band-caption", values)
    yield sheet.figure("lining-band", words.text("figure-lining-band-alt", values), caption)
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-lining-sewn"))
    tip, low = drawing.as_sewn(sheet, 40.0)
    sheet.callout((tip[0] - 30, tip[1] - 10), numbers.at("turned-lining-sew"), tip)
    sheet.head((8, low + 30), words.text("figure-lining-turned"))
    tip, low = drawing.as_worn(sheet, low + 96)
    sheet.callout((tip[0] - 36, tip[1] - 24), numbers.at("turned-lining-turn"), tip)
    drawing.legend(sheet, low + 4)
    caption = captioned(words, done, "figure-lining-caption", values)
    yield sheet.figure("lining", words.text("figure-lining-alt", values), caption)


class _Drawing:
    """The plies of the seam. One ply stands for all layers: its name tells that there are several."""

    def __init__(self, done: Performed, words: Words, lining: Edge, band: Edge, to: Edge) -> None:
        say = words.say
        self.words, self.width = words, done.step.mm("seam")
        self.seam = float(self.width)
        self.deep = float(say.solved.pieces[band.pieces[0]].depth)
        self.scale = min(6.0, 300 / (self.deep + FAR + self.seam))
        self.names = [words.said(Pieces((edge.pieces[0],))) for edge in (lining, band)]
        self.names.append(words.said(edge_said(to)))
        layer = to.plies[-1]
        self.gathered = gathered_ply(done, to, layer), gathered_ply(done, lining, lining.plies[0])
        self.sides = (
            wrong_side(say, Ply(layer.piece), up=True),
            wrong_side(say, Ply(band.pieces[0]), up=True),
            wrong_side(say, Ply(lining.pieces[0]), up=word_of(done.step.written, "right side") == "out"),
        )

    def band_on_lining(self, sheet: Sheet, y: float) -> tuple[tuple[float, float], tuple[float, float], float]:
        """The lining inside out and the band over it, its fold to the right, its opening towards the lining; where the fold is,
        where the stitch ends, and the foot of the cut."""
        cut = Section(sheet, (130, y + 3 * LEVEL), self.scale)
        cut.ply([cut.at(FAR, 0), cut.at(-self.seam, 0)], -self.sides[2], self.gathered[1])
        near, far = self.deep * OPENED[0], self.deep * OPENED[1]
        cut.ply([cut.at(-self.seam, 1.2), cut.at(near, 1.2)], self.sides[1])
        rest = [cut.at(far, 1.2), cut.at(self.deep, 1.2), *cut.turn(self.deep, 1.2, 2.2), cut.at(-self.seam, 2.2)]
        cut.ply(rest, self.sides[1])
        tip = cut.stitch(-ROW_IN, 0, 2.2)
        for level, letter in zip((0, 1.7), LETTERS[:2], strict=True):
            sheet.place((cut.at(-self.seam, 0)[0] - 14, cut.at(0, level)[1] + 4), (letter,), "end")
        middle, low = (near + far) / 2, cut.at(0, 0)[1] + 26
        sheet.line([cut.at(middle, 1.2), (cut.at(middle, 0)[0], low - 12)], SOFT, THIN)
        sheet.write((cut.at(middle, 0)[0], low), self.words.text("figure-lining-opening"), "middle", colour=SOFT)
        return cut.at(self.deep, 2.2), tip, low + 22

    def as_sewn(self, sheet: Sheet, y: float) -> tuple[tuple[float, float], float]:
        """All hang to the right of the seam, the lining outermost; where its stitch ends, and the foot of the cut."""
        cut = Section(sheet, (130, y + 4 * LEVEL), self.scale)
        cut.ply([cut.at(FAR, 0), cut.at(-self.seam, 0)], -self.sides[2], self.gathered[1])
        band = [cut.at(-self.seam, 1), cut.at(self.deep, 1), *cut.turn(self.deep, 1, 2), cut.at(-self.seam, 2)]
        cut.ply(band, self.sides[1])
        cut.ply([cut.at(FAR, 3), cut.at(-self.seam, 3)], -self.sides[0], self.gathered[0])
        tip = cut.stitch(0, 0, 3)
        said = self.words.said(Length(self.width), "seam-width")
        low = cut.at(0, 0)[1]
        sheet.across(cut.at(-self.seam, 0)[0], cut.at(0, 0)[0], low + 24, said, low + 10, below=True)
        for level, letter in zip((0, 1.5, 3), LETTERS, strict=True):
            sheet.place((cut.at(-self.seam, 0)[0] - 14, cut.at(0, level)[1] + 4), (letter,), "end")
        return tip, low + 26

    def as_worn(self, sheet: Sheet, y: float) -> tuple[tuple[float, float], float]:
        """The band to the left, which is up; layers below and lining above, the margins between them."""
        cut = Section(sheet, (40 + self.deep * self.scale, y + 5 * LEVEL), self.scale)
        fold = cut.turn(0, 0, 1, to_right=False)
        cut.ply([cut.at(FAR, 0), cut.at(0, 0), *fold, cut.at(self.seam, 1)], -self.sides[0], self.gathered[0])
        band = [cut.at(self.seam, 2), cut.at(-self.deep, 2), *cut.turn(-self.deep, 2, 3, to_right=False)]
        cut.ply([*band, cut.at(self.seam, 3)], -self.sides[1])
        fold = cut.turn(0, 4, 5, to_right=False)
        # The face that lay against the band looks to the legs, which are up here.
        cut.ply([cut.at(self.seam, 4), cut.at(0, 4), *fold, cut.at(FAR, 5)], self.sides[2], self.gathered[1])
        cut.stitch(1.2, 1, 4)
        right, left = cut.at(FAR, 0)[0] + 10, cut.at(-self.deep, 0)[0] - 14
        for (x, level), letter in zip(((right, 5), (left, 2.5), (right, 0)), LETTERS, strict=True):
            sheet.place((x, cut.at(0, level)[1] + 4), (letter,), "start" if x == right else "end")
        return cut.at(0, 5), cut.at(0, 0)[1] + 30

    def legend(self, sheet: Sheet, y: float, many: int = len(LETTERS)) -> float:
        """What the first so many letters stand for, a row each; the base line after the last."""
        for letter, name in zip(LETTERS[:many], self.names[:many], strict=True):
            sheet.place((8, y), (letter,))
            y = sheet.paragraph((26, y), name, sheet.width - 34)
        return y
