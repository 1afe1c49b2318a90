"""A message is said as the evaluator of Project Fluent's own library says it, in every language and in whole guides."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import Any

import pytest
from fluent.runtime import FluentBundle, FluentResource, resolver
from fluent.runtime.types import FluentInt, FluentType
from furbelow.garment.message import One
from furbelow.order.chain import guide_of, planned
from furbelow.order.read_order import Asked, OrderReader
from furbelow.resources import languages, template, words_files
from furbelow.s6_write.words.messages import Given, Messages
from furbelow.s6_write.words.pattern import Pattern

SPECS = Path(__file__).parents[3] / "specs"


class _Value(FluentType):
    """A value as the library is given it; a word to choose by is equal to itself."""

    def __init__(self, value: Any, messages: Messages) -> None:
        self.value, self.messages = value, messages

    def __eq__(self, other: object) -> bool:
        return isinstance(self.value, One) and self.value.word == other

    __hash__ = None  # type: ignore[assignment]

    def format(self, locale: object) -> str:
        return self.messages.said(self.value)


class _Bundle(FluentBundle):
    """The library makes plain numbers and texts of what it is given; this one leaves values as they are."""

    def say(self, message: str, attribute: str, given: dict[str, Any]) -> tuple[str, list[Exception]]:
        found, errors = self.get_message(message), list[Exception]()
        pattern = found.attributes[attribute] if attribute else found.value
        current = resolver.CurrentEnvironment(args=given)
        assert pattern is not None
        said = pattern(resolver.ResolverEnvironment(context=self, current=current, errors=errors))
        return str(said), errors


def _whole(number: int) -> FluentInt:
    return FluentInt(number, useGrouping=False)


@cache
def _bundle(language: str) -> _Bundle:
    functions = {
        "COUNT": lambda given: _whole(given.messages.count(given.value)) if isinstance(given, _Value) else given,
        "PIECE": lambda given, **how: given.messages.pieces(given.value, **how),
        "EDGE": lambda given, **how: given.messages.edge(given.value, **how),
    }
    bundle = _Bundle([language], functions=functions, use_isolating=False)
    for file in words_files(language):
        bundle.add_resource(FluentResource((template("words") / language / f"{file}.ftl").read_text("utf-8")))
    return bundle


@pytest.fixture
def compared(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """All that is said from now on, and each of it held to the library."""
    monkeypatch.setattr(resolver, "MAX_PART_LENGTH", 1_000_000)  # the list of all pieces may be long
    said: list[str] = []
    say = Messages._say

    def both(self: Messages, name: str, pattern: Pattern | None, given: Given) -> str:
        ours = say(self, name, pattern, given)
        values = {
            key: value if isinstance(value, str) else _whole(value) if isinstance(value, int) else _Value(value, self)
            for key, value in given.items()
        }
        message, _, attribute = name.partition(".")
        theirs, errors = _bundle(self.language).say(message, attribute, values)
        assert (" ".join(ours.split()), []) == (" ".join(theirs.split()), errors), name
        said.append(ours)
        return ours

    monkeypatch.setattr(Messages, "_say", both)
    return said


@pytest.mark.parametrize("language", languages())
@pytest.mark.parametrize("spec", ["larkspur", "primrose"])
def test_a_whole_guide_is_said_alike(spec: str, language: str, compared: list[str]) -> None:
    size = "M" if spec == "larkspur" else "C"
    order = OrderReader().one_order(Asked(str(SPECS / f"{spec}.yaml"), size, language=language))
    found = planned(order).value
    assert found is not None
    guide_of(found, "somebody")
    assert len(compared) > 1000


@pytest.mark.parametrize("number", [0, 1, 2, 5, 11, 21, 1500])
@pytest.mark.parametrize("language", languages())
def test_numbers_choose_by_the_plural_rules_of_the_language(language: str, number: int, compared: list[str]) -> None:
    """Source of the rules: CLDR, by Babel, which the library asks too."""
    messages = Messages(language)
    messages.read("pile")
    told = messages.text("pile-take.check", {"pieces": number, "number": 1})
    assert str(number) in told
