"""The reasons of a guide's numbers: what `furbelow why` says, in words for a reader who has not seen the spec."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from furbelow.garment.bench import Casing
from furbelow.garment.solved import Solved
from furbelow.garment.spec import EdgeName
from furbelow.garment.technique import Performed
from furbelow.s2_solve.equations import step_name
from furbelow.s3_rehearse.finished_garment import reasons_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.guide.guide import CutLine, Fact, Part, Reason
from furbelow.s6_write.guide.told_reason import Teller
from furbelow.s6_write.words.words import Words


def reasons(
    run: Run, facts: Sequence[Fact], cutting: Sequence[CutLine], parts: Sequence[Part], words: Words
) -> tuple[Reason, ...]:
    """A reason for each number that these name, and for every number that it stands on, each once."""
    values, whole = run.solved.values, reasons_of(run)
    operations = [operation for part in parts for operation in part.operations]
    teller = Teller(run.solved, {operation.key: operation.title for operation in operations}, words)
    named = [fact.name for fact in facts]
    named += [name for line in cutting for name in line.why]
    named += [name for operation in operations for name in operation.why]
    told: dict[str, Reason] = {}
    left = named[::-1]
    while left:
        name = left.pop()
        if name not in told and (name in values or name in whole):
            told[name] = teller.reason(values[name] if name in values else whole[name])
            left += told[name].inputs[::-1]
    return tuple(told.values())


def name_of(solved: Solved, name: str, length: Fraction) -> str:
    """The name, where that number has this length; else empty: an edge may be taken from several pieces, or tucked."""
    return name if name in solved.values and solved.length(name) == length else ""


def elastic_name(run: Run, casing: Casing) -> str:
    """The name of the length that the elastic of a casing is closed to; empty where no step gives it."""
    steps = (done.step for done in run.performed if "elastic" in done.step.written.args)
    names = (name_of(run.solved, step_name(step.written, "length"), casing.elastic_length) for step in steps)
    return next(filter(None, names), "")


def numbers_of(done: Performed, solved: Solved) -> tuple[str, ...]:
    """The names of the numbers in a step that come from others: its own formulas, and a length that it gathers to."""
    own = (step_name(done.step.written, amount) for amount in done.step.amounts)
    found = [name for name in own if name in solved.values and solved.values[name].inputs]
    target = done.step.written.args.get("to")
    if done.drawn and target is not None and isinstance(target.value, EdgeName):
        found.append(name_of(solved, f"{target.value.piece}.length", done.drawn.length))
    return tuple(filter(None, found))
