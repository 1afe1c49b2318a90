"""A file laid out in one way: an indent of two, one space where one will do, tables in columns; values and comments kept."""

from __future__ import annotations

import re
from io import StringIO

import yaml

from furbelow.diagnose.fault import Staged
from furbelow.s1_read.in_columns import in_columns
from furbelow.s1_read.yaml_tree import read_tree, to_plain

_COMMENT = re.compile(r"#.*")
_WIDEST = 1_000_000  # no line is broken that its maker did not break


def laid_out(content: bytes, file: str) -> Staged[bytes]:
    """The file anew; the same bytes where that would lose a comment or change a value.

    Fails: FB101 to FB111 for what is no file of ours. ModuleNotFoundError without `furbelow[fmt]`.
    """
    from ruamel.yaml import YAML
    from ruamel.yaml.error import YAMLError

    before = read_tree(content, file)
    if before.value is None:
        return Staged(None, before.faults)
    text = content.decode("utf-8-sig")
    writer = YAML()
    writer.preserve_quotes = True
    writer.width = _WIDEST
    writer.indent(mapping=2, sequence=4, offset=2)
    told = StringIO()
    try:
        writer.dump(writer.load(text), told)
    except (YAMLError, RecursionError, ValueError):  # it reads some files otherwise than we do
        return Staged(content)
    lines = (line.rstrip() for line in told.getvalue().split("\n"))
    anew = "\n".join(lines).rstrip("\n") + "\n"
    tidy = read_tree(anew, file)
    if tidy.value is None:
        return Staged(content)
    anew = in_columns(anew, tidy.value)
    after = read_tree(anew, file)
    kept = after.value is not None and to_plain(after.value) == to_plain(before.value)
    if not kept or _comments(anew) != _comments(text):
        return Staged(content)
    return Staged((anew.replace("\n", "\r\n") if "\r\n" in text else anew).encode())


def _comments(text: str) -> list[str]:
    """All comments, in whatever order, for two of them may come to one line. What stands behind a `#` in a block counts too."""
    between, at = [], 0
    for token in yaml.scan(text, yaml.CSafeLoader):
        if isinstance(token, yaml.ScalarToken) and token.style not in ("|", ">"):
            between.append(text[at : token.start_mark.index])
            at = token.end_mark.index
    return sorted(found.rstrip() for part in (*between, text[at:]) for found in _COMMENT.findall(part))
