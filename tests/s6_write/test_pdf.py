"""The PDF is tagged, named and ordered for screen readers, breaks no step, and is the same each time.

Source: ISO 14289-1:2014 (PDF/UA-1): marked, with a title and a language, every figure with its alternative.
"""

from __future__ import annotations

import io
import os
import re
import subprocess
import sys
import unicodedata
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

import pikepdf
import pytest
import typst
from furbelow.resources import template
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.pages.font_letters import letters_of
from furbelow.s6_write.pages.pdf import pdf
from furbelow.s6_write.pages.prose import visible
from furbelow.upkeep import page_fonts
from pikepdf import Array

from tests.demos.demos import guide
from tests.s6_write.probes import PROBES
from tests.s6_write.sample_guide import GUIDE, many_figures, with_text_everywhere

ROOT = Path(__file__).parents[2]


@cache
def _opened(guide: Guide = GUIDE) -> pikepdf.Pdf:
    return pikepdf.open(io.BytesIO(pdf(guide)))


def elements(node: Any) -> Iterator[Any]:
    """Every element of a file's structure tree, or under one of its elements, in reading order."""
    if isinstance(node, pikepdf.Pdf):
        yield from elements(node.Root.StructTreeRoot.K)
    elif isinstance(node, pikepdf.Array):
        for part in node:
            yield from elements(part)
    elif isinstance(node, pikepdf.Dictionary) and "/S" in node:
        yield node
        if "/K" in node:
            yield from elements(node.K)


def pages_of(document: pikepdf.Pdf, node: Any, page: Any = None) -> set[int]:
    """The numbers of the pages on which an element has marked content."""
    numbers = {each.obj.objgen: number for number, each in enumerate(document.pages, start=1)}
    found: set[int] = set()
    if isinstance(node, pikepdf.Array):
        for part in node:
            found |= pages_of(document, part, page)
    elif isinstance(node, pikepdf.Dictionary):
        page = node.get("/Pg", page)
        if "/K" in node:
            found |= pages_of(document, node.K, page)
        elif "/MCID" in node:
            found.add(numbers[page.objgen])
    elif page is not None:
        found.add(numbers[page.objgen])
    return found


def _of_kind(document: pikepdf.Pdf, kind: str) -> list[Any]:
    return [element for element in elements(document) if kind == element.S]


def _words(document: pikepdf.Pdf) -> str:
    """What a reader finds in the file when searching, without the gaps between words."""
    return "".join(_pdftotext(document).split())


def _pdftotext(document: pikepdf.Pdf, *options: str) -> str:
    import shutil

    tool = shutil.which("pdftotext")
    if tool is None:
        pytest.skip("pdftotext is not here")
    held = io.BytesIO()
    document.save(held)
    shown = subprocess.run([tool, *options, "-", "-"], input=held.getvalue(), capture_output=True, check=True)
    return shown.stdout.decode()


def test_the_file_says_that_it_is_accessible_and_in_which_language() -> None:
    document = _opened()
    assert document.Root.MarkInfo.Marked
    assert document.Root.Lang == "en"
    assert document.Root.ViewerPreferences.DisplayDocTitle
    with document.open_metadata() as about:
        assert about["pdfuaid:part"] == "1"
        assert about["dc:title"] == "Larkspur dancing underskirt, size M"


def test_every_figure_has_its_text_alternative() -> None:
    alternatives = [str(figure.Alt).replace("\u00a0", " ") for figure in _of_kind(_opened(), "/Figure")]
    assert alternatives == [
        "The finished underskirt: a waistband, an upper tier of 15 cm and a flounce of 23.5 cm.",
        "The net folded once along its length, with four lanes marked A1, A2, B1 and B2 from the fold.",
        "A strip marked A, 602 cm long.",
        "A strip marked B, 602 cm long.",
        "A strip marked B drawn in, 602 cm long.",
    ]


def test_every_table_has_heads() -> None:
    # Source: ISO 14289-1:2014, 7.5: tables shall include headers.
    tables = list(_of_kind(_opened(), "/Table"))
    assert len(tables) >= 3
    assert all(any(each.S == "/TH" for each in elements(table)) for table in tables)


def test_the_outline_leads_to_every_part_and_operation() -> None:
    with _opened().open_outline() as outline:
        (title,) = outline.root
        parts = {part.title: [operation.title for operation in part.children] for part in title.children}
    assert title.title == GUIDE.title
    assert parts["Net layers"] == ["B Close the upper tier to a ring", "C Gather the flounce"]
    assert list(parts)[0] == "Before you begin"
    assert "Notes from the maker" in parts["Before you begin"]
    assert list(parts)[-1] == "Waist"


