"""The maker's own photographs and drawings, from files beside the spec.

No file outside of the folder tree of the spec is opened, links followed, and none that is a device or a pipe.
"""

from __future__ import annotations

import os
import stat
from collections.abc import Iterator
from functools import lru_cache

from furbelow.diagnose.fault import Fault, Label
from furbelow.diagnose.nearest import nearest
from furbelow.garment.spec import OwnPicture
from furbelow.s1_read.inside import is_inside
from furbelow.s1_read.picture_dots import MOST_BYTES, Dots, PictureFault, taken_over
from furbelow.s1_read.sayings import Sayings
from furbelow.s1_read.values import map_at, rows_at, value_at
from furbelow.s1_read.yaml_tree import TextTree, Tree, read_tree

PICTURE = "picture"
MOST_PICTURES = 40  # in a spec: each guide holds them all


class OwnPictures:
    """Reads the pictures of one spec and keeps what is wrong with them. file: that of the spec."""

    def __init__(self, file: str, say: Sayings) -> None:
        self.root = os.path.dirname(os.path.abspath(file))
        self.say = say
        self.faults: list[Fault] = []
        self._count = 0

    def at(self, tree: Tree | None, owner: str) -> OwnPicture | None:
        """The picture under a key, ready to be shown. owner: whose it is, for messages. Fails: FB177, FB178."""
        named = value_at(tree, "file")
        if not isinstance(named, TextTree):
            return None
        alt, caption = self.say.at(tree, "alt", owner).strip(), self.say.at(tree, "caption", owner).strip()
        self._count += 1
        try:
            if self._count > MOST_PICTURES:
                raise PictureFault(f"it is one more than the {MOST_PICTURES} that a guide may have", "leave some out")
            dots = self._dots(_path(named), named.text)
        except PictureFault as wrong:
            said = f"the picture {named.text[:80]} can't be used: {wrong}"
            self.faults.append(Fault("FB177", said, Label(named.span), help=wrong.mend))
        except ModuleNotFoundError:
            said = f"the picture {named.text[:80]} can't be read: Pillow is not installed"
            self.faults.append(Fault("FB178", said, Label(named.span), help="pip install 'furbelow[pictures]'"))
        else:
            return OwnPicture(*dots, alt, caption)
        return None

    def _dots(self, path: str, name: str) -> Dots:
        if "\0" in name or os.path.isabs(name) or not is_inside(path, self.root):
            raise PictureFault("it lies outside of the folder of the spec", "put it into that folder, or one within it")
        try:
            found = os.stat(path)
        except OSError as error:
            near = nearest(os.path.basename(path), _beside(path))
            mend = f"did you mean {near[0]}?" if near else "put it there, or mend its name"
            raise PictureFault("there is no such file", mend) from error
        if not stat.S_ISREG(found.st_mode):
            raise PictureFault("it is a folder, a pipe or a device", "name a JPEG or a PNG")
        if found.st_size > MOST_BYTES:
            more = f"{found.st_size - MOST_BYTES:,} more than the {MOST_BYTES:,} allowed"
            raise PictureFault(f"it has {found.st_size:,} bytes, {more}", "save it smaller")
        return _read(os.path.realpath(path), found.st_mtime_ns, found.st_size)


@lru_cache(maxsize=2 * MOST_PICTURES)  # a spec is read again for each language, and at each key in an editor
def _read(path: str, changed: int, size: int) -> Dots:
    try:
        # Not to be kept waiting where a pipe was put in its place.
        with os.fdopen(
            os.open(path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0)), "rb"
        ) as file:
            content = file.read(MOST_BYTES + 1)
    except OSError as error:
        raise PictureFault(f"it can't be opened: {(error.strerror or str(error)).lower()}") from error
    if len(content) > MOST_BYTES:
        raise PictureFault(f"it has more than the {MOST_BYTES:,} bytes allowed", "save it smaller")
    return taken_over(content)


def _path(named: TextTree) -> str:
    """Beside the file that names it, which may be one that the spec is based on."""
    return os.path.normpath(os.path.join(os.path.dirname(os.path.abspath(named.span.file)), named.text))


def _beside(path: str) -> list[str]:
    try:
        return [name for name in os.listdir(os.path.dirname(path)) if name.lower().endswith((".jpg", ".jpeg", ".png"))]
    except (OSError, ValueError):
        return []


def picture_files(file: str, text: str) -> tuple[str, ...]:
    """The files that a spec asks pictures of, whether they are there or not; none of a spec that is no YAML."""
    tree = read_tree(text, file).value if PICTURE in text else None
    return tuple(_named(tree)) if tree is not None else ()


def _named(tree: Tree) -> Iterator[str]:
    waiting: list[Tree | None] = [map_at(tree, "cover"), *rows_at(tree, "steps")]
    while waiting:
        row = waiting.pop()
        named = value_at(value_at(row, PICTURE), "file")
        if isinstance(named, TextTree) and "\0" not in named.text:
            yield _path(named)
        waiting += rows_at(row, "steps")
