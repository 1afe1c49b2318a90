"""A short run of what `python -m tests.benchmarks.fuzz` does by the hundred thousand: hostile specs and formulas."""

from __future__ import annotations

import random

import pytest
from furbelow.measure.formula import Formula, parse_formula
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.fuzz.chain import at_most, through_the_chain
from tests.fuzz.mutate import SPECS, TROUBLE, demos, formula, formulas, mutant, random_file

GUARD = 20.0  # seconds: a way out of an endless loop on any machine, no measure of speed

LARKSPUR = (SPECS / "larkspur.yaml").read_text(encoding="utf-8")


@pytest.mark.parametrize("part", range(2))
def test_mutated_specs_are_refused_in_words_or_proved(part: int) -> None:
    reached = set()
    for number in range(part * 60, part * 60 + 60):
        with at_most(GUARD):
            reached.add(through_the_chain(mutant(random.Random(number)), size=number)[0])
    assert {"refused when read", "proved"} <= reached


def test_a_mutated_spec_that_is_sound_can_be_written_too() -> None:
    written = 0
    for number in range(1000, 1200):
        content = mutant(random.Random(number))
        if through_the_chain(content, size=number)[0] == "proved":
            with at_most(GUARD):
                through_the_chain(content, size=number, write=True)
            written += 1
        if written == 3:
            break
    assert written == 3


def test_random_files_are_refused_in_words() -> None:
    for number in range(80):
        with at_most(GUARD):
            reached, faults = through_the_chain(random_file(random.Random(number)))
        assert faults or reached != "refused when read"


def test_formulas_of_every_shape_in_a_spec_are_worked_out_or_told() -> None:
    reached = set()
    for number in range(80):
        with at_most(GUARD):
            reached.add(through_the_chain(formulas(random.Random(number)), size=number)[0])
    assert {"refused when read", "refused when solved or rehearsed", "proved"} <= reached


def test_one_seed_gives_one_spec() -> None:
    assert mutant(random.Random(7)) == mutant(random.Random(7))
    assert len({mutant(random.Random(number)) for number in range(200)}) > 190


@pytest.mark.parametrize("text", TROUBLE, ids=range(len(TROUBLE)))
def test_a_troublesome_text_does_no_harm_wherever_it_stands(text: str) -> None:
    quoted = "'" + text.replace("'", "''") + "'"
    for put in (
        "length: 300 cm",
        "en: Larkspur dancing underskirt",
        "to: upper.bottom",
        "count: layers",
        "fibre: nylon",
    ):
        assert put in LARKSPUR
        key = put.partition(":")[0]
        with at_most(GUARD):
            through_the_chain(LARKSPUR.replace(put, f"{key}: {quoted}", 1).encode("utf-8", "surrogatepass"))


_PARTS = st.sampled_from(
    (
        "(",
        ")",
        "+",
        "-",
        "*",
        "/",
        "^",
        ",",
        ".",
        " ",
        "1",
        "2.5",
        "1/2",
        "1e400",
        "9" * 60,
        "cm",
        "in",
        "'",
        '"',
        "%",
        "EUR/m",
        "max",
        "min",
        "round",
        "waist_girth",
        "upper.length",
        "nobody",
        "nan",
        "inf",
        "\u0663",
        "\u00bd",
        "\u0430",
        "<",
        ">=",
        "==",
    )
)


@given(st.one_of(st.lists(_PARTS, max_size=40).map("".join), st.text(max_size=80)), st.booleans())
@settings(max_examples=200, deadline=None)
def test_a_formula_of_any_shape_is_read_or_told_at_a_place_inside_it(text: str, check: bool) -> None:
    with at_most(GUARD):
        read = parse_formula(text, check=check)
    if not isinstance(read, Formula):
        assert read.message
        assert 0 <= read.offset <= len(text)
        assert 0 <= read.length <= len(text) - read.offset + 1


@given(st.integers(min_value=0))
@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
def test_a_grown_formula_in_a_spec_is_worked_out_or_told(seed: int) -> None:
    grown = formula(random.Random(seed), 5).replace("'", "''")
    with at_most(GUARD):
        through_the_chain(LARKSPUR.replace("length: 300 cm", f"length: '{grown}'", 1).encode())


def test_the_demos_themselves_come_through() -> None:
    for text in demos():
        assert through_the_chain(text.encode(), write=True)[0] == "made"
