"""Where the work may be put away, and stretches without such a place that are longer than a sitting."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.bench import Bench
from furbelow.garment.workroom import Workroom
from furbelow.s3_rehearse.run import Run
from furbelow.s5_buy.hours import Pace, in_fives, time_for
from furbelow.s5_buy.work import works_of

ROUNDED = Fraction(5)  # minutes: times are planned to so many
WET = ("starch", "dye", "flame retardant")  # steps after which something dries for hours


def pace_of(room: Workroom) -> Pace:
    """How fast the work goes in this workroom."""
    return Pace(sewing_other=room.sewing_speed * 60, pin_spacing=room.pin_spacing, times=room.beginner)


def safe_stops(run: Run) -> list[bool]:
    """For each step whether the work may be put away after it; after the last there is nothing to put away."""
    return [_safe_to_stop(done.after) for done in run.performed[:-1]] + [False]


def left_to_dry(run: Run) -> list[int]:
    """The steps after which no work goes on that day, for what they wet has to dry."""
    return [at for at, done in enumerate(run.performed) if done.step.written.technique in WET]


def longer_than_a_sitting(run: Run, joins: Mapping[str, int]) -> Iterator[Fault]:
    """Warns: FB603 of a stretch of work without a place to stop that is longer than the workroom's sitting.

    joins: of each piece by its cutting plan; without them the stretch is told as long as it is at least.
    """
    if run.room.sitting is None:
        return
    longest, pace = run.room.sitting / 60, pace_of(run.room)
    minutes = [time_for((work,), pace).minutes for work in works_of(run.performed, joins)]
    for first, last in _stretches(safe_stops(run)):
        whole = sum(minutes[first : last + 1], Fraction(0))
        if whole < longest + ROUNDED:
            continue
        told, most = in_fives(whole), in_fives(longest)
        steps = [(done.step.written.technique, each) for done, each in zip(run.performed, minutes, strict=True)]
        parts = " + ".join(f"{_time(in_fives(each))} `{name}`" for name, each in steps[first : last + 1] if each)
        yield Fault(
            "FB603",
            f"{_time(told)} of work have no place to stop, and a sitting lasts {_time(most)}, {_time(told - most)} too long",
            Label(run.performed[first].step.written.span, "the stretch begins here"),
            notes=(parts,),
            help="give the workroom a longer `sitting`, or accept it where the class stays on",
            severity=Severity.WARNING,
        )


def _stretches(safe: Sequence[bool]) -> Iterator[tuple[int, int]]:
    """The first and the last step of the work between two places to stop."""
    first = 0
    for at, stop in enumerate(safe):
        if stop or at == len(safe) - 1:
            yield first, at
            first = at + 1


def _time(minutes: int) -> str:
    hours, rest = divmod(minutes, 60)
    return " ".join(
        part for part in (f"{hours} h" if hours else "", f"{rest} min" if rest or not hours else "") if part
    )


def _safe_to_stop(bench: Bench) -> bool:
    """Nothing hangs on pins or loose threads: no gathers unsewn, no elastic in an open casing."""
    loose = any(edge.gathered and not edge.held and name not in bench.layered for name, edge in bench.edges.items())
    return not loose and not any(casing.open and casing.elastic for casing in bench.casings.values())
