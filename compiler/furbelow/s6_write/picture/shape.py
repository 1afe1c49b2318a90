"""What of a garment makes its outline: its band, its layers from the outside in, and the tiers of each.

Taken from the bench after the last step. All in mm.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from math import pi
from typing import Literal

from furbelow.garment.bench import Bench, Opening
from furbelow.garment.limits import gram_per_m2
from furbelow.garment.lying import Lies
from furbelow.garment.technique import word_of
from furbelow.named import NamedTuple
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.hanging import chains, edge_now, layered
from furbelow.s6_write.picture.form import Form, form_of
from furbelow.s6_write.picture.stiffness import bending_length, is_net
from furbelow.techniques.shared.marks import SIDE, place_of

BEHIND, AT_LEFT = pi, pi / 2
WIDEST_OPEN = 0.96  # of the way round, that a layer which is no ring reaches
SHALLOWEST = 1.0  # mm of a tier: a band may take nearly all of it
AT_THE_TOP = 40  # mm: how far down the ring may lie that the garment is worn by
SEEN = (Lies.HEM, Lies.TRIM, Lies.CHANNEL, Lies.STEEL, Lies.ELASTIC, Lies.TUCK, Lies.STRIP, Lies.PLEAT, Lies.CORD)


Dip = tuple[float, float]


class Mark(NamedTuple):
    """What lies on a tier, as shares of its depth."""

    kind: Lies
    near: float
    far: float


class Tier(NamedTuple):
    """set: the length that its top is sewn to; top, bottom: the cloth along its edges; grams: of one mm2 of it.

    pleats: how many it is laid in; 0 where it is not. dip: how much lower its bottom is in front and behind than at the sides.
    """

    piece: str
    set: float
    top: float
    bottom: float
    depth: float
    bending: float
    grams: float
    pleats: int = 0
    marks: tuple[Mark, ...] = ()
    dip: Dip = (0.0, 0.0)

    @property
    def gathered(self) -> bool:
        return self.top > 1.02 * self.set

    @property
    def fullness(self) -> float:
        return self.top / self.set


class Layer(NamedTuple):
    """alike: so many lie on each other. share: how much of the way round it reaches; 1 for a ring, more where it wraps over itself.

    sheer: one sees through it. lining: another cloth than the outermost layer. trim: how wide what is sewn on its edge is.
    """

    tiers: tuple[Tier, ...]
    start: float
    alike: int
    share: float
    sheer: bool
    lining: bool
    trim: float


class Band(NamedTuple):
    """The band round the top. drawn: elastic or a cord draws it in. cord: how long its ends hang out, 0 for none."""

    depth: float
    drawn: bool
    lining: bool
    cord: float = 0.0


Closed = Literal["ties", "button", "zip", "slit"]  # by what the way in is closed; a slit by what can't be seen


class Way(NamedTuple):
    """The way in beside a closed waist. length: of the slit. ties: how long each is, 0 for none. at: where it lies on the
    wearer, as an angle from the middle of the front towards her left."""

    length: float
    ties: float
    closed: Closed
    at: float


class Shape(NamedTuple):
    """layers: outermost first. waist: the girth of the top as it is worn."""

    form: Form
    band: Band | None
    layers: tuple[Layer, ...]
    waist: float
    way: Way | None

    @property
    def dips(self) -> bool:
        """Whether a hem hangs lower at one place than at another."""
        return any(any(tier.dip) for layer in self.layers for tier in layer.tiers)


def shape_of(run: Run) -> Shape:
    """The shape of the finished garment on this wearer's form."""
    bench, form = run.final, form_of(run)
    waist = _worn_waist(run, form)
    hung = [piece for piece in bench.cloths if piece not in bench.borne]
    hanging = [tiers for chain in chains(bench, hung) if (tiers := _unfolded(bench, chain))]
    rows = {name for seam in bench.seams.values() if seam.on for name in bench.opened(seam.edges[0])}
    # Rows on a line lie over what carries them, each over the one below it.
    hanging.sort(
        key=lambda tiers: (f"{tiers[0]}.top" not in rows, run.hangs[tiers[0]] if f"{tiers[0]}.top" in rows else 0)
    )
    cloths = [_cloth(bench, tiers[0]) for tiers in hanging]
    band = _band(run, hanging, cloths[0] if cloths else "")
    layers = tuple(_layer(run, tiers, waist, cloths[0], band) for tiers in hanging)
    return Shape(form, band, layers, waist, _way(run))


def _cloth(bench: Bench, piece: str) -> str:
    return bench.cloths[piece].piece.piece.cloth.text


def _unfolded(bench: Bench, chain: tuple[str, ...]) -> tuple[str, ...]:
    """The tiers of a chain without the band that they hang from."""
    return tuple(piece for piece in chain if not bench.cloths[piece].folded)


def _worn_waist(run: Run, form: Form) -> float:
    """Elastic and cords lie close to the body as far as they can; a band without them is as long as it is."""
    body = 2 * pi * form.radius(form.top)
    top = next((ring for ring in run.rings if ring.level <= AT_THE_TOP), None)
    if top is None:
        closed = (_closed_waist(run.final, opening) for opening in run.final.openings.values() if not opening.tied)
        return max(body, float(next(closed, 0)))
    low = 0.0 if top.cord else float(top.rest)
    return max(min(body, float(top.open)), low)


def _closed_waist(bench: Bench, opening: Opening) -> Fraction:
    """The girth of a closed waist: of its band, or of the edge itself."""
    return opening.waist if opening.band else bench.closed_round(bench.edge(opening.name))


