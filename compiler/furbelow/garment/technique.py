"""What a technique is: one way of working cloth, in one file, known to every stage.

The reader takes its parameters, the solver what it takes of the cloth, the rehearsal its effect on the bench, the
shopping list its thread and supplies, and the guide its messages and drawings. Every closed set of words in this
contract is an enum, so that a slip is found by the type checker and not by a maker.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from enum import StrEnum
from fractions import Fraction
from typing import Any, Protocol, TypeVar

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.bench import Bench, Seam
from furbelow.garment.fasteners import Fastener
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.mends import Mend
from furbelow.garment.message import Part, Values
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Arg, EdgeName, Step, SupplyKind, Word, each_of
from furbelow.garment.stitch import StitchType
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple

EdgesIn = Callable[[EdgeName], tuple[EdgeName, ...]]  # the piece edges that a name stands for, stacks opened


class SetUp(StrEnum):
    """What the step is worked with, and so what has to be set up before it."""

    STRAIGHT = "straight stitch"
    ZIGZAG = "zigzag"
    OVERLOCKER = "overlocker"
    ATTACHMENT = "pleating attachment"
    HAND = "hand"
    IRON = "iron"
    TABLE = "table"
    NOTHING = ""


NO_MACHINE = (
    SetUp.HAND,
    SetUp.IRON,
    SetUp.TABLE,
    SetUp.NOTHING,
)  # setting these up changes nothing on a sewing machine


class CautionKind(StrEnum):
    NEEDLE = "needle"
    BLADE = "blade"
    HEAT = "heat"
    FLAME = "flame"
    STEAM = "steam"
    AEROSOL = "aerosol"
    DYE = "dye"
    CHEMICAL = "chemical"
    TRIP = "trip"
    CHILD = "child"


class Picture(StrEnum):
    """The kinds of figure that can explain a step; s6_write/figures draws each."""

    PIECES = "pieces"
    STRIPS = "strips"
    PANELS = "panels"
    SEWN_SEAM = "sewn seam"
    NEATENED_MARGIN = "neatened margin"
    TURNED_MARGIN = "turned margin"
    OVERLOCK_TAIL = "overlock tail"
    TURNED_TWICE = "turned twice"
    TRIMMED_EDGE = "trimmed edge"
    FRENCH_SEAM = "french seam"
    FLAT_FELLED_SEAM = "flat felled seam"
    LAPPED_SEAM = "lapped seam"
    GATHERING = "gathering"
    MATCHING_MARKS = "matching marks"
    RING_OVER_RING = "ring over ring"
    LAYERS = "layers"
    PLEATS = "pleats"
    TUCKS = "tucks"
    SHIRRING = "shirring"
    BAND = "band"
    CHANNEL = "channel"
    TURNED_LINING = "turned lining"
    BINDING_STRIP = "binding strip"
    FITTED_BAND = "fitted band"
    TAPE = "tape"
    FACING = "facing"
    BAGGED_EDGE = "bagged edge"
    ELASTIC = "elastic"
    CORD = "cord"
    SLIT = "slit"
    HANG_LOOPS = "hang loops"
    FASTENING = "fastening"
    CLOSED_GAP = "closed gap"
    LEVELLED = "levelled"
    ROW_ON_LINE = "row on a line"
    ZIP = "zip"
    SEAM_SLIT = "slit in a seam"
    PATCH_POCKET = "patch pocket"
    SIDE_POCKET = "side pocket"
    INTERFACING = "interfacing"
    PETERSHAM = "petersham"
    SEWN_ELASTIC = "sewn elastic"
    GORES = "gores"
    BIAS_STRIP = "bias strip"
    HEADED_ROW = "headed row"
    STRAPS = "straps"
    DARTS = "darts"
    DIPPED_HEM = "dipped hem"
    BUSTLE_TAPES = "bustle tapes"
    EYELETS = "eyelets"
    CHANNELS = "channels"
    CAUGHT_STRIP = "caught strip"
    PIPING = "piping"
    BUTTONED_ELASTIC = "buttoned elastic"
    GODETS = "godets"


class Tool(StrEnum):
    """Tools beyond those that a set-up brings by itself; what each is for stands in the words, under `tool-...`."""

    IRON = "iron"
    PRESS_CLOTH = "press cloth"
    HAND_NEEDLE = "hand needle"
    PINS = "pins"  # where clips, which grip edges, do not reach
    HEMMING_FOOT = "hemming foot"
    ZIP_FOOT = "zip foot"
    BLUNT_STICK = "blunt stick"
    BRUSH = "brush"
    SPRAY = "spray"
    BOWL = "bowl"
    PAN = "pan"
    MEASURING_JUG = "measuring jug"
    SHEET = "sheet"
    HAIR_DRYER = "hair dryer"
    FORM = "dress form"
    BOARD = "board"
    SCALE = "scale"
    DYE_PAN = "dye pan"
    GLOVES = "gloves"
    FIRE_LABEL = "fire label"
    SAFETY_PIN = "safety pin"
    SAFETY_PINS = "two safety pins"
    SMALL_SAFETY_PINS = "small safety pins"
    BODKIN = "bodkin"
    AWL = "awl"
    EYELET_TOOL = "eyelet tool"
    TEXTILE_GLUE = "textile glue"
    EYE_PROTECTION = "eye protection"
    BONE_CUTTERS = "bone cutters"
    BONE_CAPS = "bone caps"
    LARGE_PAPER = "large paper"
    # What the zigzag stitch is for.
    NEATENING = "neatening by zigzag"
    JOINING_ELASTIC = "joining elastic by zigzag"
    BARS = "bars of zigzag"
    BUTTONHOLE = "buttonhole"


class Kind(StrEnum):
    """How a parameter is written, and so how it is read."""

    LENGTH = "length"
    NUMBER = "number"
    EDGE = "edge"
    EDGES = "edges"
    PIECE = "piece"
    PIECES = "pieces"
    MATERIAL = "material"
    LAYERS = "layers"
    NAME = "name"  # of a new edge
    CASING = "casing"  # a piece, or an edge with a folded casing


class Parameter(NamedTuple):
    """One key of a technique.

    kind: how it is written, or the words that are allowed.
    default: the text as a maker would write it; None where the key must be given, "" where it may stay away.
    supplies: of a material, the kinds that will do; another is refused where it is read.
    """

    about: str
    kind: Kind | tuple[str, ...]
    default: str | None = None
    supplies: tuple[SupplyKind, ...] = ()


class Sewn(NamedTuple):
    """Stitching done: `length` in mm for each of `copies`, stitch length in mm.

    joins_of: the stitching is done once for every join that the cutting plan gives this piece, and copies is 1.
    singly: how many stitches are set one by one, for each copy: they take the time, whatever the length.
    """

    kind: StitchType | None  # None where pinking shears go along it
    length: Fraction
    copies: int
    stitch: Fraction
    joins_of: str = ""
    singly: int = 0


class Used(NamedTuple):
    """A supply used up: `amount` in mm for trims and elastic, in ml for starch, in g for dye; `copies` of it."""

    material: str
    amount: Fraction
    copies: int
    what: Part  # where it goes: "cord in the yoke"
    fastener: Fastener | None = None  # of what the spec does not list; `material` is its name

    @classmethod
    def of_ours(cls, fastener: Fastener, count: Fraction, what: Part) -> Used:
        """So many of a fastener that the spec does not list."""
        return cls(fastener.name, count, 1, what, fastener)


class Action(NamedTuple):
    """One thing to do. `message` is its name in the technique's words, by which figures call it too.

    copies: on how many pieces it is done before the next action.
    run: one of several in a row that are all done on one piece, and then on the next.
    values: what this action says besides the values of its step.
    chain: how work on like things is marked where they are no pieces: "3 joins".
    """

    message: str
    copies: int = 1
    run: bool = False
    values: Values = {}
    chain: Part | None = None


class Caution(NamedTuple):
    """`values`: what it says besides the values of its step."""

    kind: CautionKind
    message: str
    values: Values = {}


class Instructions(NamedTuple):
    """What the guide says of a step: names of messages, and the values that all of them are given.

    pressed: the pieces that the iron touches, where these are fewer than the step works on.
    waits: actions that come before anything is set up for the step, for they take a night.
    ironed: messages of actions that are done with the hot iron in hand; before the first of them it is set.
    ruled: messages of actions that have a line drawn on the cloth, which does not show on net.
    """

    title: str
    aim: str
    actions: tuple[Action, ...]
    values: Values = {}
    cautions: tuple[Caution, ...] = ()
    tools: tuple[Tool, ...] = ()
    pressed: tuple[str, ...] = ()
    waits: tuple[Action, ...] = ()
    ironed: tuple[str, ...] = ()
    ruled: tuple[str, ...] = ()


class OwnAction(NamedTuple):
    """One thing to do in a maker's own words, with places such as {edge}; copies: on how many pieces it is done."""

    text: str
    check: str = ""
    tolerance: str = ""
    remedy: str = ""
    copies: int = 1


