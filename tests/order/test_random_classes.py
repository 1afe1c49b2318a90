"""Of any class, each guide takes just what the cutting for all cuts for it: segments, joins, tags, the pile.

What is cut is read from the plan that the folder keeps, what is taken from the guide as it is read.
"""

from __future__ import annotations

import json
import re
from collections import Counter
from fractions import Fraction
from pathlib import Path
from tempfile import TemporaryDirectory

from furbelow.verbs.command import run
from hypothesis import given, settings
from hypothesis import strategies as st

LARKSPUR = str(Path(__file__).parents[2] / "specs" / "larkspur.yaml")
HEADING = "wearer;fullness;layers;waist_girth (cm);hip_girth (cm);waist_height (cm);knee_height (cm)"

_PUPIL = st.tuples(
    st.sampled_from(["1.5", "2", "2.5"]),
    st.integers(1, 3),
    st.integers(60, 100),
    st.integers(16, 26),
    st.integers(98, 108),
)
_TAG = re.compile(r"\b(\d+-\d+)([a-z]+)(?:·(\d+))? ([\d.]+) cm")
Tag = tuple[str, str, int, Fraction]


def planned(folder: Path, number: int) -> Counter[Tag]:
    """What the kept plan cuts for a number."""
    kept = json.loads((folder / "class.json").read_text(encoding="utf-8"))
    tags: Counter[Tag] = Counter()
    for lot in kept["lots"]:
        for section in lot["plan"]["sections"]:
            pieces = [(lane["depth"], each) for lane in section["lanes"] for each in lane["segments"]]
            for deep, each in pieces:
                if each["strip"].split(" ")[0] == str(number):
                    long = deep if each["turned"] else each["length"]  # with its length over the width
                    part = each["part"] if each["parts"] > 1 else 0
                    tags[lot["marks"][each["strip"]], "abcdefgh"[each["copy"] - 1], part, Fraction(long)] += 1
    return tags


def taken(guide: str) -> Counter[Tag]:
    """What the guide says of the pile."""
    start = guide.rindex("The pile of cut pieces")
    told = guide[start : guide.index("\n## ", start)].replace("\u00a0", " ")
    found = _TAG.findall(told)
    return Counter((mark, copy, int(part or 0), Fraction(length) * 10) for mark, copy, part, length in found)


@settings(max_examples=3, deadline=None)
@given(st.lists(_PUPIL, min_size=2, max_size=3))
def test_every_guide_takes_its_pile_from_the_cutting_for_all(
    pupils: list[tuple[str, int, int, int, int]],
) -> None:
    with TemporaryDirectory() as place:
        rows = [
            f"{number};{full};{layers};{waist};{waist + more};{height};{height - 56}"
            for number, (full, layers, waist, more, height) in enumerate(pupils, 1)
        ]
        roster, out = Path(place, "class.csv"), Path(place, "out")
        roster.write_text("\n".join([HEADING, *rows]) + "\n", encoding="utf-8")
        call = ["make", LARKSPUR, "--class", str(roster), "--no-pdf", "--data", "--workers", "1", "--out", str(out)]
        assert run(call) == 0
        for number in range(1, len(pupils) + 1):
            guide = (out / str(number) / "guide.md").read_text(encoding="utf-8")
            cut = planned(out, number)
            assert taken(guide) == cut
            count = re.search(r"(\d+) pieces? lies? in it", guide)
            assert count
            assert int(count[1]) == cut.total()
            # Each seam that joins parts is one that the plan made.
            joins = sum(1 for _, _, part, _ in cut.elements() if part > 1)
            told = json.loads((out / str(number) / "guide.json").read_text(encoding="utf-8"))["cutting"]
            assert sum(int(found[0]) for line in told if (found := re.findall(r"(\d+) joins?", line["note"]))) == joins