def _band(run: Run, hanging: Sequence[tuple[str, ...]], outer: str) -> Band | None:
    """The folded band that the layers hang from; else the casing or the shirring at the top of the outermost."""
    bench, tops = run.final, [tiers[0] for tiers in hanging]
    cord = _cord_ends(run)
    over = {up for piece in tops for up in run.over(piece) if bench.cloths[up].folded}
    for piece in bench.cloths:
        if piece in over:
            drawn = any(casing.piece == piece for casing in bench.casings.values())
            return Band(float(bench.depth(piece)), drawn, _cloth(bench, piece) != outer, cord)
    drawn_in = (Lies.CHANNEL, Lies.ELASTIC)
    deep = [float(far) for kind, _, far in _lying(run, tops[0]) if kind in drawn_in] if tops else []
    casing = any(casing.piece == tops[0] for casing in bench.casings.values()) if tops else False
    return Band(max(deep), True, False, cord) if casing and deep else None


def _cord_ends(run: Run) -> float:
    """How long each end of a cord hangs out of its casing once it is tied; 0 where there is none."""
    for done in run.performed:
        if done.step.written.technique == "drawstring" and not done.refused:
            return float(done.step.mm("ends"))
    return 0.0


def _way(run: Run) -> Way | None:
    sewn_on = [word_of(done.step.written, "tie") for done in run.performed if done.step.written.technique == "tie ends"]
    ties = max((float(run.solved.pieces[tie].length) for tie in sewn_on), default=0.0)
    for opening in run.final.openings.values():
        closed: Closed = "zip" if opening.zipped else "button" if opening.closed_by == "button" else "slit"
        seam = run.final.seams.get(opening.seam)
        side = seam is not None and place_of(run.solved, seam) == SIDE
        return Way(float(opening.length), ties, "ties" if ties else closed, AT_LEFT if side else BEHIND)
    return None


def _layer(run: Run, pieces: tuple[str, ...], waist: float, outer: str, band: Band | None) -> Layer:
    bench, solved = run.final, run.solved
    first, last = bench.cloths[pieces[0]], bench.edge(f"{pieces[-1]}.bottom")
    start = float(run.hangs[pieces[0]])
    # A casing or shirring at the top of the layer itself is drawn as the band, and the layer begins below it.
    taken = band.depth if band and start == 0 else 0.0
    top = float(edge_now(bench, f"{pieces[0]}.top").set_length)
    rounds = 1.0 if first.ring else top / waist
    tiers = [_tier(run, pieces[0], rounds, taken, waist), *(_tier(run, piece, rounds, 0.0) for piece in pieces[1:])]
    cloth = _cloth(bench, pieces[0])
    width = solved.materials[last.trim].amounts.get("width") if last.trim else None
    return Layer(
        tuple(tiers),
        start + taken,
        layered(bench, pieces[-1]),
        rounds if rounds >= 1 else min(WIDEST_OPEN, rounds),
        is_net(solved, cloth),
        cloth != outer,
        float(width.as_length_mm()) if width else 0.0,
    )


def _tier(run: Run, piece: str, rounds: float, taken: float, worn_at: float = 0.0) -> Tier:
    """A tier of a layer as if it reached just once round.

    taken: of its top, by the band. worn_at: the length that its top lies at when worn, where that is not what it is sewn to.
    """
    bench, solved = run.final, run.solved
    cloth, top, name = bench.cloths[piece], edge_now(bench, f"{piece}.top"), _cloth(bench, piece)
    # A hem that dips comes to rest as deep as it is at the sides; how it dips is drawn.
    front, side, back = map(float, cloth.rises)
    depth = max(SHALLOWEST, float(bench.depth(piece) - cloth.rises[1]) - taken)
    marks = (
        Mark(kind, (float(near) - taken) / depth, (float(far) - taken) / depth)
        for kind, near, far in _lying(run, piece)
    )
    return Tier(
        piece,
        worn_at or float(top.set_length) / rounds,
        float(bench.edge(f"{piece}.top").cloth_length - _lapped(bench, piece)) / rounds,
        float(bench.edge(f"{piece}.bottom").cloth_length) / rounds,
        depth,
        bending_length(solved, name, cloth.starched),
        float(gram_per_m2(solved, name)) / 1e6,
        _pleats(run, piece) if "pleats" in top.gathered else 0,
        tuple(mark for mark in marks if mark.far > 0),
        (side - front, side - back),
    )


def _lapped(bench: Bench, piece: str) -> Fraction:
    """How much of the top of a ring lies over itself where its slit closes."""
    opening = bench.openings.get(f"{piece}.top")
    return opening.overlap if opening and bench.cloths[piece].ring else Fraction(0)


def _pleats(run: Run, piece: str) -> int:
    """How many pleats the step that laid them made."""
    for done in run.performed:
        count = done.step.amounts.get("count")
        if done.drawn and piece in done.touches and count:
            return int(count.as_number())
    return 0


def _lying(run: Run, piece: str) -> Iterator[tuple[Lies, Fraction, Fraction]]:
    """What lies along a piece where it is seen, from its top as it is sewn."""
    used = run.final.edge(f"{piece}.top").used
    folded = [band for done in run.performed for band in done.on_cloth.folded.get(piece, ())]

    def sewn(down: Fraction) -> Fraction:
        return down - used - sum((max(Fraction(0), min(down, band.far) - band.near) for band in folded), Fraction(0))

    for done in run.performed:
        # The seam of a row or pocket lies under it: what is seen is the row itself.
        on_line = any(seam.on for name, seam in done.after.seams.items() if name not in done.before.seams)
        for each in done.on_cloth.occupants:
            # Tapes that run down it lie inside.
            if each.kind is Lies.STRIP and (on_line or each.along):
                continue
            if each.piece == piece and each.down and not each.across and each.kind in SEEN:
                yield each.kind, sewn(each.down.near), sewn(each.down.far)
