"""Specs that nobody would write: the demo specs, changed at random but still much like specs.

Five kinds of change, mixed: lines (taken out, doubled, swapped, indented), words (one value put where another stood),
the tree (keys and rows taken out, doubled, moved, taken from another demo, shuffled), formulas and texts grown from a
grammar or taken from a list of known troublemakers, and gentle changes (another number, a value of the same key, a step
less, more or elsewhere), which often leave a spec that can be read, so that the later stages are tried as well.
"""

from __future__ import annotations

import copy
import random
import re
from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import Any

import yaml

SPECS = Path(__file__).parents[2] / "specs"

TROUBLE = (
    "",
    "~",
    "null",
    "no",
    "yes",
    "on",
    "1:30",
    "012",
    "0x10",
    "1_000",
    "-1 cm",
    "0",
    "0 cm",
    "-0",
    "1e400",
    "1e-400",
    "9" * 400,
    "0." + "0" * 400 + "1",
    "10 ^ 10",
    "10 ** 10",
    "nan",
    "NaN cm",
    ".nan",
    "inf",
    "-.inf",
    "infinity cm",
    "1 / 0",
    "1 cm / 0 cm",
    "0 / 0",
    "waist_girth / (hip_girth - hip_girth)",
    "2 * * 3",
    "((((((((((1))))))))))",
    "(" * 200 + "1" + ")" * 200,
    "-" * 300 + "1 cm",
    "1 + " * 300 + "1 cm",
    "max(" * 60 + "1" + ")" * 60,
    "\u0663 cm",
    "\uff11\uff12 cm",
    "\u00bd in",
    "1\u20442 in",
    "\u0967 m",
    "\u0430\u0440\u0440le",
    "w\u0430ist_girth",
    "12 1/2 in",
    "1/2",
    "5' 6\"",
    "2 yd 6 in",
    "30cm",
    "80%",
    "100000%",
    "-5%",
    "25 g/m2",
    "1.80 EUR/m",
    "1,80 EUR/m",
    "1.5.2 cm",
    "1 km",
    "1 parsec",
    "1 cm cm",
    "cm",
    "1 kg",
    "3 cm2",
    "1 m * 1 m",
    "sqrt(4)",
    "min()",
    "max(1 cm)",
    "round(3.5 cm)",
    "__import__('os')",
    "{{ 7 * 7 }}",
    "<script>alert(1)</script>",
    "=1+1",
    "@SUM(A1)",
    "#panic()",
    "../../etc/passwd",
    "a" * 5000,
    "\u202eabc",
    "\u200b",
    "e\u0301" * 50,
    "\U0001f9f5",
    "\\x00",
    "*a",
    "&a b",
    "!!int 3",
    "flounce.length",
    "flounce.top",
    "flounce.nowhere",
    "upper",
    "layers",
    "worn.length",
    "nothing_at_all",
    "a.b.c.d",
    "1 cm < 2 cm",
    "1 cm == 1 cm",
    "not 1",
    "if 1 then 2",
    "1 cm if layers > 2 else 2 cm",
    "[",
    "{",
    "}",
    "- a",
    ": b",
)

_SCALAR = re.compile(r"(?<=[:\[,] )[^\[\]{},#\n]+|(?<=- )[a-z ]+(?=:)|[a-z_]+(?=:)")


@cache
def demos() -> tuple[str, ...]:
    return tuple(path.read_text(encoding="utf-8") for path in sorted(SPECS.glob("*.yaml")))


@cache
def _trees() -> tuple[Any, ...]:
    return tuple(yaml.load(text, yaml.CBaseLoader) for text in demos())


@cache
def _values() -> tuple[str, ...]:
    """Every scalar of every demo."""
    found: dict[str, None] = {}

    def walk(tree: Any) -> None:
        if isinstance(tree, dict):
            for key, value in tree.items():
                found[key] = None
                walk(value)
        elif isinstance(tree, list):
            for value in tree:
                walk(value)
        else:
            found[tree] = None

    for tree in _trees():
        walk(tree)
    return tuple(found)


