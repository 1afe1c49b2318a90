"""What shrinks is washed before anything is measured, each trim once; common practice, no source."""

from __future__ import annotations

from furbelow.s6_write.guide.guide import GuideStep

from tests.demos.demos import cutting_of
from tests.small_guide import small_guide, texts_of
from tests.techniques.test_every_technique_in_a_guide import GARMENTS


def _washing(steps: tuple[GuideStep, ...]) -> list[GuideStep]:
    return [step for step in steps if step.text.startswith("Wash and dry the ")]


def test_all_trims_are_washed_in_the_first_step_and_bones_are_not() -> None:
    guide = small_guide(*GARMENTS["a skirt with a placket"])
    (step,) = _washing(cutting_of(guide))
    assert step.number == 1
    for trim in ("seam tape", "beading lace", "satin ribbon"):
        assert step.text.count(trim) == 1
    assert "boning" not in step.text
    assert not any(text.startswith("Wash") for text in texts_of(guide))


def test_a_garment_without_trims_washes_none() -> None:
    pieces, steps = GARMENTS["a circular skirt on a cord"]
    assert [step.text.partition(" as ")[0] for step in _washing(cutting_of(small_guide(pieces, steps)))] == [
        "Wash and dry the cotton cord"
    ]
    plain = "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.bottom}\n- folded casing: {edge: skirt.top, depth: 25 mm}"
    elastic = "- insert elastic: {elastic: elastic, into: skirt.top, length: 70 cm}\n- close gap: {of: skirt.top}"
    guide = small_guide("skirt: {from: lawn, length: 120 cm, depth: 50 cm}", f"{plain}\n{elastic}")
    assert _washing(cutting_of(guide)) == []
