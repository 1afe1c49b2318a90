"""Seam cross-sections: two edges sewn right sides together, the margin neatened, the margin turned and topstitched."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from furbelow.garment.bench import Bench, Ply, Seam, State
from furbelow.garment.message import Length, One, Part, Pieces, Things, Value, Values, flag, piece_said
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.language import ACCENT, LEADING, MARGIN, SOFT, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet, shortened
from furbelow.s6_write.figures.section import LEVEL, PLY, Section, captioned, named_below
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.attach import Attached
from furbelow.techniques.neaten import MESSAGES, Neatened
from furbelow.techniques.turn_seam import FROM_SEAM, Turned

VIEW = 176.0  # units that one of two views is wide
RIGHT_VIEW, WHOLE_VIEW = (212.0, 392.0), (40.0, 360.0)
SEWN = (  # the messages that say how a plain seam is sewn
    "attach-sew-gathers",
    "attach-sew-pleats",
    "attach-sew-flat",
    "join-ends-sew",
    "join-ends-sew-pieced",
    "join-ends-sew-panels",
    "join-ends-sew-panels-pieced",
    "join-ends-sew-open",
    "join-ends-sew-closed",
    "join-strips-sew",
)
MOST_PLIES = 4  # of one edge that are drawn; more are told in words


def sewn_seam(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A seam that this step sews: as it lies at the machine, and opened out."""
    say, seam = words.say, made_seam(done, words.say)
    if seam is None:
        return None
    words.read("figures-section", "figures-seam-section")
    above, below = sides(done, seam)
    width = float(seam.width)
    scale = min(5.0, 50 / width)
    sheet = Sheet()
    upper, lower, drawn_in = above[:MOST_PLIES], below[:MOST_PLIES], _drawn_in(done, seam)
    head = max(
        sheet.paragraph((MARGIN, 0), words.text("figure-seam-machine"), VIEW, bold=True),
        sheet.paragraph((sheet.width / 2 + 12, 0), words.text("figure-seam-opened"), VIEW, bold=True),
    )
    low = _at_the_machine(sheet, head + 8, seam, upper, lower, words, scale, drawn_in, numbers.at(*SEWN))
    floor = max(low - 2 * LEADING, head + 12 + width * scale)
    _opened(sheet, RIGHT_VIEW, floor, seam, upper, lower, words, scale, drawn_in)
    _named_beside(sheet, RIGHT_VIEW, floor + 20, upper, lower, words)
    values: Values = {
        "above": plies_said(above),
        "below": plies_said(below),
        "seam-width": Length(seam.width),
        "faced": flag(any(wrong_side(say, ply, True) for ply in (*upper, *lower))),
    }
    caption = captioned(words, done, "figure-seam-caption", values)
    faces = [[wrong_side(say, ply, True) for ply in side] for side in (above, below)]
    like = f"seam {faces} {drawn_in} {sheet.said}"
    return sheet.figure("seam", words.text("figure-seam-alt", values), caption, like=like)


