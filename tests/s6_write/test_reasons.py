"""Each reason in a guide says what `furbelow why` says, down to what was written or measured."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from dataclasses import asdict
from fractions import Fraction
from typing import Any

import pytest
from furbelow.garment.technique import word_of
from furbelow.garment.workroom import Workroom
from furbelow.measure.formula import Formula, evaluate, parse_formula
from furbelow.measure.quantity import Quantity
from furbelow.measure.units import LENGTH
from furbelow.order.chain import plan, prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.why import why
from furbelow.s3_rehearse.finished_garment import reasons_of
from furbelow.s6_write.guide.compose import compose
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.pages.json_page import to_json
from furbelow.s6_write.pages.markdown_page import markdown
from furbelow.s6_write.pages.page import html
from furbelow.s6_write.pages.why_lines import WhyLine, WhyLines
from furbelow.s6_write.pages.why_text import WhyText
from furbelow.s6_write.words.messages import Messages

from tests.demos.demos import NAMES, order, spec, theatre
from tests.small_guide import small_guide

SKIRT = """
- french seam: {of: skirt}
- narrow hem: {edge: skirt.bottom}
- folded casing: {edge: skirt.top, depth: 24 mm}
- insert elastic: {elastic: elastic, into: skirt.top, length: waist_girth - 8 cm}
- close gap: {of: skirt.top}
"""
SIZES = [(name, size) for name in NAMES for size in list(spec(name).sizes)[::3]]


def _made(name: str, size: str, room: Workroom | None = None) -> tuple[Any, Guide]:
    """What was solved, with what is only known of the whole garment, and the guide."""
    proved = prove(order(name, size, room or theatre())).value
    assert proved is not None
    planned = plan(proved).value
    assert planned is not None
    solved, run = planned.rehearsal.solved, planned.rehearsal.run
    known = solved._replace(values={**reasons_of(run), **solved.values})
    return known, compose(planned.rehearsal, planned.cutting, planned.shopping, f"size {size}")


def _trees(guide: Guide) -> Iterator[dict[str, Any]]:
    read = json.loads(to_json(guide))
    operations = [operation for part in read["parts"] for operation in part["operations"]]
    yield from (fact["why"] for fact in read["facts"] if fact["why"])
    for told in (*read["cutting"], *operations):
        yield from told["why"]


def _as_why_says(tree: dict[str, Any]) -> dict[str, Any]:
    """The tree with the keys of `furbelow why --format json`, without what is the guide's own: words and places."""
    keys = {"with_numbers": "with_values", "from": "inputs"}
    kept = {keys.get(key, key): value for key, value in tree.items() if key not in ("label", "text", "place", "origin")}
    if isinstance(kept.get("value"), dict):  # the answer gives the number and its unit too
        kept["value"] = kept["value"]["shown"]
    if "inputs" in kept:
        kept["inputs"] = [_as_why_says(each) for each in kept["inputs"]]
    return kept


@pytest.mark.parametrize(("name", "size"), SIZES)
def test_each_reason_is_what_why_says(name: str, size: str) -> None:
    solved, guide = _made(name, size)
    trees, told = list(_trees(guide)), WhyText(solved, Workroom())
    assert len(trees) >= 20
    for tree in trees:
        reason = why(solved, tree["name"]).value
        assert reason is not None
        assert _as_why_says(tree) == _as_why_says(told.data(reason))


@pytest.mark.parametrize(("name", "size"), SIZES)
def test_every_cut_and_finished_size_and_every_measurement_has_its_reason(name: str, size: str) -> None:
    solved, guide = _made(name, size)
    told = set(guide.told_why)
    # A ring is cut by its radii, and gores of several widths by their marks, which their steps say.
    shaped = {
        word_of(step, "piece")
        for step in spec(name).steps
        if step.technique == "ring cut" or step.technique == "gores" and "front" in step.args
    }
    for piece in solved.pieces:
        cut = () if piece in shaped else ("cut_length", "cut_depth")
        assert {f"{piece}.{what}" for what in ("length", "depth", *cut, "count")} <= told
    without = {fact.label for fact in guide.facts if fact.name not in told}
    assert without <= {
        "length of each layer",
        "finished length, top to hem",
        "length in front",  # of a hem that dips, by the rehearsal
        "length at the sides",
        "waist, closed",
        "opening below the waist",
        "time for all of it, about",
        "of which cutting",
    }


@pytest.mark.parametrize(("name", "size"), SIZES)
def test_the_sum_in_plain_words_has_the_value_that_it_ends_with(name: str, size: str) -> None:
    """The numbers of a plain sum are added up here; formulas with more than sums are left to the solver's own tests."""
    solved, guide = _made(name, size)
    added = 0
    for reason in guide.reasons:
        terms = re.split(r" ([+-]) ", reason.with_numbers)
        if reason.rounding or len(terms) < 3 or not reason.inputs or re.search(r"[*/(]| / ", reason.formula):
            continue
        value = solved.values[reason.name].value
        if value.dims != LENGTH:
            continue  # weights are shown to four decimals
        total = sum(int(f"{sign}1") * _length(term) for sign, term in zip(("+", *terms[1::2]), terms[::2], strict=True))
        assert total == value.as_length_mm(), reason.name
        assert reason.told.endswith(f" = {reason.value}")
        added += 1
    assert added > 5


