"""What a check loads: nothing that only other verbs, or files that are not there, have a use for."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

LARKSPUR = Path(__file__).parents[2] / "specs" / "larkspur.yaml"

# Each takes from 1 ms to 0.2 s to load, and a check of a spec takes about 0.1 s.
NOT_FOR_A_CHECK = (
    *("inspect", "dataclasses", "csv", "PIL", "numpy", "highspy", "jsonschema"),
    *("jinja2", "babel", "fluent.syntax", "markdown_it", "nh3", "typst", "distributed"),
    *("furbelow.s1_read.roster_cells", "furbelow.s1_read.schema_report", "furbelow.techniques.own_technique"),
    *("furbelow.s4_cut.planner", "furbelow.s5_buy", "furbelow.s6_write", "furbelow.fit", "furbelow.amend"),
)


def test_a_check_of_a_sound_spec_loads_what_it_needs_alone() -> None:
    program = (
        "import sys; from furbelow.verbs.command import run; code = run(sys.argv[2:]);"
        "print([name for name in sys.argv[1].split() if name in sys.modules]); sys.exit(code)"
    )
    call = [sys.executable, "-c", program, " ".join(NOT_FOR_A_CHECK), "check", str(LARKSPUR)]
    done = subprocess.run(call, capture_output=True, text=True, check=True)
    assert done.stdout.splitlines()[-1] == "[]"
