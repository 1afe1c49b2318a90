"""Calls of every verb with files by the schemas: half of them sound, half with slips, and what each call promises.

A call is sound where nothing in it was spoiled: choices and bodies inside their ranges, a workroom with words and examples
out of its schema, a record near the numbers of the very garment, strips that grow with their marks. Slips are those of
`mutate.py`, in one of the files of the call.
"""

from __future__ import annotations

import contextlib
import io
import json
import random
import unicodedata
from collections.abc import Callable, Mapping
from fractions import Fraction
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple

import yaml
from furbelow.order.chain import prove
from furbelow.verbs.command import run

from tests.demos.demos import order
from tests.fuzz.mutate import TROUBLE, demos, formula, mutant, random_file

SCHEMAS = Path(__file__).parents[2] / "schemas"
SPECS = Path(__file__).parents[2] / "specs"
PLANNED = ("make", "cutting", "fit", "amend", "compare", "preview")  # verbs whose time is that of the planner

OWN = """
techniques:
  shell edge:
    about: Draw a hem into small shells by hand.
    works on: edge
    lengths: {turn: 6 mm, shell: 1 cm}
    takes: [turn, turn]
    leaves: hemmed
    stitch: {type: 101, length: 3 mm, rows: 2}
    set up: hand
    do:
      - Turn {edge} twice by {turn}.
      - say: Sew over the turn every {shell}, {length} in all.
        check: The shells are {shell} wide.
"""


class Call(NamedTuple):
    """Arguments after the verb's name, and the files that they name, by their names."""

    verb: str
    arguments: tuple[str, ...]
    files: Mapping[str, bytes]
    sound: bool


class Garment(NamedTuple):
    name: str
    size: str
    choices: tuple[tuple[str, str], ...]  # with a value inside its range
    amounts: tuple[str, ...]
    names: tuple[str, ...]  # of numbers
    measured: tuple[tuple[str, str, Fraction], ...]  # kind, name, mm


def call(luck: random.Random) -> Call:
    """Any call of any verb."""
    sound = luck.random() < 0.6  # some of these are refused all the same: a body that the garment can't be made for
    verb = luck.choice(tuple(_CALLS))
    arguments, files = _CALLS[verb](luck, _garments()[luck.randrange(len(_garments()))])
    if not sound:
        arguments, files = _spoiled(luck, list(arguments), dict(files))
    return Call(verb, tuple(arguments), files, sound)


def kept(luck: random.Random, folder: Path) -> None:
    """Harm to the cutting plans of an earlier run, its digests sometimes redone."""
    from furbelow.s4_cut.plan_cache import _digest

    file = folder / "plans.json"
    told = json.loads(file.read_bytes())
    for entry in told["plans"].values():
        node: Any = entry["plan"]
        for _ in range(luck.randrange(1, 7)):
            keys = list(node) if isinstance(node, dict) else list(range(len(node)))
            if not keys:
                break
            key = luck.choice(keys)
            if isinstance(node[key], dict | list) and luck.random() < 0.8:
                node = node[key]
                continue
            node[key] = luck.choice([None, -1, 0, 1, True, "1/2", "0", "x", [], {}, "99999", node[key]])
            break
        if luck.random() < 0.8:
            entry["digest"] = _digest(entry["plan"])
    file.write_text(json.dumps(told), encoding="utf-8")


def called(made: Call, folder: Path) -> tuple[int, str]:
    """The exit code and all that was printed. Raises AssertionError where a promise is broken."""
    for name, content in made.files.items():
        (folder / name).write_bytes(content)
    answer, told = io.StringIO(), io.StringIO()
    with contextlib.chdir(folder), contextlib.redirect_stdout(answer), contextlib.redirect_stderr(told):
        try:
            code = run([made.verb, *made.arguments, "--debug"])
        except SystemExit as end:  # argparse has told what is wrong with the call
            code = int(str(end.code))
    printed = answer.getvalue() + told.getvalue()
    assert code in (0, 1, 2), f"exit code {code}"
    assert printed.strip(), f"exit code {code} without a word"
    steering = {
        sign for sign in printed if sign not in "\n\t" and unicodedata.category(sign) in ("Cc", "Cf", "Zl", "Zp")
    }
    assert not steering, f"printed {steering}"
    # What stands behind `--` is a file, whatever it is called.
    if "json" in made.arguments and "--" not in made.arguments and answer.getvalue():
        json.loads(answer.getvalue())
    return code, printed


