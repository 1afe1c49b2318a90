"""Whether an edge can be worked on now: the questions that several techniques ask of the bench."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import WORKABLE, Bench, Edge, State
from furbelow.garment.limits import NARROWEST_SEAM, NARROWEST_SEAM_FIRM
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import edge_of, fault_at, word_of
from furbelow.techniques.shared.lines import down_to_line, line_edge

_DONE = {
    State.SEWN: "is already sewn into a seam",
    State.HEMMED: "is already hemmed",
    State.ENCLOSED: "is already enclosed",
}


def edge_not_ready(bench: Bench, step: Step, arg: str, name: str) -> Fault | None:
    """Why this edge can't be sewn now, or None: it is finished, lies in a stack, or its strips are not joined."""
    if name not in bench.edges:
        return fault_at(
            step,
            arg,
            "FB301",
            f"`{name}` is used before its layers are stacked",
            help=f"put the `stack layers` step that makes `{name}` before this one",
        )
    edge = bench.edge(name)
    if name in bench.layered:
        stack = bench.layered[name]
        return fault_at(
            step,
            arg,
            "FB302",
            f"`{name}` already lies in the stack `{stack}`",
            help=f"work on `{stack}`, or move this step before the stacking",
        )
    if edge.state not in WORKABLE:
        return fault_at(
            step,
            arg,
            "FB302",
            f"`{name}` {_DONE[edge.state]}",
            help="move this step before the one that finished the edge, or leave it out",
        )
    return strips_not_joined(bench, step, arg, edge.pieces)


def strips_not_joined(bench: Bench, step: Step, arg: str, pieces: Iterable[str]) -> Fault | None:
    """The fault of working on a pieced piece before its strips are one, or on a ring before it is cut out."""
    for piece in pieces:
        if bench.cloths[piece].blank:
            numbers = bench.cloths[piece].piece
            shape, cutter = ("gores are", "gores") if numbers.gore else ("ring is", "ring cut")
            if numbers.bias:
                shape, cutter = "bias strip is", "bias strip"
            return fault_at(
                step,
                arg,
                "FB353",
                f"`{piece}` is still a rectangle, and its {shape} not cut out yet",
                help=f"move its `{cutter}` before this step",
            )
        if bench.cloths[piece].in_parts:
            return fault_at(
                step,
                arg,
                "FB303",
                f"the strips of `{piece}` are not joined yet",
                notes=(f"`{piece}` may be pieced, so it can come from the table in several strips",),
                mend=mends.before(step, f"join strips: {{of: {piece}}}"),
            )
    return None


def one_unit(bench: Bench, step: Step, arg: str, one: str, other: str, mend: str) -> Fault | None:
    """The fault of sewing together two pieces or edges that belong to one unit already. mend: what to look at."""
    units = {bench.units[bench.edge(name).pieces[0] if name in bench.edges else name] for name in (one, other)}
    if len(units) > 1:
        return None
    return fault_at(step, arg, "FB317", f"`{one}` and `{other}` belong to one unit already", help=mend)


def forms_differ(bench: Bench, step: Step, arg: str, one: Edge, other: Edge) -> Fault | None:
    """The fault of sewing a ring to a flat edge: one of the two was closed too early or too late."""
    if bench.ring(one) == bench.ring(other):
        return None
    ring, flat = (one, other) if bench.ring(one) else (other, one)
    return fault_at(
        step,
        arg,
        "FB304",
        f"`{ring.name}` is closed to a ring while `{flat.name}` is still flat",
        notes=("a ring and a flat edge can't be matched along their whole length",),
        help=f"close the ends of `{flat.pieces[0]}` before this step, or those of `{ring.pieces[0]}` after it",
    )


def ends_turned(bench: Bench, one: Edge, other: Edge, say: Phrasing) -> tuple[str, ...]:
    """Notes on what hems at the ends take of two edges that don't match, where the maker may have forgotten it."""
    notes = []
    for piece in dict.fromkeys((*one.pieces, *other.pieces)):
        ends = [bench.edge(f"{piece}.{side}") for side in ("start", "end")]
        took = sum((end.used for end in ends if end.state is State.HEMMED), Fraction(0))
        if took:
            notes.append(f"the hems at the ends of `{piece}` take {say.length(took)} of its length")
    return tuple(notes)


def copies_differ(step: Step, arg: str, one: Edge, other: Edge) -> Fault | None:
    """The fault of matching, say, three flounces with two upper tiers."""
    if one.copies == other.copies:
        return None
    more, fewer = (one, other) if one.copies > other.copies else (other, one)
    return fault_at(
        step,
        arg,
        "FB305",
        f"there are {one.copies} of `{one.name}` and {other.copies} of `{other.name}`,"
        f" {abs(one.copies - other.copies)} too many on one side",
        help=f"cut {fewer.copies} of `{more.pieces[0]}`, stack its copies first, or join them with `into: one ring`",
    )


