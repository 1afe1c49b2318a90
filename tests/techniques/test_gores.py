"""Gores: two from each rectangle, by one slanting line."""

from __future__ import annotations

from fractions import Fraction
from math import hypot

import pytest
from furbelow.garment.gore import Gore

from tests.techniques.small import sound, work

SKIRT = "gore: {from: lawn, count: 6, length: 20 cm, depth: 60 cm}"
STEPS = """- gores: {piece: gore, hem: 40 cm}
- join ends: {of: gore, seam: 1 cm, into: one ring}
- neaten: {seam: gore.ends}
- narrow hem: {edge: gore.bottom}
- narrow hem: {edge: gore.top}"""


def test_six_gores_become_one_ring_wider_at_the_hem() -> None:
    worked = sound(SKIRT, STEPS)
    assert worked.bench.edge("gore.top").set_length == 6 * 200
    assert worked.bench.edge("gore.bottom").set_length == 6 * 400


def test_a_pair_lies_in_a_rectangle_as_wide_as_both_its_ends_with_nothing_left() -> None:
    gore = sound(SKIRT, STEPS).solved.pieces["gore"]
    assert gore.gore is not None
    # 20 cm finished at the top, 1.5 cm hem above it and below 40 cm: the sides run on, 20 cm wider over 60 cm.
    top = 200 - Fraction(200, 600) * 15 + 20
    bottom = 400 + Fraction(200, 600) * 15 + 20
    assert gore.blank == (top + bottom, 600 + 15 + 15)
    assert gore.rectangles == 3
    assert 2 * gore.cut_area == gore.blank[0] * gore.blank[1]


def test_cloth_with_a_way_up_gives_one_gore_from_a_rectangle() -> None:
    nap = "  velvet: {kind: cloth, fibre: cotton, width: 140 cm, weight: 200 g/m2, ravels: yes, one way: yes}\n"
    worked = work(SKIRT.replace("lawn", "velvet"), STEPS, materials=nap)
    gore = worked.solved.pieces["gore"]
    assert gore.gore is not None
    assert (gore.rectangles, gore.blank[0]) == (6, gore.gore.cut_bottom)
    assert "to the lower right corner" in worked.words()


def test_an_odd_gore_leaves_half_a_rectangle_over() -> None:
    worked = sound(SKIRT.replace("count: 6, length: 20", "count: 5, length: 24"), STEPS)
    assert worked.solved.pieces["gore"].rectangles == 3
    assert "Of the last rectangle keep one gore" in worked.words()


def test_a_line_across_gores_is_as_long_as_the_cloth_there() -> None:
    """Half way down, six gores of 20 and 40 cm are 6 x 30 cm round."""
    pieces = f"{SKIRT}\nrow: {{from: net, length: 360 cm, depth: 10 cm}}".replace("from: lawn", "from: net")
    steps = """- gores: {piece: gore, hem: 40 cm}
    - join ends: {of: gore, into: one ring}
    - join ends: {of: row}
    - gather: {edge: row.top, on: gore, below top: 30 cm}
    - sew on: {edge: row.top, on: gore, below top: 30 cm}"""
    assert sound(pieces, steps).bench.seams["row.top"].length == 1800


@pytest.mark.parametrize(
    ("piece", "steps", "code"),
    [
        (SKIRT, STEPS.replace("40 cm", "18 cm"), "FB314"),
        (
            SKIRT,
            STEPS.replace("- gores: {piece: gore, hem: 40 cm}\n", "") + "\n- gores: {piece: gore, hem: 40 cm}",
            "FB353",
        ),
        (SKIRT.replace("60 cm}", "60 cm, piecing: {seam: 1 cm, shortest: 10 cm, most joins: 1}}"), STEPS, "FB354"),
        (SKIRT, STEPS.replace("\n- join", "\n- gores: {piece: gore, hem: 40 cm}\n- join", 1), "FB354"),
    ],
)
def test_what_can_not_be_cut_to_gores_is_refused(piece: str, steps: str, code: str) -> None:
    assert code in work(piece, steps).codes


