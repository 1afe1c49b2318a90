"""YAML as located trees: values as written, places exact, everything else refused where it stands."""

from __future__ import annotations

import re

import pytest
import yaml
from furbelow.diagnose.fault import Fault, Span
from furbelow.diagnose.nearest import nearest
from furbelow.diagnose.unseen import shows_nothing
from furbelow.s1_read.yaml_tree import (
    DEEPEST_TREE,
    LARGEST_FILE,
    MOST_VALUES,
    ListTree,
    MapTree,
    TextTree,
    Tree,
    find,
    read_tree,
    to_plain,
)
from hypothesis import given, settings
from hypothesis import strategies as st


def read(content: bytes | str) -> Tree:
    staged = read_tree(content, "spec.yaml")
    assert staged.ok, staged.faults
    assert staged.value is not None
    return staged.value


def only_fault(content: bytes | str) -> Fault:
    staged = read_tree(content, "spec.yaml")
    assert staged.value is None
    assert len(staged.faults) == 1, staged.faults
    return staged.faults[0]


def quoted_by(span: Span, text: str) -> str:
    """What stands at a place of the text."""
    lines = re.split(r"(?<=\n)|(?<=\r)(?!\n)", text)
    start = sum(map(len, lines[: span.start_line - 1])) + span.start_column - 1
    end = sum(map(len, lines[: span.end_line - 1])) + span.end_column - 1
    return text[start:end]


def test_values_mean_what_is_written() -> None:
    tree = read("ravels: no\nlight: on\nratio: 1:30\ncount: 012\nnone: null\nhex: 0x1F\ndate: 2026-01-02\nempty:\n")
    assert to_plain(tree) == {
        "ravels": "no",
        "light": "on",
        "ratio": "1:30",
        "count": "012",
        "none": "null",
        "hex": "0x1F",
        "date": "2026-01-02",
        "empty": "",
    }


def test_maps_lists_and_texts_are_read() -> None:
    text = "steps:\n  - join: {ends of: flounce, seam: 1 cm}\n  - [a, 'b: c', \"d\\te\"]\nnotes: |\n  one\n  two\n"
    assert to_plain(read(text)) == {
        "steps": [{"join": {"ends of": "flounce", "seam": "1 cm"}}, ["a", "b: c", "d\te"]],
        "notes": "one\ntwo\n",
    }


EVERY_FORM = (
    "é😀: [a, 😀b, {c: d}]\r\nx: 'y'\nq: |\n  abc\n  d\n\n# c\nw:\nm:\n  a: no\n"
    "  'b': {c: 1:30}\n\n  # end\nlist:\n- 5' 6\"\n-\n  folded\n  text\n\nz: 012"
)


def test_every_place_holds_what_it_names() -> None:
    tree = read(EVERY_FORM)

    def look(part: Tree) -> None:
        held = quoted_by(part.span, EVERY_FORM)
        if isinstance(part, TextTree):
            if part.quoted:
                assert held[1:-1] == part.text
            elif "\n" not in held:
                assert held == part.text
        elif isinstance(part, MapTree):
            for entry in part.entries:
                assert quoted_by(entry.key_span, EVERY_FORM).strip("'") == entry.key
                look(entry.value)
        else:
            for row in part.rows:
                look(row)

    look(tree)
    assert isinstance(tree, MapTree)
    assert tree.span == Span("spec.yaml", 1, 1, 20, 7)


def test_columns_count_characters_and_not_bytes() -> None:
    tree = read("é😀: 😀b\n")
    assert find(tree, ["é😀"]) == (Span("spec.yaml", 1, 1, 1, 3), Span("spec.yaml", 1, 5, 1, 7))


def test_a_byte_order_mark_moves_nothing() -> None:
    assert find(read(b"\xef\xbb\xbfa: b"), ["a"])[0] == Span("spec.yaml", 1, 1, 1, 2)


