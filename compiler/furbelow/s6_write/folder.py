"""A set of files put into a folder whole or not at all, without harm to what a person keeps there.

Each file is written beside its place under a passing name, brought safely to the disk, and then renamed; so at any
moment, and after any crash, each file is whole, old or new. The list `furbelow.json` says by their hashes which
files are ours. It is written twice: before the first rename, as not complete, with what stands there and what is
coming, and at the end, as complete. A file that stands in neither column is a person's own and is kept. The list also
says what kind of set it is, and the key of all that the set was made from; of files that take long to make, the key of each.
"""

from __future__ import annotations

import errno
import hashlib
import os
import stat
from collections import deque
from collections.abc import Collection, Iterable, Iterator, Mapping
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from enum import StrEnum
from pathlib import Path

from furbelow.diagnose.fault import Fault, Staged
from furbelow.named import NamedTuple
from furbelow.s6_write.folder_list import put_list, read_list
from furbelow.s6_write.made_in_turn import MadeInTurn
from furbelow.s6_write.plain_names import LIST_NAME, name_faults
from furbelow.s6_write.safe_writing import PASSING, Writing, passing_path, settle

_FILES_AT_ONCE = 8
_HELD_AT_ONCE = 16 * 1024 * 1024  # bytes that wait to be written


class SetKind(StrEnum):
    """What a folder is for, in the words of a message."""

    UNKNOWN = ""
    GUIDE = "one guide"
    AMENDED = "a guide that goes on from what was measured"
    CLASS = "the pages of a class"
    PART = "the pages of a part of a class"
    SIZES = "the pages of a range of sizes"
    BOOKLET = "a booklet for all sizes"
    ORDERS = "the pages of a table of orders"


class _About(NamedTuple):
    """What is said of a set beyond its files; see `write_folder`."""

    kind: SetKind
    made_from: str
    beside: bool


def write_folder(
    folder: Path,
    files: Mapping[str, bytes],
    *,
    replace: bool = False,
    working: Collection[str] = (),
    own: bool = False,
    kind: SetKind = SetKind.UNKNOWN,
    made_from: str = "",
    beside: bool = False,
    clear: bool = False,
) -> Staged[tuple[str, ...]]:
    """The names that were written anew; those whose bytes stood there already are left untouched.

    files: contents by name; a name is plain letters, or one folder and a plain name, as in `figures/hem.svg`. They may be
        made as they are asked for: each is let go when it is written.
    replace: whether a file that a person edited, or put there, may be written over.
    own: the folder has a name of our making in a folder of the maker's choice, so nobody meant a link to stand there.
    kind: of the set; where the folder holds one of another kind, that one is kept unless `replace` says otherwise.
    made_from: the key of what the files were made from, for `stands`.
    beside: put beside the earlier set, of which nothing is taken away; the set is then not complete.
    clear: the earlier set is taken away, list and folder too, unless a file of it was edited.
    working: names of files of ours that hold nothing to read or edit; damaged ones are written over.
    Files of an earlier set that the new one lacks are removed, unless edited.
    Fails, with the folder as it was: FB650 name, FB651 link or other thing that is no file, FB652 file not ours,
    FB653 file edited, FB654 folder can't be written, FB655 a stop half way (each file is whole; run again),
    FB657 another kind of set.
    """
    faults = name_faults(files)
    if faults:
        return Staged(None, faults)
    if own and _is_there(folder) and not _is_plain_folder(folder):
        return Staged(None, (_no_file(folder, "the folder of a guide"),))
    missing = [place for place in (folder, *folder.parents) if not _is_there(place)]
    if clear:
        return _cleared(folder, replace)
    written = _written(folder, files, replace, working, _About(kind, made_from, beside))
    if written.value is None:
        for place in missing:
            with suppress(OSError):
                place.rmdir()
    return written


