"""No planted construction mistake slips through, and no sound garment is refused."""

from __future__ import annotations

import pytest

from tests.s3_rehearse.families import FAMILIES, Doc, spec_of
from tests.s3_rehearse.mutants import judged, outcome, sound_garments

GARMENTS = dict(sound_garments())


def test_there_are_twenty_families_and_the_demos() -> None:
    assert len(FAMILIES) == 20
    assert len(GARMENTS) >= 23


@pytest.mark.parametrize("family", FAMILIES, ids=lambda family: family.name)
def test_a_sound_family_is_proved_without_a_word(family: object) -> None:
    got = outcome(spec_of(family))  # type: ignore[arg-type]
    assert got.final is not None
    assert not got.codes


@pytest.mark.parametrize("doc", GARMENTS.values(), ids=list(GARMENTS))
def test_every_planted_mistake_is_caught_or_shown_to_be_as_sound(doc: Doc) -> None:
    verdicts = list(judged(doc))
    assert [mutant.what for mutant, verdict in verdicts if not verdict] == []
    assert sum(verdict == "caught" for _, verdict in verdicts) > len(verdicts) / 2
