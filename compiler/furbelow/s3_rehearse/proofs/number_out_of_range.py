"""Every number of a step lies within what can be sewn and used.

Guarantees: seams and turns are wide enough to hold and no deeper than what they go into; laps, cord ends, ties, gaps and
    spacings are long enough for what they are for. What can't be sewn is an error; what is unusual is a warning.
Cannot know: the hand of the sewist; all limits are house rules, maker to confirm, unless the technique names a source.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment import mends
from furbelow.garment.lying import Window
from furbelow.garment.message import Part
from furbelow.garment.technique import Performed, fault_at
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-numbers"


def prove(run: Run) -> Proof:
    faults: list[Fault] = []
    asked = 0
    for done in run.performed:
        if done.refused or not run.sound(done.touches):
            continue
        for window in done.on_cloth.windows:
            asked += 1
            faults += _outside(run, done, window)
    return Proof(CLAIM, (Part("proof-numbers-within", {"numbers": asked}),), tuple(faults))


def _outside(run: Run, done: Performed, window: Window) -> Iterator[Fault]:
    value = window.value
    for bound, error in (
        (window.sewable_least, True),
        (window.least, False),
    ):
        if bound is not None and value < bound:
            yield _fault(run, done, window, bound, max(bound, window.least or bound), error, short=True)
            return
    for bound, error in ((window.sewable_most, True), (window.most, False)):
        if bound is not None and value > bound:
            yield _fault(
                run, done, window, bound, bound if window.most is None else min(bound, window.most), error, short=False
            )
            return


def _fault(
    run: Run, done: Performed, window: Window, bound: Fraction, good: Fraction, error: bool, *, short: bool
) -> Fault:
    def show(value: Fraction) -> str:
        return f"{float(value):.4g}" if window.counted else run.say.length(value)

    written, more = done.step.written, "more" if short else "less"
    bound_as = show(good) if window.counted else run.say.within(good, least=short)
    typed = mends.write(written, window.arg, bound_as, f" or {more}")
    return fault_at(
        written,
        window.arg or None,
        "FB421",
        f"{window.what} of {show(window.value)} is {show(abs(window.value - bound))} {'too little' if short else 'too much'}"
        + (" to be worked" if error else ""),
        notes=(window.why,) if window.why else (),
        mend=typed if window.arg in done.step.amounts else mends.Mend(f"make it {bound_as} or {more}", None),
        severity=Severity.ERROR if error else Severity.WARNING,
        needs=good if short else -good,
    )
