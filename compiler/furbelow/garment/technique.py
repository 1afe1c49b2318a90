"""What a technique is: one way of working cloth, in one file, known to every stage.

The reader takes its parameters, the solver what it takes of the cloth, the rehearsal its effect on the bench, the
shopping list its thread and supplies, and the guide its sentences and drawings.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction
from typing import Any, NamedTuple, Protocol

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.bench import Bench
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Arg, EdgeName, Step, Word, each_of
from furbelow.garment.workroom import Workroom

EdgesIn = Callable[[EdgeName], tuple[EdgeName, ...]]  # the piece edges that a name stands for, stacks opened


class Parameter(NamedTuple):
    """One key of a technique.

    kind: length, number, edge, edges, piece, pieces, material, layers, name (a new edge's name), casing (a piece, or
        an edge with a folded casing), or a tuple of allowed words.
    default: the text as a maker would write it; None where the key must be given, "" where it may stay away.
    """

    about: str
    kind: str | tuple[str, ...]
    default: str | None = None


class Sewn(NamedTuple):
    """Stitching done: `length` in mm for each of `copies`, `kind` ISO 4915 stitch type, stitch length in mm.

    joins_of: the stitching is done once for every join that the cutting plan gives this piece, and copies is 1.
    """

    kind: str
    length: Fraction
    copies: int
    stitch: Fraction
    what: str  # "closing seam of the flounce"
    joins_of: str = ""


class Used(NamedTuple):
    """A supply used up: `amount` in mm for trims and elastic, in mm2 of cloth for starch and dye; `copies` of it."""

    material: str
    amount: Fraction
    copies: int
    what: str


class Action(NamedTuple):
    """One thing to do, in the imperative; see GuideStep for the fields."""

    text: str
    check: str = ""
    tolerance: str = ""
    remedy: str = ""
    chain: str = ""


class Instructions(NamedTuple):
    """What the guide says of a step: its heading, aim, one action at a time, cautions as (kind, text)."""

    title: str
    aim: str
    actions: tuple[Action, ...]
    cautions: tuple[tuple[str, str], ...] = ()


class Performed(NamedTuple):
    """A step carried out on the bench, or refused: then `faults` says why and `after` is `before`, spoiled."""

    step: SolvedStep
    before: Bench
    after: Bench
    touches: tuple[str, ...]  # pieces worked on, for figures and for hiding consequences
    faults: tuple[Fault, ...] = ()
    sewn: tuple[Sewn, ...] = ()
    used: tuple[Used, ...] = ()
    setup: str = ""  # straight stitch, zigzag, overlocker, pleating attachment, hand, iron, table
    pinned: Fraction = Fraction(0)  # mm of edge pinned or clipped, all copies
    handled: Fraction = Fraction(0)  # mm of edge gathered, turned or pressed by hand, all copies
    thread_ends: int = 0  # bundles of loose thread ends wound round a pin, or knotted and cut, all copies
    facts: Mapping[str, Any] = {}  # what the sentences and figures need besides

    @property
    def refused(self) -> bool:
        return any(fault.severity is Severity.ERROR for fault in self.faults)


class Technique(Protocol):
    """The parts of a technique. `takes` is asked before any number is known, so it may read only the step itself."""

    @property
    def name(self) -> str: ...  # the key in a spec: "narrow hem"

    @property
    def about(self) -> str: ...  # one sentence for editors and the reference

    @property
    def pictures(self) -> tuple[str, ...]: ...  # the figures that explain it, by their names in s6_write/figures

    @property
    def parameters(self) -> Mapping[str, Parameter]: ...

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]: ...

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed: ...

    def instructions(self, done: Performed, say: Phrasing) -> Instructions: ...


# --- reading a step's parameters ---


def edge_of(step: Step, name: str) -> str:
    """The edge named by a parameter: "flounce.top"."""
    value = step.args[name].value
    assert isinstance(value, EdgeName)
    return str(value)


def edges_of(step: Step, name: str) -> tuple[str, ...]:
    """The edges named by a parameter that takes one or several; () where it stays away."""
    arg = step.args.get(name)
    if arg is None:
        return ()
    value = arg.value
    return tuple(str(edge) for edge in each_of(value))


def words_of(step: Step, name: str) -> tuple[str, ...]:
    """The pieces named by a parameter that takes one or several."""
    value = step.args[name].value
    return tuple(word.text for word in each_of(value) if isinstance(word, Word))


def word_of(step: Step, name: str) -> str:
    return words_of(step, name)[0]


def allowances_at(edges: tuple[EdgeName, ...], *args: str) -> tuple[Allowance, ...]:
    """What a seam or turn takes at each of these piece edges."""
    return tuple(Allowance(edge.piece, edge.side or "", args) for edge in edges)


# --- refusing ---


def fault_at(step: Step, arg: str | None, code: str, headline: str, **rest: Any) -> Fault:
    """A fault with its place at a parameter of the step, or at the whole step where it was not given."""
    written: Arg | None = step.args.get(arg) if arg else None
    span = written.span if written and written.given else step.span
    return Fault(code, headline, Label(span), **rest)


def refused(bench: Bench, step: SolvedStep, touches: tuple[str, ...], *faults: Fault) -> Performed:
    """The step not carried out: what it touches is spoiled, so that later steps on it stay silent."""
    units = tuple(other for piece in touches for other in bench.unit(piece))
    return Performed(step, bench, bench.spoil(units), touches, faults)
