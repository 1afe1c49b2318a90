"""The folder that guides are put into, each in its own folder or alone in this one."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import NamedTuple

from furbelow.diagnose.fault import Fault
from furbelow.s1_read.source import read_bytes
from furbelow.s4_cut.plan_cache import PLANS_FILE
from furbelow.s6_write.folder import write_folder

# Names that stand for devices on some systems. Source: Microsoft, "Naming Files, Paths, and Namespaces".
_DEVICE = re.compile(r"con|prn|aux|nul|(com|lpt)[0-9]")


class Shelf(NamedTuple):
    """replace: whether files that were edited by hand may be written over."""

    folder: Path
    replace: bool = False

    def below(self, name: str) -> Shelf:
        return self._replace(folder=self.folder / name)

    def kept_plans(self) -> bytes:
        """The cutting plans of an earlier run; nothing where there is no such file, or none that can be read."""
        _, content = read_bytes(self.folder / PLANS_FILE)
        return content.value or b""

    def put(self, files: Mapping[str, bytes]) -> tuple[Fault, ...]:
        """The files put there whole, or what kept them out."""
        return write_folder(self.folder, files, replace=self.replace, working=(PLANS_FILE,)).faults


def folder_name(wearer: str) -> str:
    """A plain folder name for a wearer: letters, digits and dashes, and never that of a device."""
    bare = "".join(sign for sign in unicodedata.normalize("NFKD", wearer.lower()) if not unicodedata.combining(sign))
    plain = "".join(sign if sign.isascii() and sign.isalnum() else "-" for sign in bare).strip("-")[:60]
    return f"wearer-{plain}" if _DEVICE.fullmatch(plain) else plain or "wearer"


def folder_names(wearers: Iterable[str]) -> dict[str, str]:
    """A folder name for each wearer, no two alike: where two would be, the later one gets a number."""
    names: dict[str, str] = {}
    given: set[str] = set()
    for wearer in wearers:
        plain = name = folder_name(wearer)
        number = 1
        while name in given:
            number += 1
            name = f"{plain}-{number}"
        given.add(name)
        names[wearer] = name
    return names
