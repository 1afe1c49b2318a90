"""The page of a class or a size range, as a value and as HTML: whose guides there are, and what is bought for all.

Of a wearer it says no measure: only a name or number, the way to the guide, and how much cloth and time it takes. The
sizes of a spec are nobody's, so a size range has its chart.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from furbelow.garment.message import Length, Money, Number
from furbelow.garment.phrasing import Phrasing
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s5_buy.class_order import ClassOrder
from furbelow.s6_write.guide.content_key import content_key
from furbelow.s6_write.guide.guide import MaterialLine, SizeBeside
from furbelow.s6_write.guide.in_languages import languages_beside
from furbelow.s6_write.guide.material_lines import material_lines
from furbelow.s6_write.guide.size_chart import ChartTable, size_chart
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.guide.told_reason import cut_rounding
from furbelow.s6_write.pages.files import PDF
from furbelow.s6_write.pages.look import Look
from furbelow.s6_write.pages.page import rendered
from furbelow.s6_write.pages.prose import set_ready
from furbelow.s6_write.words.messages import Messages
from furbelow.s6_write.words.words import Words

INDEX = "index.html"


@dataclass(frozen=True)
class Made:
    """A guide that was written: its number and whose it is, its folder beside the page and the files in it.

    under: what stands under the name: of an order its garment and its notes.
    """

    number: int
    whose: str
    folder: str
    files: tuple[str, ...]
    under: tuple[str, ...] = ()


@dataclass(frozen=True)
class Missing:
    """A guide that could not be made: whose, and of a size, which is nobody's, why."""

    whose: str
    why: tuple[str, ...] = ()


@dataclass(frozen=True)
class GuideLine:
    number: str
    whose: str
    guide: str  # where it is, from the page
    pdf: str  # empty without one
    cloth: str
    time: str
    under: tuple[str, ...] = ()


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
    cutting: tuple[tuple[str, str], ...]  # (words, file) of the pages that cut for all; empty where nobody cuts for all
    files: tuple[tuple[str, str], ...]
    prints: tuple[tuple[str, str], ...] = ()  # of all guides in one
    language: str = "en"
    languages: tuple[str, ...] = ()  # all that the page is made in, by their codes, where they are several
    sizes: tuple[SizeBeside, ...] = ()  # where the guides are those of sizes


def class_words(order: ClassOrder) -> Words:
    """The words of the pages for all, with the messages that these say."""
    say = Phrasing(order.solved, order.room, order.cutting.joins)
    words = Words(say.language, say)
    words.read("class")
    return words


def class_page(
    order: ClassOrder,
    whose: str,
    made: Sequence[Made],
    missing: Sequence[Missing],
    sizes: Mapping[str, Rehearsal],
    words: Words,
    *,
    cutting: Sequence[str] = (),
    with_pdf: bool = True,
    prints: Sequence[str] = (),
    languages: Sequence[str] = (),
    beside: Sequence[SizeBeside] = (),
) -> ClassPage:
    """The page for the guides that were made, in the order of the class.

    sizes: what the guides are for, by the names of the sizes; none for wearers, whose measures stay out. A class buys
    together, and of sizes nobody makes one each: their page has a chart in the place of an order.
    cutting: the names of the parts of the cutting for all.
    prints: the names of the files that have all guides in one.
    languages: all that it is made in, each in a folder beside the others. beside: the guides of sizes, from the page.
    """
    spec = order.solved.spec
    return ClassPage(
        title=title_of(order, words),
        whose=whose,
        about="" if order.of_several else spec.about,
        guides=tuple(_guide_line(order, each, words) for each in made),
        missing=tuple(missing),
        charts=size_chart(list(sizes.values()), list(sizes)) if sizes else (),
        rounding=cut_rounding(order.solved, words),
        materials=() if sizes else material_lines(order.shopping, words),
        bought=() if sizes else bought_lines(order, words),
        sums=() if sizes else tuple(sums(order, words)),
        cutting=tuple(_cutting_lines(cutting, words, with_pdf=with_pdf)),
        files=()
        if sizes
        else (
            (words.text("class-shopping-file"), "shopping.md"),
            (words.text("class-materials-file"), "materials.csv"),
        ),
        prints=tuple((words.text("class-print-file", {"number": at}), name) for at, name in enumerate(prints, 1)),
        language=words.language,
        languages=tuple(languages),
        sizes=tuple(beside),
    )


