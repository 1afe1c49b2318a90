"""The bench: every piece, edge, seam and casing as it is at one moment of the work.

All lengths in mm. The bench never changes; a step gives a new one. Copies that are worked alike are kept once with
their number, so two layers of net are one flounce with copies = 2 until they are stacked.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from enum import StrEnum
from fractions import Fraction

from furbelow.garment.matching import LEVEL, Places
from furbelow.garment.solved import Solved, SolvedPiece
from furbelow.named import NamedTuple


class State(StrEnum):
    """How an edge or a seam margin is finished."""

    RAW = "raw"
    SELVEDGE = "selvedge"
    NEATENED = "neatened"
    HEMMED = "hemmed"
    SEWN = "sewn"
    ENCLOSED = "enclosed"


LINED = ".lined"  # ends the name of a seam that bags a piece out with its lining
WORKABLE = (State.RAW, State.SELVEDGE, State.NEATENED)  # an edge that can still be sewn


class Ply(NamedTuple):
    """Copies of one piece lying in an edge or margin; `right_side` faces "out" or "in"."""

    piece: str
    copies: int = 1
    right_side: str = "out"


class Edge(NamedTuple):
    """One edge, or several stacked ones that are worked as one.

    cloth_length: cloth that lies along it; set_length: how long it is now. Both of one copy.
    used: depth that turns and seams have taken here so far. slit: opened by a placket, so flat though its piece is a ring.
    stands_out: what the margins of an open seam add at its two ends together, until something turns them back.
    """

    name: str
    plies: tuple[Ply, ...]  # outermost first
    copies: int
    cloth_length: Fraction
    set_length: Fraction
    state: State = State.RAW
    used: Fraction = Fraction(0)
    gathered: str = ""  # the method, empty where the edge lies flat
    held: bool = True  # gathers are held by a seam
    trim: str = ""
    slit: bool = False
    marks: int = 0  # in how many equal parts it is marked, on both faces; 0 where it is not
    stands_out: Fraction = Fraction(0)

    @property
    def end_to_end(self) -> Fraction:
        """How long it is with the margins that stand out at its ends."""
        return self.set_length + self.stands_out

    @property
    def pieces(self) -> tuple[str, ...]:
        return tuple(ply.piece for ply in self.plies)

    @property
    def ratio(self) -> Fraction:
        """Cloth per set length: 2 means twice as full."""
        return self.cloth_length / self.set_length


class OnLine(NamedTuple):
    """Where a seam lies that sews an edge on to the middle of a piece: `down` mm from its cut top edge.

    covered_by: the piece above that is to hang over this seam; empty where none has to.
    """

    piece: str
    down: Fraction
    covered_by: str = ""


class SeamGap(NamedTuple):
    """A stretch of a seam that is left open: `down` mm from its cut top, `length` long; closed once something fills it."""

    down: Fraction
    length: Fraction
    closed: bool = False


class Seam(NamedTuple):
    """A seam and what its margin is. `edges` are the names of the edges sewn together; `length` is of one copy.

    on: the line on another piece to which its one edge is sewn; None for a seam of edges alone.
    gap: a stretch of it that is open; slit: how far it is open above the finished hem. Neither is in `length`.
    """

    name: str
    edges: tuple[str, ...]
    plies: tuple[Ply, ...]
    length: Fraction
    copies: int
    width: Fraction
    stitch: str  # ISO 4915 type
    state: State = State.RAW
    turned: str = ""  # the piece the margin lies towards
    topstitched: bool = False
    trapped: bool = False  # lies between layers, so that nothing rubs on it
    on: OnLine | None = None
    gap: SeamGap | None = None
    slit: Fraction = Fraction(0)
    topstitched_slit: bool = False
    together: bool = False  # both margins are neatened as one, so that it can't be pressed open


class Holes(NamedTuple):
    """Two holes in the outer layer of a casing, for the ends of its cord: what they are, and how long or wide, in mm."""

    kind: str
    size: Fraction


class Casing(NamedTuple):
    """A channel for elastic or a cord. `width`: clear width inside; `length`: round the ring; `gap`: opening in its
    stitching, 0 where there is none. A cord's ends hang out of the gap; shirring has `elastic` without a gap.
    flat: its two ends are open, until a seam closes them with the elastic in it; a cord hangs out of them."""

    name: str
    piece: str
    width: Fraction
    length: Fraction
    gap: Fraction
    open: bool = True
    elastic: str = ""
    elastic_length: Fraction = Fraction(0)  # of the closed loop at rest; as it is cut while the casing is flat
    cord: str = ""
    flat: bool = False
    in_seam: bool = False  # the gap is unpicked in an upright seam, across the channel
    holes: Holes | None = None  # then there is no gap
    channels: int = 1  # each `width` wide; rows of stitches lie between them
    buttoned: bool = False  # the end of its elastic comes out of the gap and is buttoned on

    @property
    def left_open(self) -> Fraction:
        """How much its row leaves open."""
        return Fraction(0) if self.in_seam else self.gap


class Opening(NamedTuple):
    """A way in beside the waist, so that the closed waist need not pass the hips.

    length: of the slit below the waist seam; round_it: girth of the cloth at its foot; waist: girth of the closed band.
    """

    name: str  # the edge that is open
    piece: str
    length: Fraction
    overlap: Fraction
    round_it: Fraction
    band: str = ""
    waist: Fraction = Fraction(0)
    closed_by: str = ""
    tied: bool = False  # its ties are sewn on
    seam: str = ""  # in which it was left open; empty where it was cut
    zipped: bool = False


class Darts(NamedTuple):
    """Cloth taken in at the top of one copy or ring: `taken` in mm on its seam line, all darts together, and nothing `end` mm
    below the cut top edge, where they run out. The seam line lies `line` mm below that edge; above it they take more."""

    taken: Fraction
    end: Fraction
    line: Fraction = Fraction(0)

    def open_at(self, down: Fraction) -> Fraction:
        """How much of that cloth is there again at a depth; below 0 above the seam line."""
        return self.taken * min((max(down, Fraction(0)) - self.line) / (self.end - self.line), Fraction(1))


NO_DARTS = Darts(Fraction(0), Fraction(1))


class DrawnUp(NamedTuple):
    """What bustle tapes on a piece draw up behind: by so much, as far as `reach` to both sides of the middle of the back."""

    by: Fraction
    reach: Fraction


class Cloth(NamedTuple):
    """A piece on the bench. `in_parts`: cut in segments that are not joined yet.

    blank: still the rectangle that its ring, its gores or its bias strip are to be cut from.
    rises: how much higher its bottom edge was cut in front, at the sides and behind than where it is deepest.
    levelled: its top edge was cut lower where the waist lies lower, so nothing level is measured from there.
    """

    piece: SolvedPiece
    copies: int
    ring: bool = False
    folded: bool = False
    in_parts: bool = False
    blank: bool = False
    pressed: bool = False
    starched: bool = False
    darts: Darts | None = None
    rises: Places = LEVEL
    levelled: bool = False
    drawn_up: DrawnUp | None = None


class Bench(NamedTuple):
    cloths: Mapping[str, Cloth]
    edges: Mapping[str, Edge]
    seams: Mapping[str, Seam] = {}
    casings: Mapping[str, Casing] = {}
    holes: Mapping[str, Holes] = {}  # by the name of the casing to come
    openings: Mapping[str, Opening] = {}
    units: Mapping[str, str] = {}  # piece -> the first piece of its unit
    layered: Mapping[str, str] = {}  # edge -> the stack it lies in
    sewn_on: Mapping[str, frozenset[str]] = {}  # piece -> trims, tapes and elastic that steps on it have used
    straps: frozenset[str] = frozenset()  # pieces that go over the shoulders and hold the garment up
    borne: Mapping[str, str] = {}  # piece -> the one it lies in or on: a pocket, a facing, a strip in a seam, a tie
    spoiled: frozenset[str] = frozenset()  # pieces that a refused step touched: what follows from it is not said

    def edge(self, name: str) -> Edge:
        return self.edges[name]

    def opened(self, name: str) -> tuple[str, ...]:
        """The piece edges in an edge: itself, or those of the layers in a stack, outermost first."""
        if "." in name:
            return (name,)
        layers = (below for below, stack in self.layered.items() if stack == name)
        return tuple(edge for layer in layers for edge in self.opened(layer))

    def ring(self, edge: Edge) -> bool:
        return not edge.slit and all(self.cloths[piece].ring for piece in edge.pieces)

    def finished(self, edge: Edge) -> bool:
        """Whether nothing of an edge is left to do: turned, bound, or with a facing turned inside."""
        if edge.state is not State.SEWN:
            return edge.state in (State.HEMMED, State.ENCLOSED, State.SELVEDGE)
        seam = self.seam_at(edge.name)
        return seam is not None and seam.state is State.ENCLOSED and seam.trapped

    def goes_round(self, edge: Edge) -> bool:
        """Whether an edge goes all round once its way in, if it has one, is closed."""
        return self.ring(edge) or (edge.name in self.openings and all(self.cloths[piece].ring for piece in edge.pieces))

    def closed_round(self, edge: Edge) -> Fraction:
        """How long it is all round then: the sides of a way in overlap."""
        opening = self.openings.get(edge.name)
        return edge.set_length - opening.overlap if opening else edge.set_length

    def unit(self, piece: str) -> tuple[str, ...]:
        """All pieces sewn to this one, itself included, in the order of the spec."""
        return tuple(other for other in self.cloths if self.units[other] == self.units[piece])

    def inside(self, piece: str) -> bool:
        """Whether a piece is sewn on inside another, its own ends finished, so that no seam at the ends passes through it."""
        on = any(seam.on and seam.edges and seam.edges[0].startswith(f"{piece}.") for seam in self.seams.values())
        return on and all(self.edges[f"{piece}.{side}"].state not in WORKABLE for side in ("start", "end"))

    def strips_round(self, piece: str) -> int:
        """How many strips of a piece lie side by side in one ring or length: the pieces cut for each that is left."""
        cloth = self.cloths[piece]
        return max(cloth.piece.count // max(cloth.copies, 1), 1)

    def flare(self, piece: str) -> Fraction:
        """How much longer a line round a ring or flat length of a piece is for each length that it lies lower."""
        cloth = self.cloths[piece]
        flared = cloth.piece.ring or cloth.piece.gore
        if flared is None or cloth.blank:
            return Fraction(0)
        return (flared.hem - flared.top) / flared.depth * self.strips_round(piece)

    def cloth_at(self, piece: str, down: Fraction) -> Fraction:
        """How much cloth lies along a line `down` mm from the cut top edge: round a ring, or from end to end."""
        cloth, darts = self.cloths[piece].piece, self.cloths[piece].darts or NO_DARTS
        flared = cloth.ring or cloth.gore
        top = self.edges[f"{piece}.top"].cloth_length + darts.taken
        widened = self.flare(piece) * (down - flared.above) if flared else 0
        return top + widened - (darts.taken - darts.open_at(down))

    def measured(self, edge: Edge) -> Fraction:
        """What a tape along an edge measures as it lies now, in mm, with the margins that stand out at its ends.

        The lengths of an edge are those of its seam line. Of a flared piece the cut edge is longer below that line and
        shorter above it, until the seam or turn is made.
        """
        piece, _, side = self.opened(edge.name)[0].partition(".")
        cloth = self.cloths[piece]
        if side in ("start", "end") and not cloth.folded:
            above, below = (self.edges[f"{piece}.{each}"].used for each in ("top", "bottom"))
            return self.beside(piece, cloth.piece.cut_depth - above - below)
        flared = cloth.piece.ring or cloth.piece.gore
        if edge.gathered:
            return edge.end_to_end
        gone = Fraction(0) if edge.state in WORKABLE else edge.used
        darts = cloth.darts if side == "top" and cloth.darts else NO_DARTS
        at_cut = edge.end_to_end + darts.open_at(gone)
        if flared is None:
            return at_cut
        to_come = (flared.above if side == "top" else flared.below) - gone
        return at_cut + self.flare(piece) * to_come * (-1 if side == "top" else 1)

    def depth(self, piece: str) -> Fraction:
        """The depth of a piece as it shows now: cut depth less what its edges have used; half where folded."""
        cloth = self.cloths[piece]
        left = cloth.piece.cut_depth - self.edges[f"{piece}.top"].used - self.edges[f"{piece}.bottom"].used
        return left / 2 if cloth.folded else left

    def beside(self, piece: str, down: Fraction) -> Fraction:
        """How long the sides of a piece are over so much of its depth: longer where they slant; of gores that differ, the
        shortest, to which the others are trimmed or eased."""
        cloth = self.cloths[piece]
        return down * cloth.piece.gore.slants[0] if cloth.piece.gore and not cloth.blank else down

    def along(self, piece: str, above: Fraction) -> Fraction:
        """How long a ring or flat length of a piece is on a line so far above its bottom edge as it is now: between two arcs,
        less the higher it lies."""
        edge = self.edges[f"{piece}.bottom"]
        return self.measured(edge) - edge.stands_out - self.flare(piece) * above

    def seam_at(self, name: str) -> Seam | None:
        """The seam that a name means: `flounce.top` the one this edge is in, `lining.ends`, `lower.joins`."""
        if name in self.seams:
            return self.seams[name]
        edge = name.replace(".ends", ".start")
        found = [seam for seam in self.seams.values() if edge in seam.edges]
        return found[-1] if found else None

    def with_edges(self, *edges: Edge) -> Bench:
        return self._replace(edges={**self.edges, **{edge.name: edge for edge in edges}})

    def turned(self, edge: Edge, took: Fraction, state: State) -> Bench:
        """The bench with an edge turned: a turn shortens the edges that run from it."""
        after = self.with_edges(edge._replace(state=state, used=edge.used + took))
        piece, _, side = edge.name.partition(".")
        if not side:
            return after
        beside = ("top", "bottom") if side in ("start", "end") else ("start", "end")
        runs = (after.edge(f"{piece}.{each}") for each in beside)
        return after.with_edges(
            *(
                run._replace(
                    cloth_length=run.cloth_length - took, set_length=run.set_length - (0 if run.gathered else took)
                )
                for run in runs
            )
        )

    def with_seams(self, *seams: Seam) -> Bench:
        return self._replace(seams={**self.seams, **{seam.name: seam for seam in seams}})

    def with_casing(self, casing: Casing) -> Bench:
        return self._replace(casings={**self.casings, casing.name: casing})

    def taken_above(self, name: str, took: Fraction) -> Bench:
        """The bench with so much of an opened edge gone into a seam or turn: the opening is shorter by it."""
        if name not in self.openings:
            return self
        opening = self.openings[name]
        return self.with_opening(opening._replace(length=opening.length - took))

    def with_opening(self, opening: Opening) -> Bench:
        return self._replace(openings={**self.openings, opening.name: opening})

    def with_cloths(self, *cloths: Cloth) -> Bench:
        return self._replace(cloths={**self.cloths, **{cloth.piece.name: cloth for cloth in cloths}})

    def joined(self, pieces: Iterable[str]) -> Bench:
        """The bench with these pieces, and all they are sewn to, as one unit."""
        leaders = {self.units[piece] for piece in pieces}
        first = next(piece for piece in self.cloths if self.units[piece] in leaders)
        units = {piece: self.units[first] if leader in leaders else leader for piece, leader in self.units.items()}
        return self._replace(units=units)

    def bearing(self, piece: str, on: str) -> Bench:
        """The bench with a piece sewn in or on another, as one unit, that hangs at no level of its own."""
        return self._replace(borne={**self.borne, piece: on}).joined((on, piece))

    def spoil(self, pieces: Iterable[str]) -> Bench:
        return self._replace(spoiled=self.spoiled | frozenset(pieces))


def laid_out(solved: Solved) -> Bench:
    """The bench before the first step: every piece cut, flat, its edges raw but for one that is the selvedge."""
    cloths, edges = {}, {}
    for name, piece in solved.pieces.items():
        cloths[name] = Cloth(
            piece,
            piece.count,
            in_parts=piece.piece.piecing is not None,
            blank=piece.shaped,
        )
        ply = (Ply(name),)
        for side in ("top", "bottom", "start", "end"):
            length = piece.cut_length if side in ("top", "bottom") else piece.cut_depth
            state = State.SELVEDGE if side == piece.piece.selvedge else State.RAW
            edges[f"{name}.{side}"] = Edge(f"{name}.{side}", ply, piece.count, length, length, state)
    return Bench(cloths, edges, units={name: name for name in cloths})