def test_the_reasons_are_told_in_an_appendix() -> None:
    assert "Wherethenumberscomefrom" not in _words(_opened())
    words = _words(_opened(replace(GUIDE, with_reasons=True)))
    _, _, told = words.partition("Localrulesandlicensedpracticecomefirst.Guidea1b2c3d4e5f6.")
    assert told.index("Wherethenumberscomefrom") < told.index("Finishedlengthoftheflounce(Flounce,round)600cm:")
    assert "finishedlengthoftheuppertier×fullness=300cm×2=600cm" in told
    assert "allowanceattheendoftheflounce1cm:theseamof“Closetheuppertiertoaring”" in told


@pytest.mark.parametrize(("name", "size"), [("larkspur", "M"), ("marigold", "12"), ("foxglove", "C")])
def test_the_appendix_of_a_demo_is_two_pages_at_the_most(name: str, size: str) -> None:
    document = _opened(replace(guide(name, size), with_reasons=True))
    with document.open_outline() as outline:
        appendix = outline.root[0].children[-1]
    assert appendix.title == "Where the numbers come from"
    numbers = {each.obj.objgen: number for number, each in enumerate(document.pages)}
    place = appendix.destination or (appendix.action and appendix.action.D)
    assert isinstance(place, Array)
    assert len(document.pages) - numbers[place[0].objgen] <= 2


@pytest.mark.parametrize(
    ("name", "size", "home", "most"),
    [("larkspur", "M", True, 14), ("larkspur", "M", False, 14), ("foxglove", "C", True, 11), ("peony", "B", True, 14)],
)
def test_a_guide_takes_no_more_paper_than_it_should(name: str, size: str, home: bool, most: int) -> None:
    assert len(_opened(guide(name, size, at_home=home)).pages) <= most


def test_only_shipped_fonts_are_in_the_file() -> None:
    names = {
        str(font.BaseFont).partition("+")[2] for page in _opened().pages for _, font in page.Resources.Font.items()
    }
    assert names <= {
        "FurbelowText",
        "FurbelowTitle",
        "SourceSans3-Regular",
        "SourceSans3-SemiBold",
        "Literata-SemiBold",
    }


def test_letters_that_the_fonts_for_paper_lack_come_from_the_whole_fonts() -> None:
    """They are cut down to Latin. In drawings too: under PDF/UA-1 the writer refuses a letter without a shape."""
    greek = "\u0395\u03bb\u03ad\u03bd\u03b7"
    drawn = replace(
        GUIDE.parts[0].operations[0].figures[0],
        svg='<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1000 300" font-family="\'Furbelow Text\'">'
        f'<text x="10" y="200" font-size="130">{greek}</text></svg>',
    )
    document = _opened(replace(GUIDE, wearer=greek, overview=drawn))
    assert _words(document).count(greek) >= 3
    fonts = {str(font.BaseFont).partition("+")[2] for page in document.pages for _, font in page.Resources.Font.items()}
    assert {"SourceSans3-Regular", "Literata-SemiBold"} <= fonts


@pytest.mark.parametrize("words", [3, 14, 18, 60])
def test_the_head_of_a_work_stays_on_the_page_however_long_it_is(words: int) -> None:
    """What fits on a line is reckoned. The edge of the text is 12 mm from that of the sheet."""
    operation = replace(GUIDE.parts[0].operations[0], title="Seam by seam " * words, minutes="1 h 25 min")
    boxed = _pdftotext(_opened(replace(GUIDE, parts=(replace(GUIDE.parts[0], operations=(operation,)),))), "-bbox")
    wide = float(re.findall(r'<page width="([0-9.]+)"', boxed)[0])
    ends = [float(end) for end in re.findall(r'xMax="([0-9.]+)"', boxed)]
    assert len(ends) > 100
    assert max(ends) <= wide - 12 / 25.4 * 72 + 0.5


def test_the_fonts_for_paper_have_the_letters_of_latin_scripts_that_the_whole_ones_have() -> None:
    for file, (family, _) in page_fonts.FACES.items():
        cut = template(f"fonts/{family.replace(' ', '')}-{file.partition('-')[2]}").read_bytes()
        whole = letters_of(template(f"fonts/{file}").read_bytes())
        assert letters_of(cut) == whole & set(map(chr, page_fonts.LETTERS))


