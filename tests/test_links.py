"""Every link in the pages of this repository leads to a file and a heading that are there; blocks of YAML can be read."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

import pytest
import yaml

ROOT = Path(__file__).parents[1]
_FENCED = re.compile(r"^```.*?^```$", re.DOTALL | re.MULTILINE)


def _pages() -> list[str]:
    listed = subprocess.run(["git", "ls-files", "*.md"], cwd=ROOT, capture_output=True, text=True, check=False)
    return [name for name in listed.stdout.split() if not name.startswith(("tests/faults", "compiler/"))]


def _anchor(heading: str) -> str:
    """As code hosts make it of a heading: small letters, digits and dashes."""
    return re.sub(r"[^\w\- ]", "", heading.strip().lower()).replace(" ", "-")


@pytest.mark.parametrize("page", _pages())
def test_every_link_leads_somewhere(page: str) -> None:
    text = _FENCED.sub("", (ROOT / page).read_text(encoding="utf-8"))
    for target in re.findall(r"\]\(<?([^)>\s]+)>?\)", re.sub(r"`[^`]*`", "", text)):
        if re.match(r"[a-z]+:", target):
            assert target.startswith("https://"), target
            continue
        name, _, anchor = target.partition("#")
        led_to = (ROOT / page).parent / name if name else ROOT / page
        assert led_to.exists(), f"{page}: {target}"
        if anchor:
            headings = re.findall(r"^#+ (.*)$", led_to.read_text(encoding="utf-8"), re.MULTILINE)
            assert anchor in map(_anchor, headings), f"{page}: {target}"


@pytest.mark.parametrize("page", ["specs/editor.md", "specs/publish.md"])
def test_what_is_to_be_copied_into_a_file_can_be_read(page: str) -> None:
    blocks = re.findall(r"^```yaml\n(.*?)^```$", (ROOT / page).read_text(encoding="utf-8"), re.DOTALL | re.MULTILINE)
    assert blocks
    for block in blocks:
        yaml.safe_load(block)
