"""Twenty families of sound garments, made by rule: tiers, layers, ways of closing, hems, waists and linings.

They are for the mutation tests: each is a spec as plain maps and lists, as a YAML file would hold it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

Doc = dict[str, Any]


@dataclass(frozen=True)
class Family:
    tiers: int
    layers: int
    flat_first: bool  # tiers are sewn flat and closed by one side seam
    ravels: bool
    waist: str  # band or fold
    hem: str  # narrow, trim
    lined: bool
    panels: bool  # the top tier is two panels joined to one ring

    @property
    def name(self) -> str:
        words = [f"{self.tiers} tiers", f"{self.layers} layers", "flat" if self.flat_first else "rings"]
        words += [self.waist, self.hem] + ["lined"] * self.lined + ["panels"] * self.panels + ["ravels"] * self.ravels
        return ", ".join(words)


FAMILIES = (
    Family(1, 1, False, True, "fold", "narrow", False, False),
    Family(1, 1, False, True, "band", "narrow", False, True),
    Family(1, 1, True, False, "band", "trim", False, False),
    Family(2, 1, False, True, "fold", "trim", False, False),
    Family(2, 1, True, True, "fold", "narrow", False, False),
    Family(2, 1, False, True, "band", "narrow", False, True),
    Family(2, 1, True, False, "band", "trim", False, False),
    Family(2, 2, False, False, "band", "trim", False, False),
    Family(2, 2, True, False, "band", "narrow", False, False),
    Family(2, 2, False, True, "band", "narrow", False, False),
    Family(2, 3, False, False, "band", "trim", True, False),
    Family(3, 1, False, True, "fold", "narrow", False, False),
    Family(3, 1, True, True, "fold", "trim", False, False),
    Family(3, 1, False, False, "band", "trim", True, False),
    Family(3, 1, True, True, "band", "narrow", True, False),
    Family(3, 2, False, False, "band", "trim", True, False),
    Family(3, 2, True, True, "band", "narrow", False, False),
    Family(3, 1, False, True, "band", "trim", False, True),
    Family(4, 1, True, True, "fold", "narrow", False, False),
    Family(4, 2, False, False, "band", "trim", False, False),
)


def spec_of(family: Family) -> Doc:
    """The family as a spec for one size. Every number is a literal or a plain formula; nothing is left to defaults."""
    tiers = [f"tier_{number}" for number in range(1, family.tiers + 1)]
    pieces: Doc = {}
    for number, tier in enumerate(tiers):
        length = "130 cm" if number == 0 else f"{tiers[number - 1]}.length * 2"
        if number == 1 and family.panels:
            length = f"{tiers[0]}.length * 2 * 2"
        if number == 0 and family.panels:
            length = "65 cm"
        pieces[tier] = {"from": "cloth", "length": length, "depth": "20 cm", "count": str(family.layers)}
    if family.panels:
        pieces[tiers[0]]["count"] = "2"
    if family.lined:
        pieces["lining"] = {"from": "lining_cloth", "length": "130 cm", "depth": f"{20 * family.tiers} cm - 3 cm"}
    if family.waist == "band":
        pieces["band"] = {"from": "lining_cloth", "length": "130 cm", "depth": "30 mm"}
    depth = 20 * family.tiers + (3 if family.waist == "band" else 0)
    return {
        "furbelow": "1",
        "title": family.name,
        "rounding": "5 mm",
        "body": {"waist_girth": {}, "hip_girth": {}},
        "sizes": {"one": {"waist_girth": "75 cm", "hip_girth": "100 cm"}},
        "worn": {
            "from": "waist",
            "over": "hip_girth",
            "ease": "5 cm",
            "length": f"{depth} cm",
            **({"hidden": {"lining": "3 cm"}} if family.lined else {}),
        },
        "materials": {
            "cloth": {
                "kind": "cloth",
                "fibre": "cotton" if family.ravels else "nylon",
                "width": "140 cm",
                "weight": "40 g/m2",
                "ravels": "yes" if family.ravels else "no",
            },
            **(
                {
                    "lining_cloth": {
                        "kind": "cloth",
                        "fibre": "polyester",
                        "width": "140 cm",
                        "weight": "90 g/m2",
                        "ravels": "yes",
                    }
                }
                if "band" in pieces or "lining" in pieces
                else {}
            ),
            **({"edging": {"kind": "trim", "width": "15 mm"}} if family.hem == "trim" else {}),
            "elastic": {"kind": "elastic", "width": "25 mm", "stretch": "100%"},
        },
        "pieces": pieces,
        "steps": list(_steps(family, tiers)),
    }


def _steps(family: Family, tiers: list[str]) -> Iterator[Doc]:
    """The steps of the family: tiers, lining, waist."""
    ring = not family.flat_first
    if ring:
        for number, tier in enumerate(tiers):
            into = "one ring" if number == 0 and family.panels else "a ring each"
            yield {"join ends": {"of": tier, "seam": "1 cm", "into": into}}
            if family.ravels:
                yield {"neaten": {"seam": f"{tier}.ends"}}
    for above, below in zip(tiers, tiers[1:], strict=False):
        yield {"gather": {"edge": f"{below}.top", "to": f"{above}.bottom"}}
        yield {"attach": {"edge": f"{below}.top", "to": f"{above}.bottom", "seam": "1 cm"}}
        if family.ravels:
            yield {"neaten": {"seam": f"{below}.top"}}
    if family.flat_first:
        yield {"join ends": {"of": list(tiers), "seam": "1 cm"}}
        if family.ravels:
            yield {"neaten": {"seam": f"{tiers[0]}.ends"}}
    hem = f"{tiers[-1]}.bottom"
    if family.hem == "trim":
        yield {"edge with trim": {"edge": hem, "trim": "edging", "turn up": "5 mm", "overlap": "2 cm"}}
    else:
        yield {"narrow hem": {"edge": hem, "first turn": "5 mm", "second turn": "10 mm"}}
    if family.lined:
        yield {"join ends": {"of": "lining", "seam": "1 cm"}}
        yield {"neaten": {"seam": "lining.ends"}}
        yield {"narrow hem": {"edge": "lining.bottom", "first turn": "5 mm", "second turn": "10 mm"}}
    top = f"{tiers[0]}.top"
    if family.layers > 1 or family.lined:
        layers: list[Any] = [top] + ([{"edge": "lining.top", "right side": "in"}] if family.lined else [])
        yield {"stack layers": {"layers": layers, "as": "waist_edge"}}
        top = "waist_edge"
    if family.waist == "band":
        yield {"join ends": {"of": "band", "seam": "1 cm"}}
        yield {"band casing": {"band": "band", "to": top, "seam": "1 cm", "gap": "5 cm"}}
        casing = "band"
    else:
        yield {"folded casing": {"edge": top, "depth": "30 mm", "turn under": "6 mm", "gap": "5 cm"}}
        casing = top
    yield {"insert elastic": {"elastic": "elastic", "into": casing, "length": "65 cm", "overlap": "2 cm"}}
    yield {"close gap": {"of": casing}}
