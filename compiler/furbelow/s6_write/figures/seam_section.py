"""Seam cross-sections: two edges sewn right sides together, the margin neatened, the margin turned and topstitched."""

from __future__ import annotations

from furbelow.garment.bench import Bench, Ply, Seam, State
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.language import ACCENT, LEADING, SOFT, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet, shortened, spread
from furbelow.s6_write.figures.section import LEVEL, NOT_TO_SCALE, PLY, Section, named_below, note_below, sides_told
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.neaten import MESSAGES, Neatened
from furbelow.techniques.turn_seam import FROM_SEAM, Turned

LEFT, RIGHT = 150.0, 384.0
SEWN = ("attach-sew-gathers", "attach-sew-flat", "join-ends-sew", "join-ends-sew-pieced", "join-strips-sew")
MOST_PLIES = 4  # of one edge that are drawn; more are told in words


def sewn_seam(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A seam that this step sews: as it lies at the machine, and opened out."""
    say = words.say
    seam = new_seam(done)
    if seam is None:
        return None
    above, below = sides(done, seam)
    width = float(seam.width)
    scale = min(7.0, 90 / width)
    sheet = Sheet()
    sheet.write((8, 0), "At the machine", bold=True)
    upper, lower = above[:MOST_PLIES], below[:MOST_PLIES]
    count = len(upper) + len(lower)
    cut = Section(sheet, (RIGHT - 50 - width * scale, 38 + LEVEL * count), scale)
    far = (LEFT - cut.zero[0]) / scale
    labels = []
    for index, ply in enumerate([*reversed(lower), *reversed(upper)]):
        on_top = index >= len(lower)
        gathered = not on_top and _gathered(done, seam)
        cut.ply([cut.at(far, index), cut.at(width, index)], wrong_side(say, ply, up=on_top), gathered)
        labels.append((cut.at(far, index)[1], say.piece(ply.piece)))
    tip = cut.stitch(0, 0, count - 1)
    edge_y = cut.at(0, count - 1)[1]
    sheet.across(cut.at(0, 0)[0], cut.at(width, 0)[0], edge_y - 22, say.length(seam.width), edge_y - 8)
    sheet.callout((tip[0] - 26, tip[1] - 12), numbers.at(*SEWN), tip)
    low = _labels(sheet, labels, edge_y - 12)
    sheet.paragraph((RIGHT, max(cut.zero[1], low - LEADING) + 20), "raw edges level", 100, "end", colour=SOFT)
    y = max(cut.zero[1], low) + 52
    sheet.write((8, y), "Opened out, margin up", bold=True)
    y = _opened(sheet, y + 34 + width * scale, seam, upper, lower, say, scale, _gathered(done, seam))
    sheet.write((sheet.width / 2, y + 28), NOT_TO_SCALE, "middle", colour=SOFT)
    face = "right sides together" if any(wrong_side(say, ply, True) for ply in (*upper, *lower)) else "edges level"
    top, under = listed_plies(say, above), listed_plies(say, below)
    alt = (
        f"Cut through the seam: {top} on top, {under} underneath, {face}, stitched {say.length(seam.width)} from the raw edges."
        " Opened out, the margins of both stand up on the wrong side."
    )
    return Figure(
        "seam", sheet.svg(), alt, f"The seam cut through, {say.length(seam.width)} wide.{sides_told(done, say)}"
    )


def neatened_margin(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A margin, or a single edge, with the neatening stitch round its cut edge."""
    say = words.say
    seams, edges = facts_of(done, Neatened)
    how = {"overlocker": "overlock stitch", "zigzag": "zigzag stitch", "pinking shears": "pinked edge"}[
        say.room.neaten_with
    ]
    shown = [seam for seam in seams if not seam.name.endswith(".joins") or say.joins.get(seam.plies[0].piece)]
    if not shown and not edges:
        return None
    sheet = Sheet()
    number = numbers.at(*(message for both in MESSAGES.values() for message in both))
    if shown:
        seam = shown[0]
        above, below = sides(done, seam)
        scale = min(7.0, 70 / float(seam.width))
        sheet.write((8, 0), "Margin standing up", bold=True)
        y = 40 + float(seam.width) * scale
        low = _opened(sheet, y, seam, above[:MOST_PLIES], below[:MOST_PLIES], say, scale, _gathered(done, seam))
        cut = Section(sheet, (sheet.width / 2, y), scale)
        count = min(len(above), MOST_PLIES) + min(len(below), MOST_PLIES)
        top = y - float(seam.width) * scale
        half = LEVEL * count / 2 + 1
        _thread(sheet, sheet.width / 2, top, half, say.room.neaten_with)
        sheet.callout((sheet.width / 2 + half + 34, top - 2), number, (sheet.width / 2 + half, top + 3))
        sheet.write((sheet.width / 2 + half + 50, top + 3), how)
        sheet.write((sheet.width / 2, low + 28), NOT_TO_SCALE, "middle", colour=SOFT)
        margin = (
            f"Cut through the seam, its margin of {say.length(seam.width)} standing up, all its plies held by one {how}"
        )
        return Figure(
            "margin",
            sheet.svg(),
            f"{margin}.",
            f"The margin with its {how} round all the cut edges.{sides_told(done, say)}",
        )
    edge = edges[0]
    cut = Section(sheet, (120, 40), 6.0)
    cut.ply([cut.at(0, 0), cut.at(25, 0)], wrong_side(say, edge.plies[0], up=False))
    cut.overcast(25, 0, 0)
    sheet.callout((306, 22), number, (276, 36))
    sheet.write((322, 27), shortened(how, 74))
    sheet.write((112, 44), shortened(say.piece(edge.pieces[0]), 100), "end")
    sheet.write((sheet.width / 2, 76), NOT_TO_SCALE, "middle", colour=SOFT)
    alt = f"Cut through an edge of the {say.piece(edge.pieces[0])}, {say.length(edge.set_length)} long: {how} round its cut edge."
    return Figure("margin", sheet.svg(), alt, f"The cut edge with its {how}.")


def turned_margin(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A margin laid flat towards one piece, with the topstitching through it: as it lies at the machine."""
    say = words.say
    facts = facts_of(done, Turned)
    seam = facts.seams[0]
    above, below = sides(done, seam)
    if not facts.above:
        above, below = below, above
    upper, lower = above[:MOST_PLIES], below[:MOST_PLIES]
    width = float(seam.width)
    scale = min(8.0, 100 / width)
    sheet = Sheet()
    sheet.write((8, 0), "Right side up, margin underneath", bold=True)
    under, count = len(upper), len(upper) + len(lower)
    cut = Section(sheet, (236, 56), scale)
    for index, ply in enumerate(reversed(upper)):
        # The piece itself, folded back under itself at the seam: its own margin comes to lie below it.
        level, margin = -index, index + 1 - 2 * under
        points = [cut.at(-236 / scale * 0.85, level), *cut.turn(-0.6, level, margin), cut.at(-width, margin)]
        cut.ply(points, wrong_side(say, ply, up=False, along=True))
    for index, ply in enumerate(reversed(lower)):
        level = -2 * under - index
        points = [cut.at(150 / scale, -index), cut.at(1.6, -index), cut.at(0.9, level), cut.at(-width, level)]
        cut.ply(points, wrong_side(say, ply, up=False, along=False), _gathered(done, seam) and facts.above)
    bottom = -2 * under - len(lower) + 1
    tip = cut.stitch(-float(FROM_SEAM), bottom, 0)
    cut.stitch(-0.7, bottom, -under, worked=False)
    neatened = seam.state is State.NEATENED and say.room.neaten_with != "pinking shears"
    if neatened:
        cut.overcast(-width, bottom, -under, worked=False, way=-1)
    high, low = cut.at(0, 0)[1], cut.at(0, bottom)[1]
    sheet.across(cut.at(-float(FROM_SEAM), 0)[0], cut.at(0, 0)[0], high - 20, say.length(FROM_SEAM), high - 4)
    sheet.across(cut.at(-width, 0)[0], cut.at(0, 0)[0], low + 20, say.length(seam.width), low + 6, below=True)
    sheet.callout((tip[0] - 34, tip[1] - 8), numbers.at("turn-seam-sew-ring", "turn-seam-sew-flat"), tip)
    sheet.line([cut.at(-0.7, bottom), (cut.at(0, 0)[0] + 26, low + 14)], SOFT, THIN)
    sheet.write((cut.at(0, 0)[0] + 29, low + 18), "earlier seam", colour=SOFT)
    if neatened:
        sheet.write((cut.at(-width, 0)[0] - 12, low + 4), "neatened edge", "end", colour=SOFT)
    low = named_below(sheet, low + 54, listed_plies(say, upper), listed_plies(say, lower))
    note_below(sheet, low)
    way = "up, towards" if facts.above else "down, towards"
    alt = (
        f"Cut through the seam, right side up: the margin of {say.length(seam.width)} lies underneath, {way} the"
        f" {listed_plies(say, above)}, topstitched {say.length(FROM_SEAM)} from the seam through all {count + under} plies of cloth."
    )
    return Figure(
        "turned",
        sheet.svg(),
        alt,
        f"The margin lies under the {listed_plies(say, above)} and is stitched down.{sides_told(done, say)}",
    )


def _opened(
    sheet: Sheet, y: float, seam: Seam, upper: list[Ply], lower: list[Ply], say: Phrasing, scale: float, gathered: bool
) -> float:
    """The seam opened out at height y, its margin standing up in the middle of the sheet; how far down it reaches."""
    middle, high = sheet.width / 2, float(seam.width) * scale
    cut = Section(sheet, (middle, y), scale)
    for index, ply in enumerate(upper):
        x = middle - PLY / 2 - 0.5 - LEVEL * index
        points = [(40.0, y - LEVEL * index), (x, y - LEVEL * index), (x, y - high)]
        cut.ply(points, wrong_side(say, ply, up=True, along=True))
    for index, ply in enumerate(lower):
        x = middle + PLY / 2 + 0.5 + LEVEL * index
        points = [(360.0, y - LEVEL * index), (x, y - LEVEL * index), (x, y - high)]
        cut.ply(points, wrong_side(say, ply, up=True, along=False), gathered)
    rise = LEVEL * (max(len(upper), len(lower)) - 1) + 5
    left, right = middle - PLY - 4 - LEVEL * (len(upper) - 1), middle + PLY + 4 + LEVEL * (len(lower) - 1)
    sheet.line([(left, y - rise), (right, y - rise)], ACCENT, 1.8)
    sheet.upright(y - high, y - rise, left - 12, say.length(seam.width), left, "left")
    return named_below(sheet, y + 20, listed_plies(say, upper), listed_plies(say, lower)) - LEADING


def _thread(sheet: Sheet, x: float, top: float, half: float, how: str) -> None:
    """The neatening round the top of a standing margin; pinked edges have points instead of thread."""
    if how == "pinking shears":
        points = [(x - half + half * i / 4, top - (5 if i % 2 else 0)) for i in range(9)]
        sheet.line(points, ACCENT, 1.8)
        return
    rows = [top - 4, top + 12]
    sheet.line([(x - half, rows[1]), (x - half, rows[0]), (x + half, rows[0]), (x + half, rows[1])], ACCENT, 1.8)
    sheet.lines([[(x - half - 3, rows[1]), (x + half + 3, rows[1])]], ACCENT, 1.8)


def _labels(sheet: Sheet, labels: list[tuple[float, str]], top: float) -> float:
    labels = sorted(labels)
    places = spread([y for y, _ in labels], [LEADING] * len(labels), top, top)
    for (y, words), middle in zip(labels, places, strict=True):
        sheet.line([(LEFT - 14, middle), (LEFT - 2, y)], SOFT, 0.8)
        sheet.write((LEFT - 17, middle + 4.5), shortened(words, LEFT - 25), "end")
    return places[-1] + LEADING / 2


def new_seam(done: Performed) -> Seam | None:
    """The seam that a step sews, if it sews one."""
    return next((seam for name, seam in done.after.seams.items() if name not in done.before.seams), None)


def sides(done: Performed, seam: Seam) -> tuple[list[Ply], list[Ply]]:
    """The plies of the flat side of a seam, on top at the machine, and those of the other; single plies, outermost first."""
    bench: Bench = done.before if all(name in done.before.edges for name in seam.edges) else done.after
    if len(seam.edges) == 2 and not seam.name.endswith((".ends", ".joins")):
        to, edge = bench.edge(seam.edges[1]), bench.edge(seam.edges[0])
        return single(to.plies), single(edge.plies)
    piece = seam.plies[0]
    return [Ply(piece.piece)], [Ply(piece.piece)]


def single(plies: tuple[Ply, ...]) -> list[Ply]:
    """Every ply by itself, in order."""
    return [Ply(ply.piece, 1, ply.right_side) for ply in plies for _ in range(ply.copies)]


def _gathered(done: Performed, seam: Seam) -> bool:
    return len(seam.edges) == 2 and bool(done.after.edges[seam.edges[0]].gathered)


def wrong_side(say: Phrasing, ply: Ply, up: bool, along: bool = True) -> int:
    """Which side of a ply is the wrong one on its way: left of it where it runs right and the wrong side is up."""
    return side_of(say, ply.piece) * (1 if up else -1) * (1 if along else -1)


def side_of(say: Phrasing, piece: str) -> int:
    """1 where the cloth of a piece has a right and a wrong side, 0 where both are alike."""
    cloth = say.solved.pieces[piece].piece.cloth.text
    return 1 if say.solved.materials[cloth].material.has_right_side else 0


def listed_plies(say: Phrasing, plies: list[Ply]) -> str:
    """Plies in words: "upper tier", "2 × upper tier, lining"."""
    names = list(dict.fromkeys(ply.piece for ply in plies))
    counted = [(sum(ply.piece == name for ply in plies), say.piece(name)) for name in names]
    return ", ".join(f"{count} × {name}" if count > 1 else name for count, name in counted)