def _written(
    folder: Path, files: Mapping[str, bytes], replace: bool, working: Collection[str], about: _About
) -> Staged[tuple[str, ...]]:
    kind = about.kind
    try:
        folder.mkdir(parents=True, exist_ok=True)
        standing = _look(folder, files)
        _clear_left_over(folder, (*files, *standing.known))
    except OSError as error:
        return Staged(None, (_not_written(folder, error),))
    faults = standing.faults
    if not replace:
        other = standing.kind if kind and standing.kind not in ("", kind) else ""
        faults += (_other_kind(folder, other, kind),) if other else standing.kept(folder, files, working)
    if faults:
        return Staged(None, faults)

    others = {name: is_now for name, is_now in standing.hashes.items() if name not in files and standing.is_ours(name)}
    gone = {} if about.beside else others
    kept = others if about.beside else {}
    started = False
    try:
        with _passing_files(folder, files, standing) as (passing, wanted, keys):
            keys |= {name: standing.keys[name] for name in kept if name in standing.keys}
            stands = (about.beside or standing.complete) and standing.told == (kind, about.made_from, keys)
            if stands and not passing and not gone:
                return Staged(())
            said = {"complete": not about.beside, "kind": str(kind), "made_from": about.made_from, "keys": keys}
            ours = {name: is_now for name, is_now in standing.hashes.items() if name in files or name in others}
            put_list(folder, {"complete": False, "files": ours, "coming": wanted, "kind": str(kind)})
            started = True
            for name, path in passing.items():
                os.replace(path, folder / name)
            for name in gone:
                (folder / name).unlink()
                _remove_if_empty(folder, name)
            for place in {(folder / name).parent for name in passing} - {folder}:
                settle(place)
            put_list(folder, {**said, "files": {**kept, **wanted}})
    except OSError as error:
        return Staged(None, (_stopped_half_way(folder, error) if started else _not_written(folder, error),))
    return Staged(tuple(sorted(passing)))


def _cleared(folder: Path, replace: bool) -> Staged[tuple[str, ...]]:
    """The files of the set in the folder taken away; what a person put there stays, and so does the folder then."""
    if not _is_there(folder):
        return Staged(())
    try:
        standing = _look(folder, {})
        edited = [name for name in standing.hashes if not standing.is_ours(name)]
        if standing.faults or (edited and not replace):
            return Staged(None, standing.faults or tuple(_edited(folder / name) for name in edited))
        for name in standing.hashes:
            (folder / name).unlink()
            _remove_if_empty(folder, name)
        (folder / LIST_NAME).unlink(missing_ok=True)
        with suppress(OSError):
            folder.rmdir()
    except OSError as error:
        return Staged(None, (_stopped_half_way(folder, error),))
    return Staged(tuple(standing.hashes))


@dataclass
class _Standing:
    """What lies in the folder: the hash of each file that matters, and the hashes that make it ours."""

    hashes: dict[str, str] = field(default_factory=dict)
    known: Mapping[str, set[str]] = field(default_factory=dict)
    complete: bool = False
    kind: str = ""
    made_from: str = ""
    keys: Mapping[str, str] = field(default_factory=dict)
    faults: tuple[Fault, ...] = ()

    @property
    def told(self) -> tuple[str, str, Mapping[str, str]]:
        return self.kind, self.made_from, self.keys

    def is_ours(self, name: str) -> bool:
        return self.hashes.get(name) in self.known.get(name, set())

    def kept(self, folder: Path, files: Mapping[str, bytes], working: Collection[str]) -> tuple[Fault, ...]:
        """A fault for each file of a person's own that would be lost."""
        return tuple(
            _edited(folder / name) if name in self.known else _foreign(folder / name)
            for name in files
            if name in self.hashes and not self.is_ours(name) and not (name in working and name in self.known)
            if self.hashes[name] != _hash(files[name])
        )


def _look(folder: Path, files: Mapping[str, bytes]) -> _Standing:
    """Reads the list and hashes what it names and what would be written. Follows no link."""
    standing = _Standing()
    faults: list[Fault] = []
    if _is_there(folder / LIST_NAME):
        if not _is_plain_file(folder / LIST_NAME):
            return _Standing(faults=(_no_file(folder / LIST_NAME),))
        read = read_list(folder / LIST_NAME)
        if read is None:
            return _Standing(faults=(_foreign(folder / LIST_NAME),))
        standing.complete, standing.known, standing.kind, standing.made_from, standing.keys = read
    for name in sorted({*files, *standing.known}):
        path = folder / name
        if path.parent != folder and _is_there(path.parent) and not _is_plain_folder(path.parent):
            faults.append(_no_file(path.parent))
        elif _is_there(path):
            if _is_plain_file(path):
                with path.open("rb") as opened:
                    standing.hashes[name] = hashlib.file_digest(opened, "sha256").hexdigest()
            elif name in files:
                faults.append(_no_file(path))
    standing.faults = tuple(dict.fromkeys(faults))
    return standing


def stands(folder: Path, made_from: str) -> tuple[str, ...] | None:
    """The names of the set in the folder, where it is whole, unedited and made from what that key is the key of."""
    try:
        listed = read_list(folder / LIST_NAME) if _is_plain_folder(folder) else None
        if listed is None or not listed.complete or listed.made_from != made_from:
            return None
        standing = _look(folder, {})
    except OSError:
        return None
    whole = all(standing.hashes.get(name) in hashes for name, hashes in listed.known.items())
    return tuple(sorted(listed.known)) if whole and not standing.faults else None


