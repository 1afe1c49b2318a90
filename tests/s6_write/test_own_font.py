"""Letters that the shipped fonts lack are told, and a font of the workroom's own shows them on paper and screen.

The font is DejaVu Sans of Debian's fonts-dejavu-core, which has the Georgian letters that the shipped ones lack.
"""

from __future__ import annotations

import re
import shutil
import struct
from pathlib import Path

import pikepdf
import pytest
from furbelow.s6_write.pages.font_letters import FontFault, letters_of
from furbelow.s6_write.pages.own_font import LARGEST_FONT, shipped_letters
from furbelow.verbs.command import run

from tests.demos.demos import SPECS
from tests.s6_write.words.made_up import in_english

DEJAVU = Path("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf")
SHIPPED = Path(__file__).parents[2] / "templates" / "fonts" / "SourceSans3-Regular.ttf"
LARKSPUR = in_english((SPECS / "larkspur.yaml").read_text(encoding="utf-8"))
SKIRT = "ქვედაბოლო"  # Georgian: skirt


def _make(folder: Path, title: str, *options: str, font: str = "") -> int:
    (folder / "spec.yaml").write_text(LARKSPUR.replace("Larkspur dancing underskirt", title), encoding="utf-8")
    room = f"workroom: 1\nfont: {font}\n" if font else "workroom: 1\n"
    (folder / "room.yaml").write_text(room, encoding="utf-8")
    call = ["make", str(folder / "spec.yaml"), "--size", "M", "--workroom", str(folder / "room.yaml")]
    return run([*call, "--out", str(folder / "out"), *options])


@pytest.fixture
def dejavu(tmp_path: Path) -> str:
    if not DEJAVU.is_file():
        pytest.skip("fonts-dejavu-core is not here")
    shutil.copy(DEJAVU, tmp_path / "own.ttf")
    return "own.ttf"


def test_a_text_of_which_nothing_could_be_read_is_refused_where_it_stands(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert _make(tmp_path, SKIRT) == 1
    told = capsys.readouterr().err
    assert "error FB166: the fonts of the guide lack the letters ქ ვ ე დ ა ბ ო ლ" in told
    line = LARKSPUR[: LARKSPUR.index("Larkspur dancing underskirt")].count("\n") + 1
    assert f"spec.yaml:{line}:" in told
    assert "font: my-font.ttf" in told
    assert not (tmp_path / "out").exists()


@pytest.mark.parametrize(
    ("title", "options"), [(f"Skirt {SKIRT}", []), (SKIRT, ["--no-pdf"]), ("Skirt \U0001f9f5", [])]
)
def test_single_letters_and_a_page_without_a_pdf_are_warned_of(
    title: str, options: list[str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert _make(tmp_path, title, *options) == 0
    assert capsys.readouterr().err.count("warning FB166") == 1


def test_accents_of_latin_letters_are_not_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert _make(tmp_path, "Žlutý kůň, œuvre, ñandú, Größe, combining e\u0301") == 0
    assert "FB166" not in capsys.readouterr().err


def test_a_font_of_the_workroom_shows_them_in_the_pdf_and_on_the_page(
    dejavu: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert _make(tmp_path, SKIRT, font=dejavu) == 0
    assert "FB166" not in capsys.readouterr().err
    page = (tmp_path / "out" / "guide.html").read_text("utf-8")
    assert '@font-face { font-family: "Furbelow Own"; src: url("data:font/ttf;base64,' in page
    document = pikepdf.open(tmp_path / "out" / "guide.pdf")
    fonts = {str(font.BaseFont).partition("+")[2] for each in document.pages for _, font in each.Resources.Font.items()}
    assert "DejaVuSans" in fonts


def test_a_page_without_such_a_font_names_none(tmp_path: Path) -> None:
    assert _make(tmp_path, "Skirt", "--no-pdf") == 0
    assert "Furbelow Own" not in (tmp_path / "out" / "guide.html").read_text("utf-8")


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"wOF2" + bytes(100), "it is no font in the format of TrueType or OpenType"),
        (b"\x00\x01\x00\x00" + bytes(100), "its table of letters can't be read"),
        (SHIPPED.read_bytes()[:5000], "its table of letters can't be read"),
        (bytes(LARGEST_FONT + 7), f"bytes, 7 more than the {LARGEST_FONT} allowed"),
    ],
)
def test_a_font_that_can_not_be_used_is_refused(
    content: bytes, said: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "own.ttf").write_bytes(content)
    assert _make(tmp_path, "Skirt", font="own.ttf") == 1
    told = capsys.readouterr().err
    assert "error FB167" in told
    assert said in told


@pytest.mark.parametrize("font", ["../own.ttf", "/etc/passwd", "nothing.ttf", "."])
def test_a_font_elsewhere_is_refused(font: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert _make(tmp_path, "Skirt", font=font) == 1
    assert "error FB165" in capsys.readouterr().err


def test_the_letters_of_a_font_are_those_of_its_own_table() -> None:
    letters = letters_of(SHIPPED.read_bytes())
    assert shipped_letters() <= letters
    assert "ქ" not in letters


def _font(table: bytes) -> bytes:
    return b"\x00\x01\x00\x00" + struct.pack(">HHHH4sLLL", 1, 0, 0, 0, b"cmap", 0, 28, len(table)) + table


def test_a_table_by_groups_is_read_and_one_without_end_is_refused() -> None:
    head = struct.pack(">HHHHL", 0, 1, 3, 10, 12)

    def groups(*told: tuple[int, int, int]) -> bytes:
        rows = b"".join(struct.pack(">LLL", *each) for each in told)
        return _font(head + struct.pack(">HHLLL", 12, 0, 16 + len(rows), 0, len(told)) + rows)

    assert letters_of(groups((0x41, 0x43, 5), (0x4E00, 0x4E00, 9))) == {"A", "B", "C", "一"}
    assert letters_of(groups((0x41, 0x42, 0))) == {"B"}  # glyph 0 is none
    with pytest.raises(FontFault):
        letters_of(groups(*[(0, 0x10FFFF, 1)] * 1000))
    with pytest.raises(FontFault):
        letters_of(groups((0, 0xFFFFFFFF, 1)))


def test_a_name_begins_large_only_where_the_capital_has_a_shape(dejavu: str, tmp_path: Path) -> None:
    """The Georgian capitals of Unicode 11 are in few fonts, and the writer refuses a letter without a shape."""
    assert "ზ".upper() not in letters_of(DEJAVU.read_bytes())
    spec = LARKSPUR.replace("about: upper tier", "about: ზედა იარუსი")
    assert spec != LARKSPUR
    (tmp_path / "spec.yaml").write_text(spec, encoding="utf-8")
    (tmp_path / "room.yaml").write_text(f"workroom: 1\nfont: {dejavu}\n", encoding="utf-8")
    call = ["make", str(tmp_path / "spec.yaml"), "--size", "M", "--workroom", str(tmp_path / "room.yaml")]
    assert run([*call, "--out", str(tmp_path / "out")]) == 0
    assert re.search("ზედა", (tmp_path / "out" / "guide.md").read_text("utf-8"))
