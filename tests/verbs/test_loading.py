"""What a check and a guide load: nothing that only other verbs, or files that are not there, have a use for."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

LARKSPUR = Path(__file__).parents[2] / "specs" / "larkspur.yaml"

# Each takes from 1 ms to 0.2 s to load, and a check of a spec takes about 0.1 s.
NOT_FOR_A_CHECK = (
    *("inspect", "dataclasses", "shutil", "csv", "PIL", "numpy", "highspy", "jsonschema"),
    *("jinja2", "babel", "fluent.syntax", "markdown_it", "nh3", "typst", "distributed"),
    *("furbelow.s1_read.roster_cells", "furbelow.s1_read.schema_report", "furbelow.techniques.own_technique"),
    *("furbelow.s4_cut.planner", "furbelow.s5_buy", "furbelow.s6_write", "furbelow.fit", "furbelow.amend"),
)
# Its notes are plain words, its garment has neither of these, and it is made in one language for one body.
NOT_FOR_A_GUIDE = (
    *("PIL", "numpy", "highspy", "jsonschema", "markdown_it", "nh3", "html.parser", "typst"),
    *("furbelow.s6_write.booklet", "furbelow.s6_write.figures.zip_section", "furbelow.techniques.zip"),
    *("furbelow.techniques.own_technique", "furbelow.fit", "furbelow.amend", "furbelow.order.make_class"),
)


def _loaded(names: tuple[str, ...], *call: str) -> str:
    """Which of these modules a call loads."""
    program = (
        "import sys; from furbelow.verbs.command import run; code = run(sys.argv[2:]);"
        "print([name for name in sys.argv[1].split() if name in sys.modules]); sys.exit(code)"
    )
    command = [sys.executable, "-c", program, " ".join(names), *call]
    return subprocess.run(command, capture_output=True, text=True, check=True).stdout.splitlines()[-1]


def test_a_check_of_a_sound_spec_loads_what_it_needs_alone() -> None:
    assert _loaded(NOT_FOR_A_CHECK, "check", str(LARKSPUR)) == "[]"


def test_a_guide_of_plain_words_loads_what_it_needs_alone(tmp_path: Path) -> None:
    call = ("make", str(LARKSPUR), "--size", "M", "--no-pdf", "--out", str(tmp_path / "guide"))
    assert _loaded(NOT_FOR_A_GUIDE, *call) == "[]"
