"""Plain words for what the YAML scanner and parser complain of."""

from __future__ import annotations

import re

from furbelow.named import NamedTuple


class Problem(NamedTuple):
    """A syntax fault in plain words. `at` and `opened` are offsets; `opened` is what was never closed."""

    headline: str
    help: str
    at: int
    opened: int | None = None


_QUOTE = "put the text in quotes"
# A part of the scanner's message, the headline and the mend. The first that fits is taken.
_PLAIN_WORDS = (
    (
        "expected '-' indicator",
        "this line is neither a row of the list above nor outside it",
        "begin it with `- `, or indent it less",
    ),
    (
        "entries are not allowed",
        "a list row begins in the middle of a line",
        "start the list on a line of its own",
    ),
    ("could not find expected ':'", "this line has no `:` after its key", "write `key: value`"),
    (
        "did not find expected key",
        "this does not fit the keys above it",
        "indent it like the key that it belongs with",
    ),
    (
        "expected <block end>",
        "this does not fit the lines above it",
        "indent it like the line that it belongs with",
    ),
    ("unknown escape character", "`\\` begins no known escape here", "write `\\\\`, or use single quotes"),
    (
        "hexadecimal number",
        "the escape does not have enough hexadecimal digits",
        "write the character itself",
    ),
    ("hexdecimal number", "the escape does not have enough hexadecimal digits", "write the character itself"),
    ("node content", "a value is wanted here", "write the value, or take the comma or bracket away"),
    ("the node content", "a value is wanted here", "write the value, or take the comma or bracket away"),
    (
        "comment or line break",
        "text stands after the `|` or `>` of a block",
        "start the text on the next line",
    ),
    (
        "indentation indicators",
        "text stands after the `|` or `>` of a block",
        "start the text on the next line",
    ),
    ("document indicator", "`---` or `...` stands inside a quoted text", "close the quote before it"),
    ("document separator", "`---` or `...` stands inside a quoted text", "close the quote before it"),
    (
        "expected <document start>",
        "this stands outside everything above it",
        "indent it like the first key of the file",
    ),
    (
        "expected '<document start>'",
        "this stands outside everything above it",
        "indent it like the first key of the file",
    ),
    ("alphabetic or numeric character", "`&` or `*` can't begin a text", _QUOTE),
    ("a directive", "a line that begins with `%` is not used here", "take the line away"),
    ("directive", "a line that begins with `%` is not used here", "take the line away"),
    ("incompatible YAML", "the file asks for another YAML version", "take the `%YAML` line away"),
    ("tab character", "a tab stands where spaces must indent the line", "use spaces in place of the tab"),
    ("nesting depth", "the file is nested far too deep", "take some levels away"),
    ("a tag", "`!` begins a tag, and tags are not used here", _QUOTE),
)
# A key with its value stuck to the colon, as in `depth:14 cm`.
_STUCK_COLON = re.compile(r"^\s*(?:- )?[\w ]+(:)[^\s:/]")


def plain_problem(text: str, problem: str, context: str, at: int, context_at: int | None) -> Problem:
    """The complaint in plain words, with one mend. `at` and `context_at` are the scanner's offsets."""
    if "cannot start any token" in problem:
        return _bad_start(text, at)
    if "mapping values are not allowed" in problem:
        return _second_colon(text, at)
    if "unexpected end of stream" in problem and context_at is not None:
        return Problem("this quote is not closed", "close it with the same quote", context_at)
    for bracket, name in (("]", "list"), ("}", "map")):
        if f"'{bracket}'" in problem and context_at is not None:
            headline = f"this bracket is not closed where the {name} ends"
            return Problem(headline, f"write `,` or `{bracket}` before what follows", at, context_at)
    if "did not find expected key" in problem and text[at : at + 1] == ":":
        return Problem("a key is missing before this `:`", "write a word as the key", at)
    for part, headline, help_ in _PLAIN_WORDS:
        if part in problem or part in context:
            # The scanner notices a missing colon one line late.
            place = context_at if "expected ':'" in part and context_at is not None else at
            return Problem(headline, help_, place)
    return Problem(f"this is not well-formed YAML: {problem}", _QUOTE, at)


def _bad_start(text: str, at: int) -> Problem:
    if text[at : at + 1] == "\t":
        return Problem("a tab stands where spaces must indent the line", "use spaces in place of the tab", at)
    return Problem(f"a text can't begin with the mark {text[at : at + 1]}", _QUOTE, at)


def _second_colon(text: str, at: int) -> Problem:
    line_start = text.rfind("\n", 0, at) + 1
    before_start = text.rfind("\n", 0, max(line_start - 1, 0)) + 1
    for start in (before_start, line_start):
        if stuck := _STUCK_COLON.match(text[start : start + 200].split("\n", 1)[0]):
            return Problem("no space stands after this `:`", "write a space after it", start + stuck.start(1))
    if ":" in text[line_start:at]:
        return Problem("a second `:` stands in this line", "put the text in quotes, or start a new line", at)
    key = line_start + len(text[line_start:at]) - len(text[line_start:at].lstrip())
    return Problem("this key is indented below a finished value", "indent it like the key above", key)
