"""What of a garment makes its outline: its band, its layers from the outside in, and the tiers of each.

Taken from the bench after the last step. All in mm.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from furbelow.garment.bench import Bench, State
from furbelow.garment.limits import gram_per_m2
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.hanging import chains, edge_now, layered
from furbelow.s6_write.picture.form import Form, form_of
from furbelow.s6_write.picture.stiffness import bending_length, is_net


class Tier(NamedTuple):
    """set: the length that its top is sewn to; top, bottom: the cloth along its edges; grams: of one mm2 of it."""

    piece: str
    set: float
    top: float
    bottom: float
    depth: float
    bending: float
    grams: float
    pleated: bool = False

    @property
    def gathered(self) -> bool:
        return self.top > 1.02 * self.set

    @property
    def fullness(self) -> float:
        return self.top / self.set


class Layer(NamedTuple):
    """alike: so many lie on each other. share: how much of the way round it reaches; 1 for a ring.

    sheer: one sees through it. hem: how deep the stitched hem is, trim: how wide what is sewn on the edge; 0 where there is none.
    lining: another cloth than the outermost layer.
    """

    tiers: tuple[Tier, ...]
    start: float
    alike: int
    share: float
    sheer: bool
    lining: bool
    hem: float
    trim: float


class Band(NamedTuple):
    """The band round the top. drawn: elastic or a cord draws it in."""

    depth: float
    drawn: bool
    lining: bool


class Shape(NamedTuple):
    """layers: outermost first. waist: the girth of the top as it is worn."""

    form: Form
    band: Band | None
    layers: tuple[Layer, ...]
    waist: float


def shape_of(run: Run) -> Shape:
    """The shape of the finished garment on this wearer's form."""
    bench, form = run.final, form_of(run)
    waist = _worn_waist(run, form)
    held = {each.partition(".")[0] for each in _held(bench)}
    hanging = [chain for chain in chains(bench, bench.cloths) if _hangs(bench, chain, held)]
    cloths = [bench.cloths[_tiers(bench, chain)[0]].piece.piece.cloth.text for chain in hanging]
    layers = [_layer(run, _tiers(bench, chain), waist, cloths[0]) for chain in hanging]
    return Shape(form, _band(run, cloths[0] if cloths else ""), tuple(layers), waist)


def _held(bench: Bench) -> Iterator[str]:
    """Every edge that a seam along it or a stack holds, or that is the top of all."""
    for seam in bench.seams.values():
        if len(seam.edges) == 2 and not seam.edges[0].endswith((".start", ".end")):
            for name in seam.edges:
                yield from bench.opened(name)
    for name in bench.edges:
        if "." not in name:
            yield from bench.opened(name)


def _hangs(bench: Bench, chain: tuple[str, ...], held: set[str]) -> bool:
    """What hangs down in tiers; not what is sewn on cloth, nor a strip along an edge."""
    tiers = _tiers(bench, chain)
    return bool(tiers) and (not held or tiers[0] in held)


def _tiers(bench: Bench, chain: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(piece for piece in chain if not bench.cloths[piece].folded)


def _worn_waist(run: Run, form: Form) -> float:
    """Elastic and cords lie close to the body as far as they can; a band without them is as long as it is."""
    body = 6.2832 * form.radius(form.top)
    top = next((ring for ring in run.rings if ring.level <= 40), None)
    if top is None:
        closed = (opening.waist for opening in run.final.openings.values() if opening.band and not opening.tied)
        return max(body, float(next(closed, 0)))
    low = 0.0 if top.cord else float(top.rest)
    return max(min(body, float(top.open)), low)


def _band(run: Run, outer: str) -> Band | None:
    bench = run.final
    for piece, cloth in bench.cloths.items():
        if (
            cloth.folded
            and run.hangs[piece] == 0
            and any(piece in bench_over for bench_over in run.levels.over.values())
        ):
            drawn = any(casing.piece == piece for casing in bench.casings.values())
            return Band(float(bench.depth(piece)), drawn, cloth.piece.piece.cloth.text != outer)
    return None


def _layer(run: Run, chain: tuple[str, ...], waist: float, outer: str) -> Layer:
    bench, solved = run.final, run.solved
    tiers, last = [], bench.edge(f"{chain[-1]}.bottom")
    ring = bench.cloths[chain[0]].ring
    for piece in chain:
        cloth, top, bottom = bench.cloths[piece], edge_now(bench, f"{piece}.top"), bench.edge(f"{piece}.bottom")
        name = cloth.piece.piece.cloth.text
        own = bench.edge(f"{piece}.top").cloth_length
        set_ = (waist if ring else float(top.set_length)) if piece == chain[0] else float(top.set_length)
        tiers.append(
            Tier(
                piece,
                set_,
                float(own),
                float(bottom.cloth_length),
                float(bench.depth(piece)),
                bending_length(solved, name, cloth.starched),
                float(gram_per_m2(solved, name)) / 1e6,
                "pleats" in top.gathered,
            )
        )
    name = bench.cloths[chain[0]].piece.piece.cloth.text
    hem = float(last.used) * 0.6 if last.state is State.HEMMED and not last.trim else 0.0
    width = solved.materials[last.trim].amounts.get("width") if last.trim else None
    trim = float(width.as_length_mm()) if width else 0.0
    share = 1.0 if ring else min(0.95, tiers[0].set / max(waist, 1.0))
    start = float(run.hangs[chain[0]])
    alike = layered(bench, chain[-1])
    return Layer(tuple(tiers), start, alike, share, is_net(solved, name), name != outer, hem, trim)
