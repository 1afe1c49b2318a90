"""The plan of a demonstration as a page to print: one part after another, each with its captions."""

from __future__ import annotations

from furbelow.s6_write.guide.content_key import content_key
from furbelow.s6_write.guide.demonstration import Demonstration
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.pages.look import Look
from furbelow.s6_write.pages.page import rendered
from furbelow.s6_write.pages.prose import set_ready
from furbelow.s6_write.words.words import Words


def demonstration_html(plan: Demonstration, guide: Guide, words: Words, look: Look | None = None) -> str:
    return rendered(
        "demonstration.html.j2",
        words,
        look,
        title=guide.title,
        whose=words.text("demonstration-for", {"whose": guide.wearer}),
        about="",
        key=content_key((guide.title, guide.wearer, plan)),
        plan=set_ready(plan),
        of_person=guide.of_person,
    )
