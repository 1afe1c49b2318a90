"""What a guide tells to measure or to mark along an edge is what the cloth has there at that moment: its cut edge.

The other way to the same numbers is plain geometry: an arc is its radius times its angle, a gore widens evenly, a seam takes
its margin twice wherever it closes two edges, an open seam takes nothing, and a dart is a triangle.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

import pytest
from furbelow.garment.message import Length, Part, Pieces
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved
from furbelow.garment.technique import Instructions, Performed, edge_of, edges_of, word_of, words_of
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.chain import solved as numbers
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.body import size_body
from furbelow.techniques import technique_of

from tests.demos.demos import EVERY_SIZE, order
from tests.techniques.small import Worked, sound, spec_text, work
from tests.techniques.test_every_technique_in_a_guide import GARMENTS, OWN, SUPPLIES

CLOSES = {"join ends": ("seam",), "french seam": ("first seam", "second seam"), "flat felled seam": ("seam",)}
LEAVES = ("ring cut", "gores", "neaten", "level waist")  # what they do to the edge is none of this or said above
NEAR = 0.6  # mm: lengths are worked out exactly, radii to a tenth

YOKE = (
    """yoke: {from: net, length: 112 cm, depth: 12 cm}
    skirt: {from: net, length: 200 cm, depth: 60 cm}
    band: {from: net, length: 112 cm, depth: 3 cm}""",
    """- ring cut: {piece: yoke, hem: 150 cm}
    - neaten: {edge: [yoke.top, yoke.bottom]}
    - join ends: {of: yoke, seam: 15 mm}
    - neaten: {edge: skirt.top}
    - join ends: {of: skirt, seam: 15 mm}
    - gather: {edge: skirt.top, to: yoke.bottom}
    - attach: {edge: skirt.top, to: yoke.bottom, seam: 1 cm}
    - join ends: {of: band}
    - band casing: {band: band, to: yoke.top}
    - insert elastic: {elastic: elastic, into: band, length: waist_girth - 6 cm}
    - close gap: {of: band}""",
)
FLOUNCE = (
    """flounce: {from: net, count: 4, length: 30 cm, depth: 20 cm}
    skirt: {from: net, length: 120 cm, depth: 50 cm}""",
    """- ring cut: {piece: flounce, hem: 70 cm}
    - join ends: {of: flounce, seam: 1 cm, into: one ring}
    - join ends: {of: skirt, seam: 1 cm}
    - attach: {edge: flounce.top, to: skirt.bottom, seam: 1 cm}
    - folded casing: {edge: skirt.top, depth: 3 cm, turn under: 1 cm, gap: 5 cm}
    - insert elastic: {elastic: elastic, into: skirt.top, length: waist_girth - 6 cm}
    - close gap: {of: skirt.top}""",
)
GORED = (
    """skirt: {from: lawn, count: 6, length: 18 cm, depth: 60 cm}
    band: {from: lawn, length: 83 cm, depth: 3 cm}""",
    """- gores: {piece: skirt, hem: 34 cm, sides: both slanting}
    - neaten: {edge: [skirt.start, skirt.end]}
    - join ends: {of: skirt, seam: 15 mm, open: 20 cm, into: one ring}
    - level waist: {edge: skirt.top, front: 104 cm, side: 104 cm, back: 102 cm}
    - darts: {edge: skirt.top, length: 80 cm, count: 8, long: 12 cm}
    - zip: {in: skirt.ends, zip: zip}
    - fitted waistband: {band: band, to: skirt.top, overlap: 3 cm, fasten: hook and bar}
    - narrow hem: {edge: skirt.bottom}""",
)
BUTTONED = (
    """skirt: {from: lawn, length: 112 cm, depth: 60 cm}
    strip: {from: lawn, length: 42 cm, depth: 3 cm}
    band: {from: lawn, length: 85 cm, depth: 3 cm}""",
    """- neaten: {edge: [skirt.start, skirt.end]}
    - join ends: {of: skirt, seam: 15 mm, open: 20 cm}
    - darts: {edge: skirt.top, length: 82 cm, count: 8, long: 12 cm}
    - placket: {edge: skirt.top, strip: strip, in: skirt.ends}
    - fitted waistband: {band: band, to: skirt.top, overlap: 3 cm, fasten: hook and bar}
    - narrow hem: {edge: skirt.bottom}""",
)
VENT = (
    "skirt: {from: lawn, length: 120 cm, depth: 60 cm}",
    """- neaten: {edge: [skirt.start, skirt.end]}
    - join ends: {of: skirt, seam: 4 cm, open at hem: 20 cm}
    - slit: {in: skirt.ends, as: vent}
    - deep hem: {edge: skirt.bottom, depth: 4 cm, turn under: 1 cm}
    - folded casing: {edge: skirt.top, depth: 3 cm, turn under: 1 cm, gap: 5 cm}
    - insert elastic: {elastic: elastic, into: skirt.top, length: waist_girth - 6 cm}
    - close gap: {of: skirt.top}""",
)
WRAP = (
    "skirt: {from: lawn, count: 5, length: 22 cm, depth: 60 cm}",
    """- gores: {piece: skirt, hem: 40 cm}
    - join panels: {of: skirt, seam: 15 mm}
    - neaten: {seam: skirt.ends}
    - narrow hem: {edge: skirt.start}
    - narrow hem: {edge: skirt.end}
    - narrow hem: {edge: skirt.bottom}
    - narrow hem: {edge: skirt.top}""",
)
SMALL = {"yoke": YOKE, "flounce": FLOUNCE, "gored": GORED, "buttoned": BUTTONED, "vent": VENT, "wrap": WRAP}
ZIP = "  zip: {kind: zip, length: 22 cm}\n"


def of_one_copy(solved: Solved, piece: str, side: str, *, cut: bool) -> float:
    """The cut edge of one copy from one straight end to the other, its margins with it."""
    numbers = solved.pieces[piece]
    if not cut:
        return float(numbers.cut_length)
    if numbers.ring:
        ring = numbers.ring
        radius = ring.top * ring.depth / (ring.hem - ring.top)
        at = radius - ring.above if side == "top" else radius + ring.depth + ring.below
        return float((ring.hem - ring.top) / ring.depth * at + 2 * ring.ends)
    if numbers.gore:
        gore = numbers.gore
        widens = (gore.hem - gore.top) / gore.depth
        return float(
            (gore.top - widens * gore.above if side == "top" else gore.hem + widens * gore.below) + 2 * gore.ends
        )
    return float(numbers.cut_length)


def cut_edge(solved: Solved, earlier: Sequence[Performed], name: str) -> float | None:
    """How long a raw or neatened edge is after these steps; None for one whose story this test does not follow."""
    piece, _, side = name.partition(".")
    if side not in ("top", "bottom"):
        return None
    mine = [done for done in earlier if piece in done.touches]
    cut = any(done.step.written.technique in ("ring cut", "gores") for done in mine)
    long, copies = of_one_copy(solved, piece, side, cut=cut), solved.pieces[piece].count
    for done in mine:
        step, written = done.step, done.step.written
        if written.technique in CLOSES and "of" in written.args and piece in words_of(written, "of"):
            seam = float(sum(step.mm(key) for key in CLOSES[written.technique]))
            many = copies if word_of(written, "into") == "one ring" else 1
            long = many * (long - 2 * seam)
            at = "open" if side == "top" else "open at hem"
            long += 2 * seam if at in step.amounts else 0
        elif written.technique == "join panels":
            long = copies * long - 2 * (copies - 1) * float(step.mm("seam"))
        elif written.technique == "darts" and edge_of(written, "edge") == name:
            seam_line = float(solved.length(f"{name}_takes"))
            end, many = float(step.mm("long")), int(step.amounts["count"].as_number())
            taken = float(done.before.edge(name).cloth_length - done.after.edge(name).cloth_length)
            # A triangle: on the seam line it is narrower than at the cut edge.
            long -= taken * end / (end - seam_line)
        elif written.technique not in LEAVES and done.before.edges.get(name) != done.after.edges.get(name):
            return None
    return long


def told(done: Performed, say: Phrasing) -> Iterator[tuple[str, str, float]]:
    """Each length that is told to be measured along a cut edge, or that the marks along it come to: where, of what edge."""
    step = done.step.written
    given = technique_of(step).instructions(done, say)
    assert isinstance(given, Instructions)
    if step.technique == "join ends":
        yield "measured", f"{done.touches[-1]}.bottom", mm(given, "round")
    if step.technique == "join panels":
        yield "measured", f"{word_of(step, 'of')}.bottom", mm(given, "whole")
    if step.technique == "darts":
        edge, many = edge_of(step, "edge"), int(done.step.amounts["count"].as_number())
        yield "marked", edge, 2 * mm(given, "first") + (many - 1) * mm(given, "every")
        yield "measured", edge, mm(given, "lies")
    for action in given.actions:
        if action.message == "level-waist-mark-flat":
            name = edges_of(step, "edge")[0]
            yield "marked", name, 2 * mm(action.values, "margin") + 4 * mm(action.values, "quarter")
        if action.message in ("band-casing-mark", "fitted-waistband-mark"):
            parts = given.values["parts"]
            assert isinstance(parts, int)
            yield "marked", edge_of(step, "to"), parts * mm(action.values, "part")
        if action.message == "dipped-hem-mark":
            yield "marked", edge_of(step, "edge"), 4 * mm(given, "quarter")
        if action.message.startswith("gather-fold"):
            yield "marked", edge_of(step, "edge"), int(str(given.values["parts"])) * mm(given, "cloth-part")
        if action.message.startswith("mark-parts"):
            parts = given.values["parts"]
            assert isinstance(parts, int)
            for name in _edge(action.values["marked"]):
                yield "marked", name, parts * mm(action.values, "part")
        place = action.values.get("place")
        if step.technique == "neaten" and isinstance(place, Part) and "edge" in place.values:
            for name in _edge(place.values["edge"]):
                yield "sewn along", name, mm(place.values, "length")


def _edge(said: object) -> tuple[str, ...]:
    """The piece edge that a value names; nothing where it names a stack."""
    return (f"{said.names[0]}.{said.side}",) if isinstance(said, Pieces) and said.side and len(said.names) == 1 else ()


def mm(values: Instructions | Mapping[str, object], name: str) -> float:
    value = (values.values if isinstance(values, Instructions) else values)[name]
    assert isinstance(value, Length)
    return float(value.mm)


def held_to_the_cloth(solved: Solved, performed: Sequence[Performed], room: Workroom) -> int:
    """How many lengths were compared."""
    say, compared = Phrasing(solved, room), 0
    for at, done in enumerate(performed):
        if technique_of(done.step.written).name == done.step.written.technique and _own(done):
            continue
        for what, name, length in told(done, say):
            # What is marked or sewn along is the edge before the step; what is measured comes after it.
            cloth = cut_edge(solved, performed[: at + (what == "measured")], name)
            if cloth is None:
                continue
            compared += 1
            assert length == pytest.approx(cloth, abs=NEAR), f"{done.step.written.technique}: {what} {name}"
    return compared


def _own(done: Performed) -> bool:
    return done.step.written.technique == "shell edge"


@pytest.mark.parametrize("name", SMALL)
def test_what_is_told_along_a_cut_edge_is_its_length(name: str) -> None:
    pieces, steps = SMALL[name]
    worked = sound(pieces, steps, materials=ZIP)
    assert held_to_the_cloth(worked.solved, worked.performed, worked.room) >= 1


def test_what_is_told_of_every_technique_is_what_the_cloth_has() -> None:
    compared = 0
    for pieces, steps in GARMENTS.values():
        worked = work(pieces, steps, own=OWN, materials=SUPPLIES)
        compared += held_to_the_cloth(worked.solved, worked.performed, worked.room)
    assert compared >= 10


@pytest.mark.parametrize(("name", "size"), EVERY_SIZE)
def test_what_is_told_in_every_demo_is_what_the_cloth_has(name: str, size: str) -> None:
    made = order(name, size)
    proved = prove(made).value
    assert proved is not None
    held_to_the_cloth(proved.solved, proved.run.performed, made.room)


def test_a_yoke_is_measured_at_its_cut_edge_not_at_its_seam_line() -> None:
    worked: Worked = sound(*YOKE)
    # From 112 to 150 cm over 12 cm, and 1 cm of margin below: 150 + 38 / 12.
    assert "Measure round the lower edge of the yoke: 153.2 cm." in worked.words()


def test_the_margins_of_an_open_seam_are_measured_with_the_edge() -> None:
    words = sound(*BUTTONED).words()
    # 112 cm and two margins of 1.5 cm; 14 cm between the marks.
    assert "every 14 cm, 8 in all, the first 8.5 cm from one end" in words
    # 30 cm on a seam line 1 cm below the edge, by darts of 12 cm: 115 - 30 x 12 / 11.
    assert "both margins of the open seam: 82.3 cm." in words


def test_what_tucks_have_taken_is_not_measured_again_on_a_lined_piece() -> None:
    pieces = "apron: {from: lawn, length: 64 cm, depth: 56 cm}\nlining: {from: lawn, length: 64 cm, depth: 56 cm}"
    steps = """- tucks: {edge: apron.bottom, depth: 1 cm, count: 3, space: 5 mm, from edge: 4 cm}
    - bagged lining: {piece: apron, lining: lining, seam: 1 cm, leave open: top}"""
    # 56 cm when finished and the seam at the top still to come, which nothing takes here; three tucks of 2 cm are gone.
    assert "It measures 64 cm by 56 cm." in work(pieces, steps).words()


def test_a_vent_is_sewn_and_hemmed_with_the_cloth_that_is_there() -> None:
    words = sound(*VENT).words()
    # A hem of 4 cm and 1 cm to turn under lie below the 20 cm; one margin of 4 cm stays out beside 120 cm.
    assert "from the bottom edge to the end of the opening, 25 cm" in words
    assert "a stitch every 8 mm, 124 cm." in words


def test_on_a_levelled_waist_a_line_is_measured_from_below() -> None:
    row = "    row: {from: net, length: 300 cm, depth: 14 cm}\n"
    on_it = """    - join ends: {of: row}
    - headed row: {edge: row.top, on: skirt, HEIGHT, heading: 2 cm}
    - zip"""
    for height, said in (
        ("above hem: 8 cm", "9.5 cm above its cut bottom edge"),
        ("below top: 40 cm", "21.5 cm above"),
    ):
        steps = GORED[1].replace("    - zip", on_it.replace("HEIGHT", height))
        # The hem takes 1.5 cm; 60 cm deep, 40 cm down is 20 cm above the hem.
        assert said in work(GORED[0] + "\n" + row, steps, materials=ZIP).words()


def test_a_line_below_a_waist_that_is_level_is_measured_from_there() -> None:
    pieces = "base: {from: net, length: 120 cm, depth: 60 cm}\nrow: {from: net, length: 300 cm, depth: 14 cm}"
    steps = """- join ends: {of: base}
    - join ends: {of: row}
    - headed row: {edge: row.top, on: base, below top: 40 cm, heading: 2 cm}"""
    assert "40 cm below its cut top edge" in work(pieces, steps).words()


def test_the_rectangle_of_gores_is_as_wide_as_it_is_cut() -> None:
    """Head to tail: 22.9 cm at a cut hem and 2.5 at a cut top, so 2 x 25.4 + 20.4 / 2 = 61 cm, up to the next 5 mm."""
    text = spec_text(
        "godet: {from: lawn, count: 4, length: 5 mm, depth: 22 cm}",
        """- gores: {piece: godet, hem: 20 cm, sides: both slanting}
        - join ends: {of: godet, seam: 1 cm, into: one ring}
        - narrow hem: {edge: godet.bottom, first turn: 5 mm, second turn: 5 mm}""",
    ).replace("rounding: 0 mm", "rounding: 5 mm")
    read = read_spec(("small.yaml", text.encode()))
    assert read.value is not None
    body = size_body(read.value, "M")
    assert body.value is not None
    solved = numbers(Order(read.value, "size M", body.value, {}, Workroom())).value
    assert solved is not None
    assert [float(each) for each in solved.pieces["godet"].blank] == [610, 230]


def test_a_centre_beyond_the_cloth_is_drawn_on_paper() -> None:
    pieces = "panel: {from: lawn, count: 2, length: 49 cm, depth: 55 cm}"
    steps = "- ring cut: {piece: panel, hem: 98 cm}\n- join ends: {of: panel, seam: 15 mm, into: one ring}"
    assert "beyond the upper edge, on paper taped to the table." in work(pieces, steps).words()


@pytest.mark.parametrize("flared", [True, False])
def test_where_marks_lie_closer_at_the_cut_edge_than_on_the_seam_line_the_guide_says_both(flared: bool) -> None:
    """What is matched to them is marked by the seam line, so two numbers that should be one stand there: said, not left."""
    pieces = """skirt: {from: lawn, count: 4, length: 20 cm, depth: 60 cm}
band: {from: lawn, length: 83 cm, depth: 3 cm}"""
    cut = "- gores: {piece: skirt, hem: 45 cm, sides: both slanting}\n" if flared else ""
    steps = f"""{cut}- neaten: {{edge: skirt.start}}
- neaten: {{edge: skirt.end}}
- join ends: {{of: skirt, seam: 15 mm, open: 20 cm, into: one ring}}
- fitted waistband: {{band: band, to: skirt.top, overlap: 3 cm}}"""
    words = work(pieces, steps).words()
    # 80 cm on the seam line; 1 cm higher a flare of 4 x 25 cm over 60 cm takes 1.7 cm of it, and 3 cm are margins.
    assert ("On the seam line that makes" in words) is flared
