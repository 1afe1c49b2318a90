"""The folder that guides are put into, each in its own folder or alone in this one."""

from __future__ import annotations

import hashlib
import os
import re
import unicodedata
from collections.abc import Iterable, Mapping
from pathlib import Path

from furbelow.diagnose.fault import Fault
from furbelow.named import NamedTuple
from furbelow.s1_read.source import read_bytes
from furbelow.s4_cut.plan_cache import PLANS_FILE
from furbelow.s6_write.folder import SetKind, stands, write_folder
from furbelow.s6_write.plain_names import LIST_NAME

# Names that stand for devices on some systems. Source: Microsoft, "Naming Files, Paths, and Namespaces".
_DEVICE = re.compile(r"con|prn|aux|nul|(com|lpt)[0-9]")

REGISTER = "class.json"  # whose each number is, and what is planned to be cut
WORKING = (PLANS_FILE, REGISTER)  # with nothing in them to read or edit

_LARGEST = 256 * 1024 * 1024  # bytes of a file of ours; a class of 5,000 keeps a fifth of that

_DIGITS = 6  # of a hash: two names alike in plain letters differ in these but once in sixteen million


class Shelf(NamedTuple):
    """replace: whether files that were edited by hand may be written over. own: whether the folder is one that we named."""

    folder: Path
    replace: bool = False
    own: bool = False

    def below(self, name: str) -> Shelf:
        return self._replace(folder=self.folder / name, own=True)

    def kept_plans(self) -> bytes:
        """The cutting plans of an earlier run; nothing where there is no such file, or none that can be read."""
        return self.read(PLANS_FILE)

    def put(
        self, files: Mapping[str, bytes], kind: SetKind, made_from: str = "", *, beside: bool = False
    ) -> tuple[Fault, ...]:
        """The files put there whole, or what kept them out. kind, made_from, beside: see `write_folder`."""
        return write_folder(
            self.folder,
            files,
            replace=self.replace,
            working=WORKING,
            own=self.own,
            kind=kind,
            made_from=made_from,
            beside=beside,
        ).faults

    def clear(self) -> tuple[Fault, ...]:
        """The set that lies here taken away, unless a file of it was edited."""
        return write_folder(self.folder, {}, replace=self.replace, own=self.own, clear=True).faults

    def stands(self, made_from: str) -> tuple[str, ...] | None:
        """The names of the files here, where they were made from just this and nobody has changed them."""
        return stands(self.folder, made_from)

    def read(self, name: str) -> bytes:
        """A file of an earlier run; nothing where there is none that can be read."""
        _, content = read_bytes(self.folder / name, _LARGEST)
        return content.value or b""

    def whole(self, name: str) -> bytes:
        """A file that was just put here. Fails: OSError where it is gone again."""
        return (self.folder / name).read_bytes()

    def others(self, kept: Iterable[str]) -> tuple[str, ...]:
        """The folders of guides that lie here beside those of these names: of who is no longer in the class."""
        kept = set(kept)
        with os.scandir(self.folder) as entries:
            found = [each.name for each in entries if each.is_dir(follow_symlinks=False) and each.name not in kept]
        return tuple(name for name in sorted(found) if (self.folder / name / LIST_NAME).is_file())


def folder_names(wearers: Iterable[str]) -> dict[str, str]:
    """A folder name for each wearer, no two alike: letters, digits and dashes, and never that of a device.

    A name that loses something on the way gets a few digits of its own, so that whoever comes to the class or leaves it
    does not change where an old link leads.
    """
    names: dict[str, str] = {}
    given: set[str] = set()
    for wearer in wearers:
        whole = re.sub(r"[ _]+", "-", wearer.strip().lower())
        bare = "".join(sign for sign in unicodedata.normalize("NFKD", whole) if not unicodedata.combining(sign))
        plain = re.sub(r"-+", "-", re.sub(r"[^a-z0-9]", "-", bare)).strip("-")[:60]
        name = plain if plain == whole and plain not in given and not _DEVICE.fullmatch(plain) else ""
        digits = _DIGITS
        while not name or name in given:
            name = f"{plain or 'wearer'}-{hashlib.sha256(wearer.encode('utf-8', 'surrogatepass')).hexdigest()[:digits]}"
            digits += 1
        given.add(name)
        names[wearer] = name
    return names
