"""A spec and a class whose every text tries to be more than text: the probes stand wherever a person may write freely."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import cycle, islice
from pathlib import Path
from typing import Any

import yaml
from furbelow.s1_read.read_spec import read_spec

from tests.s6_write.probes import PROBES

SPECS = Path(__file__).parents[2] / "specs"
LINE = 200  # letters that a line of a spec may have


def written(tree: Any) -> str:
    return yaml.dump(tree, Dumper=yaml.SafeDumper, sort_keys=False, allow_unicode=False, width=10_000)


def _plain_spec() -> Any:
    return yaml.load((SPECS / "larkspur.yaml").read_text(encoding="utf-8"), yaml.BaseLoader)


def _is_read(probe: str) -> bool:
    """Letters that a spec may not hold (controls and the like) are refused when it is read."""
    tree = _plain_spec()
    tree["title"] = probe[:LINE]
    return read_spec(("spec.yaml", written(tree).encode())).value is not None


READ = tuple(probe for probe in PROBES if _is_read(probe))


def _chunks() -> list[str]:
    chunks = [""]
    for probe in READ:
        if len(chunks[-1]) + len(probe) + 1 > LINE:
            chunks.append("")
        chunks[-1] = f"{chunks[-1]} {probe}".strip()[:LINE]
    return chunks


CHUNKS = _chunks()


def _texts(turn: int) -> Iterator[str]:
    """The chunks round and round; each turn begins elsewhere, so that every field meets other ones."""
    return islice(cycle(CHUNKS), turn * 5 % len(CHUNKS), None)


def hostile_spec(turn: int, *, broken_rule: bool = False) -> str:
    """A sound spec, or one whose own rule does not hold. Every probe stands in its prose, and in each turn other ones in its lines."""
    tree, texts = _plain_spec(), _texts(turn)
    prose = "\n\n".join(READ)
    tree["title"] = next(texts)
    tree["about"], tree["notes"] = prose, "\n".join(reversed(READ))
    tree["measures"] = {"dance_length": {"about": next(texts), "value": "skirt_length / 2"}}
    for section in ("choices", "materials", "pieces"):
        for entry in tree[section].values():
            entry["about"] = next(texts)
    for material in tree["materials"].values():
        material |= {"colour": next(texts), "supplier": next(texts), "code": next(texts)}
    for step in tree["steps"]:
        if "part" in step:
            step["part"] = next(texts)
        else:
            step["tip"] = prose if "press" in step else next(texts)
    # Braces are places to fill in here.
    said = (text.replace("{", "(").replace("}", ")") for text in texts)
    tree["techniques"] = {
        "wax seam": {
            "about": next(said),
            "works on": "seam",
            "leaves": "neatened",
            "cautions": {"heat": next(said)},
            "do": [next(said), {"say": next(said), "check": next(said), "tolerance": next(said), "remedy": next(said)}],
        }
    }
    at = next(number for number, step in enumerate(tree["steps"]) if step.get("neaten") == {"seam": "lining.ends"})
    tree["steps"][at] = {"wax seam": {"seam": "lining.ends"}, "tip": next(texts)}
    deep = "900 cm" if broken_rule else "1 cm"
    tree["rules"] = [{"check": f"flounce.depth >= {deep}", "message": prose}]
    return written(tree)


def hostile_class() -> str:
    """A wearer for each chunk of probes, and one whose measure is out of range, to be told as missing."""
    bodies = [f"{70 + number} cm" for number in range(len(CHUNKS))] + ["170 cm"]
    wearers = [
        {
            "wearer": name,
            "body": {"waist_girth": waist, "hip_girth": "104 cm", "waist_height": "104 cm", "knee_height": "46 cm"},
        }
        for name, waist in zip([*CHUNKS, f"out {CHUNKS[0]}"[:LINE]], bodies, strict=True)
    ]
    return written({"class": CHUNKS[3], "wearers": wearers})
