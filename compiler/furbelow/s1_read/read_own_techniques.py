"""The techniques that a spec describes itself: their schema, and how they are read from its tree."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from furbelow.diagnose.fault import Fault, Label
from furbelow.diagnose.nearest import nearest
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import CautionKind, OwnAction, SetUp, Technique
from furbelow.measure.quantity import Quantity, parse_quantity
from furbelow.measure.units import LENGTH, PLAIN
from furbelow.s1_read.sayings import Sayings
from furbelow.s1_read.schema_walk import Schema
from furbelow.s1_read.technique_schema import technique_schema
from furbelow.s1_read.values import map_at, maps_in, rows_at, text_at, value_at
from furbelow.s1_read.yaml_tree import Entry, MapTree, TextTree, Tree
from furbelow.techniques.own_technique import KEYS, LEAVES, NEEDS, PLACE, OwnStitch, OwnTechnique

SECTION = "techniques"
STITCHES = tuple(str(each) for each in StitchType)
SETUPS = (SetUp.HAND, SetUp.STRAIGHT, SetUp.ZIGZAG, SetUp.OVERLOCKER, SetUp.IRON, SetUp.TABLE)
CAUTIONS = tuple(str(each) for each in CautionKind)
MOST_ROWS = 9

_LINE = {"$ref": "#/$defs/line"}
_SAID = {"$ref": "#/$defs/said_line"}


def _words(*words: str) -> dict[str, Any]:
    return {"enum": list(words), "examples": [words[0]]}


def _many(rule: dict[str, Any], **rest: Any) -> dict[str, Any]:
    return {"type": "array", "items": rule, "minItems": 1, "maxItems": 20, **rest}


SCHEMA: dict[str, Any] = {
    "description": "Techniques of your own, used in the steps like the built-in ones and proved like them.",
    "type": "object",
    "maxProperties": 50,
    "additionalProperties": {
        "title": "technique of your own",
        "type": "object",
        "additionalProperties": False,
        "required": ["about", "works on", "do"],
        "properties": {
            "about": {
                **_SAID,
                "description": "What it does, in one sentence.",
                "examples": ["Draw a hem into shells."],
            },
            "called": {
                **_SAID,
                "description": "What the guide calls it, where its name is not the word for it.",
                "examples": ["Shell edge"],
            },
            "works on": {**_words("edge", "seam", "piece"), "description": "What it is worked on."},
            "needs": _many(_words(*NEEDS), description="What must hold of the edge before.", examples=[["ring"]]),
            "lengths": {
                "description": "Its own lengths with their defaults; a step may give others.",
                "type": "object",
                "maxProperties": 12,
                "additionalProperties": {"$ref": "#/$defs/formula"},
                "examples": [{"turn": "6 mm"}],
            },
            "takes": _many(
                {"$ref": "#/$defs/name"},
                description="The lengths that it takes at the edge; one named twice is taken twice.",
                examples=[["turn", "turn"]],
            ),
            "leaves": {**_words(*LEAVES), "description": "How it leaves the raw edge, or the margin of the seam."},
            "stitch": {
                "title": "stitch",
                "description": "The rows that it sews, for thread and time.",
                "type": "object",
                "additionalProperties": False,
                "required": ["type", "length"],
                "properties": {
                    "type": {
                        "enum": [*STITCHES, *map(int, STITCHES)],
                        "description": "Stitch type of ISO 4915.",
                        "examples": ["301"],
                    },
                    "length": {"$ref": "#/$defs/formula", "description": "Length of one stitch.", "examples": ["2 mm"]},
                    "rows": {
                        "enum": [text for n in range(1, MOST_ROWS + 1) for text in (str(n), n)],
                        "description": "How many rows.",
                        "default": "1",
                        "examples": ["1"],
                    },
                },
                "examples": [{"type": "301", "length": "2 mm", "rows": "2"}],
            },
            "uses": {
                "$ref": "#/$defs/formula",
                "description": "How much of a supply for each length of it; steps name the supply with `with`.",
                "examples": ["1.1"],
            },
            "set up": {**_words(*SETUPS), "description": "What is set up for it.", "default": SETUPS[0]},
            "cautions": {
                "title": "cautions",
                "description": "What can hurt someone, by its kind.",
                "type": "object",
                "additionalProperties": False,
                "properties": {
                    kind: {
                        **_SAID,
                        "description": f"A caution of the kind {kind}.",
                        "examples": ["Keep your fingers clear."],
                    }
                    for kind in CAUTIONS
                },
                "examples": [{"heat": "The wax is hot."}],
            },
            "do": _many(
                {
                    "title": "sentence",
                    "description": "One action, or a map with its check, tolerance and remedy; {edge}, {length} and your lengths are filled in.",
                    "if": {"type": "object"},
                    "then": {
                        "title": "sentence",
                        "additionalProperties": False,
                        "required": ["say"],
                        "properties": {
                            key: {**_SAID, "description": about, "examples": [example]}
                            for key, about, example in (
                                ("say", "The one action.", "Turn {edge} by {turn}."),
                                ("check", "How to see that it is right.", "The turn is even."),
                                ("tolerance", "How far it may be off.", "1 mm"),
                                ("remedy", "What to do where it is not.", "Press it again."),
                            )
                        },
                    },
                    "else": _LINE,
                    "examples": ["Turn {edge} by {turn}."],
                },
                description="What to do, one action a row.",
                examples=[["Turn {edge} by {turn}."]],
            ),
        },
        "examples": [{"about": "Brush a seam with wax.", "works on": "seam", "do": ["Brush {seam} with wax."]}],
    },
    "examples": [
        {"wax seam": {"about": "Brush a seam with wax.", "works on": "seam", "do": ["Brush {seam} with wax."]}}
    ],
}


def own_techniques(
    tree: Tree, built_in: Mapping[str, Technique], say: Sayings
) -> tuple[Mapping[str, OwnTechnique], tuple[Fault, ...]]:
    """The spec's own techniques by name, and what is wrong in them beyond their schema.

    Fails: FB360 for a name that is taken, FB361 for a word that nothing stands behind, FB362 for an amount that is no plain
        one, FB364 for what only an edge can give or be left as.
    """
    found: dict[str, OwnTechnique] = {}
    faults: list[Fault] = []
    for entry, at in maps_in(map_at(tree, SECTION)):
        if entry.key in built_in:
            faults.append(
                Fault(
                    "FB360",
                    f"`{entry.key}` is a built-in technique already",
                    Label(entry.key_span),
                    help="give yours another name",
                )
            )
            continue
        if entry.key in ("part", "tip", "picture"):
            faults.append(
                Fault(
                    "FB360",
                    f"`{entry.key}` has a meaning of its own in the steps",
                    Label(entry.key_span),
                    help="choose another name",
                )
            )
            continue
        found[entry.key] = _one(entry, at, faults, say)
    return found, tuple(faults)


def _one(entry: Entry, at: MapTree, faults: list[Fault], say: Sayings) -> OwnTechnique:
    lengths = {each.key: each.value.text for each in map_at(at, "lengths").entries if isinstance(each.value, TextTree)}
    for each in map_at(at, "lengths").entries:
        if each.key in (*KEYS, "length"):
            faults.append(
                Fault(
                    "FB360",
                    f"`{each.key}` is a key of every step already",
                    Label(each.key_span),
                    help="call this length by another name",
                )
            )
    taken = [row for row in rows_at(at, "takes") if isinstance(row, TextTree)]
    for row in taken:
        if row.text not in lengths:
            faults.append(_unknown(row.text, lengths, "a length of this technique", row.span))
    uses = value_at(at, "uses")
    called = say.at(at, "called", f" of `{entry.key}`")
    say.name(entry, called)
    own = OwnTechnique(
        name=entry.key,
        called=called or entry.key,
        about=say.at(at, "about", f" of `{entry.key}`"),
        works_on=text_at(at, "works on", "edge") if text_at(at, "works on") in KEYS[:3] else "edge",
        needs=tuple(row.text for row in rows_at(at, "needs") if isinstance(row, TextTree)),
        lengths=lengths,
        taken=tuple(row.text for row in taken if row.text in lengths),
        leaves=text_at(at, "leaves"),
        stitch=_stitch(map_at(at, "stitch"), faults) if value_at(at, "stitch") else None,
        uses=(_plain(uses, "a number such as 1.1", faults) or Fraction(1)) if uses else Fraction(0),
        setup=next((each for each in SETUPS if each == text_at(at, "set up")), SetUp.HAND),
        cautions=tuple(
            (CautionKind(each.key), say.at(map_at(at, "cautions"), each.key, f" of `{entry.key}`"))
            for each in map_at(at, "cautions").entries
            if each.key in set(CautionKind)
        ),
        words=tuple(_action(row, say, f" of `{entry.key}`") for row in rows_at(at, "do")),
    )
    faults += _beyond_an_edge(at, own)
    for sentence in rows_at(at, "do"):
        said = tuple(each.value for each in sentence.entries) if isinstance(sentence, MapTree) else (sentence,)
        faults += [fault for texts in said for text in say.each(texts) for fault in _places(text, own)]
    return own


def _beyond_an_edge(at: MapTree, own: OwnTechnique) -> list[Fault]:
    """Keys that mean nothing for what the technique works on."""
    can = {"edge": ("needs", "takes", "leaves"), "seam": ("leaves",), "piece": ()}[own.works_on]
    faults = [
        Fault(
            "FB364",
            f"a technique that works on a {own.works_on} has no `{entry.key}`",
            Label(entry.key_span),
            help="write `works on: edge`, or leave it out",
        )
        for entry in at.entries
        if entry.key in ("needs", "takes", "leaves") and entry.key not in can
    ]
    leaves = value_at(at, "leaves")
    if own.works_on == "seam" and own.leaves == "hemmed" and leaves:
        faults.append(
            Fault(
                "FB364",
                "the margin of a seam is left neatened or enclosed, and not hemmed",
                Label(leaves.span),
                help="write `leaves: neatened`",
            )
        )
    return faults


def _action(row: Tree, say: Sayings, owner: str) -> OwnAction:
    if isinstance(row, TextTree):
        # A bare sentence is one under `say`.
        row = MapTree(row.span, (Entry("say", row.span, row),))
    sentence, check, tolerance, remedy = (say.at(row, key, owner) for key in ("say", "check", "tolerance", "remedy"))
    return OwnAction(sentence, check, tolerance, remedy)


def _places(text: TextTree, own: OwnTechnique) -> list[Fault]:
    places = [found for found in PLACE.finditer(text.text) if found[1].strip() not in own.places]
    return [
        _unknown(found[1].strip(), own.places, "something that is known here", text.place(found.start(), len(found[0])))
        for found in places
    ]


def _unknown(name: str, known: Mapping[str, str] | tuple[str, ...], wanted: str, span: Any) -> Fault:
    near = nearest(name, tuple(known))
    said = f"did you mean {' or '.join(f'`{word}`' for word in near)}?" if near else None
    help_ = said or (f"known are {', '.join(f'`{word}`' for word in known)}" if known else "declare it under `lengths`")
    return Fault("FB361", f"`{name[:60]}` is not {wanted}", Label(span), help=help_)


def _stitch(at: MapTree, faults: list[Fault]) -> OwnStitch | None:
    length = _plain(value_at(at, "length"), "a length such as 2 mm", faults)
    rows, kind = text_at(at, "rows", "1"), text_at(at, "type")
    if not length or kind not in set(StitchType) or not rows.isdigit():
        return None
    return OwnStitch(StitchType(kind), length, int(rows))


def _plain(at: Tree | None, wanted: str, faults: list[Fault]) -> Fraction:
    """A plain amount: in mm where it is a length; 0 where it can't be read."""
    if not isinstance(at, TextTree):
        return Fraction(0)
    amount = parse_quantity(at.text)
    is_length = wanted.startswith("a length")
    if isinstance(amount, Quantity) and amount.value > 0 and amount.dims == (LENGTH if is_length else PLAIN):
        return amount.value
    faults.append(Fault("FB362", f"`{at.text[:60]}` is not {wanted}", Label(at.span), help=f"write {wanted}"))
    return Fraction(0)


def with_techniques(schema: Schema, own: Mapping[str, OwnTechnique]) -> Schema:
    """The schema of a spec with its own techniques among the keys of a step."""
    if not own:
        return schema
    step = schema["$defs"]["step"]
    keys = {**step["properties"], **{name: technique_schema(technique) for name, technique in own.items()}}
    return {**schema, "$defs": {**schema["$defs"], "step": {**step, "properties": keys}}}