def test_a_side_on_the_bias_is_told() -> None:
    worked = work(SKIRT, STEPS.replace("40 cm", "70 cm"))
    assert "a widening of 50 cm is 5 cm too much" in str([fault.headline for fault in worked.warnings])


DIFFER = "skirt: {from: lawn, count: 6, length: 20 cm, depth: 60 cm, grain: across}"
CUT = "- gores: {piece: skirt, hem: 36 cm, front: 30 cm, back: 22 cm, back hem: 48 cm, backs: 2}"
SEWN = """- join ends: {of: skirt, seam: 1 cm, into: one ring}
- neaten: {seam: skirt.ends}
- narrow hem: {edge: skirt.bottom}
- narrow hem: {edge: skirt.top}"""


def test_front_and_back_gores_leave_the_rest_of_both_edges_to_the_sides() -> None:
    worked = sound(DIFFER, f"{CUT}\n{SEWN}")
    gore = worked.solved.pieces["skirt"].gore
    assert gore is not None
    # 6 x 20 = 30 + 2 x 22 + 3 x side, and 6 x 36 = 46 (30 + what all widen) + 2 x 48 + 3 x side.
    told = {width.place: (width.top, width.hem, width.many) for width in gore.widths}
    assert told["front"] == (300, 460, 1)
    assert told["back"] == (220, 480, 2)
    assert told["side"] == (Fraction(460, 3), Fraction(740, 3), 3)
    assert worked.bench.edge("skirt.top").set_length == 1200
    assert worked.bench.edge("skirt.bottom").set_length == 2160
    assert gore.round == ("front", "side", "side", "back", "back", "side")


def test_gores_whose_sides_slant_alike_lie_head_to_tail_in_rows_that_the_cloth_holds() -> None:
    piece = sound(DIFFER, f"- gores: {{piece: skirt, hem: 36 cm, sides: both slanting}}\n{SEWN}").solved.pieces["skirt"]
    gore = piece.gore
    assert gore is not None
    # Level through the middle of a cut gore (20 + 36) / 2 + 2 cm; of four, and half of what one widens stays over at an end.
    assert piece.rectangles == 2
    mean, slant = (gore.cut_top + gore.cut_bottom) / 2, (gore.cut_bottom - gore.cut_top) / 2
    assert piece.blank == (3 * mean + slant, gore.cut_depth)
    assert piece.blank[0] <= 1400 - 10


def test_on_cloth_with_a_way_up_no_gore_stands_on_its_head_and_the_rows_get_wider() -> None:
    nap = "  velvet: {kind: cloth, fibre: cotton, width: 140 cm, weight: 200 g/m2, ravels: yes, one way: yes}\n"
    steps = f"- gores: {{piece: skirt, hem: 36 cm, sides: both slanting}}\n{SEWN}"
    plain = sound(DIFFER, steps).solved.pieces["skirt"]
    napped = work(DIFFER.replace("lawn", "velvet"), steps, materials=nap).solved.pieces["skirt"]
    assert napped.gore is not None
    assert all(
        laid.upper[1] - laid.upper[0] < laid.lower[1] - laid.lower[0] for row in napped.gore.rows for laid in row
    )
    assert napped.rectangles * napped.blank[0] > plain.rectangles * plain.blank[0]


def test_the_guide_tells_each_line_by_its_letter_and_the_order_of_the_gores() -> None:
    words = sound(DIFFER, f"{CUT}\n{SEWN}").words()
    assert "Write its place on each gore, at the narrow end, from left to right:" in words
    assert "in the order in which they are sewn side to side: front, side, side, back, back, side." in words
    assert "Both its diagonals are" in words


