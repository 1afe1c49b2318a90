"""The reference of the language and of the proofs, written from the schemas, the techniques and the docstrings.

`python -m furbelow.upkeep.reference` writes schemas/README.md, the page of the proofs, templates/furbelow.1 and the drawings of the
gallery in specs/pictures anew.
"""

from __future__ import annotations

import ast
import json
import re
from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import Any

from furbelow import resources
from furbelow.fit.grid import MOST_GARMENTS
from furbelow.garment.technique import Technique
from furbelow.measure.formula_parser import CONSTANTS, DEEPEST_FORMULA, FUNCTIONS, LONGEST_FORMULA
from furbelow.measure.units import CURRENCIES, UNITS, describe_dims
from furbelow.s1_read.names import LONGEST_NAME
from furbelow.s1_read.roster import LONGEST_CELL, MOST_WEARERS
from furbelow.s1_read.yaml_tree import DEEPEST_TREE, LARGEST_FILE, MOST_VALUES
from furbelow.s6_write.words.messages import Messages
from furbelow.techniques import techniques
from furbelow.upkeep.man_page import PAGE as MANUAL
from furbelow.upkeep.man_page import man_page

Schema = Mapping[str, Any]

_PACKAGE = Path(__file__).parents[1]
_TOP = _PACKAGE.parents[1]
LANGUAGE = _TOP / "schemas" / "README.md"
PROOFS = _PACKAGE / "s3_rehearse" / "proofs" / "README.md"
SPECS = _TOP / "specs"

_MADE = "<!-- Written by `python -m furbelow.upkeep.reference`; change the schemas and docstrings, not this page. -->"
_OTHER_FILES = {
    "workroom.schema.json": "A workroom",
    "theme.schema.json": "A theme",
    "wearer.schema.json": "A wearer or a class",
    "record.schema.json": "A record of the work",
    "swatch.schema.json": "Swatches of the pleating attachment",
}
_SAID_ONCE = (
    "### Said once",
    "A piece with `for: layer from 1 to layers` is one piece in each round: `net` is `net_1`, `net_2` and so on, and"
    " `net(layer - 1).depth` is a size of the one before. Its formulas may use `layer` as a number, its `about` as"
    " `{layer}`. Steps are repeated in a group:",
    "```yaml\n- for: pair from 1 to layers / 2\n  steps:\n    - stack layers: {layers: [net(2 * pair - 1).top, net(2 *"
    " pair).top], as: pairs(pair)}\n    - gather: {edge: pairs(pair), length: 200 cm}\n```",
    "Where a list is wanted, the name alone stands for all of them in their order: `layers: [pairs, lining.top]`. How far a"
    " repeat may go is known from the range of the one choice that it names; how far it goes, from what is chosen.",
    "A piece whose count comes to 0 is left out for that body, and the steps on it fall away; in a list only its name does. So"
    " a lining or a pocket is a choice `{default: 1, from: 0, to: 1, step: 1}`. Cloth that then nothing uses is not bought.",
    "Strips that the cutting plan pieces are joined before the piece is first worked on; `join strips` is written where they are to"
    " be joined at another time, or together with others.",
    "### Shared by several garments",
    "`use: library/nets.yaml` takes a library: a file that begins with `library: 1` and holds any of `body`, `sizes`, `choices`,"
    " `measures`, `materials` and `techniques`. `based on: plain.yaml` takes a whole garment. What stands in the spec is laid over"
    " both, section by section, name by name, key by key; texts and lists are replaced. Steps are changed group by group:",
    "```yaml\n# in plain.yaml\nsteps:\n  - called: hem\n    steps:\n      - narrow hem: {edge: skirt.bottom}\n# in the garment that is"
    " based on it\nbased on: plain.yaml\nchange steps:\n  hem:\n    - edge with trim: {edge: skirt.bottom, trim: edging}\n```",
    "A piece is left out with `count: 0`. All files lie in the folder of the spec or within it, links followed; they are read as"
    " the spec is, and nothing in them is run. A fault names the file that it lies in.",
    "### Names",
    "An edge is a piece and its side: `top`, `bottom`, `start`, `end`. A seam is called by one of the edges in it"
    " (`flounce.top`), by `flounce.ends` where the start is sewn to the end, or by `flounce.joins` where strips are pieced."
    " `stack layers` gives its edge a name by `as`, without a side; later steps use it like any edge.",
    "A key that stays away has what the last column of its technique says. A material of `kind: other` is bought and named by no"
    " step: `tags: {kind: other, about: paper tags, sold by: 20, price: 1 EUR}`.",
    "### A technique of your own",
    "What no technique does is described under `techniques` (see the key above) and then used like the others: it is proved for"
    " the edges it needs and what it takes, and the guide says it in your sentences.",
    "```yaml\ntechniques:\n  wax seam:\n    about: Brush a seam with wax.\n    works on: seam\n    do:\n      - Brush {seam} with wax.\nsteps:\n"
    "  - wax seam: {seam: flounce.top}\n```",
)
_LIMITS = {"maxProperties": "keys", "maxItems": "rows", "maxLength": "characters"}


