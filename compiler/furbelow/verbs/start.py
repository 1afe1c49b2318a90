"""`furbelow start`: a small sound spec to begin with."""

from __future__ import annotations

import argparse
import re
import sys
from pathlib import Path

from furbelow.verbs.exits import DONE, WRONG_USE

_PLAIN = re.compile(r"[\w][\w -]{0,60}")
# Names that stand for devices on some systems. Source: Microsoft, "Naming Files, Paths, and Namespaces".
_DEVICE = re.compile(r"(?i)con|prn|aux|nul|com[0-9]|lpt[0-9]")


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser("start", parents=parents[:1], help="write a small sound spec to begin with")
    parser.add_argument("name", metavar="NAME", help="the garment; the spec is written to NAME.yaml in this folder")
    parser.set_defaults(verb=_start)


def _start(options: argparse.Namespace) -> int:
    name = options.name.removesuffix(".yaml").strip()
    if not _PLAIN.fullmatch(name) or _DEVICE.fullmatch(name):
        print(
            f"furbelow: {options.name[:60]!r} can't name a spec; use letters, digits, spaces, `-` and `_`,"
            " and go into the folder where it shall lie",
            file=sys.stderr,
        )
        return WRONG_USE
    path = Path(f"{name.replace(' ', '-').lower()}.yaml")
    try:
        # "x": a spec that stands there, or a link of that name, is never written over.
        with path.open("x", encoding="utf-8", newline="\n") as file:
            file.write(starting_spec(name, path.name))
    except FileExistsError:
        print(f"furbelow: {path} is there already and was kept; choose another name", file=sys.stderr)
        return WRONG_USE
    except OSError as error:
        print(f"furbelow: {path} can't be written: {(error.strerror or str(error)).lower()}", file=sys.stderr)
        return WRONG_USE
    print(f"{path}: written; next: furbelow check {path}")
    return DONE


def starting_spec(name: str, file: str) -> str:
    """The text of a new spec. file: its name, for the commands in its comments."""
    from furbelow import resources

    title = re.sub(r"[-_]+", " ", name).strip()
    schema = resources.schema("garment.schema.json").resolve().as_uri()
    text = resources.template("start.yaml").read_text(encoding="utf-8")
    # Quoted: a garment called `no` or `12` is a title all the same.
    return text.replace("SCHEMA", schema).replace("TITLE", f'"{title[:1].upper()}{title[1:]}"').replace("FILE", file)
