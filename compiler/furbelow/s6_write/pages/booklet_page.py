"""The booklet as one HTML page: a size is chosen, and its numbers stand in the sentences."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import TYPE_CHECKING, cast

from furbelow.garment.message import Own
from furbelow.s6_write.booklet.booklet import Booklet
from furbelow.s6_write.booklet.compose import whose
from furbelow.s6_write.booklet.number_rows import number_rows
from furbelow.s6_write.booklet.resolved import resolved
from furbelow.s6_write.booklet.sizes import told_of
from furbelow.s6_write.booklet.texts import each_version, is_sized, with_letters
from furbelow.s6_write.guide.guide import GuideStep
from furbelow.s6_write.guide.rows import rows
from furbelow.s6_write.pages.look import Look
from furbelow.s6_write.pages.page import BRIEF, key_of, rendered
from furbelow.s6_write.pages.prose import each_text, set_ready
from furbelow.s6_write.words.messages import Messages

if TYPE_CHECKING:
    from markupsafe import Markup

# Which place a number has in the booklet is no matter of the sentence.
_LETTER = re.compile(r'<b class="letter-of"[^>]*>[a-z]+</b>')


def booklet_html(booklet: Booklet, words: Messages | None = None, look: Look | None = None) -> str:
    """The page `booklet.html`, the same letters for the same booklet. words, look: as for the page of a guide.

    Without a script it reads as it does on paper. With one, what is not for the size that is chosen is taken out of the
    page, and the script of a guide goes on with the rest.
    """
    from markupsafe import Markup, escape

    booklet, words = set_ready(booklet), words or Messages(booklet.language)
    words.read("pages", "booklet")
    sizes, numbers = booklet.sizes, booklet.numbers

    def lettered(text: str) -> Markup:
        parts = with_letters(
            str(escape(text)), lambda at: f'<b class="letter-of" data-number="{at}">{numbers[at].letter}</b>'
        )
        return Markup(parts)

    def told(text: str) -> str:
        if not is_sized(text):
            return text
        return Markup(" ").join(
            each_version(
                text,
                lettered,
                lambda whose_it_is, said: Markup('<span data-for="{}"><b class="version">{}</b> {}</span>').format(
                    _places(whose_it_is), only(whose_it_is, "booklet-version"), said
                ),
            )
        )

    def only(whose_it_is: tuple[int, ...], message: str) -> str:
        return told_of(message, whose_it_is, sizes, words)

    counts = [
        sum(step.copies for operation in resolved(booklet, at) for step in operation.steps) for at in range(len(sizes))
    ]
    return rendered(
        "booklet.html.j2",
        words,
        look,
        paper=booklet.paper,
        looks="booklet.css",
        begun_by="booklet.js",
        title=booklet.title,
        whose=whose(booklet, words),
        about=booklet.about,
        key=booklet.content_key,
        work_key=key_of(booklet.title, *sizes),
        booklet=cast(Booklet, each_text(booklet, told)),
        plain=booklet,
        numbers=[number.values for number in numbers],
        number_rows=lambda operation: number_rows(operation, numbers, words),
        rows=rows,
        mark=_mark,
        # Not kept: what says a number of each size is marked up already, and reads as what was typed so would.
        once=lambda part, *values: part(*values),
        places=_places,
        only=only,
        # For the script, which knows no grammar, what it may have to say for each size.
        done=[
            [words.text("page-done", {"done": done, "steps": count}) for done in range(count + 1)] for count in counts
        ],
        # What is asked first, where the first screen of a telephone shows it.
        briefs=[" · ".join(row.values[at] for row in booklet.glance if row.name in BRIEF) for at in range(len(sizes))],
        named=[words.text("page-size", {"size": Own(size)}) for size in sizes],
        chosen=[words.text("booklet-chosen", {"size": Own(size)}) for size in sizes],
        of_person=False,
        author=booklet.author,
        terms_of_use=booklet.terms_of_use,
    )


def _places(sizes: Iterable[int]) -> str:
    return " ".join(map(str, sizes))


def _mark(step: GuideStep) -> str:
    """Of what a sentence says in every size; the script adds the numbers of the size that is chosen."""
    return key_of(_LETTER.sub("", str(step.text)), _LETTER.sub("", str(step.chain)))
