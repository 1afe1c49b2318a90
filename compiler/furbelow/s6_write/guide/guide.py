"""The guide as a value: everything a person reads, before any page format.

Texts are plain sentences with their numbers already shown in the workroom's units; only `about` and `notes` are
Markdown as the maker wrote it. Nothing here knows HTML, PDF or SVG's page.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from furbelow.garment.tags import copy_letter
from furbelow.garment.workroom import Paper


@dataclass(frozen=True)
class Figure:
    """A drawing with its text alternative. `svg` is one self-contained <svg> element of the safe subset."""

    key: str  # unique in the guide, fit for an id or a file name: a-z 0-9 -
    svg: str
    alt: str  # says what the drawing shows, numbers included
    caption: str
    shows: tuple[int, ...] = ()  # the sentences of its operation that it calls by their numbers
    like: str = ""  # the same for drawings of which one can be shown for all; empty where each is shown
    heading: str = ""  # what stands above what it shows, in the drawing itself

    @property
    def proportion(self) -> float:
        """Height to width."""
        width, height = self.svg.partition('viewBox="')[2].partition('"')[0].split()[2:]
        return float(height) / float(width)


@dataclass(frozen=True)
class Reason:
    """Why a number is what it is: the words of `furbelow why`, and the same in plain words.

    name, value, formula, with_numbers, rounding: as the spec has them, in the spec's units. `place` is a line of the
    spec's own file, empty for a measure of a body. `inputs` are the names of the numbers that it stands on, each with
    a reason of its own in the guide.
    """

    name: str
    label: str  # "cut depth of the flounce"
    value: str
    told: str  # what it comes from: a sum with its numbers, or for a number that was written who says so
    formula: str
    with_numbers: str
    rounding: str
    place: str
    operation: str  # the key of the operation that asks for it; empty for most
    inputs: tuple[str, ...] = ()
    sum: str = ""  # what it is worked out from without a number, the same for every body; empty where it is no sum


@dataclass(frozen=True)
class Fact:
    """A measurement in the summary table; `name` is its name in the spec, `reason` the derivation in words."""

    name: str
    label: str
    value: str
    reason: str


@dataclass(frozen=True)
class Caution:
    """A warning; `kind` is one of needle, blade, heat, flame, steam, aerosol, dye, chemical, trip, child."""

    kind: str
    text: str


@dataclass(frozen=True)
class Tool:
    """What has to be at hand, and what for."""

    name: str
    why: str


@dataclass(frozen=True)
class MaterialLine:
    """What to buy or have: `amount` to buy in shop units, `need` the exact need, `use` where it goes."""

    name: str
    description: str
    amount: str
    need: str
    use: str
    cost: str


@dataclass(frozen=True)
class CutLine:
    """One row of the cutting list. Cut sizes include every allowance; finished sizes are what shows."""

    mark: str  # its number, as on drawings and tags
    piece: str
    cloth: str
    count: str
    cut_length: str
    cut_depth: str
    finished: str
    note: str
    why: tuple[str, ...] = ()  # the reasons that are told with this piece

    @property
    def explained(self) -> tuple[str, ...]:
        """The sizes that the reasons are for: those to cut, or of a piece cut between two arcs the finished ones."""
        cut = any(name.endswith(".cut_length") for name in self.why)
        return (self.cut_length, self.cut_depth) if cut else (self.finished,)


@dataclass(frozen=True)
class GuideStep:
    """One action. `check`, `tolerance` and `remedy` are empty where nothing can go wrong."""

    number: int  # within its operation
    text: str
    check: str = ""
    tolerance: str = ""
    remedy: str = ""
    chain: str = ""  # how work on like things is marked, such as "3 joins"
    copies: int = 1  # on how many pieces it is done, each with a tick of its own
    message: str = ""  # the name of the message that it is; empty in a maker's own words
    drawn_at: str = ""  # the sentence beside which a drawing of the same stands already: C2
    until: int = 0  # the last of those that are all done on one piece before the next; 0 where it begins none
    only: tuple[int, ...] = ()  # the copies that it is done on, where these are not all

    @property
    def boxes(self) -> tuple[str, ...]:
        """The letters of its ticks; none where one tick stands for all."""
        copies = self.only or (range(1, self.copies + 1) if self.copies > 1 else ())
        return tuple(map(copy_letter, copies))


@dataclass(frozen=True)
class Row:
    """Sentences and the drawings that stand beside them; no page parts them."""

    steps: tuple[GuideStep, ...]
    figures: tuple[Figure, ...]


@dataclass(frozen=True)
class Operation:
    """Steps that together do one thing of the spec, with the drawings that show them."""

    key: str  # stable id
    letter: str  # the same for each size and wearer of a spec
    title: str
    aim: str  # one sentence: what is true afterwards
    minutes: str
    cautions: tuple[Caution, ...]
    figures: tuple[Figure, ...]
    steps: tuple[GuideStep, ...]
    tip: str  # the maker's note, Markdown
    stop: str  # says that the work may be put away here, or that a sitting ends; empty where neither
    why: tuple[str, ...] = ()  # reasons of numbers in its steps
    number: str = ""  # the one that matters to who has made the garment before
    skipped: str = ""  # where letters begin to be left out: why
    all_of_it: str = ""  # one banner where its sentences are done on several pieces before the next sentence

    def place(self, step: GuideStep) -> str:
        """How a sentence is called from elsewhere: F3."""
        return f"{self.letter}{step.number}"


@dataclass(frozen=True)
class Part:
    """Operations under a heading of their own: the seams, the layers, the waist."""

    title: str
    operations: tuple[Operation, ...]


@dataclass(frozen=True)
class Sitting:
    """Work for one sitting; `work` has the letter and the title of each operation in it. `number` is 0 for the cutting."""

    number: int
    title: str
    minutes: str
    work: tuple[tuple[str, str], ...]
    waits: str = ""  # what takes hours besides and is no work


@dataclass(frozen=True)
class Measure:
    """A measure of the body that the garment is made to; `number` is that of its line in the drawing, 0 where it has none."""

    name: str  # as the spec has it
    number: int
    label: str
    how: str  # where the tape lies
    value: str  # as the guide is made
    sizes: tuple[tuple[str, str], ...] = ()  # the sizes of the spec, and this measure of each


@dataclass(frozen=True)
class Term:
    """A word with what it means, or a head with what is said under it."""

    word: str
    meaning: str


@dataclass(frozen=True)
class ProofLine:
    """What the rehearsal proved, in one sentence with its numbers."""

    claim: str
    shown: str


@dataclass(frozen=True)
class SizeBeside:
    """A size whose guide lies beside this one. page: where, from this page; empty for the size of this guide."""

    size: str
    page: str


@dataclass(frozen=True)
class LanguageBeside:
    """A language in which the same guide lies beside this one. name: in that language; page: as of a size."""

    code: str
    name: str
    page: str


@dataclass(frozen=True)
class Cover:
    """A page before the first; `words` stand under the title, and without a picture the garment is shown."""

    words: str
    picture: Figure | None


def author_of(imprint: Iterable[Fact]) -> str:
    return next((fact.value for fact in imprint if fact.name == "front-author"), "")


def terms_of_use_of(imprint: Iterable[Fact]) -> str:
    """What an imprint says besides the author, in a line."""
    return "; ".join(f"{fact.label} {fact.value}" for fact in imprint if fact.name != "front-author")


@dataclass(frozen=True)
class Guide:
    """All that a person reads, in the words of one language."""

    title: str
    wearer: str  # "size M" or a name or number
    about: str  # Markdown
    facts: tuple[Fact, ...]
    cautions: tuple[Caution, ...]
    tools: tuple[Tool, ...]
    materials: tuple[MaterialLine, ...]
    cutting: tuple[CutLine, ...]
    key: tuple[Figure, ...]  # to the patterns and signs of the drawings
    cut: tuple[Operation, ...]  # an operation for each cloth
    parts: tuple[Part, ...]
    proofs: tuple[ProofLine, ...]
    notes: str  # Markdown
    overview: Figure | None
    rounding: str  # "5 mm" or "1/4 in", or "none"
    content_key: str  # changes when anything that is read changes
    language: str = "en"
    reasons: tuple[Reason, ...] = ()
    picture: tuple[Figure, ...] = ()  # the garment as it will look: from the front first, then other views
    reasons_in: str = ""  # "cm" or "inches", where the spec has other units than the guide
    of_person: bool = False  # no page of it is for a search engine
    glance: tuple[Fact, ...] = ()  # what the garment is and asks, for the first page
    sittings: tuple[Sitting, ...] = ()
    measuring: Figure | None = None
    measures: tuple[Measure, ...] = ()
    terms: tuple[Term, ...] = ()  # words of the craft that the guide uses
    afterwards: tuple[Term, ...] = ()  # washing, storing, the label
    paper: Paper = "A4"
    given_out: bool = False  # nothing is bought by the reader: a class has bought together
    with_reasons: bool = False  # whether paper has the reasons and proofs as an appendix
    imprint: tuple[
        Fact, ...
    ] = ()  # who publishes it and on what terms: "front-author", "front-version", "front-licence"
    cover: Cover | None = None
    beside: tuple[SizeBeside, ...] = ()  # where guides of several sizes are made together, all of them
    index: str = ""  # the page that leads to them
    languages: tuple[LanguageBeside, ...] = ()  # where the guide is made in several, all of them

    @property
    def operations(self) -> tuple[Operation, ...]:
        """All the work in its order, the cutting first."""
        return (*self.cut, *(operation for part in self.parts for operation in part.operations))

    @property
    def author(self) -> str:
        return author_of(self.imprint)

    @property
    def terms_of_use(self) -> str:
        return terms_of_use_of(self.imprint)

    @property
    def told_why(self) -> tuple[str, ...]:
        """The names of the reasons that have a place of their own: with their piece, or else in the summary table."""
        known = {reason.name for reason in self.reasons}
        pieces = [name for line in self.cutting for name in line.why]
        measured = (fact.name for fact in self.facts if fact.name in known and fact.name not in pieces)
        return (*dict.fromkeys(measured), *pieces)
