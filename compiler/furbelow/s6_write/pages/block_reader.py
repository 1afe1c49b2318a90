"""Paragraphs, lists and quotes of a note, read from the HTML that its Markdown became."""

from __future__ import annotations

from html.parser import HTMLParser

from furbelow.s6_write.pages.block import Block, Kind, Run


def blocks_of(html: str) -> tuple[Block, ...]:
    """The blocks of what `marked_html` gives."""
    reader = _BlockReader()
    reader.feed(html)
    reader.close()
    return tuple(reader.blocks)


class _BlockReader(HTMLParser):
    """Reads the few tags that `marked_html` lets through."""

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
    first = runs[0]._replace(text=runs[0].text.lstrip())
    runs = (first, *runs[1:])
    last = runs[-1]._replace(text=runs[-1].text.rstrip())
    return tuple(run for run in (*runs[:-1], last) if run.text)
