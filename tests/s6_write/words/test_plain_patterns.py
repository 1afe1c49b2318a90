"""A pattern is said alike by our evaluator and by the library's, in every language and in whole guides."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from furbelow.order.chain import guide_of, planned
from furbelow.order.read_order import Asked, OrderReader
from furbelow.resources import languages
from furbelow.s6_write.words.messages import AsAsked, Messages, _shared
from furbelow.s6_write.words.plain_patterns import PlainPatterns

SPECS = Path(__file__).parents[3] / "specs"


@pytest.fixture
def compared(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """All that is said from now on, and each of it held to the library."""
    said: list[str] = []
    plain = PlainPatterns.said

    def both(self: PlainPatterns, pattern: Any, given: AsAsked) -> str:
        ours = plain(self, pattern, given)
        theirs, errors = self._messages.format_pattern(pattern, given.whole())
        assert (ours, []) == (str(theirs), errors)
        said.append(ours)
        return ours

    monkeypatch.setattr(PlainPatterns, "said", both)
    # A failed comparison would be taken for a pattern that is not plain.
    monkeypatch.setattr("furbelow.s6_write.words.messages.suppress", lambda _: _Nothing())
    return said


class _Nothing:
    def __enter__(self) -> None: ...

    def __exit__(self, *told: object) -> None: ...


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


def test_messages_that_grow_out_of_each_other_are_left_to_the_library() -> None:
    from fluent.runtime import FluentResource

    bundle, plain, _ = _shared.__wrapped__("en")
    parts = "".join(f"grow{at} = {{ grow{at + 1} }} {{ grow{at + 1} }}\n" for at in range(30)) + "grow30 = x\n"
    bundle.add_resource(FluentResource(parts))
    with pytest.raises(Exception, match="^$"):
        plain.said(bundle.get_message("grow0").value, {})
