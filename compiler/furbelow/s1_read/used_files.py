"""The files that a spec is built on: libraries that it uses, and a garment that it differs from, laid together to one tree.

Every value keeps the place in its own file. No file outside of the folder tree of the spec is opened, and nothing in one is
run: they are read as the spec is.
"""

from __future__ import annotations

import os
from collections.abc import Iterator

from furbelow.diagnose.fault import Fault, Label, Span, Staged
from furbelow.diagnose.nearest import nearest
from furbelow.named import NamedTuple
from furbelow.s1_read.inside import is_inside
from furbelow.s1_read.schema_check import load_schema, schema_faults
from furbelow.s1_read.schema_walk import Schema
from furbelow.s1_read.source import read_bytes
from furbelow.s1_read.values import BASE, USE, is_library, names_files, rows_at, value_at
from furbelow.s1_read.yaml_tree import Entry, ListTree, MapTree, TextTree, Tree, read_tree

CHANGES, CALLED = "change steps", "called"
SHARED = ("use", "about", "language", "body", "sizes", "choices", "measures", "materials", "techniques")
MOST_FILES = 30
_SECTIONS = ("body", "sizes", "choices", "measures", "worn", "materials", "pieces", "techniques")
_SIZES = ({"length", "cut length"}, {"depth", "cut depth"})  # of a piece: the one that is written stands for both


class UsedFile(NamedTuple):
    """A file that a spec is built on, and where the spec leads to it."""

    path: str
    named: Span


class Laid(NamedTuple):
    """The tree of a spec with what it uses under it."""

    tree: Tree
    files: tuple[UsedFile, ...]
    faults: tuple[Fault, ...]


def laid_together(tree: Tree, file: str) -> Laid:
    """The spec laid over the garment that it is based on and the libraries that it uses.

    Fails: FB174 for a file that can't be used, FB175 for files that lead to each other or are too many, FB176 for changed
        steps that are not there; and what reading a file fails with.
    """
    reading = _Reading(os.path.dirname(os.path.abspath(file)))
    whole = reading.over(tree, file, (os.path.realpath(file),), None)
    return Laid(whole, tuple(reading.files), tuple(reading.faults))


def library_schema(garment: Schema) -> Schema:
    """What a library may hold: the sections of a garment that several can share. garment: the schema of a whole one."""
    version = {**garment["properties"]["furbelow"], "description": "The version of the spec language it is written in."}
    return {
        **garment,
        "title": "Library",
        "required": ["library"],
        "properties": {"library": version, **{key: garment["properties"][key] for key in SHARED}},
    }


class _Reading:
    def __init__(self, root: str) -> None:
        self.root = root
        self.files: list[UsedFile] = []
        self.faults: list[Fault] = []
        self._libraries: set[str] = set()

    def over(self, tree: Tree, file: str, way: tuple[str, ...], named: Span | None) -> Tree:
        """The tree of a file over all that it names. way: the files that lead to it, links followed; named: see UsedFile."""
        if not isinstance(tree, MapTree):
            return tree
        under: Tree | None = None
        for key, value in _named(tree):
            below = self._read(key, value, file, way, named or value.span)
            if below is not None:
                under = below if under is None else _over(below, under)
        # What the spec itself says of files is looked at by its schema.
        told = () if named is None else (USE, BASE, CHANGES, "library")
        own = MapTree(tree.span, tuple(each for each in tree.entries if each.key not in told))
        whole = own if under is None else _over(own, under)
        return self._changed(whole, tree)

    def _read(self, key: str, value: TextTree, file: str, way: tuple[str, ...], named: Span) -> Tree | None:
        path = os.path.normpath(os.path.join(os.path.dirname(file), value.text))
        place = os.path.realpath(path)
        if fault := self._refusal(value, path, place, way, named):
            self.faults.append(fault)
            return None
        if key == USE and place in self._libraries:
            return None
        _, read = read_bytes(path)
        tree = read_tree(read.value, path) if read.value is not None else Staged[Tree](None, read.faults)
        if tree.value is None:
            others = (Label(value.span, "named here"),)
            self.faults += [fault._replace(others=(*fault.others, *others)) for fault in tree.faults]
            return None
        if is_library(tree.value) is not (key == USE):
            said = "no library" if key == USE else "a library, and no garment"
            help_ = f"write `{BASE}:` for a garment and `{USE}:` for a library, which begins with `library: 1`"
            self.faults.append(Fault("FB174", f"{path} is {said}", Label(value.span), help=help_))
            return None
        if key == USE:
            self._libraries.add(place)
            self.faults += schema_faults(tree.value, library_schema(load_schema("garment.schema.json")))
        return self.over(tree.value, path, (*way, place), named)

    def _refusal(self, value: TextTree, path: str, place: str, way: tuple[str, ...], named: Span) -> Fault | None:
        label = Label(value.span)
        if "\0" in value.text or os.path.isabs(value.text) or not is_inside(path, self.root):
            said = f"{value.text[:80]} lies outside of the folder of the spec"
            return Fault("FB174", said, label, help="put it into the folder of the spec, or one within it")
        if place in way:
            said = " -> ".join(os.path.basename(each) for each in (*way[way.index(place) :], place))
            return Fault(
                "FB175", f"files are built on each other in a circle: {said}", label, help="take one of them out"
            )
        if len(self.files) >= MOST_FILES:
            said = f"the spec is built on more than {MOST_FILES} files"
            return Fault("FB175", said, label, help="put some of them together")
        # One that is missing is watched too, until it comes.
        self.files.append(UsedFile(path, named))
        if not os.path.isfile(path):
            near = nearest(os.path.basename(path), _beside(path))
            help_ = f"did you mean {near[0]}?" if near else None
            return Fault("FB174", f"there is no file {path[:80]}", label, help=help_)
        return None

    def _changed(self, whole: Tree, tree: MapTree) -> Tree:
        """The steps with the groups that the file changes put in the place of those it is based on."""
        changes = value_at(tree, CHANGES)
        steps = value_at(whole, "steps")
        if not isinstance(changes, MapTree) or not isinstance(whole, MapTree):
            return whole
        known: list[str] = []
        for change in changes.entries:
            known = [entry.text for entry in _called(steps)]
            if change.key not in known:
                near = nearest(change.key, known)
                listed = ", ".join(f"`{name}`" for name in known) or "none: write `called:` beside `steps:`"
                help_ = f"did you mean `{near[0]}`?" if near else f"the groups are {listed}"
                said = f"no group of steps is called `{change.key[:60]}`"
                self.faults.append(Fault("FB176", said, Label(change.key_span), help=help_))
            elif isinstance(change.value, ListTree) and steps is not None:
                steps = _put(steps, change.key, change.value)
        return MapTree(
            whole.span,
            tuple(entry._replace(value=steps) if entry.key == "steps" and steps else entry for entry in whole.entries),
        )


