"""How a call of each verb is made, with files by the schemas.

Most garments are small ones, and verbs that answer fast are called more often than those that plan or write: what a call
finds hangs on what is in its files, and a hundred thousand calls must come to an end.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Mapping
from typing import Any

import yaml
from furbelow.diagnose.codes import CODES

from tests.demos.demos import NAMES
from tests.fuzz.garments import Garment, garment_at_random, schema, spec_files
from tests.fuzz.sets import LANGUAGES, NAMED, class_file, roster, set_of_guides

Made = tuple[list[str], dict[str, bytes]]  # the arguments behind the verb, and the files; `-` is standard input


def _who(luck: random.Random, garment: Garment) -> Made:
    kind = luck.randrange(8)
    if kind == 0:
        return ["--wearer", "class.csv"], {"class.csv": roster(luck, garment, luck.randrange(1, 4))}
    if kind == 1:
        told = yaml.safe_dump({"wearer": "Bo", "body": dict(garment.body)})
        return ["--wearer", "bo.yaml"], {"bo.yaml": told.encode()}
    if kind == 2:
        only = ["--only", NAMED[1]] if luck.random() < 0.5 else []
        return ["--class", "class.yaml", *only], {"class.yaml": class_file(luck, garment, luck.randrange(2, 4))}
    return ["--size", garment.size], {}


def _body(luck: random.Random, garment: Garment) -> Made:
    """Whom it is for, its choices and its workroom."""
    arguments, files = _who(luck, garment)
    for name, value in garment.choices:
        if luck.random() < 0.3:
            arguments += ["--set", f"{name}={value}"]
    if luck.random() < 0.4:
        files["room.yaml"] = yaml.safe_dump(_workroom(luck), allow_unicode=True).encode()
        arguments += ["--workroom", "room.yaml"]
    if luck.random() < 0.2:
        arguments += ["--language", luck.choice(LANGUAGES)]
    return arguments, {**files, **spec_files(luck, garment)}


def _given(luck: random.Random, files: dict[str, bytes]) -> str:
    """The spec by its name, or now and then by standard input."""
    if luck.random() < 0.9:
        return "spec.yaml"
    files["-"] = files["spec.yaml"]
    return "-"


def _workroom(luck: random.Random) -> dict[str, Any]:
    room: dict[str, Any] = {"workroom": 1}
    for key, rule in schema("workroom")["properties"].items():
        if key in ("workroom", "language", "most joins", "most sections") or luck.random() < 0.6:
            continue
        words = [word for word in rule.get("enum", rule["examples"]) if not isinstance(word, bool)]
        room[key] = luck.choice(words)
    return room


def _check(luck: random.Random, garment: Garment) -> Made:
    arguments, files = _body(luck, garment)
    strict = ["--strict"] if luck.random() < 0.1 else []
    checked = [_given(luck, files)]
    if luck.random() < 0.1:
        files["other.yaml"] = garment.text.encode()
        checked.append("other.yaml")
    return [*checked, *arguments, *strict, "--format", luck.choice(["text", "json", "sarif"])], files


def _limits(luck: random.Random, garment: Garment) -> list[str]:
    """How the cutter may join and lay: of all cloths, or of one."""
    limits = []
    for option in ("--most-joins", "--most-sections"):
        if luck.random() < 0.2:
            count = luck.randrange(1, 5)
            limits += [option, f"{garment.amounts[0]}={count}" if luck.random() < 0.5 else str(count)]
    return limits


def _cutting(luck: random.Random, garment: Garment) -> Made:
    arguments, files = _body(luck, garment)
    return [_given(luck, files), *arguments, *_limits(luck, garment), *_form(luck)], files


def _make(luck: random.Random, garment: Garment) -> Made:
    written = ["--workers", "1", "--replace", *_form(luck)]
    if luck.random() < 0.6:
        arguments, files = set_of_guides(luck, garment)
        # Two kinds of guides in one folder are refused now and then.
        return [*arguments, *written, "--out", "out" if luck.random() < 0.1 else f"set {luck.randrange(9)}"], files
    arguments, files = _body(luck, garment)
    for option in ("--reasons", "--no-measures", "--recut", "--dismiss", "--demonstration"):
        arguments += [option] if luck.random() < 0.15 else []
    arguments += _limits(luck, garment)
    return ["spec.yaml", *arguments, "--no-pdf", *written, "--out", "out"], files


def _why(luck: random.Random, garment: Garment) -> Made:
    arguments, files = _body(luck, garment)
    form = luck.choice(["text", "json", "markdown"])
    bought = ["time", "weight", *garment.amounts]
    name = luck.choice(garment.names) if luck.random() < 0.9 else luck.choice(bought)
    return [_given(luck, files), name, *arguments, "--format", form], files


def _fit(luck: random.Random, garment: Garment) -> Made:
    files = spec_files(luck, garment)
    name = luck.choice(garment.choices)[0] if garment.choices else "layers"
    cloth = garment.amounts[0]
    limit = luck.choice(
        [f"({cloth} + {cloth}) <= 9 m", f"{cloth} <= {luck.randrange(1, 9)} m", "hours <= 6", "(cost <= 30 EUR)"]
    )
    aim = luck.choice(["", "least hours", f"least {name}"])
    asked = ["--size", garment.size, "--free", name, "--so-that", limit, "--for", aim]
    return ["spec.yaml", *asked, "--format", luck.choice(["text", "json"])], files


def _amend(luck: random.Random, garment: Garment) -> Made:
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


def _compare(luck: random.Random, garment: Garment) -> Made:
    """Two sizes, two wearers, two specs, or one body with two choices."""
    files = spec_files(luck, garment)
    asked, kind = _form(luck), luck.randrange(4)
    if kind == 0:
        files["class.csv"] = roster(luck, garment, 3)
        asked += ["--wearer", "class.csv", "--only", NAMED[0], "--only", NAMED[2]]
    else:
        asked += [
            word for size in dict.fromkeys([garment.size, luck.choice(garment.sizes)]) for word in ("--size", size)
        ]
    if kind == 1:
        files["second.yaml"] = garment.text.encode() if luck.random() < 0.5 else garment_at_random(luck).text.encode()
        return ["spec.yaml", "second.yaml", *asked], files
    if luck.random() < 0.3:
        files["room.yaml"] = yaml.safe_dump(_workroom(luck), allow_unicode=True).encode()
        asked += ["--workroom", "room.yaml"]
    if luck.random() < 0.3:
        asked += ["--language", luck.choice(LANGUAGES)]
    if garment.choices and luck.random() < 0.7:
        name, value = luck.choice(garment.choices)
        asked += [luck.choice(["--set", "--set-second"]), f"{name}={value}"]
    return ["spec.yaml", *asked], files


def _swatch(luck: random.Random, garment: Garment) -> Made:
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


def _fmt(luck: random.Random, garment: Garment) -> Made:
    """Specs, workrooms, records, strips and classes, laid out loosely, with comments."""
    made = luck.choice([_swatch, _amend, _check, _check])(luck, garment)[1]
    files = {name: _loose(luck, text.decode()).encode() for name, text in made.items() if name.endswith(".yaml")}
    if luck.random() < 0.1:
        files = {"-": next(iter(files.values()))}
    return [*files, *(["--check"] if luck.random() < 0.2 else []), *_form(luck)], files


def _loose(luck: random.Random, text: str) -> str:
    """The same values with comments, empty lines and more spaces than are needed; what is said in blocks may change."""
    lines = text.split("\n")
    for _ in range(luck.randrange(6)):
        at = luck.randrange(len(lines))
        kind = luck.randrange(3)
        if kind == 0:
            lines.insert(at, luck.choice(["", "# as it came from the mill", "   # indented"]))
        elif kind == 1 and lines[at].strip():
            lines[at] += luck.choice(["  # about 2 cm", "   "])
        else:
            lines[at] = lines[at].replace(": ", ":    ", 1)
    return luck.choice(["\n", "\n", "\r\n"]).join(lines)


def _explain(luck: random.Random, garment: Garment) -> Made:
    code = [luck.choice(tuple(CODES))] if luck.random() < 0.9 else []
    return [*code, *_form(luck)], {}


def _words(luck: random.Random, garment: Garment) -> Made:
    kind = luck.randrange(8)
    if kind == 0:
        return _form(luck), {}
    if kind < 4:
        return ["--list", luck.choice(("pages", "gather", "cutting", "names")), *_form(luck)], {}
    return ["--check", "mine", *_form(luck)], {"mine/en/own.ftl": b"page-tools = What you need\n"}


def _start(luck: random.Random, garment: Garment) -> Made:
    demo = ["--from", luck.choice(NAMES)] if luck.random() < 0.5 else []
    return [f"{luck.choice(('tansy', 'Yarrow skirt', 'Ärmel', 'no'))} {luck.randrange(10**6)}", *demo, *_form(luck)], {}


def _preview(luck: random.Random, garment: Garment) -> Made:
    arguments, files = _body(luck, garment)
    return ["spec.yaml", *arguments, *_form(luck)], files


# How a call of the verb is made, and how many of a hundred are of that verb.
VERBS: Mapping[str, tuple[Callable[[random.Random, Garment], Made], float]] = {
    "check": (_check, 26),
    "cutting": (_cutting, 5),
    "make": (_make, 3),
    "why": (_why, 20),
    "fit": (_fit, 0.5),
    "amend": (_amend, 4),
    "compare": (_compare, 3),
    "swatch": (_swatch, 15),
    "words": (_words, 6),
    "explain-code": (_explain, 10),
    "start": (_start, 6),
    "fmt": (_fmt, 5),
    "preview": (_preview, 2),
}
