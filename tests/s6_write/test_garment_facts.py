"""What the guide says of the garment as a whole, in the units of the workroom."""

from __future__ import annotations

from furbelow.garment.phrasing import Phrasing
from furbelow.s6_write.guide.garment_facts import elastic_reason, garment_facts
from furbelow.s6_write.words.words import Words

from tests.demos.demos import guide
from tests.s3_rehearse.test_stepped_layers import _skirt as stepped
from tests.s3_rehearse.test_weight import run_of
from tests.techniques.small import Worked, sound
from tests.techniques.test_level_waist import PIECES, STEPS


def _facts(worked: Worked) -> dict[str, tuple[str, str]]:
    run = run_of(worked)
    return {
        fact.label: (fact.value, fact.reason)
        for fact in garment_facts(run, Words("en", Phrasing(run.solved, run.room)))
    }


def test_a_demo_says_its_hems_its_fullness_its_net_and_its_weight() -> None:
    facts = {fact.label: fact.value for fact in guide("larkspur", "M").facts}
    assert facts["round the hem"] == "600 cm"
    assert facts["round all 3 hems"] == "13.56 m"
    assert facts["fullness from waist to hem"] == "3.85"
    assert facts["net in gathered strips"] == "18.08 m"
    assert facts["weight"] == "about 223 g"


def test_inch_rooms_read_yards_and_ounces() -> None:
    facts = {fact.label: (fact.value, fact.reason) for fact in guide("marigold", "12").facts}
    assert facts["weight"] == ("about 4.6 oz (130 g)", "the cloth as cut, without knitted waistband elastic and thread")
    assert facts["lawn in gathered strips"][0] == "4 3/4 yd"


def test_layers_that_step_each_say_with_where_each_ends() -> None:
    facts = _facts(stepped(50, 48, 36, 10))
    assert facts["finished length, top to hem"][0] == "53 cm"
    assert facts["length of the middle"] == ("51 cm", "it ends 2 cm above the hem")
    assert facts["length of the frill"] == ("49 cm", "it ends 4 cm above the hem")


def test_a_levelled_waist_gives_three_lengths() -> None:
    facts = _facts(sound(PIECES, STEPS))
    assert facts["finished length, top to hem"][0] == "56 cm"
    assert facts["length at the sides"] == ("55 cm", "1 cm is taken up at the waist, so that the hem hangs level")
    assert facts["length behind"] == ("53 cm", "3 cm is taken up at the waist, so that the hem hangs level")
    assert "length in front" not in facts
    assert "length behind" not in _facts(stepped(50, 48, 36, 10))


def test_the_elastic_says_how_much_shorter_it_is_and_what_it_carries() -> None:
    run = run_of(sound(PIECES, STEPS))
    casing = next(iter(run.final.casings.values()))
    # By hand: upper 2 x 1.62 x 0.22 x 25, flounce 2 x 2.42 x 0.34 x 25, lining 1.22 x 0.525 x 80, band 1.22 x 0.08 x 80.
    grams = 2 * 1.62 * 0.22 * 25 + 2 * 2.42 * 0.34 * 25 + 1.22 * 0.525 * 80 + 1.22 * 0.08 * 80
    assert (
        elastic_reason(run, casing, Words("en", Phrasing(run.solved, run.room)))
        == f"10 cm shorter than the waist, to carry about {grams:.0f} g"
    )