class OwnInstructions(NamedTuple):
    """What the guide says of a step in a maker's own words: heading, aim, actions, cautions as (kind, text).

    values: what stands in the places of these texts, put into words when they are said.
    """

    title: str
    aim: str
    actions: tuple[OwnAction, ...]
    cautions: tuple[tuple[CautionKind, str], ...] = ()
    values: Values = {}


class Drawn(NamedTuple):
    """An edge drawn in by a step: to which length in mm, cloth per set length, the share of the cloth in the back half."""

    edge: str
    length: Fraction
    ratio: Fraction
    behind: Fraction


class Performed(NamedTuple):
    """A step carried out on the bench, or refused: then `faults` says why and `after` is `before`, spoiled."""

    step: SolvedStep
    before: Bench
    after: Bench
    touches: tuple[str, ...]  # pieces worked on, for figures and for hiding consequences
    faults: tuple[Fault, ...] = ()
    sewn: tuple[Sewn, ...] = ()
    used: tuple[Used, ...] = ()
    setup: SetUp = SetUp.NOTHING
    pinned: Fraction = Fraction(0)  # mm of edge pinned or clipped at the workroom's spacing, all copies
    pinned_at_once: Fraction | None = None  # where not all of it is held at one time
    handled: Fraction = Fraction(0)  # mm of edge gathered, turned, pressed or cut by hand, all copies
    tended: Fraction = Fraction(0)  # minutes that belong to no length: cloth turned in a bath
    thread_ends: int = 0  # bundles of loose thread ends wound round a pin, or knotted and cut, all copies
    drawn: Drawn | None = None  # what it gathers or pleats
    on_cloth: OnCloth = OnCloth()  # what it puts on the cloth, as the technique declares it; see garment/lying.py
    facts: object = None  # a typed value of the technique's own: what its instructions and figures need besides

    @property
    def key(self) -> str:
        """By what the operation of this step is found in a guide, whatever its letter."""
        return f"step-{self.step.written.index + 1}"

    @property
    def refused(self) -> bool:
        # Asked by every proof of every step, and hardly one has a fault.
        return bool(self.faults) and any(fault.severity is Severity.ERROR for fault in self.faults)


