"""What all casings have alike: how they are stitched, and where their gap is for what goes in."""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Casing, Holes, State
from furbelow.garment.message import One, Value
from furbelow.garment.solved import Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import Action, Parameter, edge_of, fault_at, word_of

EDGE_STITCH = Fraction(2)  # from the fold: it narrows the casing by so much
IN_ROW, IN_SEAM = "row", "seam"
GAP_IN = Parameter(
    "Where the gap is: left in the row, or unpicked in the upright seam on the inside, as wide as the channel.",
    (IN_ROW, IN_SEAM),
    IN_ROW,
)
HOLES = ("buttonholes", "worked-eyelets", "metal-eyelets")
OPENED = ("rows", "row")  # between what a seam is unpicked: two rows, or the top of the casing and its row
BESIDE_SEAM = Fraction(20)  # from the side seam to the gap: a row neither begins nor ends well on a thick seam


def holds_cord(solved: Solved, casing: str) -> bool:
    """Whether a cord goes into this casing later: its ends come out of the gap, so the gap is in front."""
    steps = (step.written for step in solved.steps)
    return any(step.technique == "drawstring" and edge_of(step, "into") == casing for step in steps)


def holds_said(solved: Solved, casing: str) -> One:
    """How messages choose by what a casing holds, under `$holds`."""
    return One("cord" if holds_cord(solved, casing) else "elastic", ("cord", "elastic"))


def casing_at(bench: Bench, step: Step, arg: str) -> Casing | Fault:
    """The casing that a step works on. Fails: FB321 where there is none yet."""
    name = edge_of(step, arg)
    return _named(bench, name) or fault_at(
        step,
        arg,
        "FB321",
        f"there is no casing in `{name}` yet",
        help="move this step after the one that makes the casing",
    )


def gap_unpicked(bench: Bench, step: Step, piece: str) -> bool | Fault:
    """Whether the gap is unpicked in the upright seam, once the row is sewn all round. Fails: FB318."""
    if word_of(step, "gap in") == IN_ROW:
        return False
    return seam_not_to_open(bench, step, "gap in", piece) or True


def seam_not_to_open(bench: Bench, step: Step, arg: str, piece: str) -> Fault | None:
    """The fault of unpicking a stretch of the seam that closes a piece, where it is none or does not lie open."""
    seam = bench.seams.get(f"{piece}.ends")
    if seam is None:
        return fault_at(
            step,
            arg,
            "FB318",
            f"there is no seam `{piece}.ends` to open",
            help=f"put `- join ends: {{of: {piece}}}` before this step",
        )
    if seam.together or seam.state is State.ENCLOSED:
        how = "neatened as one" if seam.together else "enclosed in it"
        return fault_at(
            step,
            arg,
            "FB318",
            f"the margins of `{piece}.ends` are {how}, and what is drawn through its opening would catch on them",
            help=f"neaten `{piece}.start` and `{piece}.end` each alone before `join ends`, and press that seam open",
        )
    return None


def gap_of(bench: Bench, name: str, step: SolvedStep, unpicked: Fraction | None) -> Fraction:
    """How wide the gap of a casing is: as unpicked, as the step says, or none where holes were worked for a cord."""
    if name in bench.holes:
        return Fraction(0)
    return step.mm("gap") if unpicked is None else unpicked


def holes_said(holes: Holes | None) -> dict[str, Value]:
    """What messages call the holes of a casing, under `$kind`; nothing where it has none."""
    return {"kind": One(holes.kind.replace(" ", "-"), HOLES)} if holes else {}


def seam_pressed(casing: Casing) -> tuple[Action, ...]:
    """Pressing the seam open whose inner stretch becomes the gap, before anything lies on it."""
    return (Action("open-seam-press"),) if casing.in_seam else ()


def unpicking(casing: Casing) -> tuple[Action, ...]:
    """Unpicking the gap where it lies in a seam, once the rows beside it are sewn."""
    return (Action("open-seam"), Action("open-seam-bars")) if casing.in_seam else ()


def _named(bench: Bench, name: str) -> Casing | None:
    """The casing of this name: that of the band, or of the edge that was folded down; either by its piece as well, and a
    band by an edge of its own or of what it was sewn to, whether or not that lay in a stack."""
    while name in bench.layered and name not in bench.casings:
        name = bench.layered[name]
    if name in bench.casings:
        return bench.casings[name]
    sewn = bench.seam_at(name)
    pieces = {name.partition(".")[0]}.union(ply.piece for ply in sewn.plies) if sewn else {name.partition(".")[0]}
    found = [casing for casing in bench.casings.values() if casing.piece in pieces]
    return found[0] if len(found) == 1 else None


def casing_in(bench: Bench, name: str) -> tuple[str, ...]:
    """The pieces that a casing is made in: of a folded edge or stack, or the band itself; none before it is stacked."""
    if name in bench.edges:
        return bench.edge(name).pieces
    piece = name.partition(".")[0]
    return (piece,) if piece in bench.cloths else ()
