"""The files of a guide, by name."""

from __future__ import annotations

from collections.abc import Mapping

from furbelow.garment.phrasing import Phrasing
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.bom import materials_csv
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.guide.material_lines import material_rows
from furbelow.s6_write.pages.json_page import to_json
from furbelow.s6_write.pages.markdown_page import figure_files, markdown
from furbelow.s6_write.pages.own_font import OwnFont, own_font
from furbelow.s6_write.pages.page import html
from furbelow.s6_write.pages.shopping_page import shopping_markdown
from furbelow.s6_write.words.messages import Messages
from furbelow.s6_write.words.words import Words


def files_of(
    guide: Guide, rehearsal: Rehearsal, cutting: Cutting, shopping: ShoppingList, *, with_pdf: bool = True
) -> Mapping[str, bytes]:
    """The guide as pages for screen, print and programs, and the bill of materials."""
    room = rehearsal.run.room
    words = Words(guide.language, Phrasing(rehearsal.solved, room, cutting.joins))
    files = dict(guide_files(guide, words, own_font(room.font), with_pdf=with_pdf))
    files["shopping.md"] = shopping_markdown(shopping, guide.title, guide.wearer, words).encode("utf-8")
    files["materials.csv"] = materials_csv(material_rows(shopping, guide.wearer, words))
    return files


def guide_files(guide: Guide, words: Messages, font: OwnFont | None, *, with_pdf: bool = True) -> Mapping[str, bytes]:
    """The pages of a guide alone."""
    texts = {
        "guide.html": html(guide, words, font),
        "guide.md": markdown(guide, words),
        "guide.json": to_json(guide, words),
        **figure_files(guide),
    }
    files = {name: text.encode("utf-8") for name, text in texts.items()}
    if with_pdf:
        from furbelow.s6_write.pages.pdf import pdf

        files["guide.pdf"] = pdf(guide, words, font)
    return files
