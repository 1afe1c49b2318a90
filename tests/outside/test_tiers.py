"""Tiers, flounces and piecing against published examples, each written as a spec and worked out by the compiler."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from textwrap import indent

import pytest
from furbelow.garment.solved import Solved, SolvedPiece
from furbelow.garment.workroom import Workroom
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.takes import allowances
from furbelow.s2_solve.why import why
from furbelow.s6_write.pages.why_text import WhyText
from furbelow.techniques import technique_of

from tests.by_hand import solve

INCH = Fraction("25.4")
YARD = 36 * INCH


@dataclass(frozen=True)
class Worked:
    """A garment worked out exactly, in inches."""

    solved: Solved

    def inches(self, name: str) -> Fraction:
        return self.solved.length(name) / INCH

    def number(self, name: str) -> Fraction:
        return self.solved.values[name].value.as_number()

    def __getitem__(self, piece: str) -> SolvedPiece:
        return self.solved.pieces[piece]


def worked(
    pieces: str,
    *,
    measures: str = "reach: 1 yd",
    steps: str = "- press: {piece: top}",
    width: str = "45 in",
) -> Worked:
    """The garment of this spec; the rest of it says nothing but what the reader must have."""
    text = "\n".join(
        [
            "furbelow: 1",
            "title: Bryony sum",
            "units: inches",
            "rounding: 0 in",
            "body:",
            "  waist_girth: {}",
            "measures:",
            indent(measures.strip(), "  "),
            "worn: {from: waist, over: waist_girth, held by: the test}",
            "materials:",
            f"  cloth: {{kind: cloth, fibre: cotton, width: {width}, weight: 100 g/m2, ravels: yes}}",
            "  elastic: {kind: elastic, width: 1 in, stretch: 100%}",
            "pieces:",
            indent(pieces.strip(), "  "),
            "steps:",
            indent(steps.strip(), "  "),
            "sizes: {one: {waist_girth: 23 in}}",
        ]
    )
    read = read_spec(("sum.yaml", text.encode()))
    assert read.faults == ()
    assert read.value
    result = solve(read.value, allowances(read.value, technique_of), "size one", read.value.sizes["one"], {})
    assert result.faults == ()
    assert result.value
    return Worked(result.value)


# --- how full ----------------------------------------------------------------------------------------------


def test_a_flounce_of_4_thirds_and_a_lower_one_of_3_halves_is_exactly_twice_the_skirt() -> None:
    """Instructions for a petticoat of 1907, reprinted at tudorlinks.com."""
    garment = worked("""
top: {from: cloth, length: 100 in, depth: 20 in}
flounce: {from: cloth, length: top.length * 4/3, depth: 8 in}
lower: {from: cloth, length: flounce.length * 3/2, depth: 5 in}
""")
    assert garment["lower"].length == 2 * garment["top"].length


def test_the_same_cascade_holds_whatever_the_cloth_cannot_divide() -> None:
    """The same instructions; a skirt of 1 yd and a third of an eighth, which no decimal holds. The length is ours."""
    garment = worked("""
top: {from: cloth, length: 36 in + 1/8 in / 3, depth: 20 in}
flounce: {from: cloth, length: top.length * 4/3, depth: 8 in}
lower: {from: cloth, length: flounce.length * 3/2, depth: 5 in}
""")
    assert garment["lower"].length == 2 * garment["top"].length


def test_a_flounce_is_half_as_long_again_as_its_line_and_the_underskirt_1_inch_shorter() -> None:
    """C. C. Ingalls, Text-Book on Domestic Art, 1911: bottom 2 1/2 to 3 yd. The 36 in of length are ours."""
    garment = worked("""
