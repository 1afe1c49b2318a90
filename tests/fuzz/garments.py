"""Small sound garments, with techniques of their own, and laid over another file."""

from __future__ import annotations

import json
import random
from collections.abc import Mapping
from fractions import Fraction
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple

import yaml
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.verbs.start import starting_spec

SCHEMAS = Path(__file__).parents[2] / "schemas"
SPECS = Path(__file__).parents[2] / "specs"
UNUSUAL = Path(__file__).parents[1] / "mistakes"
SMALL = 3_000  # bytes of a spec: such ones come most often


class Garment(NamedTuple):
    """A garment that is sound for one of its sizes."""

    text: str
    size: str
    body: Mapping[str, str]
    choices: tuple[tuple[str, str], ...]  # with a value inside its range
    amounts: tuple[str, ...]
    names: tuple[str, ...]  # of numbers
    measured: tuple[tuple[str, str, Fraction], ...]  # kind, name, mm
    sizes: tuple[str, ...]


@cache
def schema(name: str) -> Mapping[str, Any]:
    schema: Mapping[str, Any] = json.loads((SCHEMAS / f"{name}.schema.json").read_text(encoding="utf-8"))
    return schema


@cache
def texts() -> tuple[str, ...]:
    """The small specs first."""
    paths = [*SPECS.glob("*.yaml"), *(UNUSUAL / "sound").glob("*.yaml"), *(UNUSUAL / "garments").glob("*.yaml")]
    texts = [path.read_text(encoding="utf-8") for path in sorted(paths)]
    return tuple(sorted([*texts, starting_spec("tansy", "tansy.yaml")], key=len))


def garment_at_random(luck: random.Random) -> Garment:
    every = texts()
    small = sum(len(text) < SMALL for text in every)
    found = None
    while found is None:
        found = _sized(luck.randrange(small if luck.random() < 0.9 else len(every)), luck.randrange(6))
    return found


@cache
def _sized(number: int, size: int) -> Garment | None:
    """One of the specs for one of its sizes, counted round; None where it isn't sound at every table."""
    text = texts()[number]
    spec = read_spec(("spec.yaml", text.encode())).value
    if spec is None or not spec.sizes:
        return None
    name = list(spec.sizes)[size % len(spec.sizes)]
    proved = prove(Order(spec, f"size {name}", spec.sizes[name], {}, Workroom())).value
    if proved is None:
        return None
    solved = proved.solved
    body = {measure: written.text for measure, written in spec.sizes[name].items()}
    choices = tuple(
        (choice, solved.values[choice].value.show(spec.system))
        for choice in spec.choices
        if f"{choice} to" in solved.values
    )
    measured = [("cut", each, piece.cut_depth) for each, piece in solved.pieces.items()]
    measured += [("ring", each, piece.length) for each, piece in solved.pieces.items()]
    # What an edge measures once it is gathered; later steps take it into a seam.
    gathered = (edge for done in proved.run.performed for edge in done.after.edges.values() if edge.gathered)
    measured += [("edge", edge, length) for edge, length in {e.name: e.set_length for e in gathered}.items()]
    numbers = tuple(each for each, value in solved.values.items() if value.origin != "rule" and " " not in each)
    return Garment(text, name, body, choices, tuple(spec.materials), numbers, tuple(measured), tuple(spec.sizes))


def spec_files(luck: random.Random, garment: Garment) -> dict[str, bytes]:
    """The spec, now and then with a technique of its own that is used, or laid over another file."""
    kind = luck.randrange(8)
    if kind == 0:
        return {"spec.yaml": _with_own(luck, garment.text).encode()}
    if kind == 1 and garment.text.count("\nbased on:") == 0:
        over = f"furbelow: 1\ntitle: Another\nbased on: base.yaml\nrounding: {luck.choice(['1 mm', '5 mm', '1 cm'])}\n"
        return {"spec.yaml": over.encode(), "base.yaml": garment.text.encode()}
    return {"spec.yaml": garment.text.encode()}


def _with_own(luck: random.Random, text: str) -> str:
    """A technique by its schema, at an edge that the garment hems or at a seam that it neatens where there is one."""
    tree = yaml.load(text, yaml.CBaseLoader)
    tree.setdefault("techniques", {})["shell edge"] = _own(luck)
    if (at := _hemmed(tree)) is not None and luck.random() < 0.7:
        (done,) = tree["steps"][at].values()
        tree["steps"][at] = {"shell edge": {"edge": done["edge"]}}
    dumped: str = yaml.dump(tree, Dumper=yaml.CSafeDumper, sort_keys=False, allow_unicode=True, width=10_000)
    return dumped


def _hemmed(tree: Any) -> int | None:
    steps = tree.get("steps")
    steps = steps if isinstance(steps, list) else []
    return next((at for at, step in enumerate(steps) if isinstance(step, dict) and "narrow hem" in step), None)


def _own(luck: random.Random) -> dict[str, Any]:
    made: dict[str, Any] = {
        "about": "Draw a hem into small shells by hand.",
        "works on": "edge",
        "lengths": {"turn": f"{luck.randrange(3, 12)} mm", "shell": "1 cm"},
        "takes": ["turn"] * luck.randrange(1, 3),
        "leaves": "hemmed",
        "do": ["Turn {edge} twice by {turn}."],
    }
    keys = schema("garment")["properties"]["techniques"]["additionalProperties"]["properties"]
    if luck.random() < 0.7:
        rows = keys["stitch"]["properties"]
        made["stitch"] = {"type": luck.choice(rows["type"]["enum"]), "length": "3 mm", "rows": luck.randrange(1, 4)}
    if luck.random() < 0.7:
        made["set up"] = luck.choice(keys["set up"]["enum"])
    if luck.random() < 0.3:
        made["cautions"] = {luck.choice(list(keys["cautions"]["properties"])): "Keep your fingers clear."}
    if luck.random() < 0.5:
        made["do"].append({"say": "Sew over the turn every {shell}, {length} in all.", "check": "It is {shell} wide."})
    return made
