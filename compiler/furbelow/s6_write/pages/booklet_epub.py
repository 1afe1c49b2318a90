"""The booklet as an EPUB 3: numbers that differ by their letters, with a table before the work, as on paper."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING, cast

from furbelow.garment.message import Own
from furbelow.named import NamedTuple
from furbelow.s6_write.booklet.booklet import Booklet, SizedOperation
from furbelow.s6_write.booklet.compose import whose
from furbelow.s6_write.booklet.number_rows import number_rows
from furbelow.s6_write.booklet.sizes import told_of
from furbelow.s6_write.booklet.texts import each_version, is_sized, with_letters
from furbelow.s6_write.guide.guide import Figure, GuideStep, Operation
from furbelow.s6_write.pages.epub_package import Chapter, book_of, of_work, packed
from furbelow.s6_write.pages.look import Look
from furbelow.s6_write.pages.prose import each_text, set_ready
from furbelow.s6_write.words.messages import Messages

if TYPE_CHECKING:
    from markupsafe import Markup


def booklet_epub(booklet: Booklet, words: Messages | None = None, look: Look | None = None) -> bytes:
    """The file `booklet.epub`; see `packed`. words, look: as for the page."""
    from markupsafe import Markup, escape

    booklet, words = set_ready(booklet), words or Messages(booklet.language)
    words.read("pages", "booklet")
    of_sizes = whose(booklet, words)

    def only(sizes: Sequence[int], message: str) -> str:
        return told_of(message, sizes, booklet.sizes, words)

    def lettered(text: str) -> Markup:
        written = with_letters(
            str(escape(text)), lambda at: f'<strong class="number">{booklet.numbers[at].letter}</strong>'
        )
        return Markup(written)

    def told(text: str) -> str:
        if not is_sized(text):
            return text
        return Markup(" ").join(
            each_version(
                text,
                lettered,
                lambda sizes, said: Markup("<strong>{}</strong> {}").format(only(sizes, "booklet-version"), said),
            )
        )

    plain = {operation.key: operation for operation in booklet.operations}
    shown = cast(Booklet, each_text(booklet, told))
    drawn = _drawn_by_size(shown)
    chapters = [*_chapters(shown, words, only), *_drawings(drawn, words)]
    # Where the drawing of a size stands, for the links below the one on paper.
    places = {figure.key: chapter.file for chapter in chapters for figure in chapter.figures}
    return packed(
        book_of(booklet, of_sizes, chapters),
        "epub-booklet.xhtml.j2",
        words,
        look,
        _place,
        booklet=shown,
        whose=of_sizes,
        only=only,
        drawn_for=drawn,
        figure_in=places,
        of_sizes=lambda figure: shown.drawings_of_sizes.get(figure.key, ()),
        numbers=lambda operation: number_rows(plain[operation.key], booklet.numbers, words),
    )


def _place(operation: Operation, step: GuideStep) -> str:
    return operation.place(step).replace("~", "-")  # an id of XML knows no tilde


class DrawnFor(NamedTuple):
    """A drawing of one size, and the one on paper in whose place it is."""

    operation: SizedOperation
    figure: Figure
    on_paper: str


def _drawn_by_size(shown: Booklet) -> dict[str, list[DrawnFor]]:
    found: dict[str, list[DrawnFor]] = {}
    for operation in shown.operations:
        for drawing in operation.drawings:
            for size, figure in drawing.of_sizes:
                found.setdefault(size, []).append(DrawnFor(operation, figure, drawing.drawn.key))
    return {size: found[size] for size in shown.sizes if size in found}


def _drawings(drawn: Mapping[str, Sequence[DrawnFor]], words: Messages) -> Iterator[Chapter]:
    for number, (size, each) in enumerate(drawn.items(), 1):
        title = words.text("booklet-drawings-for", {"size": Own(size)})
        yield Chapter(f"drawn-{number}.xhtml", f"drawn {size}", title, figures=[drawing.figure for drawing in each])


def _chapters(shown: Booklet, words: Messages, only: Callable[[Sequence[int], str], str]) -> Iterator[Chapter]:
    front = (shown.cover.picture if shown.cover else None, *shown.picture)
    yield Chapter("front.xhtml", "front", shown.title, figures=[each for each in front if each])
    measuring = [shown.measuring] if shown.measuring else []
    yield Chapter("before.xhtml", "before", words.text("page-begin"), figures=measuring)
    yield Chapter("whole.xhtml", "whole", words.text("page-whole"))
    for number, way in enumerate(shown.ways, 1):
        title = only(way.sizes, "booklet-cut-for") if way.sizes else words.text("booklet-cut-all")
        yield of_work(f"cutting-{number}.xhtml", f"cutting {number}", title, way.cut)
    for number, part in enumerate(shown.parts, 1):
        yield of_work(f"part-{number}.xhtml", "part", part.title, part.operations)
    yield Chapter("end.xhtml", "end", words.text("page-kept"), figures=shown.key)
