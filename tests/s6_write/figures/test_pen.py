"""The sheet: words that fit their boxes, distances written one way, labels that keep off each other."""

from __future__ import annotations

import struct
from functools import cache
from itertools import pairwise

import pytest
from furbelow.resources import template
from furbelow.s6_write.figures import advances
from furbelow.s6_write.figures.language import SIZE
from furbelow.s6_write.figures.pen import Sheet, broken, number, shortened, spread, width_of
from furbelow.s6_write.guide.guide import Figure
from hypothesis import given
from hypothesis import strategies as st

from .drawn import points, view, words

FILES = {"SourceSans3-Regular.ttf": advances.REGULAR, "SourceSans3-SemiBold.ttf": advances.SEMIBOLD}


@cache
def _tables(file: str) -> tuple[bytes, dict[bytes, int]]:
    """A font file with the start of each of its tables. Source: OpenType, ISO/IEC 14496-22, the table directory."""
    font = template(f"fonts/{file}").read_bytes()
    count = struct.unpack(">H", font[4:6])[0]
    found = {}
    for index in range(count):
        tag, _, offset, _ = struct.unpack(">4sLLL", font[12 + 16 * index : 28 + 16 * index])
        found[tag] = offset
    return font, found


def _glyph(file: str, letter: str) -> int:
    """The glyph of a letter by the font's `cmap`, format 4 (ISO/IEC 14496-22)."""
    font, tables = _tables(file)
    start = tables[b"cmap"]
    for index in range(struct.unpack(">H", font[start + 2 : start + 4])[0]):
        at = start + struct.unpack(">L", font[start + 8 + 8 * index : start + 12 + 8 * index])[0]
        if struct.unpack(">H", font[at : at + 2])[0] != 4:
            continue
        twice = struct.unpack(">H", font[at + 6 : at + 8])[0]
        count, code = twice // 2, ord(letter)
        ends = struct.unpack(f">{count}H", font[at + 14 : at + 14 + twice])
        starts = struct.unpack(f">{count}H", font[at + 16 + twice : at + 16 + 2 * twice])
        shifts = struct.unpack(f">{count}H", font[at + 16 + 2 * twice : at + 16 + 3 * twice])
        ranges = at + 16 + 3 * twice
        for part in range(count):
            if starts[part] <= code <= ends[part]:
                skip = struct.unpack(">H", font[ranges + 2 * part : ranges + 2 * part + 2])[0]
                if not skip:
                    return int(code + shifts[part]) & 0xFFFF
                place = ranges + 2 * part + skip + 2 * (code - starts[part])
                glyph = struct.unpack(">H", font[place : place + 2])[0]
                return (glyph + shifts[part]) & 0xFFFF if glyph else 0
    raise AssertionError(f"no cmap of format 4 in {file}")


def _advance(file: str, glyph: int) -> int:
    font, tables = _tables(file)
    heavy = struct.unpack(">H", font[tables[b"hhea"] + 34 : tables[b"hhea"] + 36])[0]
    at = tables[b"hmtx"] + 4 * min(glyph, heavy - 1)
    return int(struct.unpack(">H", font[at : at + 2])[0])


@pytest.mark.parametrize("file", FILES)
def test_the_table_of_advance_widths_is_that_of_the_shipped_font(file: str) -> None:
    font, tables = _tables(file)
    units = struct.unpack(">H", font[tables[b"head"] + 18 : tables[b"head"] + 20])[0]
    letters = {letter: width for width, row in FILES[file].items() for letter in row}
    assert set("abcxyzABC0123456789 .,·×÷äéß½") <= set(letters)
    wrong = {
        letter: (width, _advance(file, _glyph(file, letter)) * 1000 / units)
        for letter, width in letters.items()
        if round(_advance(file, _glyph(file, letter)) * 1000 / units) != width
    }
    assert wrong == {}


def test_words_are_as_long_as_their_letters() -> None:
    # 497 thousandths each: the digits of Source Sans 3 are of one width.
    assert width_of("0123") == pytest.approx(4 * 497 * SIZE / 1000)
    assert width_of("ab") == pytest.approx(width_of("a") + width_of("b"))
    assert width_of("flounce", bold=True) > width_of("flounce")


