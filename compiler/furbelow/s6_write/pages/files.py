"""The files of a guide, by name."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from furbelow.garment.phrasing import Phrasing
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.guide.material_lines import material_rows, materials_table
from furbelow.s6_write.pages.epub import EPUB, epub
from furbelow.s6_write.pages.json_page import to_json
from furbelow.s6_write.pages.look import Look, look_of
from furbelow.s6_write.pages.markdown_page import figure_files, markdown
from furbelow.s6_write.pages.page import html
from furbelow.s6_write.pages.shopping_page import shopping_markdown
from furbelow.s6_write.words.messages import Messages
from furbelow.s6_write.words.words import Words

Format = Callable[[Guide, Messages, Look | None], bytes]
PDF = "guide.pdf"
READ = ("guide.html", PDF)  # by people; the others are for programs, and for who sets the guide anew


def _pdf(guide: Guide, words: Messages, look: Look | None) -> bytes:
    from furbelow.s6_write.pages.pdf import pdf  # the typesetter is heavy to load, and may be left out

    return pdf(guide, words, look)


# What a guide is written as, by the name of the file. A row is all that a new format needs besides its own file.
FORMATS: Mapping[str, Format] = {
    "guide.html": lambda guide, words, look: html(guide, words, look).encode("utf-8"),
    "guide.md": lambda guide, words, look: markdown(guide, words).encode("utf-8"),
    "guide.json": lambda guide, words, look: to_json(guide, words).encode("utf-8"),
    EPUB: epub,
    PDF: _pdf,
}


def files_of(
    guide: Guide,
    rehearsal: Rehearsal,
    cutting: Cutting,
    shopping: ShoppingList,
    *,
    with_pdf: bool = True,
    with_data: bool = True,
) -> Mapping[str, bytes]:
    """The guide as pages for screen, print and programs, and the bill of materials. with_pdf, with_data: as in `guide_files`."""
    room = rehearsal.run.room
    words = Words(guide.language, Phrasing(rehearsal.solved, room, cutting.joins))
    files = dict(guide_files(guide, words, look_of(room), with_pdf=with_pdf, with_data=with_data))
    files["shopping.md"] = shopping_markdown(shopping, guide.title, guide.wearer, words).encode("utf-8")
    files["materials.csv"] = materials_table(material_rows(shopping, guide.wearer, words), words)
    return files


def guide_files(
    guide: Guide, words: Messages, look: Look | None, *, with_pdf: bool = True, with_data: bool = True
) -> Mapping[str, bytes]:
    """The pages of a guide alone, and the figures that they link to. with_data: with more than what people read."""
    asked = {
        name: write for name, write in FORMATS.items() if (with_pdf or name != PDF) and (with_data or name in READ)
    }
    pages = {name: write(guide, words, look) for name, write in asked.items()}
    return pages | figure_files(guide) if with_data else pages
