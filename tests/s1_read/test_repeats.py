"""What is said once: pieces and steps that repeat, counts of 0, steps that are done only when something holds."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.diagnose.fault import Span
from furbelow.garment.solved import Solved
from furbelow.garment.spec import LayerName, Spec, Word, Written, each_of
from furbelow.garment.workroom import Workroom
from furbelow.measure.formula import parse_formula
from furbelow.measure.formula_parser import Formula
from furbelow.order.chain import prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec

NETS = """\
furbelow: 1
title: Meadowsweet stepped net skirt
body:
  waist_girth: {from: 55 cm, to: 130 cm}
sizes:
  M: {waist_girth: 78 cm}
choices:
  layers: {default: 3, from: 1, to: 7, step: 1}
  lined: {default: 1, from: 0, to: 1, step: 1}
worn: {from: waist, over: waist_girth, length: 53 cm, hidden: {net: (i - 1) * 1 cm, lining: 8 cm}}
materials:
  tulle: {kind: cloth, fibre: nylon, width: 140 cm, weight: 25 g/m2, ravels: no, right side: no}
  satin: {kind: cloth, fibre: cotton, width: 140 cm, weight: 85 g/m2, ravels: yes, right side: no}
  lawn: {kind: cloth, fibre: cotton, width: 140 cm, weight: 85 g/m2, ravels: yes, right side: no}
  elastic: {kind: elastic, width: 25 mm, stretch: 100%}
  thread: {kind: thread, fibre: cotton, reel: 200 m}
pieces:
  net_1: {from: tulle, length: 3 m, depth: 50 cm}
  net:
    for: i from 2 to layers
    about: net layer
    from: tulle
    length: net(i - 1).length - 10 cm
    depth: net_1.depth - (i - 1) * 1 cm
  lining: {from: satin, count: lined, length: 130 cm, depth: 42 cm}
  band: {from: lawn, length: 130 cm, depth: 3 cm}
steps:
  - for: k from 1 to layers
    steps:
      - join ends: {of: net(k), seam: 1 cm}
      - gather: {edge: net(k).top, length: 130 cm}
  - join ends: {of: lining, seam: 1 cm}
  - neaten: {seam: lining.ends}
  - narrow hem: {edge: lining.bottom}
  - stack layers: {layers: [net_1.top, net.top, lining.top], as: skirt}
  - join ends: {of: band, seam: 1 cm}
  - band casing: {band: band, to: skirt, seam: 1 cm, gap: 5 cm}
  - insert elastic: {elastic: elastic, into: band, length: 70 cm}
  - close gap: {of: band}
"""


def read(text: str) -> Spec:
    staged = read_spec(("nets.yaml", text.encode()))
    assert staged.value is not None, staged.faults
    return staged.value


def chosen(**choices: str) -> dict[str, Written]:
    found = {}
    for name, value in choices.items():
        formula = parse_formula(value)
        assert isinstance(formula, Formula)
        found[name] = Written(value, formula, Span.at_start("choices"))
    return found


def proved(text: str, **choices: str) -> Solved:
    spec = read(text)
    staged = prove(Order(spec, "size M", spec.sizes["M"], chosen(**choices), Workroom()))
    assert staged.value is not None, staged.faults
    assert [fault.headline for fault in staged.faults] == []
    return staged.value.solved


def told(text: str) -> list[tuple[str, str, int, int]]:
    """Every error of the reader and of the proof: code, headline, line and column."""
    staged = read_spec(("nets.yaml", text.encode()))
    faults = staged.faults
    if staged.value is not None:
        order = Order(staged.value, "size M", staged.value.sizes["M"], {}, Workroom())
        faults = (*faults, *prove(order).faults)
    return [
        (fault.code, fault.headline, fault.primary.span.start_line, fault.primary.span.start_column)
        for fault in faults
        if fault.primary and fault.is_error
    ]


def test_a_repeat_makes_pieces_of_growing_depth() -> None:
    solved = proved(NETS, layers="7")
    # 50 cm less 1 cm for each layer; 300 cm less 10 cm for each, told from the one before.
    assert {name: (piece.depth / 10, piece.length / 10) for name, piece in solved.pieces.items() if "net" in name} == {
        "net_1": (50, 300),
        "net_2": (49, 290),
        "net_3": (48, 280),
        "net_4": (47, 270),
        "net_5": (46, 260),
        "net_6": (45, 250),
        "net_7": (44, 240),
    }
    assert solved.pieces["net_3"].label == "net layer 3"
    assert solved.length("worn.hidden.net_4") == 30


def test_a_choice_says_how_far_a_repeat_goes() -> None:
    solved = proved(NETS, layers="2")
    assert list(solved.pieces) == ["net_1", "net_2", "lining", "band"]
    assert len([step for step in solved.steps if step.written.technique == "gather"]) == 2
    assert solved.values["net_5.count"].value.as_number() == 0


def test_a_piece_with_a_count_of_0_is_left_out_with_its_steps_and_its_cloth() -> None:
    solved = proved(NETS, lined="0")
    assert "lining" not in solved.pieces
    assert "satin" not in solved.materials
    words = [step.written.technique for step in solved.steps]
    assert "narrow hem" not in words
    assert "neaten" not in words
    stack = next(step.written for step in solved.steps if step.written.technique == "stack layers")
    assert len([each for each in each_of(stack.args["layers"].value) if isinstance(each, LayerName)]) == 3


def test_a_step_is_done_only_when_its_condition_holds() -> None:
    text = NETS.replace("  - close gap", "  - starch: {piece: net_1, with: size}\n    when: lined == 0\n  - close gap")
    text = text.replace("  thread:", "  size: {kind: starch, sold by: 500 ml}\n  thread:")
    assert "starch" in [step.written.technique for step in proved(text, lined="0").steps]
    assert "starch" not in [step.written.technique for step in proved(text).steps]


def test_pairs_are_repeated_with_stacks_of_their_own() -> None:
    """3 true pairs: each gathered alone, then all of them stacked by the name of the repeat."""
    text = (
        NETS[: NETS.index("  - for:")].replace("about: net layer", "about: net {i}")
        + """\
  - for: k from 1 to layers
    steps:
      - join ends: {of: net(k), seam: 1 cm}
  - join ends: {of: lining, seam: 1 cm}
  - neaten: {seam: lining.ends}
  - narrow hem: {edge: lining.bottom}
  - for: pair from 1 to 3
    steps:
      - stack layers: {layers: [net(2 * pair - 1).top, net(2 * pair).top], as: pairs(pair)}
      - gather: {edge: pairs(pair), length: 130 cm}
  - stack layers: {layers: [pairs, lining.top], as: skirt}
  - join ends: {of: band, seam: 1 cm}
  - band casing: {band: band, to: skirt, seam: 1 cm, gap: 5 cm}
  - insert elastic: {elastic: elastic, into: band, length: 70 cm}
  - close gap: {of: band}
