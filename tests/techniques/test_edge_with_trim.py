"""A trim over a turned-up edge: how much of it is used, and what is said of its ends and of the raw edge under it."""

from __future__ import annotations

from fractions import Fraction

from tests.techniques.small import Worked, work

APRON = "apron: {from: lawn, length: 60 cm, depth: 50 cm}"
TRIM = "- edge with trim: {edge: apron.bottom, trim: beading}"
HEMMED = "- narrow hem: {edge: apron.start}\n- narrow hem: {edge: apron.end}"


def _last(worked: Worked) -> tuple[Fraction, list[str]]:
    """How much trim the last step uses, and its sentences."""
    return worked.performed[-1].used[0].amount, [action.text for action in worked.tellings()[-1].actions]


def test_ends_that_a_seam_will_take_stay_level_with_the_cloth() -> None:
    used, texts = _last(work(APRON, TRIM))
    assert used == 600
    assert any("Cut the beading lace level with the end of the cloth" in text for text in texts)
    assert not any("folded end" in text for text in texts)


def test_ends_beside_finished_cloth_are_folded_under_and_need_more_trim() -> None:
    used, texts = _last(work(APRON, f"{HEMMED}\n{TRIM}"))
    assert used == 600 + 2 * 10
    assert any("Fold 1 cm of the end of the beading lace under" in text for text in texts)
    assert any("Sew both folded ends down" in text for text in texts)


def test_only_under_open_lace_can_a_raw_edge_show_and_ravel() -> None:
    def said(steps: str, pieces: str = APRON) -> bool:
        return any("raw edge of an offcut" in text for text in _last(work(pieces, steps))[1])

    assert said(TRIM)
    assert not said(f"- neaten: {{edge: apron.bottom}}\n{TRIM}")
    assert not said(TRIM, APRON.replace("lawn", "net"))
