"""The guide as one HTML page that needs nothing else: no request, no file beside it."""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Callable, Hashable
from functools import cache, lru_cache
from typing import TYPE_CHECKING, Protocol

from furbelow.garment.workroom import Paper
from furbelow.named import NamedTuple
from furbelow.resources import template
from furbelow.s6_write.guide.guide import Figure, Guide, GuideStep
from furbelow.s6_write.guide.rows import rows
from furbelow.s6_write.pages.filled_in import filled_in
from furbelow.s6_write.pages.plan_title import plan_title
from furbelow.s6_write.pages.prose import safe_html, set_ready
from furbelow.s6_write.pages.why_html import WhyHtml
from furbelow.s6_write.words.messages import Messages

if TYPE_CHECKING:
    from jinja2 import Environment
    from jinja2.runtime import Macro


BRIEF = ("front-cloth", "front-cost", "front-time")  # of the lines at a glance


class Styled(Protocol):
    """What is laid over the look of a page: a font of one's own, a theme, or both."""

    @property
    def style(self) -> str: ...

    @property
    def logo(self) -> Figure | None: ...


class Ways(NamedTuple):
    """Ways to the pages that belong to this one: what each is called and where it lies, nothing where it is this one."""

    label: str
    pages: tuple[tuple[str, str], ...]


def html(guide: Guide, words: Messages | None = None, look: Styled | None = None, ways: Ways | None = None) -> str:
    """The page `guide.html`, the same letters for the same guide.

    words: of the guide's language; as shipped where none are given. look: of the workroom. ways: to the guides of other
    sizes where none are given.

    Every text is escaped; the maker's Markdown comes from `safe_html`. Figures stand in the page as drawn, so they
    may use neither a style attribute nor a <style> element: the page's content security policy lets in only the
    one style sheet and the one script whose hashes it names.
    """
    guide, words, count = set_ready(guide), words or Messages(guide.language), step_count(guide)
    words.read("pages")
    return rendered(
        "guide.html.j2",
        words,
        look,
        paper=guide.paper,
        title=guide.title,
        whose=guide.wearer,
        about=guide.about,
        key=guide.content_key,
        guide=guide,
        ways=ways or _to_sizes(guide, words),
        count=count,
        rows=rows,
        mark=mark_of,
        once=_once(words),
        # Ticks stay with the work of one wearer, whatever else of the guide changes.
        work_key=key_of(guide.title, guide.wearer),
        # For the script, which knows no grammar: a sentence for each number that it may have to say.
        done=[words.text("page-done", {"done": done, "steps": count}) for done in range(count + 1)],
        why=WhyHtml(guide, words),
        of_person=guide.of_person,
        author=guide.author,
        terms_of_use=guide.terms_of_use,
        # What is asked first, where the first screen of a telephone shows it.
        brief=" · ".join(fact.value for fact in guide.glance if fact.name in BRIEF),
        plan=plan_title(guide.sittings, words),
        proved=words.text("page-proved-line", {"claims": len(guide.proofs)}) if guide.proofs else "",
    )


def _to_sizes(guide: Guide, words: Messages) -> Ways | None:
    if len(guide.beside) < 2:
        return None
    sizes = ((each.size, each.page) for each in guide.beside)
    return Ways(words.text("page-sizes"), ((words.text("page-every-size"), guide.index), *sizes))


def rendered(
    name: str,
    words: Messages,
    look: Styled | None,
    *,
    paper: Paper = "A4",
    looks: str = "",
    begun_by: str = "",
    **values: object,
) -> str:
    """A page that extends `page.html.j2`: its values are texts to be escaped, its look and its policy are shared.

    looks: a style sheet of its own, by name. begun_by: a script that begins that of a guide, the function `guide`, itself.
    """
    words.read("pages")
    from markupsafe import Markup

    style = _together("fonts/page.css", "guide.css", "picture.css")
    style += (look.style if look else "") + f"@page {{ size: {paper}; }}" + (_together(looks) if looks else "")
    script = _together("guide.js")
    if begun_by:
        script = f"const guide = () => {{{script}}};\n" + _together(begun_by)

    def drawn(figure: Figure) -> Markup:
        # Trusted: drawn by this package, never taken from a spec. The name space is at home in a file of its own.
        return Markup(figure.svg)

    @cache  # a page says a few dozen messages a thousand times
    def said(message: str, **told: str) -> str:
        return words.text(message, told)

    def prose(text: str) -> Markup:
        return Markup(safe_html(text))

    return filled_in(
        _pages(),
        name,
        t=said,
        language=words.language,
        drawn=drawn,
        logo=look.logo if look else None,
        safe_html=prose,
        style=Markup(style),
        style_hash=_source_hash(style),
        script=Markup(script),
        script_hash=_source_hash(script),
        # A page that is nobody's work says neither.
        **{"author": "", "terms_of_use": "", **values},
    )


def _once(words: Messages) -> Callable[..., str]:
    """A part of a guide's page filled in once for equal values: the guides of a class say mostly the same."""
    known = _parts(words.language) if words.is_shipped else {}

    def once(part: Macro, *values: Hashable) -> str:
        key = (part.name, values)
        if (made := known.get(key)) is None:
            if len(known) >= _PARTS:
                known.clear()
            known[key] = made = part(*values)
        return made

    return once


_PARTS = 512  # some 3 MB, for an operation is kept with its drawings


@cache
def _parts(language: str) -> dict[tuple[str, tuple[Hashable, ...]], str]:
    """The parts of pages by what they were filled in with."""
    return {}


@cache
def _pages() -> Environment:
    # Loaded once: in a class of thirty it would be most of the time that a page takes.
    from furbelow.s6_write.pages.compiled_templates import environment

    return environment(autoescape=True)


def step_count(guide: Guide) -> int:
    """How many ticks the guide asks for: one for each sentence and each piece that it is done on."""
    return sum(step.copies for operation in guide.operations for step in operation.steps)


def mark_of(step: GuideStep) -> str:
    """Changes with what a sentence says, so that its tick is asked for again."""
    return key_of(step.text, step.chain)


def key_of(*texts: str) -> str:
    return hashlib.sha256("\0".join(texts).encode("utf-8", "surrogatepass")).hexdigest()[:8]


@cache
def _together(*files: str) -> str:
    """The texts of templates one after another, read once for all pages."""
    return "".join(template(file).read_text(encoding="utf-8") for file in files)


@lru_cache(maxsize=8)  # of pages that look alike
def _source_hash(text: str) -> str:
    """A hash source of a content security policy. Source: W3C Content Security Policy Level 3, section 2.3.1."""
    return "sha256-" + base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()