def test_a_path_leads_to_its_key_and_value_or_to_the_last_that_exists() -> None:
    text = "pieces:\n  upper: {length: 3 m}\nsteps:\n  - join: x\n"
    tree = read(text)
    key, value = find(tree, ["pieces", "upper", "length"])
    assert (quoted_by(key, text), quoted_by(value, text)) == ("length", "3 m")
    key, value = find(tree, ["steps", 0, "join"])
    assert (quoted_by(key, text), quoted_by(value, text)) == ("join", "x")
    key, value = find(tree, ["steps", 0])
    assert key == value
    key, _ = find(tree, ["pieces", "lower", "length"])
    assert quoted_by(key, text) == "pieces"
    assert find(tree, ["steps", 7]) == find(tree, ["steps"])


@pytest.mark.parametrize(
    ("text", "offset", "expected"),
    [
        ("length: 2 * waist", 4, "waist"),
        ("length: '2 * waist'", 4, "waist"),
        ('length: "2 * waist"', 4, "waist"),
        ('length: "2 \\x2a waist"', 4, '"2 \\x2a waist"'),
        ("length: >\n  2 *\n  waist\n", 4, ">\n  2 *\n  waist"),
        ("length: 2 *\n  waist", 4, "2 *\n  waist"),
    ],
)
def test_a_part_of_a_text_has_its_own_place_where_that_is_exact(text: str, offset: int, expected: str) -> None:
    tree = read(text)
    assert isinstance(tree, MapTree)
    value = tree.entries[0].value
    assert isinstance(value, TextTree)
    assert value.text[offset : offset + 5] == "waist"
    assert quoted_by(value.place(offset, 5), text) == expected


REFUSED: list[tuple[str, bytes | str, int, int, str]] = [
    ("FB101", b"a: \xe9", 1, 4, "byte 4 of the file is not UTF-8"),
    ("FB101", "a: é".encode("utf-16"), 1, 1, "byte 1 of the file is not UTF-8"),
    ("FB103", "[" * 45 + "]" * 45, 1, 41, "deeper than 40"),
    ("FB103", "[" * 100_000, 1, 1001, "nested far too deep"),
    ("FB103", "{a: " * 50 + "b" + "}" * 50, 1, 161, "deeper than 40"),
    ("FB103", "- " * 50 + "a", 1, 81, "deeper than 40"),
    ("FB104", "a:\n\tb: 1", 2, 1, "a tab stands where spaces"),
    ("FB104", "a: b: c", 1, 5, "a second `:` stands in this line"),
    ("FB104", "depth:14 cm\nlength: 3 m", 1, 6, "no space stands after this `:`"),
    ("FB104", "a: 1\n  b: 2", 2, 3, "indented below a finished value"),
    ("FB104", "a: @x", 1, 4, "can't begin with the mark @"),
    ("FB104", "a: `x`", 1, 4, "can't begin with the mark `"),
    ("FB104", "a: %x", 1, 4, "can't begin with the mark %"),
    ("FB104", "a:\n  b: 1\n c: 2", 3, 2, "does not fit the keys above it"),
    ("FB104", "- a\nb: 1", 2, 1, "neither a row of the list"),
    ("FB104", "x: [a, b", 1, 9, "this bracket is not closed where the list ends"),
    ("FB104", "x: {a: 1\nb: 2", 2, 2, "this bracket is not closed where the map ends"),
    ("FB104", "x: 'abc", 1, 4, "this quote is not closed"),
    ("FB104", 'x: "a\\q"', 1, 6, "no known escape"),
    ("FB104", 'x: "\\u12"', 1, 7, "enough hexadecimal digits"),
    ("FB104", "a: 1\nb\nc: 2", 2, 1, "no `:` after its key"),
    ("FB104", "a: - b", 1, 4, "a list row begins in the middle of a line"),
    ("FB104", "a: |x\n b", 1, 5, "after the `|` or `>`"),
    ("FB104", "  a: 1\nb: 2", 2, 1, "outside everything above it"),
    ("FB104", "a: &", 1, 5, "can't begin a text"),
    ("FB104", "a: *", 1, 5, "can't begin a text"),
    ("FB104", "a: [1,,2]", 1, 7, "a value is wanted here"),
    ("FB104", ": 1", 1, 1, "a key is missing"),
    ("FB104", "%FOO\na: b", 1, 5, "begins with `%`"),
    ("FB104", "%YAML 3.0\n---\na: 1", 1, 1, "another YAML version"),
    ("FB104", "a: 'x\n---\n'", 2, 1, "inside a quoted text"),
    ("FB104", "a: \0", 1, 4, "U+0000"),
    ("FB104", "a: x\u2028y", 1, 5, "U+2028"),
    ("FB104", "a: \ud800", 1, 4, "U+D800"),
    ("FB104", 'a: "x\\e[2J"', 1, 4, "an escape stands for the character U+001B"),
    ("FB104", 'a: "x\\r"', 1, 4, "U+000D"),
    ("FB104", 'a: {"\\0": 1}', 1, 5, "U+0000"),
    ("FB105", "a: 1\nb: 2\na: 3", 3, 1, "the key `a` stands twice"),
    ("FB105", "a: {b: 1, 'b': 2}", 1, 11, "the key `b` stands twice"),
    ("FB106", "a: &x 1", 1, 4, "an anchor"),
    ("FB106", "a: *x", 1, 4, "an alias"),
    ("FB106", "<<: {a: 1}", 1, 1, "a merge key"),
    ("FB107", "a: !!str 1", 1, 4, "a tag"),
    ("FB107", "a: !x {b: c}", 1, 4, "a tag"),
    ("FB107", "%TAG ! x:\n---\na: b", 1, 1, "defines tags"),
    ("FB108", "a: 1\n---\nb: 2", 2, 1, "a second document"),
    ("FB109", "", 1, 1, "the file is empty"),
    ("FB109", "# only words\n", 1, 1, "the file is empty"),
    ("FB110", "? [a]\n: b", 1, 3, "no plain word"),
    ("FB110", "? {a: b}\n: b", 1, 3, "no plain word"),
    ("FB110", "?\n: 1", 1, 2, "a key is missing"),
    ("FB111", "[a" + ", a" * MOST_VALUES + "]", 1, 3 * MOST_VALUES - 1, "more than 20000 keys and values"),
]