@cache
def _garments() -> tuple[Garment, ...]:
    found = []
    for path in sorted(SPECS.glob("*.yaml")):
        tree = yaml.load(path.read_text(encoding="utf-8"), yaml.CBaseLoader)
        for size in tree["sizes"]:
            proved = prove(order(path.stem, size)).value
            assert proved is not None
            solved = proved.solved
            choices = tuple(
                (name, solved.values[name].value.show(solved.spec.system))
                for name in solved.spec.choices
                if f"{name} to" in solved.values
            )
            measured = [("cut", name, piece.cut_depth) for name, piece in solved.pieces.items()]
            measured += [("ring", name, piece.length) for name, piece in solved.pieces.items()]
            # What an edge measures once it is gathered; later steps take it into a seam.
            gathered = (edge for done in proved.run.performed for edge in done.after.edges.values() if edge.gathered)
            measured += [("edge", name, length) for name, length in {e.name: e.set_length for e in gathered}.items()]
            numbers = tuple(name for name, value in solved.values.items() if value.origin != "rule" and " " not in name)
            found.append(Garment(path.stem, size, choices, tuple(tree["materials"]), numbers, tuple(measured)))
    return tuple(found)


def _spec(luck: random.Random, garment: Garment) -> dict[str, bytes]:
    text = (SPECS / f"{garment.name}.yaml").read_text(encoding="utf-8")
    if luck.random() < 0.2:
        text += OWN
    return {"spec.yaml": text.encode()}


