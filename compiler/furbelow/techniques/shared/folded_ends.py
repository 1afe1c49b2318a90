"""The ends of a strip that is sewn along a flat edge: folded in before it is sewn on, so that they are clean."""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, State
from furbelow.garment.lying import Ledger, Lies, OnCloth
from furbelow.garment.solved import Allowance, SolvedStep
from furbelow.garment.technique import Kind, Parameter, fault_at
from furbelow.techniques.shared.laying import WIDE_MARGIN, turn_window

ENDS = "fold ends"
PARAMETER = Parameter("On a flat edge, how much of each of its ends is folded in.", Kind.LENGTH, "0 mm")
_SIDES = ("start", "end")


def takes(strip: str) -> tuple[Allowance, ...]:
    return tuple(Allowance(strip, side, (ENDS,)) for side in _SIDES)


def with_ends(on: OnCloth, step: SolvedStep, ledger: Ledger, strip: str) -> OnCloth:
    """What a step puts on the cloth, with the folds at the ends of its strip."""
    ends = step.mm(ENDS)
    if not ends:
        return on
    folds = tuple(
        each
        for side in _SIDES
        for each in ledger.at_edge(f"{strip}.{side}", Lies.MARGIN, "the folded end", Fraction(0), ends, ENDS)
    )
    window = turn_window(ENDS, "a fold", ends, most=WIDE_MARGIN)
    return on._replace(occupants=(*on.occupants, *folds), windows=(*on.windows, window))


def folded_in(bench: Bench, step: SolvedStep, strip: str, edge: str) -> Bench | Fault:
    """The bench with both ends of the strip folded in. Fails: FB313 on a ring, FB302 where an end is finished already."""
    ends, written = step.mm(ENDS), step.written
    if not ends:
        return bench
    if bench.cloths[strip].ring:
        return fault_at(
            written,
            ENDS,
            "FB313",
            f"`{strip}` is a ring, and ends are folded in where it is flat",
            help=f"leave `fold ends` out, or the step that closes `{strip}`",
        )
    done = next(
        (side for side in _SIDES if bench.edge(f"{strip}.{side}").state not in (State.RAW, State.NEATENED)), None
    )
    if done:
        return fault_at(
            written,
            ENDS,
            "FB302",
            f"`{strip}.{done}` is finished already, and `fold ends` would fold it in once more",
            help="leave `fold ends` out",
        )
    for side in _SIDES:
        bench = bench.turned(bench.edge(f"{strip}.{side}"), ends, State.ENCLOSED)
    return bench
