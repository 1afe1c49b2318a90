"""Construction mistakes planted in sound garments: what a tired maker does to a list of steps.

`python -m tests.s3_rehearse.mutants` plants all of them in every family and demo, and prints what was caught.
A mutant is caught when the rehearsal tells a fault that the sound garment has not. One that is not caught must be
shown to be as sound: `equivalent` says why.
"""

from __future__ import annotations

import copy
import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

import yaml
from furbelow.garment.bench import Bench
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec

from tests.demos.demos import NAMES, SPECS
from tests.s3_rehearse.families import FAMILIES, Doc, spec_of

# A plain length, as a maker writes it.
_LENGTH = re.compile(r"[0-9./ ]+ (?:mm|cm|m|in)")
FINISHING = ("press", "starch", "turn seam")  # left out, the garment is less neat and as sound


@dataclass(frozen=True)
class Mutant:
    kind: str  # drop, double, swap, early, late, side, count, cut; tiny and huge numbers; narrow and deep pieces
    technique: str
    what: str
    doc: Doc


@dataclass(frozen=True)
class Outcome:
    codes: frozenset[str]  # of errors and warnings
    final: Bench | None


def outcome(doc: Doc) -> Outcome:
    """What the rehearsal of a spec tells, and the bench at the end where it is sound."""
    staged = read_spec(("mutant.yaml", yaml.safe_dump(doc, sort_keys=False).encode()))
    if staged.value is None:
        return Outcome(frozenset(fault.code for fault in staged.faults), None)
    spec = staged.value
    size, body = next(iter(spec.sizes.items()))
    proved = prove(Order(spec, f"size {size}", body, {}, Workroom()))
    told = frozenset(fault.code for fault in proved.faults)
    return Outcome(told, proved.value.run.final if proved.value else None)


def sound_garments() -> Iterator[tuple[str, Doc]]:
    """The demos and the families."""
    for name in NAMES:
        yield name, yaml.load((SPECS / f"{name}.yaml").read_text(encoding="utf-8"), yaml.BaseLoader)
    for family in FAMILIES:
        yield family.name, spec_of(family)


def mutants(doc: Doc) -> Iterator[Mutant]:
    """Every single mistake of these kinds."""
    steps = doc["steps"]
    work = [at for at, step in enumerate(steps) if "part" not in step]
    for at in work:
        (technique, args) = _step(steps[at])
        yield _changed(doc, "drop", technique, at, lambda steps, at=at: steps.pop(at))
        yield _changed(doc, "double", technique, at, lambda steps, at=at: steps.insert(at, copy.deepcopy(steps[at])))
        yield _changed(doc, "early", technique, at, lambda steps, at=at: steps.insert(0, steps.pop(at)))
        yield _changed(doc, "late", technique, at, lambda steps, at=at: steps.append(steps.pop(at)))
        for key, value in args.items() if isinstance(args, dict) else ():
            if isinstance(value, str) and _LENGTH.fullmatch(value) and Fraction(value.split()[0]):
                for kind, said in (("tiny", "0.2 mm"), ("huge", "4 m")):
                    yield _with_arg(doc, kind, technique, at, key, said)
            for side, other in (("top", "bottom"), ("bottom", "top")):
                if isinstance(value, str) and value.endswith(f".{side}"):
                    yield _with_arg(doc, "side", technique, at, key, f"{value.removesuffix(side)}{other}")
    for at, after in zip(work, work[1:], strict=False):
        (technique, _) = _step(steps[at])

        def swapped(steps: list[Doc], at: int = at, after: int = after) -> None:
            steps[at], steps[after] = steps[after], steps[at]

        yield _changed(doc, "swap", technique, at, swapped)
    for name, piece in doc["pieces"].items():
        for kind, key, share in (("narrow", "length", "/ 3"), ("deep", "depth", "* 4")):
            if piece.get(key) is not None:
                changed = copy.deepcopy(doc)
                changed["pieces"][name][key] = f"({piece[key]}) {share}"
                yield Mutant(kind, "", f"{name} with its {key} {share}", changed)
        changed = copy.deepcopy(doc)
        changed["pieces"][name]["count"] = f"{piece.get('count', '1')} + 1"
        yield Mutant("count", "", f"one {name} more", changed)
        for key, size in (("cut length", piece.get("length")), ("cut depth", piece.get("depth"))):
            if size is not None:  # both sizes fixed, and the cut one forgets every allowance
                changed = copy.deepcopy(doc)
                changed["pieces"][name][key] = size
                yield Mutant("cut", "", f"{name} {key} without its allowances", changed)