@pytest.mark.parametrize(
    ("cut", "code"),
    [
        (CUT.replace("front: 30 cm", "front: 110 cm"), "FB354"),
        (CUT.replace("backs: 2", "backs: 5"), "FB354"),
        (CUT.replace("backs: 2", "backs: 1.5"), "FB341"),
        (CUT.replace("back hem: 48 cm", "back hem: 90 cm"), "FB354"),
        (CUT.replace("hem: 36 cm, front: 30 cm", "hem: 36 cm, sides: one slanting, front: 30 cm"), "FB354"),
        ("- gores: {piece: skirt, hem: 36 cm, back hem: 48 cm}", "FB354"),
    ],
)
def test_gores_that_front_and_back_leave_nothing_for_are_refused(cut: str, code: str) -> None:
    assert code in work(DIFFER, f"{cut}\n{SEWN}").codes


def trapezes(gore: Gore) -> tuple[list[float], list[float]]:
    """The seams of the finished skirt as it lies, at the top and at the hem: how far each is from the middle of the front."""
    across = {width.place: (float(width.top), float(width.hem)) for width in gore.widths}
    found = []
    for edge in (0, 1):
        at = -across["front"][edge] / 2 if "front" in across else 0.0
        seams = []
        for place in gore.round:
            at += across[place][edge]
            seams.append(at)
        found.append(seams)
    return found[0], found[1]


@pytest.mark.parametrize(
    ("count", "gores", "seam"),
    [
        (6, "hem: 36 cm, front: 22 cm, front hem: 40 cm, back: 22 cm, back hem: 40 cm", (2, True)),
        # Four of one width, one in front: the middle of a gore lies at the side, and both its seams are as near.
        (4, "hem: 36 cm, front: 30 cm, front hem: 36 cm, back: 30 cm, back hem: 36 cm", (1, False)),
        (6, "hem: 36 cm, front: 30 cm, back: 22 cm, back hem: 48 cm, backs: 2", (2, False)),
        (5, "hem: 36 cm, front: 26 cm", (2, False)),
    ],
)
def test_the_side_seam_is_the_one_a_quarter_round_from_the_middle_of_the_front(
    count: int, gores: str, seam: tuple[int, bool]
) -> None:
    pieces = DIFFER.replace("count: 6", f"count: {count}").replace("length: 20 cm", f"length: {120 / count} cm")
    gore = sound(pieces, f"- gores: {{piece: skirt, {gores}}}\n{SEWN}").solved.pieces["skirt"].gore
    assert gore is not None
    assert gore.side_seam == seam
    top, hem = trapezes(gore)
    off = [max(abs(up - 300), abs(low - float(gore.hem) * count / 4)) for up, low in zip(top, hem, strict=True)]
    assert off.index(min(off)) + 1 == seam[0]
    assert (min(off) < 0.001) is seam[1]


def test_the_sides_of_a_gore_are_as_long_as_they_slant() -> None:
    both = work(DIFFER, f"- gores: {{piece: skirt, hem: 36 cm, sides: both slanting}}\n{SEWN}")
    # 16 cm wider over 60 cm of depth, half of it to each side, and the margins above and below go on so.
    assert float(both.bench.beside("skirt", Fraction(600))) == pytest.approx(hypot(600, 80), abs=0.1)
    one = work(DIFFER, f"- gores: {{piece: skirt, hem: 36 cm}}\n{SEWN}")
    assert float(one.bench.beside("skirt", Fraction(600))) == pytest.approx((600 + hypot(600, 160)) / 2, abs=0.1)
    assert float(both.performed[0].after.edge("skirt.start").set_length) == pytest.approx(hypot(630, 84), abs=0.1)


OPEN = "- join ends: {of: skirt, seam: 15 mm, into: one ring, open: 20 cm}"
NEAT = "- neaten: {edge: [skirt.start, skirt.end]}"


