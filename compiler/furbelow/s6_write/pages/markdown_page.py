"""The guide as Markdown (CommonMark with tables), for reading as it is or for a printer of one's own.

Figures are linked as `figures/KEY.svg`, the maker's own pictures as `figures/KEY.jpg` or `.png`; `figure_files` gives those
files.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from functools import cache
from typing import TYPE_CHECKING

from furbelow.diagnose.unseen import is_seen, without_unseen
from furbelow.s6_write.guide.guide import Figure, Guide
from furbelow.s6_write.guide.own_pictures import picture_file
from furbelow.s6_write.guide.rows import rows
from furbelow.s6_write.pages.block import Block, Run
from furbelow.s6_write.pages.filled_in import filled_in
from furbelow.s6_write.pages.plan_title import plan_title
from furbelow.s6_write.pages.prose import blocks, visible
from furbelow.s6_write.pages.why_lines import WhyLine, WhyLines
from furbelow.s6_write.words.messages import Messages

if TYPE_CHECKING:
    from jinja2 import Environment

# A space that holds two words together stays: French has one before a colon, every language one before a unit.
_BETWEEN_WORDS = re.compile(r"[^\S\u00a0\u202f]+")

_ACTING = frozenset("\\`*_[]#&<>|~")
_SCHEME = re.compile(r"(?i)\b(https?|ftp|mailto|javascript|data):")
_LIST_SIGN = re.compile(r"^(\d*)([-+=]|(?<=\d)[.)](?= |$))")


class Written(str):
    """Text that is Markdown already."""


def markdown(guide: Guide, words: Messages | None = None) -> str:
    """The page `guide.md`. Each text of the guide stands for its own letters only: no mark in it takes effect.

    words: of the guide's language; as shipped where none are given.
    """
    guide, told = visible(guide), words or Messages(guide.language)
    told.read("pages")

    @cache
    def said(message: str, **values: str) -> str:
        return told.text(message, values)

    text = filled_in(
        environment_of(escaped),
        "guide.md.j2",
        guide=guide,
        t=said,
        prose=prose,
        rows=rows,
        place=place_of,
        of_sizes=lambda figure: (),
        plan=plan_title(guide.sittings, told),
        reasons=_reasons(WhyLines(guide, told).listed(), told.text("page-colon")),
        reasons_told=_reasons_told(told),
    )
    return re.sub(r"\n{3,}", "\n\n", text)


@cache
def environment_of(written: Callable[[str], str]) -> Environment:
    """Templates that write each plain text with this, so that no mark in it takes effect."""
    from furbelow.s6_write.pages.compiled_templates import environment

    pages = environment(autoescape=False, finalize=lambda value: written(value) if type(value) is str else value)
    pages.filters["written"] = Written  # what a macro gives has been escaped inside it
    return pages


def figure_files(guide: Guide) -> dict[str, bytes]:
    """Every figure of the guide by the name that `guide.md` links to."""
    return files_of_figures(all_figures(guide))


def files_of_figures(figures: Iterable[Figure]) -> dict[str, bytes]:
    """Figures by the names that pages in Markdown link to."""
    return {place_of(each): own.content if (own := picture_file(each)) else each.svg.encode() for each in figures}


def place_of(figure: Figure) -> str:
    """The name of the file of a figure, from the page."""
    own = picture_file(figure)
    return f"figures/{own.name if own else f'{figure.key}.svg'}"


def all_figures(guide: Guide) -> tuple[Figure, ...]:
    """The guide's figures in the order in which they stand."""
    whole = () if guide.overview is None else (guide.overview,)
    worked = (figure for operation in guide.operations for figure in operation.figures)
    measuring = () if guide.measuring is None else (guide.measuring,)
    cover = (guide.cover.picture,) if guide.cover and guide.cover.picture else ()
    return (*cover, *guide.picture, *whole, *measuring, *worked, *guide.key)


