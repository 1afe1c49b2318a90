"""Cuts through edges that lie inside a band: a flat waistband, a binding strip, a folded tape."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from furbelow.garment.bench import Edge, Ply
from furbelow.garment.message import Length, Pieces, Supply, Value, Values
from furbelow.garment.technique import Performed, edge_of, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.hanging import edge_now
from furbelow.s6_write.figures.language import ACCENT, INK, PLAIN, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet
from furbelow.s6_write.figures.seam_section import MOST_PLIES, listed_plies, single, wrong_side
from furbelow.s6_write.figures.section import LEVEL, Section, captioned, named_below
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.bound_edge import Bound
from furbelow.techniques.fitted_waistband import FittedBand
from furbelow.techniques.shared.casings import EDGE_STITCH

FAR = 30.0
COVER = 1.0  # mm by which the turned edge covers the first row, as drawn


def binding_strip(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A strip sewn to an edge, folded around it and caught behind."""
    words.read("figures-section", "figures-band-section")
    strip, edge = word_of(done.step.written, "strip"), done.before.edge(edge_of(done.step.written, "edge"))
    shows, seam, turn = words.say.solved.pieces[strip].depth, done.step.mm("seam"), done.step.mm("turn under")
    values: Values = {
        "strip": Pieces((strip,)),
        "shows": Length(shows),
        "seam-width": Length(seam),
        "turn": Length(turn),
    }
    sheet = Sheet()
    tips, cut, count = _folded_over(sheet, edge, Ply(strip), words, float(shows), float(seam), float(turn), done)
    left, right = cut.at(0, 0)[0], cut.at(float(shows), 0)[0]
    top, low = cut.at(0, count + 1)[1], cut.at(0, -2)[1]
    sheet.across(left, right, top - 24, words.text("figure-binding-shows", values), top - 10)
    under = cut.at(-COVER, 0)[0], cut.at(float(turn), 0)[0]
    sheet.across(*under, low + 22, words.value(values, "turn"), low + 8, below=True)
    sheet.callout((tips[0][0] - 44, top - 8), numbers.at("binding-strip-sew-ring", "binding-strip-sew-flat"), tips[0])
    sheet.callout(
        (cut.at(-COVER, 0)[0] - 30, low + 18),
        numbers.at("binding-strip-stitch-down-ring", "binding-strip-stitch-down-flat"),
        tips[1],
    )
    low = named_below(sheet, low + 66, listed_plies(words, single(edge.plies)), words.say.piece(strip))
    caption = captioned(words, done, "figure-binding-caption", values)
    return sheet.figure("band", words.text("figure-binding-alt", values), caption)


def fitted_band(done: Performed, run: Run, words: Words, numbers: Numbers) -> Iterator[Figure]:
    """A flat waistband: sewn on outside, folded over and stitched down inside; and its ends where one stands out."""
    yield _folded_band(done, words, numbers)
    if facts_of(done, FittedBand).underlap:
        yield _ends(done, words, numbers)


def _ends(done: Performed, words: Words, numbers: Numbers) -> Figure:
    """Both ends folded right sides together, and the row that closes each; drawn wider than they are."""
    facts = facts_of(done, FittedBand)
    values: Values = {"seam-width": Length(done.step.mm("seam")), "out": Length(facts.underlap)}
    sheet, margin, out = Sheet(), 16.0, 56.0
    fold, line, low = 26.0, 80.0, 130.0
    row: list[Point]
    for left, right, beneath, head, told in (
        (30.0, 170.0, False, "figure-band-ends-top", "fitted-waistband-end-on-top"),
        (236.0, 376.0, True, "figure-band-ends-beneath", "fitted-waistband-end-beneath"),
    ):
        opening = left + margin + (out if beneath else 0.0)
        sheet.head((left - 8, 0), words.text(head))
        face(sheet, [(left, fold), (right, fold), (right, line + margin), (left, line + margin)], wrong=True)
        face(sheet, [(opening, line + margin), (right, line + margin), (right, low), (opening, low)], wrong=True)
        sheet.line([(opening, low), (opening, line + margin)], INK, PLAIN)
        edge(sheet, (left, fold), (right, fold), "fold", (0, 1))
        edge(sheet, (left, fold), (left, line + margin), "raw", (1, 0))
        sheet.line([(opening, line), (right, line)], SOFT, PLAIN, (5, 3))
        row = [(left + margin, fold), (left + margin, line)]
        if beneath:
            row.append((opening, line))
            sheet.across(left + margin, opening, low - 4, words.value(values, "out"), line + margin + 2, below=True)
        sheet.line(row, ACCENT, THICK)
        sheet.callout((left + 60, fold + 26), numbers.at(told), (left + margin, fold + 26))
    alt, caption = words.text("figure-band-ends-alt", values), words.text("figure-band-ends-caption")
    return sheet.figure("band-ends", alt, caption)