F = TypeVar("F")


def facts_of(done: Performed, kind: type[F]) -> F:
    """The technique's own facts of this step. Fails: TypeError where the technique has none of this kind."""
    if not isinstance(done.facts, kind):
        raise TypeError(f"`{done.step.written.technique}` has {type(done.facts).__name__} and no {kind.__name__}")
    return done.facts


def new_seam(done: Performed) -> Seam:
    """The seam that a step made. Fails: StopIteration where it made none."""
    return next(seam for name, seam in done.after.seams.items() if done.before.seams.get(name) is not seam)


class Technique(Protocol):
    """The parts of a technique. `allowances` is asked before any number is known, so it may read only the step itself."""

    @property
    def name(self) -> str: ...  # the key in a spec: "narrow hem"

    @property
    def about(self) -> str: ...  # one sentence for editors and the reference

    @property
    def pictures(self) -> tuple[Picture, ...]: ...  # the figures that explain it

    @property
    def parameters(self) -> Mapping[str, Parameter]: ...

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]: ...

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed: ...

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth: ...

    def instructions(self, done: Performed, say: Phrasing) -> Instructions | OwnInstructions: ...


TechniqueOf = Callable[[Step], Technique]  # how a step is worked


# --- reading a step's parameters ---


def edge_at(step: Step, name: str) -> EdgeName:
    """The edge that a parameter names. Fails: TypeError where the parameter is of another kind."""
    value = step.args[name].value
    if not isinstance(value, EdgeName):
        raise TypeError(f"`{name}` of `{step.technique}` names no edge")
    return value


def edge_of(step: Step, name: str) -> str:
    """The edge that a parameter names, as written: "flounce.top"."""
    return str(edge_at(step, name))


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


def fault_at(step: Step, arg: str | None, code: str, headline: str, *, mend: Mend | None = None, **rest: Any) -> Fault:
    """A fault with its place at a parameter of the step, or at the whole step where it was not given."""
    if mend:
        rest |= {"help": mend.help, "change": mend.change}
    written: Arg | None = step.args.get(arg) if arg else None
    span = written.span if written and written.given else step.span
    return Fault(code, headline, Label(span), **rest)


def refused(bench: Bench, step: SolvedStep, touches: tuple[str, ...], *faults: Fault) -> Performed:
    """The step not carried out: what it touches is spoiled, so that later steps on it stay silent."""
    units = tuple(other for piece in touches for other in bench.unit(piece))
    return Performed(step, bench, bench.spoil(units), touches, faults)
