"""What the fonts can't show of a guide, told before somebody finds it on the printed page."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator, Set
from dataclasses import is_dataclass

from furbelow.diagnose.fault import Fault, Label, Severity, Span
from furbelow.diagnose.unseen import without_unseen
from furbelow.garment.spec import Spec
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.pages.own_font import OwnFont, letters_to_set

_SHOWN = 10  # letters named in the fault
_HELP = "name a font that has them in the workroom, such as `font: my-font.ttf`"


def unset_letters(guide: object, spec: Spec, font: OwnFont | None, *, with_pdf: bool) -> tuple[Fault, ...]:
    """One fault for all letters of a guide, or of another value of texts, that no font has.

    Fails: FB166 where nothing of a text could be read in the PDF. Warns: FB166 of single letters, and without a PDF,
        since a browser takes letters from the reader's own fonts.
    """
    known = letters_to_set(font)
    lacking: dict[str, None] = {}
    unreadable = ""
    for text in _texts(guide):
        missing = [sign for sign in _composed(text) if sign not in known and not sign.isspace()]
        lacking.update(dict.fromkeys(missing))
        if missing and not any(sign in known and sign.isalnum() for sign in _composed(text)):
            unreadable = unreadable or text
    if not lacking:
        return ()
    letters = " ".join(list(lacking)[:_SHOWN]) + (f" and {len(lacking) - _SHOWN} more" if len(lacking) > _SHOWN else "")
    headline, place = f"the fonts of the guide lack the letters {letters}", _place(spec, next(iter(lacking)))
    if unreadable and with_pdf:
        notes = (f"nothing of `{unreadable[:60]}` could be read in the PDF",)
        return (Fault("FB166", headline, place, notes=notes, help=f"{_HELP}, or make the guide with --no-pdf"),)
    notes = ("in the PDF an empty box stands for each",) if with_pdf else ("a reader's own fonts may have them",)
    return (Fault("FB166", headline, place, notes=notes, help=_HELP, severity=Severity.WARNING),)


def settable(text: str, letters: Set[str], stand_in: str) -> str:
    """The text with a stand-in for each letter that is not among these."""
    if all_settable(text, letters):
        return text
    composed = unicodedata.normalize("NFC", text)
    return "".join(sign if sign in letters or sign.isspace() else stand_in for sign in composed)


def all_settable(text: str, letters: Set[str]) -> bool:
    """Whether `settable` gives this text back as it is: looked at as a whole, which takes a hundredth of the time."""
    beyond = beyond_ascii(text)
    if not unicodedata.is_normalized("NFC", beyond):
        return False
    # A mark could still be composed with a letter of ASCII before it.
    return all((sign in letters or sign.isspace()) and not unicodedata.combining(sign) for sign in set(beyond))


def beyond_ascii(text: str) -> str:
    return text.encode("utf-8", "surrogatepass").translate(None, bytes(range(128))).decode("utf-8", "surrogatepass")


def _composed(text: str) -> str:
    return unicodedata.normalize("NFC", without_unseen(text))


def _texts(value: object) -> Iterator[str]:
    """Every text of the guide that has letters beyond ASCII; what is drawn says the same words."""
    if isinstance(value, str):
        if not value.isascii():
            yield value
    elif isinstance(value, tuple):
        for part in value:
            yield from _texts(part)
    elif isinstance(value, Figure):
        yield from _texts((value.alt, value.caption))
    elif is_dataclass(value):
        for part in vars(value).values():
            if part:
                yield from _texts(part)


def _place(spec: Spec, letter: str) -> Label | None:
    """Where the letter first stands in the spec; a wearer's name stands in another file."""
    for number, line in enumerate(spec.source.splitlines(), 1):
        column = unicodedata.normalize("NFC", line).find(letter)
        if column >= 0:
            return Label(Span(spec.file, number, column + 1, number, column + 2))
    return None
