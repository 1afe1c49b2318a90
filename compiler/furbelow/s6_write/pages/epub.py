"""The guide as an EPUB 3, for readers of books: one file in which each part of the guide is a document."""

from __future__ import annotations

from collections.abc import Iterator

from furbelow.s6_write.guide.guide import Guide, Operation
from furbelow.s6_write.pages.epub_package import Chapter, book_of, of_work, packed
from furbelow.s6_write.pages.look import Look
from furbelow.s6_write.pages.plan_title import plan_title
from furbelow.s6_write.pages.prose import set_ready
from furbelow.s6_write.words.messages import Messages

EPUB = "guide.epub"


def epub(guide: Guide, words: Messages | None = None, look: Look | None = None) -> bytes:
    """The file `guide.epub`; see `packed`. words, look: as for the page."""
    guide, words = set_ready(guide), words or Messages(guide.language)
    words.read("pages")
    book = book_of(guide, guide.wearer, _chapters(guide, words))
    plan = plan_title(guide.sittings, words)
    return packed(
        book, "epub.xhtml.j2", words, look, Operation.place, guide=guide, plan=plan, of_sizes=lambda figure: ()
    )


def _chapters(guide: Guide, words: Messages) -> Iterator[Chapter]:
    front = (guide.cover.picture if guide.cover else None, *guide.picture, guide.overview)
    yield Chapter("front.xhtml", "front", guide.title, figures=[each for each in front if each])
    measuring = [guide.measuring] if guide.measuring else []
    yield Chapter("before.xhtml", "before", words.text("page-begin"), figures=measuring)
    if guide.cut:
        yield Chapter("whole.xhtml", "whole", words.text("page-whole"))
    if guide.cutting or guide.cut:
        yield of_work("cutting.xhtml", "cutting", words.text("page-cutting"), guide.cut)
    for number, part in enumerate(guide.parts, 1):
        yield of_work(f"part-{number}.xhtml", "part", part.title, part.operations)
    yield Chapter("end.xhtml", "end", words.text("page-kept"), figures=guide.key)