def class_html(page: ClassPage, words: Messages, look: Look | None = None) -> str:
    """The page `index.html`: self-contained, with the look, the policy and the reading aids of a guide."""
    key = content_key(page)
    page = set_ready(page)
    return rendered(
        "class.html.j2",
        words,
        look,
        title=page.title,
        whose=page.whose,
        about=page.about,
        key=key,
        page=page,
        in_languages=languages_beside(page.language, page.languages, INDEX),
        of_person=not page.charts,
    )


def bought_lines(order: ClassOrder, words: Words) -> tuple[BoughtLine, ...]:
    """Each material as it is bought for all, and as each alone would buy it."""
    apart = tuple(
        each.line._replace(need=each.need_alone, bought=each.bought_alone, cost=each.cost_alone)
        for each in order.bought
    )
    together, alone = (
        material_lines(order.shopping._replace(lines=lines), words) for lines in (order.shopping.lines, apart)
    )
    return tuple(
        BoughtLine(ours.name, ours.amount, ours.cost, theirs.amount, theirs.cost)
        for ours, theirs in zip(together, alone, strict=True)
    )


def sums(order: ClassOrder, words: Words) -> Iterator[str]:
    """In sentences: the cost of all and a head, what buying together saves, and what to mind when sharing."""
    heads = len(order.garments)

    def money(amount: Fraction) -> Money:
        return Money(amount, order.shopping.currency)

    yield words.text("class-cost", {"cost": money(order.cost), "head": money(order.cost_per_head)})
    yield words.text("class-cost-alone", {"cost": money(order.cost_alone), "head": money(order.cost_alone / heads)})
    if order.cost < order.cost_alone:
        saved = order.cost_alone - order.cost
        yield words.text("class-saved", {"saved": money(saved), "share": Number(100 * saved / order.cost_alone, 0)})
    unpriced = [words.name(line.name) for line in order.shopping.lines if line.cost is None]
    if unpriced:
        yield words.text("class-unpriced", {"materials": ", ".join(unpriced)})
    if any(line.unit == "reels" for line in order.shopping.lines) and heads > 1:
        yield words.text("class-reels", {"reels": order.shopping.thread.reels_at_once})


def _cutting_lines(names: Sequence[str], words: Words, *, with_pdf: bool) -> Iterator[tuple[str, str]]:
    """The parts, each with the ways to its page and to its PDF."""
    for part, name in enumerate(names, 1):
        one = len(names) == 1
        yield words.text("class-cutting-file" if one else "class-cutting-file-part", {"part": part}), f"{name}.html"
        if with_pdf:
            yield (
                words.text("class-cutting-print" if one else "class-cutting-print-part", {"part": part}),
                f"{name}.pdf",
            )


def _guide_line(order: ClassOrder, made: Made, words: Words) -> GuideLine:
    alone = order.garments[made.number].shopping
    cloth = sum((line.need for line in alone.lines if line.offers), Fraction(0))
    return GuideLine(
        number=str(made.number),
        whose=made.whose,
        guide=f"{made.folder}/guide.html",
        pdf=f"{made.folder}/{PDF}" if PDF in made.files else "",
        cloth=words.said(Length(cloth, "buy")),
        time=words.said(duration(order.lists[made.number].planned_minutes)),
        under=made.under,
    )


def title_of(order: ClassOrder, words: Words) -> str:
    """What pages for all are headed with: the garment, where it is one for all."""
    return words.text("class-orders") if order.of_several else order.solved.spec.title