def formula(luck: random.Random, depth: int = 4) -> str:
    """A formula of any shape: mostly well-formed, of any kind of quantity, sometimes absurd."""
    if depth == 0 or luck.random() < 0.3:
        number = luck.choice(
            ("0", "1", "2", "1.5", "1/2", "12 1/2", "0.001", "1e6", "-3", "80%", str(luck.randrange(10**9)))
        )
        return luck.choice(
            (
                number,
                number + luck.choice((" cm", " mm", " m", " in", " yd", " g", " EUR/m", "cm")),
                luck.choice(_values()),
            )
        )
    left, right = formula(luck, depth - 1), formula(luck, depth - 1)
    shape = luck.randrange(7)
    if shape < 4:
        return f"{left} {luck.choice(('+', '-', '*', '/', '^', '<', '>=', '=='))} {right}"
    if shape == 4:
        return f"({left})"
    if shape == 5:
        return f"{luck.choice(('max', 'min', 'round', 'ceil', 'sum', 'abs'))}({left}, {right})"
    return f"-{left}"


def _value(luck: random.Random) -> str:
    kind = luck.randrange(4)
    return luck.choice(TROUBLE) if kind == 0 else formula(luck) if kind == 1 else luck.choice(_values())


# --- changes of lines and words ---


def _lines(text: str, luck: random.Random) -> str:
    lines = text.split("\n")
    at, other = luck.randrange(len(lines)), luck.randrange(len(lines))
    kind = luck.randrange(5)
    if kind == 0:
        del lines[at : at + luck.randrange(1, 4)]
    elif kind == 1:
        lines.insert(other, lines[at])
    elif kind == 2:
        lines[at], lines[other] = lines[other], lines[at]
    elif kind == 3:
        lines[at] = luck.choice((" ", "  ", "\t", "")) + lines[at].lstrip() if luck.random() < 0.5 else "  " + lines[at]
    else:
        donor = luck.choice(demos()).split("\n")
        lines.insert(at, luck.choice(donor))
    return "\n".join(lines)


def _words(text: str, luck: random.Random) -> str:
    found = list(_SCALAR.finditer(text))
    if not found:
        return text
    word = luck.choice(found)
    return text[: word.start()] + _value(luck) + text[word.end() :]


def _letters(text: str, luck: random.Random) -> str:
    at = luck.randrange(len(text) + 1)
    kind = luck.randrange(3)
    letter = luck.choice("{}[]:,-#&*!|>'\"%@`\t\n \\0\u00e9\u2028\u0085\ufeff\U0001f9f5")
    return text[:at] + ("" if kind == 0 else letter) + text[at + (kind != 1) :]


# --- changes of the tree ---


def _places(tree: Any) -> list[tuple[Any, Any]]:
    """Every (holder, key or index) in a tree."""
    if isinstance(tree, dict):
        return [(tree, key) for key in tree] + [place for value in tree.values() for place in _places(value)]
    if isinstance(tree, list):
        places: list[tuple[Any, Any]] = [(tree, index) for index in range(len(tree))]
        return places + [place for value in tree for place in _places(value)]
    return []


def _tree(tree: Any, luck: random.Random) -> None:
    places = _places(tree)
    if not places:
        return
    holder, key = luck.choice(places)
    kind = luck.randrange(8)
    if kind == 0:
        del holder[key]
    elif kind == 1:
        holder[key] = _value(luck)
    elif kind == 2:
        other, other_key = luck.choice(_places(luck.choice(_trees())))
        holder[key] = copy.deepcopy(other[other_key])
    elif kind == 3 and isinstance(holder, list):
        holder.insert(luck.randrange(len(holder) + 1), copy.deepcopy(holder[key]))
    elif kind == 4 and isinstance(holder, list):
        luck.shuffle(holder)
    elif kind == 5 and isinstance(holder, dict):
        holder[luck.choice((*_values()[:80], *TROUBLE[:20]))] = holder.pop(key)
    elif kind == 6 and isinstance(tree, dict) and isinstance(tree.get("steps"), list):
        steps = tree["steps"]
        donor = luck.choice(_trees())["steps"]
        steps.insert(luck.randrange(len(steps) + 1), copy.deepcopy(luck.choice(donor)))
    else:
        second, second_key = luck.choice(places)
        try:
            holder[key], second[second_key] = copy.deepcopy(second[second_key]), copy.deepcopy(holder[key])
        except (KeyError, IndexError):
            return


_NUMBER = re.compile(r"(?<![\w.])[0-9]+(?:\.[0-9]+)?(?![\w.])")


