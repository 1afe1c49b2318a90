"""The booklet of a spec says to each size what its own guide says, to the last number."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import fields, is_dataclass

import pytest
from furbelow.s6_write.booklet.booklet import SizedFigure
from furbelow.s6_write.booklet.resolved import resolved
from furbelow.s6_write.booklet.texts import letters_in, versions_of
from furbelow.s6_write.guide.guide import CutLine, Operation

from .made import DEMOS, booklet, guides

# Larkspur, marigold and foxglove in every language; the rest in one; one workroom with attachment, clips and inches.
MADE = [(demo, "en", "home") for demo in DEMOS]
MADE += [(demo, language, "home") for demo in ("foxglove", "larkspur", "marigold") for language in ("de", "es", "fr")]
MADE += [("larkspur", "en", "wardrobe")]


def _said(operation: Operation) -> tuple[object, ...]:
    """All that it says but where drawings stand, and what the sentences are numbered."""
    steps = tuple((s.text, s.check, s.tolerance, s.remedy, s.chain, s.copies, s.message) for s in operation.steps)
    head = (operation.letter, operation.title, operation.aim, operation.minutes, operation.number)
    return (*head, operation.tip, operation.stop, operation.all_of_it, steps)


@pytest.mark.parametrize(("demo", "language", "room"), MADE)
def test_each_size_is_told_what_its_guide_tells(demo: str, language: str, room: str) -> None:
    made, alone = booklet(demo, language, room), guides(demo, language, room)
    assert len(made.sizes) == 5
    for size, guide in enumerate(alone):
        assert [_said(each) for each in resolved(made, size)] == [_said(each) for each in guide.operations]


@pytest.mark.parametrize("demo", DEMOS)
def test_the_sentences_of_a_size_stand_in_the_order_of_its_guide(demo: str) -> None:
    made = booklet(demo)
    for size in range(len(made.sizes)):
        for operation in resolved(made, size):
            numbers = [step.number for step in operation.steps]
            assert numbers == sorted(set(numbers))


@pytest.mark.parametrize("demo", DEMOS)
def test_no_caution_of_a_guide_is_lost_or_told_twice(demo: str) -> None:
    made = booklet(demo)
    for size, guide in enumerate(guides(demo)):
        told = [(c.kind, c.text) for operation in resolved(made, size) for c in operation.cautions]
        assert told == [(c.kind, c.text) for operation in guide.operations for c in operation.cautions]


@pytest.mark.parametrize("demo", DEMOS)
def test_the_pieces_to_cut_are_those_of_the_guide(demo: str) -> None:
    made = booklet(demo)
    for size, guide in enumerate(guides(demo)):
        (way,) = (way for way in made.ways if not way.sizes or size in way.sizes)
        assert _plain(way.pieces) == _plain(guide.cutting)


def _plain(pieces: tuple[CutLine, ...]) -> list[tuple[str, ...]]:
    return [(p.mark, p.piece, p.cloth, p.count, p.cut_length, p.cut_depth, p.finished, p.note) for p in pieces]


@pytest.mark.parametrize("demo", DEMOS)
def test_what_is_bought_is_what_the_guide_buys(demo: str) -> None:
    made = booklet(demo)
    for size, guide in enumerate(guides(demo)):
        told = [(row.label, row.below, row.values[size]) for row in made.materials if row.values[size]]
        assert sorted(told) == sorted((line.name, line.description, line.amount) for line in guide.materials)


@pytest.mark.parametrize("demo", DEMOS)
def test_a_letter_stands_only_where_numbers_differ_and_means_one_number_in_its_operation(demo: str) -> None:
    made = booklet(demo)
    for number in made.numbers:
        assert len({value for value in number.values if value}) > 1
    for operation in made.operations:
        letters = [made.numbers[at].letter for at in operation.numbers]
        assert letters == sorted(set(letters), key=lambda letter: (len(letter), letter))
        assert set(_letters(operation)) <= set(operation.numbers)


@pytest.mark.parametrize("demo", DEMOS)
def test_no_size_is_named_before_nothing(demo: str) -> None:
    """A stop that is good for some sizes says nothing of the others."""
    for text in _texts(booklet(demo).parts):
        assert all(version.text for version in versions_of(text) if version.sizes)


def _texts(value: object) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, tuple):
        for part in value:
            yield from _texts(part)
    elif is_dataclass(value):
        for each in fields(value):
            yield from _texts(getattr(value, each.name))


def _letters(value: object) -> Iterator[int]:
    """The letters in every text of a value."""
    for text in _texts(value):
        yield from letters_in(text)


@pytest.mark.parametrize("demo", DEMOS)
def test_each_size_has_its_own_drawings_with_the_words_of_its_guide(demo: str) -> None:
    """Callouts aside, which bear the numbers of the booklet."""
    made = booklet(demo)
    for size, guide in enumerate(guides(demo)):
        drawn = {
            figure.alt
            for operation in guide.operations
            for figure in operation.figures
            if not operation.key.startswith("cut-")
        }
        own: set[str] = set()
        for part in made.parts:
            for operation in part.operations:
                for each in operation.drawings:
                    mine = dict(each.own).get(made.sizes[size])
                    own |= {mine.alt} if mine else set() if each.own else {each.drawn.alt}
        assert {_no_callout(alt) for alt in drawn} <= {_no_callout(alt) for alt in own}


def _no_callout(alt: str) -> str:
    return re.sub(r"\d+", "0", alt)


@pytest.mark.parametrize("demo", DEMOS)
def test_no_sentence_sends_to_a_drawing_with_letters_or_past_one_of_its_own(demo: str) -> None:
    """The letters of a drawing are those of its operation's table, and stand for other numbers in another."""
    drawn: dict[str, list[SizedFigure]] = {}
    for operation in booklet(demo).operations:
        for drawing in operation.drawings:
            beside = f"{operation.letter}{min(drawing.drawn.shows, default=1)}"
            drawn.setdefault(beside, []).append(drawing)
        for step in operation.steps:
            if step.drawn_at:
                those = drawn[step.drawn_at]
                assert any(not any(map(letters_in, each.said)) for each in those), (operation.letter, step.number)
                mine = {each.drawn.heading for each in drawn.get(f"{operation.letter}{step.number}", ())}
                assert not mine & {each.drawn.heading for each in those}, (operation.letter, step.number)
