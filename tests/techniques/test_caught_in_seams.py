"""A ruffle and a piping that a seam catches: how they are laid, what they take, and the seam that must follow."""

from __future__ import annotations

from fractions import Fraction
from math import pi

import pytest
from furbelow.garment.bench import State
from furbelow.garment.levels import levels_of
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec

from tests.techniques.small import refused, sound, spec_text, work

PIECES = """upper: {from: lawn, length: 120 cm, depth: 20 cm}
lower: {from: lawn, length: 120 cm, depth: 40 cm}
ruffle: {from: lawn, length: 200 cm, depth: 8 cm, piecing: {seam: 1 cm, shortest: 30 cm, most joins: 2}}
band: {from: lawn, length: 120 cm, depth: 25 mm}"""
RUFFLE = """- neaten: {seam: ruffle.joins}
- french seam: {of: ruffle}
- rolled hem: {edge: ruffle.bottom}
- gather: {edge: ruffle.top, length: 120 cm}"""
TIERS = """- french seam: {of: upper}
- french seam: {of: lower}"""
CAUGHT = "- catch in: {strip: ruffle.top, in: upper.bottom, seam: 1 cm}"
REST = """- attach: {edge: lower.top, to: upper.bottom, seam: 1 cm}
- neaten: {seam: lower.top}
- narrow hem: {edge: lower.bottom}
- join ends: {of: band, seam: 1 cm}
- band casing: {band: band, to: upper.top}
- insert elastic: {elastic: elastic, into: band, length: 68 cm}
- close gap: {of: band}"""


def whole(*steps: str) -> str:
    return "\n".join(steps)


def test_a_ruffle_hangs_from_the_seam_that_catches_it() -> None:
    worked = sound(PIECES, whole(RUFFLE, TIERS, CAUGHT, REST))
    levels = levels_of(worked.bench)
    # The band is 25 mm deep and the upper tier 20 cm: there hang both the lower tier and the ruffle.
    assert levels.tops["ruffle"] == levels.tops["lower"] == 25 + 200
    assert levels.bottoms["ruffle"] == 25 + 200 + 80
    done = next(done for done in worked.performed if done.step.written.technique == "catch in")
    # It is cut 8 cm deep, the hem and the seam besides; one row of the longest stitch, 3 mm outside the seam to come.
    assert [row.length for row in done.sewn] == [1200]
    assert worked.bench.edge("ruffle.top").state is State.SEWN
    words = worked.words()
    assert "Lay the ruffle on the upper, right sides together, its hem towards the middle of the upper" in words
    assert "Sew 7 mm from the edge with the longest stitch, 120 cm all round. The seam follows 3 mm further in" in words
    assert "it then comes 8 cm out of it" in words


def test_on_the_upper_edge_of_what_it_falls_over_it_lies_right_side_up() -> None:
    words = sound(PIECES, whole(RUFFLE, TIERS, CAUGHT.replace("upper.bottom", "lower.top"), REST)).words()
    assert "Lay the ruffle on the lower, both right sides up" in words


@pytest.mark.parametrize(
    ("step", "said"),
    [
        (
            CAUGHT.replace("seam: 1 cm", "seam: 8 mm"),
            "8 mm from the edge and the seam in `upper.bottom` is 1 cm, 2 mm off",
        ),
        (CAUGHT.replace("upper.bottom", "lower.bottom"), "0 later steps sew `lower.bottom`"),
    ],
)
def test_the_seam_follows_with_the_same_allowance(step: str, said: str) -> None:
    without = REST.replace("- narrow hem: {edge: lower.bottom}\n", "") if "lower.bottom" in step else REST
    faults = [fault for fault in work(PIECES, whole(RUFFLE, TIERS, step, without)).faults if fault.code == "FB371"]
    assert len(faults) == 1
    assert said in faults[0].headline


def test_a_strip_is_as_long_as_its_edge_and_of_its_form() -> None:
    long = RUFFLE.replace("length: 120 cm", "length: 140 cm")
    assert "20 cm too long" in refused("FB401", PIECES, whole(long, TIERS, CAUGHT, REST)).headline
    flat = RUFFLE.replace("- french seam: {of: ruffle}\n", "")
    assert "FB304" in work(PIECES, whole(flat, TIERS, CAUGHT, REST)).codes


# --- piping ---

COVER = "cover: {from: lawn, length: 120 cm, depth: 16 mm}"
PIPED = PIECES.replace(PIECES.splitlines()[2], COVER)
CORD = "- piping: {strip: cover, cord: cord, in: upper.bottom, seam: 1 cm}"
BIAS = "- bias strip: {piece: cover}\n- join ends: {of: cover}"