def equivalent(mutant: Mutant, sound: Outcome, got: Outcome, doc: Doc) -> str:
    """Why a mutant that was not caught is the same garment; empty where it is not shown."""
    if got.final == sound.final:
        return "the same bench at the end"
    if mutant.kind == "drop" and mutant.technique in FINISHING:
        return "a finishing step"
    if mutant.kind == "count" and got.final is not None and _all_stacked(got.final, mutant.what.split()[1]):
        return "the copy is one more layer of the stack"
    if mutant.kind == "count" and any(
        "patch pocket" in step and step["patch pocket"]["pocket"] == mutant.what.split()[1] for step in doc["steps"]
    ):
        return "a pocket at each side"
    if mutant.kind == "drop" and mutant.technique in ("neaten", "narrow hem"):
        return "nothing there ravels" if not _left_raw(got, doc) else ""
    if mutant.kind == "deep" and "length" in doc["worn"] and got.final is not None:
        return "other proportions of one length, which is proved"
    if mutant.kind == "narrow" and got.final is not None and not any(cloth.ring for cloth in got.final.cloths.values()):
        return "a flat garment, whose ties are asked whether they reach round"
    if mutant.kind == "tiny" and mutant.what.endswith("below top: 0.2 mm"):
        return "it lies as high as it can"
    if mutant.kind in ("swap", "early", "late") and _books(got) == _books(sound):
        return "another order with the same cut sizes, lengths and finished edges"
    return ""


def _books(got: Outcome) -> object:
    """What every edge has become: how much was used of it, how it is finished, how long it is."""
    if got.final is None:
        return None
    return {name: (edge.used, edge.state, edge.set_length, edge.trim) for name, edge in got.final.edges.items()}


def _left_raw(got: Outcome, doc: Doc) -> bool:
    if got.final is None:
        return True
    # By the bench, for a piece of a repeat has another name there than in the file.
    cloths = {name: doc["materials"][cloth.piece.piece.cloth.text] for name, cloth in got.final.cloths.items()}
    raw = [ply.piece for seam in got.final.seams.values() if seam.state == "raw" for ply in seam.plies]
    raw += [piece for edge in got.final.edges.values() if edge.state == "raw" for piece in edge.pieces]
    return any(cloths[piece].get("ravels") == "yes" for piece in raw if not _all_stacked(got.final, piece))


def _all_stacked(final: Bench, piece: str) -> bool:
    """Every copy of the piece lies in a stack."""
    # A piece that is cut for each of several layers bears their number behind its name.
    return any(edge.partition(".")[0].rstrip("_0123456789") == piece for edge in final.layered)


def _step(step: Doc) -> tuple[str, Doc]:
    return next((key, value) for key, value in step.items() if key != "tip")


def _changed(doc: Doc, kind: str, technique: str, at: int, change: Any) -> Mutant:
    changed = copy.deepcopy(doc)
    change(changed["steps"])
    return Mutant(kind, technique, f"{kind} step {at + 1}, {doc['steps'][at]}", changed)


def _with_arg(doc: Doc, kind: str, technique: str, at: int, key: str, value: str) -> Mutant:
    changed = copy.deepcopy(doc)
    changed["steps"][at][technique][key] = value
    return Mutant(kind, technique, f"step {at + 1} with {key}: {value}", changed)


def judged(doc: Doc) -> Iterator[tuple[Mutant, str]]:
    """Each mutant with "caught", or why it is equivalent, or "" where it slipped through."""
    sound = outcome(doc)
    assert sound.final is not None, sound.codes
    for mutant in mutants(doc):
        got = outcome(mutant.doc)
        if got.final is None or got.codes - sound.codes:
            yield mutant, "caught"
        else:
            yield mutant, equivalent(mutant, sound, got, mutant.doc)


def main() -> None:
    """Prints, for each kind of mistake, how many were planted, caught and equivalent, and names what slipped."""
    planted: Counter[str] = Counter()
    seen: Counter[str] = Counter()
    for name, doc in sound_garments():
        for mutant, verdict in judged(doc):
            planted[mutant.kind] += 1
            seen[f"{mutant.kind} {'caught' if verdict == 'caught' else 'equivalent' if verdict else 'SLIPPED'}"] += 1
            if not verdict:
                print(f"slipped: {name}: {mutant.what}")
    for kind, count in planted.items():
        caught, same = seen[f"{kind} caught"], seen[f"{kind} equivalent"]
        print(f"{kind:7} {count:5} planted, {caught:5} caught, {same:4} equivalent, {count - caught - same:3} slipped")
    print(f"all     {planted.total():5} planted")


if __name__ == "__main__":
    main()
