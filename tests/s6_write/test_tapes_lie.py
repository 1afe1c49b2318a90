"""Who follows the sentences has at every slit the tapes on the table that the section asks for, and saw them drawn."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from fractions import Fraction

import pytest
from furbelow.garment.message import Length
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import plan, prove
from furbelow.s4_cut.cut import Cutting
from furbelow.s4_cut.marks import is_taped, table_marks
from furbelow.s5_buy.class_order import ClassOrder
from furbelow.s6_write.guide.cut_operations import cut_operations
from furbelow.s6_write.guide.guide import GuideStep, Operation
from furbelow.s6_write.pages.class_page import class_words
from furbelow.s6_write.words.words import Words

from tests.demos.demos import EVERY_SIZE, order
from tests.s5_buy.test_class_order import ordered_together, the_class

A_LENGTH = r"\d+(?: \d+/\d+|\.\d+|/\d+)? (?:cm|in)\b"


def _sections(operation: Operation) -> Iterator[list[GuideStep]]:
    """The sentences of each section, from where its end is marked on the cloth."""
    starts = [at for at, step in enumerate(operation.steps) if step.message == "cutting-chalk"]
    for start, end in zip(starts, [*starts[1:], len(operation.steps)], strict=True):
        yield list(operation.steps[start:end])


def _follow(cutting: Cutting, operations: tuple[Operation, ...], words: Words) -> list[str]:
    """What was done with the tapes, by the names of the sentences."""
    done: list[str] = []
    for name, operation in zip(cutting.sheets, operations, strict=True):
        cut, lying = cutting.sheet(name).plan, [""]
        drawn = {at: figure for figure in operation.figures for at in figure.shows if figure.key.startswith("tapes-")}
        for number, steps in enumerate(_sections(operation), 1):
            section = cut.sections[number - 1]
            for at, step in enumerate(operation.steps, 1):
                if not any(step is each for each in steps) or not step.message.startswith("cutting-tapes-"):
                    continue
                told = re.findall(A_LENGTH, step.text)
                if step.message == "cutting-tapes-stay":
                    assert told == lying
                    assert at not in drawn
                else:
                    assert re.match(rf"Sections? {number}\b", drawn[at].alt), drawn[at].alt
                lying = told
                done.append(step.message)
            if is_taped(cut, section):
                assert lying == [words.said(Length(mark.distance, "cut")) for mark in table_marks(section)]
        assert len(drawn) == sum(figure.key.startswith("tapes-") for figure in operation.figures)
    return done


@pytest.mark.parametrize(("name", "size"), EVERY_SIZE)
def test_in_every_guide(name: str, size: str) -> None:
    proved = prove(order(name, size)).value
    assert proved is not None
    planned = plan(proved).value
    assert planned is not None
    run = planned.rehearsal.run
    words = Words("en", run.say)
    letters = dict.fromkeys(planned.cutting.sheets, "A")
    _follow(planned.cutting, tuple(cut_operations(planned.cutting, run.solved, words, letters)), words)


CLASSES: dict[str, Callable[[], ClassOrder]] = {
    "the demo class": the_class,
    "five of one size": lambda: ordered_together([order("larkspur", "M", Workroom(table_length=Fraction(2600)))] * 5),
}


@pytest.mark.parametrize("whose", CLASSES)
def test_in_a_class(whose: str) -> None:
    whole = CLASSES[whose]()
    words, letters = class_words(whole), dict.fromkeys(whole.cutting.sheets, "A")
    done = _follow(whole.cutting, tuple(cut_operations(whole.cutting, whole.solved, words, letters)), words)
    assert ("cutting-tapes-stay" in done) == (whose == "five of one size")
    assert any(name.endswith("-anew") for name in done)
