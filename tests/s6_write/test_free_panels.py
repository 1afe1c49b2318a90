"""How a garment of panels that lie freely is told: every place in figures and steps, and in the order that works."""

from __future__ import annotations

import re
from fractions import Fraction
from functools import cache
from itertools import combinations, product

from furbelow.compare.ways_to_cut import as_data, as_text, ways_to_cut
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.tags import tag
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import Planned, plan, prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.body import size_body
from furbelow.s4_cut.cut import Cutting, cut_prices
from furbelow.s4_cut.plan import Panel, Section
from furbelow.s5_buy.class_cutting import Garment
from furbelow.s5_buy.class_cutting import class_cutting as cut_together
from furbelow.s5_buy.class_order import class_order
from furbelow.s6_write.figures import cutting_figures
from furbelow.s6_write.figures.free_panels import FreePanels
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.compose import compose
from furbelow.s6_write.guide.cutting_pages import cloth_steps
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.guide.panel_steps import panel_steps
from furbelow.s6_write.pages.class_cutting import class_cutting
from furbelow.s6_write.pages.class_page import class_words
from furbelow.s6_write.words.words import Words

from tests.demos.demos import cutting_of
from tests.s4_cut.cases import cm
from tests.s4_cut.test_panels import PINWHEEL
from tests.s4_cut.verify_plan import faults
from tests.s6_write.figures.drawn import view, words

SPEC = """\
furbelow: 1
title: Apron for the wardrobe
units: metric
rounding: 5 mm
body:
  waist_girth: {from: 40 cm, to: 140 cm}
  hip_girth: {from: 40 cm, to: 150 cm}
sizes:
  M: {waist_girth: 78 cm, hip_girth: 104 cm}
worn: {from: waist, over: hip_girth, ease: 5 cm, held by: the test}
materials:
  lawn: {kind: cloth, about: striped lawn, fibre: cotton, width: 62 cm, weight: 80 g/m2, ravels: yes, price: 19 EUR/m}
pieces:
  apron: {from: lawn, length: 60 cm, depth: 50 cm}
  lining: {from: lawn, length: 60 cm, depth: 50 cm}
  waistband: {from: lawn, length: 60 cm, depth: 4 cm}
  tie: {from: lawn, count: 2, length: 85 cm, depth: 4 cm}
steps:
  - bagged lining: {piece: apron, lining: lining, leave open: top}
  - stack layers: {layers: [apron.top, {edge: lining.top, right side: in}], as: apron_top}
  - fitted waistband: {band: waistband, to: apron_top, fasten: ties, overlap: 0 cm}
  - tie ends: {tie: tie, to: waistband}
"""


@cache
def apron() -> Planned:
    spec = read_spec(("apron.yaml", SPEC.encode())).value
    assert spec is not None
    body = size_body(spec, "M").value
    assert body is not None
    proved = prove(Order(spec, "size M", body, {}, Workroom()))
    assert proved.value is not None, proved.faults
    planned = plan(proved.value).value
    assert planned is not None
    return planned


def told(planned: Planned) -> tuple[Words, Section, Cutting]:
    cutting = planned.cutting
    (section,) = cutting.sheet("lawn").plan.sections
    say = Phrasing(planned.rehearsal.run.solved, planned.rehearsal.run.room, cutting.joins, cutting.lengths)
    return Words("en", say), section, cutting


def drawing() -> Figure:
    english, _, cutting = told(apron())
    (figure,) = cutting_figures(cutting, apron().rehearsal.run.solved, english, "lawn")
    return figure


def test_the_apron_is_laid_freely_and_its_plan_is_right() -> None:
    sheet = apron().cutting.sheet("lawn")
    assert [bool(section.panels) for section in sheet.plan.sections] == [True]
    assert faults(sheet.plan, sheet.strips, sheet.bolt, cut_prices(sheet.price, Workroom())) == []


def test_every_panel_is_chalked_once_at_its_distances_from_the_end_and_the_edge() -> None:
    english, section, cutting = told(apron())
    english.read("cutting")
    steps = [step.text for step in cloth_steps(cutting, cutting.sheet("lawn"), english)]
    chalked = [text for text in steps if text.startswith("Chalk ") and "with a ruler" in text]
    assert len(chalked) == len(section.panels) == 5
    for panel in section.panels:
        (text,) = [text for text in chalked if text.startswith(f"Chalk {tag(cutting.marks[panel.strip], panel.copy)} ")]
        near, far, low, high = (Fraction(n) for n in re.findall(r"(\d+(?:\.\d)?) ?(?:cm)?\b", text)[-4:])
        assert (near * 10, far * 10) == (panel.from_end, panel.from_end + panel.length)
        assert (low * 10, high * 10) == (panel.from_edge, panel.from_edge + panel.width)


def test_straight_cuts_come_after_the_chalk_and_free_every_panel() -> None:
    english, section, cutting = told(apron())
    english.read("cutting")
    steps = [step.text for step in cloth_steps(cutting, cutting.sheet("lawn"), english)]
    chalk = [number for number, text in enumerate(steps) if text.startswith("Chalk ") and "with a ruler" in text]
    cuts = [number for number, text in enumerate(steps) if text.startswith("Cut straight through along the line ")]
    assert min(cuts) > max(chalk)
    # Five panels are parted by four cuts; the others take off what stays over.
    assert sum("away." in steps[number] for number in cuts) == len(section.panels) - 1
    assert steps[max(cuts) + 1] == "Cut off what stays over beside 3a, along the lines."