def test_a_strip_goes_round_its_cord_with_a_seam_on_both_sides() -> None:
    """Geometry: the cord of 5 mm is 15.7 mm round, and with two seams of 1 cm the strip is cut 35.7 mm wide or a little more."""
    worked = sound(PIPED, whole(BIAS, TIERS, CORD, REST))
    assert worked.solved.pieces["cover"].cut_depth == 16 + 20
    assert abs(Fraction(22, 7) * 5 - Fraction(pi * 5)) < Fraction(1, 100)
    done = next(done for done in worked.performed if done.step.written.technique == "piping")
    assert [(use.material, use.amount) for use in done.used] == [("cord", 1200)]
    words = worked.words()
    assert "Sew close beside the cord, 120 cm all round. Cut the ends of the cord so that they meet" in words
    assert "sew a thread's width nearer to the cord" in words


def test_a_strip_too_narrow_for_its_cord_is_refused_and_one_too_wide_is_told() -> None:
    narrow = refused("FB336", PIPED.replace("16 mm", "12 mm"), whole(BIAS, TIERS, CORD, REST))
    assert "shows 1.2 cm and the cord is 1.6 cm round" in narrow.headline
    wide = sound(PIPED.replace("16 mm", "25 mm"), whole(BIAS, TIERS, CORD, REST))
    assert "FB336" in [fault.code for fault in wide.warnings]


def test_a_piping_and_a_ruffle_may_lie_in_one_seam() -> None:
    pieces = f"{PIECES}\n{COVER}"
    sound(pieces, whole(RUFFLE, BIAS, TIERS, CORD, CAUGHT, REST))


def test_a_piping_wants_its_seam() -> None:
    steps = whole(
        BIAS,
        TIERS,
        CORD.replace("upper.bottom", "lower.bottom"),
        REST.replace("- narrow hem: {edge: lower.bottom}\n", ""),
    )
    assert "FB371" in work(PIPED, steps).codes


def test_a_raw_strip_in_a_seam_that_needs_no_neatening_is_refused() -> None:
    net = PIECES.replace("upper: {from: lawn", "upper: {from: net").replace("lower: {from: lawn", "lower: {from: net")
    steps = whole(RUFFLE, TIERS, CAUGHT, REST.replace("- neaten: {seam: lower.top}\n", ""))
    fault = refused("FB335", net, steps)
    assert "- neaten: {edge: ruffle.top}" in (fault.help or "")


@pytest.mark.parametrize("rounding", ["0 mm", "1 mm", "5 mm", "1/8 in", "1/4 in", "1/2 in"])
@pytest.mark.parametrize(("deep", "told"), [(16, False), (18, False), (25, True), (30, True)])
def test_a_strip_is_too_wide_for_its_cord_whatever_the_sizes_are_rounded_to(
    rounding: str, deep: int, told: bool
) -> None:
    """A cord of 5 mm is 15.7 mm round; 2 cm go into the seams. A strip that the rounding makes wider is no fault of its maker."""
    text = spec_text(PIPED.replace("16 mm", f"{deep} mm"), whole(BIAS, TIERS, CORD, REST)).replace(
        "rounding: 0 mm", f"rounding: {rounding}"
    )
    read = read_spec(("small.yaml", text.encode())).value
    assert read is not None
    codes = [fault.code for fault in prove(Order(read, "M", read.sizes["M"], {}, Workroom())).faults]
    assert ("FB336" in codes) == told or (not told and "FB401" in codes)


@pytest.mark.parametrize("curved", [True, False])
@pytest.mark.parametrize("bias", [True, False])
@pytest.mark.parametrize("strip", ["piping", "binding strip"])
def test_a_straight_strip_on_a_curve_warns(strip: str, bias: bool, curved: bool) -> None:
    """A ring of 120 cm that is 176 cm round 28 cm lower grows by 2 cm in each: so it does over the depth of the strip."""
    hem = 176 if curved else 120
    pieces = f"""upper: {{from: lawn, length: 120 cm, depth: 28 cm}}
lower: {{from: lawn, length: {hem} cm, depth: 40 cm}}
cover: {{from: lawn, length: {hem} cm, depth: 16 mm}}"""
    steps = ["- ring cut: {piece: upper, hem: 176 cm}"] if curved else []
    steps += ["- bias strip: {piece: cover}"] if bias else []
    steps += ["- join ends: {of: [upper]}", "- join ends: {of: [cover]}"]
    if strip == "piping":
        steps += ["- join ends: {of: [lower]}", "- piping: {strip: cover, cord: cord, in: upper.bottom}"]
        steps += ["- attach: {edge: lower.top, to: upper.bottom}"]
    else:
        steps += ["- binding strip: {strip: cover, edge: upper.bottom, seam: 8 mm, turn under: 6 mm}"]
    told = [fault for fault in work(pieces, whole(*steps)).warnings if fault.code == "FB422"]
    assert len(told) == (curved and not bias)
    assert all("- bias strip: {piece: cover}" in (fault.help or "") for fault in told)