def test_no_step_and_no_figure_lies_on_two_pages() -> None:
    document = _opened(many_figures())
    assert len(document.pages) > 10
    steps, figures = _of_kind(document, "/LI"), _of_kind(document, "/Figure")
    assert len(steps) > 50
    assert len(figures) > 20
    for element in steps + figures:
        assert len(pages_of(document, element)) == 1


def test_the_head_of_a_page_names_all_work_that_stands_on_it() -> None:
    # Work whose last sentence lies above the first head of a page, and work that ends with a page, are both in its head.
    told = guide("peony", "B", at_home=True)
    document = _opened(told)
    work = [*told.cut, *(operation for part in told.parts for operation in part.operations)]
    letters = [operation.letter for operation in work for _ in operation.steps]
    on: dict[int, list[str]] = {}
    for letter, sentence in zip(letters, _of_kind(document, "/LI"), strict=True):
        (page,) = pages_of(document, sentence)
        on.setdefault(page, []).append(letter)
    assert len(on) > 5
    for page, here in on.items():
        head = _pdftotext(document, "-f", str(page), "-l", str(page), "-layout").strip().splitlines()[0]
        assert head.split()[-1] == (here[0] if here[0] == here[-1] else f"{here[0]}–{here[-1]}"), page


def test_every_figure_is_wide_enough_to_read_its_words() -> None:
    # The words of a figure are 13 of its 400 units high: at 8 points, the least for print read at arm's length, it is 87 mm wide
    # (common practice, no source).
    least_pt = 8 * 400 / 13
    for figure in _of_kind(_opened(), "/Figure"):
        left, _, right, _ = (float(side) for side in figure.A[0].BBox)
        assert right - left >= least_pt, str(figure.Alt)


def test_a_figure_stands_on_the_page_of_the_sentence_beside_it() -> None:
    document = _opened(many_figures())
    sentence, seen = None, 0
    for element in elements(document):
        if element.S == "/LI":
            sentence = element
        elif element.S == "/Figure" and "A piece" in str(element.Alt):
            assert sentence is not None
            assert pages_of(document, element) == pages_of(document, sentence)
            seen += 1
    assert seen == 32


def test_the_bytes_are_the_same_in_another_process_place_and_time_zone(tmp_path: Any) -> None:
    script = (
        "import sys; from tests.s6_write.sample_guide import GUIDE; from furbelow.s6_write.pages.pdf import pdf;"
        "sys.stdout.buffer.write(pdf(GUIDE))"
    )
    root = str(template("guide.typ")).rpartition("/templates/")[0]
    other = subprocess.run(
        [sys.executable, "-c", script],
        env={"PYTHONPATH": f"{root}:{root}/compiler", "TZ": "Asia/Kathmandu", "PYTHONHASHSEED": "7", "LC_ALL": "C"},
        cwd=tmp_path,
        capture_output=True,
        check=True,
    )
    assert other.stdout == pdf(GUIDE)