def escaped(text: str) -> str:
    """The text on one line, with every sign that Markdown or HTML could act on written as itself."""
    if _is_plain(text):
        return text
    text = _BETWEEN_WORDS.sub(" ", without_unseen(text)).strip(" ")
    text = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    text = re.sub(r"([\\`*_\[\]#])", r"\\\1", text)
    # Not every reader takes a backslash before these two.
    text = text.replace("|", "&#124;").replace("~", "&#126;")
    # A bare address is made a link by many readers; a line that opens like a list or a rule becomes one.
    text = _SCHEME.sub(r"\1&#58;", text)
    text = re.sub(r"(?i)\bwww\.", "www&#46;", text)
    return _LIST_SIGN.sub(r"\1\\\2", text)


def _is_plain(text: str) -> bool:
    """Whether nothing of the text could act, as of most: words on one line with single spaces between them."""
    if not (is_seen(text) and _ACTING.isdisjoint(text)) or "  " in text or text[:1] == " " or text[-1:] == " ":
        return False
    if (":" in text and _SCHEME.search(text)) or "www." in text.lower():
        return False
    return not _LIST_SIGN.match(text)


def _reasons_told(words: Messages) -> Written:
    """Where the reasons are, with a link to their heading."""
    heading = words.text("page-reasons")
    link = f"[{escaped(heading)}](#{_anchor(heading)})"
    return Written(escaped(words.text("page-reasons-told", {"reasons": _LINK})).replace(_LINK, link))


_LINK = "\ue000"  # of the private use: stands in no text


def _anchor(heading: str) -> str:
    """The address of a heading, as most readers of Markdown make it: small letters, hyphens for gaps, no other sign."""
    return re.sub(r"[^\w\- ]", "", heading.lower()).replace(" ", "-")


def _reasons(lines: Iterable[WhyLine], colon: str, inset: str = "") -> Written:
    told = []
    for line in lines:
        rounding = f"; {escaped(line.rounding)}" if line.rounding else ""
        told.append(
            f"{inset}- **{escaped(line.label)}**, {escaped(line.value)}{escaped(colon)} {escaped(line.told)}{rounding}"
        )
        told += [_reasons(line.below, colon, inset + "    ")] if line.below else []
    return Written("\n".join(told))


def prose(text: str) -> Written:
    lines: list[str] = []
    deepest = 0  # of the lists that stand open: deeper, an indent would make code of a line
    for block in blocks(text):
        listed = block.kind in ("bullet", "number")
        tight = bool(lines) and listed
        if lines and not (tight and lines[-1].lstrip()[:1] in "-0123456789"):
            lines.append("")
        depth = min(block.depth, deepest + 1 if listed else deepest) if block.kind != "quote" else 0
        deepest = depth
        lines.append(_block(block._replace(depth=depth)))
    return Written("\n".join(lines))


def _block(block: Block) -> str:
    if block.kind == "code":
        # As plain lines: whether an indent or a fence makes code of them depends on the list around and on the reader,
        # and where it does not, their letters would act.
        code = "".join(run.text for run in block.runs)
        return "  \n".join("    " * block.depth + _code_line(line) for line in code.splitlines() if line.strip())
    text = "".join(_run(run) for run in block.runs)
    indent = "    " * max(block.depth - 1, 0)
    match block.kind:
        case "bullet":
            return f"{indent}- {text}"
        case "number":
            return f"{indent}{block.number}. {text}"
        case "quote":
            return f"> {text}"
        case _:
            return ("    " * block.depth) + text


def _code_line(line: str) -> str:
    bare = line.lstrip()
    return "&nbsp;" * (len(line) - len(bare)) + escaped(bare)


def _run(run: Run) -> str:
    text = run.text
    before, core, after = text[: len(text) - len(text.lstrip())], text.strip(), text[len(text.rstrip()) :]
    if not core:
        return " " if text else ""
    shown = escaped(core)
    if run.strong:
        shown = f"**{shown}**"
    if run.emphasis:
        shown = f"*{shown}*"
    if run.link:
        address = run.link.replace("(", "%28").replace(")", "%29").replace(" ", "%20")
        shown = f"[{shown}](<{address.replace('<', '%3C').replace('>', '%3E')}>)"
    return (" " if before else "") + shown + (" " if after else "")
