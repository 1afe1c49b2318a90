"""Each technique is told in plain words; the measure and its source stand in tests/demos/test_plain_words.py."""

from __future__ import annotations

import pytest
import textstat
from furbelow.techniques import techniques

from tests.demos.test_plain_words import HARDEST
from tests.techniques.every_technique_told import told_in


@pytest.mark.parametrize("technique", techniques())
def test_each_technique_reads_at_grade_seven_or_below(technique: str) -> None:
    actions = [action for step in told_in("en")[technique] for action in step.actions]
    told = " ".join(f"{action.text} {action.check} {action.remedy}" for action in actions)
    assert len(told.split()) > 20
    assert textstat.flesch_kincaid_grade(told) <= HARDEST
