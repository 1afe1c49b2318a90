"""`furbelow start`: a small sound spec to begin with."""

from __future__ import annotations

import argparse
import re
from pathlib import Path

from furbelow.order.unread import Unread
from furbelow.verbs.exits import DONE

_PLAIN = re.compile(r"[\w][\w -]{0,60}")
# Names that stand for devices on some systems. Source: Microsoft, "Naming Files, Paths, and Namespaces".
_DEVICE = re.compile(r"(?i)con|prn|aux|nul|com[0-9]|lpt[0-9]")

_EPILOG = """\
examples:
  furbelow start tansy-skirt
  furbelow start larkspur --from larkspur
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser(
        "start",
        parents=parents[:1],
        help="write a small sound spec to begin with, or a demo, and what is made with it",
        epilog=_EPILOG,
    )
    parser.add_argument("name", metavar="NAME", help="the garment; the spec is written to NAME.yaml in this folder")
    parser.add_argument("--from", metavar="DEMO", dest="demo", help="begin with a demo, such as foxglove or primrose")
    parser.add_argument("--format", choices=("text", "json"), default="text", help="how the answer is told")
    parser.set_defaults(verb=_start)


def _start(options: argparse.Namespace) -> int:
    from furbelow import resources
    from furbelow.diagnose.nearest import nearest

    name = options.name.removesuffix(".yaml").strip()
    if not _PLAIN.fullmatch(name) or _DEVICE.fullmatch(name):
        said = f"{options.name[:60]!r} can't name a spec; use letters, digits, spaces, `-` and `_`,"
        raise Unread(by_call=True, said=f"{said} and go into the folder where it shall lie")
    demos = [path.stem for path in sorted(resources.demo("").glob("*.yaml"))]
    if options.demo is not None and options.demo not in demos:
        near = nearest(options.demo, demos)
        mend = f"did you mean {near[0]}?" if near else f"the demos are {', '.join(demos)}"
        raise Unread(by_call=True, said=f"no demo is called {options.demo[:60]!r}; {mend}")
    path = Path(f"{name.replace(' ', '-').lower()}.yaml")
    spec = starting_spec(name, path.name) if options.demo is None else _demo(f"{options.demo}.yaml")
    try:
        if not _written(path, spec):
            raise Unread(by_call=True, said=f"{path} is there already and was kept; choose another name")
        beside = _beside(options.demo)
        kept = [name for name, text in beside.items() if not _written(Path(name), text)]
    except OSError as error:
        said = f"{path} can't be written: {(error.strerror or str(error)).lower()}"
        raise Unread(by_call=True, said=said) from error
    if options.format == "json":
        from furbelow.verbs.reading import Reader

        written = [path.as_posix(), *(name for name in beside if name not in kept)]
        Reader(options).print_json({"written": written, "kept": kept})
        return DONE
    if kept:
        print(f"kept as they were: {', '.join(kept)}")
    places = dict.fromkeys(name.partition("/")[0] for name in beside if name not in kept)
    print(f"{path}: written{', beside it ' if places else ''}{', '.join(places)}; next: furbelow check {path}")
    return DONE


def _written(path: Path, text: str) -> bool:
    """Whether it is written; a file that stands there, or a link of that name, is never written over."""
    path.parent.mkdir(exist_ok=True)
    try:
        with path.open("x", encoding="utf-8", newline="\n") as file:
            try:
                file.write(text)
                file.flush()
            except OSError:
                path.unlink()  # a disk without room leaves no empty file
                raise
    except FileExistsError:
        return False
    return True


def _beside(demo: str | None) -> dict[str, str]:
    """What is made with the spec, by name: a class, a workroom, and the schemas that their first lines lead to."""
    from furbelow import resources

    schemas = ["garment", "library", "wearer", "workroom", "record", "swatch"]
    files = {
        f"schemas/{name}.schema.json": resources.schema(f"{name}.schema.json").read_text(encoding="utf-8")
        for name in schemas
    }
    files["workroom.yaml"] = _demo("workrooms/theatre.yaml")
    if demo is None:
        files["class.csv"] = resources.template("start-class.csv").read_text(encoding="utf-8")
    else:
        files["class.yaml"] = _demo("wearers/class.yaml")
    if demo == "larkspur":
        files |= {"record.yaml": _demo("records/larkspur-m.yaml"), "swatches.yaml": _demo("swatches/pleating.yaml")}
    return files


def _demo(name: str) -> str:
    """The demo file with the schema beside it, not above."""
    from furbelow import resources

    return re.sub(r"(?<=schema=)(\.\./)+", "", resources.demo(name).read_text(encoding="utf-8"), count=1)


def starting_spec(name: str, file: str) -> str:
    """The text of a new spec. file: its name, for the commands in its comments."""
    from furbelow import resources

    title = re.sub(r"[-_]+", " ", name).strip()
    # Quoted: a garment called `no` or `12` is a title all the same.
    put = {"TITLE": f'"{title[:1].upper()}{title[1:]}"', "FILE": file}
    text = resources.template("start.yaml").read_text(encoding="utf-8")
    return re.sub("TITLE|FILE", lambda found: put[found[0]], text)
