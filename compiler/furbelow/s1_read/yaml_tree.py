"""A YAML file as a tree of maps, lists and texts, each with its place.

Scalars stay the text that stands in the file: `no`, `on`, `1:30` and `012` hold no surprise. The tree is
built from PyYAML's events without recursion, so that a hostile file can't exhaust the stack.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator, Sequence
from contextlib import suppress
from typing import TypeAlias

import yaml

from furbelow.diagnose.fault import Fault, Label, Span, Staged, in_reading_order
from furbelow.diagnose.unseen import shows_nothing
from furbelow.named import NamedTuple
from furbelow.s1_read.yaml_problems import plain_problem

LARGEST_FILE = 1024 * 1024
DEEPEST_TREE = 40
MOST_VALUES = 20_000
_MOST_FAULTS = 50


class TextTree(NamedTuple):
    """A scalar as written. An empty value is the text ""."""

    span: Span
    text: str
    quoted: bool

    def place(self, offset: int, length: int) -> Span:
        """The place of a part of the text in the file.

        Exact for a text on one line without escapes; otherwise the whole text.
        """
        quote = 1 if self.quoted else 0
        if self.span.end_column - self.span.start_column != len(self.text) + 2 * quote:
            return self.span
        return self.span.inside(offset + quote, length)


class Entry(NamedTuple):
    """A key of a map and its value."""

    key: str
    key_span: Span
    value: Tree


class MapTree(NamedTuple):
    """A map; its keys stand in the order of the file and differ from each other."""

    span: Span
    entries: tuple[Entry, ...]

    def entry(self, key: str) -> Entry | None:
        return next((entry for entry in self.entries if entry.key == key), None)


class ListTree(NamedTuple):
    """A list of values."""

    span: Span
    rows: tuple[Tree, ...]


Tree: TypeAlias = MapTree | ListTree | TextTree
Plain: TypeAlias = "dict[str, Plain] | list[Plain] | str"


def read_tree(content: bytes | str, file: str) -> Staged[Tree]:
    """The tree of one YAML file, or every fault that keeps it from being one.

    content: the file's bytes, or its text. file: its name, for the places.
    Fails: FB101 to FB111.
    """
    encoded = content.encode("utf-8", "replace") if isinstance(content, str) else content
    size = len(encoded)
    if size > LARGEST_FILE:
        said = f"the file has {size} bytes, {size - LARGEST_FILE} more than the {LARGEST_FILE} allowed"
        return _refused(Fault("FB102", said, Label(Span.at_start(file)), help="split the file"))
    if isinstance(content, str):
        text = content
    else:
        try:
            text = content.decode("utf-8")
        except UnicodeDecodeError as error:
            good = content[: error.start].decode("utf-8-sig", "replace")
            place = _Places(good, file).span(len(good), len(good))
            said = f"byte {error.start + 1} of the file is not UTF-8 text"
            return _refused(Fault("FB101", said, Label(place), help="save the file in the encoding UTF-8"))
    return _TreeReader(text.removeprefix("\ufeff"), file).read()


def to_plain(tree: Tree) -> Plain:
    """The tree as dicts, lists and texts, for a schema to look at."""
    match tree:
        case MapTree():
            return {entry.key: to_plain(entry.value) for entry in tree.entries}
        case ListTree():
            return [to_plain(row) for row in tree.rows]
        case TextTree():
            return tree.text


def find(tree: Tree, path: Sequence[str | int]) -> tuple[Span, Span]:
    """The places of the key and of the value at a path of keys and row numbers.

    A row has no key: its own place stands for it. Where the path leads nowhere, the last part that exists.
    """
    key_span = tree.span
    for step in path:
        if isinstance(tree, MapTree) and (entry := tree.entry(str(step))):
            key_span, tree = entry.key_span, entry.value
        elif isinstance(tree, ListTree) and isinstance(step, int) and 0 <= step < len(tree.rows):
            tree = tree.rows[step]
            key_span = tree.span
        else:
            break
    return key_span, tree.span


def _refused(fault: Fault) -> Staged[Tree]:
    return Staged(None, (fault,))


class _Places:
    """Offsets in a text as lines and columns. Lines end as editors end them: LF, CR LF or CR."""

    def __init__(self, text: str, file: str) -> None:
        self._file = file
        self._length = len(text)
        self._starts = [0, *(found.end() for found in re.finditer(r"\r\n|\n|\r", text))]

    def span(self, start: int, end: int) -> Span:
        return Span(self._file, *self._place(start), *self._place(max(start, end)))

    def _place(self, offset: int) -> tuple[int, int]:
        offset = min(max(offset, 0), self._length)
        line = bisect_right(self._starts, offset)
        return line, offset - self._starts[line - 1] + 1


class _Open:
    """A map or list whose end has not come yet. A map keeps the key that waits for its value."""

    __slots__ = ("drop", "end", "entries", "is_map", "key", "rows", "start")

    def __init__(self, start: int, is_map: bool, end: int = 0) -> None:
        self.start = start
        self.is_map = is_map
        self.entries: dict[str, Entry] = {}
        self.rows: list[Tree] = []
        self.key: TextTree | None = None
        self.end = end
        self.drop = False  # a key that can't be used takes its value with it


# What YAML does not allow in a file (YAML 1.1, 5.1), and the line breaks that editors do not count.
_UNPRINTABLE = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u2028\u2029\ud800-\udfff\ufeff\ufffe\uffff]")
_CONTROL = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\u2028\u2029]")


def _offsets(event: yaml.Event) -> tuple[int, int]:
    assert event.start_mark is not None
    assert event.end_mark is not None
    return event.start_mark.index, event.end_mark.index


class _Stopped(Exception):
    """Reading on would only bring consequences."""


class _TreeReader:
    def __init__(self, text: str, file: str) -> None:
        self._text = text
        self._file = file
        self._places = _Places(text, file)
        self._faults: list[Fault] = []
        self._open: list[_Open] = []
        self._root: Tree | None = None
        self._values = 0

    def read(self) -> Staged[Tree]:
        with suppress(_Stopped):
            self._read()
        faults = in_reading_order(self._faults)
        return Staged(None if faults else self._root, faults)

    def _fault(
        self, code: str, headline: str, start: int, end: int, help_: str, others: tuple[Label, ...] = ()
    ) -> None:
        self._faults.append(Fault(code, headline, Label(self._places.span(start, end)), others, help=help_))
        if len(self._faults) >= _MOST_FAULTS:
            raise _Stopped

    def _read(self) -> None:
        if stray := _UNPRINTABLE.search(self._text):
            said = f"the file holds the character U+{ord(stray.group()):04X}, which can't be seen"
            self._fault("FB104", said, stray.start(), stray.end(), "take the character away")
            return
        for event in self._events():
            match event:
                case yaml.DocumentStartEvent():
                    self._document(event)
                case yaml.MappingStartEvent() | yaml.SequenceStartEvent():
                    self._begin(event)
                case yaml.MappingEndEvent() | yaml.SequenceEndEvent():
                    self._finish(event)
                case yaml.ScalarEvent():
                    self._scalar(event)
                case yaml.AliasEvent():
                    self._alias(event)
        empty = self._root is None or (isinstance(self._root, TextTree) and self._root.text == "")
        if empty and not self._faults:
            self._fault("FB109", "the file is empty", 0, 0, "begin it with `furbelow: 1`")

    def _events(self) -> Iterator[yaml.Event]:
        loader = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
        try:
            yield from yaml.parse(self._text, Loader=loader)
        except yaml.MarkedYAMLError as error:
            mark = error.problem_mark or error.context_mark
            at = mark.index if mark else 0
            context_at = error.context_mark.index if error.context_mark else None
            self._syntax(error.problem or "", error.context or "", at, context_at)
        except yaml.YAMLError as error:
            self._fault("FB104", f"this is not well-formed YAML: {error}", 0, 0, "check the file in an editor")

    def _syntax(self, problem: str, context: str, at: int, context_at: int | None) -> None:
        plain = plain_problem(self._text, problem, context, at, context_at)
        opened = plain.opened
        others = () if opened is None else (Label(self._places.span(opened, opened + 1), "it opens here"),)
        # The scanner has a bound of its own, far above ours, that it may meet first while looking ahead.
        code = "FB103" if "nesting depth" in problem else "FB104"
        self._fault(code, plain.headline, plain.at, self._word_end(plain.at), plain.help, others)

    def _word_end(self, at: int) -> int:
        word = re.compile(r"\w+|[^\r\n]|").match(self._text, at)
        return word.end() if word else at

    def _document(self, event: yaml.DocumentStartEvent) -> None:
        at, _ = _offsets(event)
        if self._root is not None:
            self._fault("FB108", "a second document begins here", at, at + 3, "put it in a file of its own")
            raise _Stopped
        if event.tags:
            self._fault("FB107", "the file defines tags", at, self._word_end(at), "take the `%TAG` line away")

    def _begin(self, event: yaml.MappingStartEvent | yaml.SequenceStartEvent) -> None:
        start, _ = _offsets(event)
        self._properties(event)
        self._count(start)
        if len(self._open) >= DEEPEST_TREE:
            said = f"this is nested deeper than {DEEPEST_TREE} levels"
            self._fault("FB103", said, start, start + 1, "take some levels away")
            raise _Stopped
        self._open.append(_Open(start, isinstance(event, yaml.MappingStartEvent), end=start))

    def _finish(self, event: yaml.MappingEndEvent | yaml.SequenceEndEvent) -> None:
        done = self._open.pop()
        # A map or list without brackets is said to end at whatever follows it: its last value's end is meant.
        start, end = _offsets(event)
        if end == start or self._text[end - 1] not in "]}":
            end = done.end
        span = self._places.span(done.start, end)
        if done.is_map:
            self._place(MapTree(span, tuple(done.entries.values())), done.start, end)
        else:
            self._place(ListTree(span, tuple(done.rows)), done.start, end)

    def _scalar(self, event: yaml.ScalarEvent) -> None:
        start, end = _offsets(event)
        self._properties(event)
        self._count(start)
        # A block of text is said to end where the next line begins.
        end = start + len(self._text[start:end].rstrip())
        # An escape in quotes, such as "\e", could steer a terminal that prints the text.
        if not event.value.isprintable() and (control := _CONTROL.search(event.value)):
            said = f"an escape stands for the character U+{ord(control[0]):04X}, which can't be seen"
            self._fault("FB104", said, start, end, "take the escape away")
        elif event.value.strip() and shows_nothing(event.value):
            self._fault("FB104", "nothing of this text can be seen", start, end, "write a word, or take it away")
        tree = TextTree(self._places.span(start, end), event.value, self._text[start : start + 1] in ("'", '"'))
        self._place(tree, start, end)

    def _alias(self, event: yaml.AliasEvent) -> None:
        start, end = _offsets(event)
        help_ = "write the value out, or put the text in quotes if the `*` belongs to it"
        self._fault("FB106", "an alias stands here", start, end, help_)
        self._place(TextTree(self._places.span(start, end), self._text[start:end], False), start, end)

    def _properties(self, event: yaml.NodeEvent) -> None:
        start, _ = _offsets(event)
        if event.anchor is not None:
            self._fault("FB106", "an anchor stands here", start, self._stretch_end(start), "write each value out")
        if getattr(event, "tag", None) is not None:
            help_ = "take the tag away; every value is read as written"
            self._fault("FB107", "a tag stands here", start, self._stretch_end(start), help_)

    def _stretch_end(self, start: int) -> int:
        stretch = re.compile(r"\S*").match(self._text, start)
        return stretch.end() if stretch else start

    def _count(self, start: int) -> None:
        self._values += 1
        if self._values > MOST_VALUES:
            said = f"the file holds more than {MOST_VALUES} keys and values"
            self._fault("FB111", said, start, start, "split the file")
            raise _Stopped

    def _place(self, tree: Tree, start: int, end: int) -> None:
        """Put a finished value where it belongs: as a key, as the value of a key, as a row or as the root."""
        if not self._open:
            self._root = tree
            return
        parent = self._open[-1]
        parent.end = max(parent.end, end)
        if not parent.is_map:
            parent.rows.append(tree)
        elif parent.key is None and not parent.drop:
            self._key(parent, tree, start, end)
        else:
            if parent.key is not None:
                parent.entries[parent.key.text] = Entry(parent.key.text, parent.key.span, tree)
            parent.key, parent.drop = None, False

    def _key(self, parent: _Open, tree: Tree, start: int, end: int) -> None:
        parent.drop = True
        if not isinstance(tree, TextTree) or tree.text == "":
            said = "a key is missing before this `:`" if isinstance(tree, TextTree) else "this key is no plain word"
            self._fault("FB110", said, start, end, "write a word as the key")
        elif tree.text == "<<" and not tree.quoted:
            self._fault("FB106", "a merge key stands here", start, end, "write the keys out")
        elif first := parent.entries.get(tree.text):
            others = (Label(first.key_span, "it stands here first"),)
            said = f"the key `{tree.text[:60]}` stands twice in one place"
            self._fault("FB105", said, start, end, "take one of the two away, or rename it", others)
        else:
            parent.key, parent.drop = tree, False