def _named(tree: MapTree) -> Iterator[tuple[str, TextTree]]:
    """The files that a file names: first what it is based on, so that its libraries lie over that."""
    for key in (BASE, USE):
        value = value_at(tree, key)
        for row in rows_at(tree, key) or (value,):
            if isinstance(row, TextTree) and row.text:
                yield key, row


def _beside(path: str) -> list[str]:
    try:
        return [name for name in os.listdir(os.path.dirname(path) or ".") if name.endswith((".yaml", ".yml"))]
    except OSError:
        return []


def _over(over: Tree, under: Tree, deep: int = 0) -> Tree:
    """One tree laid over another: section by section, in it name by name, in that key by key. A text or a list is replaced."""
    if not isinstance(over, MapTree) or not isinstance(under, MapTree) or deep > 2:
        return over
    entries: dict[str, Entry] = {entry.key: entry for entry in under.entries}
    for rivals in _SIZES:
        if deep == 2 and any(entry.key in rivals for entry in over.entries):
            entries = {key: entry for key, entry in entries.items() if key not in rivals}
    for entry in over.entries:
        below = entries.get(entry.key) if deep or entry.key in _SECTIONS else None
        entries[entry.key] = entry if below is None else entry._replace(value=_over(entry.value, below.value, deep + 1))
    return MapTree(over.span, tuple(entries.values()))


def _called(steps: Tree | None) -> Iterator[TextTree]:
    """The names of the groups among the steps, those within groups too."""
    waiting = list(getattr(steps, "rows", ()))
    while waiting:
        row = waiting.pop(0)
        name = value_at(row, CALLED)
        if isinstance(name, TextTree):
            yield name
        waiting += getattr(value_at(row, "steps"), "rows", ())


def _put(steps: Tree, name: str, rows: ListTree) -> Tree:
    """The steps with other rows in the group of that name. Files are no deeper than the reader allows."""
    if not isinstance(steps, ListTree):
        return steps
    changed: list[Tree] = []
    for row in steps.rows:
        inner, called = value_at(row, "steps"), value_at(row, CALLED)
        if isinstance(row, MapTree) and inner is not None:
            new = rows if isinstance(called, TextTree) and called.text == name else _put(inner, name, rows)
            entries = (entry._replace(value=new) if entry.key == "steps" else entry for entry in row.entries)
            changed.append(row._replace(entries=tuple(entries)))
        else:
            changed.append(row)
    return ListTree(steps.span, tuple(changed))


def files_used(file: str, text: str) -> tuple[UsedFile, ...]:
    """The files that a spec is built on, as far as they can be read; those that are missing too."""
    tree = read_tree(text, file).value
    return laid_together(tree, file).files if tree is not None and names_files(tree) else ()


def library_faults(file: str, text: str) -> tuple[Fault, ...] | None:
    """What is wrong in the keys of a library; None where the file is none."""
    tree = read_tree(text, file).value
    if tree is None or not is_library(tree):
        return None
    return (*schema_faults(tree, library_schema(load_schema("garment.schema.json"))), *laid_together(tree, file).faults)
