"""What an editor offers among the steps: own techniques beside the built-in ones, their keys, edges as they are there."""

from __future__ import annotations

from pathlib import Path

import pytest
from furbelow.editor.offers import Offer, offers

from tests.demos.demos import SPECS

LARKSPUR = (SPECS / "larkspur.yaml").read_text(encoding="utf-8").splitlines()
GATHER = next(at for at, line in enumerate(LARKSPUR) if line.startswith("  - gather:"))
OWN = """\
techniques:
  shell edge:
    about: Draw a hem into small shells by hand.
    works on: edge
    lengths: {turn: 6 mm, shell: 1 cm}
    takes: [turn, turn]
    leaves: hemmed
    stitch: {type: 101, length: 3 mm, rows: 2}
    set up: hand
    do:
      - Turn {edge} twice by {turn}, a shell every {shell}.
"""


def _offered(typed: str, *, own: bool = False, at: int = GATHER, replaced: int = 1) -> dict[str, str]:
    """What is offered at the end of a text that stands in place of the gather step."""
    rows = typed.split("\n")
    lines = [*LARKSPUR[:at], *rows, *LARKSPUR[at + replaced :]]
    text = "\n".join(lines) + "\n" + (OWN if own else "")
    found: tuple[Offer, ...] = offers("larkspur.yaml", text, at + len(rows) - 1, len(rows[-1]))
    return {offer.word: offer.about for offer in found}


def test_a_new_row_offers_own_techniques_first() -> None:
    told = _offered("  - ", own=True, replaced=0)
    assert next(iter(told.items())) == ("shell edge", "Draw a hem into small shells by hand.")
    assert {"gather", "narrow hem", "insert elastic"} < set(told)


def test_an_own_technique_offers_its_own_keys() -> None:
    assert list(_offered("  - shell edge: {", own=True)) == ["edge", "turn", "shell"]


@pytest.mark.parametrize("typed", ["  - gather: {edge: ", "  - gather: {edge: flo", "  - gather:\n      edge: "])
def test_edges_are_offered_as_they_are_when_the_step_begins(typed: str) -> None:
    told = _offered(typed)
    # Two flounces of 302 cm and 300 cm joined to a ring of 600 cm, its hem trimmed; the lining is not begun.
    assert told["flounce.top"] == "600 cm, raw"
    assert told["flounce.bottom"].endswith("hemmed")
    assert told["lining.start"].endswith("raw")
    assert told["flounce.ends"] == "seam"


def test_an_edge_that_a_later_step_makes_is_not_offered() -> None:
    stack = next(at for at, line in enumerate(LARKSPUR) if "as: net_top" in line)
    assert "net_top" not in _offered("  - gather: {edge: ", at=stack, replaced=0)
    assert "net_top" in _offered("  - gather: {edge: ", at=stack + 1, replaced=0)


def test_words_of_a_closed_set_and_materials_are_offered() -> None:
    assert "pleating attachment" in _offered("  - gather: {method: ")
    assert list(_offered("  - insert elastic: {elastic: ")) == ["elastic"]


@pytest.mark.parametrize("line", [0, 3, -1, 10_000])
def test_elsewhere_nothing_is_offered(line: int) -> None:
    assert offers("larkspur.yaml", "\n".join(LARKSPUR), line, 2) == ()


def test_a_file_that_is_no_yaml_offers_no_edges() -> None:
    assert offers("x.yaml", "steps:\n  - gather: {edge: \n\x00", 1, 19) == ()


def test_a_garment_that_uses_a_library_is_offered_its_techniques(tmp_path: Path) -> None:
    library = tmp_path / "edges.yaml"
    library.write_text("library: 1\n" + OWN, encoding="utf-8")
    spec = tmp_path / "larkspur.yaml"
    text = "\n".join(["use: edges.yaml", *LARKSPUR[:GATHER], "  - ", *LARKSPUR[GATHER + 1 :]])
    assert "shell edge" in {offer.word for offer in offers(str(spec), text, GATHER + 1, 4)}
