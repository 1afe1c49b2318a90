"""Every figure of the demo garments, and what a drawn figure says of itself: its words and where they stand."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache
from itertools import accumulate
from pathlib import Path
from xml.etree import ElementTree

from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed, Picture
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import Planned, plan, prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.body import size_body
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures import cutting_figures, figures_for, how_to_read, overview
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.piece_view import piece_view
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words as GuideWords
from furbelow.techniques import technique_of

from tests.said import said
from tests.techniques.small import spec_text
from tests.techniques.test_every_technique_in_a_guide import GARMENTS, OWN, SUPPLIES

SPECS = Path(__file__).parents[3] / "specs"
HOME = Workroom()
WARDROBE = Workroom(
    neaten_with="overlocker", gather_with="pleating attachment", hold_with="clips", units="inches", fold_cloth=False
)
PINKING = Workroom(neaten_with="pinking shears", gather_with="two rows by hand", units="metric")
ROOMS = {"home": HOME, "wardrobe": WARDROBE, "pinking": PINKING}


def demos() -> list[str]:
    return sorted(path.stem for path in SPECS.glob("*.yaml"))


@cache
def _spec(demo: str):  # type: ignore[no-untyped-def]
    read = read_spec(SPECS / f"{demo}.yaml")
    assert read.value is not None
    return read.value


def sizes(demo: str) -> list[str]:
    return list(_spec(demo).sizes)


@cache
def planned(demo: str, size: str, room: str = "home") -> Planned:
    spec = _spec(demo)
    proved = prove(Order(spec, f"size {size}", spec.sizes[size], {}, ROOMS[room]))
    assert proved.value is not None, proved.faults
    found = plan(proved.value).value
    assert found is not None
    return found


def drawn_of(done: Performed, run: Run, words: GuideWords, first: int) -> tuple[Figure, ...]:
    """The drawings of a step, and its pieces before and after even where a guide leaves them out for others."""
    drawn = figures_for(done, run, words, first)
    pieces = (
        None
        if any(figure.key.endswith("-piece") for figure in drawn)
        else piece_view(done, run, words, Numbers((), None))
    )
    if not drawn or pieces is None or Picture.PIECES not in technique_of(done.step.written).pictures:
        return drawn
    return (*drawn, replace(pieces, key=f"step-{done.step.written.index + 1}-piece"))


@cache
def figures(demo: str, size: str, room: str = "home") -> tuple[Figure, ...]:
    """All figures of one guide, with callouts numbered as a guide would number them."""
    found = planned(demo, size, room)
    run = found.rehearsal.run
    say = Phrasing(run.solved, run.room, found.cutting.joins, found.cutting.lengths)
    drawn = [
        *how_to_read(GuideWords("en", say)),
        overview(run, GuideWords("en", say)),
        *(
            figure
            for name in found.cutting.sheets
            for figure in cutting_figures(found.cutting, run.solved, GuideWords("en", say), name)
        ),
    ]
    number = 97  # from two digits to three
    for done in run.performed:
        drawn += drawn_of(done, run, GuideWords("en", say), number)
        number += len(said(done, say).actions)
    return tuple(drawn)


def every_guide() -> Iterator[tuple[str, str, str]]:
    """Every demo in every size, and one size of each in every workroom."""
    for demo in demos():
        for index, size in enumerate(sizes(demo)):
            for room in ROOMS if index == 1 else ("home",):
                yield demo, size, room


@cache
def figures_of_every_technique() -> tuple[tuple[str, Figure], ...]:
    """The steps' figures of the garments that use every technique between them."""
    drawn = []
    for garment, (pieces, steps) in GARMENTS.items():
        text = spec_text(pieces, steps, own=OWN, materials=SUPPLIES).replace("rounding: 0 mm", "rounding: 5 mm")
        spec = read_spec(("garment.yaml", text.encode())).value
        assert spec is not None
        body = size_body(spec, "M").value
        assert body is not None
        proved = prove(Order(spec, "size M", body, {}, Workroom(neaten_with="overlocker"))).value
        assert proved is not None
        found = plan(proved).value
        assert found is not None
        run = found.rehearsal.run
        say = Phrasing(run.solved, run.room, found.cutting.joins, found.cutting.lengths)
        for done in run.performed:
            drawn += [(f"{garment} {figure.key}", figure) for figure in drawn_of(done, run, GuideWords("en", say), 97)]
    return tuple(drawn)


def every_figure() -> Iterator[tuple[str, Figure]]:
    yield from figures_of_every_technique()
    for demo, size, room in every_guide():
        for figure in figures(demo, size, room):
            yield f"{demo} {size} {room} {figure.key}", figure


@dataclass(frozen=True)
class Words:
    """A line of words and the room it takes, by its own attributes."""

    text: str
    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other: Words) -> bool:
        return (
            self.left < other.right and other.left < self.right and self.top < other.bottom and other.top < self.bottom
        )


@cache
def root(figure: Figure) -> ElementTree.Element:
    return ElementTree.fromstring(figure.svg)


def view(figure: Figure) -> tuple[float, float, float, float]:
    """Left, top, right and bottom of the sheet."""
    left, top, width, height = (float(part) for part in root(figure).attrib["viewBox"].split())
    return left, top, left + width, top + height


@cache
def words(figure: Figure) -> list[Words]:
    """Every line of words; a line of Source Sans 3 reaches 0.8 of its size up and 0.25 down, accents aside."""
    found = []
    for text in root(figure).iter("{http://www.w3.org/2000/svg}text"):
        x, y, length, size = (float(text.attrib[name]) for name in ("x", "y", "textLength", "font-size"))
        found.append(Words(text.text or "", x, y - 0.8 * size, x + length, y + 0.25 * size))
    return found


def points(figure: Figure) -> Iterator[tuple[float, float]]:
    """Every place that a path goes through."""
    for path in root(figure).iter("{http://www.w3.org/2000/svg}path"):
        x = y = 0.0
        for command, rest in re.findall(r"([MlLaz])([^MlLaz]*)", path.attrib["d"]):
            numbers = [float(part) for part in re.findall(r"-?\d+", rest)]
            if command == "M":
                x, y = numbers
                yield x, y
            elif command == "l":
                xs, ys = list(accumulate(numbers[::2], initial=x)), list(accumulate(numbers[1::2], initial=y))
                yield from zip(xs[1:], ys[1:], strict=True)
                x, y = xs[-1], ys[-1]
            elif command == "a":
                x, y = x + numbers[5], y + numbers[6]
                yield x, y
