"""Problems that the tests share: short ways to write them, and Hypothesis strategies for whole families."""

from __future__ import annotations

import json
from fractions import Fraction
from pathlib import Path

from furbelow.s4_cut.problem import Bolt, CutPrices, Strip, ways_to_lay
from hypothesis import strategies as st

Case = tuple[tuple[Strip, ...], Bolt, CutPrices]


def cm(number: int | str) -> Fraction:
    return Fraction(number) * 10


PRICES = CutPrices(Fraction(18, 10000), Fraction(30, 100), Fraction(60, 100), Fraction(2, 100))


@st.composite
def small_cases(draw: st.DrawFn, most_kinds: int = 3, most_count: int = 4) -> Case:
    """Garment-like problems on a 5 cm grid, every strip of which can be laid in some way."""
    bolt = Bolt(
        usable_width=cm(draw(st.integers(60, 160))),
        grid=cm(5),
        folded=draw(st.booleans()),
        one_way=draw(st.booleans()),
        shrinkage=draw(st.sampled_from([Fraction(0), Fraction(1, 20)])),
        longest_section=draw(st.sampled_from([None, cm(250)])),
    )
    strips = []
    for number in range(draw(st.integers(1, most_kinds))):
        strip = Strip(
            name=f"strip {number}",
            length=cm(draw(st.integers(2, 120)) * 5),
            depth=cm(draw(st.integers(5, 50))),
            count=draw(st.integers(1, most_count)),
            piecing=draw(st.booleans()),
            join_allowance=draw(st.sampled_from([Fraction(0), Fraction(10), Fraction(25)])),
            shortest_segment=cm(draw(st.sampled_from([0, 20, 30]))),
            most_joins=draw(st.integers(1, 3)),
            grain=draw(st.sampled_from(["along", "across", "free"])),
            selvedge=draw(st.booleans()),
        )
        if ways_to_lay(strip, bolt):
            strips.append(strip)
    if bolt.one_way:  # free strips that can lie only differently make the problem impossible
        strips = [strip for strip in strips if strip.grain != "free"]
    if not strips:
        strips = [Strip("band", cm(50), cm(10))]
    return tuple(strips), bolt, PRICES


def class_of_thirty(allowance: Fraction = Fraction(10)) -> tuple[Strip, ...]:
    """Three tiers in two layers for each of thirty wearers, at most two joins, no segment under 30 cm."""
    sizes = json.loads((Path(__file__).parents[1] / "data" / "class30.json").read_text())["strips"]
    return tuple(
        Strip(
            name=f"tier {number % 6 // 2 + 1}",
            length=cm(sizes[number][0]),
            depth=cm(sizes[number][1]),
            count=2,
            piecing=True,
            join_allowance=allowance,
            shortest_segment=cm(30),
            most_joins=2,
            wearer=f"wearer {number // 6 + 1}",
        )
        for number in range(0, len(sizes), 2)
    )
