"""`furbelow fmt`: lay files out in one way, comments kept."""

from __future__ import annotations

import argparse
import sys
from typing import TYPE_CHECKING

from furbelow.named import NamedTuple
from furbelow.order.unread import Unread
from furbelow.verbs.exits import DONE, SPEC_AT_FAULT

if TYPE_CHECKING:
    from furbelow.verbs.reading import Reader

_EPILOG = """\
examples, after `furbelow start larkspur --from larkspur`:
  furbelow fmt larkspur.yaml
  furbelow fmt class.yaml workroom.yaml

A file in which that would change a value or lose a comment is left as it is. It needs furbelow[fmt].
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser(
        "fmt", parents=parents[:1], help="lay specs and other files out in one way, comments kept", epilog=_EPILOG
    )
    parser.add_argument("files", metavar="FILE", nargs="+", help="one or several; `-` is standard input, told anew")
    parser.add_argument("--check", action="store_true", help="write nothing, and fail where a file would change")
    parser.add_argument("--format", choices=("text", "json"), default="text", help="how the answer is told")
    parser.set_defaults(verb=_fmt)


def _fmt(options: argparse.Namespace) -> int:
    from importlib.util import find_spec

    from furbelow.verbs.reading import Reader

    if find_spec("ruamel") is None or find_spec("ruamel.yaml") is None:
        raise Unread(by_call=True, said="fmt needs more than furbelow: pip install 'furbelow[fmt]'")
    reader = Reader(options)
    done = []
    for path in options.files:
        one = _one(reader, path, check=options.check)
        done.append(one)
        if options.format == "text" and one.how != AT_FAULT:
            print(f"{path}: {one.how}" if one.text is None else one.text, end="\n" if one.text is None else "")
    if options.format == "json":
        told = [
            {"file": path, "how": one.how, **({} if one.text is None else {"text": one.text})}
            for path, one in zip(options.files, done, strict=True)
        ]
        reader.print_json({"files": told})
    return SPEC_AT_FAULT if any(one.how in (AT_FAULT, WOULD_CHANGE) for one in done) else DONE


AS_IT_SHOULD_BE, CHANGED = "as it should be", "laid out anew"
AT_FAULT, WOULD_CHANGE = "at fault", "would be laid out anew"


class Done(NamedTuple):
    """How a file was found or left. text: standard input, laid out anew."""

    how: str
    text: str | None = None


def _one(reader: Reader, path: str, *, check: bool) -> Done:
    from pathlib import Path

    from furbelow.diagnose.fault import Fault
    from furbelow.order.read_order import STANDARD_INPUT
    from furbelow.s1_read.laid_out import laid_out
    from furbelow.s1_read.source import read_bytes
    from furbelow.s1_read.yaml_tree import LARGEST_FILE
    from furbelow.s6_write.safe_writing import write_over

    given = path == STANDARD_INPUT
    name, content = read_bytes((path, sys.stdin.buffer.read(LARGEST_FILE + 1)) if given else path)
    if content.value is None:
        reader.tell(content.faults)
        return Done(AT_FAULT)
    reader.sources[path] = content.value.decode("utf-8-sig", errors="replace")
    staged = laid_out(content.value, name)
    if staged.value is None:
        reader.tell(staged.faults)
        return Done(AT_FAULT)
    same = staged.value == content.value
    if given and not check:
        return Done(AS_IT_SHOULD_BE if same else CHANGED, staged.value.decode("utf-8"))
    if same:
        return Done(AS_IT_SHOULD_BE)
    if check:
        return Done(WOULD_CHANGE)
    try:
        write_over(Path(path).resolve(), staged.value)
    except OSError as error:
        reason = (error.strerror or type(error).__name__).lower()
        reader.tell([Fault("FB112", f"{path} can't be written: {reason}; it is as it was")])
        return Done(AT_FAULT)
    return Done(CHANGED)