"""
    )
    text = text.replace("net(i - 1).length - 10 cm", "3 m")
    solved = proved(text, layers="6")
    assert solved.pieces["net_2"].label == "net 2"
    gathered = [str(step.written.args["edge"].value) for step in solved.steps if step.written.technique == "gather"]
    assert gathered == ["pairs_1", "pairs_2", "pairs_3"]
    # With 4 layers the third pair is not there.
    assert len([1 for step in proved(text, layers="4").steps if step.written.technique == "gather"]) == 2


def test_why_puts_the_number_of_the_round_in() -> None:
    values = proved(NETS).values
    assert values["net_3.depth"].formula == "net_1.depth - (3 - 1) * 1 cm"
    assert values["net_3.depth"].with_values == "50 cm - (3 - 1) * 1 cm"
    assert values["net_3.depth"].value.as_length_mm() == Fraction(480)


@pytest.mark.parametrize(
    ("old", "new", "fault"),
    [
        ("i from 2 to layers", "every layer", ("FB170", "`every layer` says no repeat", 20, 10)),
        ("i from 2 to layers", "i from 2 to waist_girth / 9 cm", ("FB170", "nothing says how far `waist_girth / 9 cm` may go", 20, 22)),
        ("i from 2 to layers", "i from 2 to 500", ("FB171", "this repeats up to 499 times, 439 more than the 60 allowed", 20, 10)),
        ("of: net(k),", "of: net(1.5),", ("FB170", "3/2 counts nothing that is repeated", 30, 29)),
        ("of: net(k),", "of: net(9),", ("FB142", "no piece is called `net_9`", 30, 25)),
        ("of: lining, seam", "of: lining, seam", None),
        ("edge: lining.bottom", "edge: net.bottom", ("FB172", "`net` is repeated, and one of net_2 to net_7 is wanted here", 34, 24)),
        ("net(i - 1).length", "net(i - 2).length", ("FB203", "nothing is named `net_0.length`", 23, 13)),
        ("count: lined", "count: 1 - 1 * band.count", None),
        ("k from 1 to layers", "lined from 1 to layers", ("FB141", "`lined` counts a repeat and is a name of the spec as well", 30, 9)),
    ],
)  # fmt: skip  # a table reads in rows
def test_a_slip_in_a_repeat_has_its_place(old: str, new: str, fault: tuple[str, str, int, int] | None) -> None:
    assert old in NETS
    found = told(NETS.replace(old, new))
    assert (fault in found) if fault else found == [], found


def test_repeats_in_repeats_end() -> None:
    deep = "  - for: a from 1 to 60\n    steps:\n      - for: b from 1 to 60\n        steps:\n          - press: {piece: band}\n"
    found = told(NETS.replace("steps:\n  - for", f"steps:\n{deep}  - for"))
    assert found[0][:2] == ("FB171", "the repeats make more than 2000 steps")


def test_a_row_with_a_repeat_and_a_technique_is_told() -> None:
    found = told(
        NETS.replace("  - for: k from 1 to layers\n", "  - for: k from 1 to layers\n    press: {piece: band}\n")
    )
    assert ("FB136", "`press` stands in one row with a group of steps", 29, 5) in found


def test_strips_are_joined_before_their_piece_is_worked_on_where_nobody_says_when() -> None:
    pieced = NETS.replace("length: 3 m, depth: 50 cm}", "length: 3 m, depth: 50 cm, piecing: &}").replace(
        "&", "{seam: 1 cm, shortest: 40 cm, most joins: 2}"
    )
    steps = read(pieced).steps
    assert [(step.index, step.technique) for step in steps[:3]] == [(0, "join strips"), (1, "join ends"), (2, "gather")]
    assert [each.text for each in each_of(steps[0].args["of"].value) if isinstance(each, Word)] == ["net_1"]
    assert proved(pieced).pieces["net_1"].piece.piecing is not None
    # Said once, it is done where it is said.
    said = read(
        pieced.replace("steps:\n  - for", "steps:\n  - join strips: {of: net_1}\n  - press: {piece: band}\n  - for", 1)
    )
    assert [step.technique for step in said.steps[:3]] == ["join strips", "press", "join ends"]