def _folded_band(done: Performed, words: Words, numbers: Numbers) -> Figure:
    words.read("figures-section", "figures-band-section")
    band, edge = word_of(done.step.written, "band"), done.before.edge(edge_of(done.step.written, "to"))
    depth, seam = facts_of(done, FittedBand).depth, done.step.mm("seam")
    values: Mapping[str, Value | str] = {
        "band": Pieces((band,)),
        "band-label": words.say.piece(band),
        "depth": Length(depth),
        "seam-width": Length(seam),
    }
    sheet = Sheet()
    tips, cut, count = _folded_over(sheet, edge, Ply(band), words, float(depth), float(seam), float(seam), done)
    top, low = cut.at(0, count + 1)[1], cut.at(0, -2)[1]
    across = cut.at(-COVER, 0)[0], cut.at(float(depth), 0)[0]
    sheet.across(*across, top - 24, words.text("figure-fitted-depth", values), top - 10)
    under = cut.at(0, 0)[0], cut.at(float(seam), 0)[0]
    sheet.across(*under, low + 22, words.said(Length(seam), "seam-width"), low + 8, below=True)
    sheet.callout((tips[0][0] - 44, top - 8), numbers.at("fitted-waistband-sew"), tips[0])
    sheet.callout((cut.at(-COVER, 0)[0] - 30, low + 18), numbers.at("fitted-waistband-inside"), tips[1])
    plies = listed_plies(words, single(edge.plies))
    named_below(sheet, low + 66, plies, words.text("figure-fitted-band", values))
    caption = captioned(words, done, "figure-fitted-caption", values)
    return sheet.figure("band", words.text("figure-fitted-alt", values), caption)


def tape_round_edge(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A raw edge, or a margin, in the fold of a tape."""
    words.read("figures-section", "figures-band-section")
    facts = facts_of(done, Bound)
    half = float(facts.half)
    if facts.edge:
        plies = single(done.before.edge(facts.edge).plies)[:MOST_PLIES]
    else:
        seam = done.before.seam_at(edge_of(done.step.written, "seam"))
        plies = single(seam.plies)[:MOST_PLIES] if seam else []
    values: Values = {"tape": Supply(word_of(done.step.written, "tape")), "half": Length(facts.half)}
    scale = min(10.0, 120 / half)
    sheet = Sheet()
    cut = Section(sheet, (290, 70 + LEVEL * len(plies)), scale)
    for level, ply in enumerate(plies, 1):
        cut.ply([(FAR, cut.at(0, level)[1]), cut.at(-0.4, level)], wrong_side(words.say, ply, up=False))
    over = len(plies) + 1
    cut.ply([cut.at(-half, 0), *cut.turn(0, 0, over), cut.at(-half, over)], trim=True)
    tip = cut.stitch(-half + 2, 0, over)
    top, low = cut.at(0, over)[1], cut.at(0, 0)[1]
    sheet.across(cut.at(-half, 0)[0], cut.at(0, 0)[0] + 7, top - 22, words.value(values, "half"), top - 8)
    sheet.callout((tip[0] - 44, tip[1] - 10), numbers.at("bound-edge-sew-ring", "bound-edge-sew-flat"), tip)
    named_below(sheet, low + 28, listed_plies(words, plies), words.value(values, "tape"))
    alt, caption = words.text("figure-tape-alt", values), words.text("figure-tape-caption", values)
    return sheet.figure("band", alt, caption)


def _folded_over(
    sheet: Sheet, edge: Edge, band: Ply, words: Words, depth: float, seam: float, turn: float, done: Performed
) -> tuple[tuple[tuple[float, float], tuple[float, float]], Section, int]:
    """A band sewn on above the edge, folded over it and turned under below; where its two rows end, and the plies inside."""
    plies = single(edge.plies)[:MOST_PLIES]
    count, say = len(plies), words.say
    scale = min(12.0, 190 / (depth + 2))
    sheet.head((8, 0), words.text("figure-right-side-up"))
    cut = Section(sheet, (366 - depth * scale - 14, 58 + LEVEL * (count + 1)), scale)
    for level, ply in enumerate(reversed(plies)):
        side = wrong_side(say, ply, up=ply.right_side != "out")
        cut.ply([(FAR, cut.at(0, level)[1]), cut.at(seam, level)], side, gathered_ply(done, edge, ply))
    # It is sewn on right side down, so that its right side comes out when it is folded over.
    side = -wrong_side(say, band, up=True)
    over = [
        cut.at(seam, count),
        *cut.turn(-0.2, count, count + 1, to_right=False),
        *cut.turn(depth, count + 1, -2),
        *cut.turn(-COVER, -2, -1, to_right=False),
        cut.at(-COVER + turn, -1),
    ]
    cut.ply(over, side)
    first = cut.stitch(0.6, 0, count, worked=True)
    x = float(EDGE_STITCH) - COVER + (1.6 if abs(float(EDGE_STITCH) - COVER - 0.6) < 1 else 0)
    cut.stitch(x, -2, count + 1, worked=True)
    low = cut.at(x, -2)
    return (first, (low[0], low[1] + 6)), cut, count


def gathered_ply(done: Performed, edge: Edge, ply: Ply) -> bool:
    """Whether a ply of an edge lies in gathers; in a stack each layer has its own."""
    now = edge_now(done.before, f"{ply.piece}.{edge.name.partition('.')[2] or 'top'}")
    return bool(now.gathered) and now.set_length < now.cloth_length
