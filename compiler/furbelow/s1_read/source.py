"""The bytes of a file that someone wrote for us, and its tree checked against a schema."""

from __future__ import annotations

import errno
import os
import stat
from collections.abc import Callable
from os import PathLike

from furbelow.diagnose.fault import Fault, Label, Span, Staged, in_reading_order
from furbelow.s1_read.schema_check import load_schema, schema_faults
from furbelow.s1_read.schema_walk import Schema
from furbelow.s1_read.yaml_tree import LARGEST_FILE, Tree, read_tree

Source = str | PathLike[str] | tuple[str, bytes]  # a path, or a name for messages and the content


def read_bytes(source: Source, largest: int = LARGEST_FILE) -> tuple[str, Staged[bytes]]:
    """The name of the file and its content. largest: bytes.

    Fails: FB102 when it is too large, FB112 when it can't be opened.
    """
    if isinstance(source, tuple):
        return source[0], Staged(source[1])
    name = str(source)
    here = Label(Span.at_start(name))
    try:
        _is_a_file(source)
        with open(source, "rb") as file:
            content = file.read(largest + 1)
    except (OSError, ValueError) as error:
        reason = (error.strerror or str(error)) if isinstance(error, OSError) else str(error)
        return name, Staged(None, (Fault("FB112", f"the file can't be opened: {reason.lower()}", here),))
    if len(content) > largest:
        said = f"the file is larger than the {largest} bytes allowed"
        return name, Staged(None, (Fault("FB102", said, here, help="split the file"),))
    return name, Staged(content)


def _is_a_file(path: str | PathLike[str]) -> None:
    # A pipe may keep its reader waiting for ever, and a device may never end.
    mode = os.stat(path).st_mode
    if not (stat.S_ISREG(mode) or stat.S_ISDIR(mode)):
        raise OSError(errno.EINVAL, "it is a pipe or a device, and no file")


def read_checked(
    source: Source,
    schema_name: str,
    *,
    in_full: bool = False,
    whole: Callable[[Tree, str], Staged[Tree]] | None = None,
    widened: Callable[[Tree, Schema], Schema] | None = None,
) -> tuple[str, bytes, Staged[Tree]]:
    """The file's name, content and tree, with every way in which the tree is not as the schema asks.

    The tree is there whenever the file is sound YAML, so that what it holds can be looked at further.
    in_full: ask the full validator even where the quick walk finds nothing.
    whole: the tree with what it stands on in other files; without it, it stands alone.
    widened: the schema with what the file itself adds to it.
    """
    name, read = read_bytes(source)
    if read.value is None:
        return name, b"", Staged(None, read.faults)
    tree = read_tree(read.value, name)
    if tree.value is not None and whole is not None:
        tree = whole(tree.value, name)
    schema = load_schema(schema_name)
    if tree.value is None:
        return name, read.value, Staged(None, tuple(_begun_as(fault, schema) for fault in tree.faults))
    faults = schema_faults(tree.value, widened(tree.value, schema) if widened else schema, in_full=in_full)
    return name, read.value, Staged(tree.value, in_reading_order((*tree.faults, *faults)))


def _begun_as(fault: Fault, schema: Schema) -> Fault:
    """Of an empty file, with how one of its kind begins."""
    return fault._replace(help=f"begin it with `{schema['required'][0]}: 1`") if fault.code == "FB109" else fault
