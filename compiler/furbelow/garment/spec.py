"""The garment spec as read: every value with the place where it stands. Nothing is worked out yet."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from typing import Literal, Protocol

from furbelow.diagnose.fault import Span
from furbelow.garment.dyeing import DyeClass
from furbelow.measure.formula import Formula
from furbelow.measure.measure_text import System, system_of
from furbelow.named import NamedTuple


class Word(NamedTuple):
    """A plain text with its place."""

    text: str
    span: Span


class Written(NamedTuple):
    """A quantity or formula as the maker wrote it. `span` covers the text, so offsets in it give places."""

    text: str
    formula: Formula
    span: Span


class _EdgeName(NamedTuple):
    piece: str
    side: str | None
    span: Span


class EdgeName(_EdgeName):
    """An edge or seam by name: `flounce.top` has piece and side; a stack such as `net_top` has side None.

    Sides: top, bottom, start, end; and for seams also ends (start sewn to end) and joins (strips pieced).
    Two names of one edge are equal, wherever they stand.
    """

    __slots__ = ()

    def __eq__(self, other: object) -> bool:
        return isinstance(other, EdgeName) and self[:2] == other[:2]

    def __hash__(self) -> int:
        return hash(self[:2])

    def __str__(self) -> str:
        return f"{self.piece}.{self.side}" if self.side else self.piece


class LayerName(NamedTuple):
    """One layer of a stack: an edge and the way its right side faces, "out" or "in"."""

    edge: EdgeName
    right_side: str


ArgValue = Written | EdgeName | Word | tuple[EdgeName, ...] | tuple[Word, ...] | tuple[LayerName, ...]


def each_of(value: ArgValue) -> tuple[Written | EdgeName | Word | LayerName, ...]:
    """The values of a parameter that takes one or several. A value is a tuple itself, but never a plain one."""
    return value if type(value) is tuple else (value,)  # type: ignore[return-value]  # named tuples are tuples to mypy


class Arg(NamedTuple):
    """A parameter of a step. `given` is False where it is the technique's default.

    `kind` is the technique's word for how it is written, such as "length" or "edges"; empty where words are given to
    choose from. `needed`: the technique can't do without it.
    """

    name: str
    value: ArgValue
    span: Span
    given: bool = True
    kind: str = ""
    needed: bool = False


class Within(NamedTuple):
    """There only in as many rounds of a repeat as a formula says: where this number is no more than that."""

    number: int
    most: Written


Condition = Written | Within


class Described(Protocol):
    """A technique that the spec describes itself. How it is worked is the matter of `techniques/`."""

    @property
    def name(self) -> str: ...


class OwnPicture(NamedTuple):
    """A photograph or drawing of the maker's own. Of its file nothing is left but what it shows."""

    kind: Literal["jpeg", "png"]
    content: bytes
    width: int  # in dots
    height: int
    alt: str  # says what it shows, for who can't see it
    caption: str


class Imprint(NamedTuple):
    """Who publishes the guide, and on what terms; each is empty where the spec does not say."""

    author: str = ""
    version: str = ""
    licence: str = ""
    skill: str = ""  # what the sewist can do already, in the place of what is worked out


class Cover(NamedTuple):
    """A page before the first: words under the title, and a picture in the place of the garment's."""

    words: str
    picture: OwnPicture | None


class Step(NamedTuple):
    index: int  # type: ignore[assignment]  # a method of tuples bears the name too; 0-based among the working steps
    technique: str
    args: Mapping[str, Arg]
    part: str  # the heading it stands under
    tip: str  # the maker's note on this step, Markdown
    span: Span
    own: Described | None = None  # the technique itself, where the spec describes it
    only: tuple[Condition, ...] = ()  # it is done where all of these hold
    pictures: tuple[OwnPicture, ...] = ()


class BodyMeasure(NamedTuple):
    name: str
    span: Span
    about: str
    low: Written | None
    high: Written | None


class Choice(NamedTuple):
    name: str
    span: Span
    about: str
    default: Written
    low: Written | None
    high: Written | None
    step: Written | None


class Measure(NamedTuple):
    """A named formula of the maker's own."""

    name: str
    span: Span
    about: str
    value: Written


class Offer(NamedTuple):
    """A width the shop sells the cloth in, and its price."""

    width: Written
    price: Written | None
    span: Span