def margin_state(solved: Solved, *edges: Edge) -> State:
    """Raw, or neatened: beside a neat edge of cloth that ravels, a raw one that does not ravel leaves nothing to do."""
    cloths = [[solved.pieces[piece].piece.cloth.text for piece in edge.pieces] for edge in edges]
    ravels = [any(solved.materials[cloth].material.ravels for cloth in lying) for lying in cloths]
    raw = [edge.state is State.RAW for edge in edges]
    open_to_ravel = any(is_raw and may for is_raw, may in zip(raw, ravels, strict=True))
    return State.RAW if open_to_ravel or (any(raw) and not any(ravels)) else State.NEATENED


def not_one_edge(step: Step, arg: str, edge: Edge) -> Fault | None:
    """The fault of hemming a stack, or working along it as along one piece; a layer that was hemmed before could not be stacked."""
    if "." in edge.name:
        return None
    return fault_at(
        step,
        arg,
        "FB302",
        f"`{edge.name}` is a stack of {len(edge.plies)} layers, and `{step.technique}` works along one piece",
        help="finish the stack with a `fitted waistband`, `band casing`, `binding strip` or `facing`, or leave the stacking out",
    )


def not_long(step: Step, arg: str, edge: Edge) -> Fault | None:
    """The fault of a method along the length asked for at a start or end edge, where turns are not kept account of."""
    side = edge.name.rpartition(".")[2]
    if side not in ("start", "end"):
        return None
    return fault_at(
        step,
        arg,
        "FB340",
        f"`{edge.name}` is a short edge, and `{step.technique}` works along a top or bottom edge",
        help=f"name `{edge.pieces[0]}.top` or `{edge.pieces[0]}.bottom`, or hem the short edge",
    )


def no_length(step: SolvedStep, arg: str) -> Fault | None:
    """The fault of a length that comes out at nothing where cloth or elastic must be that long."""
    if step.mm(arg) > 0:
        return None
    return fault_at(
        step.written,
        arg,
        "FB208",
        f"`{arg}` of `{step.written.technique}` comes out at 0 and must be above 0",
        help="write a length such as 60 cm, or change the formula",
    )


def gap_too_wide(say: Phrasing, step: SolvedStep, edge: Edge) -> Fault | None:
    """The fault of a gap that leaves nothing of its edge to stitch."""
    gap = step.mm("gap")
    if gap < edge.set_length:
        return None
    return fault_at(
        step.written,
        "gap",
        "FB352",
        f"a gap of {say.length(gap)} is wider than its edge of {say.length(edge.set_length)}",
        help="leave a gap that the elastic goes through, such as 5 cm",
    )


def length_wanted(
    bench: Bench, say: Phrasing, step: SolvedStep, edge: Edge, told_by: Sequence[str] = ("to", "length", "on")
) -> Fraction | Fault:
    """How long this edge is to be: as `to`, the edge it will be sewn to, as a line on a piece, or the `length` given.

    say: how faults of a line say their lengths. told_by: the parameters of which one says it.
    """
    written, technique = step.written, step.written.technique
    given = [key for key in told_by if key in written.args]
    if len(given) != 1:
        more = f", and {' and '.join(f'`{key}`' for key in given)} are given" if given else ""
        article, asked = "an" if technique[0] in "aeiou" else "a", [f"`{key}`" for key in told_by]
        headline = f"{article} {technique} needs one of {', '.join(asked[:-1])} and {asked[-1]}{more}"
        return fault_at(written, None, "FB313", headline, help="name the edge it will be sewn to with `to`")
    if given == ["length"]:
        return no_length(step, "length") or step.mm("length")
    if given == ["on"]:
        on = word_of(written, "on")
        if fault := strips_not_joined(bench, written, "on", (on,)):
            return fault
        down = down_to_line(step, say, on)
        if not isinstance(down, Fraction):
            return down
        line = line_edge(bench, on, bench.cloth_at(on, down))
        return forms_differ(bench, written, "on", edge, line) or line.set_length
    name = edge_of(written, "to")
    if name == edge.name:
        headline = f"`{name}` would be sewn to itself"
        return fault_at(written, "to", "FB317", headline, help="name the edge it will be sewn to with `to`")
    if fault := edge_not_ready(bench, written, "to", name):
        return fault
    # Only its length is asked for: each copy is drawn to it, however many they are.
    target = bench.edge(name)
    return forms_differ(bench, written, "to", edge, target) or target.set_length


def seam_too_narrow(solved: Solved, say: Phrasing, step: SolvedStep, arg: str, pieces: Iterable[str]) -> Fault | None:
    """The fault of a seam that would pull out of the cloth of one of these pieces."""
    seam = step.mm(arg)
    ravels = any(solved.materials[solved.pieces[piece].piece.cloth.text].material.ravels for piece in pieces)
    least = NARROWEST_SEAM if ravels else NARROWEST_SEAM_FIRM
    if seam >= least:
        return None
    return fault_at(
        step.written,
        arg,
        "FB326",
        f"a seam of {say.length(seam)} is {say.length(least - seam)} too narrow to hold in this cloth",
        notes=(f"cloth that {'ravels' if ravels else 'does not ravel'} wants {say.length(least)} or more",),
        # A seam that the technique works out of other numbers has no key of its own.
        mend=mends.write(step.written, arg, say.within(least, least=True), " or more")
        if arg in step.written.args
        else mends.Mend(f"make it {say.length(least)} or more", None),
    )
