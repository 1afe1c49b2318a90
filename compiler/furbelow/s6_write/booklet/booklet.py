"""The booklet as a value: one guide for all sizes of a spec.

A number that is the same for every size stands in its sentence. One that differs has a letter there, and its values stand in
the table of its operation, a column for each size. Where more than numbers differ, a text has a version for each group of
sizes (see `texts`).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from furbelow.garment.workroom import Paper
from furbelow.s6_write.guide.guide import (
    Caution,
    Cover,
    CutLine,
    Fact,
    Figure,
    GuideStep,
    LanguageBeside,
    Operation,
    ProofLine,
    Term,
    author_of,
    terms_of_use_of,
)


@dataclass(frozen=True)
class SizedNumber:
    """A number that differs. values: as shown, one for each size of the booklet; empty for a size that does without.

    kind, name: what sort of number it is, and what its message calls it, by which the table says what it is.
    """

    letter: str
    values: tuple[str, ...]
    kind: str = ""
    name: str = ""


@dataclass(frozen=True)
class SizedRow:
    """A row of a table with a column for each size, its values in their order. below: in small letters under the label."""

    label: str
    values: tuple[str, ...]
    below: str = ""
    name: str = ""  # of a fact, as in a guide


@dataclass(frozen=True)
class SizedFigure:
    """What is drawn on paper, with letters, and what each size has in its place; `own` is empty where nothing differs."""

    drawn: Figure
    own: tuple[tuple[str, Figure], ...] = ()
    said: tuple[str, ...] = ()  # each line in it, then its text alternative, with its letters as in sentences

    @property
    def of_sizes(self) -> tuple[tuple[str, Figure], ...]:
        """The drawings of single sizes under keys of their own; none where one is that of every size."""
        if all(figure.svg == self.drawn.svg for _, figure in self.own):
            return ()
        keys = (f"{self.drawn.key}-for-{at}" for at in range(1, len(self.own) + 1))
        return tuple((size, replace(figure, key=key)) for (size, figure), key in zip(self.own, keys, strict=True))


@dataclass(frozen=True)
class SizedStep(GuideStep):
    """A sentence, or a version of it. sizes: whose it is, by their places in the booklet; empty where it is for all."""

    sizes: tuple[int, ...] = ()
    version: int = 1  # of those with its number


@dataclass(frozen=True)
class SizedOperation(Operation):
    """An operation as the booklet tells it. Its texts hold letters, its steps are SizedSteps, its figures those on paper."""

    sizes: tuple[int, ...] = ()  # whose it is; empty where it is for all
    numbers: tuple[int, ...] = ()  # those with a letter, by their places in the booklet, in order of their letters
    sized_minutes: tuple[str, ...] = ()  # for each size, empty for one that does without
    drawings: tuple[SizedFigure, ...] = ()
    cut_for: int = 0  # of cutting: which of the ways to cut it belongs to, from 1

    def place(self, step: GuideStep) -> str:
        """How a sentence is called on a page: F3, and F3~2 for its second version."""
        way = f"~c{self.cut_for}" if self.cut_for > 1 else ""
        version = step.version if isinstance(step, SizedStep) else 1
        return f"{super().place(step)}{way}" + (f"~{version}" if version > 1 else "")


@dataclass(frozen=True)
class SizedPart:
    title: str
    operations: tuple[SizedOperation, ...]


@dataclass(frozen=True)
class SizedSitting:
    number: int
    title: str
    minutes: tuple[str, ...]  # for each size
    work: tuple[tuple[str, str], ...]
    waits: str = ""  # as of a guide


@dataclass(frozen=True)
class SizedPlan:
    """The sittings of some sizes, or of all."""

    sizes: tuple[int, ...]
    sittings: tuple[SizedSitting, ...]


@dataclass(frozen=True)
class SizedMeasure:
    number: int
    label: str
    how: str
    values: tuple[str, ...]


@dataclass(frozen=True)
class WayToCut:
    """The cutting of one size, or of sizes that are cut alike."""

    sizes: tuple[int, ...]
    pieces: tuple[CutLine, ...]
    cut: tuple[SizedOperation, ...]


@dataclass(frozen=True)
class Booklet:
    title: str
    sizes: tuple[str, ...]
    drawn: int  # the size that drawings are of, by its place
    about: str  # Markdown
    picture: tuple[Figure, ...]
    glance: tuple[SizedRow, ...]
    cutting: SizedRow | None  # how long it takes, its letters below
    plans: tuple[SizedPlan, ...]
    measuring: Figure | None
    measures: tuple[SizedMeasure, ...]
    materials: tuple[SizedRow, ...]  # what to buy of each
    widths: tuple[SizedRow, ...]  # cloth to buy in each width that it is offered in
    tools: tuple[str, ...]
    sized_tools: tuple[SizedRow, ...]  # those of which each size wants another number
    cautions: tuple[Caution, ...]
    ways: tuple[WayToCut, ...]
    parts: tuple[SizedPart, ...]
    numbers: tuple[SizedNumber, ...]
    key: tuple[Figure, ...]
    terms: tuple[Term, ...]
    afterwards: tuple[Term, ...]
    proofs: tuple[ProofLine, ...]
    notes: str  # Markdown
    rounding: str
    language: str
    paper: Paper
    imprint: tuple[Fact, ...] = ()
    cover: Cover | None = None
    content_key: str = ""
    facts: tuple[SizedRow, ...] = ()  # this and the next in an appendix on demand, and what `proofs` show besides
    reasons: tuple[SizedRow, ...] = ()  # what each number comes from
    reasons_in: str = ""  # as of a guide
    with_reasons: bool = False
    languages: tuple[LanguageBeside, ...] = ()  # as of a guide

    @property
    def author(self) -> str:
        return author_of(self.imprint)

    @property
    def terms_of_use(self) -> str:
        return terms_of_use_of(self.imprint)

    @property
    def drawings_of_sizes(self) -> Mapping[str, tuple[tuple[str, Figure], ...]]:
        """By the key of a drawing on paper, what each size has in its place."""
        drawings = (drawing for operation in self.operations for drawing in operation.drawings)
        return {drawing.drawn.key: drawing.of_sizes for drawing in drawings if drawing.of_sizes}

    @property
    def operations(self) -> tuple[SizedOperation, ...]:
        """All the work in its order, each way to cut first."""
        cut = (operation for way in self.ways for operation in way.cut)
        return (*cut, *(operation for part in self.parts for operation in part.operations))