def test_panels_that_no_straight_cut_parts_are_cut_round_with_shears() -> None:
    english, _, _ = told(apron())
    section = Section(cm(0), cm(90), (), panels=PINWHEEL)
    laid, cut = panel_steps(section, cm(90), {"panel": "P"}, "lawn", True, english)
    steps = [*laid, *cut]
    assert steps[-1].text == "Cut round each panel along its lines with shears, the outermost first."
    assert [row.text.split()[1] for row in steps[1:-1]] == ["Pa", "Pb", "Pc", "Pd"]


def test_cloth_without_a_right_side_may_lie_either_face_up() -> None:
    english, section, cutting = told(apron())
    assert "wrong side up" in panel_steps(section, cm(62), cutting.marks, "lawn", True, english)[0][0].text
    assert "either face up" in panel_steps(section, cm(62), cutting.marks, "lawn", False, english)[0][0].text


def test_cloth_longer_than_the_table_is_measured_on_from_a_line() -> None:
    solved, (_, section, cutting) = apron().rehearsal.run.solved, told(apron())
    for table, says in ((cm(100), True), (cm(186), False), (None, True)):
        english = Words("en", Phrasing(solved, Workroom(table_length=table), {}, {}))
        first = panel_steps(section, cm(62), cutting.marks, "lawn", True, english)[0][0].text
        assert ("measure on from that line" in first) == says


def test_the_drawing_names_every_panel_and_gives_every_distance() -> None:
    english, section, cutting = told(apron())
    texts = {line.text for line in words(drawing())}
    for panel in section.panels:
        assert tag(cutting.marks[panel.strip], panel.copy) in texts
        assert {english.say.cut(panel.from_end + panel.length), english.say.cut(panel.from_edge + panel.width)} <= texts
        assert {english.say.cut(at) for at in (panel.from_end, panel.from_edge) if at} <= texts


def test_words_on_the_drawing_do_not_lie_on_each_other_or_leave_the_sheet() -> None:
    left, top, right, bottom = view(drawing())
    for one, other in combinations(words(drawing()), 2):
        assert not one.meets(other), (one.text, other.text)
    for line in words(drawing()):
        assert left <= line.left < line.right <= right, line.text
        assert top <= line.top < line.bottom <= bottom, line.text


def test_a_crowd_of_small_panels_still_has_every_name() -> None:
    english, _, _ = told(apron())
    panels = tuple(
        Panel("tab", None, 1 + row + 4 * column, cm(12 * column), cm(9 * row), cm(12), cm(9))
        for column in range(9)
        for row in range(4)
    )
    sheet = Sheet()
    drawn = FreePanels(Section(cm(0), cm(108), (), panels=panels), 360.0, {"tab": "7"}, english, 0.2, True)
    assert drawn.draw(sheet, 0) <= drawn.high
    for number in range(1, 37):
        assert f">{tag('7', number)}<" in sheet.svg()
    assert not any(one.meets(other) for one, other in combinations(sheet.words, 2))


def test_the_whole_guide_is_written_without_a_figure_of_tapes() -> None:
    planned = apron()
    guide = compose(planned.rehearsal, planned.cutting, planned.shopping, "size M")
    assert [figure.key for operation in guide.cut for figure in operation.figures] == ["cut-lawn-1"]
    assert all(line.note == "whole" for line in guide.cutting)


def test_a_class_marks_every_panel_with_its_number() -> None:
    planned = apron()
    solved = planned.rehearsal.solved
    garment = Garment(solved.pieces, planned.cutting, planned.shopping)
    garments = {1: garment, 2: garment}
    order = class_order(garments, cut_together(garments, Workroom()), solved, Workroom())
    sheet = order.cutting.sheet("lawn")
    assert faults(sheet.plan, sheet.strips, sheet.bolt, cut_prices(sheet.price, Workroom())) == []
    guide = class_cutting(order, [order.cutting], 1, "two makers", (), class_words(order))
    cut = " ".join(step.text for step in cutting_of(guide))
    for number, name in product("12", ("1a", "2a", "3a", "4a", "4b")):
        assert f"{number}-{name}" in cut


def test_the_listing_tells_where_every_panel_lies_and_what_marking_costs() -> None:
    planned = apron()
    ways = ways_to_cut(planned)
    text = as_text(planned, ways, "size M")
    assert "section 1, 186 cm of the bolt, panels chalked one by one, straight cuts from side to side" in text
    assert "    1a: 0 cm to 62 cm from the end, 0 cm to 52 cm from the long edge" in text
    assert "21 cuts and marks 1.05" in text  # one for the section, four for each of five panels, at 0.05
    (section,) = as_data(planned, ways, "size M")["cloths"][0]["plan"]
    assert section["lanes"] == []
    assert {
        (each["mark"], each["from_end"], each["from_edge"], each["length"], each["width"]) for each in section["panels"]
    } >= {("1a", 0, 0, 620, 520)}
