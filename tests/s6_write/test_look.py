"""A theme is laid over page and PDF, and hostile or unreadable ones are refused where they stand."""

from __future__ import annotations

import re
import shutil
from pathlib import Path

import pikepdf
import pytest
from furbelow.garment.workroom import Workroom
from furbelow.resources import template
from furbelow.s1_read.read_workroom import read_workroom
from furbelow.s6_write.pages.look import look_of
from furbelow.s6_write.pages.page import html
from furbelow.s6_write.pages.pdf import pdf

from tests.s1_read.test_read_pictures import photograph
from tests.s6_write.sample_guide import GUIDE

THEME = """\
theme: 1
light: {ground: f3f7f2, words: 1f2620, quiet words: "#4F5A50", accent: 1f5a3a, lines: 6f7b6b}
dark: {accent: 8fd0a5}
fonts: {headings: fonts/heading.ttf, text: fonts/heading.ttf}
logo: {file: logo.jpg, alt: Village <theatre>}
"""


def room_in(folder: Path, theme: str = THEME) -> Workroom:
    (folder / "fonts").mkdir(exist_ok=True)
    shutil.copyfile(template("fonts/Literata-SemiBold.ttf"), folder / "fonts" / "heading.ttf")
    (folder / "logo.jpg").write_bytes(photograph())
    (folder / "theme.yaml").write_text(theme, encoding="utf-8")
    (folder / "room.yaml").write_text("workroom: 1\ntheme: theme.yaml\n", encoding="utf-8")
    staged = read_workroom(folder / "room.yaml")
    assert staged.value is not None, staged.faults
    return staged.value


def told(folder: Path, theme: str) -> list[tuple[str, str]]:
    (folder / "theme.yaml").write_text(theme, encoding="utf-8")
    (folder / "room.yaml").write_text("workroom: 1\ntheme: theme.yaml\n", encoding="utf-8")
    staged = read_workroom(folder / "room.yaml")
    assert staged.value is None
    assert all(fault.primary and fault.primary.span.file.endswith("theme.yaml") for fault in staged.faults)
    return [(fault.code, f"{fault.headline}; {fault.help}") for fault in staged.faults]


def test_a_page_has_the_colours_fonts_and_logo_and_paper_stays_black_on_white(tmp_path: Path) -> None:
    page = html(GUIDE, None, look_of(room_in(tmp_path)))
    style = page[page.index("<style>") : page.index("</style>")]
    assert "--accent: #1f5a3a" in style
    assert "--soft: #4f5a50" in style
    assert "--button-ink: #ffffff" in style
    assert '--serif: "Furbelow Theme Title", "Furbelow Title"' in style
    # What a theme says of colours stands for screens alone.
    themed = [line for line in style.split("\n") if "--accent: #1f5a3a" in line or "--accent: #8fd0a5" in line]
    assert len(themed) == 4
    assert all("@media screen" in line for line in themed)
    assert 'aria-label="Village &lt;theatre&gt;"' in page


def test_a_pdf_has_the_colours_fonts_and_logo(tmp_path: Path) -> None:
    import io

    look = look_of(room_in(tmp_path))
    document = pikepdf.open(io.BytesIO(pdf(GUIDE, None, look)))
    assert pdf(GUIDE, None, look) == pdf(GUIDE, None, look)
    alternatives = {
        str(each["/Alt"]) for each in document.objects if isinstance(each, pikepdf.Dictionary) and "/Alt" in each
    }
    assert "Village <theatre>" in alternatives
    content = b"".join(page.Contents.read_bytes() for page in document.pages)
    # 1f5a3a: 31, 90 and 58 of 255, as the operators of colour take them.
    assert re.search(rb"0\.121\d* 0\.352\d* 0\.227\d*", content)


@pytest.mark.parametrize(
    ("theme", "code", "said"),
    [
        ("theme: 1\nlight: {accent: dark green}", "FB168", "dark green, and no colour"),
        ("theme: 1\nlight: {accent: 12345}", "FB168", "12345, and no colour"),
        ("theme: 1\nlight: {accent: #123456}", "FB104", ""),
        ("theme: 1\nlight: {quiet words: a0a0a0}", "FB169", "2.28 : 1, 2.22 less than the 4.5 : 1 wanted"),
        ("theme: 1\nlight: {lines: f0f0f0}", "FB169", "less than the 3.0 : 1 wanted"),
        ("theme: 1\nlight: {words: 777777, card: 000000}", "FB169", "no colour can be told from all it meets"),
        ("theme: 1\nlight: {glow: 123456}", "FB130", "`glow` is no key"),
        ("theme: 1\nfonts: {headings: ../a.ttf}", "FB165", "not in the folder"),
        ("theme: 1\nfonts: {headings: none.ttf}", "FB165", "not in the folder"),
        ("theme: 1\nlogo: {file: none.png, alt: a}", "FB177", "no such file"),
        ("theme: 1\nlogo: {file: none.png}", "FB131", "`alt`"),
        ("light: {}", "FB131", "`theme`"),
    ],
)
def test_a_theme_that_can_not_be_used_is_told_where_it_stands(tmp_path: Path, theme: str, code: str, said: str) -> None:
    found = told(tmp_path, theme + "\n")
    assert code in [each for each, _ in found]
    assert said in " ".join(text for _, text in found)


def test_without_a_look_of_its_own_a_workroom_has_none() -> None:
    assert look_of(Workroom()) is None