def _gently(tree: Any, luck: random.Random) -> None:
    """A change after which the spec still has its form."""
    steps = tree["steps"]
    kind = luck.randrange(6)
    at = luck.randrange(len(steps)) if steps else 0
    if kind == 0 and steps:
        del steps[at]
    elif kind == 1 and steps:
        steps.insert(luck.randrange(len(steps)), steps.pop(at))
    elif kind == 2 and steps:
        steps.insert(luck.randrange(len(steps)), copy.deepcopy(steps[at]))
    elif kind == 3:
        # A value of the same key from elsewhere: one length for another, one edge for another.
        places = [
            place for place in _places(tree) if isinstance(place[0], dict) and isinstance(place[0][place[1]], str)
        ]
        holder, key = luck.choice(places)
        holder[key] = luck.choice([other[key] for other, its_key in places if its_key == key])
    else:
        places = [(h, k) for h, k in _places(tree) if isinstance(h[k], str) and _NUMBER.search(h[k])]
        holder, key = luck.choice(places)
        number = luck.choice(("0", "0.1", "1", "2", "3", "7", "12", "40", "99", "250", "1000", "1000000"))
        holder[key] = _NUMBER.sub(number, holder[key], count=1)


def mutant(luck: random.Random, texts: tuple[str, ...] | None = None) -> bytes:
    """One spec, changed once to six times. texts: of which; without them, of the demos."""
    text = luck.choice(texts or demos())
    changes = luck.choice((1, 1, 1, 2, 2, 3, 6))
    how = luck.random()
    if how < 0.8:
        tree = yaml.load(text, yaml.CBaseLoader)
        for _ in range(changes):
            (_gently if how < 0.5 else _tree)(tree, luck)
        text = yaml.dump(tree, Dumper=yaml.CSafeDumper, sort_keys=False, allow_unicode=True, width=10_000)
    else:
        kinds: tuple[Callable[[str, random.Random], str], ...] = (_lines, _words, _words, _letters)
        for _ in range(changes):
            text = luck.choice(kinds)(text, luck)
    return text.encode("utf-8", "surrogatepass")


_SIGNS = (
    *"()+-*/^,.%'\"<>= ",
    "1",
    "2.5",
    "1/2",
    "12 1/2",
    "1e400",
    "9" * 60,
    "cm",
    "in",
    "EUR/m",
    "max(",
    "min(",
    "waist_girth",
    "upper.length",
    "nobody",
    "nan",
    "inf",
    "\u0663",
    "\u00bd",
    "\u0430",
    ">=",
    "==",
    "\u00d7",
    "\uff0b",
)


def formulas(luck: random.Random) -> bytes:
    """One demo with formulas of any shape where it had numbers: grown deep, known for trouble, or signs in a heap."""
    tree = copy.deepcopy(luck.choice(_trees()))
    places = [(h, k) for h, k in _places(tree) if isinstance(h[k], str) and _NUMBER.search(h[k])]
    for holder, key in luck.sample(places, luck.choice((1, 1, 2, 4))):
        kind = luck.randrange(4)
        if kind == 0:
            holder[key] = formula(luck, luck.randrange(2, 9))
        elif kind == 1:
            holder[key] = luck.choice(TROUBLE)
        elif kind == 2:
            holder[key] = "".join(luck.choices(_SIGNS, k=luck.randrange(1, 60)))
        else:
            # The old value inside: it often still comes out as a length.
            before, after = luck.choice(
                (
                    ("(", ")"),
                    ("-(-(", "))"),
                    ("1 * ", ""),
                    ("max(", ", 0 cm)"),
                    ("", " / 7 * 7"),
                    ("", " + 1e-9 mm"),
                    ("", " ^ 1"),
                )
            )
            depth = luck.choice((1, 2, 30, 60))
            holder[key] = before * depth + holder[key] + after * depth
    return yaml.dump(tree, Dumper=yaml.CSafeDumper, sort_keys=False, allow_unicode=True, width=10_000).encode(
        "utf-8", "surrogatepass"
    )


def random_file(luck: random.Random) -> bytes:
    """Bytes that were never a spec: noise, YAML signs, or a demo cut up and spoiled."""
    kind = luck.randrange(4)
    if kind == 0:
        return luck.randbytes(luck.randrange(2000))
    if kind == 1:
        signs = "{}[]:,-#&*!|>'\"%@`?\t\n \\ab01~"
        return "".join(luck.choices(signs, k=luck.randrange(1500))).encode()
    whole = luck.choice(demos()).encode()
    if kind == 2:
        return whole[luck.randrange(len(whole)) :][: luck.randrange(3000)]
    spoiled = bytearray(whole)
    for _ in range(luck.randrange(1, 20)):
        spoiled[luck.randrange(len(spoiled))] = luck.randrange(256)
    return bytes(spoiled)
