"""What guides have in common is laid out once: what the typesetter keeps of a second guide is little."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from furbelow.resources import schema

ROOT = Path(schema("x")).parents[1]

# Memory, in pages, after guides that differ in the name of the wearer alone. sys.argv: what a line of `sheet.typ` is
# replaced by.
_KEPT = """
import sys
from dataclasses import replace
from pathlib import Path
from furbelow.s6_write.pages import typeset
from furbelow.s6_write.pages.pdf import pdf
from furbelow.order.chain import guide_of, planned
from furbelow.order.read_order import Asked, OrderReader
line, other = sys.argv[1].encode(), sys.argv[2].encode()
shipped = typeset._source
def source(name):
    text = shipped(name)
    if name == "sheet.typ":
        assert text.count(line) == 1
        text = text.replace(line, other)
    return text
typeset._source = source
def held():
    return int(Path("/proc/self/statm").read_text().split()[1])
order = OrderReader().one_order(Asked(sys.argv[3], size="M"))
guide = guide_of(planned(order).value, "")
for name in ("Ada", "Bo"):
    before = held()
    pdf(replace(guide, wearer=name))
    print(held() - before)
"""
_LINE = "show link: underline"


def kept(line: str) -> tuple[int, int]:
    """Of the first guide, and of the second one."""
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join([str(ROOT / "compiler"), str(ROOT)])}
    call = [sys.executable, "-c", _KEPT, _LINE, line, str(ROOT / "specs" / "larkspur.yaml")]
    done = subprocess.run(call, env=environment, stdout=subprocess.PIPE, text=True, check=True)
    first, second = map(int, done.stdout.split())
    return first, second


@pytest.mark.skipif(not Path("/proc/self/statm").exists(), reason="only Linux tells the memory of a process so")
def test_a_second_guide_is_laid_out_from_the_first_and_not_again() -> None:
    """As long as no style and no function of `sheet.typ` holds what is one wearer's; one that does is found by this."""
    first, second = kept(_LINE)
    assert second < first / 3
    first, second = kept("show link: it => { let whose = guide.wearer; underline(it) }")
    assert second > first / 3
