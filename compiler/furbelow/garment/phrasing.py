"""Numbers and names as the guide says them, in the units of the workroom."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from furbelow.garment.solved import Solved
from furbelow.garment.workroom import Workroom
from furbelow.measure.measure_text import show_apart, system_of
from furbelow.measure.quantity import System, show_cloth_length, show_length
from furbelow.named import NamedTuple

_INCH = Fraction("25.4")
_YARD = 36 * _INCH


class Miss(NamedTuple):
    """A length that is not as it should be, as faults say it: "600 cm", "300 cm", "300 cm too long", and their difference."""

    long: str
    wanted: str
    too: str
    subtracted: str


class Phrasing:
    """How this guide speaks. `joins` holds the joins that the cutting plan gave each piece, over all its copies;
    `lengths` the lengths of the segments that each copy is cut in, for figures; `needs` how much the steps take of each
    material, as its line on the shopping list counts it."""

    def __init__(
        self,
        solved: Solved,
        room: Workroom,
        joins: Mapping[str, int] | None = None,
        lengths: Mapping[str, tuple[tuple[Fraction, ...], ...]] | None = None,
        needs: Mapping[str, Fraction] | None = None,
    ) -> None:
        self.solved = solved
        self.room = room
        self.joins = joins or {}
        self.lengths = lengths or {}
        self.needs = needs or {}

    def parts(self, piece: str) -> int:
        """In how many segments a copy of this piece is cut: the most that one copy has, 1 where it is cut whole."""
        return max((len(copy) for copy in self.lengths.get(piece, ())), default=1)

    @property
    def language(self) -> str:
        """Of the guide: the one that the maker's texts are told in."""
        return self.solved.spec.language

    @property
    def system(self) -> System:
        return system_of(self.room.units or self.solved.spec.units)

    def length(self, length: Fraction) -> str:
        """A length in mm as read off a tape: to the mm, or to 1/8 in (1/16 in below an inch)."""
        if self.system == "metric":
            return show_length(length, "metric", Fraction(1))
        return show_length(length, "inch", _INCH / (16 if length < _INCH else 8))

    def strip(self, length: Fraction) -> Fraction:
        """How long in mm a strip to try something on is, where nobody needs it to a mark: in inches a whole number of them."""
        return length if self.system == "metric" else round(length / _INCH) * _INCH

    def within(self, length: Fraction, *, least: bool) -> str:
        """A bound in mm as it may be written: rounded so that it still lies within the bound, up where it is the least."""
        step = Fraction(1) if self.system == "metric" else _INCH / 16
        return show_length(length, self.system, step, "up" if least else "down")

    def apart(self, one: Fraction, other: Fraction) -> tuple[str, str, str]:
        """Two lengths in mm that should be one, and what is between them: never nothing, and the sum can be followed."""
        return show_apart(one, other, self.system)

    def missed(self, one: Fraction, wanted: Fraction) -> Miss:
        """A length in mm that should be another: both, which way it misses, and the subtraction."""
        long, asked, off = self.apart(one, wanted)
        short = one < wanted
        return Miss(
            long,
            asked,
            f"{off} {'too short' if short else 'too long'}",
            f"{long} - {asked} = {'-' if short else ''}{off}",
        )

    def about(self, length: Fraction) -> str:
        """A length that is a habit, not a measurement: 5 mm, 10 cm; in inches the nearest that a tape shows well.

        A little is never said as nothing: 1 mm is 1/8 in.
        """
        if self.system == "metric":
            step = Fraction(1) if length < 100 else Fraction(5)
        else:
            step = _INCH / 8 if length < _INCH else _INCH / 2 if length > 2 * _INCH else _INCH / 4
        return show_length(length, self.system, step, "up" if length < step else "near")

    def off(self, length: Fraction) -> str:
        """How far a length may be off, never said less than it is: to the mm, or to 1/8 in."""
        return show_length(length, self.system, Fraction(1) if self.system == "metric" else _INCH / 8, "up")

    def pins(self, length: Fraction, spacing: Fraction) -> int:
        """How many pins or clips an edge takes at this spacing, as the guide names it."""
        if self.system == "inch":  # as `about` says it
            spacing = max(round(spacing / (_INCH / 8)), 1) * _INCH / 8
        return max(1, round(length / spacing))

    def thread_left(self, length: Fraction) -> str:
        """Thread on a bobbin, as far as it can be judged by eye: whole metres or yards."""
        return show_cloth_length(length, self.system, _YARD if self.system == "inch" else Fraction(1000), "near")

    def thread(self, length: Fraction) -> str:
        """Thread that is needed, in whole metres or yards."""
        return show_cloth_length(length, self.system, _YARD if self.system == "inch" else Fraction(1000))

    def cut(self, length: Fraction) -> str:
        """A cut length in mm: never shown shorter than it is."""
        step = Fraction(1) if self.system == "metric" else _INCH / 16
        return show_length(length, self.system, step, "up")

    def buy(self, length: Fraction) -> str:
        """A length of cloth or trim to buy, in m or yd."""
        return show_cloth_length(length, self.system)

    def piece(self, name: str) -> str:
        """The maker's words for a piece: "flounce"."""
        return self.solved.pieces[name].label

    def count(self, number: int, one: str, many: str | None = None) -> str:
        """ "1 pin", "12 pins"."""
        return f"{number} {one if number == 1 else many or one + 's'}"

    def share(self, share: Fraction) -> str:
        return f"{share_digits(share)} %"

    def ratio(self, ratio: Fraction) -> str:
        """How full: three figures, and more where fewer would say flat of what isn't."""
        shown = next(
            shown
            for digits in range(3, 17)
            if (shown := f"{float(ratio):.{digits}g}") != "1" or ratio == 1 or digits == 16
        )
        return shown


def share_digits(share: Fraction) -> str:
    """A share in per cent as it is said: three figures, and never as a power of ten."""
    per_cent = float(share * 100)
    return f"{per_cent:.0f}" if abs(per_cent) >= 1000 else f"{per_cent:.3g}"


def listed(words: Sequence[str]) -> str:
    """ "a, b and c"."""
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} and {words[-1]}"
