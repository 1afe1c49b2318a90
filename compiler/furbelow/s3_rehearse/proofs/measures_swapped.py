"""The measures of the body are not swapped or misread.

Guarantees: a waist that is much larger than the hips is asked about, and so is a waist that is levelled with its front and
    back exchanged, or with heights further apart than a waist lies. All warn.
Cannot know: the body. Some waists are larger than the hips.
Source: in 17 of 1,986 women and 370 of 4,082 men of a large survey the waist is larger (ANSUR II, Gordon et al. 2014; its
    waist is taken at the navel, which the waist of ISO 8559-1 is not). How much is worth asking: house rule.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.matching import PLACES
from furbelow.garment.message import Part
from furbelow.garment.spec import Written
from furbelow.s3_rehearse.levelling import levelled
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-measures"
MUCH_LARGER = Fraction(11, 10)
MOST_TILTED = Fraction(80)  # from the lowest to the highest place of a waist; house rule, maker to confirm
FRONT, BACK = "front_waist_height", "back_waist_height"


def prove(run: Run) -> Proof:
    return Proof(CLAIM, (Part("proof-measures-shown"),), (*_waist(run), *_levelled(run), *_far_apart(run)))


def _waist(run: Run) -> Iterator[Fault]:
    body, say = run.body, run.say
    if body.waist is None or body.hips is None or body.waist <= body.hips * MUCH_LARGER:
        return
    yield Fault(
        "FB433",
        f"the waist of {say.length(body.waist)} is {say.length(body.waist - body.hips)} larger than the hips of"
        f" {say.length(body.hips)}",
        Label(run.solved.values["waist_girth"].span or run.solved.spec.body["waist_girth"].span, "the waist"),
        help="see whether the two measures are swapped",
        severity=Severity.WARNING,
    )


def _levelled(run: Run) -> Iterator[Fault]:
    """The spec's own measure for the back stands where the front is asked for, and the other way round."""
    for done in levelled(run):
        front, back = (done.step.written.args[place].value for place in ("front", "back"))
        if not isinstance(front, Written) or not isinstance(back, Written):
            continue
        if BACK in front.formula.names and FRONT in back.formula.names:
            yield Fault(
                "FB433",
                f"the front is levelled by `{BACK}`, {run.say.length(done.step.mm('front'))}, and the back by `{FRONT}`,"
                f" {run.say.length(done.step.mm('back'))}",
                Label(front.span, "the height of the back"),
                (Label(back.span, "the height of the front"),),
                help=f"write `front: {FRONT}, back: {BACK}`",
                severity=Severity.WARNING,
            )


def _far_apart(run: Run) -> Iterator[Fault]:
    for done in levelled(run):
        heights = {place: done.step.mm(place) for place in PLACES}
        low, high = min(heights, key=lambda place: heights[place]), max(heights, key=lambda place: heights[place])
        apart = heights[high] - heights[low]
        if apart <= MOST_TILTED:
            continue
        say = run.say
        yield Fault(
            "FB433",
            f"the waist is {say.length(heights[low])} high at the {low} and {say.length(heights[high])} at the {high},"
            f" {say.length(apart)} apart",
            Label(done.step.written.args[low].span, "the lower"),
            (Label(done.step.written.args[high].span, "the higher"),),
            notes=(f"a waist lies askew by {say.length(MOST_TILTED)} at the most",),
            help="measure both again",
            severity=Severity.WARNING,
        )
