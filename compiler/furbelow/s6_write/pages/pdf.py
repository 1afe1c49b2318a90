"""The guide as a PDF for paper and for screen readers (PDF/UA-1, which the writer enforces)."""

from __future__ import annotations

import json
import os
import unicodedata
from dataclasses import asdict, replace
from functools import cache

from furbelow.resources import template
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.pages.page import CAUTION_WORDS
from furbelow.s6_write.pages.prose import blocks, set_ready
from furbelow.s6_write.pages.why_lines import WhyLines

STAND_IN = "□"


def pdf(guide: Guide) -> bytes:
    """The file `guide.pdf`, the same bytes for the same guide.

    It bears no date, or that of the environment's SOURCE_DATE_EPOCH. A letter that the shipped fonts lack is
    shown as an empty box, since a PDF/UA file may not hold a letter without a shape.
    """
    import typst

    epoch = os.environ.get("SOURCE_DATE_EPOCH", "")
    dated = epoch.isascii() and epoch.isdigit()
    given = json.dumps({"guide": _values(guide), "dated": dated}, ensure_ascii=True, sort_keys=True)
    return typst.compile(
        template("guide.typ").read_bytes(),
        format="pdf",
        # Only the shipped fonts: what a machine has of its own would change the page.
        font_paths=typst.Fonts(
            include_system_fonts=False, include_embedded_fonts=False, font_paths=[str(template("fonts"))]
        ),
        sys_inputs={"guide": given},
        pdf_standards=["ua-1"],
        timestamp=int(epoch) if dated else 0,
    )


def _values(guide: Guide) -> object:
    """The guide as plain values for the template: Markdown read, caution words added, letters that can be set."""
    shown = set_ready(guide)
    values = asdict(replace(shown, about="", notes=""))
    values["about"] = [asdict(block) for block in blocks(shown.about)]
    values["reasons"] = [asdict(line) for line in WhyLines(shown).listed()]
    values["notes"] = [asdict(block) for block in blocks(shown.notes)]
    for part in values["parts"]:
        for operation in part["operations"]:
            operation["tip"] = [asdict(block) for block in blocks(operation["tip"])]
            for caution in operation["cautions"]:
                caution["word"] = CAUTION_WORDS.get(caution["kind"], "Take care")
    for caution in values["cautions"]:
        caution["word"] = CAUTION_WORDS.get(caution["kind"], "Take care")
    return _settable(values)


def _settable(value: object) -> object:
    if isinstance(value, str):
        composed = unicodedata.normalize("NFC", value)
        if composed.isascii():
            return composed
        return "".join(sign if sign in _letters() or sign.isspace() else STAND_IN for sign in composed)
    if isinstance(value, dict):
        return {name: _settable(part) for name, part in value.items()}
    if isinstance(value, list | tuple):
        return [_settable(part) for part in value]
    return value


@cache
def _letters() -> frozenset[str]:
    """The letters that all shipped fonts have, from `templates/fonts/letters.txt`."""
    letters: set[str] = set()
    for line in template("fonts/letters.txt").read_text(encoding="ascii").split():
        first, _, last = line.partition("-")
        letters.update(map(chr, range(int(first, 16), int(last or first, 16) + 1)))
    return frozenset(letters)
