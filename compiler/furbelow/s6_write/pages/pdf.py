"""The guide as a PDF for paper and for screen readers (PDF/UA-1, which the writer enforces)."""

from __future__ import annotations

import json
import os
from collections.abc import Set
from dataclasses import asdict, replace
from itertools import chain

from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.guide.rows import rows
from furbelow.s6_write.pages.own_font import OwnFont, letters_to_set
from furbelow.s6_write.pages.prose import blocks, set_ready
from furbelow.s6_write.pages.typeset import typeset
from furbelow.s6_write.pages.unset_letters import settable
from furbelow.s6_write.pages.why_lines import WhyLines
from furbelow.s6_write.words.messages import Messages

STAND_IN = "□"


def pdf(guide: Guide, words: Messages | None = None, font: OwnFont | None = None) -> bytes:
    """The file `guide.pdf`, the same bytes for the same guide.

    It bears no date, or that of the environment's SOURCE_DATE_EPOCH. A letter that no font has is shown as an
    empty box, since a PDF/UA file may not hold a letter without a shape. words, font: as for the page.
    """
    epoch = os.environ.get("SOURCE_DATE_EPOCH", "")
    date = int(epoch) if epoch.isascii() and epoch.isdigit() else None
    given = _given(guide, words or Messages(guide.language), font)
    own = font.path if font else None
    return typeset(json.dumps({**given, "document": "guide.typ", "date": date, "font": own}, sort_keys=True))


# The fixed words that the template asks for by these names.
_FIXED = (
    "page-measurements",
    "page-garment",
    "page-cautions",
    "page-tools",
    "page-materials",
    "page-cutting",
    "page-proved",
    "page-notes",
    "page-reasons",
    "page-measurement",
    "page-length",
    "page-material",
    "page-buy",
    "page-cost",
    "page-cut-sizes-are",
    "page-letter",
    "page-piece",
    "page-cut",
    "page-depth",
    "page-finished",
    "page-check",
    "page-remedy",
    "page-colon",
    "page-contents",
    "page-glance",
    "page-begin",
    "page-measure",
    "page-yours",
    "page-choose-size",
    "page-whole",
    "page-whole-told",
    "page-what",
    "page-the-number",
    "page-time",
    "page-on-sheet",
    "page-pieces",
    "page-words",
    "page-kept",
    "page-hint-new",
    "page-hint-done",
    "page-hint-lost",
)


def _given(guide: Guide, words: Messages, font: OwnFont | None) -> dict[str, object]:
    """All that the template is given, in letters that can be set."""
    words.read("pages")
    shown, letters = set_ready(guide), letters_to_set(font)
    fixed = {name: words.text(name) for name in _FIXED}
    # Numbered by the template, which alone knows the sheets.
    fixed["page-sheet"] = words.text("page-sheet", {"sheet": "{sheet}", "sheets": "{sheets}"})
    given = {
        "guide": _values(shown, words),
        "words": fixed,
        "rounded": words.text("page-rounded", {"rounding": shown.rounding}),
        "numbers-units": words.text("page-numbers-units", {"units": shown.reasons_in}),
        "plan": words.text("page-plan", {"sittings": sum(1 for each in shown.sittings if each.number)}),
        "measure-told": words.text("page-measure-told", {"whose": shown.wearer}),
        "proved-line": words.text("page-proved-line", {"claims": len(shown.proofs)}) if shown.proofs else "",
        "end": words.text("page-end", {"key": shown.content_key}),
    }
    settled = {name: _settable(value, letters) for name, value in given.items()}
    signs = set(json.dumps(settled, ensure_ascii=False))
    return {
        **settled,
        # The letters that a name may begin large with: not every capital has a shape.
        "capitals": {sign: sign.upper() for sign in sorted(signs) if sign.upper() in letters},
        "author": shown.author or (),
        "described": shown.terms_of_use or None,
        "paper": shown.paper,
        "fallback": font is not None,
        "language": guide.language.split("-"),
        # English words are short enough for every column.
        "hyphenate": words.locale.language != "en",
    }


def _values(shown: Guide, words: Messages) -> object:
    """The guide as plain values: Markdown read, what stands in a message said."""
    values = asdict(replace(shown, about="", notes=""))
    values["about"] = [asdict(block) for block in blocks(shown.about)]
    values["reasons"] = [asdict(line) for line in WhyLines(shown, words).listed()] if shown.with_reasons else []
    values["notes"] = [asdict(block) for block in blocks(shown.notes)]
    told = [*values["cut"], *(operation for part in values["parts"] for operation in part["operations"])]
    for operation, whole in zip(told, shown.operations, strict=True):
        operation["tip"] = [asdict(block) for block in blocks(operation["tip"])]
        operation["rows"] = [asdict(row) for row in rows(whole)]
        for step in (step for row in operation["rows"] for step in row["steps"]):
            step["drawn_at"] = words.text("page-drawn-at", {"place": step["drawn_at"]}) if step["drawn_at"] else ""
        del operation["steps"], operation["figures"]
        for step in (step for row in operation["rows"] for step in row["steps"]):
            # The check and how far off it may be are one breath: a line of paper less for each.
            step["check"] = " ".join(filter(None, (step["check"], _off(step["tolerance"], words))))
    for caution in chain(values["cautions"], *(operation["cautions"] for operation in told)):
        caution["head"] = words.text("page-kind-head", {"kind": caution["kind"]})
    for line in values["materials"]:
        line["use"] = words.text("page-for-use", {"use": line["use"]}) if line["use"] else ""
        line["need"] = words.text("page-need-amount", {"amount": line["need"]}) if line["need"] else ""
    return values


def _off(tolerance: str, words: Messages) -> str:
    return f"{words.text('page-tolerance')}{words.text('page-colon')} {tolerance}." if tolerance else ""


def _settable(value: object, letters: Set[str]) -> object:
    if isinstance(value, str):
        return settable(value, letters, STAND_IN)
    if isinstance(value, dict):
        return {name: _settable(part, letters) for name, part in value.items()}
    if isinstance(value, list | tuple):
        return [_settable(part, letters) for part in value]
    return value