def language_page() -> str:
    """schemas/README.md: every key, technique, unit and limit of the files that people write."""
    garment = _schema("garment.base.json")
    parts = [
        "# The language",
        _MADE,
        "A garment spec is a file in YAML. Every value is read as it is written: `no`, `1:30` and `012` hold no surprise."
        " A key in bold must be given. [specs/README.md](../specs/README.md) is a first spec in 15 minutes.",
        "An editor with a YAML language server completes and explains keys when this is the first line of the file"
        " (`furbelow start NAME` writes it):",
        "```yaml\n# yaml-language-server: $schema=schemas/garment.schema.json\n```",
        "## A garment spec",
        *_tables(garment, garment, "The file"),
        "## Techniques",
        "A row of `steps` holds one technique, `- gather: {edge: flounce.top, to: upper.bottom}`. Beside it may stand a"
        " `tip` of your own, and `when: lining.count == 0` where it is done only then. A row"
        " `- picture: {file: pictures/gathered.jpg, alt: The gathered edge, its folds even.}` below it shows how yours came out.",
        *_SAID_ONCE,
        *(_technique(technique) for technique in techniques().values()),
        "## Quantities and formulas",
        *_quantities(),
    ]
    for name, title in _OTHER_FILES.items():
        schema = _schema(name)
        parts += [f"## {title}", schema.get("description", ""), *_tables(schema, schema, "The file")]
    parts += ["## Limits", *_limits(garment)]
    return "\n\n".join(part for part in parts if part) + "\n"


def proofs_page() -> str:
    """The README beside the proofs: each with what it guarantees and what it cannot know."""
    parts = [
        "# The proofs",
        _MADE,
        "Before anyone cuts, the steps are carried out on a model of the cloth, and these proofs are held to what comes"
        " out. Each is one file here. Passed proofs stand in the guide; a failed one is told with its place and a mend.",
    ]
    words = Messages("en")
    words.read("proofs")
    for path in sorted(PROOFS.parent.glob("[a-z]*.py")):
        module = ast.parse(path.read_text(encoding="utf-8"))
        title, _, rest = (ast.get_docstring(module) or "").partition("\n")
        codes = sorted(set(re.findall(r'"(FB\d{3})"', path.read_text(encoding="utf-8"))))
        claim = next(
            ast.literal_eval(line.value)
            for line in module.body
            if isinstance(line, ast.Assign) and getattr(line.targets[0], "id", "") == "CLAIM"
        )
        told = ", ".join(f"[{code}](../../code_pages/{code}.md)" for code in codes)
        parts += [f"## {words.text(claim)}", f"`{path.name}`: {title}", _headed(rest), f"Told as: {told}"]
    return "\n\n".join(part for part in parts if part) + "\n"


def write() -> list[Path]:
    """Writes the pages and the drawings, and says where."""
    pages = {LANGUAGE: language_page(), PROOFS: proofs_page(), MANUAL: man_page(), **gallery()}
    for path, text in pages.items():
        path.write_text(text, encoding="utf-8")
    return list(pages)


