"""The page of a class or a size range, as a value and as HTML: whose guides there are, and what is bought for all.

Of a wearer it says no measure: only a name or number, the way to the guide, and how much cloth and time it takes. The
sizes of a spec are nobody's, so a size range has its chart.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Sequence
from dataclasses import asdict, dataclass
from fractions import Fraction

from furbelow.garment.phrasing import Phrasing
from furbelow.measure.quantity import show_decimal, show_fixed
from furbelow.s5_buy.class_order import ClassOrder
from furbelow.s6_write.guide.guide import MaterialLine
from furbelow.s6_write.guide.material_lines import material_lines
from furbelow.s6_write.guide.size_chart import ChartTable, size_chart
from furbelow.s6_write.pages.page import rendered
from furbelow.s6_write.pages.prose import set_ready
from furbelow.s6_write.words.messages import Messages


@dataclass(frozen=True)
class Made:
    """A guide that was written: its number and whose it is, its folder beside the page and the files in it."""

    number: int
    whose: str
    folder: str
    files: tuple[str, ...]


@dataclass(frozen=True)
class Missing:
    """A guide that could not be made: whose, and why in words that give no measure away."""

    whose: str
    why: tuple[str, ...]


@dataclass(frozen=True)
class GuideLine:
    number: str
    whose: str
    guide: str  # where it is, from the page
    pdf: str  # empty without one
    cloth: str
    time: str


@dataclass(frozen=True)
class BoughtLine:
    """One material bought for all beside what each alone would buy."""

    name: str
    together: str
    together_cost: str
    alone: str
    alone_cost: str


@dataclass(frozen=True)
class ClassPage:
    title: str
    whose: str
    about: str  # Markdown
    guides: tuple[GuideLine, ...]
    missing: tuple[Missing, ...]
    charts: tuple[ChartTable, ...]
    rounding: str
    materials: tuple[MaterialLine, ...]
    bought: tuple[BoughtLine, ...]
    sums: tuple[str, ...]  # what all costs, a head, and what is saved
    cutting: tuple[tuple[str, str], ...]  # (words, file) of the pages that cut for all; empty without cloth
    files: tuple[tuple[str, str], ...]
    language: str = "en"


def class_page(
    order: ClassOrder,
    whose: str,
    made: Sequence[Made],
    missing: Sequence[Missing],
    sizes: Sequence[str],
    *,
    with_pdf: bool = True,
) -> ClassPage:
    """The page for the guides that were made, in the order of the class.

    sizes: the names of the sizes that the guides are for; none for wearers, whose measures stay out.
    """
    spec, say = order.solved.spec, Phrasing(order.solved, order.room)
    cutting = [("The cutting plan for all, with steps", "class-cutting.html")]
    if with_pdf:
        cutting.append(("The cutting plan to print", "class-cutting.pdf"))
    return ClassPage(
        title=spec.title,
        whose=whose,
        about=spec.about,
        guides=tuple(_guide_line(order, each, say) for each in made),
        missing=tuple(missing),
        charts=size_chart([garment.rehearsal for garment in order.garments.values()], sizes) if sizes else (),
        rounding=say.length(order.solved.rounding),
        materials=material_lines(order.shopping, say),
        bought=bought_lines(order, say),
        sums=sums(order),
        cutting=tuple(cutting) if order.cutting.sheets else (),
        files=(("The list for the shop", "shopping.md"), ("The materials as a table", "materials.csv")),
    )


def class_html(page: ClassPage, words: Messages | None = None) -> str:
    """The page `index.html`: self-contained, with the look, the policy and the reading aids of a guide.

    words: of the page's language; as shipped where none are given.
    """
    key, words = content_key(page), words or Messages(page.language)
    words.read("class")
    page = set_ready(page)
    return rendered(
        "class.html.j2",
        words,
        title=page.title,
        whose=page.whose,
        about=page.about,
        key=key,
        page=page,
    )


def content_key(page: object) -> str:
    """Changes when anything that is read on the page changes. page: a dataclass of texts."""
    told = json.dumps(asdict(page), sort_keys=True, ensure_ascii=False)  # type: ignore[call-overload]
    return hashlib.sha256(told.encode("utf-8", "surrogatepass")).hexdigest()[:16]


def bought_lines(order: ClassOrder, say: Phrasing) -> tuple[BoughtLine, ...]:
    """Each material as it is bought for all, and as each alone would buy it."""
    apart = tuple(
        each.line._replace(need=each.need_alone, bought=each.bought_alone, cost=each.cost_alone)
        for each in order.bought
    )
    together, alone = (
        material_lines(order.shopping._replace(lines=lines), say) for lines in (order.shopping.lines, apart)
    )
    return tuple(
        BoughtLine(ours.name, ours.amount, ours.cost, theirs.amount, theirs.cost)
        for ours, theirs in zip(together, alone, strict=True)
    )


def sums(order: ClassOrder) -> tuple[str, ...]:
    """In sentences: the cost of all and a head, what buying together saves, and what to mind when sharing."""
    heads, currency = len(order.garments), order.shopping.currency

    def money(amount: Fraction) -> str:
        return f"{show_fixed(amount, 2)} {currency}"

    told = [
        f"Together: {money(order.cost)}, or {money(order.cost_per_head)} a head when it is shared evenly.",
        f"Each alone: {money(order.cost_alone)}, or {money(order.cost_alone / heads)} a head.",
    ]
    if order.cost < order.cost_alone:
        saved = order.cost_alone - order.cost
        told.append(f"Together saves {money(saved)}, {show_decimal(100 * saved / order.cost_alone, 0)} % of it.")
    unpriced = [line.name.replace("_", " ") for line in order.shopping.lines if line.cost is None]
    if unpriced:
        told.append(f"Without a price, and not in these sums: {', '.join(unpriced)}.")
    at_once = order.shopping.thread.reels_at_once
    if any(line.unit == "reels" for line in order.shopping.lines) and heads > 1:
        reels = "a reel" if at_once == 1 else f"up to {at_once} reels"
        told.append(
            f"Reels are counted for all the thread together. Machines that sew at the same time need {reels} each."
        )
    return tuple(told)


def _guide_line(order: ClassOrder, made: Made, say: Phrasing) -> GuideLine:
    shopping = order.garments[made.number].shopping
    cloth = sum((line.need for line in shopping.lines if line.offers), Fraction(0))
    return GuideLine(
        number=str(made.number),
        whose=made.whose,
        guide=f"{made.folder}/guide.html",
        pdf=f"{made.folder}/guide.pdf" if "guide.pdf" in made.files else "",
        cloth=say.buy(cloth),
        time=f"{show_fixed(shopping.time.hours, 1)} h",
    )