@pytest.mark.parametrize(("code", "content", "line", "column", "part"), REFUSED)
def test_what_is_not_plain_yaml_is_refused_at_its_place(
    code: str, content: bytes | str, line: int, column: int, part: str
) -> None:
    fault = only_fault(content)
    assert fault.code == code
    assert part in fault.headline
    assert fault.primary is not None
    assert (fault.primary.span.start_line, fault.primary.span.start_column) == (line, column)
    assert fault.help


def test_a_key_that_stands_twice_is_shown_in_both_places() -> None:
    fault = only_fault("a:\n  net: 1\n  lace: 2\n  net: 3\n")
    assert [label.span.start_line for label in fault.others] == [2]


def test_what_was_never_closed_is_shown_where_it_opens() -> None:
    fault = only_fault("a: 1\nb: [1, 2\nc: 3\n")
    assert [(label.span.start_line, label.span.start_column) for label in fault.others] == [(2, 4)]


def test_all_faults_of_a_file_are_told_at_once() -> None:
    staged = read_tree("a: &x 1\nb: *x\na: 2\nc: !t d\n", "spec.yaml")
    assert [fault.code for fault in staged.faults] == ["FB106", "FB106", "FB105", "FB107"]


def test_a_file_full_of_faults_ends_after_fifty() -> None:
    assert len(read_tree("a: 1\n" * 500, "spec.yaml").faults) == 50