@contextmanager
def _passing_files(
    folder: Path, files: Mapping[str, bytes], standing: _Standing
) -> Iterator[tuple[dict[str, Path], dict[str, str], dict[str, str]]]:
    """Each new content in a passing file beside its place, the hashes of all, and the keys of those that have one.

    What is left at the end is cleared away.
    """
    passing: dict[str, Path] = {}
    wanted: dict[str, str] = {}
    keys: dict[str, str] = {}
    made: list[str] = []
    # Most of the time goes in waiting for the disk, and it takes many files at once as fast as one.
    writing: deque[Writing] = deque()
    try:
        for number, name in enumerate(sorted(files), start=1):
            if isinstance(files, MadeInTurn) and (key := files.key(name)):
                keys[name] = key
                if standing.keys.get(name) == key and standing.is_ours(name):
                    wanted[name] = standing.hashes[name]
                    continue
            content = files[name]
            wanted[name] = _hash(content)
            if standing.hashes.get(name) == wanted[name]:
                continue
            place = (folder / name).parent
            if not place.exists():
                place.mkdir()
                made.append(name)
            passing[name] = passing_path(place, number)
            writing.append(Writing(passing[name], content))
            while len(writing) > _FILES_AT_ONCE or sum(each.size for each in writing) > _HELD_AT_ONCE:
                writing.popleft().end()
        while writing:
            writing.popleft().end()
        yield passing, wanted, keys
    finally:
        for each in writing:
            each.join()
        for path in passing.values():
            with suppress(OSError):
                path.unlink()
        for name in made:
            _remove_if_empty(folder, name)


def _clear_left_over(folder: Path, names: Iterable[str]) -> None:
    """Takes away the passing files of a run that was killed."""
    for place in {folder, *((folder / name).parent for name in names)}:
        if place == folder or (_is_there(place) and _is_plain_folder(place)):
            for path in place.iterdir():
                if PASSING.fullmatch(path.name):
                    path.unlink()


def _remove_if_empty(folder: Path, name: str) -> None:
    place = (folder / name).parent
    if place != folder:
        with suppress(OSError):
            place.rmdir()


def _hash(content: bytes) -> str:
    return hashlib.sha256(content).hexdigest()


def _is_there(path: Path) -> bool:
    return os.path.lexists(path)


def _is_plain_file(path: Path) -> bool:
    return stat.S_ISREG(path.lstat().st_mode)


def _is_plain_folder(path: Path) -> bool:
    return stat.S_ISDIR(path.lstat().st_mode)


def _no_file(path: Path, wanted: str = "a file of the guide") -> Fault:
    return Fault(
        "FB651",
        f"{path} is a link, a folder or a device where {wanted} would go",
        help="take it away, or choose another folder with --out",
    )


def _foreign(path: Path) -> Fault:
    return Fault(
        "FB652",
        f"{path} is there already and was not written by furbelow; it was kept",
        help="choose another folder with --out, or give --replace to write over it",
    )


def _edited(path: Path) -> Fault:
    return Fault(
        "FB653",
        f"{path} was edited after it was written; it was kept",
        help="save it under another name, or give --replace to write over it",
    )


def _other_kind(folder: Path, there: str, coming: str) -> Fault:
    return Fault(
        "FB657",
        f"{folder} holds {there}, and {coming} would take its place; it was kept",
        help="choose another folder with --out, or give --replace",
    )


def _not_written(folder: Path, error: OSError) -> Fault:
    return Fault(
        "FB654",
        f"the guide can't be written into {folder}: {_reason(error)}",
        notes=("what was there is as it was",),
        help=_mend(error),
    )


def _stopped_half_way(folder: Path, error: OSError) -> Fault:
    return Fault(
        "FB655",
        f"writing into {folder} stopped half way: {_reason(error)}",
        notes=("each file is whole, old or new; furbelow.json says that the set is not complete",),
        help="mend the cause and make the guide again",
    )


def _mend(error: OSError) -> str:
    if error.errno in (errno.ENOSPC, errno.EDQUOT, errno.EFBIG):
        return "make room on that disk, or choose another folder with --out"
    if error.errno in (errno.EROFS, errno.EACCES, errno.EPERM):
        return "choose a folder that you may write to with --out"
    return "choose another folder with --out"


def _reason(error: OSError) -> str:
    return (error.strerror or type(error).__name__).lower()
