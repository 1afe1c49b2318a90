"""The sweep of a hem and the fullness from waist to hem against handbooks and instructions."""

from __future__ import annotations

from fractions import Fraction

from furbelow.s3_rehearse.volume import Volume, volume_of

from tests.s3_rehearse.test_weight import run_of
from tests.techniques.small import INCH, sound

YARD = 36 * INCH

WAIST = """- folded casing: {edge: top.top, depth: 1 in, turn under: 1/4 in, gap: 2 in}
- insert elastic: {elastic: elastic, into: top.top, length: 27 in, overlap: 1 in}
- close gap: {of: top.top}"""


def _tiers(*lengths: str) -> Volume:
    """A petticoat of net tiers of these lengths, each gathered to the one above, rehearsed to the end."""
    tiers = ["top", "flounce", "lower"][: len(lengths)]
    pieces = "\n".join(
        f"{tier}: {{from: net, length: {length}, depth: 10 in}}" for tier, length in zip(tiers, lengths, strict=True)
    )
    steps = "\n".join(f"- join ends: {{of: {tier}, seam: 1/2 in}}" for tier in tiers)
    for above, tier in zip(tiers, tiers[1:], strict=False):
        steps += f"\n- gather: {{edge: {tier}.top, to: {above}.bottom}}"
        steps += f"\n- attach: {{edge: {tier}.top, to: {above}.bottom, seam: 1/2 in}}"
    return volume_of(run_of(sound(pieces, f"{steps}\n{WAIST}", units="inches")))


def test_flounces_of_4_thirds_and_3_halves_make_a_petticoat_twice_as_wide_at_the_hem() -> None:
    """Instructions for a petticoat of 1907, reprinted at tudorlinks.com: 4/3 x 3/2 is 2, exactly."""
    volume = _tiers("48 in", "top.length * 4/3", "flounce.length * 3/2")
    assert volume.fullness == 2
    assert volume.longest.round == 96 * INCH


def test_the_bottom_of_an_underskirt_of_1911_is_within_its_range() -> None:
    """C. C. Ingalls, Text-Book on Domestic Art, 1911: flounce 1 1/2 times its line, bottom 2 1/2 to 3 yd.

    The line of 63 in is ours: it lies in the middle of what the two statements leave, 60 in to 72 in.
    """
    volume = _tiers("63 in", "top.length * 1 1/2")
    assert Fraction(5, 2) * YARD <= volume.longest.round <= 3 * YARD
    assert volume.fullness == Fraction(3, 2)


def test_a_ruffle_of_1916_is_half_as_wide_again_as_its_skirt() -> None:
    """Kinne and Cooley, Clothing and Health, 1916, lesson 12: ruffle 1 1/2 times the skirt."""
    assert _tiers("2 yd", "top.length * 3/2").fullness == Fraction(3, 2)