def _who(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    sizes = yaml.load((SPECS / f"{garment.name}.yaml").read_text(encoding="utf-8"), yaml.CBaseLoader)["sizes"]
    body = sizes[garment.size]
    kind = luck.randrange(6)
    if kind == 0:
        rows = [f"{name};" + ";".join(body.values()) for name in ("Ada", "Bo", "日本")[: luck.randrange(1, 4)]]
        return ["--wearer", "class.csv"], {"class.csv": "\n".join([";".join(["wearer", *body]), *rows]).encode()}
    if kind == 1:
        return ["--wearer", "bo.yaml"], {"bo.yaml": yaml.safe_dump({"wearer": "Bo", "body": dict(body)}).encode()}
    return ["--size", garment.size], {}


def _body(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    """Whom it is for, its choices and its workroom."""
    arguments, files = _who(luck, garment)
    for name, value in garment.choices:
        if luck.random() < 0.3:
            arguments += ["--set", f"{name}={value}"]
    if luck.random() < 0.4:
        files["room.yaml"] = yaml.safe_dump(_workroom(luck), allow_unicode=True).encode()
        arguments += ["--workroom", "room.yaml"]
    return arguments, {**files, **_spec(luck, garment)}


@cache
def _workroom_keys() -> Mapping[str, Any]:
    keys: Mapping[str, Any] = json.loads((SCHEMAS / "workroom.schema.json").read_text(encoding="utf-8"))["properties"]
    return keys


def _workroom(luck: random.Random) -> dict[str, Any]:
    room: dict[str, Any] = {"workroom": 1}
    for key, rule in _workroom_keys().items():
        if key in ("workroom", "language", "most joins", "most sections") or luck.random() < 0.6:
            continue
        words = [word for word in rule.get("enum", rule["examples"]) if not isinstance(word, bool)]
        room[key] = luck.choice(words)
    return room


def _check(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    arguments, files = _body(luck, garment)
    return ["spec.yaml", *arguments, "--format", luck.choice(["text", "json", "sarif"])], files


def _cutting(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    arguments, files = _body(luck, garment)
    return ["spec.yaml", *arguments, "--format", luck.choice(["text", "json"])], files


def _make(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    arguments, files = _body(luck, garment)
    form = luck.choice(["text", "json"])
    return ["spec.yaml", *arguments, "--no-pdf", "--replace", "--out", "out", "--format", form], files


def _why(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    arguments, files = _body(luck, garment)
    form = luck.choice(["text", "json", "markdown"])
    return ["spec.yaml", luck.choice(garment.names), *arguments, "--format", form], files


def _fit(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    files = _spec(luck, garment)
    name, _ = luck.choice(garment.choices)
    cloth = garment.amounts[0]
    limit = luck.choice(
        [f"({cloth} + {cloth}) <= 9 m", f"{cloth} <= {luck.randrange(1, 9)} m", "hours <= 6", "(cost <= 30 EUR)"]
    )
    aim = luck.choice(["", "least hours", f"least {name}"])
    asked = ["--size", garment.size, "--free", name, "--so-that", limit, "--for", aim]
    return ["spec.yaml", *asked, "--format", luck.choice(["text", "json"])], files


def _amend(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    """A record of one or two things as they come out in a room: a few mm from what was worked out."""
    rows = []
    for kind, name, length in luck.sample(garment.measured, luck.randrange(1, 3)):
        off = luck.choice([0, 0, 1, -1, 2, -2, 5, -5])
        size = "depth" if kind == "cut" else "length"
        rows.append({kind: name, size: f"{max(int(length) + off, 1)} mm"})
    cloth = garment.amounts[0]
    came = [{"width": "150 cm"}, {"length": "9 m"}, {"shrinkage": f"{luck.randrange(0, 9)}%"}]
    if luck.random() < 0.2:
        rows.insert(0, {"cloth": cloth, **luck.choice(came)})
    if luck.random() < 0.2:
        rows.append({"elastic": "elastic", "length": f"{luck.randrange(55, 70)} cm"})
    record = {"record": 1, "measured": rows}
    asked = ["--size", garment.size, "--measured", "record.yaml", "--format", luck.choice(["text", "json"])]
    return ["spec.yaml", *asked], {**_spec(luck, garment), "record.yaml": yaml.safe_dump(record).encode()}


def _compare(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    name, value = luck.choice(garment.choices)
    asked = ["--size", garment.size, "--set-second", f"{name}={value}", "--format", luck.choice(["text", "json"])]
    return ["spec.yaml", *asked], _spec(luck, garment)


def _swatch(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    left, strips = 50.0, []
    for mark in range(2, luck.randrange(4, 9)):
        left -= luck.uniform(1, 5)
        strips.append({"mark": mark, "stitch": "3 mm", "flat": "50 cm", "gathered": f"{left:.1f} cm"})
    swatch = yaml.safe_dump({"swatch": 1, "cloths": {"net": strips}}).encode()
    room = yaml.safe_dump(_workroom(luck), allow_unicode=True).encode()
    asked = ["strips.yaml", "--format", luck.choice(["text", "json"])]
    if luck.random() < 0.3:
        asked += ["--cloth", "net", "--into", "room.yaml"]
    return asked, {"strips.yaml": swatch, "room.yaml": room}


def _fmt(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    return ["spec.yaml", *(["--check"] if luck.random() < 0.5 else [])], _spec(luck, garment)


def _explain(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    return [f"FB{luck.randrange(100, 130)}"], {}


_CALLS: Mapping[str, Callable[[random.Random, Garment], tuple[list[str], dict[str, bytes]]]] = {
    "check": _check,
    "cutting": _cutting,
    "make": _make,
    "why": _why,
    "fit": _fit,
    "amend": _amend,
    "compare": _compare,
    "swatch": _swatch,
    "explain-code": _explain,
    "fmt": _fmt,
}


def _spoiled(luck: random.Random, arguments: list[str], files: dict[str, bytes]) -> tuple[list[str], dict[str, bytes]]:
    """The call with a slip in one of its files or arguments."""
    if files and luck.random() < 0.75:
        name = luck.choice(sorted(files))
        files[name] = _spoiled_file(luck, name, files[name])
    elif len(arguments) > 1:
        at = luck.randrange(1, len(arguments))
        arguments[at] = luck.choice(
            [
                luck.choice(TROUBLE)[:200].replace("\0", ""),
                formula(luck),
                f"fullness={formula(luck)}",
                "spec.yaml",
                "",
                "--",
            ]
        )
    return arguments, files


def _spoiled_file(luck: random.Random, name: str, content: bytes) -> bytes:
    if name == "spec.yaml":
        return mutant(luck)
    kind = luck.randrange(5)
    if kind == 0:
        return random_file(luck)
    if kind == 1:
        return luck.choice(demos()).encode()
    words = content.decode("utf-8").split(" ")
    at = luck.randrange(len(words))
    words[at] = luck.choice(
        [luck.choice(TROUBLE), formula(luck), words[luck.randrange(len(words))], "", "\u202e\u200b"]
    )
    return " ".join(words).encode("utf-8", "surrogatepass")
