"""Messages as plain values: nothing of what is written is lost, and what can't be said is told."""

from __future__ import annotations

import pytest
from fluent.syntax import FluentParser, ast
from fluent.syntax.serializer import serialize_pattern
from furbelow.garment.message import One, Own
from furbelow.resources import languages, template, words_files
from furbelow.s6_write.words import messages as module
from furbelow.s6_write.words.messages import Messages
from furbelow.s6_write.words.pattern import Message, Pattern, WordsFault, shown
from furbelow.s6_write.words.read_words import entries_of, message_of, messages_of, read_words


def _read(written: str) -> Pattern:
    entry = FluentParser().parse_entry(f"it = {written}\n")
    assert isinstance(entry, ast.Message), written
    found = message_of(entry).value
    assert found is not None
    return found


@pytest.mark.parametrize("language", languages())
def test_a_shipped_message_is_shown_as_the_library_writes_it(language: str) -> None:
    for file in words_files(language):
        source = (template("words") / language / f"{file}.ftl").read_text("utf-8")
        for entry in entries_of(read_words(file, source)):
            found = message_of(entry)
            if entry.value and found.value:
                # Spaces of a text that is quoted for them alone are not shown; those that do not break are, quoted.
                theirs = serialize_pattern(entry.value).replace('{ "" }', "").replace('{ " " }', "")
                theirs = theirs.replace("\u00a0", '{ "\\u00A0" }')
                assert shown(found.value) == " ".join(theirs.split()), entry.id.name


@pytest.mark.parametrize(
    ("written", "read"),
    [
        ("Sew { $seam } along.", ("Sew ", ("value", "seam"), " along.")),
        ('{ "{" }{ 5 }{ "" }', ("{", "5", "")),
        ('{ EDGE($at, case: "of") }', (("call", "EDGE", (("value", "at"),), {"case": "of"}),)),
        ("{ other.check }", (("message", "other", "check"),)),
        ("{ -term }", (("term", "term"),)),
        (
            "{ $n ->\n [1] one\n [1.5] more\n *[other] all\n }",
            (("choice", ("value", "n"), {1: ("one",), 1.5: ("more",), "other": ("all",)}, "other"),),
        ),
    ],
)
def test_each_kind_of_part_is_read(written: str, read: Pattern) -> None:
    assert _read(written) == read


@pytest.mark.parametrize(
    ("written", "why"),
    [
        ("{ $not-given }", r"\$not-given is not given"),
        ("{ $one }", "chooses among sentences and can't stand in one"),
        ("{ -term }", "it says term, of which nothing is known"),
        ("{ NUMBER($own) }", "it says NUMBER, of which nothing is known"),
        ("{ PIECE($own) }", "speaks of no garment"),
        ("{ COUNT($own) -> *[other] x }", "counts pieces, things and whole numbers"),
        ("{ nowhere }", "no message `nowhere`"),
        ("{ it }", "recursion"),
    ],
)
def test_what_can_not_be_said_is_told_with_its_message(written: str, why: str, monkeypatch: pytest.MonkeyPatch) -> None:
    source = f"it = {written}\n".replace("-> *", "->\n *").replace("x }", "x\n }")
    monkeypatch.setattr(module, "_shared", lambda language: ({"common": Message(("",), {})}, {"common"}))
    english = Messages("en")
    english._known.update(messages_of(read_words("it.ftl", source)))
    with pytest.raises(WordsFault, match=why):
        english.text("it", {"one": One("yes"), "own": Own("mine")})
