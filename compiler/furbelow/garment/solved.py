"""What solving gives: every measurement of one garment for one body, each with the reason for it."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from furbelow.diagnose.fault import Span
from furbelow.garment.bias import BiasStrip
from furbelow.garment.gore import Gore
from furbelow.garment.ring_sector import RingSector
from furbelow.garment.spec import Material, Piece, Spec, Step
from furbelow.measure.quantity import Quantity, round_to_step
from furbelow.named import NamedTuple

MOST_SLACK = Fraction("12.7")


class Rounded(NamedTuple):
    """A size as it was and as it is now, in mm: the cut size, and the finished one where that was written."""

    step: Fraction
    cut_before: Fraction
    cut: Fraction
    finished_before: Fraction | None = None
    finished: Fraction | None = None


class Because(NamedTuple):
    """Why a number that stands on no formula is what it is: a message of the guide, and what that counts or shares."""

    message: str
    counts: Mapping[str, int] = {}
    share: Fraction | None = None


class Derivation(NamedTuple):
    """Why a number is what it is.

    `formula` as written, `with_values` the same with the numbers put in, `inputs` the names it stands on,
    `rounded` how it was rounded, None where it was not. `because` the message in place of a formula, where it has none.
    """

    name: str
    value: Quantity
    formula: str
    with_values: str
    inputs: tuple[str, ...]
    rounded: Rounded | None
    span: Span | None
    origin: str  # "body", "choice", "measure", "material", "piece", "allowance", "step", "rule"
    because: Because | None = None


class Allowance(NamedTuple):
    """What a step takes of a piece at one of its edges: the sum of the named step lengths.

    `args` names length parameters of the step ("seam", "turn up"); each counts once, so naming one twice takes it
    twice. `doubles` marks a piece that is folded in half along its length: its cut depth is twice what shows.
    `hem` names the step length of the bottom edge, for a piece that is cut between two arcs; `gore`, for one that is cut
    to gores. `bias` names the seam of the square that a bias strip is cut from.
    gores: those that differ from the others: where they hang, and the step's names for their top, their hem and their number.
    both_slant: of gores, both sides do.
    """

    piece: str
    side: str  # top, bottom, start or end
    args: tuple[str, ...]
    doubles: bool = False
    hem: str = ""
    gore: str = ""
    bias: str = ""
    gores: tuple[tuple[str, str, str, str], ...] = ()
    both_slant: bool = False


class SolvedPiece(NamedTuple):
    """A piece with its numbers in mm. cut_length = length + takes at start and end; cut_depth likewise.

    ring: for a piece cut between two arcs, of which length is the upper one; gore: for one cut to gores; bias:
    for a strip on the bias; None for a rectangle. blank: length and depth of the rectangle to cut out; rectangles: how many of them.
    """

    piece: Piece
    count: int  # type: ignore[assignment]  # a method of tuples bears the name too
    length: Fraction
    cut_length: Fraction
    depth: Fraction
    cut_depth: Fraction
    folded: bool  # depth shows once, is cut twice
    blank: tuple[Fraction, Fraction]
    ring: RingSector | None = None
    gore: Gore | None = None
    bias: BiasStrip | None = None

    @property
    def shaped(self) -> bool:
        """A step cuts it out of the rectangle that comes from the table."""
        return bool(self.ring or self.gore or self.bias)

    @property
    def rectangles(self) -> int:
        if self.gore:
            return len(self.gore.rows)
        return self.ring.rectangles(self.count) if self.ring else self.count

    @property
    def cut_area(self) -> Fraction:
        """Of one copy, in mm2."""
        shape = self.ring or self.gore
        return shape.area if shape else self.cut_length * self.cut_depth

    @property
    def name(self) -> str:
        return self.piece.name

    @property
    def label(self) -> str:
        """The maker's words for it: its `about`, or its name with spaces."""
        return self.piece.about or self.piece.name.replace("_", " ")


class SolvedStep(NamedTuple):
    """A step with its lengths and numbers worked out. Lengths in mm; shares and counts as they are."""

    written: Step
    amounts: Mapping[str, Quantity]

    def mm(self, name: str) -> Fraction:
        return self.amounts[name].as_length_mm()


class SolvedMaterial(NamedTuple):
    """A material with its amounts worked out: width, weight, stretch and so on, by key."""

    material: Material
    amounts: Mapping[str, Quantity]


class Solved(NamedTuple):
    """One garment for one body. `values` holds every name that `why` can explain, each with its reason; `numbers` the same
    values bare, for whoever needs no reason."""

    spec: Spec
    wearer: str
    rounding: Fraction  # mm
    values: Mapping[str, Derivation]
    pieces: Mapping[str, SolvedPiece]
    materials: Mapping[str, SolvedMaterial]
    steps: tuple[SolvedStep, ...]
    numbers: Mapping[str, Quantity]
    eases: Fraction = Fraction(0)  # the share of a length that may be eased in once the cloth is cut

    @property
    def slack(self) -> Fraction:
        """How far two lengths may differ in mm because each was rounded by itself: what is so little is eased in.

        However coarse the rounding, no more than half an inch is: house rule, maker to confirm.
        """
        return min(self.rounding, MOST_SLACK)

    def apart(self, one: Fraction, other: Fraction) -> bool:
        """Whether two lengths in mm differ by more than may be shared out where they are sewn together."""
        return abs(one - other) > max(self.slack, self.eases * max(one, other))

    def cut_up_to(self, length: Fraction) -> Fraction:
        """A length in mm as it is cut: the least whole number of steps of the rounding that is no shorter."""
        return round_to_step(length, self.rounding, "up") if self.rounding else length

    def length(self, name: str) -> Fraction:
        """The solved value of a name, in mm."""
        return self.numbers[name].as_length_mm()

    def known(self, name: str) -> Fraction | None:
        """The same, or None where the spec has no such name."""
        number = self.numbers.get(name)
        return number.as_length_mm() if number else None
