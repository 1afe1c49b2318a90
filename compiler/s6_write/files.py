"""The files of a guide, by name."""

from __future__ import annotations

from collections.abc import Mapping

from compiler.s3_rehearse.run import Rehearsal
from compiler.s4_cut.cut import Cutting
from compiler.s5_buy.bom import materials_csv
from compiler.s5_buy.shopping import ShoppingList
from compiler.s6_write.compose import compose
from compiler.s6_write.guide import Guide
from compiler.s6_write.json_page import to_json
from compiler.s6_write.markdown_page import figure_files, markdown
from compiler.s6_write.material_lines import material_rows
from compiler.s6_write.page import html
from compiler.s6_write.shopping_page import shopping_markdown
from compiler.say import Say


def files_of(
    rehearsal: Rehearsal, cutting: Cutting, shopping: ShoppingList, wearer: str, *, with_pdf: bool = True
) -> Mapping[str, bytes]:
    """The guide as pages for screen, print and programs, and the bill of materials."""
    guide = compose(rehearsal, cutting, shopping, wearer)
    say = Say(rehearsal.solved, rehearsal.run.room, cutting.joins)
    files = dict(guide_files(guide, with_pdf=with_pdf))
    files["shopping.md"] = shopping_markdown(shopping, guide.title, wearer, say).encode("utf-8")
    files["materials.csv"] = materials_csv(material_rows(shopping, wearer))
    return files


def guide_files(guide: Guide, *, with_pdf: bool = True) -> Mapping[str, bytes]:
    """The pages of a guide alone."""
    texts = {
        "guide.html": html(guide),
        "guide.md": markdown(guide),
        "guide.json": to_json(guide),
        **figure_files(guide),
    }
    files = {name: text.encode("utf-8") for name, text in texts.items()}
    if with_pdf:
        from compiler.s6_write.pdf import pdf

        files["guide.pdf"] = pdf(guide)
    return files
