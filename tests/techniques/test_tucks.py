"""Tucks: each takes twice its depth, and all lie on cloth that is there."""

from __future__ import annotations

from fractions import Fraction

from furbelow.techniques.tucks import fold_lines

from tests.techniques.small import refused, sound

FLOUNCE = "flounce: {from: lawn, length: 200 cm, depth: 30 cm}"
RING = "- french seam: {of: flounce}\n- narrow hem: {edge: flounce.top}\n- narrow hem: {edge: flounce.bottom}"


def test_three_tucks_take_six_depths() -> None:
    worked = sound(FLOUNCE, f"{RING}\n- tucks: {{edge: flounce.bottom, depth: 1 cm, count: 3}}")
    assert worked.solved.pieces["flounce"].cut_depth == 300 + 2 * 15 + 60
    assert worked.bench.depth("flounce") == 300
    assert [row.length for row in worked.performed[-1].sewn] == [2000] * 3


def test_tucks_come_before_or_after_the_hem_alike() -> None:
    first = sound(FLOUNCE, f"- tucks: {{edge: flounce.bottom}}\n{RING}")
    last = sound(FLOUNCE, f"{RING}\n- tucks: {{edge: flounce.bottom}}")
    assert first.solved.pieces["flounce"].cut_depth == last.solved.pieces["flounce"].cut_depth


def test_fold_lines_let_the_tucks_lie_where_the_spec_says() -> None:
    depth, space, edge = Fraction(10), Fraction(4), Fraction(30)
    lines = fold_lines(depth, 4, space, edge)
    # Sewn, a fold lies a tuck's depth below its stitching; each tuck below took 2 x depth of the flat cloth.
    stitching = [line - depth - 2 * depth * number for number, line in enumerate(lines)]
    folds = [line - depth for line in stitching]
    assert folds[0] == edge
    assert [above - below for below, above in zip(stitching, folds[1:], strict=False)] == [space] * 3


def test_the_guide_names_every_fold_line() -> None:
    words = sound(
        FLOUNCE, f"{RING}\n- tucks: {{edge: flounce.bottom, depth: 1 cm, space: 5 mm, from edge: 3 cm}}"
    ).words()
    assert "Mark a fold line 5 cm above the bottom edge of the flounce" in words
    assert "Mark fold line 2, 8.5 cm above the edge, measured on the flat cloth." in words
    assert "their stitch lines 1.5 cm apart" in words


def test_a_number_worked_out_later_is_refused() -> None:
    fault = refused(
        "FB341", "flounce: {from: net, length: 200 cm, depth: 30 cm}", "- tucks: {edge: flounce.bottom, count: 1 + 2}"
    )
    assert "`1 + 2`" in fault.headline


def test_no_tucks_are_refused() -> None:
    refused("FB341", "flounce: {from: net, length: 200 cm, depth: 30 cm}", "- tucks: {edge: flounce.bottom, count: 0}")


def test_more_tucks_than_cloth_are_refused_with_the_sum() -> None:
    fault = refused(
        "FB312",
        "flounce: {from: net, length: 200 cm, cut depth: 30 cm}",
        "- tucks: {edge: flounce.bottom, depth: 2 cm, count: 5, space: 1 cm}",
    )
    assert fault.headline == "5 tucks leave 10 cm of `flounce` and lie on 17 cm, 7 cm more than there is"
    assert fault.notes == ("30 cm - 10 x 2 cm = 10 cm",)


def test_gathered_cloth_is_not_tucked() -> None:
    refused("FB333", FLOUNCE, "- gather: {edge: flounce.bottom, length: 100 cm}\n- tucks: {edge: flounce.bottom}")


def test_only_bottom_edges_are_measured_from() -> None:
    refused("FB340", FLOUNCE, "- tucks: {edge: flounce.top}")
