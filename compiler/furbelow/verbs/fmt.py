"""`furbelow fmt`: lay files out in one way, comments kept."""

from __future__ import annotations

import argparse
import sys
from typing import TYPE_CHECKING

from furbelow.verbs.exits import DONE, SPEC_AT_FAULT, WRONG_USE

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
    parser.set_defaults(verb=_fmt)


def _fmt(options: argparse.Namespace) -> int:
    from importlib.util import find_spec

    from furbelow.verbs.reading import Reader

    if find_spec("ruamel") is None or find_spec("ruamel.yaml") is None:
        print("furbelow: fmt needs more than furbelow: pip install 'furbelow[fmt]'", file=sys.stderr)
        return WRONG_USE
    reader = Reader(options)
    return max(_one(reader, path, check=options.check) for path in options.files)


def _one(reader: Reader, path: str, *, check: bool) -> int:
    from pathlib import Path

    from furbelow.diagnose.fault import Fault
    from furbelow.order.read_order import STANDARD_INPUT
    from furbelow.s1_read.laid_out import laid_out
    from furbelow.s1_read.source import read_bytes
    from furbelow.s1_read.yaml_tree import LARGEST_FILE
    from furbelow.s6_write.folder import write_over

    given = path == STANDARD_INPUT
    name, content = read_bytes((path, sys.stdin.buffer.read(LARGEST_FILE + 1)) if given else path)
    if content.value is None:
        reader.tell(content.faults)
        return SPEC_AT_FAULT
    reader.sources[path] = content.value.decode("utf-8-sig", errors="replace")
    staged = laid_out(content.value, name)
    if staged.value is None:
        reader.tell(staged.faults)
        return SPEC_AT_FAULT
    if given and not check:
        print(staged.value.decode("utf-8"), end="")
        return DONE
    if staged.value == content.value:
        print(f"{path}: as it should be")
        return DONE
    if check:
        print(f"{path}: would be laid out anew")
        return SPEC_AT_FAULT
    try:
        write_over(Path(path).resolve(), staged.value)
    except OSError as error:
        reason = (error.strerror or type(error).__name__).lower()
        reader.tell([Fault("FB112", f"{path} can't be written: {reason}; it is as it was")])
        return SPEC_AT_FAULT
    print(f"{path}: laid out anew")
    return DONE
