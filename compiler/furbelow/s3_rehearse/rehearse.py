"""Carry out every step on the bench, then ask for every proof."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from furbelow.diagnose.fault import Label, Staged
from furbelow.garment.bench import WORKABLE, Bench, laid_out
from furbelow.garment.lying import Band, Ledger
from furbelow.garment.solved import Solved, SolvedStep
from furbelow.garment.spec import EdgeName, LayerName, Word, each_of
from furbelow.garment.technique import Kind, Performed, Technique, TechniqueOf
from furbelow.garment.workroom import Workroom
from furbelow.s3_rehearse.order_of_work import fewest_set_ups
from furbelow.s3_rehearse.proofs import proofs
from furbelow.s3_rehearse.run import Rehearsal, Run

FINISHED = "FB302"


def rehearse(solved: Solved, room: Workroom, technique_of: TechniqueOf) -> Staged[Rehearsal]:
    """The rehearsal with its proofs, and every fault of both. technique_of: how each step is worked."""
    run = carried_out(solved, room, technique_of)
    performed = run.performed
    shown = tuple(proof(run) for proof in proofs())
    faults = tuple(fault for done in performed for fault in done.faults)
    faults += tuple(fault for proof in shown for fault in proof.faults)
    sound = not any(fault.is_error for fault in faults)
    meant = [fault for fault in faults if not fault.is_error and fault.code in solved.spec.accepted]
    accepted = tuple(dict.fromkeys(solved.spec.accepted[fault.code] for fault in meant))
    told = tuple(fault for fault in faults if fault not in meant) if meant else faults
    return Staged(Rehearsal(run, shown, accepted) if sound else None, told)


def carried_out(solved: Solved, room: Workroom, technique_of: TechniqueOf) -> Run:
    """Every step carried out, and nothing proved yet.

    A refused step spoils the pieces it touches; later steps on them are passed over in silence, so that each cause is
    told once and its consequences are not.
    """
    bench = laid_out(solved)
    performed: list[Performed] = []
    folded: Mapping[str, tuple[Band, ...]] = {}
    lost: set[str] = set()  # edges that a refused or skipped step would have made
    for step in solved.steps:
        technique = technique_of(step.written)
        # Nothing is spoiled or lost in a sound garment, and then nobody need ask what the step names.
        if (bench.spoiled or lost) and (
            not bench.spoiled.isdisjoint(_pieces_in(bench, step)) or not lost.isdisjoint(_names_in(step))
        ):
            # What it should have done is missing too, so its pieces tell nothing of the maker's work any more.
            bench = bench.spoil(_pieces_in(bench, step))
            lost.update(_made_by(step, technique))
            continue
        done = technique.perform(bench, step, solved, room)
        if done.refused:
            # A refusal may come before the technique knows its pieces: all that the step names is spoiled.
            done = Performed(step, bench, done.after.spoil(_pieces_in(bench, step)), done.touches, done.faults)
            lost.update(_made_by(step, technique))
            done = _with_finisher(done, performed)
        else:
            ledger = Ledger(done.before, folded)
            done = done._replace(on_cloth=technique.lies(done, ledger, solved, room))
            for piece, bands in done.on_cloth.folded.items():
                folded = {**folded, piece: (*folded.get(piece, ()), *bands)}
            done = done._replace(after=_with_supplies(done))
        performed.append(done)
        bench = done.after
    return Run(_with_fasteners(solved, performed), room, tuple(performed), bench)


def _with_fasteners(solved: Solved, performed: Sequence[Performed]) -> Solved:
    """The garment with the fasteners that its steps sew on and the spec does not list among its materials."""
    found = dict.fromkeys(use.fastener for done in performed for use in done.used if use.fastener)
    if not found:
        return solved
    ours = {each.name: each.as_material(solved.spec.file) for each in found}
    return solved._replace(materials={**solved.materials, **ours})


def _with_finisher(done: Performed, performed: Sequence[Performed]) -> Performed:
    """A step refused because an edge was finished before it, with the step that finished the edge shown beside it."""
    if not any(fault.code == FINISHED for fault in done.faults):
        return done
    names = [name for name in _names_in(done.step) if name in done.before.edges]
    for earlier in reversed(performed):
        for name in names:
            was, is_ = earlier.before.edges.get(name), earlier.after.edges.get(name)
            if was and is_ and was.state in WORKABLE and is_.state not in WORKABLE:
                here = Label(earlier.step.written.span, f"`{name}` is finished here")
                return done._replace(
                    faults=tuple(
                        fault._replace(others=(*fault.others, here)) if fault.code == FINISHED else fault
                        for fault in done.faults
                    )
                )
    return done


def _with_supplies(done: Performed) -> Bench:
    """The bench after a step, which knows what else of the spec than cloth now hangs on each piece."""
    if not done.used:
        return done.after
    supplies = frozenset(used.material for used in done.used if not used.fastener)
    worked = {piece: done.after.sewn_on.get(piece, frozenset()) | supplies for piece in done.touches}
    return done.after._replace(sewn_on={**done.after.sewn_on, **worked})


def in_good_order(rehearsal: Rehearsal, technique_of: TechniqueOf) -> Rehearsal:
    """The same garment with its steps in the order that the workroom prefers, rehearsed and proved anew."""
    run = rehearsal.run
    if run.room.order_of_work == "as written":
        return rehearsal
    together = run.room.order_of_work == "each part together"
    order = fewest_set_ups(run.performed, parts_together=together)
    if order == tuple(range(len(order))):
        return rehearsal
    steps = tuple(run.performed[at].step for at in order)
    again = rehearse(run.solved._replace(steps=steps), run.room, technique_of).value
    # The order keeps every precedence, so it is as sound; should a proof differ all the same, the written order stands.
    return again or rehearsal


def _made_by(step: SolvedStep, technique: Technique) -> Iterator[str]:
    """The names that a step gives to new edges."""
    for name, parameter in technique.parameters.items():
        arg = step.written.args.get(name)
        if parameter.kind is Kind.NAME and arg is not None and isinstance(arg.value, Word):
            yield arg.value.text


def _names_in(step: SolvedStep) -> Iterator[str]:
    """Every edge, stack and piece that a step names."""
    for arg in step.written.args.values():
        for value in each_of(arg.value):
            if isinstance(value, LayerName):
                yield str(value.edge)
            elif isinstance(value, EdgeName):
                yield str(value)
            elif isinstance(value, Word):
                yield value.text


def _pieces_in(bench: Bench, step: SolvedStep) -> Iterator[str]:
    """Every piece that a step names, with all the pieces they are sewn to; a stack stands for its layers."""
    for name in _names_in(step):
        pieces = bench.edges[name].pieces if name in bench.edges else (name.partition(".")[0],)
        for piece in pieces:
            if piece in bench.cloths:
                yield from bench.unit(piece)
