"""The maker's Markdown, made safe, and the guide's texts, freed of characters that nobody can see.

Raw HTML in a note is shown as text. Pictures are not shown, since a guide fetches nothing.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import is_dataclass, replace
from functools import cache, lru_cache
from operator import is_
from typing import TYPE_CHECKING, TypeVar, cast

from furbelow.diagnose.unseen import without_unseen
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.pages.block import Block, Run

if TYPE_CHECKING:
    from markdown_it import MarkdownIt

_TAGS = {"p", "br", "em", "strong", "code", "pre", "a", "ul", "ol", "li", "blockquote", "hr"}
_DEEPEST = 20  # lists in lists, quotes in quotes, stress in stress
_ADDRESSES = ("http://", "https://", "mailto:")
# Most notes are paragraphs of plain words. To load what reads Markdown would take longer than all else of a page. A line
# begins with a letter, so it is no list, quote or code, and has no space at its end, so it is not broken there.
_PLAIN = re.compile(r"""[^\W\d_](?:[^\W_]|[,.;:!?'"()/%’‘“”„«»–—…-]|[ ](?!\n)|\n(?=[^\W\d_]))*""")

Page = TypeVar("Page")  # a dataclass of texts: a guide, a class page


def safe_html(text: str) -> str:
    """The maker's Markdown as HTML of few tags, with no attribute but a link's address.

    Fit to stand in a page as it is: whatever looks like HTML in the text comes out escaped.
    """
    plain = _plain(text)
    return marked_html(text) if plain is None else "\n".join([f"<p>{paragraph}</p>" for paragraph in plain])


def marked_html(text: str) -> str:
    """`safe_html` of any text, by the libraries that know Markdown and HTML."""
    import nh3

    return nh3.clean(
        _reader().render(text).strip(),
        tags=_TAGS,
        attributes={"a": {"href"}},
        # A link to a place beside the guide leads nowhere once the guide is sent on; it stays as plain words.
        attribute_filter=lambda _tag, name, value: (
            value if name != "href" or value.lower().startswith(_ADDRESSES) else None
        ),
        link_rel="noopener noreferrer",
    )


def _plain(text: str) -> list[str] | None:
    """The text as it stands in its paragraphs, where nothing in it is a sign of Markdown or HTML."""
    paragraphs = text.rstrip(" \n").split("\n\n")
    return paragraphs if all(map(_PLAIN.fullmatch, paragraphs)) else None


@cache
def _reader() -> MarkdownIt:
    """Reads CommonMark in a time that grows as the text does, whatever stands in it, and no deeper than notes go."""
    from markdown_it import MarkdownIt

    # A heading of the maker's would upset the order of the page's own; its line stays a paragraph.
    left_out = ["image", "heading", "lheading", "html_block", "html_inline"]
    return MarkdownIt("commonmark", {"html": False, "maxNesting": _DEEPEST}).disable(left_out)


@lru_cache(maxsize=256)  # of a class the same few
def blocks(text: str) -> tuple[Block, ...]:
    """The maker's Markdown as plain values, for formats that are not HTML."""
    if not text:
        return ()
    if (plain := _plain(text)) is not None:
        return tuple([Block("paragraph", (Run(paragraph.replace("\n", " ")),)) for paragraph in plain])
    from furbelow.s6_write.pages.block_reader import blocks_of  # with the libraries that read Markdown and HTML

    return blocks_of(marked_html(text))


def visible(page: Page) -> Page:
    """The guide, or another value of texts, without control characters and without marks that turn the direction of writing.

    They are of no use in a guide, and could hide or turn round what a reader sees. Figures are drawn without them.
    """
    return cast(Page, each_text(page, without_unseen))


def set_ready(page: Page) -> Page:
    """The guide as `visible` gives it, with each number and its unit kept on one line."""
    return cast(Page, _ready(page))


@lru_cache(maxsize=1)  # page, EPUB and paper are made of one guide in turn
def _ready(page: object) -> object:
    return each_text(page, _with_numbers_kept)


@lru_cache(maxsize=4096)  # the guides of a class say mostly the same
def _with_numbers_kept(text: str) -> str:
    return _GAP_IN_QUANTITY.sub("\u00a0", without_unseen(text))


def each_text(value: object, change: Callable[[str], str]) -> object:
    """The value with every text in it changed but the drawings themselves."""
    if isinstance(value, str):
        return change(value)
    # What does not change is given back as it is: making a value anew takes longer than looking through it.
    if isinstance(value, tuple):
        parts = tuple([each_text(part, change) for part in value])
        return value if all(map(is_, parts, value)) else parts
    if is_dataclass(value) and not isinstance(value, type):
        changed: dict[str, object] = {}
        for name, part in vars(value).items():
            if part and not (name == "svg" and isinstance(value, Figure)):  # most are empty
                new = change(part) if isinstance(part, str) else each_text(part, change)
                if new is not part:
                    changed[name] = new
        return replace(value, **changed) if changed else value
    return value


# `12 1/2 in`, `30 cm`: the gaps after a digit and before a fraction or a unit.
_GAP_IN_QUANTITY = re.compile(r" (?<=\d )(?=\d+/\d|(?:mm|cm|m|in|yd|ft|g|ml|l|min|h|[A-Z]{3})\b)")
