"""The booklet as a PDF for paper and for screen readers (PDF/UA-1)."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any, cast

from furbelow.s6_write.booklet.booklet import Booklet, SizedOperation
from furbelow.s6_write.booklet.compose import whose
from furbelow.s6_write.booklet.number_rows import number_rows
from furbelow.s6_write.booklet.sizes import told_of
from furbelow.s6_write.booklet.texts import each_version, is_sized, with_letters
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.pages.look import Look
from furbelow.s6_write.pages.pdf import as_set, on_sheet, with_heads
from furbelow.s6_write.pages.plain_values import PlainValues
from furbelow.s6_write.pages.prose import blocks, each_text, set_ready
from furbelow.s6_write.pages.typeset import typeset
from furbelow.s6_write.words.messages import Messages

_LETTER, _VERSION, _CLOSE = "\U0010ff02", "\U0010ff03", "\U0010ff04"  # as `booklet.typ` looks for them
_FIXED = (
    "page-buy",
    "page-cautions",
    "page-check",
    "page-choose-size",
    "page-contents",
    "page-colon",
    "page-cut",
    "page-cut-sizes-are",
    "page-cutting",
    "page-depth",
    "page-finished",
    "page-glance",
    "page-kept",
    "page-length",
    "page-piece-number",
    "page-material",
    "page-measurement",
    "page-measurements",
    "page-proved",
    "page-reasons",
    "page-notes",
    "page-on-sheet",
    "page-piece",
    "page-remedy",
    "page-the-number",
    "page-time",
    "page-tools",
    "page-materials",
    "page-what",
    "page-whole",
    "page-whole-told",
    "page-words",
    "booklet-cut-told",
    "booklet-how",
    "booklet-measure-told",
    "booklet-numbers",
    "booklet-proved",
    "booklet-ring",
    "booklet-widths",
    "booklet-widths-told",
)


def booklet_pdf(booklet: Booklet, words: Messages | None = None, look: Look | None = None) -> bytes:
    """The file `booklet.pdf`, the same bytes for the same booklet. words, look: as for the guide's."""
    words = words or Messages(booklet.language)
    words.read("pages", "booklet")
    shown = set_ready(booklet)
    plain = PlainValues()
    given = {
        "guide": _values(shown, words, plain),
        "author": shown.author or (),
        "described": shown.terms_of_use or None,
        "paper": booklet.paper,
        "rounded": words.text("page-rounded", {"rounding": shown.rounding}),
        "numbers-units": words.text("page-numbers-units", {"units": shown.reasons_in}),
        "end": words.text("page-end", {"key": shown.content_key}),
    }
    return typeset(on_sheet("booklet.typ", given, plain, words, _FIXED, look, _LETTER + _VERSION + _CLOSE))


def _values(shown: Booklet, words: Messages, plain: PlainValues) -> dict[str, Any]:
    """The booklet as plain values: letters and versions as the template finds them, Markdown read."""

    def named(sizes: Sequence[int], message: str) -> str:
        return told_of(message, sizes, shown.sizes, words)

    def told(text: str) -> str:
        if not is_sized(text):
            return text
        return " / ".join(
            each_version(
                text,
                lambda said: with_letters(said, lambda number: f"{_LETTER}{shown.numbers[number].letter}{_CLOSE}"),
                lambda sizes, said: f"{_VERSION}{named(sizes, 'booklet-version')}{_CLOSE} {said}",
            )
        )

    # The drawings of single sizes are for the screen.
    slim = replace(
        shown,
        ways=tuple(replace(way, cut=tuple(map(_on_paper, way.cut))) for way in shown.ways),
        parts=tuple(replace(part, operations=tuple(map(_on_paper, part.operations))) for part in shown.parts),
    )
    values: dict[str, Any] = plain.of(cast(Booklet, each_text(slim, told)))
    values["about"], values["notes"] = (
        [plain.of(block) for block in blocks(text)] for text in (shown.about, shown.notes)
    )
    set_values = [
        *(operation for way in values["ways"] for operation in way["cut"]),
        *(operation for part in values["parts"] for operation in part["operations"]),
    ]
    of_paper = cast(Booklet, each_text(slim, told)).operations
    for operation, whole, lettered in zip(set_values, of_paper, shown.operations, strict=True):
        of_some = _of_some(lettered)
        across = tuple(figure for figure in whole.figures if figure.key in of_some)
        as_set(
            operation, replace(whole, figures=tuple(each for each in whole.figures if each not in across)), words, plain
        )
        _put_across(operation["rows"], plain.of(across), across)
        operation["table"] = [row._asdict() for row in number_rows(lettered, shown.numbers, words)]
        operation["only"] = named(whole.sizes, "booklet-only") if whole.sizes and not whole.cut_for else ""
    with_heads(values["cautions"], words)
    for way, cut in zip(values["ways"], shown.ways, strict=True):
        way["whose"] = named(cut.sizes, "booklet-cut-for") if cut.sizes else words.text("booklet-cut-all")
    for plan, sittings in zip(values["plans"], shown.plans, strict=True):
        sized = named(sittings.sizes, "booklet-plan-for") if sittings.sizes else ""
        plan["title"] = sized or words.text("page-plan", {"sittings": sittings.sittings[-1].number})
    # The foot of the sheet has the letters of all work.
    values["cut"] = values["ways"][0]["cut"] if values["ways"] else []
    values["wearer"] = whose(shown, words)
    return values


def _of_some(operation: SizedOperation) -> set[str]:
    """The keys of drawings that are not for all whose operation it is: several in the place of one, too high beside a
    sentence.
    """
    whose = len(operation.sizes) or len(operation.sized_minutes)
    return {each.drawn.key for each in operation.drawings if each.own and len(each.own) < whose}


def _put_across(rows: list[dict[str, Any]], drawn: Sequence[object], figures: Sequence[Figure]) -> None:
    """Drawings below the sentence that they show, side by side across the page; a row without drawings ends with it."""
    for shown, figure in zip(drawn, figures, strict=True):
        begins = min(figure.shows, default=1)
        at = next((at for at, row in enumerate(rows) if row["steps"][-1]["number"] >= begins), len(rows) - 1)
        row = rows[at]
        after = [step for step in row["steps"] if step["number"] > begins]
        if after and len(after) < len(row["steps"]) and not row["figures"]:
            row["steps"] = row["steps"][: -len(after)]
            rows.insert(at + 1, {"steps": after, "figures": []})
        row.setdefault("across", []).append(shown)


def _on_paper(operation: SizedOperation) -> SizedOperation:
    return replace(operation, drawings=())
