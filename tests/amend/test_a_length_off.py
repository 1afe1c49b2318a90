"""A length that comes out a little off is worked on with, in every demo: that is what a maker does with it.

Common practice, no source: 15 cm in 4 m may be eased in; a hundredth is well within that.
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.amend.amend import amend
from furbelow.amend.fresh_guide import fresh_guide
from furbelow.amend.report import as_data, as_text
from furbelow.amend.verdict import Remedy

from tests.amend.begun import EASED, EASED_STEPS, PIPED, PIPED_STEPS, amended, meant, measurable, measured
from tests.demos.demos import SPECS, order, spec
from tests.small_guide import small_order


@pytest.mark.parametrize("name", sorted(path.stem for path in SPECS.glob("*.yaml")))
def test_a_hundredth_off_is_taken_up_in_every_demo(name: str) -> None:
    made = order(name, next(iter(spec(name).sizes)))
    garment = meant(made)
    rows = list(measurable(garment))
    assert rows
    for kind, what, size, length in rows:
        for share in (Fraction(99, 100), Fraction(101, 100)):
            found = amended(made, measured(kind, what, size, length * share))
            assert found.findings[0].wanted == length
            assert len(as_data(found)["measured"]) == len(found.findings)
            assert as_text(found).count("\n") > len(found.findings)


def test_what_no_longer_fits_is_told_where_it_is_sewn() -> None:
    made = small_order(PIPED, PIPED_STEPS)
    garment = meant(made)
    ring = next(row for row in measurable(garment) if row[:2] == ("ring", "yoke"))
    found = amended(made, measured("ring", "yoke", "length", ring[3] - 15))
    assert [(one.longer.name, one.shorter.name, one.by) for _, one in found.shared] == [
        ("cover.top", "yoke.bottom", 15),
        ("skirt.top", "yoke.bottom", 15),
    ]
    first, *rest = fresh_guide(found).parts[0].operations[0].steps
    assert "1.5 cm short" in first.text
    assert [("1.5 cm longer" in step.text, bool(step.check)) for step in rest] == [(True, True)] * 2


def test_a_piece_as_it_was_meant_is_cut_as_it_was_meant() -> None:
    """What is drawn on the cloth of other pieces stays: the square of a bias strip is cut already, or will be as before."""
    made = small_order(PIPED, PIPED_STEPS)
    garment = meant(made)
    found = amended(made, measured("cut", "skirt", "depth", garment.rehearsal.solved.pieces["skirt"].cut_depth - 10))
    now, was = found.now.rehearsal.solved.pieces, garment.rehearsal.solved.pieces
    assert {name: piece.blank for name, piece in now.items() if name != "skirt"} == {
        name: piece.blank for name, piece in was.items() if name != "skirt"
    }
    assert "finished length" in as_text(found)


def test_a_ring_that_flares_is_named_by_its_edge() -> None:
    made = order("primrose", next(iter(spec("primrose").sizes)))
    garment = meant(made)
    top = next(row for row in measurable(garment) if row[0] == "ring" and row[1].endswith(".top"))
    piece = top[1].partition(".")[0]
    staged = amend(made, [measured("ring", piece, *top[2:])])
    assert staged.value is None
    (fault,) = staged.faults
    assert fault.code == "FB711"
    assert fault.help == f"write `ring: {piece}.top` or `ring: {piece}.bottom`"
    wide = next(row for row in measurable(garment) if row[1] == f"{piece}.bottom")
    now = amended(made, measured(*wide[:3], wide[3] + 12)).now.rehearsal.run
    closed, was = (
        next(done for done in run.performed if done.after.cloths[piece].ring) for run in (now, garment.rehearsal.run)
    )
    assert closed.after.measured(closed.after.edge(f"{piece}.bottom")) == pytest.approx(wide[3] + 12)
    assert closed.after.edge(f"{piece}.top").set_length == was.after.edge(f"{piece}.top").set_length


@pytest.mark.parametrize(("off", "remedy"), [(-20, Remedy.PLEATS_OUT), (20, Remedy.PLEATS_IN)])
def test_pleats_are_never_eased(off: int, remedy: Remedy) -> None:
    made = order("bindweed", next(iter(spec("bindweed").sizes)))
    garment = meant(made)
    (pleated,) = [row for row in measurable(garment) if row[0] == "edge"]
    finding = amended(made, measured(*pleated[:3], pleated[3] + off)).findings[0]
    assert finding.verdict is not None
    assert finding.verdict.remedy is remedy


def test_what_lies_on_a_part_of_an_edge_is_not_shared_out_along_it() -> None:
    """Pockets and ties: a skirt that is cut shorter says nothing of them."""
    made = order("bindweed", "B")
    garment = meant(made)
    short = garment.rehearsal.solved.pieces["panel"].cut_length - 15
    assert amended(made, measured("cut", "panel", "length", short)).shared == ()


def test_an_edge_that_was_to_be_eased_and_came_out_short_is_sewn_as_it_is() -> None:
    made = small_order(EASED, EASED_STEPS)
    garment = meant(made)
    wanted = next(row for row in measurable(garment) if row[:2] == ("ring", "skirt"))
    found = amended(made, measured("ring", "skirt", "length", wanted[3] - 30))
    assert [(one.longer.name, one.shorter.name, one.by) for _, one in found.shared] == [
        ("yoke.bottom", "skirt.top", 10)
    ]


@pytest.mark.parametrize(
    ("off", "remedy", "says"),
    [
        (-8, Remedy.ROW_OUT, "let the thread of the row out by 8 mm"),
        (8, Remedy.ROW_IN, "pull the thread of the row closer"),
    ],
)
def test_an_eased_edge_is_drawn_to_its_length_by_its_thread(off: int, remedy: Remedy, says: str) -> None:
    made = small_order(EASED, EASED_STEPS)
    garment = meant(made)
    (eased,) = [row for row in measurable(garment) if row[0] == "edge" and row[1] == "skirt.top"]
    found = amended(made, measured(*eased[:3], eased[3] + off))
    assert [finding.verdict and finding.verdict.remedy for finding in found.findings] == [remedy]
    assert says in as_text(found)
    (step,) = fresh_guide(found).parts[0].operations[0].steps
    assert step.check


def test_an_edge_eased_to_a_length_that_is_no_longer_wanted_is_told_too() -> None:
    made = small_order(EASED, EASED_STEPS)
    garment = meant(made)
    rows = list(measurable(garment))
    yoke = next(row for row in rows if row[:2] == ("ring", "yoke"))
    eased = next(row for row in rows if row[:2] == ("edge", "skirt.top"))
    found = amended(made, measured(*yoke[:3], yoke[3] - 10), measured(*eased))
    (finding,) = [each for each in found.findings if each.measured.kind == "edge"]
    assert finding.verdict is not None
    assert (finding.wanted, finding.verdict.remedy) == (eased[3] - 10, Remedy.ROW_IN)
