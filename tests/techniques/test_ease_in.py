"""An edge that is a little too long: eased in up to 15 cm in 4 m (common practice, no source), gathered beyond."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.diagnose.fault import Severity
from furbelow.garment.technique import facts_of
from furbelow.techniques.ease_in import Eased

from tests.techniques.small import Worked, work


def _made(skirt: str, how: str = "- ease in: {edge: skirt.top, to: yoke.bottom}", seam: str = "1 cm") -> Worked:
    pieces = f"""yoke: {{from: lawn, length: 120 cm, depth: 18 cm}}
skirt: {{from: lawn, length: {skirt}, depth: 45 cm}}"""
    steps = f"""- french seam: {{of: yoke}}
- french seam: {{of: skirt}}
{how}
- attach: {{edge: skirt.top, to: yoke.bottom, seam: {seam}}}
- neaten: {{seam: skirt.top}}
- narrow hem: {{edge: skirt.bottom}}
- folded casing: {{edge: yoke.top, depth: 24 mm}}
- insert elastic: {{elastic: elastic, into: yoke.top, length: 70 cm}}
- close gap: {{of: yoke.top}}"""
    return work(pieces, steps)


def _told(made: Worked) -> list[tuple[str, Severity]]:
    told = ("FB314", "FB317", "FB333", "FB373", "FB374", "FB401")
    return [(fault.code, fault.severity) for done in made.performed for fault in done.faults if fault.code in told]


@pytest.mark.parametrize(
    ("skirt", "told"),
    [
        ("122 cm", []),
        ("124.5 cm", []),  # 120 cm x 15 / 400 = 4.5 cm
        ("126 cm", [("FB373", Severity.WARNING)]),
        ("130 cm", [("FB373", Severity.ERROR)]),
        ("119 cm", [("FB314", Severity.ERROR)]),
    ],
)
def test_as_much_as_lies_smooth(skirt: str, told: list[tuple[str, Severity]]) -> None:
    assert _told(_made(skirt)) == told


@pytest.mark.parametrize(("skirt", "row"), [("122 cm", "ease in"), ("124.5 cm", "ease in"), ("126 cm", "gather")])
def test_a_seam_of_two_lengths_names_what_goes_before_it(skirt: str, row: str) -> None:
    (fault,) = [fault for done in _made(skirt, "").performed for fault in done.faults if fault.code == "FB401"]
    assert fault.change is not None
    assert fault.change.text == f"{row}: {{edge: skirt.top, to: yoke.bottom}}"
    assert not _told(_made(skirt, f"- {fault.change.text}"))


@pytest.mark.parametrize(("seam", "row"), [("1 cm", 8), ("15 mm", 13), ("6 mm", 4)])
def test_the_row_lies_just_inside_the_seam(seam: str, row: int) -> None:
    made = _made("122 cm", seam=seam)
    (done,) = [done for done in made.performed if done.step.written.technique == "ease in"]
    assert facts_of(done, Eased) == Eased(Fraction(1220), Fraction(1200), 4, Fraction(row))


def test_afterwards_both_edges_are_marked_alike_and_nothing_hangs() -> None:
    made = _made("122 cm")
    told = [each for each in made.tellings() if "skirt to the yoke" in each.title]
    texts = " ".join(action.text for each in told for action in each.actions)
    assert "every 30 cm" in texts
    assert "30.5 cm" not in texts
    assert "thread tails" not in texts


@pytest.mark.parametrize(
    ("how", "told"),
    [
        ("- ease in: {edge: skirt.top, to: skirt.top}", ("FB317", Severity.ERROR)),
        ("- gather: {edge: skirt.top, to: skirt.top}", ("FB317", Severity.ERROR)),
        (
            "- gather: {edge: skirt.top, to: yoke.bottom}\n- ease in: {edge: skirt.top, to: yoke.bottom}",
            ("FB333", Severity.ERROR),
        ),
        (
            "- ease in: {edge: skirt.top, to: yoke.bottom}\n- ease in: {edge: skirt.top, length: 120 cm}",
            ("FB374", Severity.WARNING),
        ),
    ],
)
def test_what_can_not_be_eased_or_need_not(how: str, told: tuple[str, Severity]) -> None:
    assert _told(_made("122 cm", how))[0] == told


def test_of_two_edges_the_longer_is_eased_whichever_is_named_first() -> None:
    (fault,) = [fault for done in _made("118 cm", "").performed for fault in done.faults if fault.code == "FB401"]
    assert fault.change is not None
    assert fault.change.text == "ease in: {edge: yoke.bottom, to: skirt.top}"
    assert not _told(_made("118 cm", f"- {fault.change.text}"))
