"""The files that lie beside the folders of a class: its page, the cutting for all, the list and the table of materials."""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping
from dataclasses import replace
from functools import lru_cache, partial
from typing import TYPE_CHECKING

from furbelow.s4_cut.parts import in_parts
from furbelow.s5_buy.class_order import ClassOrder
from furbelow.s6_write.guide.guide import Caution, Guide
from furbelow.s6_write.guide.in_languages import languages_beside
from furbelow.s6_write.guide.material_lines import material_rows, materials_table
from furbelow.s6_write.made_in_turn import Key, Make
from furbelow.s6_write.pages.class_cutting import class_cutting, cutting_names
from furbelow.s6_write.pages.class_page import INDEX, ClassPage, bought_lines, class_html, sums, title_of
from furbelow.s6_write.pages.look import look_of
from furbelow.s6_write.pages.markdown_page import escaped
from furbelow.s6_write.pages.page import Ways, html
from furbelow.s6_write.pages.shopping_page import shopping_markdown
from furbelow.s6_write.words.words import Words

if TYPE_CHECKING:
    from furbelow.s6_write.pages.typeset import Manuscript

_ORDERED = ("class-garments", "class-to-order", "class-order-cost")


def class_files(page: ClassPage, order: ClassOrder, words: Words) -> Mapping[str, bytes]:
    """The files by name, those of the cutting left out."""
    index = {INDEX: class_html(page, words, look_of(order.room)).encode("utf-8")}
    if not page.bought:
        return index
    return {
        **index,
        "shopping.md": _shopping(order, page.whose, words).encode("utf-8"),
        "materials.csv": _materials(order, words),
    }


def cutting_files(
    page: ClassPage, order: ClassOrder, cautions: tuple[Caution, ...], words: Words, *, with_pdf: bool
) -> tuple[Mapping[str, Make], Mapping[str, Key]]:
    """How each file of the cutting for all is made, by its name, part after part, and of PDFs the keys of what they are made
    from. cautions: of the cutting.
    """
    look, cut = look_of(order.room), in_parts(order.cutting)
    names = cutting_names(len(cut))
    called = [words.text("class-cutting-part", {"part": part}) for part in range(1, len(names) + 1)]

    # The page and the PDF of a part are made one after the other.
    @lru_cache(maxsize=1)
    def guide(part: int) -> Guide:
        return replace(
            class_cutting(order, cut, part, page.whose, cautions, words),
            of_person=not page.charts,
            beside=page.sizes,
            index=INDEX,
            languages=languages_beside(page.language, page.languages, f"{names[part - 1]}.html"),
        )

    def ways(part: int) -> Ways | None:
        if len(names) < 2:
            return None
        others = (
            (call, "" if at == part else f"{name}.html")
            for at, (call, name) in enumerate(zip(called, names, strict=True), 1)
        )
        return Ways(words.text("class-cutting-parts"), ((words.text("class-guides"), INDEX), *others))

    def as_page(part: int) -> bytes:
        return html(guide(part), words, look, ways(part)).encode("utf-8")

    @lru_cache(maxsize=1)
    def on_paper(part: int) -> Manuscript:
        from furbelow.s6_write.pages.pdf import manuscript

        return manuscript(guide(part), words, look)

    def as_pdf(part: int) -> bytes:
        from furbelow.s6_write.pages.typeset import typeset

        return typeset(on_paper(part))

    def key(part: int) -> str:
        return on_paper(part).key()

    made = {f"{name}.html": partial(as_page, part) for part, name in enumerate(names, 1)}
    if not with_pdf:
        return made, {}
    made |= {f"{name}.pdf": partial(as_pdf, part) for part, name in enumerate(names, 1)}
    return made, {f"{name}.pdf": partial(key, part) for part, name in enumerate(names, 1)}


def _shopping(order: ClassOrder, whose: str, words: Words) -> str:
    words.read("shopping")
    of_all = words.text("shopping-class", {"whose": whose, "garments": len(order.garments)})
    told = [shopping_markdown(order.shopping, title_of(order, words), of_all, words)]
    heads = (words.text(head) for head in ("class-material", "class-together", "class-alone"))
    told.append(f"## {words.text('shopping-together')}\n\n| {' | '.join(heads)} |\n|---|---|---|")
    for line in bought_lines(order, words):
        together, alone = (
            escaped(f"{amount}, {cost}" if cost else amount)
            for amount, cost in ((line.together, line.together_cost), (line.alone, line.alone_cost))
        )
        told.append(f"| {escaped(line.name)} | {together} | {alone} |")
    told += ["", *(f"- {escaped(sentence)}" for sentence in sums(order, words)), ""]
    return "\n".join(told)


def _materials(order: ClassOrder, words: Words) -> bytes:
    """The bill of materials with what one garment takes on average, and three columns for the order of all."""
    heads = len(order.garments)
    rows = [
        row._replace(
            consumption=row.consumption / heads,
            cost=None if row.cost is None else row.cost / heads,
            size=words.text("class-mean", {"garments": heads}),
        )
        for row in material_rows(order.shopping, "", words)
    ]
    table = list(csv.reader(io.StringIO(materials_table(rows, words).decode("utf-8"), newline="")))
    ordered = [
        [str(each.garments), line.together, line.together_cost]
        for line, each in zip(bought_lines(order, words), order.bought, strict=True)
    ]
    text = io.StringIO(newline="")
    writer = csv.writer(text, lineterminator="\r\n")
    writer.writerows(
        [*row, *more] for row, more in zip(table, [[words.text(head) for head in _ORDERED], *ordered], strict=True)
    )
    return text.getvalue().encode("utf-8")
