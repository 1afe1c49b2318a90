"""Wherever two lengths are held together, stretch by stretch, the cloth can take the difference.

Guarantees: drawn cloth (gathers shared out unevenly, a casing drawn in by its elastic) has at least as much cloth as line
    in each stretch and no more than the cloth takes; flat cloth held on a line (a turn, tuck, casing or straight facing
    of a flared piece) is longer by no more than can be eased in, and never shorter.
Cannot know: how cloth on the bias gives.
Source: 15 cm in 4 m may be eased, over 20 cm not: common practice, no source. More, held by ease stitching: house rule,
    maker to confirm.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment.limits import EASE_SHARE, fullest, too_full
from furbelow.garment.lying import Held
from furbelow.garment.message import Part
from furbelow.garment.technique import Performed, fault_at
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-fullness"
# With ease stitching a turn on an arc takes up so much at the most; house rule, maker to confirm.
MOST_EASED = Fraction(1, 10)
# Cloth that is shorter than its line by so much is stretched on to it unseen; house rule, maker to confirm.
MOST_STRETCHED = Fraction(1, 100)

DARTED = "an edge that darts draw in is longer again below their points"


def prove(run: Run) -> Proof:
    faults: list[Fault] = []
    asked = 0
    for done in run.performed:
        if done.refused or not run.sound(done.touches):
            continue
        for held in done.on_cloth.held:
            asked += 1
            faults += _drawn(run, done, held) if held.drawn else _flat(run, done, held)
        faults += _twice_behind(run, done)
    return Proof(CLAIM, (Part("proof-fullness-held", {"stretches": asked}),), tuple(faults))


def _drawn(run: Run, done: Performed, held: Held) -> Iterator[Fault]:
    say, ratio = run.say, held.cloth / held.line
    cloth = run.solved.pieces[held.piece].piece.cloth.text
    most = fullest(run.solved, cloth)

    def sum_() -> tuple[str]:
        return (f"{say.length(held.cloth)} / {say.length(held.line)} = {say.ratio(ratio)}",)

    if ratio < 1 - MOST_STRETCHED:
        there, line, short = say.apart(held.cloth, held.line)
        yield fault_at(
            done.step.written,
            held.arg,
            "FB422",
            f"{held.what} has {there} of cloth for {line}, {short} too little",
            notes=sum_(),
            help="share the cloth out more evenly, or use more of it",
        )
    elif severity := too_full(ratio, most):
        yield fault_at(
            done.step.written,
            held.arg,
            "FB315",
            f"{held.what} is drawn in {say.ratio(ratio)} to 1, and `{cloth}` takes {say.ratio(most)} to 1",
            notes=sum_(),
            help=f"use less fullness, or write a larger `gathers` in the material `{cloth}` if a swatch shows more",
            severity=severity,
        )


def _flat(run: Run, done: Performed, held: Held) -> Iterator[Fault]:
    say, over = run.say, held.cloth - held.line
    share = over / held.line
    if -MOST_STRETCHED <= share <= EASE_SHARE:
        return
    error = not held.hangs and (share < -2 * EASE_SHARE or share > MOST_EASED)
    how = "longer" if over > 0 else "shorter"
    cloth, line, gap = say.apart(held.cloth, held.line)
    yield fault_at(
        done.step.written,
        held.arg,
        "FB422",
        f"{held.what} has {cloth} of cloth to lie on {line} of `{held.piece}`, {gap} {how} ({say.share(abs(share))})",
        notes=(DARTED if held.hangs else "a flared piece is longer at the hem than above it",),
        help="make it shallower, or sew darts in it as in the edge, before the two are joined"
        if held.hangs
        else "take a shallower turn, or bind the edge, or face it with a piece of the same shape",
        severity=Severity.ERROR if error else Severity.WARNING,
    )


def _twice_behind(run: Run, done: Performed) -> Iterator[Fault]:
    """More cloth behind in a layer or a tier, and again in the edge that it hangs from: the shares multiply."""
    if not done.drawn or done.drawn.behind == Fraction(1, 2):
        return
    for earlier in run.performed:
        if earlier is done:
            return
        drawn = earlier.drawn
        if drawn and drawn.behind != Fraction(1, 2) and _hangs_from(run, done, drawn.edge, done.drawn.edge):
            one, two = drawn.behind, done.drawn.behind
            together = one * two / (one * two + (1 - one) * (1 - two))
            yield fault_at(
                done.step.written,
                "behind",
                "FB422",
                f"`{drawn.edge}` has {run.say.share(one)} of its cloth behind already, and with {run.say.share(two)}"
                f" again it is {run.say.share(together)}",
                help="gather the layers evenly, and the stack with more behind",
                severity=Severity.WARNING,
            )


def _hangs_from(run: Run, done: Performed, one: str, other: str) -> bool:
    """Whether what is gathered at one edge hangs from what is gathered at the other, in the end or already."""
    mine, theirs = done.before.edge(one).pieces, done.before.edge(other).pieces
    if any(name in mine for piece in theirs for name in done.before.unit(piece)):
        return True
    return any(low in run.over(up) or up in run.over(low) for low in mine for up in theirs)
