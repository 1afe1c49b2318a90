"""What is laid between two edges and caught in their seam: the seam that follows, and that both have one allowance."""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge, OnLine, State
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved, SolvedStep
from furbelow.garment.spec import EdgeName, LayerName, each_of
from furbelow.garment.technique import fault_at, word_of
from furbelow.techniques.shared.laying import ravels

INSIDE = Fraction(3)  # of the seam's allowance that the basting row lies outside of its line, so that it does not show


def not_as_its_seam(say: Phrasing, step: SolvedStep, name: str) -> Fault | None:
    """The fault of what no later seam catches, or one of another allowance than it is laid in with. Fails: FB371."""
    written, seam, sewn = step.written, step.mm("seam"), _seam_to_come(say.solved, step, name)
    if sewn is None:
        return fault_at(
            written,
            "in",
            "FB371",
            f"0 later steps sew `{name}`, and what is laid in it is only basted",
            help=f"put this step before the one that sews `{name}`, such as `attach`",
        )
    if sewn.mm("seam") == seam:
        return None
    wanted = sewn.mm("seam")
    return fault_at(
        written,
        "seam",
        "FB371",
        f"it is laid in {say.length(seam)} from the edge and the seam in `{name}` is {say.length(wanted)},"
        f" {say.length(abs(wanted - seam))} off",
        mend=mends.write(written, "seam", say.length(wanted)),
    )


def left_raw(say: Phrasing, step: SolvedStep, arg: str, edge: Edge, base: Edge) -> Fault | None:
    """The fault of a raw edge that ravels in a seam whose own margin nobody has to neaten. Fails: FB335.

    Where the other cloth ravels and is raw too, the margin of the seam is neatened through all its layers.
    """
    if edge.state is not State.RAW or not ravels(say.solved, edge.pieces):
        return None
    if base.state is State.RAW and ravels(say.solved, base.pieces):
        return None
    cloth = say.solved.pieces[edge.pieces[0]].piece.cloth.text
    return fault_at(
        step.written,
        arg,
        "FB335",
        f"the raw edge of `{edge.name}` would lie in a seam that is not neatened, and `{cloth}` ravels",
        mend=mends.before(step.written, f"neaten: {{edge: {edge.name}}}"),
    )


def line_at(bench: Bench, base: Edge, seam: Fraction) -> OnLine:
    """Where the seam will lie on the piece that the strip is laid on: it hangs from there."""
    piece, _, side = base.name.partition(".")
    down = base.used + seam
    return OnLine(piece, down if side == "top" else bench.cloths[piece].piece.cut_depth - down)


def not_on_a_long_edge(step: SolvedStep, arg: str, base: Edge) -> Fault | None:
    """The fault of laying a strip in a short edge, or in a stack, which has no face of its own."""
    if base.name.endswith((".top", ".bottom")):
        return None
    return fault_at(
        step.written,
        arg,
        "FB340",
        f"`{base.name}` is no top or bottom edge of one piece, and what hangs from a seam is laid along one",
        help=f"name `{base.pieces[0]}.top` or `{base.pieces[0]}.bottom`",
    )


def _seam_to_come(solved: Solved, step: SolvedStep, name: str) -> SolvedStep | None:
    """The later step that sews this edge, whether by itself or in a stack."""
    names = {name}
    for later in solved.steps[step.written.index + 1 :]:
        named = {value for arg in later.written.args.values() for value in each_of(arg.value)}
        edges = {str(value) for value in named if isinstance(value, EdgeName)}
        edges |= {str(value.edge) for value in named if isinstance(value, LayerName)}
        if not names & edges:
            continue
        if later.written.technique == "stack layers":
            names.add(word_of(later.written, "as"))
        elif "seam" in later.amounts and later.written.technique not in ("catch in", "piping"):
            return later
    return None
