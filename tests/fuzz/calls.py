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
from collections.abc import Mapping
from functools import cache
from itertools import pairwise
from pathlib import Path
from typing import Any, NamedTuple
from unittest.mock import patch

from furbelow.verbs.command import run
from jsonschema import Draft202012Validator

from tests.fuzz.call_of import VERBS
from tests.fuzz.garments import garment_at_random, schema, texts
from tests.fuzz.mutate import TROUBLE, demos, formula, mutant, random_file
from tests.fuzz.previewed import Sent, browsed, hostile_requests, sound_requests

PLANNED = ("make", "cutting", "fit", "amend", "compare", "preview")  # verbs whose time is that of the planner


class Call(NamedTuple):
    """Arguments after the verb's name, and the files that they name, by their names."""

    verb: str
    arguments: tuple[str, ...]
    files: Mapping[str, bytes]
    sound: bool
    browsed: tuple[Sent, ...] = ()  # what a preview is asked


def call(luck: random.Random) -> Call:
    """Any call of any verb."""
    sound = luck.random() < 0.65  # some of these are refused all the same: a body that the garment can't be made for
    verb = luck.choices(tuple(VERBS), [each for _, each in VERBS.values()])[0]
    garment = garment_at_random(luck)
    arguments, files = VERBS[verb][0](luck, garment)
    sent: tuple[Sent, ...] = ()
    if verb == "preview":
        sent = sound_requests(luck, garment)
        sent += () if sound else hostile_requests(luck, garment)
    if not sound and (verb != "preview" or luck.random() < 0.3):
        arguments, files = _spoiled(luck, list(arguments), dict(files))
    return Call(verb, tuple(arguments), files, sound, sent)


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
    given = io.TextIOWrapper(io.BytesIO(made.files.get("-", b"")))
    for name, content in made.files.items():
        if name == "-":
            continue
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_bytes(content)
    answer, told = io.StringIO(), io.StringIO()
    with (
        contextlib.chdir(folder),
        contextlib.redirect_stdout(answer),
        contextlib.redirect_stderr(told),
        patch("sys.stdin", given),
        browsed(made.browsed) if made.verb == "preview" else contextlib.nullcontext(),
    ):
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
        _answers().validate(json.loads(answer.getvalue()))
    return code, printed


@cache
def _answers() -> Draft202012Validator:
    return Draft202012Validator(schema("answer"))


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