def test_the_file_bears_the_date_of_source_date_epoch_or_none(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("SOURCE_DATE_EPOCH", raising=False)
    assert "/CreationDate" not in pikepdf.open(io.BytesIO(pdf(GUIDE))).docinfo
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1000000000")
    dated = pikepdf.open(io.BytesIO(pdf(GUIDE)))
    # 1,000,000,000 seconds after the epoch. Source: IEEE Std 1003.1-2017, seconds since the epoch.
    assert str(dated.docinfo["/CreationDate"]).startswith("D:20010909014640")


def test_the_list_of_letters_is_what_the_fonts_can_show() -> None:
    """Set each letter in each font: under PDF/UA-1 the writer refuses a letter without a shape."""
    letters = ""
    for line in template("fonts/letters.txt").read_text().split():
        first, _, last = line.partition("-")
        letters += "".join(map(chr, range(int(first, 16), int(last or first, 16) + 1)))
    assert len(letters) > 1000
    assert set("×½¼⅛→≥–’“”éßŁØ□") <= set(letters)
    assert not [letter for letter in letters if unicodedata.category(letter) in ("Cc", "Cs", "Cn")]
    source = (
        '#set document(title: "letters")\n#set text(fallback: false, hyphenate: false)\n'
        '#for face in (("Source Sans 3", 400), ("Source Sans 3", 600), ("Literata", 600)) {\n'
        "  set text(font: face.at(0), weight: face.at(1))\n"
        '  for letter in sys.inputs.letters.clusters() { text(letter); text(" ") }\n}'
    )

    def setting(words: str) -> bytes:
        fonts = typst.Fonts(
            include_system_fonts=False, include_embedded_fonts=False, font_paths=[str(template("fonts"))]
        )
        return typst.compile(
            source.encode(), format="pdf", font_paths=fonts, sys_inputs={"letters": words}, pdf_standards=["ua-1"]
        )

    assert setting(letters).startswith(b"%PDF")
    with pytest.raises(typst.TypstError):
        setting(letters + "漢")


@pytest.mark.parametrize("probe", PROBES)
def test_a_probe_in_every_text_is_set_as_text(probe: str) -> None:
    """Nothing in a text can act: the file is made, and holds no script, no action and no foreign address."""
    document = pikepdf.open(io.BytesIO(pdf(with_text_everywhere(probe))))
    with document.open_metadata() as about:
        assert about["dc:title"].startswith(GUIDE.title)
    for item in document.objects:
        if isinstance(item, pikepdf.Dictionary):
            assert "/JS" not in item
            assert "/Launch" not in item
            assert "/EmbeddedFile" not in item
            if "/URI" in item:
                assert str(item.URI).startswith(("http://", "https://", "mailto:"))


@pytest.mark.parametrize(
    "probe", ['#eval("1+1")', "$ x^2 $ *a* _b_ `c` <d> @e = f", "] #panic() [", '#read("/etc/passwd")']
)
def test_the_letters_of_the_template_language_are_found_again(probe: str) -> None:
    assert _words(_opened(replace(GUIDE, wearer=probe))).count("".join(probe.split())) >= 2


def test_a_letter_that_no_font_has_is_shown_as_a_box() -> None:
    words = _words(_opened(replace(GUIDE, wearer="漢字 Zoë e\u0301")))
    assert "□□Zoëé" in words


def test_a_guide_with_nothing_but_a_title_still_makes_a_file() -> None:
    bare = replace(
        GUIDE,
        about="",
        facts=(),
        cautions=(),
        tools=(),
        materials=(),
        cutting=(),
        cut=(),
        parts=(),
        proofs=(),
        notes="",
        overview=None,
    )
    assert visible(bare) == bare
    assert len(_opened(bare).pages) == 1


def test_what_was_set_before_changes_no_byte() -> None:
    first = pdf(GUIDE)
    others = [pdf(replace(GUIDE, wearer=wearer, parts=GUIDE.parts[at:])) for at, wearer in enumerate(("Ada", "Edda"))]
    assert others[0] != first
    assert pdf(GUIDE) == first
    pdf(guide("primrose", "A"))  # with other drawings, so that all is forgotten
    assert pdf(GUIDE) == first


def test_what_is_asked_for_in_several_threads_is_set_in_turn() -> None:
    guides = [replace(GUIDE, wearer=wearer) for wearer in ("Ada", "Edda", "Ida")]
    with ThreadPoolExecutor(len(guides)) as threads:
        assert list(threads.map(pdf, guides)) == [pdf(each) for each in guides]


def test_what_the_typesetter_keeps_does_not_grow_with_the_class() -> None:
    """Each guide has words of its own in every part, so that none can be taken from another."""
    script = (
        "from dataclasses import replace; from pathlib import Path; from tests.s6_write.sample_guide import with_text_everywhere;"
        "from furbelow.s6_write.pages.pdf import pdf;"
        "kept = lambda: int(Path('/proc/self/statm').read_text().split()[1]);"
        "held = [(pdf(with_text_everywhere(f'wearer {number}')), kept())[1] for number in range(24)];"
        "print(held[7], held[-1])"
    )
    if not os.path.exists("/proc/self/statm"):
        pytest.skip("this system does not tell the memory of a process there")
    told = subprocess.run([sys.executable, "-c", script], cwd=ROOT, capture_output=True, text=True, check=True)
    early, late = map(int, told.stdout.split())
    assert late < 1.1 * early


def test_what_it_refuses_is_told_and_it_goes_on() -> None:
    with pytest.raises(typst.TypstError, match="title"):
        pdf(replace(GUIDE, title=""))
    assert pdf(GUIDE).startswith(b"%PDF")


def test_no_file_of_the_folder_it_is_started_in_is_read(monkeypatch: pytest.MonkeyPatch, tmp_path: Any) -> None:
    for name in ("main.typ", "sheet.typ", "given.json"):
        (tmp_path / name).write_text("#panic()")
    whole = pdf(GUIDE)
    monkeypatch.chdir(tmp_path)
    assert pdf(GUIDE) == whole
