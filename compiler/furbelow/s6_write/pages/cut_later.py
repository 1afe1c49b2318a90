"""What a class cuts after its first cutting: for who came later or was measured again, and what lies cut and is spare."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from furbelow.garment.message import Length, Own, Part, Supply, Things, Value
from furbelow.s4_cut.problem import Strip
from furbelow.s5_buy.class_cutting import SPARE, Lot
from furbelow.s5_buy.class_order import ClassOrder
from furbelow.s6_write.pages.lessons import Pupil, in_order
from furbelow.s6_write.words.words import Words


@dataclass(frozen=True)
class CutLater:
    """Of one number. stays, anew, spare: pieces with their sizes; sewn: the letters of the work that such a piece is in, or that has other
    numbers now."""

    number: str
    whose: str
    stays: str
    anew: str
    spare: str
    sewn: str


def cut_later(order: ClassOrder, pupils: Sequence[Pupil], gone: Mapping[int, str], words: Words) -> Iterator[CutLater]:
    """Of everybody of whom not all was cut at first or whose work has changed, and of who has left. gone: their names by
    their numbers."""
    later = {strip for lots in _by_cloth(order.lots) for lot in lots[1:] for strip in lot.strips}
    now = [strip for sheets in order.cutting.sheets.values() for strip in sheets[0].strips]
    work = {pupil.number: pupil for pupil in pupils}
    for number, of_one in sorted(_by_number(now).items()):
        spare = [strip for strip in of_one if strip.name.endswith(SPARE)]
        wanted = [strip for strip in of_one if strip not in spare]
        anew = [strip for strip in wanted if strip in later]
        stays = [strip for strip in wanted if strip not in anew]
        names = {_piece(strip) for strip in anew}
        pupil = work.get(number)
        # Who came later has sewn nothing yet.
        done = pupil.work if pupil and stays else ()
        sewn = [each.letter for each in done if each.changed or names & set(each.pieces)]
        if not anew and not spare and not sewn:
            continue
        yield CutLater(
            number=str(number),
            whose=pupil.whose if pupil else gone.get(number, ""),
            stays=_told(stays, order, words),
            anew=_told(anew, order, words),
            spare=_told(spare, order, words),
            sewn=", ".join(in_order(set(sewn))),
        )


def cloth_for_later(order: ClassOrder, words: Words) -> str:
    """What is cut of each cloth beside what was planned first, so that it may have to be bought; empty where nothing is."""
    lengths = {
        lots[0].cloth: sum((lot.plan.bolt_length for lot in lots[1:]), Fraction(0)) for lots in _by_cloth(order.lots)
    }
    told = tuple(
        Part("teacher-later-cloth", {"length": Length(length, "buy"), "cloth": Supply(cloth)})
        for cloth, length in lengths.items()
        if length
    )
    return words.text("teacher-later-buy", {"cloths": Things(told)}) if told else ""


def _by_cloth(lots: Sequence[Lot]) -> list[list[Lot]]:
    by_cloth: dict[str, list[Lot]] = {}
    for lot in lots:
        by_cloth.setdefault(lot.cloth, []).append(lot)
    return list(by_cloth.values())


def _by_number(strips: Sequence[Strip]) -> Mapping[int, list[Strip]]:
    found: dict[int, list[Strip]] = {}
    for strip in strips:
        found.setdefault(int(strip.name.split(" ")[0]), []).append(strip)
    return found


def _piece(strip: Strip) -> str:
    return strip.name.removesuffix(SPARE).partition(" ")[2]


def _label(piece: str, order: ClassOrder) -> str:
    """What the maker calls it; of a piece that the spec has no more only the name is known."""
    solved = order.solved.pieces.get(piece)
    return solved.label if solved else piece.replace("_", " ")


def _told(strips: Sequence[Strip], order: ClassOrder, words: Words) -> str:
    if not strips:
        return ""
    parts = []
    for strip in strips:
        told: dict[str, Value] = {
            "mark": Own(order.cutting.marks[strip.name].removesuffix("*")),
            "piece": Own(_label(_piece(strip), order)),
            "count": strip.count,
            "length": Length(strip.length, "cut"),
            "depth": Length(strip.depth, "cut"),
        }
        parts.append(Part("teacher-later-piece", told))
    return words.said(Things(tuple(parts), "clauses"))
