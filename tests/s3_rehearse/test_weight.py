"""What the garment weighs, and why."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.s2_solve.why import why
from furbelow.s3_rehearse.finished_garment import reasons_of
from furbelow.s3_rehearse.run import Run
from furbelow.s3_rehearse.weight import Weight, show_weight, weight_of
from furbelow.s6_write.pages.why_text import WhyText
from furbelow.verbs.command import run as command

from tests.techniques.small import Worked, sound

SKIRT = """skirt: {from: lawn, length: 118 cm, depth: 60 cm}"""
SEWN = """- join ends: {of: skirt, seam: 1 cm}
- neaten: {seam: skirt.ends}
- narrow hem: {edge: skirt.bottom, first turn: 5 mm, second turn: 15 mm}
- folded casing: {edge: skirt.top, depth: 25 mm, turn under: 5 mm, gap: 5 cm}
- insert elastic: {elastic: elastic, into: skirt.top, length: 68 cm, overlap: 2 cm}
- close gap: {of: skirt.top}"""


def run_of(worked: Worked) -> Run:
    return Run(worked.solved, worked.room, tuple(worked.performed), worked.bench)


def weighed(pieces: str, steps: str, **how: str) -> Weight:
    return weight_of(run_of(sound(pieces, steps, **how)))


def test_a_rectangle_weighs_its_cut_area_times_its_cloth() -> None:
    # Cut 120 cm x 65 cm: 60 cm, 2 cm of hem, 3 cm of casing. 1.2 m x 0.65 m x 80 g/m2 = 62.4 g, on paper.
    weight = weighed(SKIRT, SEWN)
    assert weight.grams == Fraction("62.4")
    assert weight.left_out == ("elastic",)
    assert weight.unknown == ()


def test_an_elastic_and_a_trim_count_where_their_weight_is_known() -> None:
    trimmed = SEWN.replace(
        "- narrow hem: {edge: skirt.bottom, first turn: 5 mm, second turn: 15 mm}",
        "- edge with trim: {edge: skirt.bottom, trim: braid, turn up: 1 cm, overlap: 2 cm}",
    ).replace("elastic: elastic", "elastic: firm")
    weight = weighed(
        SKIRT,
        trimmed,
        materials="""\
  braid: {kind: trim, width: 20 mm, weight: 10 g/m}
  firm: {kind: elastic, width: 20 mm, stretch: 100%, weight: 500 g/m2}
""",
    )
    # Cloth 1.2 m x 0.64 m x 80; braid 118 + 2 cm x 10 g/m; elastic 68 + 2 + 10 cm to try it on x 2 cm x 500 g/m2.
    assert weight.reasons["skirt.weight"].value.as_mass_g() == Fraction("61.44")
    assert weight.reasons["braid.used_weight"].value.as_mass_g() == 12
    assert weight.reasons["firm.used_weight"].value.as_mass_g() == 8
    assert weight.grams == Fraction("81.44")
    assert weight.left_out == ()


def test_copies_weigh_as_many_times() -> None:
    layered = SEWN.replace("- folded", "- stack layers: {layers: [skirt.top], as: both}\n- folded").replace(
        "skirt.top, depth", "both, depth"
    )
    pieces = SKIRT.replace("from: lawn", "from: lawn, count: 2")
    one, two = (
        weighed(SKIRT, SEWN),
        weighed(pieces, layered.replace("into: skirt.top", "into: both").replace("of: skirt.top", "of: both")),
    )
    assert one.grams is not None
    assert two.grams == 2 * one.grams


def test_a_ring_weighs_what_lies_between_its_arcs_and_not_its_rectangle() -> None:
    pieces = f"{SKIRT}\nflounce: {{from: net, length: 118 cm, depth: 25 cm}}"
    steps = (
        SEWN.replace("- narrow hem: {edge: skirt.bottom, first turn: 5 mm, second turn: 15 mm}\n", "")
        + """
- ring cut: {piece: flounce, hem: 168 cm}
- join ends: {of: flounce, seam: 1 cm}
- attach: {edge: flounce.top, to: skirt.bottom, seam: 1 cm}
- neaten: {seam: flounce.top}"""
    )
    worked = sound(pieces, steps)
    weight = weight_of(run_of(worked))
    # An angle of (168 - 118) / 25 = 2; radii 118 / 2 = 59 cm less 1 cm of seam, and 59 + 25 = 84 cm; ends of 1 cm.
    area_cm2 = (84**2 - 58**2) + 2 * (84 - 58)
    assert weight.reasons["flounce.cut_area"].value.value == area_cm2 * 100
    assert weight.reasons["flounce.weight"].value.as_mass_g() == Fraction(area_cm2, 10_000) * 25
    piece = worked.solved.pieces["flounce"]
    assert area_cm2 * 100 < piece.blank[0] * piece.blank[1]


def test_a_cloth_without_a_weight_is_named_and_nothing_is_guessed() -> None:
    run = run_of(sound(SKIRT, SEWN))
    lawn = run.solved.materials["lawn"]
    without = {**run.solved.materials, "lawn": lawn._replace(amounts={"width": lawn.amounts["width"]})}
    weight = weight_of(Run(run.solved._replace(materials=without), run.room, run.performed, run.final))
    assert weight.grams is None
    assert weight.unknown == ("lawn",)
    assert "weight" not in weight.reasons


def test_the_reason_goes_down_to_the_lines_of_the_spec() -> None:
    run = run_of(sound(SKIRT, SEWN))
    solved = run.solved._replace(values={**reasons_of(run), **run.solved.values})
    reason = why(solved, "weight").value
    assert reason is not None
    told = WhyText(solved, run.room).text(reason)
    assert told.startswith("weight = 62.4 g\n    skirt.weight = 62.4 g\n")
    assert "skirt.count * skirt.cut_length * skirt.cut_depth * lawn.weight = 1 * 120 cm * 65 cm * 80 g/m2" in told
    assert "lawn.weight = 80 g/m2  [small.yaml, line" in told


def test_why_answers_from_the_command_line(capsys: pytest.CaptureFixture[str]) -> None:
    assert command(["why", "specs/larkspur.yaml", "weight", "--size", "M"]) == 0
    told = capsys.readouterr().out
    assert told.splitlines()[1].strip() == (
        "upper.weight + flounce.weight + lining.weight + waistband.weight = 25.67 g + 111.37 g + 74.2995 g + 12.008 g"
    )
    assert told.startswith("weight = 223.3475 g\n")


def test_a_makers_own_number_of_that_name_goes_first(capsys: pytest.CaptureFixture[str]) -> None:
    # `layers` is a choice of this garment.
    assert command(["why", "specs/larkspur.yaml", "layers", "--size", "M"]) == 0
    assert capsys.readouterr().out.startswith("layers = 2  [")


@pytest.mark.parametrize(
    ("grams", "metric", "inch"),
    [(Fraction("223.3475"), "223 g", "7.9 oz (223 g)"), (Fraction(1234), "1.23 kg", "43.5 oz (1.23 kg)")],
)
def test_a_weight_is_shown_as_a_kitchen_scale_does(grams: Fraction, metric: str, inch: str) -> None:
    assert show_weight(grams, "metric") == metric
    assert show_weight(grams, "inch") == inch