top: {from: cloth, length: 3 yd, depth: 36 in}
flounce: {from: cloth, length: top.length * 1 1/2, depth: 9 in}
under: {from: cloth, length: 2 1/2 yd, depth: top.depth - 1 in}
""")
    assert garment["flounce"].length == Fraction(9, 2) * YARD
    assert garment.inches("under.depth") == 35


def test_a_flounce_of_3_yards_over_2_yards_of_band_is_half_as_long_again() -> None:
    """E. Goodwin, Course in Sewing III: flounce 9 in deep and 3 yd wide, bias band for its top 2 yd; 1.5 follows."""
    garment = worked(
        "top: {from: cloth, length: 3 yd, depth: 9 in}\nband: {from: cloth, length: 2 yd, depth: 1 in}",
        measures="fullness: top.length / band.length",
    )
    assert garment.number("fullness") == Fraction(3, 2)


# --- from finished to cut ----------------------------------------------------------------------------------


def test_banding_is_cut_twice_its_depth_and_half_an_inch() -> None:
    """L. I. Baldt, Clothing for Women, Lippincott 1916, constructive processes: the half inch is two turns of 1/4."""
    garment = worked(
        "top: {from: cloth, length: 1 yd, depth: 20 in}\nband: {from: cloth, length: 1 yd, depth: 1 1/2 in}",
        steps="- band casing: {band: band, to: top.top, seam: 1/4 in, gap: 2 in}",
    )
    assert garment.inches("band.cut_depth") == 2 * Fraction(3, 2) + Fraction(1, 2)


def test_a_doubled_puff_ruffle_is_cut_twice_its_width_and_2_inches() -> None:
    """Butterick, The New Dressmaker, 1921, p. 146; here the 2 in are two seams of 1 in."""
    garment = worked(
        "top: {from: cloth, length: 1 yd, depth: 20 in}\npuff: {from: cloth, length: 1 yd, depth: 3 in}",
        steps="- band casing: {band: puff, to: top.top, seam: 1 in, gap: 2 in}",
    )
    assert garment.inches("puff.cut_depth") == 2 * 3 + 2


def test_a_skirt_is_cut_4_inches_longer_for_hem_and_finishing() -> None:
    """Kinne and Cooley, Clothing and Health, 1916, lesson 12; how the 4 in divide into turns and seam is ours."""
    garment = worked(
        "top: {from: cloth, length: 2 yd, depth: 30 in}\nband: {from: cloth, length: 2 yd, depth: 1 in}",
        steps="""
- narrow hem: {edge: top.bottom, first turn: 1/2 in, second turn: 3 in}
- band casing: {band: band, to: top.top, seam: 1/2 in, gap: 2 in}
""",
    )
    assert garment.inches("top.cut_depth") == 34


TIERS = """
- attach: {edge: middle.top, to: top.bottom, seam: 1/2 in}
- attach: {edge: lower.top, to: middle.bottom, seam: 1/2 in}
- narrow hem: {edge: lower.bottom, first turn: 1/4 in, second turn: 1/4 in}
- band casing: {band: band, to: top.top, seam: 1/2 in, gap: 2 in}
"""


@pytest.mark.parametrize(("tiers", "finished"), [(3, Fraction(7)), (4, Fraction(21, 4))])
def test_21_inches_in_tiers_are_7_or_5_and_a_quarter_and_cut_1_inch_more(tiers: int, finished: Fraction) -> None:
    """Tiered skirt calculations at squaredancesewing.com: tiers of 21 in, seams of 1/2 in."""
    garment = worked(
        f"""
top: {{from: cloth, length: 1 yd, depth: 21 in / {tiers}}}
middle: {{from: cloth, length: 2 yd, depth: top.depth}}
lower: {{from: cloth, length: 3 yd, depth: top.depth}}
band: {{from: cloth, length: 1 yd, depth: 1 in}}
""",
        steps=TIERS,
    )
    for tier in ("top", "middle", "lower"):
        assert garment.inches(f"{tier}.depth") == finished
        assert garment.inches(f"{tier}.cut_depth") == finished + 1


# --- how much cloth ----------------------------------------------------------------------------------------


def test_36_inches_in_three_tiers_are_14_cuts_of_13_and_5_and_a_quarter_yards() -> None:
    """Page of July 2013 at annasmountaintreasures.blogspot.com: 2, 4 and 8 widths of cloth, 5 in for the casing.

    The page says 187 in, 5.19 yd, and takes 5 1/4 yd; its advice to buy 5 3/4 yd is half a yard to spare.
    """
    garment = worked(
        """
top: {from: cloth, count: 2, length: 40 in, depth: 36 in / 3}
middle: {from: cloth, count: top.count * 2, length: 40 in, depth: top.depth}
lower: {from: cloth, count: middle.count * 2, length: 40 in, depth: top.depth}
band: {from: cloth, length: 40 in, depth: 1 in}
""",
        measures="""
