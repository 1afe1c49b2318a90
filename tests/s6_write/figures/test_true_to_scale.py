"""Drawn lengths against the lengths they stand for, worked out here from the plan and the rehearsal alone."""

from __future__ import annotations

import re

import pytest
from furbelow.garment.tags import tag
from furbelow.s4_cut.marks import by_ruler, table_marks
from furbelow.s6_write.figures.language import RIGHT_SIDE
from furbelow.s6_write.guide.guide import Figure

from tests.demos.demos import guide

from .drawn import demos, figures, planned, root, sizes, view, words

SVG = "{http://www.w3.org/2000/svg}"


def _boxes(figure: Figure) -> list[tuple[float, float, float, float]]:
    """Left, top, width and height of every closed rectangle of cloth drawn with an outline."""
    found = []
    for path in root(figure).iter(f"{SVG}path"):
        if path.attrib.get("fill") != RIGHT_SIDE or "stroke" not in path.attrib:
            continue
        numbers = [float(part) for part in re.findall(r"-?\d+", path.attrib["d"])]
        if len(numbers) == 8:
            x, y, right, _, _, down, _, _ = numbers
            found.append((x, y, right, down))
    return found


@pytest.mark.parametrize("demo", demos())
@pytest.mark.parametrize("room", ["home", "wardrobe"])
def test_every_segment_is_cut_on_the_drawing_at_one_scale(demo: str, room: str) -> None:
    size = sizes(demo)[1]
    found = planned(demo, size, room)
    for name in found.cutting.sheets:
        plan = found.cutting.sheet(name).plan
        drawn = [
            box
            for figure in figures(demo, size, room)
            if figure.key.startswith(f"cut-{name}-")
            for box in _boxes(figure)
        ]
        cut = [
            (segment.length, lane.depth)
            for section in plan.sections
            for lane in section.lanes
            for segment in lane.segments
        ]
        assert len(drawn) == len(cut)
        longest = max(cut)[0]
        scale = max(box[2] for box in drawn) / float(longest)
        for (_, _, wide, deep), (length, depth) in zip(drawn, cut, strict=True):
            assert wide == pytest.approx(float(length) * scale, abs=2)
            assert deep == pytest.approx(float(depth) * scale, abs=2)


@pytest.mark.parametrize("demo", demos())
def test_segments_on_a_drawing_do_not_lie_on_each_other(demo: str) -> None:
    for figure in figures(demo, sizes(demo)[0]):
        if not figure.key.startswith("cut-"):
            continue
        boxes = _boxes(figure)
        for index, (x, y, wide, deep) in enumerate(boxes):
            for other_x, other_y, other_wide, other_deep in boxes[index + 1 :]:
                apart = (
                    x + wide <= other_x + 1
                    or other_x + other_wide <= x + 1
                    or y + deep <= other_y + 1
                    or other_y + other_deep <= y + 1
                )
                assert apart, figure.key


@pytest.mark.parametrize("demo", demos())
def test_every_segment_is_named_on_the_drawing_and_every_tape_has_its_distance(demo: str) -> None:
    size = sizes(demo)[0]
    found = planned(demo, size)
    say_length = found.rehearsal.run.say.length
    for name in found.cutting.sheets:
        plan = found.cutting.sheet(name).plan
        said = " ".join(
            line.text
            for figure in figures(demo, size)
            if figure.key.startswith(f"cut-{name}-")
            for line in words(figure)
        )
        for section in plan.sections:
            for lane in section.lanes:
                for segment in lane.segments:
                    part = segment.part if segment.parts > 1 else 0
                    assert tag(found.cutting.marks[segment.strip], segment.copy, part) in said
        tapes = [figure for figure in figures(demo, size) if figure.key.startswith(f"tapes-{name}")]
        texts = {line.text for figure in tapes for line in words(figure)}
        for section in (each for each in plan.sections if not by_ruler(plan, each)):
            assert {say_length(mark.distance) for mark in table_marks(section)} <= texts


@pytest.mark.parametrize("demo", demos())
def test_the_piece_view_says_every_length_and_depth_of_what_is_worked(demo: str) -> None:
    size = sizes(demo)[0]
    run = planned(demo, size).rehearsal.run
    drawn = {figure.key: figure for figure in figures(demo, size)}
    seen = 0
    for done in run.performed:
        figure = drawn.get(f"step-{done.step.written.index + 1}-piece")
        if figure is None or done.step.written.technique in ("join strips", "neaten"):
            continue
        texts = [line.text for line in words(figure)]
        for piece in done.touches:
            assert any(run.say.length(done.after.depth(piece)) in text for text in texts), (figure.key, piece)
        seen += 1
    assert seen >= 5


def test_a_figure_that_leaves_the_middle_out_says_so() -> None:
    for demo in demos():
        for figure in figures(demo, sizes(demo)[0]):
            if not figure.key.endswith("-piece"):
                continue
            said = any("middle is left out" in line.text for line in words(figure))
            assert said == ("depths to one scale, widths in proportion" in figure.caption), figure.key


@pytest.mark.parametrize("demo", demos())
def test_figures_are_no_taller_than_a_page_takes(demo: str) -> None:
    # A4 less margins is 180 mm wide and 261 mm high: the drawing fits its width at a ratio of 1.45.
    parts = guide(demo, sizes(demo)[0]).parts
    drawn = [figure for part in parts for operation in part.operations for figure in operation.figures]
    assert drawn
    for figure in drawn:
        _, top, right, bottom = view(figure)
        if figure.key.startswith("step-"):
            assert bottom - top <= 1.45 * right, figure.key


@pytest.mark.parametrize("demo", demos())
def test_a_name_beside_what_stays_over_leads_into_its_piece(demo: str) -> None:
    # A leader ends inside what it names, with a dot (ISO 128-22, from memory).
    for size in sizes(demo):
        for figure in (each for each in figures(demo, size) if each.key.startswith("cut-")):
            boxes = _boxes(figure)
            for x, y in _dots(figure):
                assert any(left < x < left + wide and top < y < top + deep for left, top, wide, deep in boxes), (
                    figure.key
                )


def test_a_narrow_piece_with_cloth_over_beside_it_is_led_to() -> None:
    assert len(_dots(next(each for each in figures("peony", "B") if each.key.startswith("cut-")))) == 1


def _dots(figure: Figure) -> list[tuple[float, float]]:
    """The middles of small discs."""
    discs = re.findall(r'd="M(-?\d+) (-?\d+)a(\d+) ', figure.svg)
    return [(float(x) + float(radius), float(y)) for x, y, radius in discs if float(radius) < 30]


@pytest.mark.parametrize("demo", demos())
def test_a_size_on_what_stays_over_reads_as_in_the_sentence(demo: str) -> None:
    for size in sizes(demo):
        for operation in guide(demo, size, at_home=True).cut:
            told = {
                size
                for step in operation.steps
                for size in re.findall(r"([\d.]+ cm) x ([\d.]+ cm)", step.check.replace("\u00a0", " "))
            }
            for figure in operation.figures:
                for over in re.findall(r">([\d.]+ cm) × ([\d.]+ cm)<", figure.svg.replace("\u00a0", " ")):
                    if min(float(each.split()[0]) for each in over) >= 20:
                        assert over in told or over[::-1] in told, (figure.key, over, told)
