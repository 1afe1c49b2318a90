"""The files that lie beside the folders of a class: its page, the cutting for all, the list and the table of materials."""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping

from furbelow.garment.phrasing import Phrasing
from furbelow.s5_buy.bom import materials_csv
from furbelow.s5_buy.class_order import ClassOrder
from furbelow.s6_write.guide.material_lines import material_rows
from furbelow.s6_write.pages.class_cutting import class_cutting
from furbelow.s6_write.pages.class_page import ClassPage, bought_lines, class_html, sums
from furbelow.s6_write.pages.markdown_page import escaped
from furbelow.s6_write.pages.page import html
from furbelow.s6_write.pages.shopping_page import shopping_markdown


def class_files(page: ClassPage, order: ClassOrder) -> Mapping[str, bytes]:
    """The files by name. The cutting is there where the page links to it."""
    files = {
        "index.html": class_html(page).encode("utf-8"),
        "shopping.md": _shopping(order, page.whose).encode("utf-8"),
        "materials.csv": _materials(order),
    }
    linked = {file for _, file in page.cutting}
    if linked:
        cutting = class_cutting(order, page.whose)
        files["class-cutting.html"] = html(cutting).encode("utf-8")
        if "class-cutting.pdf" in linked:
            from furbelow.s6_write.pages.pdf import pdf

            files["class-cutting.pdf"] = pdf(cutting)
    return files


def _shopping(order: ClassOrder, whose: str) -> str:
    say = Phrasing(order.solved, order.room, order.cutting.joins)
    count = say.count(len(order.garments), "garment")
    told = [shopping_markdown(order.shopping, order.solved.spec.title, f"{whose}: {count}", say)]
    told.append("## Bought together, and by each alone\n\n| Material | Together | Each alone |\n|---|---|---|")
    for line in bought_lines(order, say):
        together, alone = (
            escaped(f"{amount}, {cost}" if cost else amount)
            for amount, cost in ((line.together, line.together_cost), (line.alone, line.alone_cost))
        )
        told.append(f"| {escaped(line.name)} | {together} | {alone} |")
    told += ["", *(f"- {escaped(sentence)}" for sentence in sums(order)), ""]
    return "\n".join(told)


def _materials(order: ClassOrder) -> bytes:
    """The bill of materials with what one garment takes on average, and three columns for the order of all."""
    heads, say = len(order.garments), Phrasing(order.solved, order.room)
    rows = [
        row._replace(
            consumption=row.consumption / heads,
            cost=None if row.cost is None else row.cost / heads,
            size=f"mean of {say.count(heads, 'garment')}",
        )
        for row in material_rows(order.shopping, "")
    ]
    table = list(csv.reader(io.StringIO(materials_csv(rows).decode("utf-8"), newline="")))
    ordered = [
        [str(each.garments), line.together, line.together_cost]
        for line, each in zip(bought_lines(order, say), order.bought, strict=True)
    ]
    text = io.StringIO(newline="")
    writer = csv.writer(text, lineterminator="\r\n")
    writer.writerows(
        [*row, *more]
        for row, more in zip(table, [["garments that use it", "to order", "cost of the order"], *ordered], strict=True)
    )
    return text.getvalue().encode("utf-8")
