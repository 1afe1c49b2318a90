"""A spec as read: what every field holds, where it stands, and that no text brings the reader down."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import pytest
from furbelow.diagnose.codes import CODES
from furbelow.diagnose.fault import Span
from furbelow.garment.spec import EdgeName, LayerName, Spec, Word, Written
from furbelow.s1_read.read_spec import read_spec
from hypothesis import given, settings
from hypothesis import strategies as st

SPECS = Path(__file__).parents[2] / "specs"
DEMOS = sorted(SPECS.glob("*.yaml"))
LARKSPUR = (SPECS / "larkspur.yaml").read_text(encoding="utf-8")


def demo(name: str) -> Spec:
    spec = read_spec(SPECS / f"{name}.yaml").value
    assert spec is not None
    return spec


def read(text: str) -> Spec:
    staged = read_spec(("spec.yaml", text.encode()))
    assert staged.value is not None, staged.faults
    return staged.value


def words_of(spec: Spec, span: Span) -> str:
    """What stands at a place of the spec."""
    assert span.start_line == span.end_line
    return spec.source.splitlines()[span.start_line - 1][span.start_column - 1 : span.end_column - 1]


def located(value: Any) -> list[Any]:
    """Every value with a span in the value, deep."""
    found: list[Any] = [value] if hasattr(value, "span") else []
    if isinstance(value, tuple):
        for held_value in value:
            found += located(held_value)
    elif hasattr(value, "values"):
        for held_value in value.values():
            found += located(held_value)
    return found


@pytest.mark.parametrize("path", DEMOS, ids=lambda path: path.stem)
def test_a_demo_is_read_without_a_fault(path: Path) -> None:
    staged = read_spec(path)
    assert staged.faults == ()
    assert staged.value is not None
    assert staged.value.file == str(path)
    assert staged.value.source == path.read_text(encoding="utf-8")


def test_the_plain_fields_of_a_demo() -> None:
    spec = demo("marigold")
    assert (spec.title, spec.units, spec.rounding.text) == ("Marigold three-tier skirt", "inches", "1/4 in")
    assert list(spec.body) == ["waist_girth", "hip_girth", "waist_height"]
    assert list(spec.sizes) == ["8", "12", "16", "20", "24"]
    assert spec.sizes["24"]["waist_height"].text == "41 1/2 in"
    assert spec.choices["fullness"].default.text == "1.5"
    assert spec.worn.at == "waist"
    assert spec.worn.over.formula.names == {"hip_girth", "waist_girth"}
    assert spec.pieces["lower"].grain == "across"
    assert spec.pieces["lower"].piecing is not None
    assert spec.pieces["lower"].piecing.most_joins.text == "6"
    assert spec.rules[0].check.formula.is_check


def test_the_materials_of_a_demo() -> None:
    net, satin, edging = (demo("larkspur").materials[name] for name in ("net", "satin", "edging"))
    assert (net.kind, net.ravels, net.has_right_side, net.one_way) == ("cloth", False, False, False)
    assert (satin.ravels, satin.has_right_side) == (True, True)
    assert set(net.amounts) == {"width", "selvedge", "weight", "sold_by", "price"}
    assert edging.amounts["sold_by"].text == "1 m"


def test_what_a_spec_leaves_out_has_its_usual_value() -> None:
    spec = read(LARKSPUR.replace("units: metric\nrounding: 5 mm\n", "").replace("hidden: {lining: clearance}", ""))
    assert (spec.units, spec.rounding.text) == ("metric", "5 mm")
    assert spec.worn.hidden == {}
    inches = read(LARKSPUR.replace("units: metric\nrounding: 5 mm\n", "units: inches\n"))
    assert inches.rounding.text == "1/8 in"
    assert spec.pieces["upper"].grain == "along"
    assert spec.pieces["lining"].count is None


def test_steps_stand_under_their_headings_in_order() -> None:
    spec = demo("foxglove")
    assert [step.index for step in spec.steps] == list(range(len(spec.steps)))
    assert list(dict.fromkeys(step.part for step in spec.steps)) == ["Panels", "Flounce", "Waist"]
    assert spec.steps[0].technique == "join ends"
    assert words_of(spec, spec.steps[0].span) == "join ends"


def test_one_or_several_edges_and_pieces_are_read_alike() -> None:
    steps = {step.technique: step for step in demo("larkspur").steps}
    of = steps["join strips"].args["of"].value
    assert isinstance(of, tuple)
    assert [word.text for word in of if isinstance(word, Word)] == ["waistband"]
    first = next(step for step in demo("larkspur").steps if step.technique == "join strips").args["of"].value
    assert isinstance(first, tuple)
    assert [word.text for word in first if isinstance(word, Word)] == ["upper", "flounce"]


def test_layers_say_which_way_their_right_side_faces() -> None:
    stack = [step for step in demo("larkspur").steps if step.technique == "stack layers"][-1]
    layers = stack.args["layers"].value
    assert isinstance(layers, tuple)
    assert [(str(layer.edge), layer.right_side) for layer in layers if isinstance(layer, LayerName)] == [
        ("net_top", "out"),
        ("lining.top", "in"),
    ]
    assert stack.args["as"].value == Word("skirt_top", stack.args["as"].span)


def test_a_parameter_left_out_has_its_default_and_is_not_given() -> None:
    gather = next(step for step in demo("larkspur").steps if step.technique == "gather")
    method = gather.args["method"]
    assert (method.value, method.given) == (Word("best", gather.span), False)
    assert gather.args["edge"].given
    assert "length" not in gather.args


def test_a_casing_may_be_a_piece_or_an_edge() -> None:
    for name, casing in (("larkspur", "waistband"), ("marigold", "top.top")):
        step = next(step for step in demo(name).steps if step.technique == "insert elastic")
        assert isinstance(step.args["into"].value, EdgeName)
        assert str(step.args["into"].value) == casing


def test_a_tip_belongs_to_its_step() -> None:
    spec = read(
        LARKSPUR.replace("  - close gap: {of: waistband}", "  - close gap: {of: waistband}\n    tip: Pull *gently*.")
    )
    assert [(step.technique, step.tip) for step in spec.steps if step.tip] == [("close gap", "Pull *gently*.")]


def test_a_measure_is_a_formula_alone_or_with_its_meaning() -> None:
    added = "measures:\n  drop: skirt_length - 2 cm\n  reach: {about: how far it goes, value: 2 * drop}\nworn:"
    spec = read(LARKSPUR.replace("worn:", added))
    assert (spec.measures["drop"].about, spec.measures["drop"].value.text) == ("", "skirt_length - 2 cm")
    assert (spec.measures["reach"].about, spec.measures["reach"].value.text) == ("how far it goes", "2 * drop")


def test_a_cloth_may_be_offered_in_several_widths() -> None:
    added = "    ravels: no\n    offers: [{width: 280 cm, price: 3 EUR/m}, {width: 160 cm}]\n"
    net = read(LARKSPUR.replace("    ravels: no\n", added)).materials["net"]
    assert [(offer.width.text, offer.price and offer.price.text) for offer in net.offers] == [
        ("280 cm", "3 EUR/m"),
        ("160 cm", None),
    ]


@pytest.mark.parametrize("path", DEMOS, ids=lambda path: path.stem)
def test_every_place_in_a_demo_holds_the_words_it_is_the_place_of(path: Path) -> None:
    spec = read_spec(path).value
    assert spec is not None
    seen = 0
    for value in located(spec):
        if isinstance(value, Written | Word) and value.span.start_line > 1:
            shown = words_of(spec, value.span)
            # A default has the place of its step.
            if shown in {step.technique for step in spec.steps}:
                continue
            # What is repeated is read with its number behind its name, where the index or nothing stands.
            name = re.match("[a-z]+", shown)
            assert shown == value.text or (name and value.text.startswith(f"{name[0]}_")), value
            seen += 1
        elif hasattr(value, "name") and hasattr(value, "about"):
            shown = words_of(spec, value.span)  # what is repeated has its number behind its name
            assert value.name == shown or value.name.rpartition("_")[0] == shown
    assert seen > 60


@pytest.mark.parametrize(
    "written", ["upper.length * fullness", '"upper.length * fullness"', "'upper.length * fullness'"]
)
def test_a_place_in_a_formula_is_a_place_in_the_file(written: str) -> None:
    spec = read(LARKSPUR.replace("length: upper.length * fullness", f"length: {written}"))
    length = spec.pieces["flounce"].length
    assert length is not None
    assert words_of(spec, length.span.inside(15, 8)) == "fullness"


def test_a_formula_over_two_lines_has_one_place() -> None:
    spec = read(LARKSPUR.replace("length: upper.length * fullness", "length: upper.length\n      * fullness"))
    length = spec.pieces["flounce"].length
    assert length is not None
    assert length.text == "upper.length * fullness"
    assert length.span.inside(15, 8) == length.span
    assert length.span.end_line == length.span.start_line + 1


def test_a_file_that_is_not_there_is_told(tmp_path: Path) -> None:
    for path, reason in ((tmp_path / "none.yaml", "no such file"), (tmp_path, "is a directory")):
        (fault,) = read_spec(path).faults
        assert fault.code == "FB112"
        assert reason in fault.headline
        assert fault.primary is not None
        assert fault.primary.span == Span.at_start(str(path))


def test_a_file_too_large_is_told_before_it_is_read_whole(tmp_path: Path) -> None:
    path = tmp_path / "large.yaml"
    path.write_bytes(b"#" * (1024 * 1024 + 1))
    (fault,) = read_spec(path).faults
    assert fault.code == "FB102"


def test_too_many_pieces_are_told_with_both_numbers() -> None:
    more = "".join(f"  p{at}: {{from: net, length: 1 m, depth: 1 m}}\n" for at in range(200))
    (fault,) = read_spec(("spec.yaml", LARKSPUR.replace("pieces:\n", f"pieces:\n{more}").encode())).faults
    assert (fault.code, fault.headline) == ("FB134", "`pieces` holds 204, 4 more than the 200 allowed")


def test_a_formula_too_long_is_told_once() -> None:
    text = LARKSPUR.replace("length: upper.length * fullness", f"length: upper.length{' * 1' * 200}")
    (fault,) = read_spec(("spec.yaml", text.encode())).faults
    assert (fault.code, fault.headline) == (
        "FB135",
        "`length` of `flounce` has 812 characters, 312 more than the 500 allowed",
    )


def test_a_spec_of_faults_only_tells_no_more_than_helps() -> None:
    rows = "".join(f"  k{at}: [x]\n" for at in range(5000))
    faults = read_spec(("spec.yaml", f"furbelow: 1\nrules:\n{rows}pieces:\n{rows}".encode())).faults
    assert 0 < len(faults) < 200


_LINES = LARKSPUR.splitlines(keepends=True)
_ODD_TEXT = st.one_of(
    st.text(max_size=20),
    st.sampled_from(
        ["{}", "[]", "''", "{a: b}", "- x", "yes", "net_top", "upper.top", ".", "x.", ".x", "1,5 cm", "max("]
    ),
)


@settings(max_examples=150, deadline=None)
@given(st.integers(0, len(_LINES) - 1), st.integers(0, 80), st.integers(0, 40), _ODD_TEXT)
def test_any_change_gives_a_spec_or_faults_inside_the_file(line: int, column: int, cut: int, put: str) -> None:
    changed = _LINES[line][:column] + put + _LINES[line][column + cut :]
    text = "".join([*_LINES[:line], changed, *_LINES[line + 1 :]])
    staged = read_spec(("spec.yaml", text.encode("utf-8", "replace")))
    assert (staged.value is None) == any(fault.is_error for fault in staged.faults)
    ends = [
        len(row)
        for row in text.encode("utf-8", "replace").decode().replace("\r\n", "\n").replace("\r", "\n").split("\n")
    ]
    for fault in staged.faults:
        assert fault.code in CODES
        assert fault.headline
        for label in (*((fault.primary,) if fault.primary else ()), *fault.others):
            span = label.span
            assert (span.start_line, span.start_column) <= (span.end_line, span.end_column)
            assert span.end_line <= len(ends)
            assert span.start_column <= ends[span.start_line - 1] + 1


@settings(max_examples=60, deadline=None)
@given(
    st.recursive(
        st.text(max_size=8),
        lambda held: (
            st.lists(held, max_size=4)
            | st.dictionaries(
                st.sampled_from(
                    [
                        "furbelow",
                        "title",
                        "body",
                        "worn",
                        "materials",
                        "pieces",
                        "steps",
                        "rules",
                        "press",
                        "gather",
                        "layers",
                        "edge",
                        "stack layers",
                        "from",
                        "kind",
                        "over",
                        "tip",
                        "part",
                        "x",
                    ]
                ),
                held,
                max_size=6,
            )
        ),
        max_leaves=25,
    )
)
def test_any_tree_gives_faults_and_never_a_crash(value: Any) -> None:
    import json

    staged = read_spec(
        ("spec.yaml", json.dumps({"furbelow": "1", "steps": [value], "pieces": value, "body": value}).encode())
    )
    assert staged.value is None
    assert any(fault.is_error for fault in staged.faults)
