"""A cut through a band that is folded, edge-stitched and stitched again for its elastic, before it is sewn on."""

from __future__ import annotations

from furbelow.garment.bench import Ply
from furbelow.garment.message import Length, Pieces, Values
from furbelow.garment.technique import Performed, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import wrong_side
from furbelow.s6_write.figures.section import Section, captioned, named_below
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.channel_band import Channelled

INSIDE = 1.6  # levels between the two halves, so that the channel is seen


def channel_band(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The band with its fold to the left, both rows, and the channel between them."""
    words.read("figures-section", "figures-channel")
    facts, band = facts_of(done, Channelled), word_of(done.step.written, "band")
    cut_deep = words.say.solved.pieces[band].cut_depth / 2
    values: Values = {
        "band": Pieces((band,)),
        "channel": Length(facts.row - facts.edge_stitch),
        "row": Length(facts.row),
        "edge-stitch": Length(facts.edge_stitch, "about"),
        "deep": Length(cut_deep, "cut"),
    }
    deep, row, first = float(cut_deep), float(facts.row), float(facts.edge_stitch)
    scale = min(9.0, 280 / deep)
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-inside-up"))
    cut = Section(sheet, (60, 92), scale)
    # The inner half lies on top; its wrong side faces the other half.
    side = wrong_side(words.say, Ply(band), up=True)
    cut.ply([cut.at(deep, 0), cut.at(0, 0), *cut.turn(0, 0, INSIDE, to_right=False), cut.at(deep, INSIDE)], -side)
    edge_tip, row_tip = cut.stitch(first, 0, INSIDE), cut.stitch(row, 0, INSIDE)
    top, low = cut.at(0, INSIDE)[1], cut.at(0, 0)[1]
    sheet.across(edge_tip[0], row_tip[0], top - 28, words.text("figure-channel-wide", values), top - 12)
    sheet.across(cut.at(0, 0)[0], row_tip[0], low + 26, words.value(values, "row"), low + 10, below=True)
    sheet.across(cut.at(0, 0)[0], cut.at(deep, 0)[0], low + 56, words.value(values, "deep"), low + 10, below=True)
    sheet.callout((edge_tip[0] - 34, top - 30), numbers.at("channel-band-edge-stitch"), edge_tip)
    sheet.callout((row_tip[0] + 34, top - 30), numbers.at("channel-band-row"), row_tip)
    low = named_below(sheet, low + 96, words.text("figure-channel-fold"), words.text("figure-channel-raw"))
    caption = captioned(words, done, "figure-channel-caption", values)
    return sheet.figure("channel", words.text("figure-channel-alt", values), caption)