class SupplyKind(StrEnum):
    """What a material is, by the word in the spec."""

    CLOTH = "cloth"
    TRIM = "trim"
    CORD = "cord"
    BONE = "bone"
    ELASTIC = "elastic"
    THREAD = "thread"
    DYE = "dye"
    STARCH = "starch"
    INTERFACING = "interfacing"
    ZIP = "zip"
    FASTENING = "fastening"  # sewn or set on singly: eyelets, buttons, hooks
    OTHER = "other"


class FastenerKind(StrEnum):
    """As the trade counts them: hook and bar are one, both halves of a snap too."""

    HOOK_AND_BAR = "hook and bar"
    HOOK_AND_EYE = "hook and eye"
    SNAP = "snap"
    BUTTON = "button"
    FLAT_BUTTON = "flat button"


class Material(NamedTuple):
    """Something to buy."""

    name: str
    span: Span
    kind: SupplyKind
    about: str
    fibre: str
    amounts: Mapping[str, Written]  # width, selvedge, weight, shrinkage, sold_by, price, stretch, reel, gathers, spare,
    # bending_length
    offers: tuple[Offer, ...]
    ravels: bool
    has_right_side: bool
    one_way: bool
    colour: str
    supplier: str
    code: str
    dye_class: DyeClass | None = None  # of a dye
    fastener: FastenerKind | None = None  # that a step sews on and no spec lists


Grain = Literal["along", "across", "free"]  # the way the length of a piece lies on the cloth
OnSelvedge = Literal["", "top", "bottom"]  # the edge of a piece that is the selvedge of its cloth; empty where none is


class Piecing(NamedTuple):
    seam: Written
    shortest: Written
    most_joins: Written
    span: Span


class Piece(NamedTuple):
    """A rectangle. Exactly one of `length` and `cut_length` is written, or both if they agree; so for depth."""

    name: str
    span: Span
    about: str
    cloth: Word
    count: Written | None  # type: ignore[assignment]  # a method of tuples bears the name too
    length: Written | None
    cut_length: Written | None
    depth: Written | None
    cut_depth: Written | None
    grain: Grain
    piecing: Piecing | None
    selvedge: OnSelvedge = ""
    within: Within | None = None  # of a repeat
    lies_cut: bool = False  # its cut sizes are what was measured, so nothing is rounded


class Rule(NamedTuple):
    check: Written
    message: str
    span: Span


class Worn(NamedTuple):
    """Where the top edge sits, what it must pass, how long the garment is on the body, what may not show."""

    at: str  # the body line the top edge sits on: waist or hip
    over: Written
    ease: Written | None
    length: Written | None
    hidden: Mapping[str, Written]  # piece -> clearance
    held_by: str  # what holds it up where nothing of its own does; empty for most
    span: Span


ENGLISH = "en"  # the language of a spec that does not say


class Spec(NamedTuple):
    file: str
    source: str
    title: str
    about: str
    notes: str
    units: str  # metric or inches
    rounding: Written
    body: Mapping[str, BodyMeasure]
    sizes: Mapping[str, Mapping[str, Written]]
    choices: Mapping[str, Choice]
    measures: Mapping[str, Measure]
    worn: Worn
    materials: Mapping[str, Material]
    pieces: Mapping[str, Piece]
    steps: tuple[Step, ...]
    rules: tuple[Rule, ...]
    accepted: Mapping[str, str]  # code of a warning -> why it is meant so
    language: str  # that its texts are in: of the guide that is made from it
    written_in: Word | None  # the language that the spec says it is written in
    untold: tuple[Word, ...]  # the texts that it does not tell in that language, by what they are called
    built_on: tuple[str, ...] = ()  # the files that it uses or is based on
    imprint: Imprint = Imprint()
    cover: Cover | None = None

    @property
    def is_translated(self) -> bool:
        """Whether its texts are in another language than it is written in."""
        return self.language != (self.written_in.text if self.written_in else ENGLISH)

    @property
    def pictures(self) -> tuple[OwnPicture, ...]:
        """All of the maker's own, that of the cover first."""
        cover = (self.cover.picture,) if self.cover and self.cover.picture else ()
        return (*cover, *(picture for step in self.steps for picture in step.pictures))

    def about_of(self, name: str) -> str:
        """What the maker says that a measure, a choice or a material is; empty where she does not."""
        kept = (self.body, self.choices, self.measures, self.materials)
        return next((section[name].about for section in kept if name in section), "")

    @property
    def system(self) -> System:
        """In which the spec's numbers are told; a workroom may tell them in another."""
        return system_of(self.units)
