"""Every closed ring of the garment goes over the body on the way to its place, and is no tighter there than the body.

Guarantees: each line round the garment (tier seams, hems, casings, linings, cuffs), opened as far as its elastic or a slit
    gives, is at least as wide as what it passes on the way to its level, stepped into from the feet; at rest it is no
    tighter than the body at its level, else it warns.
Cannot know: how the wearer puts it on, the body between the levels that are measured, or how cloth gives.
Source: where the hips lie, see `s3_rehearse/body_at.py`. How much narrower than the hips a ring below them may be: house
    rules, maker to confirm.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.message import Length, Part
from furbelow.s3_rehearse.body_at import BodyAt
from furbelow.s3_rehearse.rings import Ring
from furbelow.s3_rehearse.run import Proof, Run
from furbelow.s3_rehearse.ways_in import band_depth, closes, ways_in

CLAIM = "proof-rings"
# Below the hips a ring is drawn up over the legs, and the legs together are narrower than the hips.
LEGS_SHARE = Fraction(4, 5)
OVER_FEET = Fraction(450)  # mm: a foot with its heel
# Cloth and flesh give a little: a ring at rest may be so much tighter than the body.
GIVES = Fraction(19, 20)
TOP = Fraction(20)  # mm: a casing so near the top is the waist itself, and is asked elsewhere


def prove(run: Run) -> Proof:
    if not run.whole:
        return Proof(CLAIM)
    if not run.sound(run.final.cloths):
        return Proof(CLAIM)
    body = run.body
    faults: list[Fault] = []
    rings = [ring for ring in run.rings if ring.level > TOP or ring.casing is None]
    if rings and body.hips is None:
        return Proof(CLAIM, (Part("proof-rings-no-hips"),))
    for ring in rings:
        faults += _passes(run, body, ring) or _clears(run, body, ring)
    narrowest = min(rings, key=lambda ring: ring.open, default=None)
    if narrowest is None:
        return Proof(CLAIM, (Part("proof-rings-none"),), tuple(faults))
    shown = Part("proof-rings-passed", {"rings": len(rings), "narrowest": Length(narrowest.open)})
    return Proof(CLAIM, (shown,), tuple(faults))


def opened_to(run: Run, level: Fraction) -> Fraction | None:
    """How wide an opening from the top makes the garment at this level; None where none reaches so far down."""
    for opening in ways_in(run.final):
        if closes(opening) and level <= opening.length + band_depth(run.final, opening):
            return opening.waist + 2 * opening.length
    return None


def _passes(run: Run, body: BodyAt, ring: Ring) -> list[Fault]:
    down = ring.level + body.top
    if opened_to(run, ring.level) is not None:
        return []
    if down <= body.hip_depth:
        needed, over = body.widest, "the hips"
    elif down <= body.knee:
        needed, over = (body.hips or body.widest) * LEGS_SHARE, "the legs"
    else:
        needed, over = OVER_FEET, "the feet"
    if ring.open >= needed:
        return []
    say = run.say
    return [
        Fault(
            "FB423",
            f"the ring at `{ring.name}` opens to {say.length(ring.open)} and must go over {over}, {say.length(needed)},"
            f" {say.length(needed - ring.open)} too little; the garment can't be put on",
            Label(run.solved.pieces[ring.name.partition(".")[0]].piece.span, f"{say.length(ring.flat)} of cloth round"),
            (Label(run.solved.spec.worn.over.span, "the body that it goes over"),),
            notes=(f"it lies {say.length(ring.level)} below the top",),
            help=f"make it {say.length(needed - ring.open)} longer or more",
            needs=needed - ring.open,
        )
    ]


def _clears(run: Run, body: BodyAt, ring: Ring) -> Iterator[Fault]:
    girth = body.girth(ring.level)
    # A slit lets the body in, but the line is closed when the garment is worn.
    if girth is None or ring.cord:
        return
    if ring.level + body.top > body.knee:
        girth = girth * LEGS_SHARE
    if ring.rest >= girth * GIVES:
        return
    say = run.say
    yield Fault(
        "FB425",
        f"the ring at `{ring.name}` is {say.length(ring.rest)} at rest where the body is {say.length(girth)},"
        f" {say.length(girth - ring.rest)} tighter",
        Label(run.solved.pieces[ring.name.partition(".")[0]].piece.span),
        notes=(f"it lies {say.length(ring.level)} below the top; it hinders sitting or walking",),
        help=f"make it {say.length(girth - ring.rest)} longer or more",
        needs=girth - ring.rest,
        severity=Severity.WARNING,
    )
