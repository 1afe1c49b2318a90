"""Calls of every verb with files by the schemas: half of them sound, half with slips, and what each call promises.

A call is sound where nothing in it was spoiled: choices and bodies inside their ranges, a workroom with words and examples
out of its schema, a record near the numbers of the very garment, strips that grow with their marks. Slips are those of
`mutate.py`, in one of the files of the call.

Most garments are small ones, and verbs that answer fast are called more often than those that plan or write: what a call
finds hangs on what is in its files, and a hundred thousand calls must come to an end.
"""

from __future__ import annotations

import contextlib
import io
import json
import random
import unicodedata
from collections.abc import Callable, Mapping
from itertools import pairwise
from pathlib import Path
from typing import Any, NamedTuple

import yaml
from furbelow.diagnose.codes import CODES
from furbelow.verbs.command import run

from tests.demos.demos import NAMES
from tests.fuzz.garments import Garment, garment_at_random, schema, spec_files, texts
from tests.fuzz.mutate import TROUBLE, demos, formula, mutant, random_file

PLANNED = ("make", "cutting", "fit", "amend", "compare", "preview")  # verbs whose time is that of the planner


class Call(NamedTuple):
    """Arguments after the verb's name, and the files that they name, by their names."""

    verb: str
    arguments: tuple[str, ...]
    files: Mapping[str, bytes]
    sound: bool


def call(luck: random.Random) -> Call:
    """Any call of any verb."""
    sound = luck.random() < 0.6  # some of these are refused all the same: a body that the garment can't be made for
    verb = luck.choices(tuple(_CALLS), [each for _, each in _CALLS.values()])[0]
    arguments, files = _CALLS[verb][0](luck, garment_at_random(luck))
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
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
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
    asked = ("--format", "json") in pairwise(made.arguments)
    if asked and "--" not in made.arguments and answer.getvalue():
        json.loads(answer.getvalue())
    return code, printed


def _who(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    body = garment.body
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
    return arguments, {**files, **spec_files(luck, garment)}


def _workroom(luck: random.Random) -> dict[str, Any]:
    room: dict[str, Any] = {"workroom": 1}
    for key, rule in schema("workroom")["properties"].items():
        if key in ("workroom", "language", "most joins", "most sections") or luck.random() < 0.6:
            continue
        words = [word for word in rule.get("enum", rule["examples"]) if not isinstance(word, bool)]
        room[key] = luck.choice(words)
    return room


def _check(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    arguments, files = _body(luck, garment)
    strict = ["--strict"] if luck.random() < 0.1 else []
    return ["spec.yaml", *arguments, *strict, "--format", luck.choice(["text", "json", "sarif"])], files


def _limits(luck: random.Random, garment: Garment) -> list[str]:
    """How the cutter may join and lay: of all cloths, or of one."""
    limits = []
    for option in ("--most-joins", "--most-sections"):
        if luck.random() < 0.2:
            count = luck.randrange(1, 5)
            limits += [option, f"{garment.amounts[0]}={count}" if luck.random() < 0.5 else str(count)]
    return limits


def _cutting(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    arguments, files = _body(luck, garment)
    return ["spec.yaml", *arguments, *_limits(luck, garment), "--format", luck.choice(["text", "json"])], files


def _make(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    arguments, files = _body(luck, garment)
    form = luck.choice(["text", "json"])
    for option in ("--reasons", "--no-measures", "--recut", "--dismiss", "--demonstration"):
        arguments += [option] if luck.random() < 0.15 else []
    arguments += _limits(luck, garment)
    return ["spec.yaml", *arguments, "--no-pdf", "--workers", "1", "--replace", "--out", "out", "--format", form], files


def _why(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    arguments, files = _body(luck, garment)
    form = luck.choice(["text", "json", "markdown"])
    bought = ["time", "weight", *garment.amounts]
    name = luck.choice(garment.names) if luck.random() < 0.9 else luck.choice(bought)
    return ["spec.yaml", name, *arguments, "--format", form], files


def _fit(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    files = spec_files(luck, garment)
    name = luck.choice(garment.choices)[0] if garment.choices else "layers"
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
    return ["spec.yaml", *asked], {**spec_files(luck, garment), "record.yaml": yaml.safe_dump(record).encode()}


def _compare(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    asked = ["--size", garment.size, "--format", luck.choice(["text", "json"])]
    if garment.choices:
        name, value = luck.choice(garment.choices)
        asked += ["--set-second", f"{name}={value}"]
    return ["spec.yaml", *asked], spec_files(luck, garment)


def _swatch(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    left, strips = 50.0, []
    for mark in range(2, luck.randrange(4, 9)):
        left -= luck.uniform(1, 5)
        strips.append({"mark": mark, "stitch": "3 mm", "flat": "50 cm", "gathered": f"{left:.1f} cm"})
    told: dict[str, Any] = {"swatch": 1, "cloths": {"net": strips}}
    if luck.random() < 0.3:
        hung = [{"overhang": f"{luck.randrange(80, 90)} mm", "drop": f"{luck.randrange(50, 58)} mm"} for _ in range(3)]
        told["stiffness"] = {"net": hung}
    swatch = yaml.safe_dump(told).encode()
    room = yaml.safe_dump(_workroom(luck), allow_unicode=True).encode()
    asked = ["strips.yaml", "--format", luck.choice(["text", "json"])]
    if luck.random() < 0.3:
        asked += ["--cloth", "net", "--into", "room.yaml"]
    return asked, {"strips.yaml": swatch, "room.yaml": room}


def _form(luck: random.Random) -> list[str]:
    return ["--format", luck.choice(["text", "json"])]


def _fmt(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    room = yaml.safe_dump(_workroom(luck), allow_unicode=True).encode()
    files = {"room.yaml": room} if luck.random() < 0.5 else spec_files(luck, garment)
    return [*files, *(["--check"] if luck.random() < 0.2 else []), *_form(luck)], files


def _explain(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    code = [luck.choice(tuple(CODES))] if luck.random() < 0.9 else []
    return [*code, *_form(luck)], {}


def _words(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    kind = luck.randrange(8)
    if kind == 0:
        return _form(luck), {}
    if kind < 4:
        return ["--list", luck.choice(("pages", "gather", "cutting", "names")), *_form(luck)], {}
    return ["--check", "mine", *_form(luck)], {"mine/en/own.ftl": b"page-tools = What you need\n"}


def _start(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    demo = ["--from", luck.choice(NAMES)] if luck.random() < 0.5 else []
    return [f"{luck.choice(('tansy', 'Yarrow skirt', 'Ärmel', 'no'))} {luck.randrange(10**6)}", *demo, *_form(luck)], {}


# How a call of the verb is made, and how many of a hundred are of that verb.
_CALLS: Mapping[str, tuple[Callable[[random.Random, Garment], tuple[list[str], dict[str, bytes]]], float]] = {
    "check": (_check, 26),
    "cutting": (_cutting, 5),
    "make": (_make, 1),
    "why": (_why, 20),
    "fit": (_fit, 0.5),
    "amend": (_amend, 4),
    "compare": (_compare, 1),
    "swatch": (_swatch, 15),
    "words": (_words, 6),
    "explain-code": (_explain, 10),
    "start": (_start, 6),
    "fmt": (_fmt, 5),
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
        return mutant(luck, texts())
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