def neatened_margin(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A margin, or a single edge, with the neatening stitch round its cut edge."""
    words.read("figures-section", "figures-seam-section")
    say, (seams, edges) = words.say, facts_of(done, Neatened)
    shown = [seam for seam in seams if _sewn(seam, say)]
    if not shown and not edges:
        return None
    sheet = Sheet()
    number = numbers.at(*(message for both in MESSAGES.values() for message in both))
    by = "shears" if say.room.neaten_with == "pinking shears" else say.room.neaten_with
    values: dict[str, Value] = {"by": One(by, ("overlocker", "zigzag", "shears"))}
    how = words.text("figure-margin-stitch", values)
    if shown:
        seam = shown[0]
        values["seam-width"] = Length(seam.width)
        above, below = sides(done, seam)
        scale = min(5.0, 50 / float(seam.width))
        sheet.head((8, 0), words.text("figure-margin-standing"))
        y = 40 + float(seam.width) * scale
        _opened(sheet, WHOLE_VIEW, y, seam, above[:MOST_PLIES], below[:MOST_PLIES], words, scale, _drawn_in(done, seam))
        count = min(len(above), MOST_PLIES) + min(len(below), MOST_PLIES)
        top = y - float(seam.width) * scale
        half = LEVEL * count / 2 + 1
        _thread(sheet, sheet.width / 2, top, half, say.room.neaten_with)
        sheet.callout((sheet.width / 2 + half + 34, top - 2), number, (sheet.width / 2 + half, top + 3))
        sheet.write((sheet.width / 2 + half + 50, top + 3), how)
        caption = captioned(words, done, "figure-margin-caption", values)
        # Which piece lies on which side changes nothing about the stitch round the edges, so none is named.
        like = f"margin {by} {sheet.said}"
        return sheet.figure("margin", words.text("figure-margin-alt", values), caption, like=like)
    edge = edges[0]
    values |= {"piece": Pieces(edge.pieces[:1]), "length": Length(edge.set_length)}
    cut = Section(sheet, (120, 40), 6.0)
    cut.ply([cut.at(0, 0), cut.at(25, 0)], wrong_side(say, edge.plies[0], up=False))
    if by != "shears":  # points lie in the cloth and not round it
        cut.overcast(25, 0, 0)
    sheet.callout((306, 22), number, (276, 36))
    sheet.write((322, 27), shortened(how, 74))
    sheet.write((112, 44), shortened(say.piece(edge.pieces[0]), 100), "end")
    caption = words.text("figure-margin-edge-caption", values)
    return sheet.figure("margin", words.text("figure-margin-edge-alt", values), caption)


def turned_margin(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A margin laid flat towards one piece, with the topstitching through it: as it lies at the machine."""
    words.read("figures-section", "figures-seam-section")
    say, facts = words.say, facts_of(done, Turned)
    seam = facts.seams[0]
    above, below = sides(done, seam)
    if not facts.above:
        above, below = below, above
    upper, lower = above[:MOST_PLIES], below[:MOST_PLIES]
    width = float(seam.width)
    scale = min(8.0, 100 / width)
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-turned-margin-seen"))
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
    sheet.across(
        cut.at(-float(FROM_SEAM), 0)[0],
        cut.at(0, 0)[0],
        high - 20,
        words.said(Length(FROM_SEAM), "from-seam"),
        high - 4,
    )
    sheet.across(
        cut.at(-width, 0)[0],
        cut.at(0, 0)[0],
        low + 20,
        words.said(Length(seam.width), "seam-width"),
        low + 6,
        below=True,
    )
    sheet.callout((tip[0] - 34, tip[1] - 8), numbers.at("turn-seam-sew-ring", "turn-seam-sew-flat"), tip)
    sheet.line([cut.at(-0.7, bottom), (cut.at(0, 0)[0] + 26, low + 14)], SOFT, THIN)
    sheet.write((cut.at(0, 0)[0] + 29, low + 18), words.text("figure-turned-margin-seam"), colour=SOFT)
    if neatened:
        sheet.write((cut.at(-width, 0)[0] - 12, low + 4), words.text("figure-turned-margin-edge"), "end", colour=SOFT)
    low = named_below(sheet, low + 54, listed_plies(words, upper), listed_plies(words, lower))
    values: Values = {
        "way": One("up" if facts.above else "down", ("up", "down")),
        "onto": Pieces(tuple(ply.piece for ply in above)),
        "seam-width": Length(seam.width),
        "from-seam": Length(FROM_SEAM),
        "plies": count + under,
    }
    caption = captioned(words, done, "figure-turned-margin-caption", values)
    return sheet.figure("turned", words.text("figure-turned-margin-alt", values), caption)


def _at_the_machine(
    sheet: Sheet,
    y: float,
    seam: Seam,
    upper: list[Ply],
    lower: list[Ply],
    words: Words,
    scale: float,
    drawn_in: tuple[bool, bool],
    number: int | None,
) -> float:
    """The plies as they lie at the machine, at the left of the sheet, below height y; the base line after their names."""
    count, edge = len(upper) + len(lower), MARGIN + VIEW - 40
    reach = float(seam.width) * scale
    room = edge - reach - MARGIN - 4
    top = sheet.paragraph((MARGIN, y + 8), listed_plies(words, upper), room) + 2
    cut = Section(sheet, (edge - reach, top + LEVEL * (count - 1)), scale)
    far, width = (MARGIN - cut.zero[0]) / scale, float(seam.width)
    for index, ply in enumerate([*reversed(lower), *reversed(upper)]):
        on_top = index >= len(lower)
        cut.ply([cut.at(far, index), cut.at(width, index)], wrong_side(words.say, ply, up=on_top), drawn_in[not on_top])
    tip = cut.stitch(0, 0, count - 1)
    sheet.across(cut.zero[0], edge, top - 16, words.said(Length(seam.width), "seam-width"), top - 8)
    low = cut.zero[1] + 22
    sheet.callout((tip[0], low + 4), number, (tip[0], cut.zero[1] + 6))
    return sheet.paragraph((MARGIN, low), listed_plies(words, lower), room - 18)  # beside the callout


def _opened(
    sheet: Sheet,
    view: tuple[float, float],
    y: float,
    seam: Seam,
    upper: list[Ply],
    lower: list[Ply],
    words: Words,
    scale: float,
    drawn_in: tuple[bool, bool],
) -> None:
    """The seam opened out at height y, its margin standing up in the middle of the view.

    view: its left and right end. drawn_in: whether the cloth of the upper and of the lower side is gathered.
    """
    (start, end), high = view, float(seam.width) * scale
    middle = (start + end) / 2
    cut = Section(sheet, (middle, y), scale)
    for index, ply in enumerate(upper):
        x = middle - PLY / 2 - 0.5 - LEVEL * index
        points = [(start, y - LEVEL * index), (x, y - LEVEL * index), (x, y - high)]
        cut.ply(points, wrong_side(words.say, ply, up=True, along=True), drawn_in[0])
    for index, ply in enumerate(lower):
        x = middle + PLY / 2 + 0.5 + LEVEL * index
        points = [(end, y - LEVEL * index), (x, y - LEVEL * index), (x, y - high)]
        cut.ply(points, wrong_side(words.say, ply, up=True, along=False), drawn_in[1])
    rise = LEVEL * (max(len(upper), len(lower)) - 1) + 5
    left, right = middle - PLY - 4 - LEVEL * (len(upper) - 1), middle + PLY + 4 + LEVEL * (len(lower) - 1)
    sheet.line([(left, y - rise), (right, y - rise)], ACCENT, 1.8)
    sheet.upright(y - high, y - rise, left - 12, words.said(Length(seam.width), "seam-width"), left, "left")


def _named_beside(
    sheet: Sheet, view: tuple[float, float], y: float, upper: list[Ply], lower: list[Ply], words: Words
) -> None:
    """The names of the plies below both halves of a seam that is opened out."""
    (start, end), room = view, (view[1] - view[0]) / 2 - 4
    sheet.paragraph((start, y), listed_plies(words, upper), room)
    sheet.paragraph((end, y), listed_plies(words, lower), room, "end")


def _thread(sheet: Sheet, x: float, top: float, half: float, how: str) -> None:
    """The neatening round the top of a standing margin; pinked edges have points instead of thread."""
    if how == "pinking shears":
        points = [(x - half + half * i / 4, top - (5 if i % 2 else 0)) for i in range(9)]
        sheet.line(points, ACCENT, 1.8)
        return
    rows = [top - 4, top + 12]
    sheet.line([(x - half, rows[1]), (x - half, rows[0]), (x + half, rows[0]), (x + half, rows[1])], ACCENT, 1.8)
    sheet.lines([[(x - half - 3, rows[1]), (x + half + 3, rows[1])]], ACCENT, 1.8)


def made_seam(done: Performed, say: Phrasing) -> Seam | None:
    """The seam that a step sews, if it sews one; of the joins of several pieces the first that the cutting plan asks for."""
    made = (seam for name, seam in done.after.seams.items() if name not in done.before.seams)
    return next((seam for seam in made if _sewn(seam, say)), None)


def _sewn(seam: Seam, say: Phrasing) -> bool:
    """Whether a seam is there to be sewn: a strip that is cut whole has no joins."""
    return not seam.name.endswith(".joins") or say.joins.get(seam.plies[0].piece, 0) > 0


def sides(done: Performed, seam: Seam) -> tuple[list[Ply], list[Ply]]:
    """The plies on top at the machine and those underneath; single plies, outermost first."""
    bench: Bench = done.before if all(name in done.before.edges for name in seam.edges) else done.after
    if len(seam.edges) == 2 and not seam.name.endswith((".ends", ".joins")):
        to, edge = bench.edge(seam.edges[1]), bench.edge(seam.edges[0])
        return (single(edge.plies), single(to.plies)) if gathers_up(done) else (single(to.plies), single(edge.plies))
    piece = seam.plies[0]
    return [Ply(piece.piece)], [Ply(piece.piece)]


def gathers_up(done: Performed) -> bool:
    """Whether this step sews gathers on, and they lie on top at the machine."""
    return isinstance(done.facts, Attached) and done.facts.gathers_up


def single(plies: tuple[Ply, ...]) -> list[Ply]:
    """Every ply by itself, in order."""
    return [Ply(ply.piece, 1, ply.right_side) for ply in plies for _ in range(ply.copies)]


def _gathered(done: Performed, seam: Seam) -> bool:
    return len(seam.edges) == 2 and bool(done.after.edges[seam.edges[0]].gathered)


def _drawn_in(done: Performed, seam: Seam) -> tuple[bool, bool]:
    """Whether the side on top at the machine is gathered, and the one underneath."""
    gathered, up = _gathered(done, seam), gathers_up(done)
    return gathered and up, gathered and not up


def wrong_side(say: Phrasing, ply: Ply, up: bool, along: bool = True) -> int:
    """Which side of a ply is the wrong one on its way: left of it where it runs right and the wrong side is up."""
    return side_of(say, ply.piece) * (1 if up else -1) * (1 if along else -1)


def side_of(say: Phrasing, piece: str) -> int:
    """1 where the cloth of a piece has a right and a wrong side, 0 where both are alike."""
    cloth = say.solved.pieces[piece].piece.cloth.text
    return 1 if say.solved.materials[cloth].material.has_right_side else 0


def listed_plies(words: Words, plies: Sequence[Ply]) -> str:
    """Plies in words: "upper tier", "2 × upper tier, lining"."""
    words.read("figures-seam-section")
    return words.said(plies_said(plies))


def plies_said(plies: Sequence[Ply]) -> Things:
    """Plies as messages are given them; `figure-plies` says each piece once, with its number."""
    counted = Counter(ply.piece for ply in plies)
    rows = (Part("figure-plies", {"piece": piece_said(name), "count": count}) for name, count in counted.items())
    return Things(tuple(rows), "row")
