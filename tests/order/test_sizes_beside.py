"""Guides of several sizes that are made together lead to each other, and only to pages that are there."""

from __future__ import annotations

import re
from pathlib import Path

from furbelow.verbs.command import run

FOXGLOVE = Path(__file__).parents[2] / "specs" / "foxglove.yaml"
LINK = re.compile(r'href="(\.\./[^"]+)"')


def test_every_guide_of_a_range_leads_to_the_others_and_to_the_page_of_all(tmp_path: Path) -> None:
    text = FOXGLOVE.read_text(encoding="utf-8")
    # One size cannot be made, and the others go without it.
    spoiled = text.replace("waist_girth: 106 cm, hip_girth: 128 cm", "waist_girth: 106 cm, hip_girth: 900 cm")
    assert spoiled != text
    lines = [line for line in spoiled.splitlines() if not line.startswith(("  C: {", "  D: {"))]
    spec = tmp_path / "sizes.yaml"
    spec.write_text("\n".join(lines) + "\n", encoding="utf-8")
    out = tmp_path / "out"
    assert run(["make", str(spec), "--every-size", "--no-pdf", "--out", str(out)]) == 1
    for size, other in (("a", "b"), ("b", "a")):
        page = out / f"size-{size}" / "guide.html"
        links = LINK.findall(page.read_text(encoding="utf-8"))
        assert links == ["../index.html", f"../size-{other}/guide.html"]
        assert all((page.parent / link).resolve().is_file() for link in links)


def test_a_guide_made_alone_leads_to_no_other(tmp_path: Path) -> None:
    assert run(["make", str(FOXGLOVE), "--size", "A", "--no-pdf", "--out", str(tmp_path / "out")]) == 0
    assert not LINK.findall((tmp_path / "out" / "guide.html").read_text(encoding="utf-8"))
