"""The guide is in plain words: its steps read at grade 7 or below.

Source of the measure: Kincaid and others, Derivation of new readability formulas for Navy enlisted personnel, 1975, as
the library textstat works it out. Short sentences, one idea each: US General Services Administration, plain language
guidelines.
"""

from __future__ import annotations

import pytest
import textstat

from tests.demos.demos import NAMES, guide, spec, steps_of

HARDEST = 7
HARDEST_STEP = 11  # one step is too short a text for the measure to be steady


@pytest.mark.parametrize("name", NAMES)
def test_the_steps_read_at_grade_seven_or_below(name: str) -> None:
    for size in spec(name).sizes:
        steps = steps_of(guide(name, size))
        told = " ".join(f"{step.text} {step.check} {step.remedy}" for step in steps)
        assert textstat.flesch_kincaid_grade(told) <= HARDEST
        assert textstat.flesch_kincaid_grade(" ".join(step.text for step in steps)) <= HARDEST


@pytest.mark.parametrize("name", NAMES)
def test_no_step_is_much_harder_than_the_rest(name: str) -> None:
    for step in steps_of(guide(name, next(iter(spec(name).sizes)))):
        for sentence in step.text.split(". "):
            assert len(sentence.split()) <= 35, sentence
        assert textstat.flesch_kincaid_grade(step.text) <= HARDEST_STEP, step.text


@pytest.mark.parametrize("name", NAMES)
def test_a_paragraph_is_150_words_at_the_most(name: str) -> None:
    # Source: US General Services Administration, plain language guidelines, "Write short paragraphs".
    written = guide(name, next(iter(spec(name).sizes)))
    texts = [caution.text for caution in written.cautions]
    texts += [paragraph for text in (written.about, written.notes) for paragraph in text.split("\n\n")]
    assert all(len(text.split()) <= 150 for text in texts)
