"""The files of a booklet, by name."""

from __future__ import annotations

from collections.abc import Mapping

from furbelow.s6_write.booklet.booklet import Booklet
from furbelow.s6_write.pages.booklet_epub import booklet_epub
from furbelow.s6_write.pages.booklet_json import booklet_json
from furbelow.s6_write.pages.booklet_markdown import booklet_figures, booklet_markdown
from furbelow.s6_write.pages.booklet_page import booklet_html
from furbelow.s6_write.pages.look import Look
from furbelow.s6_write.words.messages import Messages

PAGE = "booklet.html"


def booklet_files(
    booklet: Booklet, words: Messages, look: Look | None, *, with_pdf: bool = True
) -> Mapping[str, bytes]:
    """The booklet as pages for screen, print and programs, and the figures that they link to."""
    pages = {
        PAGE: booklet_html(booklet, words, look),
        "booklet.md": booklet_markdown(booklet, words),
        "booklet.json": booklet_json(booklet, words),
    }
    files = {name: page.encode("utf-8") for name, page in pages.items()} | booklet_figures(booklet)
    files["booklet.epub"] = booklet_epub(booklet, words, look)
    if with_pdf:
        from furbelow.s6_write.pages.booklet_pdf import booklet_pdf  # the typesetter is heavy to load

        files["booklet.pdf"] = booklet_pdf(booklet, words, look)
    return files