def test_the_box_of_a_line_is_written_into_the_drawing() -> None:
    sheet = Sheet()
    box = sheet.write((200, 50), "602 cm", "middle")
    (line,) = words(Figure("a", sheet.svg(), "", ""))
    assert line.right - line.left == pytest.approx(10 * (box.right - box.left), abs=1)
    assert line.left == pytest.approx(10 * box.left, abs=1)


def test_what_a_maker_calls_a_piece_cannot_break_the_drawing() -> None:
    sheet = Sheet()
    sheet.write((10, 20), 'a<b> & "c" </svg>')
    (line,) = words(Figure("a", sheet.svg(), "", ""))
    assert line.text == 'a<b> & "c" </svg>'


@given(st.text(max_size=30))
def test_any_words_make_a_drawing_that_is_whole_xml(said: str) -> None:
    """A drawing is a file of its own too; XML holds neither controls nor U+FFFE."""
    sheet = Sheet()
    sheet.write((10, 20), f"{said}a\x00\x1b\ufffe\uffff\ufdd0\u202eb")
    (line,) = words(Figure("a", sheet.svg(), "", ""))
    assert line.text.endswith("ab")


def test_letters_that_the_font_lacks_still_get_room() -> None:
    assert width_of("юбка") > 0
    assert width_of("裙") >= SIZE


@given(st.text(st.characters(codec="utf-8", exclude_categories=["Cs", "Cc"]), max_size=60), st.floats(30, 300))
def test_shortened_words_fit_the_room(text: str, room: float) -> None:
    assert width_of(shortened(text, room)) <= room
    assert shortened(text, 10_000) == text


@given(st.lists(st.text("abc", min_size=1, max_size=8), max_size=12), st.floats(60, 200))
def test_broken_words_keep_every_word_and_the_width(parts: list[str], room: float) -> None:
    rows = broken(" ".join(parts), room)
    assert " ".join(rows).split() == parts
    assert all(width_of(row) <= room for row in rows)


@given(
    st.lists(st.tuples(st.floats(0, 300), st.floats(5, 40)), min_size=1, max_size=8),
    st.floats(0, 50),
    st.floats(200, 400),
)
def test_spread_labels_never_overlap_and_keep_their_order(
    wanted: list[tuple[float, float]], low: float, high: float
) -> None:
    wanted = sorted(wanted)
    heights = [height for _, height in wanted]
    placed = spread([middle for middle, _ in wanted], heights, low, high)
    for (one, tall), (other, next_tall) in pairwise(zip(placed, heights, strict=True)):
        assert other - one >= (tall + next_tall) / 2 - 1e-6
    assert placed[0] - heights[0] / 2 >= low - 1e-6
    if sum(heights) <= high - low:
        assert placed[-1] + heights[-1] / 2 <= high + 1e-6


def test_labels_with_room_stay_where_they_are_wanted() -> None:
    assert spread([20, 60, 120], [15, 15, 15], 0, 200) == [20, 60, 120]


@given(st.lists(st.tuples(st.floats(0, 400), st.floats(0, 400)), min_size=2, max_size=40))
def test_a_line_comes_out_where_it_was_drawn_without_drift(way: list[tuple[float, float]]) -> None:
    sheet = Sheet()
    sheet.line(way)
    drawn = list(points(Figure("a", sheet.svg(), "", "")))
    for (x, y), (drawn_x, drawn_y) in zip(way, drawn, strict=True):
        assert drawn_x == pytest.approx(10 * x, abs=0.51)
        assert drawn_y == pytest.approx(10 * y, abs=0.51)


def test_the_sheet_is_cut_to_what_was_drawn() -> None:
    sheet = Sheet()
    sheet.line([(10, 40), (20, 90)])
    left, top, right, bottom = view(Figure("a", sheet.svg(), "", ""))
    assert (left, right) == (0, 4000)
    assert (top, bottom) == (10 * (40 - 8), 10 * (90 + 8))


def test_numbers_are_written_one_way() -> None:
    assert [number(value) for value in (0.0, -0.01, 1.0, 12.34, -3.06)] == ["0", "0", "10", "123", "-31"]
