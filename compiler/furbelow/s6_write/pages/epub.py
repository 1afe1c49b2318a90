"""The guide as an EPUB 3, for readers of books: one file in which each part of the guide is a document.

Source: W3C, EPUB 3.3 (package, navigation, container) and EPUB Accessibility 1.1 (metadata by schema.org).
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence
from datetime import UTC, datetime
from io import BytesIO
from typing import TYPE_CHECKING, NamedTuple
from uuid import NAMESPACE_URL, uuid5
from zipfile import ZIP_DEFLATED, ZIP_STORED, ZipFile, ZipInfo

from furbelow.resources import template
from furbelow.s6_write.guide.guide import Figure, Guide, Operation
from furbelow.s6_write.guide.own_pictures import picture_file
from furbelow.s6_write.guide.rows import rows
from furbelow.s6_write.pages.look import Look
from furbelow.s6_write.pages.prose import blocks, set_ready
from furbelow.s6_write.words.messages import Messages

if TYPE_CHECKING:
    from markupsafe import Markup

EPUB = "guide.epub"
_CONTAINER = """<?xml version="1.0" encoding="UTF-8"?>
<container version="1.0" xmlns="urn:oasis:names:tc:opendocument:xmlns:container">
<rootfiles><rootfile full-path="book/package.opf" media-type="application/oebps-package+xml"/></rootfiles>
</container>
"""
_FONT_FACE = (
    '@font-face { font-family: "Furbelow Own"; src: url("font.%s"); }\nbody { font-family: serif, "Furbelow Own"; }\n'
)


class Chapter(NamedTuple):
    """A document of the book. `kind` is a block of the template; `operations` are the work that stands in it."""

    file: str
    kind: str
    title: str
    operations: tuple[Operation, ...] = ()


class Held(NamedTuple):
    """A file of the package besides its documents."""

    name: str
    media_type: str
    content: bytes
    properties: str = ""


def epub(guide: Guide, words: Messages | None = None, look: Look | None = None) -> bytes:
    """The file `guide.epub`, the same bytes for the same guide.

    It bears the date of the environment's SOURCE_DATE_EPOCH, or the first that a container can hold, since the standard asks
    for one. words, look: as for the page.
    """
    from furbelow.s6_write.pages.compiled_templates import environment

    guide, words = set_ready(guide), words or Messages(guide.language)
    words.read("pages")
    chapters = tuple(_chapters(guide, words))
    # Where a sentence stands, for those that send the reader there.
    places = {
        operation.place(step): f"{chapter.file}#{operation.place(step)}"
        for chapter in chapters
        for operation in chapter.operations
        for step in operation.steps
    }
    shown = tuple(figure for chapter in chapters for figure in _figures(guide, chapter))
    held = tuple(_held(guide, shown, look))
    pages = environment(autoescape=True)

    def said(message: str, **values: str) -> str:
        return words.text(message, values)

    def written(name: str, **values: object) -> bytes:
        text = pages.get_template(name).render(
            guide=guide,
            t=said,
            chapters=chapters,
            language=guide.language,
            drawn=_drawn,
            picture_file=picture_file,
            blocks=blocks,
            rows=rows,
            places=places,
            plan=words.text("page-plan", {"sittings": sum(1 for each in guide.sittings if each.number)}),
            **values,
        )
        return text.encode("utf-8")

    package = written(
        "epub.opf.j2",
        identifier=uuid5(NAMESPACE_URL, f"furbelow:{guide.content_key}").urn,
        modified=_modified(),
        held=held,
        drawn_in={
            chapter.file for chapter in chapters if any(not picture_file(each) for each in _figures(guide, chapter))
        },
    )
    files = {
        "META-INF/container.xml": _CONTAINER.encode(),
        "book/package.opf": package,
        "book/nav.xhtml": written("epub-nav.xhtml.j2"),
        **{f"book/{each.file}": written("epub.xhtml.j2", chapter=each) for each in chapters},
        **{f"book/{each.name}": each.content for each in held},
    }
    return _zipped(files)


def _chapters(guide: Guide, words: Messages) -> Iterator[Chapter]:
    yield Chapter("front.xhtml", "front", guide.title)
    yield Chapter("before.xhtml", "before", words.text("page-begin"))
    if guide.cut:
        yield Chapter("whole.xhtml", "whole", words.text("page-whole"))
    if guide.cutting or guide.cut:
        yield Chapter("cutting.xhtml", "cutting", words.text("page-cutting"), guide.cut)
    for number, part in enumerate(guide.parts, 1):
        yield Chapter(f"part-{number}.xhtml", "part", part.title, part.operations)
    yield Chapter("end.xhtml", "end", words.text("page-kept"))


def _figures(guide: Guide, chapter: Chapter) -> Sequence[Figure]:
    """What is drawn in a chapter."""
    cover = (guide.cover.picture,) if guide.cover else ()
    alone: dict[str, tuple[Figure | None, ...]] = {
        "front": (*cover, *guide.picture, guide.overview),
        "before": (guide.measuring,),
        "end": guide.key,
    }
    worked = (figure for operation in chapter.operations for figure in operation.figures)
    return [figure for figure in (*alone.get(chapter.kind, ()), *worked) if figure is not None]


def _held(guide: Guide, shown: Sequence[Figure], look: Look | None) -> Iterator[Held]:
    style = template("epub.css").read_bytes()
    if look and (font := look.font):
        ending = "otf" if font.data.startswith(b"OTTO") else "ttf"
        yield Held(f"font.{ending}", f"font/{ending}", font.data)
        style += (_FONT_FACE % ending).encode()
    yield Held("guide.css", "text/css", style)
    cover = guide.cover.picture.key if guide.cover and guide.cover.picture else ""
    for figure in shown:
        if own := picture_file(figure):
            yield Held(own.name, own.media_type, own.content, "cover-image" if figure.key == cover else "")


def _drawn(figure: Figure) -> Markup:
    from markupsafe import Markup

    return Markup(figure.svg)  # drawn by this package, never taken from a spec


def _modified() -> str:
    epoch = os.environ.get("SOURCE_DATE_EPOCH", "")
    given = epoch.isascii() and epoch.isdigit()
    at = datetime.fromtimestamp(int(epoch), UTC) if given else datetime(1980, 1, 1, tzinfo=UTC)
    return at.strftime("%Y-%m-%dT%H:%M:%SZ")


def _zipped(files: dict[str, bytes]) -> bytes:
    """A container as the standard asks for it: first the media type, plain and uncompressed, so that its bytes tell it.

    Source: W3C, EPUB 3.3, section 4.3 (OCF ZIP container).
    """
    written = BytesIO()
    with ZipFile(written, "w") as container:
        for name, content in {"mimetype": b"application/epub+zip", **files}.items():
            entry = ZipInfo(name, date_time=(1980, 1, 1, 0, 0, 0))
            entry.create_system, entry.external_attr = 3, 0o644 << 16  # the same on every machine
            container.writestr(entry, content, ZIP_STORED if name == "mimetype" else ZIP_DEFLATED)
    return written.getvalue()
