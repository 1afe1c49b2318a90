"""The guide as a PDF for paper and for screen readers (PDF/UA-1, which the writer enforces)."""

from __future__ import annotations

import json
import os
from collections.abc import Iterable, Mapping, Set
from dataclasses import replace
from string import ascii_lowercase
from typing import Any

from furbelow.garment.tags import copy_letter
from furbelow.s6_write.figures.language import SIZE
from furbelow.s6_write.figures.pen import width_of
from furbelow.s6_write.guide.guide import Guide, Operation
from furbelow.s6_write.guide.rows import rows
from furbelow.s6_write.pages.look import Look
from furbelow.s6_write.pages.own_font import letters_to_set
from furbelow.s6_write.pages.plain_values import PlainValues
from furbelow.s6_write.pages.plan_title import plan_title
from furbelow.s6_write.pages.prose import blocks, set_ready
from furbelow.s6_write.pages.typeset import Manuscript, typeset
from furbelow.s6_write.pages.unset_letters import all_settable, beyond_ascii, settable
from furbelow.s6_write.pages.why_lines import WhyLines
from furbelow.s6_write.words.messages import Messages

STAND_IN = "□"


def pdf(guide: Guide, words: Messages | None = None, look: Look | None = None) -> bytes:
    """The file `guide.pdf`, the same bytes for the same guide.

    It bears no date, or that of the environment's SOURCE_DATE_EPOCH. A letter that no font has is shown as an
    empty box, since a PDF/UA file may not hold a letter without a shape. words, look: as for the page.
    """
    return typeset(manuscript(guide, words, look))


def manuscript(guide: Guide, words: Messages | None = None, look: Look | None = None) -> Manuscript:
    """What `pdf` is set from."""
    words = words or Messages(guide.language)
    words.read("pages")
    plain = PlainValues()
    given = {
        **_given(guide, words, plain),
        "author": guide.author or (),
        "described": guide.terms_of_use or None,
        "paper": guide.paper,
    }
    return on_sheet("guide.typ", given, plain, words, _FIXED, look)


def on_sheet(
    document: str,
    given: Mapping[str, object],
    plain: PlainValues,
    words: Messages,
    fixed: Iterable[str],
    look: Look | None,
    marks: str = "",
) -> Manuscript:
    """A document on the sheet of guides. document: the template's name. given: what it shows; plain: holds its drawings.
    fixed: messages that it asks for by their names. marks: signs that the template understands, and that no font need
    have.
    """
    known = letters_to_set(look.font if look else None)
    letters = known | set(marks)
    told = {name: words.text(name) for name in fixed}
    # Numbered by the template, which alone knows the sheets.
    told["page-sheet"] = words.text("page-sheet", {"sheet": "{sheet}", "sheets": "{sheets}"})
    shown = _as_json({**given, "words": told})
    if not all_settable(shown, letters):
        shown = _as_json(_settable({**given, "words": told}, letters))
    epoch = os.environ.get("SOURCE_DATE_EPOCH", "")
    how = {
        # The letters that a name may begin large with: not every capital has a shape.
        "capitals": {
            sign: sign.upper()
            for sign in sorted({*ascii_lowercase, *beyond_ascii(shown)})
            if sign.upper() != sign and sign.upper() in known
        },
        "fallback": look is not None and look.font is not None,
        "colours": look.paper if look else {},
        "faces": look.faces if look else {},
        "logo": plain.of(look.logo) if look and look.logo else None,
        "language": words.language.split("-"),
        # English words are short enough for every column.
        "hyphenate": words.language.partition("-")[0] != "en",
        "date": int(epoch) if epoch.isascii() and epoch.isdigit() else None,
        "font": look.font.path if look and look.font else None,
    }
    drawings = {name: settable(svg, letters, STAND_IN).encode() for name, svg in plain.drawings.items()}
    return Manuscript(document, shown, drawings, how)


def _as_json(value: object) -> str:
    return json.dumps(value, ensure_ascii=False, sort_keys=True)


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
    "page-given",
    "page-cost",
    "page-cut-sizes-are",
    "page-piece-number",
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