cuts: top.count + middle.count + lower.count
cloth_length: top.count * top.cut_depth + middle.count * middle.cut_depth + lower.count * lower.cut_depth + 5 in
in_yards: cloth_length / 1 yd
to_cut: round_up(cloth_length, 1/4 yd)
to_buy: to_cut + 1/2 yd
""",
        steps=TIERS,
    )
    assert garment.inches("top.cut_depth") == 13
    assert garment.number("cuts") == 14
    assert garment.inches("cloth_length") == 187
    assert round(garment.number("in_yards"), 2) == Fraction("5.19")
    assert garment.solved.length("to_cut") == Fraction(21, 4) * YARD
    assert garment.solved.length("to_buy") == Fraction(23, 4) * YARD


def test_a_tier_reckoned_from_the_cut_length_of_the_one_above_is_54_inches_in_two_of_27() -> None:
    """Tiered skirt math at soundstitches.wordpress.com: waist 23 in, half as much again, 1 1/2 in for seams.

    The page multiplies the cut length. The spec must say so, and the derivation shows it.
    """
    garment = worked(
        """
top: {from: cloth, length: waist_girth * 1.5, depth: 6 in}
middle: {from: cloth, cut length: top.cut_length * 1.5, depth: 6 in}
""",
        measures="""
widths: ceil(middle.cut_length / cloth.width)
each: middle.cut_length / widths
""",
        steps="- join ends: {of: [top, middle], seam: 3/4 in}",
        width="45 in",
    )
    assert garment.inches("top.length") == Fraction("34.5")
    assert garment.inches("top.cut_length") == 36
    assert garment.inches("middle.cut_length") == 54
    assert garment.number("widths") == 2
    assert garment.inches("each") == 27
    reason = why(garment.solved, "middle.cut_length").value
    assert reason
    assert "top.cut_length * 1.5 = 36 in * 1.5" in WhyText(garment.solved, Workroom()).text(reason)


def test_reckoned_from_the_finished_length_the_same_tier_is_shorter() -> None:
    """The other reading of the same page, for which it gives no number: 34.5 x 1.5 + 1.5 in."""
    garment = worked(
        """
top: {from: cloth, length: waist_girth * 1.5, depth: 6 in}
middle: {from: cloth, length: top.length * 1.5, depth: 6 in}
""",
        steps="- join ends: {of: [top, middle], seam: 3/4 in}",
    )
    assert garment.inches("middle.cut_length") == Fraction("53.25")


@pytest.mark.parametrize(("lengths", "yards", "to_buy"), [(2, "2.72", Fraction(11, 4)), (3, "4.08", Fraction(17, 4))])
def test_skirt_lengths_of_49_inches_are_bought_by_the_quarter_yard(lengths: int, yards: str, to_buy: Fraction) -> None:
    """Page altskirt1 at webpages.charter.net/lara_the_lacemaker: 98 in are 2.72, so 2 3/4 yd; three are 4.08 yd.

    The page stops at 4.08; the quarter yard above it is ours.
    """
    garment = worked(
        f"top: {{from: cloth, count: {lengths}, length: 40 in, depth: 49 in}}",
        measures="""
cloth_length: top.count * top.cut_depth
in_yards: cloth_length / 1 yd
to_buy: round_up(cloth_length, 1/4 yd)
""",
    )
    assert garment.inches("cloth_length") == 49 * lengths
    assert round(garment.number("in_yards"), 2) == Fraction(yards)
    assert garment.solved.length("to_buy") == to_buy * YARD


def test_352_and_a_half_inches_take_8_widths_of_48_and_960_inches_of_cloth() -> None:
    """Commonly used formulas at mylltd.com: 141 in at 2 1/2 times, cloth of 48 in, drops of 120 in."""
    garment = worked(
        "top: {from: cloth, length: 141 in * 2.5, depth: 120 in}",
        measures="""
widths: top.length / cloth.width
whole_widths: ceil(widths)
cloth_length: whole_widths * top.depth
""",
        width="48 in",
    )
    assert garment.inches("top.length") == Fraction("352.5")
    assert round(garment.number("widths"), 2) == Fraction("7.34")
    assert garment.number("whole_widths") == 8
    assert garment.inches("cloth_length") == 960


def test_the_strips_of_a_ruffle_are_its_length_over_the_width_of_the_cloth() -> None:
    """L. I. Baldt, Clothing for Women, Lippincott 1916, petticoats: dust ruffle of 1 1/3, 4 to 5 in deep.

    The rule is the book's, the skirt of 3 yd and the cloth of 36 in are ours.
    """
    garment = worked(
        "top: {from: cloth, length: 3 yd * 4/3, depth: 5 in}",
        measures="""
strips: ceil(top.length / cloth.width)
cloth_length: strips * top.cut_depth
""",
        width="36 in",
    )
    assert garment.number("strips") == 4
    assert garment.inches("cloth_length") == 20
