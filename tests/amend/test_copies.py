"""Copies of a piece that are sewn to one length: the whole is what all of them come to together."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from furbelow.amend.amended import Amended
from furbelow.amend.fresh_guide import fresh_guide
from furbelow.amend.report import as_text
from furbelow.garment.gore import FRONT
from furbelow.order.chain import Planned
from furbelow.order.order import Order

from tests.amend.begun import amended, cut_out, meant, measured
from tests.demos.demos import order

OFF = Fraction(6)


def begun(name: str, size: str) -> tuple[Order, Planned]:
    made = order(name, size)
    garment = meant(made)
    return made, garment


def told(found: Amended) -> list[str]:
    """All but the first part, which says what was measured."""
    guide = fresh_guide(found)
    return [step.text for part in guide.parts[1:] for operation in part.operations for step in operation.steps]


def across_the_tops(garment: Planned, piece: str) -> list[Fraction]:
    """Along the cut top of each copy in turn."""
    solved = garment.rehearsal.solved.pieces[piece]
    if solved.gore is None:
        return [cut_out(garment, piece)] * solved.count
    gore, widths = solved.gore, {width.place: width for width in solved.gore.widths}
    assert gore.round[0] == FRONT
    # Both sides run on beyond the seam line at their slant, then come the margins.
    return [
        widths[place].top - (widths[place].hem - widths[place].top) * gore.above / gore.depth + 2 * gore.ends
        for place in gore.round
    ]


@pytest.mark.parametrize(("name", "size", "piece"), [("foxglove", "C", "panel"), ("peony", "B", "skirt")])
def test_what_one_copy_lacks_all_lack_by_their_share(name: str, size: str, piece: str) -> None:
    made, garment = begun(name, size)
    tops = across_the_tops(garment, piece)
    alike = amended(made, measured("cut", piece, "length", cut_out(garment, piece) - OFF / len(tops)))
    for copy, top in enumerate(tops, 1):
        one = amended(made, replace(measured("cut", piece, "length", top - OFF), copy=copy))
        assert one.findings[0].wanted == top
        assert not one.copies
        assert not any("gores" in done.step.written.technique for done in one.now.rehearsal.run.performed[one.start :])
        assert told(one) == told(alike)


def test_what_one_copy_has_too_little_and_another_too_much_is_nothing() -> None:
    made, garment = begun("foxglove", "C")
    each = cut_out(garment, "panel")
    row = measured("cut", "panel", "length", each - OFF)
    evened = amended(made, replace(row, copy=1), replace(row, copy=2, value=each + OFF))
    assert told(evened) == told(amended(made, measured("cut", "panel", "length", each)))


@pytest.mark.parametrize(
    ("off", "level", "says"),
    [
        (-10, -10, "cut the copies it is sewn to level with it at the bottom edge, to 43 cm"),
        (10, 0, "cut it to 44 cm at its bottom edge, level with"),
    ],
)
def test_copies_are_cut_level_where_one_is_deeper(off: int, level: int, says: str) -> None:
    made, garment = begun("foxglove", "C")
    deep = garment.rehearsal.solved.pieces["panel"].cut_depth
    found = amended(made, replace(measured("cut", "panel", "depth", deep + off), copy=2))
    assert says in as_text(found)
    assert told(found) == told(amended(made, measured("cut", "panel", "depth", deep + level)))