def _nothing(name: str) -> Quantity:
    raise KeyError(name)


def _length(term: str) -> Fraction:
    parsed = parse_formula(term)
    assert isinstance(parsed, Formula)
    value = evaluate(parsed, _nothing)
    assert isinstance(value, Quantity)
    return value.as_length_mm()


def test_a_gathered_edge_says_why_it_is_drawn_in_so_far() -> None:
    _, guide = _made("larkspur", "M")
    asked = {operation.title: operation.why for part in guide.parts for operation in part.operations if operation.why}
    assert asked == {
        "Gather the top edge of the flounce": ("upper.length",),
        "Gather the net top": ("lining.length",),
        "Draw in the elastic": ("step 19.length",),
    }


@pytest.mark.parametrize("name", NAMES)
def test_words_for_makers_only_are_not_shown_to_a_reader(name: str) -> None:
    _, guide = _made(name, next(iter(spec(name).sizes)))
    for reason in guide.reasons:
        assert not re.search(r"_|\*|->|step \d|\bmax\(|\bmin\(", f"{reason.label} {reason.told}"), reason.told


def _numbers(line: WhyLine) -> int:
    return 1 + sum(_numbers(below) for below in line.below)


def test_a_reason_goes_no_deeper_than_three_numbers_and_links_to_the_rest() -> None:
    _, guide = _made("larkspur", "M")
    lines = WhyLines(guide, Messages("en"))
    for name in guide.told_why:
        assert not [
            deep for one in lines.of(name).below for two in one.below for three in two.below for deep in three.below
        ]
    weight = lines.of("weight")
    assert [(two.label, two.link, two.told) for two in weight.below[0].below][:2] == [
        ("number of the upper tier", True, ""),
        ("cut length of the upper tier", True, ""),
    ]


def test_numbers_that_double_at_every_step_do_not_double_the_page() -> None:
    """Each material's width is made from the two before it: told in full, the last would be told 2^30 times."""
    text = "\n".join(
        f"  m{at}: {{kind: trim, width: {f'm{at - 1}.width + m{at - 2}.width' if at > 1 else '1 mm'}, sold by: 1 m}}"
        for at in range(12)
    )
    source = spec("larkspur").source.replace("materials:\n", f"materials:\n{text}\n", 1)
    source = source.replace("depth: elastic.width + 5 mm", "depth: m11.width")
    read = read_spec(("larkspur.yaml", source.encode()))
    assert read.value is not None, read.faults
    proved = prove(Order(read.value, "size M", read.value.sizes["M"], {}, Workroom()))
    assert proved.value is not None, proved.faults
    planned = plan(proved.value).value
    assert planned is not None
    guide = compose(planned.rehearsal, planned.cutting, planned.shopping, "size M")
    assert _numbers(WhyLines(guide, Messages("en")).of("waistband.depth")) <= 15
    trees = [tree for tree in _trees(guide) if tree["name"] == "waistband.depth"]
    assert len(json.dumps(trees)) < 12_000


def test_a_guide_in_other_units_than_the_spec_says_in_which_the_reasons_are() -> None:
    _, guide = _made("larkspur", "M", Workroom(units="inches"))
    assert guide.reasons_in == "cm"
    assert "worked out in cm." in html(guide)
    assert "\n\nThe numbers are worked out in cm.\n\n- **waist girth**, 78 cm" in markdown(guide)
    _, plain = _made("marigold", "12")
    assert plain.reasons_in == ""
    assert "worked out in" not in html(plain)


def test_the_place_is_a_line_of_the_spec_without_its_folder_and_none_for_a_body() -> None:
    solved, guide = _made("larkspur", "M")
    assert solved.values["waist_girth"].span.file == solved.spec.file  # of a size; a wearer has a file of its own
    places = {reason.name: reason.place for reason in guide.reasons}
    assert places["flounce.depth"] == f"line {solved.values['flounce.depth'].span.start_line} of larkspur.yaml"
    assert places["waist_girth"] == ""
    assert "/specs/" not in json.dumps(asdict(guide))
    assert "/specs/" not in html(guide)


def test_a_guide_whose_cut_sizes_are_not_rounded_says_so() -> None:
    """Not that they are rounded up to nothing."""
    page = markdown(small_guide("skirt: {from: lawn, length: 120 cm, depth: 45 cm}", SKIRT))
    assert "Cut sizes are not rounded." in page
    assert "rounded up to" not in page
