"""What lies on the cloth: a technique declares it, the proofs judge it.

A place on a piece is `along` (mm from its start) and `down` (mm from its cut top edge), both of the flat cut piece. What
a step puts there is a band between two depths (it runs along the piece), or between two lengths (it runs down it), or
both. A number of a step has a window that it must lie in, and where two lengths are held together their ratio has one.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from enum import StrEnum
from fractions import Fraction

from furbelow.garment.bench import Bench
from furbelow.named import NamedTuple


class Lies(StrEnum):
    """The kinds of what lies on cloth, by their short names in the table of what may meet what."""

    MARGIN = "mg"
    HEM = "hm"
    TRIM = "tr"
    CHANNEL = "ch"
    STEEL = "st"
    ELASTIC = "el"
    CORD = "co"  # meets others as elastic does, but for a side seam
    ROW = "rw"
    GATHERS = "ga"
    TUCK = "tk"
    PLEAT = "pl"
    SLIT = "sl"
    STRIP = "ss"
    HOLE = "bh"
    ZIP = "zp"
    DART = "da"
    LINING = "ln"


class Band(NamedTuple):
    """From one distance to a larger one, in mm."""

    near: Fraction
    far: Fraction

    def meets(self, other: Band) -> bool:
        """Whether the two overlap; bands that only touch do not meet."""
        return self.near < other.far and other.near < self.far


class Occupant(NamedTuple):
    """What a step puts on a piece. `down` None: over the whole depth; `along` None: over the whole length, or anywhere on it.

    what: its name in messages, "the hem"; arg: the parameter of the step that says how deep or where it is.
    """

    piece: str
    kind: Lies
    what: str
    down: Band | None = None
    along: Band | None = None
    arg: str = ""

    @property
    def across(self) -> bool:
        """It lies at an end of the piece and runs down it; what is sewn on, taken in or worked in the middle does not."""
        return self.along is not None and self.kind not in (Lies.STRIP, Lies.DART, Lies.HOLE)


class Window(NamedTuple):
    """What a number of a step may be, in mm or as a count. `least` and `most` are told with the fault; `sewable` is the
    bound beyond which it can't be sewn or used, so that what lies between is worth a warning; None where all of it is."""

    arg: str
    what: str  # "a lap"
    value: Fraction
    least: Fraction | None = None
    most: Fraction | None = None
    sewable_least: Fraction | None = None
    sewable_most: Fraction | None = None
    why: str = ""
    counted: bool = False  # a number of things, not a length


class Held(NamedTuple):
    """Two lengths held together: `cloth` mm of this piece on a line of `line` mm.

    drawn: the cloth is gathered, pleated or drawn in there, so it may be fuller by what the cloth takes; flat cloth may
    only be eased. hangs: the cloth is held at its other edge alone, so what differs here strains or gapes, but can be worn.
    """

    arg: str
    what: str  # "the front half of `flounce.top`"
    piece: str
    cloth: Fraction
    line: Fraction
    drawn: bool
    hangs: bool = False


class LooseEnd(NamedTuple):
    """An end of a cord, ribbon or tie that hangs free from the top or bottom of a piece, `long` mm down from there."""

    arg: str
    piece: str
    side: str
    long: Fraction


class Covered(NamedTuple):
    """A seam margin at an edge of a piece that these pieces are to lie over, so that it does not scratch."""

    arg: str
    edge: str
    by: tuple[str, ...]


class OnCloth(NamedTuple):
    """All that a step declares of itself.

    folded: cloth taken out of the sight of later measurements inside a piece, as by tucks: bands of `down` by piece.
    inside: what hangs free and must not be seen below the hem.
    """

    occupants: tuple[Occupant, ...] = ()
    windows: tuple[Window, ...] = ()
    held: tuple[Held, ...] = ()
    folded: Mapping[str, tuple[Band, ...]] = {}
    loose: tuple[LooseEnd, ...] = ()
    covered: tuple[Covered, ...] = ()
    inside: tuple[LooseEnd, ...] = ()


class Ledger(NamedTuple):
    """Where the edges of each piece are now, on the flat cut piece, and what cloth between them is folded away.

    lines: for each piece edge how much of the cut piece turns and seams have taken from that side, without tucks.
    """

    bench: Bench
    folded: Mapping[str, tuple[Band, ...]] = {}

    def line(self, piece: str, side: str) -> Fraction:
        """How far inside the cut edge the edge lies now."""
        used = self.bench.edge(f"{piece}.{side}").used
        if side != "bottom" or piece not in self.folded:
            return used
        return used - sum((band.far - band.near for band in self.folded[piece]), Fraction(0))

    def flat(self, piece: str, side: str, distance: Fraction, past: bool = False) -> Fraction:
        """`distance` into the piece, measured on it as it is sewn from one of its edges, as `down` or `along` when flat.

        past: on the line where cloth is folded away, take the far side of the fold.
        """
        cloth = self.bench.cloths[piece].piece
        if side in ("start", "end"):
            at = self.line(piece, side) + distance
            return at if side == "start" else cloth.cut_length - at
        at, whole = self.line(piece, side) + distance, cloth.cut_depth
        if piece not in self.folded:
            return at if side == "top" else whole - at
        bands = self.folded[piece]
        if side == "top":
            for band in sorted(bands):
                at += band.far - band.near if at > band.near or (past and at == band.near) else 0
            return at
        for band in sorted(bands, reverse=True):
            near = whole - band.far
            at += band.far - band.near if at > near or (past and at == near) else 0
        return whole - at

    def band(self, piece: str, side: str, near: Fraction, far: Fraction) -> Band:
        """The band between two distances from an edge, measured on the piece as it is sewn: what begins where a fold is
        stitched lies beyond the fold."""
        one, other = self.flat(piece, side, near, past=near < far), self.flat(piece, side, far)
        return Band(min(one, other), max(one, other))

    def sewn_band(self, piece: str, near: Fraction, far: Fraction) -> Band:
        """The band between two distances below the cut top edge, measured as the piece is sewn: what is folded away does not
        count there, and does on the flat piece."""
        top = self.line(piece, "top")
        return self.band(piece, "top", near - top, far - top)

    def at_edge(
        self, name: str, kind: Lies, what: str, near: Fraction, far: Fraction, arg: str = ""
    ) -> Iterator[Occupant]:
        """What lies along an edge, in every ply that the edge has, between two distances from it."""
        for each in self.bench.opened(name):
            piece, _, side = each.partition(".")
            band = self.band(piece, side, near, far)
            if side in ("top", "bottom"):
                yield Occupant(piece, kind, what, down=band, arg=arg)
            else:
                yield Occupant(piece, kind, what, along=band, arg=arg)

    def length_at(self, piece: str, down: Fraction) -> Fraction:
        """How long one copy of the piece is at a depth, without the margins of its ends: on a ring sector it grows with it."""
        cloth = self.bench.cloths[piece].piece
        if cloth.gore:
            return cloth.gore.top + (cloth.gore.hem - cloth.gore.top) * (down - cloth.gore.above) / cloth.gore.depth
        if cloth.ring is None:
            return cloth.length
        sector = cloth.ring
        return sector.top + (sector.hem - sector.top) * (down - sector.above) / sector.depth