def _given(guide: Guide, words: Messages, plain: PlainValues) -> dict[str, object]:
    """What the template shows of the guide."""
    shown = set_ready(guide)
    return {
        "guide": _values(shown, words, plain),
        "rounded": words.text("page-rounded", {"rounding": shown.rounding}),
        "numbers-units": words.text("page-numbers-units", {"units": shown.reasons_in}),
        "plan": plan_title(shown.sittings, words),
        "measure-told": words.text("page-measure-told", {"whose": shown.wearer}),
        "proved-line": words.text("page-proved-line", {"claims": len(shown.proofs)}) if shown.proofs else "",
        "end": words.text("page-end", {"key": shown.content_key}),
    }


def _values(shown: Guide, words: Messages, plain: PlainValues) -> object:
    """The guide as plain values: Markdown read, what stands in a message said."""
    # What has a form of its own below is left out first: to copy it would take longer than all the rest.
    bare = replace(shown, about="", notes="", reasons=(), cut=(), parts=())
    values = {**plain.of(bare), "cut": _operations(shown.cut, words, plain)}
    values["parts"] = [
        {"title": part.title, "operations": _operations(part.operations, words, plain)} for part in shown.parts
    ]
    values["about"] = [plain.of(block) for block in blocks(shown.about)]
    values["reasons"] = [plain.of(line) for line in WhyLines(shown, words).listed()] if shown.with_reasons else []
    values["notes"] = [plain.of(block) for block in blocks(shown.notes)]
    with_heads(values["cautions"], words)
    for line in values["materials"]:
        line["use"] = words.text("page-for-use", {"use": line["use"]}) if line["use"] else ""
        line["need"] = words.text("page-need-amount", {"amount": line["need"]}) if line["need"] else ""
    return values


def _operations(operations: Iterable[Operation], words: Messages, plain: PlainValues) -> list[dict[str, Any]]:
    told = []
    for whole in operations:
        operation = plain.of(replace(whole, steps=(), figures=()))
        as_set(operation, whole, words, plain)
        told.append(operation)
    return told


def as_set(operation: dict[str, Any], whole: Operation, words: Messages, plain: PlainValues) -> None:
    """The values of an operation as the template sets them: its rows in the place of its sentences and drawings."""
    operation["tip"] = [plain.of(block) for block in blocks(operation["tip"])]
    operation["rows"] = [plain.of(row) for row in rows(whole)]
    operation["head_wide"] = _head_wide(whole)
    del operation["steps"], operation["figures"]
    for step in (step for row in operation["rows"] for step in row["steps"]):
        step["drawn_at"] = words.text("page-drawn-at", {"place": step["drawn_at"]}) if step["drawn_at"] else ""
        copies = step["only"] or range(1, step["copies"] + 1)
        letters = [copy_letter(copy) for copy in copies] if step["only"] or len(copies) > 1 else []
        step["boxes"] = letters
        # Of many copies there is one box, and which they are stands behind it.
        in_a_row = letters and len(copies) == copies[-1] - copies[0] + 1
        step["span"] = f"{letters[0]}–{letters[-1]}" if in_a_row else " ".join(letters)
        # The check and how far off it may be are one breath: a line of paper less for each.
        step["check"] = " ".join(filter(None, (step["check"], _off(step["tolerance"], words))))
    with_heads(operation["cautions"], words)


def _head_wide(operation: Operation) -> float:
    """mm that the head of an operation takes on one line: its title, 12 points high, what is true afterwards and its time.

    The letters of titles are a seventh wider than those of the text. To set the three and look would take longer than to set
    them.
    """
    title = width_of(operation.title, bold=True) * 12 * 1.15
    rest = width_of(operation.aim) * 9 + width_of(operation.minutes, bold=True) * 9
    return (title + rest) / SIZE * 25.4 / 72


def with_heads(cautions: Iterable[dict[str, Any]], words: Messages) -> None:
    for caution in cautions:
        caution["head"] = words.text("page-kind-head", {"kind": caution["kind"]})


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
