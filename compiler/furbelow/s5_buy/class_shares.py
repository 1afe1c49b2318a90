"""What of a cutting for all is one garment's: who sews it is told of her own pieces alone."""

from __future__ import annotations

from collections.abc import Mapping

from furbelow.garment.solved import SolvedPiece
from furbelow.named import NamedTuple
from furbelow.s4_cut.cut import Cutting, Sheet
from furbelow.s4_cut.plan import Section
from furbelow.s5_buy.class_cutting import marked, renamed


class Shares:
    """A cutting for all, looked through once to tell each number's share: a share takes no longer in a large class."""

    def __init__(self, cutting: Cutting) -> None:
        self._marks, self._selvedges = cutting.marks, cutting.selvedges
        self._sheets = [(sheets[0], _places(sheets[0])) for sheets in cutting.sheets.values()]

    def of(self, number: int, pieces: Mapping[str, SolvedPiece]) -> Cutting:
        """What is one number's, as if it were all: her segments, with her marks."""
        own = {marked(number, piece): piece for piece in pieces}
        marks = {piece: self._marks[name] for name, piece in own.items()}
        selvedges = {piece: self._selvedges[name] for name, piece in own.items() if name in self._selvedges}
        sheets: dict[str, tuple[Sheet, ...]] = {}
        for sheet, places in self._sheets:
            at = [places[name] for name in own if name in places]
            if not at:
                continue
            strips = tuple(
                sheet.strips[n]._replace(name=own[sheet.strips[n].name], wearer=None)
                for n in sorted(n for place in at for n in place.strips)
            )
            sections = (sheet.plan.sections[n] for n in sorted({n for place in at for n in place.sections}))
            plan = sheet.plan._replace(sections=tuple(_of_one(section, own) for section in sections))
            cloth = pieces[strips[0].name].piece.cloth.text
            sheets[cloth] = (sheet._replace(material=renamed(sheet.material, cloth), strips=strips, plan=plan),)
        return Cutting(sheets, marks, selvedges)


class _Place(NamedTuple):
    """Which strips and which sections of a sheet are a piece's, by their places in it."""

    strips: list[int]
    sections: list[int]


def _places(sheet: Sheet) -> dict[str, _Place]:
    """By the names of the pieces."""
    places: dict[str, _Place] = {}
    for at, strip in enumerate(sheet.strips):
        places.setdefault(strip.name, _Place([], [])).strips.append(at)
    for at, section in enumerate(sheet.plan.sections):
        cut = [each.strip for lane in section.lanes for each in lane.segments]
        for name in {*cut, *(each.strip for each in section.panels)}:
            places.setdefault(name, _Place([], [])).sections.append(at)
    return places


def _of_one(section: Section, own: Mapping[str, str]) -> Section:
    lanes = (
        lane._replace(
            segments=tuple(
                each._replace(strip=own[each.strip], wearer=None) for each in lane.segments if each.strip in own
            ),
        )
        for lane in section.lanes
    )
    panels = tuple(each._replace(strip=own[each.strip], wearer=None) for each in section.panels if each.strip in own)
    return section._replace(lanes=tuple(lane for lane in lanes if lane.segments), panels=panels)