@pytest.mark.parametrize("cut", [CUT, "- gores: {piece: skirt, hem: 36 cm}", ""])
def test_one_seam_of_several_is_named_where_only_one_stays_open(cut: str) -> None:
    rest = SEWN.replace("- join ends: {of: skirt, seam: 1 cm, into: one ring}\n- neaten: {seam: skirt.ends}", OPEN)
    worked = work(DIFFER, f"{cut}\n{NEAT}\n{rest}")
    words = worked.words()
    named = "the seam between no. 2 and no. 3" if cut == CUT else "one of the seams"
    assert f"on both edges of {named}" in words
    assert "Sew the 5 seams without marks from edge to edge" in words
    assert "6 pairs of sides" in words
    assert "start edge is the side at your left" in words
    assert "end edge is the side at your right" in words
    # The bright thread is tied where that seam is sewn, never in its opening.
    assert "tie a bright thread into the seam with the opening, below it, 31.5 cm from the top edge" in words


@pytest.mark.parametrize("hemmed", [False, True])
def test_where_sides_of_unequal_length_meet_the_guide_says_by_how_much_and_what_becomes_of_it(hemmed: bool) -> None:
    """Level tops: at the hem the side that slants more stands out. By Pythagoras from the gores as they are cut."""
    steps = """- gores: {piece: skirt, hem: 50 cm, front: 20 cm, front hem: 60 cm, back: 20 cm, back hem: 60 cm}
    - join ends: {of: skirt, seam: 1 cm, into: one ring}"""
    pieces = "skirt: {from: net, count: 6, length: 20 cm, depth: 100 cm}"
    if hemmed:
        steps = steps.replace("- join", "- rolled hem: {edge: skirt.bottom}\n    - join")
    worked = work(pieces, steps)
    gore = worked.solved.pieces["skirt"].gore
    assert gore is not None
    sides = {}
    for width in gore.widths:
        narrow, broad = gore.cut_widths(width)
        sides[width.place] = hypot(float(gore.cut_depth), float(broad - narrow) / 2)
    by = sides["front"] - sides["side"]
    assert [(longer, shorter) for longer, shorter, _ in gore.unlike] == [("front", "side"), ("back", "side")]
    assert all(float(each) == pytest.approx(by, abs=0.1) for _, _, each in gore.unlike)
    assert f"the front gore, {by / 10:.1f} cm beyond the side gore" in worked.words()
    assert ("ease the rest in between" if hemmed else "Trim each level with its neighbour") in worked.words()


def test_nothing_is_said_of_gores_whose_sides_are_alike() -> None:
    pieces = "skirt: {from: net, count: 6, length: 20 cm, depth: 100 cm}"
    steps = """- gores: {piece: skirt, hem: 50 cm, front: 24 cm, front hem: 54 cm}
    - join ends: {of: skirt, seam: 1 cm, into: one ring}"""
    worked = work(pieces, steps)
    assert worked.solved.pieces["skirt"].gore is not None
    assert not worked.solved.pieces["skirt"].gore.unlike
    assert "their sides slant more" not in worked.words()


def test_sides_that_differ_are_told_as_each_is_and_a_seam_as_the_shorter() -> None:
    """No tape measures a mean. By Pythagoras from the gores as they are cut."""
    steps = f"""- gores: {{piece: skirt, hem: 50 cm, front: 20 cm, front hem: 60 cm, back: 20 cm, back hem: 60 cm}}
    {NEAT}
    - join ends: {{of: skirt, seam: 1 cm, into: one ring}}"""
    worked = work("skirt: {from: lawn, count: 6, length: 20 cm, depth: 100 cm}", steps)
    gore = worked.solved.pieces["skirt"].gore
    assert gore is not None
    widths = [gore.cut_widths(width) for width in gore.widths]
    sides = sorted(hypot(float(gore.cut_depth), float(broad - narrow) / 2) / 10 for narrow, broad in widths)
    words = worked.words()
    assert f"the start edge of the skirt, {round(sides[0], 1):g} cm to {round(sides[-1], 1):g} cm" in words
    assert f"Pin the 6 pairs of sides, {round(sides[0], 1):g} cm each" in words
