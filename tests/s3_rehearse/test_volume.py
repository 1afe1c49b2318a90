"""The sweep of the hems, all of them together, and how full the garment is from waist to hem."""

from __future__ import annotations

from fractions import Fraction

from furbelow.order.chain import prove
from furbelow.s3_rehearse.volume import Volume, volume_of

from tests.demos.demos import order
from tests.s3_rehearse.test_weight import run_of
from tests.techniques.small import sound


def _demo(name: str, size: str) -> Volume:
    rehearsal = prove(order(name, size)).value
    assert rehearsal is not None
    return volume_of(rehearsal.run)


def test_layers_of_one_piece_and_a_lining_are_each_a_hem() -> None:
    volume = _demo("larkspur", "M")
    assert [(hem.piece, hem.copies, hem.round) for hem in volume.hems] == [
        ("flounce", 2, Fraction(6000)),
        ("lining", 1, Fraction(1560)),
    ]
    assert volume.layers == 3
    assert volume.together == 2 * 6000 + 1560
    assert volume.longest.piece == "flounce"


def test_the_fullness_is_that_of_all_tiers_multiplied() -> None:
    volume = _demo("marigold", "12")
    # 1.5 for each of two tiers.
    assert volume.fullness == Fraction(9, 4)
    # The gathers at the waist count too: 300 cm of upper tier in 156 cm of band, twice that in the flounce.
    assert _demo("larkspur", "M").fullness == Fraction(300, 156) * 2


def test_two_panels_in_one_ring_are_one_hem() -> None:
    volume = volume_of(
        run_of(
            sound(
                "panel: {from: net, count: 2, length: 60 cm, depth: 60 cm}",
                """- join ends: {of: panel, seam: 1 cm, into: one ring}
- folded casing: {edge: panel.top, depth: 25 mm, turn under: 5 mm, gap: 5 cm}
- insert elastic: {elastic: elastic, into: panel.top, length: 68 cm, overlap: 2 cm}
- close gap: {of: panel.top}""",
            )
        )
    )
    assert [(hem.copies, hem.round) for hem in volume.hems] == [(1, Fraction(1200))]
    assert volume.reasons["panel.hem_round"].formula == "2 * panel.length"
    assert volume.fullness == 1
    assert volume.strips == {}


def test_the_hem_of_a_ring_is_its_longer_arc() -> None:
    volume = volume_of(
        run_of(
            sound(
                "skirt: {from: net, length: 118 cm, depth: 60 cm}\nflounce: {from: net, length: 118 cm, depth: 25 cm}",
                """- join ends: {of: skirt, seam: 1 cm}
- ring cut: {piece: flounce, hem: 168 cm}
- join ends: {of: flounce, seam: 1 cm}
- attach: {edge: flounce.top, to: skirt.bottom, seam: 1 cm}
- folded casing: {edge: skirt.top, depth: 25 mm, turn under: 5 mm, gap: 5 cm}
- insert elastic: {elastic: elastic, into: skirt.top, length: 68 cm, overlap: 2 cm}
- close gap: {of: skirt.top}""",
            )
        )
    )
    assert [(hem.piece, hem.round) for hem in volume.hems] == [("flounce", Fraction(1680))]
    assert volume.reasons["flounce.hem_round"].inputs == ()


def test_gathered_strips_are_counted_by_cloth_as_they_are_cut() -> None:
    assert _demo("larkspur", "M").strips == {"net": ((2, Fraction(3020)), (2, Fraction(6020)))}
    assert set(_demo("foxglove", "C").strips) == {"batiste"}
