"""Documents set by the typesetter, which takes from those before what is alike in them.

It keeps what it has laid out by content, styles and functions; `sheet.typ` holds what is one wearer's apart from these. It
forgets what its last ten documents did not need. Ten guides would fill half a gigabyte, so empty documents are set
between two of ours, and it keeps what the last two or three needed: that does not grow with the class. What is left of a
document with other drawings is only in the way, and all of it is forgotten.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager, nullcontext
from functools import cache
from hashlib import sha256
from pathlib import Path
from shutil import copyfile
from tempfile import TemporaryDirectory
from threading import Lock
from typing import TYPE_CHECKING, Any

from furbelow.named import NamedTuple
from furbelow.resources import template
from furbelow.s6_write.give_back import give_back

if TYPE_CHECKING:
    from typst import Compiler, Fonts

_EMPTY = 3  # documents between two of ours that are alike
_ALIKE = 0.3  # of the drawings; two sizes of a garment share from 0.38 to 0.69 of them, two garments 0.20 at most
_SETTING = Lock()  # a typesetter sets one document at a time, and a worker of a cluster may have several threads
# The typesetter reads every file as one of its own language first. After this sign it takes a line of data for a remark, which
# takes a tenth of the time; `sheet.typ` leaves the sign out.
_ASIDE = b"//"
_FORGOTTEN = 10  # after so many it keeps nothing of those before


class _Last:
    """The drawings of what was set last, None before the first. A guide that is made alone needs no empty document after it."""

    drawings: frozenset[bytes] | None = None


class Manuscript(NamedTuple):
    """All that a document is set from.

    document: the name of the template. shown: what it shows, as JSON, with the names of these drawings.
    how: how it is shown, as plain values; `date` in it is the seconds of the date that it bears, or null, `font` the path of a
        font for letters that the shipped ones lack, or null, `faces` the paths of a theme's fonts by its words.
    """

    document: str
    shown: str
    drawings: Mapping[str, bytes]
    how: Mapping[str, Any]

    def key(self) -> str:
        """64 hexadecimal digits: where they are the same, so are the bytes of the PDF."""
        import typst

        installed = typst.__version__  # type: ignore[attr-defined]  # which its types leave out
        fonts = [
            *sorted(template("fonts").iterdir()),
            *map(Path, filter(None, (self.how["font"], *self.how["faces"].values()))),
        ]
        read = [_source(self.document), _source("sheet.typ"), *(font.read_bytes() for font in fonts if font.is_file())]
        told = [installed, self.shown, json.dumps(self.how, sort_keys=True), sorted(self.drawings.items())]
        digest = sha256(repr(told).encode("utf-8", "surrogatepass"))
        for content in read:
            digest.update(sha256(content).digest())
        return digest.hexdigest()


def typeset(manuscript: Manuscript) -> bytes:
    """The document as PDF, the same bytes for the same values, whatever was set before it."""
    document, shown, drawings, how = manuscript
    told = dict(how)
    date = told.pop("date")
    files = {"main.typ": _source(document), "sheet.typ": _source("sheet.typ"), "given.json": _ASIDE + shown.encode()}
    files |= {name: _ASIDE + drawing for name, drawing in drawings.items()}
    drawn = frozenset(drawings.values())
    if _Last.drawings is not None:
        alike = len(drawn & _Last.drawings) > _ALIKE * len(drawn)
        for _ in range(_EMPTY if alike else _FORGOTTEN):
            _set(_house(), {"main.typ": b""})
        if not alike:
            give_back()
    _Last.drawings = drawn
    with _own(told.pop("font")) as own, _faces(told.pop("faces", {})) as (families, named):
        typesetter = _with_fonts_in(*own, *named) if own or named else _house()
        files["how.json"] = (
            _ASIDE + json.dumps({**told, "dated": date is not None, "families": families}, sort_keys=True).encode()
        )
        return _set(typesetter, files, date or 0, ["ua-1"])


def _set(typesetter: Compiler, files: Mapping[str, bytes], date: int = 0, standards: Sequence[str] = ()) -> bytes:
    compiled: Any = typesetter.compile  # whose types know no files in memory
    with _SETTING:
        done: bytes = compiled(files, format="pdf", pdf_standards=[*standards], timestamp=date)
    return done


@cache
def _source(name: str) -> bytes:
    return template(name).read_bytes()


@cache
def _house() -> Compiler:
    """With the shipped fonts alone. It is kept: to make its language ready takes a twentieth of the time of a guide."""
    return _with_fonts_in()


def _with_fonts_in(*folders: str) -> Compiler:
    """With the shipped fonts too."""
    from typst import Compiler

    shipped = template("fonts")
    # In the folder that is its root there is nothing more to read.
    return Compiler(root=shipped, font_paths=_fonts_in(str(shipped), *folders))


def _fonts_in(*folders: str) -> Fonts:
    """Those in folders alone: what a machine has of its own would change the page."""
    from typst import Fonts

    return Fonts(include_system_fonts=False, include_embedded_fonts=False, font_paths=[*folders])


@contextmanager
def _own(path: str | None) -> Iterator[list[str]]:
    """The folder of a font of one's own. The typesetter looks through whole folders, so it gets one to itself."""
    with TemporaryDirectory(prefix="furbelow-") if path else nullcontext() as folder:
        if path and folder:
            copyfile(path, Path(folder, "own.ttf"))
        yield [folder] if folder else []


@contextmanager
def _faces(faces: dict[str, str]) -> Iterator[tuple[dict[str, list[str]], list[str]]]:
    """The fonts of a theme: the families of each, as the typesetter calls them, and the folders that they lie in."""
    with TemporaryDirectory(prefix="furbelow-") if faces else nullcontext("") as top:
        families, folders = {}, []
        for name, path in sorted(faces.items()):
            folder = Path(top, name)
            folder.mkdir()
            copyfile(path, folder / "face.ttf")
            families[name] = sorted(_fonts_in(str(folder)).families())
            folders.append(str(folder))
        yield families, folders