def test_the_largest_file_is_read_and_a_byte_more_is_refused() -> None:
    assert read("a" * LARGEST_FILE)
    for content in ("a" * (LARGEST_FILE + 1), b"a" * (LARGEST_FILE + 1), "é" * (LARGEST_FILE // 2) + "a"):
        fault = only_fault(content)
        assert fault.code == "FB102"
        assert "1 more than" in fault.headline


def test_the_deepest_tree_is_read() -> None:
    assert read("[" * DEEPEST_TREE + "]" * DEEPEST_TREE)


def test_without_the_c_library_the_same_tree_is_read(monkeypatch: pytest.MonkeyPatch) -> None:
    expected = read(EVERY_FORM)
    monkeypatch.delattr(yaml, "CSafeLoader")
    assert read(EVERY_FORM) == expected
    for code, content, *_ in REFUSED:
        if len(content) < 1000:
            assert [fault.code for fault in read_tree(content, "spec.yaml").faults] == [code], content


def test_an_unknown_complaint_of_the_scanner_is_passed_on(monkeypatch: pytest.MonkeyPatch) -> None:
    def complain(*_: object, **__: object) -> None:
        raise yaml.YAMLError("the loom is broken")

    monkeypatch.setattr(yaml, "parse", complain)
    assert "the loom is broken" in only_fault("a: b").headline


@pytest.mark.parametrize(
    ("word", "found"),
    [
        ("flounc", ("flounce",)),
        ("Flounce", ("flounce",)),
        ("waist-girth", ("waist_girth",)),
        ("waist girht", ("waist_girth",)),
        ("uper", ("upper",)),
        ("casing", ()),
        ("", ()),
        ("x" * 61, ()),
    ],
)
def test_a_mistyped_word_finds_its_neighbours(word: str, found: tuple[str, ...]) -> None:
    assert nearest(word, ["flounce", "upper", "waist_girth", "hip_girth"]) == found


def test_the_nearest_word_comes_first_and_at_most_three_come() -> None:
    assert nearest("ab", ["abc", "ac", "ab", "aa", "ba"]) == ("aa", "abc", "ac")


def test_exchanged_letters_are_one_slip() -> None:
    # Source: Damerau, "A technique for computer detection and correction of spelling errors", 1964.
    assert nearest("gatehr", ["gather"]) == ("gather",)
    assert nearest("hme", ["hem"]) == ("hem",)


# --- any text --------------------------------------------------------------------------------------------

PIECES = st.sampled_from(
    [
        *"ab:\n\r[]{},'\"#|>\u2028\x85\ufeffé😀\\\x00@`~",
        *(
            ": ",
            "- ",
            "\n  ",
            "\n\t",
            "? ",
            "&a ",
            "*a",
            "!t ",
            "<<: ",
            "|2\n",
            "---\n",
            "...\n",
            "%YAML 1.1\n",
        ),
    ]
)


def spans(tree: Tree) -> list[Span]:
    if isinstance(tree, MapTree):
        inner = [span for entry in tree.entries for span in (entry.key_span, *spans(entry.value))]
        return [tree.span, *inner]
    if isinstance(tree, ListTree):
        return [tree.span, *(span for row in tree.rows for span in spans(row))]
    return [tree.span]


@settings(max_examples=300, deadline=None)
@given(st.one_of(st.text(max_size=60), st.lists(PIECES, max_size=40).map("".join), st.binary(max_size=40)))
def test_any_text_is_a_tree_or_faults_inside_it(content: str | bytes) -> None:
    staged = read_tree(content, "spec.yaml")
    text = content.decode("utf-8", "replace") if isinstance(content, bytes) else content
    lines = re.split(r"\r\n|\n|\r", text.removeprefix("\ufeff"))
    places = spans(staged.value) if staged.value is not None else []
    for fault in staged.faults:
        assert fault.primary is not None
        places += [fault.primary.span, *(label.span for label in fault.others)]
    assert places
    for place in places:
        assert 1 <= place.start_line <= place.end_line <= len(lines)
        assert 1 <= place.start_column <= len(lines[place.start_line - 1]) + 1
        assert 1 <= place.end_column <= len(lines[place.end_line - 1]) + 1
        assert (place.start_line, place.start_column) <= (place.end_line, place.end_column)
    if staged.value is not None:
        to_plain(staged.value)


@settings(max_examples=100, deadline=None)
@given(
    st.recursive(
        st.text(
            st.characters(codec="utf-8", exclude_categories=["Cc", "Cs", "Zl", "Zp", "Cn"], exclude_characters="\ufeff")
        ).filter(lambda text: not text.strip() or not shows_nothing(text)),  # what nobody sees is refused
        lambda inner: st.one_of(
            st.lists(inner, max_size=4),
            st.dictionaries(st.text("abcé_ ", min_size=1, max_size=6), inner, max_size=4),
        ),
        max_leaves=15,
    ).filter(bool),
    st.sampled_from([None, True, False]),
)
def test_what_the_reference_library_writes_is_read_back(value: object, flow: bool | None) -> None:
    # Source: PyYAML's emitter as the reference writer.
    text = yaml.safe_dump(value, allow_unicode=True, default_flow_style=flow, default_style='"')
    assert to_plain(read(text)) == value
