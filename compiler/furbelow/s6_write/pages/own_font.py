"""A font of the workroom's own, which stands behind the shipped ones for the letters that these lack."""

from __future__ import annotations

import base64
import os
from functools import lru_cache

from furbelow.diagnose.fault import Fault, Label, Span
from furbelow.named import NamedTuple
from furbelow.resources import template
from furbelow.s6_write.pages.font_letters import FontFault, letters_of

LARGEST_FONT = 8 * 1024 * 1024  # it is embedded whole in every page


class OwnFont(NamedTuple):
    path: str
    data: bytes
    letters: frozenset[str]

    @property
    def logo(self) -> None:
        return None

    @property
    def style(self) -> str:
        """What puts it behind the fonts of the page, in its drawings too."""
        data = base64.b64encode(self.data).decode("ascii")
        return (
            f'@font-face {{ font-family: "Furbelow Own"; src: url("data:font/ttf;base64,{data}"); }}\n'
            ':root { --serif: "Furbelow Title", "Furbelow Own", serif; --sans: "Furbelow Text", "Furbelow Own", sans-serif; }\n'
            ".sheet svg { font-family: var(--sans); }\n"
        )


def font_faults(path: str, room: str) -> tuple[Fault, ...]:
    """What keeps the font that a workroom names from being used. room: the workroom's file."""
    here = Label(Span.at_start(room))
    name = os.path.basename(path)
    if (size := os.path.getsize(path)) > LARGEST_FONT:
        said = f"the font {name} has {size} bytes, {size - LARGEST_FONT} more than the {LARGEST_FONT} allowed"
        return (Fault("FB167", said, here, help="take one with fewer letters: each page holds it whole"),)
    try:
        own_font(path)
    except (FontFault, OSError) as wrong:
        said = str(wrong) if isinstance(wrong, FontFault) else "it can't be opened"
        return (Fault("FB167", f"the font {name} can't be used: {said}", here),)
    return ()


def own_font(path: str | None) -> OwnFont | None:
    """The font in a file. Fails: FontFault for one that can't be read, or that is too large."""
    return None if path is None else _read(path, os.stat(path).st_mtime_ns)


@lru_cache(maxsize=2)  # once for all guides of a class; anew where the file has changed
def _read(path: str, changed: int) -> OwnFont:
    with open(path, "rb") as file:
        data = file.read(LARGEST_FONT + 1)
    return OwnFont(path, data, letters_of(data))


@lru_cache(maxsize=1)
def shipped_letters() -> frozenset[str]:
    """The letters that all shipped fonts have, from `templates/fonts/letters.txt`."""
    letters: set[str] = set()
    for line in template("fonts/letters.txt").read_text(encoding="ascii").split():
        first, _, last = line.partition("-")
        letters.update(map(chr, range(int(first, 16), int(last or first, 16) + 1)))
    return frozenset(letters)


def letters_to_set(font: OwnFont | None) -> frozenset[str]:
    """All letters that a guide can show."""
    return shipped_letters() | font.letters if font else shipped_letters()
