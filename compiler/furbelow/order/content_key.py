"""A key of all that a guide is made from: where it is the same, so is the guide, and nothing has to be done."""

from __future__ import annotations

import os
from collections.abc import Iterator
from functools import cache
from hashlib import sha256
from pathlib import Path

from furbelow.garment.spec import Spec
from furbelow.garment.workroom import Workroom
from furbelow.order.order import Order
from furbelow.resources import template
from furbelow.s4_cut.cut import Cutting


def key_of(*told: object) -> str:
    """64 hexadecimal digits that change with any of what is told, and with the program."""
    return sha256("\0".join([_program(), *map(repr, told)]).encode("utf-8", "surrogatepass")).hexdigest()


def key_of_order(order: Order) -> str:
    """Of the order, and of the files that its spec and its workroom name."""
    texts = [[(name, each.text) for name, each in told.items()] for told in (order.body, order.choices)]
    room = order.room._replace(language=None)  # its place in a file is of no matter; the spec is in that language
    spec = order.spec
    beside = [digest for path in named_by(room) for digest in _of_files(path)]
    told = (spec.file, spec.source, spec.language, order.wearer, texts, room, beside, key_of_files(spec))
    return key_of(*told, order.size, order.number, order.notes)


def key_of_files(spec: Spec) -> str:
    """Of the files that a spec is built on, and its pictures; empty where there are none."""
    files = [digest for path in spec.built_on for digest in _of_files(path)]
    return " ".join([*files, *(sha256(each.content).hexdigest() for each in spec.pictures)])


def named_by(room: Workroom) -> tuple[str, ...]:
    """The paths of the files and folders that a workroom names."""
    named = (room.words, room.font, *(room.theme.fonts if room.theme else ()))
    return tuple(path for path in named if path)


def key_of_room(room: Workroom) -> str:
    """Of the program and of what a workroom names, as they lie here."""
    return key_of(*(digest for path in named_by(room) for digest in _of_files(path)))


def key_of_share(share: Cutting) -> str:
    """Of what a guide says of its share of the cutting for all: the pieces, not where they lie among those of others."""
    return key_of(sorted(share.marks.items()), sorted(share.lengths.items()))


@cache
def _program() -> str:
    """Of the program and its templates, byte by byte: a changed sentence is a changed guide."""
    package = Path(__file__).resolve().parents[1]
    folders = (package, template("words"))
    files = sorted(path for folder in folders for end in ("py", "ftl") for path in folder.rglob(f"*.{end}"))
    files += sorted(path for path in template("").iterdir() if path.is_file())
    digest = sha256(os.environ.get("SOURCE_DATE_EPOCH", "").encode())
    for path in files:
        digest.update(path.name.encode() + path.read_bytes())
    return digest.hexdigest()


def _of_files(path: str) -> Iterator[str]:
    """The digests of a file, or of all in a folder and those within it."""
    place = Path(path)
    files = [place] if place.is_file() else sorted(each for each in place.rglob("*") if each.is_file())
    for each in files:
        yield sha256(each.read_bytes()).hexdigest()
