"""The maker's Markdown, made safe, and the guide's texts, freed of characters that nobody can see.

Raw HTML in a note is shown as text. Pictures are not shown, since a guide fetches nothing.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, is_dataclass, replace
from functools import cache
from html.parser import HTMLParser
from operator import is_
from typing import TYPE_CHECKING, Literal, TypeVar, cast

from furbelow.diagnose.unseen import without_unseen
from furbelow.s6_write.guide.guide import Figure

if TYPE_CHECKING:
    from markdown_it import MarkdownIt

_TAGS = {"p", "br", "em", "strong", "code", "pre", "a", "ul", "ol", "li", "blockquote", "hr"}
_DEEPEST = 20  # lists in lists, quotes in quotes, stress in stress
_ADDRESSES = ("http://", "https://", "mailto:")

Page = TypeVar("Page")  # a dataclass of texts: a guide, a class page

Kind = Literal["paragraph", "bullet", "number", "quote", "code"]


@dataclass(frozen=True)
class Run:
    """Letters that are set alike; `link` is an http, https or mailto address, or empty."""

    text: str
    strong: bool = False
    emphasis: bool = False
    code: bool = False
    link: str = ""


@dataclass(frozen=True)
class Block:
    """A paragraph or a list line. `depth` counts the lists around it, `number` is set in numbered lists."""

    kind: Kind
    runs: tuple[Run, ...]
    depth: int = 0
    number: int = 0


def safe_html(text: str) -> str:
    """The maker's Markdown as HTML of few tags, with no attribute but a link's address.

    Fit to stand in a page as it is: whatever looks like HTML in the text comes out escaped.
    """
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


@cache
def _reader() -> MarkdownIt:
    """Reads CommonMark in a time that grows as the text does, whatever stands in it, and no deeper than notes go."""
    from markdown_it import MarkdownIt

    # A heading of the maker's would upset the order of the page's own; its line stays a paragraph.
    left_out = ["image", "heading", "lheading", "html_block", "html_inline"]
    return MarkdownIt("commonmark", {"html": False, "maxNesting": _DEEPEST}).disable(left_out)


def blocks(text: str) -> tuple[Block, ...]:
    """The maker's Markdown as plain values, for formats that are not HTML."""
    reader = _BlockReader()
    reader.feed(safe_html(text))
    reader.close()
    return tuple(reader.blocks)


class _BlockReader(HTMLParser):
    """Reads the few tags that `safe_html` lets through."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.blocks: list[Block] = []
        self._runs: list[Run] = []
        self._lists: list[int] = []  # the number of the last line of each open list; -1 where it has bullets
        self._open: list[str] = []
        self._links: list[str] = []
        self._item_begun = False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag in ("ul", "ol"):
            self._finish()
            self._lists.append(0 if tag == "ol" else -1)
        elif tag == "li":
            self._finish()
            if self._lists and self._lists[-1] >= 0:
                self._lists[-1] += 1
            self._item_begun = True
        elif tag in ("p", "pre", "blockquote", "hr"):
            self._finish()
            self._open.append(tag)
        elif tag == "a":
            self._links.append(dict(attrs).get("href") or "")
        elif tag == "br":
            self._runs.append(Run(" "))
        else:
            self._open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        if tag in ("p", "pre", "li", "ul", "ol", "blockquote"):
            self._finish()
        if tag in ("ul", "ol") and self._lists:
            self._lists.pop()
        elif tag == "a" and self._links:
            self._links.pop()
        elif tag in self._open:
            self._open.reverse()
            self._open.remove(tag)
            self._open.reverse()

    def handle_data(self, data: str) -> None:
        if "pre" not in self._open:
            data = data.replace("\n", " ")
        self._runs.append(
            Run(
                data,
                strong="strong" in self._open,
                emphasis="em" in self._open,
                code="code" in self._open,
                link=self._links[-1] if self._links else "",
            )
        )

    def close(self) -> None:
        super().close()
        self._finish()

    def _finish(self) -> None:
        runs, self._runs = tuple(self._runs), []
        if not "".join(run.text for run in runs).strip():
            return
        kind: Kind = "paragraph"
        number = 0
        if "pre" in self._open:
            kind = "code"
        elif "blockquote" in self._open:
            kind = "quote"
        elif self._item_begun and self._lists:
            kind, number = ("number", self._lists[-1]) if self._lists[-1] >= 0 else ("bullet", 0)
        self._item_begun = False
        self.blocks.append(Block(kind, _trimmed(runs), len(self._lists), number))


def _trimmed(runs: tuple[Run, ...]) -> tuple[Run, ...]:
    first = replace(runs[0], text=runs[0].text.lstrip())
    runs = (first, *runs[1:])
    last = replace(runs[-1], text=runs[-1].text.rstrip())
    return tuple(run for run in (*runs[:-1], last) if run.text)


def visible(page: Page) -> Page:
    """The guide, or another value of texts, without control characters and without marks that turn the direction of writing.

    They are of no use in a guide, and could hide or turn round what a reader sees. Figures are drawn without them.
    """
    return cast(Page, each_text(page, without_unseen))


def set_ready(page: Page) -> Page:
    """The guide as `visible` gives it, with each number and its unit kept on one line."""
    return cast(Page, each_text(page, lambda text: _GAP_IN_QUANTITY.sub("\u00a0", without_unseen(text))))


def each_text(value: object, change: Callable[[str], str]) -> object:
    """The value with every text in it changed but the drawings themselves."""
    if isinstance(value, str):
        return change(value)
    # What does not change is given back as it is: making a value anew takes longer than looking through it.
    if isinstance(value, tuple):
        parts = tuple(each_text(part, change) for part in value)
        return value if all(map(is_, parts, value)) else parts
    if is_dataclass(value) and not isinstance(value, type):
        changed = {
            name: new
            for name, part in vars(value).items()
            if not (name == "svg" and isinstance(value, Figure)) and (new := each_text(part, change)) is not part
        }
        return replace(value, **changed) if changed else value
    return value


# `12 1/2 in`, `30 cm`: the gaps after a digit and before a fraction or a unit.
_GAP_IN_QUANTITY = re.compile(r"(?<=\d) (?=\d+/\d|(?:mm|cm|m|in|yd|ft|g|ml|l|min|h|[A-Z]{3})\b)")
