"""One layer of net worked by hand on paper, rings first and flat first: the bench must book the same lengths.

Upper tier cut 302 x 17 cm, flounce cut 602 x 25 cm, seams 1 cm, trim turned up 0.5 cm (invented figures).
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s3_rehearse.run import Rehearsal

CM = Fraction(10)

HEAD = """\
furbelow: 1
title: One layer
units: metric
rounding: 5 mm
body: {waist_girth: {from: 50 cm, to: 140 cm}}
sizes: {one: {waist_girth: 80 cm}}
worn: {from: waist, over: waist_girth, held by: the test}
materials:
  net: {kind: cloth, fibre: nylon, width: 140 cm, weight: 25 g/m2, ravels: no}
  edging: {kind: trim, width: 15 mm}
pieces:
  upper: {from: net, cut length: 302 cm, cut depth: 17 cm}
  flounce: {from: net, cut length: 602 cm, cut depth: 25 cm}
  band: {from: net, length: 300 cm, depth: 3 cm}
steps:
"""
RINGS_FIRST = """\
  - join ends: {of: upper, seam: 1 cm}
  - join ends: {of: flounce, seam: 1 cm}
  - edge with trim: {edge: flounce.bottom, trim: edging, turn up: 5 mm, overlap: 2 cm}
  - gather: {edge: flounce.top, to: upper.bottom}
  - attach: {edge: flounce.top, to: upper.bottom, seam: 1 cm}
  - neaten: {seam: flounce.top}
  - turn seam: {seam: flounce.top}
"""
FLAT_FIRST = """\
  - edge with trim: {edge: flounce.bottom, trim: edging, turn up: 5 mm, overlap: 2 cm}
  - gather: {edge: flounce.top, to: upper.bottom}
  - attach: {edge: flounce.top, to: upper.bottom, seam: 1 cm}
  - join ends: {of: [upper, flounce], seam: 1 cm}
"""
WAIST = """\
  - join ends: {of: band, seam: 1 cm}
  - attach: {edge: upper.top, to: band.bottom, seam: 1 cm}
"""


def _rehearsal(steps: str) -> Rehearsal:
    spec = read_spec(("layer.yaml", (HEAD + steps + WAIST).encode())).value
    assert spec is not None
    staged = prove(Order(spec, "size one", spec.sizes["one"], {}, Workroom()))
    assert staged.value is not None, staged.faults
    return staged.value


@pytest.mark.parametrize("steps", [RINGS_FIRST, FLAT_FIRST])
def test_the_finished_depths_are_23_and_a_half_and_15_cm(steps: str) -> None:
    rehearsal = _rehearsal(steps)
    assert rehearsal.run.final.depth("flounce") == Fraction("23.5") * CM
    assert rehearsal.run.final.depth("upper") == 15 * CM
    drop = rehearsal.run.drops["flounce"] - rehearsal.run.hangs["upper"]
    assert drop == Fraction("38.5") * CM


def test_rings_first_gathers_600_to_300_cm() -> None:
    rehearsal = _rehearsal(RINGS_FIRST)
    gather = next(done for done in rehearsal.run.performed if done.step.written.technique == "gather")
    edge = gather.after.edge("flounce.top")
    assert (edge.cloth_length, edge.set_length) == (600 * CM, 300 * CM)
    assert edge.ratio == 2


def test_flat_first_gathers_602_to_302_cm() -> None:
    rehearsal = _rehearsal(FLAT_FIRST)
    gather = next(done for done in rehearsal.run.performed if done.step.written.technique == "gather")
    assert gather.drawn is not None
    assert gather.drawn.ratio == Fraction(602, 302)
    assert round(float(gather.drawn.ratio), 3) == 1.993


def test_flat_first_has_one_side_seam_through_both_tiers() -> None:
    rehearsal = _rehearsal(FLAT_FIRST)
    closing = next(done for done in rehearsal.run.performed if done.step.written.technique == "join ends")
    # 38.5 cm of layer and the 1 cm that the waist seam will take.
    assert closing.sewn[0].length == Fraction("39.5") * CM


def test_the_trim_of_a_ring_is_its_length_and_the_overlap() -> None:
    rehearsal = _rehearsal(RINGS_FIRST)
    trim = next(use for done in rehearsal.run.performed for use in done.used)
    assert trim.amount == 602 * CM


def test_the_trim_sewn_flat_has_its_ends_in_the_side_seam() -> None:
    rehearsal = _rehearsal(FLAT_FIRST)
    trim = next(use for done in rehearsal.run.performed for use in done.used)
    assert trim.amount == 602 * CM  # the cut length, and no overlap


def test_the_margin_has_three_plies_or_more() -> None:
    rehearsal = _rehearsal(RINGS_FIRST)
    seam = rehearsal.run.final.seams["flounce.top"]
    assert sum(ply.copies for ply in seam.plies) == 2  # the gathered ply is counted once and lies double by its ratio
    assert rehearsal.run.final.edge("flounce.top").ratio * 1 + 1 == 3
