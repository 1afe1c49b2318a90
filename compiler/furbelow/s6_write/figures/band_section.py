"""Cuts through edges that lie inside a band: a flat waistband, a binding strip, a folded tape."""

from __future__ import annotations

from furbelow.garment.bench import Edge, Ply
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.spec import EdgeName
from furbelow.garment.technique import Performed, edge_of, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.hanging import edge_now
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import MOST_PLIES, listed_plies, single, wrong_side
from furbelow.s6_write.figures.section import LEVEL, Section, named_below, note_below, sides_told
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.fitted_waistband import FittedBand
from furbelow.techniques.shared.casings import EDGE_STITCH

FAR = 30.0
COVER = 1.0  # mm by which the turned edge covers the first row, as drawn


def binding_strip(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A strip sewn to an edge, folded around it and caught behind."""
    say = words.say
    strip, edge = word_of(done.step.written, "strip"), done.before.edge(edge_of(done.step.written, "edge"))
    shows, seam, turn = say.solved.pieces[strip].depth, done.step.mm("seam"), done.step.mm("turn under")
    sheet = Sheet()
    tips, cut, count = _folded_over(sheet, edge, Ply(strip), say, float(shows), float(seam), float(turn), done)
    left, right = cut.at(0, 0)[0], cut.at(float(shows), 0)[0]
    top, low = cut.at(0, count + 1)[1], cut.at(0, -2)[1]
    sheet.across(left, right, top - 24, f"{say.length(shows)} shows", top - 10)
    sheet.across(cut.at(-COVER, 0)[0], cut.at(float(turn), 0)[0], low + 22, say.length(turn), low + 8, below=True)
    sheet.callout((tips[0][0] - 44, top - 8), numbers.of("sew", "from the edge"), tips[0])
    sheet.callout((cut.at(-COVER, 0)[0] - 30, low + 18), numbers.of("from the right side"), tips[1])
    low = named_below(sheet, low + 66, listed_plies(say, single(edge.plies)), say.piece(strip))
    note_below(sheet, low)
    alt = (
        f"Cut through the bound edge, right side up: the {say.piece(strip)} sewn on {say.length(seam)} from the edge, folded round"
        f" it so that {say.length(shows)} shows, its turn of {say.length(turn)} caught behind."
    )
    return Figure("band", sheet.svg(), alt, f"The bound edge cut through.{sides_told(done, say)}")


def fitted_band(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A flat waistband: sewn on outside, folded over and stitched down inside."""
    say = words.say
    band, edge = word_of(done.step.written, "band"), done.before.edge(edge_of(done.step.written, "to"))
    depth, seam = facts_of(done, FittedBand).depth, done.step.mm("seam")
    sheet = Sheet()
    tips, cut, count = _folded_over(sheet, edge, Ply(band), say, float(depth), float(seam), float(seam), done)
    top, low = cut.at(0, count + 1)[1], cut.at(0, -2)[1]
    sheet.across(cut.at(-COVER, 0)[0], cut.at(float(depth), 0)[0], top - 24, f"{say.length(depth)} deep", top - 10)
    sheet.across(cut.at(0, 0)[0], cut.at(float(seam), 0)[0], low + 22, say.length(seam), low + 8, below=True)
    sheet.callout((tips[0][0] - 44, top - 8), numbers.at("fitted-waistband-sew"), tips[0])
    sheet.callout((cut.at(-COVER, 0)[0] - 30, low + 18), numbers.at("fitted-waistband-inside"), tips[1])
    low = named_below(sheet, low + 66, listed_plies(say, single(edge.plies)), f"{say.piece(band)}, fold at the top")
    note_below(sheet, low)
    alt = (
        f"Cut through the {say.piece(band)}, right side up: sewn on {say.length(seam)} from the edge, folded over,"
        f" {say.length(depth)} deep, its turned edge stitched down inside."
    )
    return Figure(
        "band", sheet.svg(), alt, f"The band cut through: every raw edge lies inside it.{sides_told(done, say)}"
    )


def tape_round_edge(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A raw edge, or a margin, in the fold of a tape."""
    say = words.say
    half = float(done.facts["half"])
    args = done.step.written.args
    if "edge" in args:
        plies = single(done.before.edge(edge_of(done.step.written, "edge")).plies)[:MOST_PLIES]
    else:
        value = args["seam"].value
        seam = done.before.seam_at(str(value) if isinstance(value, EdgeName) else "")
        plies = single(seam.plies)[:MOST_PLIES] if seam else []
    material = say.solved.materials[word_of(done.step.written, "tape")].material
    tape = material.about or material.name.replace("_", " ")
    scale = min(10.0, 120 / half)
    sheet = Sheet()
    cut = Section(sheet, (290, 70 + LEVEL * len(plies)), scale)
    for level, ply in enumerate(plies, 1):
        cut.ply([(FAR, cut.at(0, level)[1]), cut.at(-0.4, level)], wrong_side(say, ply, up=False))
    over = len(plies) + 1
    cut.ply([cut.at(-half, 0), *cut.turn(0, 0, over), cut.at(-half, over)], trim=True)
    tip = cut.stitch(-half + 2, 0, over)
    top, low = cut.at(0, over)[1], cut.at(0, 0)[1]
    sheet.across(cut.at(-half, 0)[0], cut.at(0, 0)[0] + 7, top - 22, say.length(done.facts["half"]), top - 8)
    sheet.callout((tip[0] - 44, tip[1] - 10), numbers.of("from the tape's"), tip)
    low = named_below(sheet, low + 28, listed_plies(say, plies), tape)
    note_below(sheet, low)
    alt = f"Cut through the edge in the folded {tape}, which covers {say.length(done.facts['half'])} on both sides, one row through all."
    return Figure("band", sheet.svg(), alt, f"The raw edge lies in the fold of the {tape}.")


def _folded_over(
    sheet: Sheet, edge: Edge, band: Ply, say: Phrasing, depth: float, seam: float, turn: float, done: Performed
) -> tuple[tuple[tuple[float, float], tuple[float, float]], Section, int]:
    """A band sewn on above the edge, folded over it and turned under below; where its two rows end, and the plies inside."""
    plies = single(edge.plies)[:MOST_PLIES]
    count = len(plies)
    scale = min(12.0, 190 / (depth + 2))
    sheet.write((8, 0), "Right side up", bold=True)
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