def gallery() -> dict[Path, str]:
    """The picture of the garment of each spec in `specs/`, in its middle size, by the file that it is drawn in."""
    from furbelow.garment.workroom import Workroom
    from furbelow.order.chain import guide_of, planned
    from furbelow.order.order import Order
    from furbelow.s1_read.read_spec import read_spec

    drawn = {}
    for path in sorted(SPECS.glob("*.yaml")):
        spec = read_spec(path).value
        assert spec is not None, path
        name, body = list(spec.sizes.items())[len(spec.sizes) // 2]
        order = Order(spec, f"size {name}", body, {}, Workroom())
        found = planned(order).value
        assert found is not None, path
        figure = guide_of(found, order.wearer).picture[0]
        drawn[SPECS / "pictures" / f"{path.stem}.svg"] = _on_white(figure.svg) + "\n"
    return drawn


def _on_white(svg: str) -> str:
    """A drawing that can be read on a dark page too."""
    box = re.search(r'viewBox="(\S+) (\S+) (\S+) (\S+)"', svg)
    assert box is not None
    left, top, wide, high = box.groups()
    return svg.replace(">", f'><path d="M{left} {top}h{wide}v{high}h-{wide}z" fill="#ffffff"/>', 1)


# --- schemas ---


def _schema(name: str) -> dict[str, Any]:
    schema: dict[str, Any] = json.loads(resources.schema(name).read_text(encoding="utf-8"))
    return schema


def _tables(rule: Schema, whole: Schema, title: str, told: set[str] | None = None) -> Iterable[str]:
    """A table for a map of keys, and one below it for each kind of map that it refers to, each kind once."""
    told = set() if told is None else told
    rows, below, inline = [], [], []
    entries = dict(rule.get("properties", {}))
    if isinstance(more := rule.get("additionalProperties"), dict):
        entries["any name"] = more
    if not entries:
        # One of two forms, as a wearer or a class.
        for form in (rule.get("then", {}), rule.get("else", {})):
            for name in (name for name in _kinds(form, whole) if name not in told):
                told.add(name)
                yield from _tables(whole["$defs"][name], whole, name, told)
        return
    for key, value in entries.items():
        kind = _resolved(value, whole)
        must = key in rule.get("required", ())
        about = value.get("description") or kind.get("description", "")
        examples = value.get("examples") or kind.get("examples") or []
        rows.append((f"**{key}**" if must else key, about, _shown(examples[0]) if examples else ""))
        for name in _kinds(value, whole):
            if name not in told and name != "step":
                told.add(name)
                below.append(name)
        below += [held for held in _inside(value, whole, told) if held not in below]
        if "$ref" not in value and "properties" in value and key != "body":
            inline.append((key, value))
    yield f"### {title[:1].upper()}{title[1:]}"
    yield _table(("key", "what", "example"), rows)
    for key, value in inline:
        yield from _tables(value, whole, key, told)
    for name in below:
        yield from _tables(whole["$defs"][name], whole, name.replace("_", " "), told)


def _inside(value: Schema, whole: Schema, told: set[str]) -> list[str]:
    """The kinds of the values or rows that a map or list holds."""
    found = []
    inner: list[Any] = [value.get("additionalProperties"), value.get("items"), *value.get("properties", {}).values()]
    for each in inner:
        for name in _kinds(each, whole) if isinstance(each, dict) else ():
            if name not in told and name != "step":
                told.add(name)
                found.append(name)
    return found


def _kinds(value: Schema, whole: Schema) -> list[str]:
    """The definitions that a value refers to, and those that these stand for by the kind that is written."""
    if "$ref" not in value:
        return []
    forms = (form.get("then", {}) for form in _resolved(value, whole).get("allOf", ()))
    return [each["$ref"].removeprefix("#/$defs/") for each in (value, *forms) if "$ref" in each]


def _resolved(value: Schema, whole: Schema) -> Schema:
    name = str(value.get("$ref", "")).removeprefix("#/$defs/")
    found: Schema = whole["$defs"][name] if name else value
    return found


def _shown(example: Any) -> str:
    text = example if isinstance(example, str) else _flow(example)
    return f"`{' '.join(str(text).split())}`"


def _flow(value: Any) -> str:
    """A value as a maker writes it on one line."""
    if isinstance(value, dict):
        return "{" + ", ".join(f"{key}: {_flow(held)}" for key, held in value.items()) + "}"
    if isinstance(value, list):
        return "[" + ", ".join(map(_flow, value)) + "]"
    return str(value)


def _table(heads: tuple[str, ...], rows: Iterable[tuple[str, ...]]) -> str:
    lines = [heads, ("---",) * len(heads), *rows]
    return "\n".join(
        "| " + " | ".join(cell.replace("|", "\\|").replace("\n", " ") for cell in line) + " |" for line in lines
    )


# --- techniques and docstrings ---


def _technique(technique: Technique) -> str:
    module = ast.parse(
        (_PACKAGE / "techniques" / f"{type(technique).__module__.rpartition('.')[2]}.py").read_text("utf-8")
    )
    _, _, rest = (ast.get_docstring(module) or "").partition("\n")
    rows = []
    for name, key in technique.parameters.items():
        words = ", ".join(f"`{word}`" for word in key.kind) if isinstance(key.kind, tuple) else key.kind
        usual = "" if key.default is None else f"`{key.default}`" if key.default else "may stay away"
        rows.append((f"**{name}**" if key.default is None else name, key.about, words, usual))
    parts = [f"### {technique.name}", technique.about, _table(("key", "what", "kind", "where it stays away"), rows)]
    return "\n\n".join([*parts, _headed(rest)])


def _headed(text: str) -> str:
    """The headed sentences of a docstring as a list: `Guarantees: ...` with its lines put together."""
    rows: list[str] = []
    for line in text.strip().splitlines():
        if re.match(r"[A-Z][\w ]{3,40}: ", line):
            head, _, said = line.partition(": ")
            rows.append(f"- *{head}*: {said}")
        elif rows and line.strip():
            rows[-1] += " " + line.strip()
        elif line.strip():
            rows.append(f"- {line.strip()}")
    return "\n".join(rows)


# --- quantities and limits ---


def _quantities() -> list[str]:
    by_kind: dict[str, list[str]] = {}
    for name, unit in UNITS.items():
        if name not in CURRENCIES:
            by_kind.setdefault(describe_dims(unit.dims), []).append(f"`{name}`")
    rows = [(kind, ", ".join(names)) for kind, names in by_kind.items()]
    calls = ", ".join(f"`{name}`" for name in (*FUNCTIONS, *CONSTANTS))
    return [
        "A quantity is a number and a unit: `30 cm`, `12 1/2 in`, `2 yd 6 in`, `5' 6\"`, `80%`, `25 g/m2`, `1.80 EUR/m`."
        " Decimals have a point. Money is written with its ISO 4217 code.",
        _table(("measures", "units"), rows),
        "A formula puts quantities and names together with `+ - * /`, brackets and " + calls + ". Names are body"
        " measures, choices, measures, and sizes such as `flounce.length`, `flounce.cut_depth` or `elastic.width`."
        " A rule compares two of them with `<`, `<=`, `>`, `>=`, `==` or `!=`. Lengths add to lengths alone.",
    ]


def _limits(garment: Schema) -> list[str]:
    rows = [
        ("a file", f"{LARGEST_FILE:,} bytes, {MOST_VALUES:,} keys and values, {DEEPEST_TREE} levels deep"),
        ("a formula", f"{LONGEST_FORMULA} characters, {DEEPEST_FORMULA} brackets deep"),
        ("a name", f"{LONGEST_NAME} characters"),
        ("a class", f"{MOST_WEARERS:,} wearers, {LONGEST_CELL} characters a cell"),
        ("a fit", f"{MOST_GARMENTS:,} garments tried"),
    ]
    for key, value in garment["properties"].items():
        rows += [(f"`{key}`", f"{value[limit]} {said}") for limit, said in _LIMITS.items() if limit in value]
    return ["They keep every check quick; a real garment stays far below them.", _table(("of", "at most"), rows)]


if __name__ == "__main__":
    print("\n".join(f"written: {path}" for path in write()))
