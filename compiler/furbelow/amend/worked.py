"""What a step did to an edge: drew it in, sewed it, or laid copies of it on each other."""

from __future__ import annotations

from collections.abc import Iterator, Sequence, Set
from fractions import Fraction

from furbelow.amend.verdict import Drawn
from furbelow.garment.bench import Edge
from furbelow.garment.spec import EdgeName, Word, each_of
from furbelow.garment.technique import Performed, edge_of
from furbelow.named import NamedTuple
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.techniques.ease_in import Eased
from furbelow.techniques.pleats import PLEATED
from furbelow.techniques.turned_lining import TurnedIn


def draws_in(done: Performed, name: str) -> Drawn | None:
    """How the step draws this edge in, if it does."""
    was, is_ = done.before.edges.get(name), done.after.edges.get(name)
    if isinstance(done.facts, Eased):
        return Drawn.EASED if edge_of(done.step.written, "edge") == name else None
    if is_ is None or not is_.gathered or (was and was.gathered) or done.step.written.technique == "stack layers":
        return None
    return Drawn.PLEATED if is_.gathered in PLEATED else Drawn.GATHERED


def met(rehearsal: Rehearsal, at: int, pieces: set[str]) -> Fraction | None:
    """The length of the edge in which a step lays copies of a piece, or of what it is sewn to, on each other."""
    done = rehearsal.run.performed[at]
    for name, edge in done.after.edges.items():
        if name in done.before.edges or "." in name:
            continue
        for ply in edge.plies:
            if ply.copies > 1 and pieces & set(done.before.unit(ply.piece)):
                return edge.set_length
    return None


def sews(done: Performed, edge: str) -> bool:
    return any(edge in seam.edges for name, seam in done.after.seams.items() if name not in done.before.seams)


def holds(done: Performed, edge: str) -> bool:
    """Whether a step sews the edge into a seam, or holds it by a row through the layers of a stack."""
    stack = done.after.layered.get(edge) if edge not in done.before.layered else None
    return sews(done, edge) or (stack is not None and sum(ply.copies for ply in done.after.edge(stack).plies) > 1)


def held_before(performed: Sequence[Performed], start: int) -> Iterator[tuple[int, str, Fraction]]:
    """The steps before `start` that drew an edge to a length which a later one of them holds: by their index in the spec, the
    argument that has it, and it in mm. It stays, whatever was measured afterwards."""
    for at, done in enumerate(performed[: max(start, 0)]):
        edge = done.drawn.edge if done.drawn else ""
        if "length" in done.step.amounts and edge and any(holds(each, edge) for each in performed[at + 1 : start]):
            yield done.step.written.index, "length", done.step.mm("length")


def joins_alone(done: Performed, pieces: Set[str]) -> bool:
    """Whether a step does nothing but join the strips of these pieces."""
    return done.step.written.technique == "join strips" and set(done.touches) <= pieces


def mates(done: Performed, edge: str) -> list[str]:
    """The edges that a step sews this one to."""
    return [
        other
        for name, seam in done.after.seams.items()
        if name not in done.before.seams and edge in seam.edges
        for other in seam.edges
        if other != edge
    ]


# End seams and an overlap make a band longer than its edge by no more than this share; house rule, maker to confirm.
MARGINS = Fraction(1, 10)


class SharedOut(NamedTuple):
    """Two edges that meet in a step and no longer fit. by: mm that the longer one is too long for the other.
    alike: whether they were meant to be of one length."""

    at: int
    longer: Edge
    shorter: Edge
    by: Fraction
    alike: bool = True


def shared_out(meant: Rehearsal, now: Rehearsal, start: int) -> Sequence[SharedOut]:
    """What has to be shared out along its seam from step `start` on, because something was measured otherwise than meant."""
    found = []
    for at in range(max(start, 0), len(now.run.performed)):
        was, is_ = meant.run.performed[at], now.run.performed[at]
        for one, other in _met_flat(is_):
            meant_over = _over(was, one, other)
            # Far from one length, as meant: a pocket or a tie lies on a part of the edge alone.
            if abs(meant_over) > was.before.edge(other).set_length * MARGINS:
                continue
            more = _over(is_, one, other) - meant_over
            if abs(more) > now.solved.slack:
                longer, shorter = (is_.before.edge(name) for name in ((one, other) if more > 0 else (other, one)))
                found.append(SharedOut(at, longer, shorter, abs(more), abs(meant_over) <= now.solved.slack))
    return found


def _met_flat(done: Performed) -> Sequence[tuple[str, str]]:
    """The edges that a step sews to one another as they lie. What it draws in itself comes out as it must, and of what it
    eases on to a band its own sentences say how much that is."""
    if isinstance(done.facts, TurnedIn):
        return ()
    named = [value for arg in done.step.written.args.values() for value in each_of(arg.value)]
    edges = [
        str(value) if isinstance(value, EdgeName) else f"{value.text}.top"
        for value in named
        if isinstance(value, EdgeName) or (isinstance(value, Word) and value.text in done.before.cloths)
    ]
    known = [name for name in edges if name in done.before.edges]
    return [
        (one, other)
        for one, other in zip(known, known[1:], strict=False)
        if not _one_thing(done, one, other) and not any(draws_in(done, name) for name in (one, other))
    ]


def _one_thing(done: Performed, one: str, other: str) -> bool:
    """Whether the two hung together before the step, or still do not after it."""
    pieces = done.before.edge(one).pieces[0], done.before.edge(other).pieces[0]
    before, after = ({bench.units[piece] for piece in pieces} for bench in (done.before, done.after))
    return len(before) == 1 or len(after) > 1


def _over(done: Performed, one: str, other: str) -> Fraction:
    return done.before.edge(one).set_length - done.before.edge(other).set_length
