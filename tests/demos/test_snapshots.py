"""One guide of each demo, the words of each technique in every language, and one message of each stage, as they were last read and found good.

After a change on purpose: `pytest tests/demos/test_snapshots.py --snapshot-update`, then read the diff.
"""

from __future__ import annotations

import pytest
from furbelow.diagnose.report_text import render
from furbelow.resources import languages
from furbelow.s6_write.pages.markdown_page import markdown
from syrupy.assertion import SnapshotAssertion

from tests.demos.demos import guide
from tests.techniques.every_technique_told import as_read, told_in
from tests.test_faults import CASES, faults_of

TOLD = (
    "read/keys: an unknown key of a piece",
    "read/formulas: a decimal comma",
    "rehearse/order: the elastic gap is sewn shut before the elastic goes in",
    "rehearse/lengths: the flounce is sewn on without being gathered",
    "rehearse/proofs: a lining that shows",
    "rehearse/proofs: an opening that does not pass the hips",
)


@pytest.mark.parametrize(("name", "size"), [("larkspur", "M"), ("marigold", "12"), ("foxglove", "C")])
def test_the_guide_reads_as_before(name: str, size: str, snapshot: SnapshotAssertion) -> None:
    assert markdown(guide(name, size)) == snapshot


@pytest.mark.parametrize("language", languages())
def test_each_technique_is_told_as_before(language: str, snapshot: SnapshotAssertion) -> None:
    """The words of every technique, in each language, for a person to read from top to bottom."""
    told = {name: as_read(steps[0]) for name, steps in told_in(language).items()}
    assert "\n\n".join(f"# {name}\n{text}" for name, text in told.items()) == snapshot


@pytest.mark.parametrize("name", TOLD)
def test_the_message_reads_as_before(name: str, snapshot: SnapshotAssertion) -> None:
    case = next(case for case in CASES if case.name == name)
    assert render(faults_of(case), {"case.yaml": case.spec}) == snapshot
